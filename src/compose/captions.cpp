// SPDX-License-Identifier: MIT
// What a sheet must say of a man: colour key and particulars.
#include <algorithm>
#include <array>
#include <map>
#include <numeric>

#include "base/text.h"
#include "compose/compose.h"
#include "vocabulary/condition.h"

namespace platewright {

namespace {

/// The order in which a key is read: the coat and what is on it, then what is under and around it.
constexpr std::array<std::string_view, 11> kReadingOrder{"coat",
                                                         "lapels",
                                                         "collar",
                                                         "cuffs",
                                                         "turnbacks",
                                                         "pockets",
                                                         "straps",
                                                         "buttons",
                                                         "marks",
                                                         "waistcoat",
                                                         "breeches"};

std::size_t reading_rank(std::string_view key) {
    const std::string_view group = key.substr(0, key.find('.'));
    return static_cast<std::size_t>(std::ranges::find(kReadingOrder, group) -
                                    kReadingOrder.begin());
}

/// The body itself is not part of what a man is given to wear; the facing colour shows only where
/// something follows it.
bool keyed(const Property& row) {
    return row.work != Work::none;
}

bool same(const Material& a, const KeyEntry& b) {
    return b.name.starts_with(a.name) && a.colour == b.colour && a.metal == b.metal;
}

/// Trimmings that are not there name no place: buttonhole lace without laced holes, marks of no
/// rank.
bool shown(const Uniform& uniform, const Property& row) {
    std::string problem;
    const auto condition = parse_condition(row.speaks_when, problem);
    return !condition || holds(*condition, [&uniform](PropertyId id) { return uniform.word(id); });
}

/// "white metal", but "gold": the two metals of the buttons would pass for cloth without the word.
std::string metal_name(const Material& material) {
    const bool bare = material.metal && (material.name == "white" || material.name == "yellow");
    return bare ? material.name + " metal" : material.name;
}

void add_to_key(std::vector<KeyEntry>& key, const Material& material, const std::string& place) {
    const auto entry =
        std::ranges::find_if(key, [&](const KeyEntry& e) { return same(material, e); });
    if (entry != key.end()) {
        entry->worn += ", " + place;
        return;
    }
    const std::string name = metal_name(material);
    key.push_back({name, material.made_of, material.colour, material.metal, place});
}

std::string plural(int count, const std::string& what) {
    return std::to_string(count) + " " + what + (count == 1 ? "" : "s");
}

/// A length as it was printed, kept on one line.
std::string measure_words(const Uniform& uniform, std::string_view key) {
    constexpr std::string_view no_break_space = "\u00a0";
    const auto* measure = std::get_if<Measure>(&uniform.value(property_id(key)));
    std::string words;
    for (const char c :
         measure != nullptr ? std::string_view(measure->printed) : std::string_view()) {
        if (c == ' ') {
            words += no_break_space;
        } else {
            words += c;
        }
    }
    return words;
}

void describe_marks(const Uniform& uniform, Captions& captions) {
    const std::string shape = uniform.word(property_id("marks.shape"));
    const int number = uniform.count(property_id("marks.number"));
    if (shape == "none" || number == 0) {
        return;
    }
    const std::map<std::string, std::string> names{{"bars", "bar"},
                                                   {"slanted", "slanted bar"},
                                                   {"chevrons-up", "chevron, point up"},
                                                   {"chevrons-down", "chevron, point down"}};
    const auto name = names.find(shape);
    const std::string what = name != names.end() ? name->second : shape;
    const std::string sleeves = uniform.word(property_id("marks.sleeves"));
    const std::string place =
        uniform.word(property_id("marks.place")) == "upper-arm" ? "upper arm" : "above the cuff";
    const std::size_t comma = what.find(',');
    std::string words = comma == std::string::npos
                            ? plural(number, what)
                            : plural(number, what.substr(0, comma)) + what.substr(comma);
    words += " of " + uniform.word(property_id("marks.cloth")) + ", " +
             (sleeves == "both" ? "both sleeves" : sleeves + " sleeve") + ", " + place + "; " +
             measure_words(uniform, "marks.width") + " wide" +
             (number > 1 ? ", " + measure_words(uniform, "marks.spacing") + " apart" : "");
    captions.particulars.emplace_back("rank marks", words);
}

void describe_buttons(const Uniform& uniform, Captions& captions) {
    const Material* metal = uniform.material(property_id("buttons.metal"));
    std::string words = metal != nullptr ? metal_name(*metal) : "none";
    const std::string number = uniform.word(property_id("buttons.number"));
    if (!number.empty() && number != "none") {
        const bool figures = number.find_first_not_of("0123456789") == std::string::npos;
        words += figures ? ", No.\u00a0" + number : ", marked " + number;
    }
    const bool lapels = uniform.material(property_id("lapels.cloth")) != nullptr;
    const std::vector<std::pair<std::string_view, std::string_view>> places{
        {"lapels.buttons", lapels ? " to a lapel" : " down the front"},
        {"cuffs.buttons", " to a cuff"},
        {"pockets.buttons", " to a pocket"}};
    std::string_view separator = "; ";
    for (const auto& [key, place] : places) {
        const int count = uniform.count(property_id(key));
        words += std::string(separator) + (count > 0 ? std::to_string(count) : "none") +
                 std::string(place);
        separator = ", ";
    }
    captions.particulars.emplace_back("buttons", words);
}

}  // namespace

Captions captions_of(const Uniform& uniform) {
    Captions captions;
    captions.title = uniform.title;
    captions.subtitle = uniform.subtitle;
    captions.rank = uniform.rank;
    captions.year = uniform.year;
    captions.drawn_by = uniform.drawn_by;
    captions.source = uniform.source;
    captions.notes = uniform.notes;
    std::vector<PropertyId> order(properties().size());
    std::iota(order.begin(), order.end(), PropertyId{0});
    std::ranges::stable_sort(
        order, {}, [](PropertyId id) { return reading_rank(properties()[id].key); });
    for (const PropertyId id : order) {
        const Property& row = properties()[id];
        const Material* material = uniform.material(id);
        if (material != nullptr && keyed(row) && shown(uniform, row)) {
            add_to_key(captions.key, *material, std::string(row.called()));
        }
    }
    describe_buttons(uniform, captions);
    captions.particulars.emplace_back("cuffs", uniform.word(property_id("cuffs.shape")));
    captions.particulars.emplace_back("pockets", uniform.word(property_id("pockets.direction")));
    describe_marks(uniform, captions);
    return captions;
}

}  // namespace platewright
