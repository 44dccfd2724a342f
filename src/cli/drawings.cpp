// SPDX-License-Identifier: MIT
// The drawings of the data folder: the views of each figure and the ornaments, read when needed.
#include "cli/drawings.h"

#include <algorithm>
#include <array>
#include <utility>

#include "base/limits.h"
#include "cli/open_file.h"

namespace platewright::cli {
namespace {

constexpr std::string_view kEnding = ".svg";
/// Views that may be drawn in several files: `front.svg`, `front-head.svg`, `front-legs.svg` …
constexpr std::array<std::string_view, 3> kInSeveralFiles = {"front", "back", "side"};

}  // namespace

std::string view_of_file(const std::string& file_name) {
    std::string name = file_name.substr(0, file_name.size() - kEnding.size());
    for (const std::string_view view : kInSeveralFiles) {
        if (name.starts_with(std::string(view) + "-")) {
            return std::string(view);
        }
    }
    return name;
}

std::vector<std::string> files_of_view(const FileReader& files,
                                       const std::string& folder,
                                       const std::string& view) {
    const std::string own = view + std::string(kEnding);
    const std::string within = folder + "/";
    std::vector<std::string> found{within + own};
    for (const std::string& file : files.list(folder, std::string(kEnding))) {
        if (file != own && view_of_file(file) == view) {
            found.push_back(within + file);
        }
    }
    return found;
}

std::vector<std::string> Drawings::names(const std::string& set) const {
    std::vector<std::string> found;
    for (const std::string& file :
         files_.list(data_folder_ + "/templates/" + set, std::string(kEnding))) {
        found.push_back(view_of_file(file));
    }
    std::ranges::sort(found);
    found.erase(std::unique(found.begin(), found.end()), found.end());
    return found;
}

std::shared_ptr<const Template> Drawings::read(const std::vector<std::string>& paths,
                                               Diagnostics& to) {
    std::vector<FileId> opened;
    for (const std::string& path : paths) {
        FileResult file = files_.read(path, limits::kTemplateBytes);
        // Shown by its name within the data folder, wherever that lies.
        const std::string name = path.substr(data_folder_.size() + 1);
        if (!file.ok()) {
            missed_a_file_ = true;
            report_unreadable(name, file.problem, to);
            return nullptr;
        }
        opened.push_back(sources_.add(name, std::move(file.text)));
    }
    return read_template(sources_, opened, to);
}

std::shared_ptr<const Template> Drawings::view(const std::string& set,
                                               const std::string& name,
                                               Diagnostics& to) {
    if (has_only()) {
        return own(only_, to);
    }
    const auto [place, is_new] = views_.try_emplace(set + "/" + name);
    if (is_new) {
        place->second.value = read(files_of_view(files_, data_folder_ + "/templates/" + set, name),
                                   place->second.problems);
    }
    to.add_all(place->second.problems);
    return place->second.value;
}

const Ornaments* Drawings::ornaments(Diagnostics& to) {
    if (!ornaments_) {
        ornaments_.emplace();
        for (const std::string& file :
             files_.list(data_folder_ + "/templates/ornaments", std::string(kEnding))) {
            ornaments_->value[view_of_file(file)] =
                read({data_folder_ + "/templates/ornaments/" + file}, ornaments_->problems);
        }
    }
    to.add_all(ornaments_->problems);
    return ornaments_->problems.error_count() == 0 ? &ornaments_->value : nullptr;
}

std::shared_ptr<const Template> Drawings::own(const std::string& path, Diagnostics& to) {
    const auto [place, is_new] = own_.try_emplace(path);
    if (is_new) {
        Diagnostics& problems = place->second.problems;
        if (const auto file = open_file(files_, path, limits::kTemplateBytes, sources_, problems)) {
            place->second.value = read_template(sources_, std::span(&*file, 1), problems);
        } else {
            missed_a_file_ = true;
        }
    }
    to.add_all(place->second.problems);
    return place->second.value;
}

}  // namespace platewright::cli
