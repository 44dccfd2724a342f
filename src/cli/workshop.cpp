// SPDX-License-Identifier: MIT
// Everything a plate needs besides itself, loaded once, and the way of a plate through the stages.
#include "cli/workshop.h"

#include <algorithm>
#include <utility>

#include "base/limits.h"
#include "base/text.h"
#include "cli/data_folder.h"
#include "cli/open_file.h"

namespace platewright::cli {
namespace {

void add_all(const Diagnostics& found, Diagnostics& to) {
    for (const Diagnostic& each : found.all()) {
        to.add(each);
    }
}

std::string set_folder(const std::string& set) {
    return "templates/" + set + "/";
}

}  // namespace

std::optional<FileId> Workshop::open(const std::string& name, std::size_t limit, Diagnostics& to) {
    // Shown by its name within the data folder, wherever that lies.
    FileResult file = files_.read(data_folder_ + "/" + name, limit);
    if (!file.ok()) {
        missed_a_file_ = true;
        report_unreadable(name, file.problem, to);
        return std::nullopt;
    }
    return sources_.add(name, std::move(file.text));
}

const Workshop::Loaded<std::vector<SpecifiedPalette>>& Workshop::palettes() {
    if (palettes_) {
        return *palettes_;
    }
    palettes_.emplace();
    std::vector<SpecifiedPalette> all;
    for (const std::string& name : files_.list(data_folder_ + "/palettes", ".yaml")) {
        const auto file = open("palettes/" + name, limits::kYamlBytes, palettes_->problems);
        if (!file) {
            continue;
        }
        if (auto palette = read_palette(sources_, *file, palettes_->problems)) {
            all.push_back(std::move(*palette));
        }
    }
    if (palettes_->problems.error_count() == 0) {
        palettes_->value = std::move(all);
    }
    return *palettes_;
}

const Workshop::Loaded<SpecifiedCustoms>& Workshop::customs(const std::string& set) {
    const auto [place, is_new] = customs_.try_emplace(set);
    Loaded<SpecifiedCustoms>& loaded = place->second;
    if (!is_new) {
        return loaded;
    }
    if (const auto file =
            open(set_folder(set) + "customs.yaml", limits::kYamlBytes, loaded.problems)) {
        loaded.value = read_customs(sources_, *file, loaded.problems);
    }
    return loaded;
}

std::shared_ptr<const Template> Workshop::view(const std::string& name, Diagnostics& to) {
    const auto file = open(name, limits::kTemplateBytes, to);
    return file ? read_template(sources_, *file, to) : nullptr;
}

const Workshop::Loaded<Views>& Workshop::views(const std::string& set) {
    const auto [place, is_new] = views_.try_emplace(only_template_.empty() ? set : std::string());
    Loaded<Views>& loaded = place->second;
    if (!is_new) {
        return loaded;
    }
    Views views;
    if (only_template_.empty()) {
        views.front = view(set_folder(set) + "front.svg", loaded.problems);
        views.back = view(set_folder(set) + "back.svg", loaded.problems);
        views.button = view(set_folder(set) + "button.svg", loaded.problems);
    } else if (const auto file = open_file(
                   files_, only_template_, limits::kTemplateBytes, sources_, loaded.problems)) {
        views.front = read_template(sources_, *file, loaded.problems);
    } else {
        missed_a_file_ = true;
    }
    if (loaded.problems.error_count() == 0) {
        loaded.value = std::move(views);
    }
    return loaded;
}

bool Workshop::check_figure(const SpecifiedPlate& plate,
                            const std::string& set,
                            Diagnostics& to) const {
    const std::vector<std::string> sets = template_sets(data_folder_);
    if (!plate.figure || std::ranges::find(sets, set) != sets.end()) {
        return true;
    }
    Diagnostic& problem = to.error(
        "cli.unknown-figure", plate.figure->span, "there is no figure " + platewright::quoted(set));
    if (const auto near = nearest_word(set, sets)) {
        problem.hints.push_back("did you mean " + platewright::quoted(*near) + "?");
    } else {
        problem.hints.push_back("the figures are " + or_list(sets));
    }
    return false;
}

std::optional<Job> Workshop::prepare(FileId plate,
                                     bool with_views,
                                     Diagnostics& to,
                                     Timings& timings) {
    SpecifiedPlate written;
    const bool sound = timings.measure(
        "read", [&] { return read_plate(sources_, plate, to, written).has_value(); });
    auto job =
        timings.measure("data", [&] { return equip(std::move(written), with_views && sound, to); });
    if (sound) {
        return job;
    }
    // Unknown colours and ranks are told together with what could not be read.
    if (job) {
        static_cast<void>(uniform_of(*job, to));
    }
    return std::nullopt;
}

std::optional<Job> Workshop::equip(SpecifiedPlate plate, bool with_views, Diagnostics& to) {
    const std::string set = plate.figure ? plate.figure->text : std::string(kDefaultFigure);
    if (!check_figure(plate, set, to)) {
        return std::nullopt;
    }
    add_all(palettes().problems, to);
    const auto& ranks = customs(set);
    add_all(ranks.problems, to);
    const Views* on = nullptr;
    if (with_views) {
        const auto& loaded = views(set);
        add_all(loaded.problems, to);
        on = loaded.value ? &*loaded.value : nullptr;
    }
    if (!palettes_->value || !ranks.value || (with_views && on == nullptr)) {
        return std::nullopt;
    }
    return Job{std::move(plate), &*ranks.value, on};
}

std::optional<Uniform> Workshop::uniform_of(const Job& job, Diagnostics& to) const {
    return resolve(job.plate, *job.customs, *palettes_->value, to);
}

std::vector<Figure> figures_of(const Uniform& uniform, const Views& views, double scale) {
    std::vector<Figure> figures;
    for (const auto& view : {views.front, views.back}) {
        if (view) {
            figures.push_back(compose(uniform, *view, scale));
        }
    }
    return figures;
}

Document plate_of(const Uniform& uniform,
                  const Views& views,
                  const Paper& paper,
                  const Typesetter& type,
                  Diagnostics& to,
                  Timings& timings) {
    std::vector<Rect> frames;
    for (const auto& view : {views.front, views.back}) {
        if (view) {
            frames.push_back(frame_of(*view));
        }
    }
    const Captions captions = captions_of(uniform);
    const double scale =
        timings.measure("layout", [&] { return plate_scale(frames, captions, paper, type); });
    std::optional<Figure> button;
    const std::vector<Figure> figures = timings.measure("compose", [&] {
        if (views.button) {
            button = compose(uniform, *views.button, detail_scale(frame_of(*views.button), paper));
        }
        return figures_of(uniform, views, scale);
    });
    return timings.measure(
        "layout", [&] { return lay_out_plate(figures, button, captions, paper, type, to); });
}

}  // namespace platewright::cli
