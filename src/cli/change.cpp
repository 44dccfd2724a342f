// SPDX-License-Identifier: MIT
// `platewright change`: what turns one man into another.
#include <algorithm>
#include <optional>
#include <string>
#include <utility>

#include "base/limits.h"
#include "base/text.h"
#include "cli/change_words.h"
#include "cli/columns.h"
#include "cli/commands.h"
#include "cli/data_folder.h"
#include "cli/open_file.h"
#include "cli/print.h"
#include "cli/workshop.h"

namespace platewright::cli {
namespace {

/// `rank=sergeant` as a line of a description; empty if it is not of that form.
std::string line_of(const std::string& wish) {
    const std::size_t equals = wish.find('=');
    const bool one_line = wish.find_first_of("\r\n") == std::string::npos;
    if (equals == std::string::npos || equals == 0 || !one_line) {
        return {};
    }
    return wish.substr(0, equals) + ": " + wish.substr(equals + 1) + "\n";
}

/// What the wishes say takes the place of what the plate says; the rest stays.
void lay_over(SpecifiedPlate& plate, SpecifiedPlate wishes) {
    const std::pair<std::optional<WrittenText>*, std::optional<WrittenText>*> texts[] = {
        {&plate.figure, &wishes.figure},
        {&plate.rank, &wishes.rank},
        {&plate.regulation, &wishes.regulation},
        {&plate.regiment, &wishes.regiment},
        {&plate.corps_class, &wishes.corps_class},
        {&plate.company, &wishes.company},
        {&plate.order_of_dress, &wishes.order_of_dress}};
    for (const auto& [to, from] : texts) {
        if (*from) {
            *to = std::move(*from);
        }
    }
    plate.years_of_service =
        wishes.years_of_service ? wishes.years_of_service : plate.years_of_service;
    plate.as_of = wishes.as_of ? wishes.as_of : plate.as_of;
    plate.as_ordered = plate.as_ordered || wishes.as_ordered;
    for (auto& [id, written] : wishes.values) {
        plate.values.insert_or_assign(id, std::move(written));
    }
}

class ChangeCommand {
  public:
    explicit ChangeCommand(const ChangeOptions& options) : options_(options) {}

    ExitCode run() {
        std::string missing;
        const std::string data = find_data_folder(missing);
        ExitCode exit = ExitCode::cannot_read_or_write;
        if (data.empty()) {
            problems_.file_error("cli.no-data", "", missing);
        } else {
            Workshop workshop(files_, data, sources_);
            exit = compare_men(workshop);
        }
        problems_.sort();
        write_error(in_words(problems_, sources_, wants_colour()));
        return exit;
    }

  private:
    ExitCode compare_men(Workshop& workshop) {
        const auto first = man_of(options_.files.front(), workshop);
        const auto second = options_.files.size() > 1 ? man_of(options_.files.back(), workshop)
                            : first                   ? changed(first->plate, workshop)
                                                      : std::nullopt;
        if (!first || !second) {
            return unreadable_ || workshop.missed_a_file() ? ExitCode::cannot_read_or_write
                                                           : ExitCode::bad_data;
        }
        const TwoMen men{first->uniform, second->uniform, wish()};
        const Comparison found = compare(men.before, men.after);
        if (options_.json) {
            return answer(comparison_in_json(men, found));
        }
        return answer(comparison_in_words(men, found) + overruled(first->uniform, men.after));
    }

    struct Dressed {
        SpecifiedPlate plate;
        Uniform uniform;
    };

    std::optional<Dressed> man_of(const std::string& path, Workshop& workshop) {
        const auto file = open_file(files_, path, limits::kYamlBytes, sources_, problems_);
        unreadable_ = unreadable_ || !file;
        Timings unused;
        auto job = file ? workshop.prepare(*file, false, problems_, unused) : std::nullopt;
        return dressed(std::move(job), workshop);
    }

    std::optional<Dressed> dressed(std::optional<Job> job, Workshop& workshop) {
        auto uniform = job ? workshop.uniform_of(*job, problems_) : std::nullopt;
        return uniform ? std::optional(Dressed{std::move(job->plate), *std::move(uniform)})
                       : std::nullopt;
    }

    /// The wishes are read like a description, so that its messages serve here too.
    std::optional<Dressed> changed(SpecifiedPlate plate, Workshop& workshop) {
        std::string text;
        for (const std::string& each : options_.to) {
            text += line_of(each);
        }
        const FileId file = sources_.add("--to", text + "plate: changed\n");
        auto wishes = read_plate(sources_, file, problems_);
        if (!wishes) {
            return std::nullopt;
        }
        lay_over(plate, *std::move(wishes));
        return dressed(workshop.prepare(std::move(plate), false, problems_), workshop);
    }

    [[nodiscard]] std::string wish() const {
        std::vector<std::string> lines;
        for (const std::string& each : options_.to) {
            std::string line = line_of(each);
            line.pop_back();
            lines.push_back(std::move(line));
        }
        return and_list(lines);
    }

    /// What the plate says itself is stronger than a new rank; that may not be what was wished.
    static std::string overruled(const Uniform& before, const Uniform& after) {
        std::vector<std::string> keys;
        for (PropertyId id = 0; id < after.decided.size(); ++id) {
            const auto& was = before.decided[id].chain;
            const auto& is = after.decided[id].chain;
            const bool newly =
                is.size() > 1 &&
                (was.size() < 2 || was[was.size() - 2].as_written != is[is.size() - 2].as_written);
            if (is.back().strength == Strength::plate && !is.back().worked_out && newly &&
                was.back().span == is.back().span) {
                keys.emplace_back(properties()[id].key);
            }
        }
        return keys.empty() ? std::string()
                            : "\n" + wrapped("Written on the plate itself, and so unchanged: " +
                                                 and_list(keys),
                                             0);
    }

    const ChangeOptions& options_;
    const DiskReader files_;
    SourceMap sources_;
    Diagnostics problems_;
    bool unreadable_ = false;
};

}  // namespace

ExitCode change(const ChangeOptions& options) {
    for (const std::string& each : options.to) {
        if (line_of(each).empty()) {
            return refuse_usage(platewright::quoted(each) + " does not say what changes into what",
                                "write --to rank=sergeant, or --to \"order of dress=parade\"");
        }
    }
    if (options.files.size() > 2) {
        return refuse_usage(std::to_string(options.files.size()) + " men are given",
                            "write the one, and the other that he is to become");
    }
    if ((options.files.size() == 2) != options.to.empty()) {
        return refuse_usage(options.to.empty() ? "there is nobody to compare him with"
                                               : "two men are given, and --to as well",
                            "write two descriptions, or one and --to rank=sergeant");
    }
    return ChangeCommand(options).run();
}

}  // namespace platewright::cli
