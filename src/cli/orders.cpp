// SPDX-License-Identifier: MIT
// The regiment's file of a plate and its regulations, each file read once.
#include "cli/orders.h"

#include <algorithm>
#include <filesystem>
#include <utility>

#include "base/limits.h"
#include "base/text.h"

namespace platewright::cli {
namespace {

/// One file has one name, however one comes to it.
std::string normal(const std::filesystem::path& path) {
    return path.lexically_normal().generic_string();
}

std::string_view kind_word(FileKind kind) {
    return kind == FileKind::regulation ? "regulation"
           : kind == FileKind::regiment ? "regiment"
                                        : "plate";
}

/// The longest of the lists that later ones are laid over.
std::size_t longest_list(const std::vector<SpecifiedRegulation>& editions) {
    std::size_t places = 0;
    std::size_t rules = 0;
    std::size_t ranks = 0;
    std::size_t steps = 0;
    for (const SpecifiedRegulation& edition : editions) {
        for (const SeriesColour& colour : edition.series) {
            places += colour.regiments.size();
        }
        rules += edition.rules.size();
        ranks += edition.ranks.size();
        steps += edition.service.size();
    }
    return std::max({places, rules, ranks, steps});
}

bool is_file_name(const WrittenText& regiment) {
    return lower(regiment.text).ends_with(".yaml");
}

}  // namespace

std::string OrdersLoader::path_of(const WrittenText& named) const {
    const std::filesystem::path from = sources_.name(named.span.file);
    return normal(from.parent_path() / named.text);
}

/// Opens a file that another names. Its name is at fault if there is none, or one of another kind.
std::optional<FileId> OrdersLoader::open(const std::string& path,
                                         FileKind kind,
                                         const Span& named,
                                         Diagnostics& to) {
    FileResult file = files_.read(path, limits::kYamlBytes);
    if (!file.ok()) {
        to.error("cli.cannot-read",
                 named,
                 platewright::quoted(path) + " cannot be read: " + file.problem)
            .hints.emplace_back("paths count from the file they are written in");
        return std::nullopt;
    }
    if (kind_of_file(file.text) != kind) {
        const std::string word(kind_word(kind));
        to.error("cli.wrong-file", named, platewright::quoted(path) + " is not a " + word)
            .hints.push_back("the file of a " + word + " begins with '" + word + ":'");
        return std::nullopt;
    }
    return sources_.add(path, std::move(file.text));
}

template <typename T>
const T* OrdersLoader::take(const Loaded<T>& loaded, Diagnostics& to) const {
    to.add_all(loaded.problems);
    return loaded.value ? &*loaded.value : nullptr;
}

template <typename T, typename Read>
const T* OrdersLoader::named_file(
    Shelf<T>& known, FileKind kind, const Read& read, const Naming& naming, Diagnostics& to) {
    const auto found = known.find(naming.path);
    if (found != known.end()) {
        return take(found->second, to);
    }
    const auto file = open(naming.path, kind, naming.at, to);
    if (!file) {
        return nullptr;
    }
    Loaded<T>& loaded = known[naming.path];
    loaded.value = read(sources_, *file, loaded.problems);
    return take(loaded, to);
}

const SpecifiedRegulation* OrdersLoader::regulation(const std::string& path,
                                                    const Span& named,
                                                    Diagnostics& to) {
    return named_file(regulations_, FileKind::regulation, read_regulation, {path, named}, to);
}

const SpecifiedRegiment* OrdersLoader::regiment(const std::string& path,
                                                const Span& named,
                                                Diagnostics& to) {
    return named_file(regiments_, FileKind::regiment, read_regiment, {path, named}, to);
}

std::vector<SpecifiedRegulation> OrdersLoader::editions(const std::string& path,
                                                        const Span& named,
                                                        Diagnostics& to) {
    std::vector<std::string> seen;
    std::vector<SpecifiedRegulation> latest_first;
    std::string next = path;
    Span naming = named;
    while (true) {
        if (std::ranges::find(seen, next) != seen.end()) {
            to.error("resolve.circle",
                     naming,
                     platewright::quoted(next) + " amends itself" +
                         (seen.size() > 1 ? ", by way of others" : ""))
                .hints.emplace_back("an amendment names an older regulation");
            return {};
        }
        const SpecifiedRegulation* found = regulation(next, naming, to);
        if (found == nullptr) {
            return {};
        }
        latest_first.push_back(*found);
        if (!found->amends) {
            break;
        }
        if (latest_first.size() == limits::kRegulations ||
            longest_list(latest_first) > limits::kRecords) {
            to.error("cli.too-many-regulations",
                     found->amends->span,
                     "too many regulations amend each other, or too long ones")
                .hints.push_back("write one new regulation in place of the older ones");
            return {};
        }
        seen.push_back(std::exchange(next, path_of(*found->amends)));
        naming = found->amends->span;
    }
    std::ranges::reverse(latest_first);
    return latest_first;
}

std::shared_ptr<const Orders> OrdersLoader::with_regulations(Orders orders,
                                                             const std::vector<WrittenText>& named,
                                                             Diagnostics& to) {
    if (named.size() > limits::kRegulations) {
        to.error("cli.too-many-regulations",
                 named[limits::kRegulations].span,
                 "too many regulations are named")
            .hints.push_back("write at most " + std::to_string(limits::kRegulations) + " of them");
        return nullptr;
    }
    const std::size_t errors = to.error_count();
    for (const WrittenText& each : named) {
        orders.regulations.push_back(editions(path_of(each), each.span, to));
    }
    return to.error_count() == errors ? std::make_shared<const Orders>(std::move(orders)) : nullptr;
}

std::shared_ptr<const Orders> OrdersLoader::of_regiment_file(const SpecifiedPlate& plate,
                                                             Diagnostics& to) {
    const SpecifiedRegiment* found = regiment(path_of(*plate.regiment), plate.regiment->span, to);
    if (found == nullptr) {
        return nullptr;
    }
    std::vector<WrittenText> named = found->regulations;
    if (plate.regulation && !named.empty()) {
        Diagnostic& problem = to.error("cli.two-regulations",
                                       plate.regulation->span,
                                       "the regiment's own file names its regulation");
        problem.labels.push_back({named.front().span, "named here"});
        problem.hints.emplace_back("leave 'regulation' out on the plate");
        return nullptr;
    }
    if (plate.regulation) {
        named.push_back(*plate.regulation);
    }
    return with_regulations({{}, *found}, named, to);
}

std::shared_ptr<const Orders> OrdersLoader::of_plate(const SpecifiedPlate& plate, Diagnostics& to) {
    const bool has_file = plate.regiment && is_file_name(*plate.regiment);
    if (plate.regiment && !has_file && !plate.regulation) {
        to.error("cli.no-regulation",
                 plate.regiment->span,
                 "no regulation is named in which to look for " +
                     platewright::quoted(plate.regiment->text))
            .hints.emplace_back(
                "write 'regulation:' and its path, or after 'regiment:' the path of the "
                "regiment's own file, such as tannbruck.yaml");
        return nullptr;
    }
    const std::string key = (has_file ? path_of(*plate.regiment) : "") + "\n" +
                            (plate.regulation ? path_of(*plate.regulation) : "");
    if (const auto known = orders_.find(key); known != orders_.end()) {
        return known->second;
    }
    std::vector<WrittenText> named;
    if (plate.regulation) {
        named.push_back(*plate.regulation);
    }
    auto orders = has_file ? of_regiment_file(plate, to) : with_regulations({}, named, to);
    if (orders) {
        orders_.emplace(key, orders);
    }
    return orders;
}

std::vector<SpecifiedRegulation> OrdersLoader::of_regulation(FileId file, Diagnostics& to) {
    const std::string path = normal(sources_.name(file));
    const auto [place, is_new] = regulations_.try_emplace(path);
    if (is_new) {
        place->second.value = read_regulation(sources_, file, place->second.problems);
    }
    return editions(path, {file, 0, 0}, to);
}

std::shared_ptr<const Orders> OrdersLoader::of_regiment(FileId file, Diagnostics& to) {
    const std::string path = normal(sources_.name(file));
    const auto [place, is_new] = regiments_.try_emplace(path);
    if (is_new) {
        place->second.value = read_regiment(sources_, file, place->second.problems);
    }
    const SpecifiedRegiment* found = regiment(path, {file, 0, 0}, to);
    return found == nullptr ? nullptr : with_regulations({{}, *found}, found->regulations, to);
}

}  // namespace platewright::cli
