// SPDX-License-Identifier: MIT
// `platewright explain`: why a man is dressed as he is, or what a regulation sets up.
#include "cli/explain.h"

#include <algorithm>
#include <filesystem>
#include <optional>

#include "base/limits.h"
#include "base/text.h"
#include "cli/columns.h"
#include "cli/commands.h"
#include "cli/data_folder.h"
#include "cli/establishment.h"
#include "cli/open_file.h"
#include "cli/print.h"
#include "cli/workshop.h"

namespace platewright::cli {
namespace {

/// The properties of a key or a group, in table order.
std::vector<PropertyId> properties_named(std::string_view word) {
    std::vector<PropertyId> found;
    for (PropertyId id = 0; id < properties().size(); ++id) {
        if (properties()[id].key == word || properties()[id].group() == word) {
            found.push_back(id);
        }
    }
    return found;
}

ExitCode refuse_property(const std::string& word) {
    const std::vector<std::string> groups_known(groups().begin(), groups().end());
    auto near = nearest_word(word, groups_known);
    near = near ? near : nearest_property(word);
    return refuse_usage(platewright::quoted(word) + " is no property and no group of them",
                        near ? "did you mean " + platewright::quoted(*near) + "?"
                             : "write a group such as 'lapels', or one property such as "
                               "'lapels.cloth'");
}

class Explain {
  public:
    Explain(const ExplainOptions& options, std::vector<PropertyId> asked)
        : options_(options), asked_(std::move(asked)) {}

    ExitCode run() {
        const auto file = open_file(files_, options_.file, limits::kYamlBytes, sources_, problems_);
        std::string missing;
        const std::string data = find_data_folder(missing);
        ExitCode exit = ExitCode::cannot_read_or_write;
        if (file && data.empty()) {
            problems_.file_error("cli.no-data", "", missing);
        } else if (file) {
            Workshop workshop(files_, data, sources_);
            exit = explain(*file, workshop);
        }
        problems_.sort();
        write_error(in_words(problems_, sources_, wants_colour()));
        return exit;
    }

  private:
    ExitCode explain(FileId file, Workshop& workshop) {
        const FileKind kind = kind_of_file(sources_.text(file));
        if (kind == FileKind::regulation) {
            return explain_regulation(file, workshop);
        }
        std::optional<Job> job;
        Timings unused;
        if (kind == FileKind::regiment) {
            job = workshop.prepare(any_man_of(file), false, problems_);
        } else {
            job = workshop.prepare(file, false, problems_, unused);
        }
        const auto man = job ? workshop.uniform_of(*job, problems_) : std::nullopt;
        if (!man) {
            return workshop.missed_a_file() ? ExitCode::cannot_read_or_write : ExitCode::bad_data;
        }
        return tell(*man);
    }

    /// Nobody in particular, of the regiment in that file.
    [[nodiscard]] SpecifiedPlate any_man_of(FileId file) const {
        const std::string name = std::filesystem::path(sources_.name(file)).filename().string();
        SpecifiedPlate any;
        any.regiment = WrittenText{name, {file, 0, 0}};
        return any;
    }

    [[nodiscard]] ExitCode tell(const Uniform& man) const {
        const std::vector<PropertyId> chosen = choose(man);
        if (options_.json) {
            return answer(decisions_in_json(man, chosen, sources_));
        }
        std::string text = asked_.empty() ? facts_in_words(man) : std::string();
        const std::string decisions = decisions_in_words(man, chosen, sources_);
        text += (text.empty() || decisions.empty() ? "" : "\n") + decisions;
        const std::size_t left = properties().size() - chosen.size();
        if (asked_.empty() && left > 0) {
            text += "\n" + wrapped(std::to_string(left) +
                                       " properties more are left to the built-in defaults; "
                                       "--all tells them too",
                                   0);
        }
        return answer(text);
    }

    /// Those asked for; else those about which somebody said something.
    [[nodiscard]] std::vector<PropertyId> choose(const Uniform& man) const {
        if (!asked_.empty()) {
            return asked_;
        }
        std::vector<PropertyId> chosen;
        for (PropertyId id = 0; id < man.decided.size(); ++id) {
            const auto& chain = man.decided[id].chain;
            if (options_.all || chain.back().strength != Strength::initial) {
                chosen.push_back(id);
            }
        }
        return chosen;
    }

    ExitCode explain_regulation(FileId file, Workshop& workshop) {
        const auto editions = workshop.regulation_in(file, problems_);
        if (editions.empty()) {
            return ExitCode::bad_data;
        }
        const Regiments regiments = dressed_regiments(file, editions, workshop);
        if (problems_.error_count() > 0) {
            return workshop.missed_a_file() ? ExitCode::cannot_read_or_write : ExitCode::bad_data;
        }
        return answer(options_.json ? establishment_in_json(editions, regiments)
                                    : establishment_in_words(editions, regiments));
    }

    /// Any man of each regiment of the series, by number.
    Regiments dressed_regiments(FileId file,
                                const std::vector<SpecifiedRegulation>& editions,
                                Workshop& workshop) {
        const std::string name = std::filesystem::path(sources_.name(file)).filename().string();
        Regiments dressed;
        for (const int number : numbers_of(editions)) {
            SpecifiedPlate any;
            any.regulation = WrittenText{name, {file, 0, 0}};
            any.regiment = WrittenText{std::to_string(number), {file, 0, 0}};
            const auto job = workshop.prepare(std::move(any), false, problems_);
            auto man = job ? workshop.uniform_of(*job, problems_) : std::nullopt;
            if (man) {
                dressed.push_back(std::move(*man));
            }
        }
        return dressed;
    }

    const ExplainOptions& options_;
    std::vector<PropertyId> asked_;
    const DiskReader files_;
    SourceMap sources_;
    Diagnostics problems_;
};

}  // namespace

ExitCode explain(const ExplainOptions& options) {
    std::vector<PropertyId> asked;
    for (const std::string& word : options.properties) {
        const std::vector<PropertyId> found = properties_named(word);
        if (found.empty()) {
            return refuse_property(word);
        }
        for (const PropertyId id : found) {
            if (std::ranges::find(asked, id) == asked.end()) {
                asked.push_back(id);
            }
        }
    }
    return Explain(options, std::move(asked)).run();
}

}  // namespace platewright::cli
