// SPDX-License-Identifier: MIT
// Comparing two uniforms thing by thing.
#include "resolve/change.h"

#include <algorithm>
#include <array>
#include <map>
#include <utility>

namespace platewright {

namespace {

/// Properties that are not part of what the rest of their group makes up.
constexpr auto kThings = std::to_array<std::pair<std::string_view, std::string_view>>({
    {"coat.lace", "coat lace"},
    {"waistcoat.buttons", "waistcoat buttons"},
    {"waistcoat.lace", "waistcoat lace"},
    {"lapels.piping", "lapel piping"},
    {"lapels.buttons", "lapel buttons"},
    {"lapels.buttonholes", "buttonhole lace"},
    {"lapels.lace", "buttonhole lace"},
    {"collar.piping", "collar piping"},
    {"collar.lace", "collar lace"},
    {"cuffs.buttons", "cuff buttons"},
    {"cuffs.piping", "cuff piping"},
    {"turnbacks.piping", "turnback piping"},
    {"turnbacks.ornament", "turnback ornament"},
    {"turnbacks.ornament-cloth", "turnback ornament"},
    {"pockets.buttons", "pocket buttons"},
    {"pockets.piping", "pocket piping"},
    {"pockets.lace", "pocket lace"},
    {"straps.piping", "shoulder-strap piping"},
    {"wings.lace", "wing lace"},
    {"belts.plate", "belt plate"},
    {"box.device", "badge on the cartridge box"},
    {"sword.knot", "sword knot"},
    {"shoes.buckles", "shoe buckles"},
    {"gaiters.buttons", "gaiter buttons"},
    {"hat.front", "cap front"},
    {"hat.patch", "cap patch"},
    {"hat.plate", "cap plate"},
    {"hat.device", "cap badge"},
    {"hat.device-cloth", "cap badge"},
    {"hat.tape", "hat tape"},
    {"hat.cockade", "cockade"},
    {"hat.cockade-middle", "cockade"},
    {"hat.cockade-centre", "cockade"},
    {"hat.loop", "cockade loop"},
    {"hat.tuft", "hat tuft"},
    {"hat.plume", "plume"},
    {"hat.plume-tip", "plume"},
    {"hat.feather", "feather"},
    {"hat.tassels", "tassels"},
    {"hat.cover", "hat cover"},
    {"musket.sling", "musket sling"},
});

/// Groups whose thing has another name.
constexpr auto kGroups = std::to_array<std::pair<std::string_view, std::string_view>>({
    {"ribbon", "queue ribbon"},
    {"rings", "cuff rings"},
    {"pockets", "pocket flaps"},
    {"straps", "shoulder straps"},
    {"knot", "shoulder knot"},
    {"cords", "shoulder cords"},
    {"marks", "rank marks"},
    {"service", "service marks"},
    {"badge", "service badges"},
    {"box", "cartridge box"},
    {"hilt", "bayonet"},
    {"fife", "fife case"},
});

std::string_view find(const auto& table, std::string_view key) {
    const auto at = std::ranges::find(table, key, [](const auto& row) { return row.first; });
    return at == table.end() ? std::string_view() : at->second;
}

/// Things that have others on them: a coat its lapels, a musket its sling.
constexpr auto kCarriers = std::to_array<std::string_view>(
    {"hat", "waistcoat", "gaiters", "musket", "belts", "sword", "shoes"});

/// What a property's thing is on; empty if it is by itself.
std::string_view carrier_of(const Property& row) {
    const auto* at = std::ranges::find(kCarriers, row.group());
    if (at != kCarriers.end()) {
        return *at;
    }
    const bool coat =
        row.group() == "coat" || row.speaks_when.find("coat.cut") != std::string_view::npos;
    return coat ? std::string_view("coat") : std::string_view();
}

struct Thing {
    std::string_view name;
    PropertyId head = 0;
    std::vector<PropertyId> properties;
};

bool is_material(PropertyId id) {
    return properties()[id].kind == Kind::cloth || properties()[id].kind == Kind::metal;
}

std::string_view thing_of(const Property& row) {
    const std::string_view own = find(kThings, row.key);
    const std::string_view of_group = find(kGroups, row.group());
    return !own.empty() ? own : !of_group.empty() ? of_group : row.group();
}

/// Everything that is work, in the order of dressing.
const std::vector<Thing>& things() {
    static const std::vector<Thing> kAll = [] {
        std::vector<Thing> all;
        for (PropertyId id = 0; id < properties().size(); ++id) {
            const Property& row = properties()[id];
            if (row.work == Work::none) {
                continue;
            }
            const std::string_view name = thing_of(row);
            auto thing = std::ranges::find(all, name, &Thing::name);
            if (thing == all.end()) {
                all.push_back({name, id, {}});
                thing = std::prev(all.end());
            }
            // Cloth tells better whether it is there: it is silent where its thing is not worn.
            if (is_material(id) && !is_material(thing->head)) {
                thing->head = id;
            }
            thing->properties.push_back(id);
        }
        return all;
    }();
    return kAll;
}

bool is_there(const Uniform& man, const Thing& thing) {
    return man.speaks(thing.head) && !is_nothing(man.value(thing.head));
}

bool same_value(const Value& a, const Value& b) {
    const auto* one = std::get_if<Material>(&a);
    const auto* other = std::get_if<Material>(&b);
    if (one != nullptr && other != nullptr) {
        return one->name == other->name && one->colour == other->colour &&
               one->metal == other->metal;
    }
    const auto* length = std::get_if<Measure>(&a);
    const auto* other_length = std::get_if<Measure>(&b);
    if (length != nullptr && other_length != nullptr) {
        return length->mm == other_length->mm;
    }
    return is_nothing(a) ? is_nothing(b) : word_of(a) == word_of(b);
}

std::vector<PropertyId> said(const Uniform& man, const Thing& thing) {
    std::vector<PropertyId> all;
    for (const PropertyId id : thing.properties) {
        if (man.speaks(id) && !is_nothing(man.value(id))) {
            all.push_back(id);
        }
    }
    return all;
}

std::vector<PropertyId> differing(const Uniform& before, const Uniform& after, const Thing& thing) {
    const Value nothing = Absent{};
    std::vector<PropertyId> all;
    for (const PropertyId id : thing.properties) {
        const Value& a = before.speaks(id) ? before.value(id) : nothing;
        const Value& b = after.speaks(id) ? after.value(id) : nothing;
        if (!same_value(a, b)) {
            all.push_back(id);
        }
    }
    return all;
}

/// One thing of both men.
class Pair {
  public:
    Pair(const Thing& thing, const Uniform& before, const Uniform& after)
        : thing_(thing),
          before_(before),
          after_(after),
          had_(is_there(before, thing)),
          has_(is_there(after, thing)),
          differing_(differing(before, after, thing)) {}

    [[nodiscard]] bool stays() const { return had_ && has_ && differing_.empty(); }

    void add_to(std::vector<Change>& changes) const {
        const Work work = properties()[thing_.head].work;
        if (had_ && !has_) {
            add(changes,
                work == Work::sewn ? Deed::take_off : Deed::lay_aside,
                said(before_, thing_));
        } else if (!had_ && has_) {
            add(changes, work == Work::sewn ? Deed::sew_on : Deed::buy, said(after_, thing_));
        } else if (had_ && has_ && !differing_.empty()) {
            if (work == Work::garment) {
                add(changes, Deed::buy, said(after_, thing_));
                add(changes, Deed::lay_aside, said(before_, thing_));
            } else if (is_only_number()) {
                const bool more = number_of(before_, thing_.head) < number_of(after_, thing_.head);
                add(changes, more ? Deed::sew_on : Deed::take_off, differing_);
            } else if (is_counted()) {
                add(changes, Deed::take_off, said(before_, thing_));
                add(changes, Deed::sew_on, said(after_, thing_));
            } else {
                add(changes, Deed::swap, differing_);
            }
        }
    }

    /// A part that changes the cut of the garment it belongs to: half lapels for full ones.
    [[nodiscard]] std::string_view recuts() const {
        const bool cut = had_ && has_ && std::ranges::any_of(differing_, [](PropertyId id) {
                             return properties()[id].work == Work::garment;
                         });
        return cut && properties()[thing_.head].work == Work::sewn
                   ? carrier_of(properties()[thing_.head])
                   : std::string_view();
    }

  private:
    /// Marks, rings and badges are sewn on one by one, and so are buttons.
    [[nodiscard]] bool is_counted() const { return number_of(after_, thing_.head) > 0; }

    [[nodiscard]] bool is_only_number() const {
        return is_counted() && differing_.size() == 1 &&
               properties()[differing_.front()].kind == Kind::count;
    }

    void add(std::vector<Change>& to, Deed deed, std::vector<PropertyId> of) const {
        to.push_back({deed, thing_.name, thing_.head, std::move(of), {}});
    }

    const Thing& thing_;
    const Uniform& before_;
    const Uniform& after_;
    bool had_;
    bool has_;
    std::vector<PropertyId> differing_;
};

int sleeves(const Uniform& man, std::string_view key) {
    return man.word(property_id(key)) == "both" ? 2 : 1;
}

/// The deed done to a garment that others are sewn on, or nothing.
bool is_done(const std::vector<Change>& changes, std::string_view garment, Deed deed) {
    return std::ranges::any_of(
        changes, [&](const Change& each) { return each.thing == garment && each.deed == deed; });
}

/// A new coat has its lapels on, and an old one takes them with it.
void find_what_comes_along(std::vector<Change>& changes) {
    const std::vector<Change> all = changes;
    for (Change& each : changes) {
        const std::string_view carrier = carrier_of(properties()[each.head]);
        const bool goes = each.deed == Deed::take_off || each.deed == Deed::lay_aside;
        if (each.thing != carrier && is_done(all, carrier, goes ? Deed::lay_aside : Deed::buy)) {
            each.comes_with = carrier;
        }
    }
}

void note_renewed(std::vector<Kept>& stays, std::string_view garment, std::string_view thing) {
    const auto kept = std::ranges::find(stays, garment, &Kept::thing);
    if (kept != stays.end() && kept->thing != thing &&
        std::ranges::find(kept->renewed, thing) == kept->renewed.end()) {
        kept->renewed.push_back(thing);
    }
}

/// Buttons of another metal or number are other buttons wherever they are sewn on.
void renew_buttons(Comparison& found) {
    static constexpr std::string_view kButtons = "buttons";
    const bool changed = std::ranges::any_of(
        found.changes, [](const Change& each) { return each.thing == kButtons; });
    if (!changed) {
        return;
    }
    for (const Thing& thing : things()) {
        const bool counted = properties()[thing.head].kind == Kind::count;
        const auto kept = std::ranges::find(found.stays, thing.name, &Kept::thing);
        if (counted && thing.name.ends_with(kButtons) && kept != found.stays.end()) {
            found.stays.erase(kept);
            note_renewed(found.stays, carrier_of(properties()[thing.head]), kButtons);
        }
    }
    // The buckle of a garter is of the buttons' metal.
    note_renewed(found.stays, "garters", "buckles");
}

/// What is sewn on a garment that stays and is itself changed.
void find_renewed(Comparison& found) {
    renew_buttons(found);
    for (const Change& each : found.changes) {
        if (each.comes_with.empty()) {
            note_renewed(found.stays, carrier_of(properties()[each.head]), each.thing);
        }
    }
}

}  // namespace

std::string_view deed_name(Deed deed) {
    constexpr std::array<std::string_view, 5> names = {
        "buy", "sew on", "take off", "swap", "lay aside"};
    return names.at(static_cast<std::size_t>(deed));
}

Comparison compare(const Uniform& before, const Uniform& after) {
    Comparison found;
    std::vector<std::string_view> recut;
    for (const Thing& thing : things()) {
        const Pair pair(thing, before, after);
        pair.add_to(found.changes);
        if (pair.stays()) {
            found.stays.push_back({thing.name, {}, {}});
        }
        if (!pair.recuts().empty()) {
            recut.push_back(pair.recuts());
        }
    }
    for (const std::string_view garment : recut) {
        const auto stays = std::ranges::find(found.stays, garment, &Kept::thing);
        const auto thing = std::ranges::find(things(), garment, &Thing::name);
        if (stays != found.stays.end()) {
            found.stays.erase(stays);
            found.changes.push_back({Deed::buy, garment, thing->head, said(after, *thing), {}});
            found.changes.push_back(
                {Deed::lay_aside, garment, thing->head, said(before, *thing), {}});
        }
    }
    find_what_comes_along(found.changes);
    for (Kept& each : found.stays) {
        const auto thing = std::ranges::find(things(), each.thing, &Thing::name);
        const std::string_view garment = carrier_of(properties()[thing->head]);
        if (garment != each.thing && is_done(found.changes, garment, Deed::buy)) {
            each.on_new = garment;
        }
    }
    std::ranges::stable_sort(
        found.changes, {}, [](const Change& each) { return std::pair(each.deed, each.head); });
    find_renewed(found);
    return found;
}

std::vector<Shared> shared_things(const std::vector<const Uniform*>& men) {
    std::map<std::pair<std::size_t, std::size_t>, std::vector<Kept>> stays;
    for (std::size_t i = 0; i < men.size(); ++i) {
        for (std::size_t k = i + 1; k < men.size(); ++k) {
            stays[{i, k}] = compare(*men[i], *men[k]).stays;
        }
    }
    const auto passes = [&stays](std::size_t one, std::size_t other, std::string_view thing) {
        const std::vector<Kept>& all = stays[{one, other}];
        const auto kept = std::ranges::find(all, thing, &Kept::thing);
        return kept != all.end() && kept->renewed.empty();
    };
    std::vector<Shared> all;
    for (const Thing& thing : things()) {
        Shared shared{thing.name, {}};
        for (std::size_t i = 0; i < men.size(); ++i) {
            const auto party = std::ranges::find_if(shared.parties, [&](const auto& each) {
                return passes(each.front(), i, thing.name);
            });
            if (party == shared.parties.end()) {
                shared.parties.push_back({i});
            } else {
                party->push_back(i);
            }
        }
        std::erase_if(shared.parties, [](const auto& party) { return party.size() < 2; });
        if (!shared.parties.empty()) {
            all.push_back(std::move(shared));
        }
    }
    return all;
}

int number_of(const Uniform& man, PropertyId head) {
    if (!man.speaks(head)) {
        return 0;
    }
    const std::string_view key = properties()[head].key;
    const auto times = [&](std::string_view number, int places) {
        return man.count(property_id(number)) * places;
    };
    if (key == "marks.cloth") {
        return times("marks.number", sleeves(man, "marks.sleeves"));
    }
    if (key == "service.cloth") {
        return times("service.number", sleeves(man, "service.sleeves"));
    }
    if (key == "badge.cloth") {
        return times("badge.number", 1);
    }
    if (key == "rings.cloth") {
        return times("rings.number", 2);
    }
    if (key == "waistcoat.buttons") {
        return times(key, man.word(property_id("waistcoat.cut")) == "double" ? 2 : 1);
    }
    return properties()[head].kind == Kind::count ? times(key, 2) : 0;
}

}  // namespace platewright
