// SPDX-License-Identifier: MIT
// From a man's plate to the tailor's sheets.
#include "cli/tailor.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <optional>
#include <utility>

#include "base/text.h"
#include "cli/making.h"
#include "cli/tailor_tables.h"
#include "compose/template.h"
#include "layout/placement.h"
#include "pattern/named_seams.h"
#include "vocabulary/body.h"

namespace platewright::cli {
namespace {

struct GarmentView {
    std::string_view garment;
    const char* view;
};

constexpr std::array kGarmentViews = std::to_array<GarmentView>({
    {"coat", "flat-coat-front"},
    {"coat", "flat-coat-back"},
    {"waistcoat", "flat-waistcoat-front"},
    {"waistcoat", "flat-waistcoat-back"},
    {"breeches", "flat-breeches-front"},
    {"breeches", "flat-breeches-back"},
    {"gaiters", "flat-gaiter-outer"},
    {"gaiters", "flat-gaiter-inner"},
});

/// What the placement drawings show, and from which view.
struct PlacementFrame {
    const char* frame;
    const char* view;
    const char* title;
    /// Parts that are shown whole, and those round them that are drawn too, parted by spaces.
    const char* whole;
    const char* round;
};

/// The bodies of coats, before and behind.
constexpr const char* kBodies = "coat- coatee- surtout- jacket-";
constexpr const char* kShoulders = "coat- coatee- surtout- jacket- sleeve- epaulette- wing- roll-";

constexpr std::array kPlacements = std::to_array<PlacementFrame>({
    {"breast", "flat-coat-front", "lapel, the wearer’s left", "lapel-", kBodies},
    {"cuff", "flat-coat-front", "cuff and marks, left sleeve", "cuff-left", "sleeve-"},
    {"right sleeve", "flat-coat-front", "marks, right sleeve", "cuff-right", "sleeve-"},
    {"skirts", "flat-coat-front", "skirt, fore part", "turnback-", kBodies},
    {"pocket", "flat-coat-front", "pocket", "pocket-left", kBodies},
    {"skirts", "flat-coat-back", "skirt, hind part", "turnback-", kBodies},
    {"shoulder", "flat-coat-front", "shoulder", "strap-", kShoulders},
    {"shoulder", "flat-coat-back", "collar, behind", "collar-", kBodies},
});

bool asked(const std::vector<WrittenText>& names, std::string_view name) {
    return names.empty() ||
           std::ranges::any_of(names, [&](const WrittenText& each) { return each.text == name; });
}

bool is_worn(const Uniform& uniform, std::string_view garment) {
    const std::string key = std::string(garment) + ".cloth";
    const auto id = find_property(key);
    return id && uniform.material(*id) != nullptr && uniform.speaks(*id);
}

/// What is drawn, with a little air for its outline.
Rect box_of(const Flat& flat) {
    constexpr double air = 8;
    Rect box;
    for (const FlatPart& part : flat.parts) {
        for (const Chain& chain : part.outline) {
            for (const Point p : chain) {
                box.include(p);
            }
        }
    }
    return box.grown(air);
}

/// His own measures, and what follows from them.
Body body_of(const SpecifiedWorkshop& sheet, const Body& size) {
    std::array<std::optional<double>, kBodyMeasures> known;
    for (std::size_t i = 0; i < kBodyMeasures; ++i) {
        if (sheet.body[i]) {
            known[i] = sheet.body[i]->measure.mm;
        }
    }
    return completed(size, known);
}

/// The size that the sheet names among those there are; nothing after an error.
std::optional<Body> size_of(const SpecifiedWorkshop& sheet,
                            const SpecifiedSizes& sizes,
                            Diagnostics& to) {
    const std::string wanted = lower(sheet.size ? sheet.size->text : kUsualSize);
    std::vector<std::string> known;
    for (const SpecifiedSizes::Size& each : sizes.sizes) {
        if (lower(each.name.text) == wanted) {
            return each.body;
        }
        known.push_back(each.name.text);
    }
    Diagnostic& problem = to.error("cli.unknown-size",
                                   sheet.size ? sheet.size->span : sheet.span,
                                   "there is no standard size " + platewright::quoted(wanted));
    add_suggestion(problem, wanted, known, "the sizes are ");
    return std::nullopt;
}

void report_doubts(const SpecifiedWorkshop& sheet, const Body& body, Diagnostics& to) {
    for (const BodyDoubt& doubt : doubts_about(body)) {
        const auto& written = sheet.body[static_cast<std::size_t>(doubt.about)];
        Diagnostic warning;
        warning.severity = Severity::warning;
        warning.code = "cli.unlikely-measures";
        warning.message = doubt.found;
        warning.span = written ? written->span : sheet.span;
        warning.hints = {doubt.rule, "measure him once more; the sheets are drawn as written"};
        to.add(std::move(warning));
    }
}

/// One run through everything, for one man.
class Tailoring {
  public:
    Tailoring(const TailorJob& job,
              const Uniform& uniform,
              const Paper& paper,
              const Typesetter& type,
              Diagnostics& to)
        : job_(job),
          uniform_(uniform),
          paper_(paper),
          ruler_(type),
          to_(to),
          body_(body_of(job.sheet, job.size)),
          stated_(stated_by(uniform)),
          unit_(own_unit_of(uniform)) {}

    TailorWork work() {
        report_doubts(job_.sheet, body_, to_);
        grade();
        TailorWork made;
        made.body = body_;
        name(made.sheets);
        draw_flats(made.sheets);
        draw_placements(made.sheets);
        cut(made);
        const TableSource source{
            uniform_.language, unit_, body_, uniform_, flats_, dimensions_, views_};
        made.sheets.man = man_table(source);
        made.sheets.girths = girth_table(source);
        made.sheets.measures = {garment_table(source)};
        made.sheets.placement_tables = placement_tables(source);
        made.sheets.seams = seam_table(uniform_.language, made.sheets.pieces);
        made.sheets.work = order_of_work(uniform_.language, made.sheets.pieces);
        made.sheets.materials = material_tables(uniform_.language, made.materials);
        made.sheets.piece_sums = piece_table(uniform_.language, made.sheets.pieces);
        return made;
    }

  private:
    const TailorJob& job_;
    const Uniform& uniform_;
    const Paper& paper_;
    sheet::Ruler ruler_;
    Diagnostics& to_;
    Body body_;
    StatedMeasures stated_;
    OwnUnit unit_;
    std::map<std::string, std::shared_ptr<const Template>> templates_;
    std::map<std::string, Flat> flats_;
    std::map<std::string, std::vector<Dimension>> dimensions_;
    /// Those that are drawn, in the order of the garments.
    std::vector<std::string> views_;

    void grade() {
        for (const GarmentView& each : kGarmentViews) {
            const auto view = job_.job.views.find(each.view);
            if (view == job_.job.views.end() || !asked(job_.sheet.garments, each.garment) ||
                !is_worn(uniform_, each.garment)) {
                continue;
            }
            views_.emplace_back(each.view);
            const Flat drawn = flat_of(uniform_, *view->second);
            const Moving moving = grading_of(hang_of(each.view), body_, stated_, drawn);
            templates_[each.view] = moved(*view->second, moving);
            flats_[each.view] = flat_of(uniform_, *templates_[each.view]);
            dimensions_[each.view] = dimensions_of(each.view, flats_[each.view], stated_);
            report_contradictions(each.view);
        }
    }

    void report_contradictions(const std::string& view) {
        constexpr double believed = 1.5;
        for (const Dimension& each : dimensions_[view]) {
            if (!each.stated || std::abs(each.mm() - each.stated->mm) <= believed) {
                continue;
            }
            Diagnostic warning;
            warning.severity = Severity::warning;
            warning.code = "cli.stated-measure";
            warning.message = each.what + " is ordered as " +
                              platewright::quoted(each.stated->printed) + ", and the drawing has " +
                              format_number(each.mm(), 0) + " mm";
            warning.span = job_.sheet.span;
            warning.hints = {"the drawing cannot follow so far: look at the measure and its unit"};
            to_.add(std::move(warning));
        }
    }

    void name(WorkshopSheets& sheets) const {
        const SheetWords& words = job_.sheet.words;
        sheets.title = words.title.text.empty() ? uniform_.title : words.title.text;
        sheets.subtitle = words.subtitle ? words.subtitle->text : uniform_.title;
        sheets.drawn_by = words.drawn_by ? words.drawn_by->text : uniform_.drawn_by;
        sheets.source = words.source ? words.source->text : "";
        for (const WrittenText& note : words.notes) {
            sheets.notes.push_back(note.text);
        }
        sheets.language = uniform_.language;
        sheets.unit = unit_;
        for (const std::string_view each : kWorkshopSheets) {
            if (job_.sheet.sheets.empty()) {
                sheets.order.emplace_back(each);
            }
        }
        for (const WrittenText& each : job_.sheet.sheets) {
            sheets.order.push_back(each.text);
        }
        sheets.allowance = job_.sheet.allowance ? job_.sheet.allowance->measure.mm : 0;
    }

    /// In the order of the garments, not of the alphabet.
    void draw_flats(WorkshopSheets& sheets) {
        // One scale for all, so that they can be laid side by side.
        int scale = job_.sheet.scale;
        for (const auto& [name, flat] : flats_) {
            scale = std::max(scale, flat_scale(box_of(flat), paper_));
        }
        for (const GarmentView& each : kGarmentViews) {
            const auto view = templates_.find(each.view);
            if (view == templates_.end()) {
                continue;
            }
            std::vector<Dimension> whole;
            for (const Dimension& dimension : dimensions_[each.view]) {
                if (dimension.frame.empty()) {
                    whole.push_back(dimension);
                }
            }
            const Flat& flat = flats_.at(each.view);
            sheets.flats.push_back(
                {std::string(each.garment),
                 compose(uniform_, *view->second, job_.job.ornaments, scale, box_of(flat)),
                 std::move(whole),
                 {},
                 flat});
            sheets.flats.back().lines =
                flat_dimensions(sheets.flats.back(), paper_, measured(flat));
        }
    }

    sheet::MeasuredFlat measured(const Flat& flat) {
        return {flat, uniform_.language, unit_, ruler_};
    }

    /// A part of the garment that is drawn large, with its dimensions.
    struct Placement {
        std::vector<Dimension> shown;
        Template drawn;
        Flat flat;
    };

    [[nodiscard]] std::optional<Placement> placement_of(const PlacementFrame& each,
                                                        std::vector<PlacementWindow>& windows) {
        Placement made;
        Rect parts;
        for (const Dimension& dimension : dimensions_[each.view]) {
            if (dimension.frame == each.frame) {
                parts.include(dimension.from);
                parts.include(dimension.to);
                made.shown.push_back(dimension);
            }
        }
        if (made.shown.empty()) {
            return std::nullopt;
        }
        made.drawn = only_shown(*templates_[each.view], each);
        made.flat = flat_of(uniform_, made.drawn);
        include_parts(made.flat, each, parts);
        windows.push_back(placement_window(parts, made.shown, measured(made.flat), paper_));
        return made;
    }

    void draw_placements(WorkshopSheets& sheets) {
        std::vector<PlacementWindow> windows;
        std::vector<Placement> placements;
        std::vector<std::string> titles;
        for (const PlacementFrame& each : kPlacements) {
            if (auto made = placement_of(each, windows)) {
                placements.push_back(*std::move(made));
                titles.emplace_back(each.title);
            }
        }
        level_windows(windows, titles, uniform_.language, paper_, ruler_);
        for (std::size_t i = 0; i < placements.size(); ++i) {
            Placement& each = placements[i];
            sheets.placements.push_back(
                {titles[i],
                 compose(
                     uniform_, each.drawn, job_.job.ornaments, windows[i].scale, windows[i].frame),
                 std::move(each.shown),
                 std::move(windows[i].lines),
                 std::move(each.flat)});
        }
    }

    static bool begins_with_any(std::string_view name, std::string_view beginnings) {
        for (std::size_t from = 0; from < beginnings.size();) {
            const std::size_t end = std::min(beginnings.find(' ', from), beginnings.size());
            if (name.starts_with(beginnings.substr(from, end - from))) {
                return true;
            }
            from = end + 1;
        }
        return false;
    }

    static bool on_other_side(std::string_view part, const PlacementFrame& shown) {
        const bool right = std::string_view(shown.frame) == "right sleeve";
        return part.find(right ? "left" : "right") != std::string_view::npos;
    }

    /// Neighbours that the window would cut off are left out: they would be mistaken for parts.
    static Template only_shown(Template drawn, const PlacementFrame& shown) {
        std::erase_if(drawn.parts, [&shown](const Part& part) {
            return on_other_side(part.name, shown) || (!part.name.starts_with(shown.whole) &&
                                                       !begins_with_any(part.name, shown.round));
        });
        return drawn;
    }

    /// What is measured is seen whole, on the side that is measured.
    static void include_parts(const Flat& flat, const PlacementFrame& shown, Rect& frame) {
        for (const FlatPart& part : flat.parts) {
            for (const Chain& chain : part.outline) {
                for (const Point p : chain) {
                    if (part.name.starts_with(shown.whole)) {
                        frame.include(p);
                    }
                }
            }
        }
    }

    /// Garment by garment, in the order in which they were drafted.
    static void number_pieces(std::vector<PatternPiece>& pieces) {
        const auto place = [](const PatternPiece& piece) {
            const auto found =
                std::ranges::find(kGarmentViews, piece.garment, &GarmentView::garment);
            return found - kGarmentViews.begin();
        };
        std::ranges::stable_sort(pieces, {}, place);
        int number = 0;
        for (PatternPiece& piece : pieces) {
            piece.number_in_list = ++number;
            for (PatternPiece& of : pieces) {
                if (piece.repeats && of.stuff == "cloth" && of.garment == piece.garment &&
                    of.name == piece.name) {
                    of.lining_alike = number;
                }
            }
        }
    }

    void cut(TailorWork& made) const {
        PatternSource source{uniform_, body_, flats_};
        source.allowance = made.sheets.allowance;
        std::optional<Flat> ornament;
        if (const auto drawing =
                job_.job.ornaments.find(uniform_.word(property_id("turnbacks.ornament")));
            drawing != job_.job.ornaments.end() && flats_.contains("flat-coat-front")) {
            ornament = flat_of(uniform_, *drawing->second);
            source.ornament = &*ornament;
            source.ornament_frame = frame_of(*drawing->second).height();
        }
        made.sheets.pieces = garment_pieces(source);
        const std::vector<PatternPiece> facings = facing_pieces(source, made.sheets.pieces);
        made.sheets.pieces.insert(made.sheets.pieces.end(), facings.begin(), facings.end());
        const std::vector<PatternPiece> lesser = lesser_pieces(source, made.sheets.pieces);
        made.sheets.pieces.insert(made.sheets.pieces.end(), lesser.begin(), lesser.end());
        number_pieces(made.sheets.pieces);
        letter_seams(made.sheets.pieces);
        made.sheets.whole_garments = job_.sheet.whole_garments;
        for (const PatternPiece& piece : made.sheets.pieces) {
            if (!piece.repeats && (!piece.draft || job_.sheet.whole_garments)) {
                made.sheets.full_size.push_back(piece);
            }
        }
        MaterialRules rules;
        rules.language = uniform_.language;
        if (job_.sheet.cloth_width) {
            rules.cloth_width = job_.sheet.cloth_width->measure.mm;
            rules.cloth_width_printed = job_.sheet.cloth_width->measure.printed;
        }
        made.materials = materials_of(source, made.sheets.pieces, rules);
        made.sheets.cloths = cloth_plans(uniform_.language, made.materials, rules);
    }
};

class WorkshopSheet : public Sheet {
  public:
    WorkshopSheet(const Workshop& workshop, TailorJob job)
        : workshop_(workshop), job_(std::move(job)) {}

    [[nodiscard]] std::optional<Document> draw(const Printing& printing,
                                               const Typesetter& type,
                                               Diagnostics& to,
                                               Timings& timings) const override {
        const auto work = timings.measure(
            "compose", [&] { return tailor_work(workshop_, job_, printing.paper, type, to); });
        if (!work) {
            return std::nullopt;
        }
        return timings.measure(
            "layout", [&] { return lay_out_workshop(work->sheets, printing.paper, type, to); });
    }

  private:
    const Workshop& workshop_;
    TailorJob job_;
};

}  // namespace

std::optional<TailorJob> prepare_tailor(Workshop& workshop,
                                        FileId file,
                                        Diagnostics& to,
                                        Timings& timings) {
    auto sheet = read_workshop(workshop.sources(), file, to);
    if (!sheet) {
        return std::nullopt;
    }
    std::vector<WrittenText> views;
    views.reserve(std::size(kGarmentViews));
    for (const GarmentView& each : kGarmentViews) {
        views.push_back({each.view, sheet->man.span});
    }
    auto job = workshop.prepare_named(sheet->man, views, to, timings);
    if (job && sheet->words.language) {
        job->plate.language = workshop.language_of(sheet->words.language);
    }
    const auto sizes = job ? workshop.sizes_of(*job, to) : std::nullopt;
    const auto size = sizes ? size_of(*sheet, *sizes, to) : std::nullopt;
    return size ? std::optional(TailorJob{std::move(*sheet), std::move(*job), *size})
                : std::nullopt;
}

std::optional<TailorWork> tailor_work(const Workshop& workshop,
                                      const TailorJob& job,
                                      const Paper& paper,
                                      const Typesetter& type,
                                      Diagnostics& to) {
    const auto uniform = workshop.uniform_of(job.job, to);
    return uniform ? std::optional(Tailoring(job, *uniform, paper, type, to).work()) : std::nullopt;
}

std::unique_ptr<Sheet> prepare_workshop_sheet(Workshop& workshop,
                                              FileId file,
                                              Diagnostics& to,
                                              Timings& timings) {
    auto job = prepare_tailor(workshop, file, to, timings);
    return job ? std::make_unique<WorkshopSheet>(workshop, std::move(*job)) : nullptr;
}

}  // namespace platewright::cli
