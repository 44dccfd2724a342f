// SPDX-License-Identifier: MIT
// Comparisons of men and regiments.
#include "cli/comparison.h"

#include <algorithm>
#include <array>
#include <functional>
#include <map>
#include <set>
#include <utility>

#include "base/text.h"
#include "cli/carried.h"
#include "cli/compared.h"
#include "cli/compared_rows.h"
#include "cli/from_afar.h"
#include "cli/wardrobe_views.h"
#include "layout/comparison.h"
#include "resolve/change.h"
#include "words/comparison_messages.h"
#include "words/sheet_messages.h"
#include "words/terms.h"

namespace platewright::cli {
namespace {

/// A man with his uniform.
struct DressedMan {
    Job job;
    Uniform uniform;
    /// What his views do not show of what he wears, by key.
    std::set<std::string> hidden = {};

    [[nodiscard]] bool shows(PropertyId id) const {
        return !hidden.contains(std::string(properties()[id].key));
    }
};

/// Whether two men have the same of a property: colours of one name may differ.
bool has_same(const Uniform& a, const Uniform& b, PropertyId id) {
    const Material* one = a.speaks(id) ? a.material(id) : nullptr;
    const Material* other = b.speaks(id) ? b.material(id) : nullptr;
    return value_words(a, id) == value_words(b, id) &&
           (one == nullptr || other == nullptr ||
            (one->colour == other->colour && one->made_of == other->made_of));
}

class ComparisonSheet : public Sheet {
  public:
    ComparisonSheet(SheetWords words, Language language, std::vector<DressedMan> men)
        : words_(std::move(words)), language_(language), men_(std::move(men)) {}

    [[nodiscard]] std::optional<Document> draw(const Printing& printing,
                                               const Typesetter& type,
                                               Diagnostics& to,
                                               Timings& timings) const override {
        MenCompared compared;
        timings.measure("compose", [&] { compared = compared_men(printing); });
        return timings.measure(
            "layout", [&] { return lay_out_comparison(compared, printing.paper, type, to); });
    }

  private:
    SheetWords words_;
    Language language_;
    std::vector<DressedMan> men_;

    [[nodiscard]] MenCompared compared_men(const Printing& printing) const {
        MenCompared made;
        made.title = words_.title.text;
        made.subtitle = text_of(words_.subtitle);
        made.drawn_by = text_of(words_.drawn_by);
        made.source = text_of(words_.source);
        for (const WrittenText& note : words_.notes) {
            made.notes.push_back(note.text);
        }
        made.language = language_;
        made.ink = printing.ink;
        std::vector<std::vector<Rect>> frames;
        for (const DressedMan& man : men_) {
            frames.emplace_back();
            for (const Template* view : views_of(man.job)) {
                frames.back().push_back(close_frame_of(*view, man.uniform));
            }
        }
        const double scale = comparison_scale(frames, printing.paper);
        for (std::size_t i = 0; i < men_.size(); ++i) {
            made.men.push_back(drawn(men_[i], frames[i], scale, printing.ink));
        }
        const std::vector<PropertyId> order = by_what_is_seen(made.men);
        add_differences(order, printing, made);
        add_carried_over(uniforms(), language_, made);
        made.words.push_back(told_apart(order, made));
        return made;
    }

    static ComparedMan drawn(const DressedMan& man,
                             const std::vector<Rect>& frames,
                             double scale,
                             Ink ink) {
        ComparedMan made;
        made.name = man.uniform.title;
        made.note = man.uniform.subtitle;
        const std::vector<const Template*> views = views_of(man.job);
        for (std::size_t i = 0; i < views.size(); ++i) {
            made.views.push_back(
                compose(man.uniform, *views[i], man.job.ornaments, scale, {}, ink));
            made.views.back().frame = frames[i];
        }
        return made;
    }

    [[nodiscard]] std::vector<const Uniform*> uniforms() const {
        std::vector<const Uniform*> men;
        for (const DressedMan& man : men_) {
            men.push_back(&man.uniform);
        }
        return men;
    }

    /// Frames that show a part of a man and no detail.
    static constexpr auto kLargeFrames =
        std::to_array<std::string_view>({"body", "trunk", "legs", "breeches", "side", "button"});

    /// The frame that shows a property best: its own, else the first of its group; empty if there
    /// is none that is worth enlarging.
    static std::string_view frame_of_thing(PropertyId id) {
        std::string_view frame = properties()[id].frame;
        for (const Property& row : properties()) {
            if (frame.empty() && row.group() == properties()[id].group()) {
                frame = row.frame;
            }
        }
        const bool large = std::ranges::find(kLargeFrames, frame) != kLargeFrames.end();
        return large ? std::string_view() : frame;
    }

    /// The frames of what differs, those first that show most of it.
    static std::vector<std::string_view> frames_that_show_most(
        const std::vector<DifferingRow>& rows) {
        std::vector<std::string_view> frames;
        std::map<std::string_view, std::size_t> shown;
        for (const DifferingRow& row : rows) {
            const std::string_view frame = frame_of_thing(row.property);
            if (!frame.empty() && shown[frame]++ == 0) {
                frames.push_back(frame);
            }
        }
        std::ranges::stable_sort(
            frames, std::greater{}, [&](std::string_view frame) { return shown[frame]; });
        return frames;
    }

    /// More would be the plates of the men.
    static constexpr std::size_t kMostDetails = 4;

    /// Seen near, a musket beside him would be a strip at the edge of the picture.
    static Uniform with_empty_hand(Uniform man) {
        man.decided[property_id("musket.carried")].value = Value{};
        return man;
    }

    /// The part of every man that shows what they differ in, while there is room.
    void add_detail(std::string_view frame, const Printing& printing, MenCompared& made) const {
        if (made.details.size() >= kMostDetails) {
            return;
        }
        ComparedDetail detail{term(language_, frame), {}};
        for (const DressedMan& man : men_) {
            const Template& view = *views_of(man.job).front();
            const auto found = frame_of(view, frame);
            if (!found) {
                return;
            }
            const Rect window = near_window(*found, men_.size(), printing.paper);
            const double scale = near_scale(window, men_.size(), printing.paper);
            detail.pictures.push_back(compose(with_empty_hand(man.uniform),
                                              seen_near(frame, view),
                                              man.job.ornaments,
                                              scale,
                                              window,
                                              printing.ink));
        }
        made.details.push_back(std::move(detail));
    }

    /// What each man has; where colours of one name differ, with what they are made of.
    [[nodiscard]] std::vector<std::string> values_of(PropertyId id) const {
        std::vector<std::string> values;
        for (const DressedMan& man : men_) {
            values.push_back(value_of(man, id));
            const Material* material = man.uniform.speaks(id) ? man.uniform.material(id) : nullptr;
            const bool namesake = std::ranges::any_of(men_, [&](const DressedMan& other) {
                return values.back() == value_of(other, id) &&
                       !has_same(man.uniform, other.uniform, id);
            });
            if (namesake && !values.back().empty() && material != nullptr &&
                !material->made_of.empty()) {
                values.back() += ", " + material->made_of;
            }
        }
        return values;
    }

    /// Nothing of what cannot be seen.
    static std::string value_of(const DressedMan& man, PropertyId id) {
        return man.shows(id) || !is_worn(man.uniform, id) ? value_words(man.uniform, id)
                                                          : std::string();
    }

    [[nodiscard]] bool differs(PropertyId id) const {
        const DressedMan& first = men_.front();
        return !std::ranges::all_of(men_, [&](const DressedMan& man) {
            return first.shows(id) || man.shows(id) ? value_of(first, id) == value_of(man, id) &&
                                                          has_same(first.uniform, man.uniform, id)
                                                    : true;
        });
    }

    /// Properties of what is made or carried, with those of the group first of whose differences
    /// most is seen, so that what the eye meets first stands first. Of another shape all of the
    /// group is seen.
    [[nodiscard]] std::vector<PropertyId> by_what_is_seen(
        const std::vector<ComparedMan>& men) const {
        std::vector<PropertyId> ids;
        std::map<std::string_view, bool> reshaped;
        for (PropertyId id = 0; id < properties().size(); ++id) {
            const Property& row = properties()[id];
            if (row.work != Work::none) {
                ids.push_back(id);
                reshaped[row.group()] |= row.kind == Kind::choice && differs(id);
            }
        }
        std::map<std::string_view, double> area;
        for (const ComparedMan& man : men) {
            std::map<std::string_view, double> of_shapes;
            for (const auto& [key, seen] : man.views.front().seen) {
                const Property& row = properties()[property_id(key)];
                const bool material = row.kind == Kind::cloth || row.kind == Kind::metal;
                const std::string_view group = row.group();
                if (row.work != Work::none && (differs(property_id(key)) || reshaped[group])) {
                    double& most = (material ? area : of_shapes)[group];
                    most = std::max(most, seen.area);
                }
            }
            // Of what has no material of its own, such as pocket flaps, the shape is seen.
            for (const auto& [group, seen] : of_shapes) {
                area.try_emplace(group, seen);
            }
        }
        std::ranges::stable_sort(
            ids, std::greater{}, [&](PropertyId id) { return area[properties()[id].group()]; });
        return ids;
    }

    /// Not if one man has none of a thing and the others' dress does not speak of it.
    [[nodiscard]] bool anybody_has(PropertyId id) const {
        return std::ranges::any_of(men_, [id](const DressedMan& man) {
            return man.shows(id) && is_worn(man.uniform, id);
        });
    }

    /// Rows for what differs, and one paragraph for what everybody has alike.
    void add_differences(const std::vector<PropertyId>& order,
                         const Printing& printing,
                         MenCompared& made) const {
        std::vector<std::string> same;
        std::vector<DifferingRow> rows;
        std::vector<std::string> names;
        for (const PropertyId id : order) {
            const std::vector<std::string> values = values_of(id);
            const bool material = men_.front().uniform.material(id) != nullptr;
            if (differs(id)) {
                if (anybody_has(id)) {
                    rows.push_back({id, values});
                    names.push_back(name_of(id));
                }
            } else if (!values.front().empty() && material) {
                same.push_back(
                    say(language_, messages::kNameAndValue, {name_of(id), values.front()}));
            }
        }
        ComparedRows table(language_, uniforms());
        table.fill(rows, names);
        made.differ = table.things();
        made.notes.insert(made.notes.end(), table.notes().begin(), table.notes().end());
        for (std::size_t i = 0; i < men_.size(); ++i) {
            made.men[i].callouts = what_sets_apart(i, uniforms(), made.men, rows);
            for (ComparedCallout& callout : made.men[i].callouts) {
                callout.row = table.thing_of(callout.row);
            }
        }
        for (const std::string_view frame : frames_that_show_most(rows)) {
            add_detail(frame, printing, made);
        }
        if (!same.empty()) {
            const Message& heading =
                men_.size() > 2 ? messages::kSameForAll : messages::kSameForBoth;
            made.words.push_back({say(language_, heading), {comma_list(same) + "."}});
        }
    }

    /// What all who have the thing call it, if they agree.
    [[nodiscard]] std::string name_of(PropertyId id) const {
        std::set<std::string_view> names;
        for (const DressedMan& man : men_) {
            if (is_worn(man.uniform, id)) {
                names.insert(called_on(man.uniform, id));
            }
        }
        const bool agreed = names.size() == 1 && *names.begin() != properties()[id].called();
        return agreed ? term(language_, *names.begin()) : thing_words(language_, id);
    }

    /// More would be a list, not a hint.
    static constexpr std::size_t kMostHints = 4;

    [[nodiscard]] std::string only_words(const Uniform& man, const std::string& things) const {
        return say(language_, messages::kOnlyHas, {man.title, things});
    }

    /// The things in which two men differ, each once, those first of which most is seen; at last
    /// what only one of them has.
    [[nodiscard]] std::string what_tells(const Uniform& a,
                                         const Uniform& b,
                                         const std::vector<PropertyId>& order) const {
        std::vector<std::string> both;
        std::vector<std::string> only_a;
        std::vector<std::string> only_b;
        std::set<std::string> told;
        for (const PropertyId id : order) {
            const std::string thing = term(language_, properties()[id].called());
            if (has_same(a, b, id) || told.size() >= kMostHints || !told.insert(thing).second) {
                continue;
            }
            const bool has_a = is_worn(a, id);
            const bool has_b = is_worn(b, id);
            (has_a == has_b ? both : has_a ? only_a : only_b).push_back(thing);
        }
        std::string words = comma_list(both);
        for (const auto& [man, only] : {std::pair{&a, &only_a}, {&b, &only_b}}) {
            if (!only->empty()) {
                words += (words.empty() ? "" : "; ") + only_words(*man, comma_list(*only));
            }
        }
        return words.empty() ? say(language_, messages::kNothing) : words;
    }

    /// `lapels`, or "only Private, Tannbruck Regiment has lapels".
    [[nodiscard]] std::string by_words(const Apart& apart,
                                       const Uniform& a,
                                       const Uniform& b) const {
        if (!apart.by) {
            return say(language_, messages::kNothing);
        }
        const std::string thing = term(language_, properties()[*apart.by].called());
        return apart.only_first    ? only_words(a, thing)
               : apart.only_second ? only_words(b, thing)
                                   : thing;
    }

    [[nodiscard]] ComparedWords told_apart(const std::vector<PropertyId>& order,
                                           const MenCompared& made) const {
        ComparedWords words{say(language_, messages::kToldApart), {}};
        Apart least{1000, {}, false, false};
        std::pair<std::size_t, std::size_t> pair;
        for (std::size_t i = 0; i < men_.size(); ++i) {
            for (std::size_t k = i + 1; k < men_.size(); ++k) {
                for (const Eyes& eyes : all_eyes()) {
                    const Apart apart = from_afar({men_[i].uniform, made.men[i].views.front()},
                                                  {men_[k].uniform, made.men[k].views.front()},
                                                  eyes);
                    if (apart.difference < least.difference) {
                        least = apart;
                        pair = {i, k};
                    }
                    if (apart.difference < kLookAlike) {
                        words.paragraphs.push_back(hard_to_tell(i, k, apart, eyes, order));
                    }
                }
            }
        }
        if (words.paragraphs.empty()) {
            words.paragraphs.push_back(easy_to_tell(pair, least));
        }
        words.paragraphs.push_back(say(language_, messages::kHowFarSeen));
        return words;
    }

    [[nodiscard]] std::string hard_to_tell(std::size_t i,
                                           std::size_t k,
                                           const Apart& apart,
                                           const Eyes& eyes,
                                           const std::vector<PropertyId>& order) const {
        return say(language_,
                   messages::kHardAtFiftyMetres,
                   {men_[i].uniform.title,
                    men_[k].uniform.title,
                    say(language_, *eyes.called),
                    number_words(language_, apart.difference, 1),
                    what_tells(men_[i].uniform, men_[k].uniform, order)});
    }

    [[nodiscard]] std::string easy_to_tell(std::pair<std::size_t, std::size_t> pair,
                                           const Apart& least) const {
        const Uniform& a = men_[pair.first].uniform;
        const Uniform& b = men_[pair.second].uniform;
        const std::string number = number_words(language_, least.difference, 1);
        const std::string by = by_words(least, a, b);
        return men_.size() > 2
                   ? say(language_, messages::kEveryPairApart, {number, a.title, b.title, by})
                   : say(language_, messages::kTheTwoApart, {number, by});
    }
};

/// The front, where the sheet does not say.
std::vector<WrittenText> views_asked(const SpecifiedComparison& sheet) {
    return sheet.views.empty() ? std::vector<WrittenText>{{"front", sheet.men.front().span}}
                               : sheet.views;
}

}  // namespace

std::unique_ptr<Sheet> prepare_comparison(Workshop& workshop,
                                          FileId file,
                                          Diagnostics& to,
                                          Timings& timings) {
    const auto written =
        timings.measure("read", [&] { return read_comparison(workshop.sources(), file, to); });
    if (!written) {
        return nullptr;
    }
    const std::size_t errors = to.error_count();
    const Language language = workshop.language_of(written->words.language);
    std::vector<DressedMan> men;
    for (std::optional<Job>& job :
         men_of(workshop, written->men, views_asked(*written), to, timings)) {
        if (!job) {
            continue;
        }
        job->plate.language = language;
        if (auto uniform = workshop.uniform_of(*job, to)) {
            auto hidden = hidden_on(views_of(*job), *uniform);
            men.push_back({std::move(*job), std::move(*uniform), std::move(hidden)});
        }
    }
    if (to.error_count() > errors || men.size() < written->men.size()) {
        return nullptr;
    }
    return std::make_unique<ComparisonSheet>(written->words, language, std::move(men));
}

}  // namespace platewright::cli
