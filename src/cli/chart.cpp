// SPDX-License-Identifier: MIT
// Charts of regiments, ranks, service and colours.
#include "cli/chart.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "base/text.h"
#include "cli/chart_frames.h"
#include "cli/sample.h"
#include "compose/material_words.h"
#include "layout/chart.h"
#include "resolve/change.h"
#include "resolve/regulation_in_force.h"
#include "words/chart_messages.h"
#include "words/sheet_messages.h"
#include "words/terms.h"

namespace platewright::cli {
namespace {

/// About as wide as a lens is beside its man, for the weight of its lines.
constexpr double kLensOnMan = 0.7;

/// A man of the chart with the cell he fills.
struct ShownMan {
    Job job;
    Uniform uniform;
    std::size_t group = 0;
    std::size_t entry = 0;
};

/// The words of the whole chart, and the men to be drawn into it.
struct ChartDraft {
    Chart chart;
    ChartOf of = ChartOf::regiments;
    std::vector<ShownMan> men;
};

class ChartSheet : public Sheet {
  public:
    explicit ChartSheet(ChartDraft draft) : draft_(std::move(draft)) {}

    [[nodiscard]] std::optional<Document> draw(const Printing& printing,
                                               const Typesetter& type,
                                               Diagnostics& to,
                                               Timings& timings) const override {
        Chart chart = draft_.chart;
        chart.ink = printing.ink;
        timings.measure("compose", [&] { draw_men(chart, printing, type); });
        return timings.measure("layout",
                               [&] { return lay_out_chart(chart, printing.paper, type, to); });
    }

  private:
    ChartDraft draft_;

    [[nodiscard]] static const Template& front_of(const Job& job) {
        return *job.views.find("front")->second;
    }

    /// What is enlarged of each man: nothing where a chart is not about marks. The plain man is
    /// shown where the first of the others is marked, as a measure for them.
    [[nodiscard]] std::vector<std::optional<Rect>> enlarged() const {
        std::vector<std::optional<Rect>> boxes(draft_.men.size());
        if (draft_.of == ChartOf::regiments) {
            return boxes;
        }
        const Uniform& plain = draft_.men.front().uniform;
        for (std::size_t i = 1; i < boxes.size(); ++i) {
            boxes[i] = box_of_difference(plain, draft_.men[i].uniform, front_of(draft_.men[i].job));
            boxes.front() = boxes.front() ? boxes.front() : boxes[i];
        }
        return boxes;
    }

    void draw_men(Chart& chart, const Printing& printing, const Typesetter& type) const {
        if (draft_.men.empty()) {
            return;
        }
        const std::vector<std::optional<Rect>> boxes = enlarged();
        std::vector<const Uniform*> all;
        all.reserve(draft_.men.size());
        for (std::size_t i = 0; i < boxes.size(); ++i) {
            all.push_back(&draft_.men[i].uniform);
            entry_of(chart, draft_.men[i]).has_detail = boxes[i].has_value();
        }
        if (boxes.front()) {
            entry_of(chart, draft_.men.front())
                .lines.push_back(say(chart.language, messages::kNoMark));
        }
        const Template& front = front_of(draft_.men.front().job);
        const Rect whole = chart_frame(front, all);
        const Rect shoulders = between_elbows(front, whole);
        chart.standing = true;
        chart.aspect = shoulders.height() / std::max(shoulders.width(), 1.0);
        const double scale = chart_scale(chart, shoulders.width(), printing.paper, type);
        for (std::size_t i = 0; i < boxes.size(); ++i) {
            const ShownMan& man = draft_.men[i];
            const Job& job = man.job;
            ChartEntry& entry = entry_of(chart, man);
            entry.picture =
                compose(man.uniform, front_of(job), job.ornaments, scale, {}, printing.ink);
            // Swords and drums may stand out of it.
            entry.picture->frame = shoulders;
            if (boxes[i]) {
                const Rect seen = seen_through_lens(*boxes[i]);
                const double at = scale * seen.width() / (kLensOnMan * shoulders.width());
                const Uniform bare = without_a_sword(man.uniform);
                entry.detail = compose(bare, front_of(job), job.ornaments, at, seen, printing.ink);
            }
            if (draft_.of == ChartOf::regiments) {
                entry.button = button_of(man, scale, whole.width(), printing.ink);
            }
        }
    }

    static ChartEntry& entry_of(Chart& chart, const ShownMan& man) {
        return chart.groups[man.group].entries[man.entry];
    }

    /// As large as a third of a cell that is so wide on the man, whatever its true size.
    static std::optional<Figure> button_of(const ShownMan& man,
                                           double scale,
                                           double cell,
                                           Ink ink) {
        const auto button = man.job.views.find("button");
        if (button == man.job.views.end()) {
            return std::nullopt;
        }
        const double at = frame_of(*button->second).width() * scale / (cell * 0.3);
        return compose(man.uniform, *button->second, man.job.ornaments, at, {}, ink);
    }
};

/// A whole number with a true minus sign.
std::string signed_number(double number) {
    const std::string digits = format_number(std::abs(number), 0);
    return number < 0 && digits != "0" ? "\u2212" + digits : digits;
}

/// Collects the groups of a chart.
class Drafter {
  public:
    Drafter(Workshop& workshop, const SpecifiedChart& sheet, Diagnostics& to)
        : workshop_(workshop), sheet_(sheet), to_(to) {
        draft_.of = sheet.of;
        draft_.chart.language = workshop.language_of(sheet.words.language);
        draft_.chart.title = sheet.words.title.text;
        draft_.chart.subtitle = text_of(sheet.words.subtitle);
        draft_.chart.drawn_by = text_of(sheet.words.drawn_by);
        draft_.chart.source = text_of(sheet.words.source);
        for (const WrittenText& note : sheet.words.notes) {
            draft_.chart.notes.push_back(note.text);
        }
    }

    std::optional<ChartDraft> draft() {
        const std::size_t errors = to_.error_count();
        if (sheet_.of == ChartOf::colours) {
            add_palettes();
        } else if (const auto law = law_of()) {
            add_men(*law);
        }
        if (to_.error_count() == errors && draft_.chart.groups.empty()) {
            report_nothing();
        }
        return to_.error_count() == errors ? std::optional(std::move(draft_)) : std::nullopt;
    }

  private:
    Workshop& workshop_;
    const SpecifiedChart& sheet_;
    Diagnostics& to_;
    ChartDraft draft_;
    std::optional<Job> any_;

    void report_nothing() {
        constexpr std::array<std::string_view, 4> things = {
            "regiments", "ranks", "steps of service", "colours"};
        const std::string thing(things[static_cast<std::size_t>(sheet_.of)]);
        to_.error("cli.chart-of-nothing",
                  sheet_.regulation ? sheet_.regulation->span : sheet_.span,
                  "there are no " + thing + " to show")
            .hints.emplace_back(
                "name a regulation that has some, or write 'of:' with what to show");
    }

    /// A man as the chart's own keys describe him.
    [[nodiscard]] SpecifiedPlate plate() const {
        SpecifiedPlate man;
        man.title = sheet_.words.title;
        man.language = sheet_.words.language;
        man.regulation = sheet_.regulation;
        man.regiment = sheet_.regiment;
        man.company = sheet_.company;
        man.rank = sheet_.rank;
        man.as_of = sheet_.as_of;
        man.views = {{"front", sheet_.span}};
        // Arms and belts would hide what the chart is about.
        for (const char* hiding : {"belts.worn", "box.leather", "musket.carried"}) {
            man.values[property_id(hiding)] = {None{}, sheet_.span};
        }
        return man;
    }

    /// What is in force for them all; points into `any_`.
    std::optional<InForce> law_of() {
        if (!sheet_.regulation && !sheet_.regiment) {
            to_.error("read.missing-key", sheet_.span, "this chart names no 'regulation'")
                .hints.emplace_back("add a line such as 'regulation: regulation-1784.yaml'");
            return std::nullopt;
        }
        SpecifiedPlate man = plate();
        man.rank.reset();
        if (sheet_.of == ChartOf::regiments) {
            man.regiment.reset();
            man.company.reset();
        }
        any_ = workshop_.prepare(std::move(man), false, to_);
        return any_ ? regulation_in_force(*any_->orders, sheet_.as_of, to_) : std::nullopt;
    }

    void add_men(const InForce& law) {
        if (draft_.chart.source.empty()) {
            for (const SpecifiedRegulation* edition : law.editions) {
                const std::string title =
                    edition->grounds.source ? edition->grounds.source->text : edition->title.text;
                draft_.chart.source += (draft_.chart.source.empty() ? "" : "; ") + title;
            }
        }
        switch (sheet_.of) {
            case ChartOf::regiments:
                return add_regiments(law);
            case ChartOf::ranks:
                return add_ranks(law);
            case ChartOf::service:
                return add_service(law);
            case ChartOf::colours:
                return;
        }
    }

    /// Dresses a man and puts him into the last group; his uniform, or null after an error.
    const Uniform* add_man(SpecifiedPlate man, ChartEntry entry) {
        auto job = workshop_.prepare(std::move(man), true, to_);
        auto uniform = job ? workshop_.uniform_of(*job, to_) : std::nullopt;
        if (!uniform) {
            return nullptr;
        }
        if (draft_.chart.groups.empty()) {
            draft_.chart.groups.emplace_back();
        }
        ChartGroup& group = draft_.chart.groups.back();
        draft_.men.push_back({std::move(*job),
                              std::move(*uniform),
                              draft_.chart.groups.size() - 1,
                              group.entries.size()});
        group.entries.push_back(std::move(entry));
        return &draft_.men.back().uniform;
    }

    ChartEntry& last_entry() { return draft_.chart.groups.back().entries.back(); }

    /// Regiments of one colour and class stand together, in the order of their numbers.
    void add_regiments(const InForce& law) {
        std::vector<const PlaceInForce*> rest;
        for (const PlaceInForce& place : law.places) {
            rest.push_back(&place);
        }
        const auto group_of = [](const PlaceInForce* place) {
            const auto word = [](const SeriesWord& part) {
                return part.text != nullptr ? part.text->text : std::string();
            };
            return std::pair(word(place->colour), word(place->corps_class));
        };
        while (!rest.empty()) {
            const auto wanted = group_of(rest.front());
            ChartGroup group;
            group.title = wanted.first;
            draft_.chart.groups.push_back(std::move(group));
            for (const PlaceInForce* place : rest) {
                if (group_of(place) == wanted) {
                    add_regiment(*place);
                }
            }
            std::erase_if(rest,
                          [&](const PlaceInForce* place) { return group_of(place) == wanted; });
        }
    }

    void add_regiment(const PlaceInForce& place) {
        SpecifiedPlate man = plate();
        const std::string number = std::to_string(place.number);
        man.regiment = WrittenText{number, place.span};
        ChartEntry entry;
        entry.name = number + (place.name.text != nullptr ? "  " + place.name.text->text : "");
        const Uniform* dressed = add_man(std::move(man), std::move(entry));
        if (dressed == nullptr) {
            return;
        }
        ChartGroup& group = draft_.chart.groups.back();
        if (const Material* colour = dressed->material(property_id("facings.cloth"))) {
            group.colour = sample_of(*colour);
            group.title = group.title == colour->name ? colour->printed() : group.title;
        }
        last_entry().lines.push_back(shown_words(*dressed, place));
    }

    /// "lapels and cuffs; white buttons".
    [[nodiscard]] std::string shown_words(const Uniform& man, const PlaceInForce& place) const {
        std::string words = place.shows.text != nullptr ? place.shows.text->text : std::string();
        const Material* metal = man.material(property_id("buttons.metal"));
        if (metal != nullptr) {
            words += (words.empty() ? "" : "; ") + say(draft_.chart.language,
                                                       messages::kMetalButtons,
                                                       {material_in_words(man.language, *metal)});
        }
        return words;
    }

    void add_ranks(const InForce& law) {
        std::optional<Uniform> first;
        for (const RankEntry& rank : law.ranks) {
            SpecifiedPlate man = with_a_regiment(law);
            man.rank = WrittenText{rank.name, sheet_.span};
            const Named named = rank.named();
            ChartEntry entry;
            entry.name = named.title.empty() ? named.name : named.title;
            const std::string means = named.means.empty() ? named.name : named.means;
            if (!same_name(means, entry.name)) {
                entry.lines.push_back(means);
            }
            if (const Uniform* dressed = add_man(std::move(man), std::move(entry))) {
                add_what_differs(*dressed, first);
            }
        }
    }

    void add_service(const InForce& law) {
        std::optional<Uniform> first;
        SpecifiedPlate recruit = with_a_regiment(law);
        recruit.years_of_service = WrittenYears{0, sheet_.span};
        if (law.service.empty()) {
            return;
        }
        if (const Uniform* dressed =
                add_man(std::move(recruit),
                        {say(draft_.chart.language, messages::kRecruit), {}, {}, {}, {}})) {
            add_what_differs(*dressed, first);
        }
        for (const ServiceInForce& each : law.service) {
            constexpr double a_while = 0.5;
            SpecifiedPlate man = with_a_regiment(law);
            const double years = each.step->years + (each.step->more_than ? a_while : 0);
            man.years_of_service = WrittenYears{years, sheet_.span};
            if (!each.step->ranks.empty()) {
                man.rank = each.step->ranks.front();
            }
            ChartEntry entry;
            const Message& message =
                each.step->more_than ? messages::kMoreThanYears : messages::kFromYears;
            entry.name = say(draft_.chart.language,
                             message,
                             {number_words(draft_.chart.language, each.step->years, 2)});
            for (const WrittenText& rank : each.step->ranks) {
                entry.lines.push_back(rank.text);
            }
            if (const Uniform* dressed = add_man(std::move(man), std::move(entry))) {
                add_what_differs(*dressed, first);
            }
        }
    }

    /// Marks are shown on somebody's coat: of the first regiment, where the chart does not say.
    [[nodiscard]] SpecifiedPlate with_a_regiment(const InForce& law) const {
        SpecifiedPlate man = plate();
        if (!man.regiment && !law.places.empty()) {
            man.regiment =
                WrittenText{std::to_string(law.places.front().number), law.places.front().span};
        }
        return man;
    }

    /// Beneath the last man, in what his marks differ from those of the first.
    void add_what_differs(const Uniform& man, std::optional<Uniform>& first) {
        if (!first) {
            first = man;
            return;
        }
        const auto ordinary = captions_of(*first).particulars;
        const Captions captions = captions_of(man);
        // In one go: a line for each would be a ladder of short lines.
        std::string said;
        const auto say_too = [&](const std::string& words) {
            said += (said.empty() ? "" : "; ") + words;
        };
        for (const auto& particular : captions.particulars) {
            const bool known = std::ranges::find(ordinary, particular) != ordinary.end();
            if (!known && particular.first != term(draft_.chart.language, "buttons")) {
                say_too(named(particular.first, particular.second));
            }
        }
        for (const std::string& words :
             what_is_put_on(compare(*first, man).changes, captions.callouts)) {
            say_too(words);
        }
        for (PropertyId id = 0; id < properties().size(); ++id) {
            const bool ornament = properties()[id].kind == Kind::ornament && man.speaks(id);
            if (ornament && man.word(id) != "none" && man.word(id) != first->word(id)) {
                say_too(named(term(draft_.chart.language, properties()[id].called()),
                              term(draft_.chart.language, man.word(id))));
            }
        }
        if (!said.empty()) {
            last_entry().lines.push_back(std::move(said));
        }
    }

    /// `sash: green`; the marks that the whole chart is about need no name.
    [[nodiscard]] std::string named(const std::string& name, const std::string& value) const {
        const Language language = draft_.chart.language;
        const char* about = draft_.of == ChartOf::ranks ? "rank marks" : "service";
        return name == term(language, about)
                   ? value
                   : say(language, messages::kNameAndValue, {name, value});
    }

    void add_palettes() {
        const std::vector<SpecifiedPalette> palettes = workshop_.all_palettes(to_);
        std::vector<std::string> known;
        known.reserve(palettes.size());
        for (const SpecifiedPalette& palette : palettes) {
            known.push_back(palette.name);
        }
        for (const WrittenText& asked : sheet_.palettes) {
            if (std::ranges::none_of(
                    known, [&](const std::string& name) { return same_name(name, asked.text); })) {
                Diagnostic& problem =
                    to_.error("cli.unknown-palette",
                              asked.span,
                              "there is no palette " + platewright::quoted(asked.text));
                add_suggestion(problem, asked.text, known, "the palettes are ");
            }
        }
        for (const SpecifiedPalette& palette : palettes) {
            const bool wanted = sheet_.palettes.empty() ||
                                std::ranges::any_of(sheet_.palettes, [&](const WrittenText& asked) {
                                    return same_name(palette.name, asked.text);
                                });
            if (wanted) {
                add_palette(palette);
            }
        }
        draft_.chart.aspect = 0.5;
        draft_.chart.least_aspect = 0.26;
    }

    void add_palette(const SpecifiedPalette& palette) {
        ChartGroup group;
        group.title = palette.name;
        for (const PaletteEntry& colour : palette.entries) {
            ChartEntry entry;
            const Language language = draft_.chart.language;
            const std::string& made_of = colour.made_of_in(language);
            entry.name = colour.name_in(language);
            entry.colour = KeyEntry{
                entry.name, made_of, colour.colour, colour.kind == SubstanceKind::metal, {}};
            const Lab lab = to_lab_d65(colour.colour);
            entry.lines.push_back("L " + signed_number(lab.l) + "  a " + signed_number(lab.a) +
                                  "  b " + signed_number(lab.b));
            if (!made_of.empty()) {
                entry.lines.push_back(made_of);
            }
            group.entries.push_back(std::move(entry));
        }
        draft_.chart.groups.push_back(std::move(group));
    }
};

}  // namespace

std::unique_ptr<Sheet> prepare_chart(Workshop& workshop,
                                     FileId file,
                                     Diagnostics& to,
                                     Timings& timings) {
    const auto written =
        timings.measure("read", [&] { return read_chart(workshop.sources(), file, to); });
    if (!written) {
        return nullptr;
    }
    auto draft =
        timings.measure("resolve", [&] { return Drafter(workshop, *written, to).draft(); });
    return draft ? std::make_unique<ChartSheet>(std::move(*draft)) : nullptr;
}

}  // namespace platewright::cli
