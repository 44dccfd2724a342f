// SPDX-License-Identifier: MIT
// Comparisons of men and regiments.
#include "cli/comparison.h"

#include <algorithm>
#include <array>
#include <functional>
#include <map>
#include <utility>

#include "base/text.h"
#include "base/vision.h"
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
};

/// What a man has of a property in words of the language; empty where it says nothing of him.
std::string value_words(const Uniform& man, PropertyId id) {
    if (!man.speaks(id)) {
        return {};
    }
    const Property& row = properties()[id];
    if (const Material* material = man.material(id)) {
        return material->printed();
    }
    return row.kind == Kind::choice ? choice_term(man.language, row.key, man.word(id))
                                    : man.word(id);
}

/// Whether two men have the same of a property: colours of one name may differ.
bool has_same(const Uniform& a, const Uniform& b, PropertyId id) {
    const Material* one = a.speaks(id) ? a.material(id) : nullptr;
    const Material* other = b.speaks(id) ? b.material(id) : nullptr;
    return value_words(a, id) == value_words(b, id) &&
           (one == nullptr || other == nullptr ||
            (one->colour == other->colour && one->made_of == other->made_of));
}

std::string thing_words(Language language, PropertyId id) {
    const Property& row = properties()[id];
    const std::string name = term(language, row.called());
    const bool of_material = row.kind == Kind::cloth || row.kind == Kind::metal;
    return of_material ? name : name + ", " + trait_term(language, row.name());
}

/// How different two men look from afar to some eyes: the largest CIEDE2000 among all areas large
/// and broad enough. A thing only one of them has is held against the other's coat.
class FromAfar {
  public:
    /// An area counts from ten squares of one minute of arc at 50 m.
    static constexpr double kMinute = 14.5;
    static constexpr double kLeastArea = 10 * kMinute * kMinute;
    /// Colours nearer than this look alike from afar; common practice, no source.
    static constexpr double kAlike = 10;

    using Eyes = std::function<Colour(Colour)>;

    static double difference(const DressedMan& a,
                             const Figure& front_a,
                             const DressedMan& b,
                             const Figure& front_b,
                             const Eyes& eyes) {
        double most = 0;
        for (const Property& row : properties()) {
            const PropertyId id = property_id(row.key);
            const auto one = colour_of(a.uniform, front_a, id);
            const auto other = colour_of(b.uniform, front_b, id);
            if (!one && !other) {
                continue;
            }
            const auto first = one ? one : colour_of(a.uniform, front_a, property_id("coat.cloth"));
            const auto second =
                other ? other : colour_of(b.uniform, front_b, property_id("coat.cloth"));
            if (first && second) {
                most = std::max(most,
                                delta_e_2000(to_lab_d65(eyes(*first)), to_lab_d65(eyes(*second))));
            }
        }
        return most;
    }

  private:
    static bool is_broad(const Site& site) { return site.room >= kMinute / 2; }

    static std::optional<Colour> colour_of(const Uniform& man, const Figure& front, PropertyId id) {
        const auto seen = front.seen.find(std::string(properties()[id].key));
        const Material* material = man.material(id);
        const bool counts = material != nullptr && properties()[id].work != Work::none &&
                            seen != front.seen.end() && seen->second.area >= kLeastArea &&
                            std::ranges::any_of(seen->second.sites, is_broad);
        return counts ? std::optional(material->colour) : std::nullopt;
    }
};

/// How some eyes see, and what they are called.
struct Sighted {
    Message called;
    FromAfar::Eyes eyes;
};

std::vector<Sighted> all_eyes() {
    const auto without = [](Sight sight) {
        return [sight](Colour colour) { return as_seen(colour, sight, 1); };
    };
    return {{messages::kToAllEyes, [](Colour colour) { return colour; }},
            {messages::kWithoutColour, grey_of},
            {messages::kToProtan, without(Sight::protan)},
            {messages::kToDeutan, without(Sight::deutan)},
            {messages::kToTritan, without(Sight::tritan)}};
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
        add_differences(order, made);
        made.words.push_back(carried_over());
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

    /// What each man has; where colours of one name differ, with what they are made of.
    [[nodiscard]] std::vector<std::string> values_of(PropertyId id) const {
        std::vector<std::string> values;
        for (const DressedMan& man : men_) {
            values.push_back(value_words(man.uniform, id));
            const Material* material = man.uniform.speaks(id) ? man.uniform.material(id) : nullptr;
            const bool namesake = std::ranges::any_of(men_, [&](const DressedMan& other) {
                return values.back() == value_words(other.uniform, id) &&
                       !has_same(man.uniform, other.uniform, id);
            });
            if (namesake && material != nullptr && !material->made_of.empty()) {
                values.back() += ", " + material->made_of;
            }
        }
        return values;
    }

    [[nodiscard]] bool differs(PropertyId id) const {
        return !std::ranges::all_of(men_, [&](const DressedMan& man) {
            return has_same(men_.front().uniform, man.uniform, id);
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
            for (const auto& [key, seen] : man.views.front().seen) {
                const PropertyId id = property_id(key);
                const std::string_view group = properties()[id].group();
                if (properties()[id].work != Work::none && (differs(id) || reshaped[group])) {
                    area[group] = std::max(area[group], seen.area);
                }
            }
        }
        std::ranges::stable_sort(
            ids, std::greater{}, [&](PropertyId id) { return area[properties()[id].group()]; });
        return ids;
    }

    /// Not if one man has none of a thing and the others' dress does not speak of it.
    [[nodiscard]] bool anybody_has(PropertyId id) const {
        return std::ranges::any_of(men_, [id](const DressedMan& man) {
            return man.uniform.speaks(id) && !is_nothing(man.uniform.value(id));
        });
    }

    /// Rows for what differs, and one paragraph for what everybody has alike.
    void add_differences(const std::vector<PropertyId>& order, MenCompared& made) const {
        std::vector<std::string> same;
        for (const PropertyId id : order) {
            const std::vector<std::string> values = values_of(id);
            const bool material = men_.front().uniform.material(id) != nullptr;
            if (differs(id)) {
                if (anybody_has(id)) {
                    made.differ.push_back(row_of(id, values));
                    add_callouts(id, values, made);
                }
            } else if (!values.front().empty() && material) {
                same.push_back(say(language_,
                                   messages::kNameAndValue,
                                   {thing_words(language_, id), values.front()}));
            }
        }
        if (!same.empty()) {
            made.words.push_back({say(language_, messages::kSameForAll), {comma_list(same) + "."}});
        }
    }

    /// What can be pointed at: things of a material.
    void add_callouts(PropertyId id,
                      const std::vector<std::string>& values,
                      MenCompared& made) const {
        const std::string key(properties()[id].key);
        for (std::size_t i = 0; i < men_.size(); ++i) {
            if (men_[i].uniform.material(id) != nullptr && !values[i].empty()) {
                made.men[i].callouts.push_back({key,
                                                say(language_,
                                                    messages::kNameAndValue,
                                                    {thing_words(language_, id), values[i]})});
            }
        }
    }

    [[nodiscard]] ComparedThing row_of(PropertyId id,
                                       const std::vector<std::string>& values) const {
        ComparedThing row;
        row.name = thing_words(language_, id);
        for (std::size_t i = 0; i < men_.size(); ++i) {
            ComparedValue value{values[i].empty() ? "–" : values[i], {}};
            const Material* material = men_[i].uniform.material(id);
            if (material != nullptr && !values[i].empty()) {
                KeyEntry sample;
                sample.colour = material->colour;
                sample.metal = material->metal;
                sample.tincture = material->tincture();
                value.colour = std::move(sample);
            }
            row.values.push_back(std::move(value));
        }
        return row;
    }

    /// "coat (to change: lapels, buttons)".
    [[nodiscard]] std::string kept_words(const Kept& kept) const {
        std::vector<std::string> renewed;
        for (const std::string_view each : kept.renewed) {
            renewed.push_back(term(language_, each));
        }
        const std::string name = term(language_, kept.thing);
        return renewed.empty() ? name
                               : say(language_, messages::kToChange, {name, comma_list(renewed)});
    }

    /// What two men could wear of each other's: it is the same in both directions.
    [[nodiscard]] ComparedWords carried_over() const {
        ComparedWords words{say(language_, messages::kWhatCarriesOver), {}};
        if (men_.size() > 2) {
            words.paragraphs = carried_among_many();
            return words;
        }
        std::vector<std::string> kept;
        for (const Kept& each : compare(men_.front().uniform, men_.back().uniform).stays) {
            kept.push_back(kept_words(each));
        }
        words.paragraphs.push_back(
            (kept.empty() ? say(language_, messages::kNothing) : comma_list(kept)) + ".");
        return words;
    }

    /// Thing by thing, those among whom it passes from hand to hand as it is.
    [[nodiscard]] std::vector<std::string> carried_among_many() const {
        std::vector<std::string> among_all;
        std::vector<std::string> among_some;
        std::vector<const Uniform*> men;
        for (const DressedMan& man : men_) {
            men.push_back(&man.uniform);
        }
        for (const Shared& shared : shared_things(men)) {
            const std::string thing = term(language_, shared.thing);
            if (shared.parties.front().size() == men_.size()) {
                among_all.push_back(thing);
                continue;
            }
            std::string parties;
            for (const std::vector<std::size_t>& party : shared.parties) {
                // Titles have commas of their own.
                std::string names;
                for (const std::size_t i : party) {
                    names += (names.empty() ? "" : "; ") + men_[i].uniform.title;
                }
                parties += (parties.empty() ? "" : " / ") + names;
            }
            among_some.push_back(say(language_, messages::kAmong, {thing, parties}));
        }
        if (!among_all.empty()) {
            among_some.insert(among_some.begin(),
                              say(language_, messages::kAmongAll, {comma_list(among_all)}));
        }
        return among_some;
    }

    /// More would be a list, not a hint.
    static constexpr std::size_t kMostHints = 4;

    /// The things in which two men differ, each once, those first of which most is seen.
    [[nodiscard]] std::string what_tells(const Uniform& a,
                                         const Uniform& b,
                                         const std::vector<PropertyId>& order) const {
        std::vector<std::string> things;
        for (const PropertyId id : order) {
            const std::string thing = term(language_, properties()[id].called());
            if (!has_same(a, b, id) && things.size() < kMostHints &&
                std::ranges::find(things, thing) == things.end()) {
                things.push_back(thing);
            }
        }
        return things.empty() ? say(language_, messages::kNothing) : comma_list(things);
    }

    [[nodiscard]] ComparedWords told_apart(const std::vector<PropertyId>& order,
                                           const MenCompared& made) const {
        ComparedWords words{say(language_, messages::kToldApart), {}};
        double least = 1000;
        for (std::size_t i = 0; i < men_.size(); ++i) {
            for (std::size_t k = i + 1; k < men_.size(); ++k) {
                for (const Sighted& sighted : all_eyes()) {
                    const double apart = FromAfar::difference(men_[i],
                                                              made.men[i].views.front(),
                                                              men_[k],
                                                              made.men[k].views.front(),
                                                              sighted.eyes);
                    least = std::min(least, apart);
                    if (apart >= FromAfar::kAlike) {
                        continue;
                    }
                    words.paragraphs.push_back(
                        say(language_,
                            messages::kHardAtFiftyMetres,
                            {men_[i].uniform.title,
                             men_[k].uniform.title,
                             say(language_, sighted.called),
                             number_words(language_, apart, 1),
                             what_tells(men_[i].uniform, men_[k].uniform, order)}));
                }
            }
        }
        if (words.paragraphs.empty()) {
            words.paragraphs.push_back(
                say(language_,
                    men_.size() > 2 ? messages::kEveryPairApart : messages::kTheTwoApart,
                    {number_words(language_, least, 1)}));
        }
        words.paragraphs.push_back(say(language_, messages::kHowFarSeen));
        return words;
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
            men.push_back({std::move(*job), std::move(*uniform)});
        }
    }
    if (to.error_count() > errors || men.size() < written->men.size()) {
        return nullptr;
    }
    return std::make_unique<ComparisonSheet>(written->words, language, std::move(men));
}

}  // namespace platewright::cli
