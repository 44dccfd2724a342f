// SPDX-License-Identifier: MIT
// The difference between two men in words.
#include "cli/change_words.h"

#include <algorithm>
#include <array>
#include <cstdlib>

#include "cli/columns.h"

namespace platewright::cli {
namespace {

std::string counted(int number, const std::string& one) {
    return std::to_string(number) + " " + one + (number == 1 ? "" : "s");
}

/// "white metal", but "gold": the two metals of the buttons would pass for cloth without the word.
std::string value_in_words(const Uniform& man, PropertyId id) {
    if (!man.speaks(id)) {
        return "none";
    }
    const Material* material = man.material(id);
    const bool bare = material != nullptr && material->metal &&
                      (material->name == "white" || material->name == "yellow");
    return man.word(id) + (bare ? " metal" : "");
}

std::string word(const Uniform& man, const std::string& key) {
    return man.word(property_id(key));
}

/// "chevron", "bar".
std::string shape_of(const Uniform& man, const std::string& group) {
    const std::string shape = word(man, group + ".shape");
    return shape.starts_with("chevrons") ? "chevron" : shape == "slanted" ? "slanted bar" : "bar";
}

std::string point_of(const Uniform& man, const std::string& group) {
    const std::string shape = word(man, group + ".shape");
    return shape == "chevrons-up" ? ", point up," : shape == "chevrons-down" ? ", point down," : "";
}

/// "4 chevrons, point up, of gold lace, 12 mm wide: 2 on each sleeve, above the cuff, 10 mm apart".
std::string marks_in_words(const Uniform& man, PropertyId head) {
    const std::string group(properties()[head].group());
    const int each = man.count(property_id(group + ".number"));
    const Material* cloth = man.material(head);
    const bool metal = cloth != nullptr && cloth->metal;
    const std::string sleeves = word(man, group + ".sleeves");
    std::string text = counted(number_of(man, head), shape_of(man, group)) + point_of(man, group) +
                       " of " + value_in_words(man, head) + (metal ? " lace, " : " tape, ") +
                       word(man, group + ".width") + " wide";
    text += sleeves == "both" ? ": " + std::to_string(each) + " on each sleeve"
                              : ", on the " + sleeves + " sleeve";
    text += word(man, group + ".place") == "upper-arm" ? ", on the upper arm" : ", above the cuff";
    return text + (each > 1 ? ", " + word(man, group + ".spacing") + " apart" : "");
}

bool is_marks(PropertyId head) {
    return properties()[head].key == "marks.cloth" || properties()[head].key == "service.cloth";
}

/// "7 on each lapel".
std::string buttons_in_words(const Uniform& man, PropertyId head) {
    const std::string_view group = properties()[head].group();
    const std::string each = std::to_string(man.count(head));
    const bool lapels = man.material(property_id("lapels.cloth")) != nullptr;
    const std::string place = group == "lapels"    ? (lapels ? "lapel" : "front edge")
                              : group == "cuffs"   ? "cuff"
                              : group == "pockets" ? "pocket"
                              : group == "gaiters" ? "gaiter"
                                                   : "";
    return each + (place.empty() ? " in a row" : " on each " + place);
}

/// How many of all buttons of coat and waistcoat.
int all_buttons(const Uniform& man) {
    int all = 0;
    for (const char* key :
         {"lapels.buttons", "cuffs.buttons", "pockets.buttons", "waistcoat.buttons"}) {
        const PropertyId id = property_id(key);
        all += man.speaks(id) ? number_of(man, id) : 0;
    }
    return all;
}

/// The name of a property where its value does not speak for itself: `lining white`, but `slashed`.
std::string name_of(PropertyId id, bool is_head) {
    const Property& row = properties()[id];
    const bool choice = row.kind == Kind::choice || row.kind == Kind::ornament;
    const bool of_thing =
        is_head && (row.name() == "cloth" || row.name() == "metal" || row.name() == "leather" ||
                    !row.place.empty() || row.name() == row.group());
    const bool silent = is_head ? of_thing || choice : choice;
    return silent && row.key != "musket.carried" ? std::string() : std::string(row.name()) + " ";
}

/// What is said of a thing beside its head, and beside what is the same as that.
std::string details_in_words(const Uniform& man, const Change& change) {
    std::string all;
    for (const PropertyId id : change.properties) {
        const bool repeats =
            properties()[id].kind == Kind::cloth && man.word(id) == man.word(change.head);
        if (id != change.head && !repeats) {
            all += ", " + name_of(id, false) + value_in_words(man, id);
        }
    }
    return all;
}

/// "2 more chevrons, to have 4 …"; on a new garment only what there is at last.
std::string more_in_words(const TwoMen& men, const Change& change) {
    const PropertyId head = change.head;
    const bool buttons = properties()[head].kind == Kind::count;
    const std::string now =
        buttons ? buttons_in_words(men.after, head) : thing_in_words(men.after, change);
    if (!change.comes_with.empty()) {
        return now + " instead of " +
               std::to_string(buttons ? men.before.count(head) : number_of(men.before, head));
    }
    const int difference = std::abs(number_of(men.after, head) - number_of(men.before, head));
    const std::string one =
        is_marks(head) ? shape_of(men.after, std::string(properties()[head].group()))
        : buttons      ? std::string("button")
                       : std::string(change.thing.substr(0, change.thing.size() - 1));
    return (change.deed == Deed::sew_on ? counted(difference, "more " + one)
                                        : counted(difference, one)) +
           (change.deed == Deed::sew_on ? ", to have " : ", to leave ") + now;
}

/// Only their number changes: the same, and more or fewer of them.
bool is_number_only(const TwoMen& men, const Change& change) {
    return change.properties.size() == 1 &&
           properties()[change.properties.front()].kind == Kind::count &&
           number_of(men.before, change.head) > 0 && number_of(men.after, change.head) > 0;
}

std::string swap_in_words(const TwoMen& men, const Change& change) {
    std::vector<std::string> all;
    for (const PropertyId id : change.properties) {
        if (!men.after.speaks(id)) {
            continue;
        }
        all.push_back(name_of(id, id == change.head) + value_in_words(men.after, id) +
                      " instead of " + value_in_words(men.before, id));
    }
    std::string text = and_list(all);
    if (properties()[change.head].key == "buttons.metal") {
        text += "; " + std::to_string(all_buttons(men.after)) + " on coat and waistcoat";
    }
    return text;
}

/// What a new garment has on it, other than the old one.
std::string lines_on(const TwoMen& men, const Comparison& found, std::string_view garment) {
    std::string text;
    for (const Change& each : found.changes) {
        if (each.comes_with == garment && each.deed != Deed::take_off) {
            text += wrapped("with " + change_in_words(men, each), 2 * kIndent, kIndent);
        }
    }
    return text;
}

std::string lines_of(const TwoMen& men, const Comparison& found, Deed deed) {
    std::string text;
    for (const Change& each : found.changes) {
        if (each.comes_with.empty() && each.deed == deed) {
            text += wrapped(change_in_words(men, each), kIndent, kIndent);
            text += deed == Deed::buy ? lines_on(men, found, each.thing) : std::string();
        }
    }
    return text;
}

bool buys(const Comparison& found, std::string_view thing) {
    return std::ranges::any_of(found.changes, [&](const Change& each) {
        return each.deed == Deed::buy && each.thing == thing;
    });
}

bool keeps(const Comparison& found, std::string_view thing) {
    return std::ranges::find(found.stays, thing, &Kept::thing) != found.stays.end();
}

std::string stays_in_words(const Comparison& found) {
    std::vector<std::string> stay;
    std::vector<std::string> on_new;
    for (const Kept& each : found.stays) {
        (each.on_new.empty() ? stay : on_new).emplace_back(each.thing);
    }
    std::string text;
    if (!on_new.empty()) {
        text += "\nThe same on what is new\n" + wrapped(and_list(on_new), kIndent);
    }
    if (!stay.empty()) {
        text += "\nStays\n" + wrapped(and_list(stay), kIndent);
    }
    return text;
}

}  // namespace

std::string thing_in_words(const Uniform& man, const Change& change) {
    if (is_marks(change.head)) {
        return marks_in_words(man, change.head);
    }
    if (properties()[change.head].kind == Kind::count) {
        return std::to_string(number_of(man, change.head)) + ", " +
               buttons_in_words(man, change.head);
    }
    if (properties()[change.head].key == "badge.cloth") {
        return counted(number_of(man, change.head), word(man, "badge.device")) + " of " +
               value_in_words(man, change.head);
    }
    return name_of(change.head, true) + value_in_words(man, change.head) +
           details_in_words(man, change);
}

std::string change_in_words(const TwoMen& men, const Change& change) {
    const std::string thing = std::string(change.thing) + ": ";
    if (is_number_only(men, change)) {
        return thing + more_in_words(men, change);
    }
    switch (change.deed) {
        case Deed::swap:
            return thing + swap_in_words(men, change);
        case Deed::take_off:
        case Deed::lay_aside:
            return thing + thing_in_words(men.before, change);
        case Deed::buy:
        case Deed::sew_on:
            break;
    }
    return thing + thing_in_words(men.after, change);
}

std::string comparison_in_words(const TwoMen& men, const Comparison& found) {
    constexpr std::array<std::pair<Deed, std::string_view>, 5> headings = {
        {{Deed::buy, "Buy or draw"},
         {Deed::sew_on, "Sew on"},
         {Deed::take_off, "Take off"},
         {Deed::swap, "Swap"},
         {Deed::lay_aside, "Lay aside"}}};
    Columns head(0);
    head.add({"from", men.before.title});
    head.add({"to", men.wish.empty() ? men.after.title : men.wish});
    std::string text = head.text();
    for (const auto& [deed, heading] : headings) {
        const std::string lines = lines_of(men, found, deed);
        text += lines.empty() ? "" : "\n" + std::string(heading) + "\n" + lines;
    }
    if (found.changes.empty()) {
        text += "\nNothing changes.\n";
    }
    text += stays_in_words(found);
    if (keeps(found, "coat") && !found.changes.empty()) {
        text += "\nNo new coat is needed.\n";
    } else if (buys(found, "coat")) {
        text += "\nA new coat is needed.\n";
    }
    return text;
}

}  // namespace platewright::cli
