// SPDX-License-Identifier: MIT
// What men differ in, in words, and where on a figure it is led to.
#include "cli/compared.h"

#include <algorithm>
#include <array>
#include <functional>
#include <optional>
#include <string_view>
#include <utility>

#include "base/text.h"
#include "words/comparison_messages.h"
#include "words/man_messages.h"
#include "words/sheet_messages.h"
#include "words/terms.h"

namespace platewright::cli {
namespace {

/// What the eye finds of a shape; where on the sleeve a mark sits is left to the table.
constexpr auto kShapes = std::to_array<std::string_view>(
    {"shape", "direction", "cut", "worn", "carried", "height", "ornament", "device"});

bool is_among(const auto& list, std::string_view word) {
    return std::ranges::find(list, word) != list.end();
}

/// The property that stands for a whole thing: `lapels.cloth`.
bool is_head(const Property& row) {
    return row.place.empty() && (row.kind == Kind::cloth || row.kind == Kind::metal);
}

bool is_shape(const Property& row) {
    return (row.kind == Kind::choice || row.kind == Kind::ornament) &&
           is_among(kShapes, row.name());
}

/// No marks are none, not 0.
bool counts_nothing(const Uniform& man, PropertyId id) {
    const auto shape = find_property(std::string(properties()[id].group()) + ".shape");
    return man.count(id) == 0 && shape && !is_worn(man, *shape);
}

/// One mark has no distance from another.
bool is_distance_of_one(const Uniform& man, const Property& row) {
    const auto number = find_property(std::string(row.group()) + ".number");
    return row.name() == "spacing" && number && man.count(*number) < 2;
}

std::string count_words(const Uniform& man, PropertyId id) {
    if (counts_nothing(man, id)) {
        return {};
    }
    const bool down_the_front =
        properties()[id].key == "lapels.buttons" && !is_worn(man, property_id("lapels.cloth"));
    return down_the_front ? say(man.language, messages::kDownTheFront, {man.word(id)})
                          : man.word(id);
}

/// Three or more stand small, and words round each would hide what they lead to: what is seen most,
/// the table has the rest.
constexpr std::size_t kMostOfMany = 6;
/// More than can be seen of anything.
constexpr double kRankSeen = 1e9;

/// A callout in the making.
struct Draft {
    std::string_view group;
    /// By which property figures tell where it is seen.
    PropertyId key = 0;
    std::string name;
    std::vector<std::string> values;
    std::size_t row = 0;
    bool unlike_all = false;
};

/// Writes what one man has, row by row.
class Drafts {
  public:
    Drafts(std::size_t man, const std::vector<const Uniform*>& men) : man_(man), men_(men) {}

    void add(const DifferingRow& row, std::size_t number) {
        const Property& property = properties()[row.property];
        const bool material = property.kind == Kind::cloth || property.kind == Kind::metal;
        const Uniform& man = *men_[man_];
        if ((!material && !is_shape(property)) || row.values[man_].empty() ||
            !is_worn(man, row.property)) {
            return;
        }
        Draft& draft = draft_for(row.property, number);
        draft.unlike_all = draft.unlike_all || unlike_all(row);
        // Colour first, then shape.
        draft.values.insert(material ? draft.values.begin() : draft.values.end(), row.values[man_]);
        draft.key = material ? row.property : draft.key;
    }

    [[nodiscard]] const std::vector<Draft>& all() const { return drafts_; }

  private:
    std::size_t man_;
    const std::vector<const Uniform*>& men_;
    std::vector<Draft> drafts_;

    /// Heads and shapes of a group share one.
    Draft& draft_for(PropertyId id, std::size_t number) {
        const Property& row = properties()[id];
        const bool shared = is_head(row) || is_shape(row);
        const auto at = std::ranges::find(drafts_, row.group(), &Draft::group);
        if (shared && at != drafts_.end()) {
            return *at;
        }
        const Language language = men_[man_]->language;
        drafts_.push_back({shared ? row.group() : std::string_view(),
                           id,
                           term(language, shared ? row.group() : row.called()),
                           {},
                           number});
        return drafts_.back();
    }

    [[nodiscard]] bool unlike_all(const DifferingRow& row) const {
        for (std::size_t i = 0; i < row.values.size(); ++i) {
            if (i != man_ && row.values[i] == row.values[man_]) {
                return false;
            }
        }
        return true;
    }
};

/// Where that is seen on the man's views: on the first that shows enough of it, else on the one
/// that shows most. Returns how much is seen there.
double place(const Draft& draft, const ComparedMan& drawn, ComparedCallout& callout) {
    double most = 0;
    for (std::size_t i = 0; i < drawn.views.size() && most < kLeastFound; ++i) {
        const auto seen = drawn.views[i].seen.find(std::string(properties()[draft.key].key));
        if (seen != drawn.views[i].seen.end() && seen->second.area > most) {
            most = seen->second.area;
            callout.view = i;
            callout.sites = all_sites(seen->second);
        }
    }
    return most;
}

struct Placed {
    ComparedCallout callout;
    double seen = 0;
};

/// The order of the table, in which those who are left out are only missed.
std::vector<ComparedCallout> seen_most(std::vector<Placed> all, std::size_t most) {
    if (all.size() > most) {
        std::ranges::stable_sort(all, std::greater{}, &Placed::seen);
        all.resize(most);
        std::ranges::stable_sort(all, {}, [](const Placed& placed) { return placed.callout.row; });
    }
    std::vector<ComparedCallout> callouts;
    callouts.reserve(all.size());
    for (Placed& placed : all) {
        callouts.push_back(std::move(placed.callout));
    }
    return callouts;
}

}  // namespace

bool is_tip_alike(const Uniform& man, const Property& row) {
    return row.key == "hat.plume-tip" &&
           man.word(property_id(row.key)) == man.word(property_id("hat.plume"));
}

bool is_worn(const Uniform& man, PropertyId id) {
    return man.speaks(id) && !is_nothing(man.value(id));
}

std::string value_words(const Uniform& man, PropertyId id) {
    const Property& row = properties()[id];
    if (!man.speaks(id) || is_tip_alike(man, row) || is_distance_of_one(man, row)) {
        return {};
    }
    if (const Material* material = man.material(id)) {
        return material->printed();
    }
    if (row.kind == Kind::count) {
        return count_words(man, id);
    }
    if (row.kind == Kind::ornament) {
        return term(man.language, man.word(id));
    }
    return row.kind == Kind::choice || is_nothing(man.value(id))
               ? choice_term(man.language, row.key, man.word(id))
               : man.word(id);
}

std::string thing_words(Language language, PropertyId id) {
    const Property& row = properties()[id];
    const std::string name = term(language, row.called());
    const bool of_material = row.kind == Kind::cloth || row.kind == Kind::metal;
    return of_material ? name : name + ", " + trait_term(language, row.name());
}

std::vector<ComparedCallout> what_sets_apart(std::size_t man,
                                             const std::vector<const Uniform*>& men,
                                             const std::vector<ComparedMan>& drawn,
                                             const std::vector<DifferingRow>& rows) {
    Drafts drafts(man, men);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        drafts.add(rows[i], i);
    }
    std::vector<Placed> placed;
    for (const Draft& draft : drafts.all()) {
        if (!draft.unlike_all) {
            continue;
        }
        ComparedCallout callout;
        callout.words = say(
            men[man]->language, messages::kNameAndValue, {draft.name, comma_list(draft.values)});
        callout.row = draft.row;
        const double seen = place(draft, drawn[man], callout);
        if (!callout.sites.empty()) {
            // A man's rank is looked for first, however narrow its tape.
            const bool rank = properties()[draft.key].group() == "marks";
            placed.push_back({std::move(callout), rank ? kRankSeen : seen});
        }
    }
    const std::size_t most = men.size() > 2 ? kMostOfMany : placed.size();
    return seen_most(std::move(placed), most);
}

}  // namespace platewright::cli
