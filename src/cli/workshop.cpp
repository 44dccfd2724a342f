// SPDX-License-Identifier: MIT
// Everything a plate needs besides itself, loaded once, and the way of a plate through the stages.
#include "cli/workshop.h"

#include <algorithm>
#include <utility>

#include "base/limits.h"
#include "base/text.h"
#include "cli/data_folder.h"
#include "cli/details.h"
#include "cli/open_file.h"

namespace platewright::cli {
namespace {

std::string set_folder(const std::string& set) {
    return "templates/" + set + "/";
}

const std::string kButton = "button";

/// Whether an ornament is worn that is a drawing: a button or a number is none.
bool needs_drawing(const Decided& ornament) {
    const auto* name = std::get_if<std::string>(&ornament.value);
    return name != nullptr && *name != kButton && *name != "number";
}

/// With its slash; empty for a file beside the caller.
std::string parent_folder(const std::string& path) {
    const std::size_t slash = path.rfind('/');
    return slash == std::string::npos ? std::string() : path.substr(0, slash + 1);
}

/// Front and back, where the plate does not say; the index also has what only a coat laid flat
/// shows whole.
std::vector<WrittenText> views_asked(const SpecifiedPlate& plate) {
    if (plate.wardrobe) {
        return {{"front", {}},
                {"back", {}},
                {"side", {}},
                {"flat-coat-front", {}},
                {"flat-coat-back", {}}};
    }
    if (!plate.views.empty()) {
        return plate.views;
    }
    return {{"front", {}}, {"back", {}}};
}

/// A regulation dresses nobody by itself, and other sheets name the plates of their men.
bool check_is_plate(const SourceMap& sources, FileId file, Diagnostics& to) {
    const FileKind kind = kind_of_file(sources.text(file));
    std::string word;
    std::string hint;
    switch (kind) {
        case FileKind::plate:
        case FileKind::palette:
        case FileKind::customs:
        case FileKind::sizes:
            return true;
        case FileKind::regulation:
        case FileKind::regiment:
            word = kind == FileKind::regulation ? "regulation" : "regiment";
            hint = "write a plate that names it: 'plate:' with a title, and '" + word +
                   ":' with the path of this file";
            break;
        case FileKind::comparison:
        case FileKind::handout:
        case FileKind::chart:
        case FileKind::workshop:
            word = kind == FileKind::comparison ? "comparison"
                   : kind == FileKind::handout  ? "handout"
                   : kind == FileKind::chart    ? "chart"
                                                : "workshop sheet";
            hint = "give the plate of one man";
            break;
    }
    to.error("cli.not-a-plate", {file, 0, 0}, "a " + word + " is not a plate")
        .hints.push_back(hint);
    return false;
}

/// The template set of a plate.
std::string set_of(const SpecifiedPlate& plate) {
    return plate.figure ? plate.figure->text : std::string(kDefaultFigure);
}

void report_unknown_view(const WrittenText& asked,
                         const std::vector<std::string>& known,
                         Diagnostics& to) {
    Diagnostic& problem = to.error("cli.unknown-view",
                                   asked.span,
                                   "this figure has no view " + platewright::quoted(asked.text));
    if (const auto near = nearest_word(asked.text, known)) {
        problem.hints.push_back("did you mean " + platewright::quoted(*near) + "?");
    }
    problem.hints.push_back("its views are " + or_list(known));
}

}  // namespace

std::vector<const Template*> views_of(const Job& job) {
    std::vector<const Template*> views;
    for (const WrittenText& asked : views_asked(job.plate)) {
        if (const auto view = job.views.find(asked.text); view != job.views.end()) {
            views.push_back(view->second.get());
        }
    }
    return views;
}

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

std::optional<SpecifiedSizes> Workshop::sizes_of(const Job& job, Diagnostics& to) {
    const auto file = open(set_folder(set_of(job.plate)) + "sizes.yaml", limits::kYamlBytes, to);
    return file ? read_sizes(sources_, *file, to) : std::nullopt;
}

bool Workshop::add_views(Job& job, const std::string& set, Diagnostics& to) {
    const std::vector<std::string> known = drawings_.names(set);
    bool complete = true;
    for (const WrittenText& asked : views_asked(job.plate)) {
        if (!drawings_.has_only() && std::ranges::find(known, asked.text) == known.end()) {
            // An index shows what views there are.
            if (!job.plate.wardrobe) {
                report_unknown_view(asked, known, to);
                complete = false;
            }
            continue;
        }
        const auto view = drawings_.view(set, asked.text, to);
        complete = complete && view != nullptr;
        job.views[asked.text] = view;
        if (drawings_.has_only()) {
            return complete;
        }
    }
    if (std::ranges::find(known, kButton) != known.end()) {
        job.views[kButton] = drawings_.view(set, kButton, to);
        complete = complete && job.views[kButton] != nullptr;
    }
    return complete && check_details(job, to);
}

bool Workshop::add_ornaments(Job& job, Diagnostics& to) {
    Diagnostics unheard;
    const auto uniform = uniform_of(job, unheard);
    std::vector<const Decided*> worn;
    for (PropertyId id = 0; uniform && id < properties().size(); ++id) {
        if (properties()[id].kind == Kind::ornament && needs_drawing(uniform->decided[id])) {
            worn.push_back(&uniform->decided[id]);
        }
    }
    if (worn.empty() && !job.plate.wardrobe) {
        return true;
    }
    const Ornaments* all = drawings_.ornaments(to);
    if (all == nullptr) {
        return false;
    }
    job.ornaments = *all;
    bool complete = true;
    for (const Decided* each : worn) {
        complete = add_ornament(job, *each, to) && complete;
    }
    return complete;
}

bool Workshop::add_ornament(Job& job, const Decided& worn, Diagnostics& to) {
    const auto* name = std::get_if<std::string>(&worn.value);
    const std::optional<Span>& written = worn.chain.back().span;
    if (job.ornaments.contains(*name)) {
        return true;
    }
    if (written && lower(*name).ends_with(".svg")) {
        const std::string folder = parent_folder(sources_.name(written->file));
        const auto drawing = drawings_.own(folder + *name, to);
        job.ornaments[*name] = drawing;
        return drawing != nullptr;
    }
    std::vector<std::string> known;
    for (const auto& each : job.ornaments) {
        known.push_back(each.first);
    }
    Diagnostic problem;
    problem.code = "cli.unknown-ornament";
    problem.message = "there is no ornament " + platewright::quoted(*name);
    problem.span = written;
    add_suggestion(problem, *name, known, "the ornaments are ");
    problem.hints.emplace_back(
        "or name a drawing of your own that lies beside this file: 'badge.svg'");
    to.add(std::move(problem));
    return false;
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
    add_suggestion(problem, set, sets, "the figures are ");
    return false;
}

std::optional<Job> Workshop::prepare(FileId plate,
                                     bool with_views,
                                     Diagnostics& to,
                                     Timings& timings) {
    return prepare(plate, {with_views, nullptr}, to, timings);
}

std::optional<Job> Workshop::prepare_named(const WrittenText& path,
                                           const std::vector<WrittenText>& views,
                                           Diagnostics& to,
                                           Timings& timings) {
    const auto file = orders_.open_plate(path, to);
    return file ? prepare(*file, {true, &views}, to, timings) : std::nullopt;
}

std::optional<Job> Workshop::prepare(FileId plate,
                                     const Wanted& wanted,
                                     Diagnostics& to,
                                     Timings& timings) {
    if (!check_is_plate(sources_, plate, to)) {
        return std::nullopt;
    }
    SpecifiedPlate written;
    const bool sound = timings.measure(
        "read", [&] { return read_plate(sources_, plate, to, written).has_value(); });
    if (wanted.only != nullptr) {
        written.wardrobe = false;
        written.views = *wanted.only;
        written.details.clear();
    }
    auto job = timings.measure(
        "data", [&] { return equip(std::move(written), wanted.views && sound, to); });
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
    const std::string set = set_of(plate);
    if (!check_figure(plate, set, to)) {
        return std::nullopt;
    }
    to.add_all(palettes().problems);
    const auto& ranks = customs(set);
    to.add_all(ranks.problems);
    auto orders = orders_.of_plate(plate, to);
    if (!palettes_->value || !ranks.value || !orders) {
        return std::nullopt;
    }
    plate.language = language_of(plate.language);
    Job job{std::move(plate), std::move(orders), &*ranks.value, {}, {}};
    const bool drawable = !with_views || add_views(job, set, to);
    if (!add_ornaments(job, to) || !drawable) {
        return std::nullopt;
    }
    return job;
}

std::optional<Job> Workshop::prepare(SpecifiedPlate plate, bool with_views, Diagnostics& to) {
    return equip(std::move(plate), with_views, to);
}

std::vector<SpecifiedPalette> Workshop::all_palettes(Diagnostics& to) {
    const auto& loaded = palettes();
    to.add_all(loaded.problems);
    return loaded.value.value_or(std::vector<SpecifiedPalette>());
}

std::vector<SpecifiedRegulation> Workshop::regulation_in(FileId file, Diagnostics& to) {
    return orders_.of_regulation(file, to);
}

void Workshop::check_regulation(FileId file, Diagnostics& to) {
    check_editions(orders_.of_regulation(file, to), to);
}

void Workshop::check_regiment(FileId file, Diagnostics& to) {
    to.add_all(palettes().problems);
    if (const auto orders = orders_.of_regiment(file, to)) {
        for (const auto& editions : orders->regulations) {
            check_editions(editions, to);
        }
        if (palettes_->value) {
            platewright::check_regiment(*orders, *palettes_->value, to);
        }
    }
}

void Workshop::check_editions(const std::vector<SpecifiedRegulation>& editions, Diagnostics& to) {
    to.add_all(palettes().problems);
    if (palettes_->value && !editions.empty()) {
        platewright::check_regulation(editions, *palettes_->value, to);
    }
}

std::optional<Uniform> Workshop::uniform_of(const Job& job, Diagnostics& to) const {
    return resolve(job.plate, *job.orders, *job.customs, *palettes_->value, to);
}

std::vector<Figure> figures_of(const Uniform& uniform, const Job& job, double scale, Ink ink) {
    std::vector<Figure> figures;
    for (const Template* view : views_of(job)) {
        figures.push_back(compose(uniform, *view, job.ornaments, scale, {}, ink));
    }
    return figures;
}

namespace {

/// What a sheet with these views names: of garments laid flat only what is drawn; of a dressed man
/// also what is seen from another side, but not what is hidden.
std::set<std::string> shown_in(const std::vector<const Template*>& views, const Uniform& uniform) {
    std::set<std::string> shown;
    if (std::ranges::any_of(views, [](const Template* view) { return !is_flat(*view); })) {
        const std::set<std::string> hidden = hidden_on(views, uniform);
        for (const Property& row : properties()) {
            if (!hidden.contains(std::string(row.key))) {
                shown.emplace(row.key);
            }
        }
    }
    for (const Template* view : views) {
        shown.merge(shown_on(*view, uniform));
    }
    return shown;
}

/// Paper kept at each side of a man who stands among several, mm on the body.
constexpr double kAirOfSeveral = 40;

/// Boxes of the figures of a plate. Three in a row are as large as the paper is wide, so that they
/// take no more of it than is drawn of them, and what a template leaves above for the tallest plume
/// pushes no man down who wears none.
std::vector<Rect> frames_of_plate(const Uniform& uniform, const Job& job) {
    const std::vector<const Template*> views = views_of(job);
    const bool several = views.size() > 2 && std::ranges::none_of(views, [](const Template* view) {
                             return is_flat(*view);
                         });
    const bool close = several || job.plate.callouts;
    std::vector<Rect> frames;
    frames.reserve(views.size());
    for (const Template* view : views) {
        frames.push_back(close ? close_frame_of(*view, uniform) : frame_of(*view, uniform));
    }
    if (several) {
        const double top = std::ranges::max(frames, {}, &Rect::top).top;
        // Words that name things keep men apart by themselves.
        const double air = job.plate.callouts ? 0 : kAirOfSeveral;
        for (Rect& frame : frames) {
            frame = {frame.left - air, top, frame.right + air, frame.bottom};
        }
    }
    return frames;
}

}  // namespace

Document plate_of(const Uniform& uniform,
                  const Job& job,
                  const Printing& printing,
                  const Typesetter& type,
                  Diagnostics& to,
                  Timings& timings) {
    const std::vector<Rect> frames = frames_of_plate(uniform, job);
    const std::set<std::string> shown = shown_in(views_of(job), uniform);
    Captions captions = captions_of(uniform, &shown);
    if (!job.plate.callouts) {
        captions.callouts.clear();
    }
    captions.ink = printing.ink;
    const double scale = timings.measure(
        "layout", [&] { return plate_scale(frames, captions, printing.paper, type); });
    PlatePictures pictures;
    pictures.figures = timings.measure("compose", [&] {
        if (const auto view = job.views.find(kButton); view != job.views.end()) {
            pictures.button = compose(uniform,
                                      *view->second,
                                      job.ornaments,
                                      detail_scale(frame_of(*view->second), printing.paper),
                                      {},
                                      printing.ink);
        }
        std::vector<Figure> drawn = figures_of(uniform, job, scale, printing.ink);
        for (std::size_t i = 0; i < drawn.size(); ++i) {
            drawn[i].frame = frames[i];
        }
        return drawn;
    });
    pictures.details =
        timings.measure("compose", [&] { return details_of_plate(uniform, job, printing, scale); });
    return timings.measure(
        "layout", [&] { return lay_out_plate(pictures, captions, printing.paper, type, to); });
}

}  // namespace platewright::cli
