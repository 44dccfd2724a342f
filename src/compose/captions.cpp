// SPDX-License-Identifier: MIT
// What a sheet must say of a man: colour key and particulars.
#include <algorithm>
#include <array>
#include <map>
#include <numeric>

#include "base/text.h"
#include "compose/compose.h"
#include "compose/footnotes.h"

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

/// A plume of one colour has no tip to speak of.
bool same_as_plume(const Uniform& uniform, const Property& row) {
    return row.key == "hat.plume-tip" &&
           uniform.word(property_id(row.key)) == uniform.word(property_id("hat.plume"));
}

bool same(const Material& a, const KeyEntry& b) {
    return b.name.starts_with(a.name) && a.colour == b.colour && a.metal == b.metal;
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

/// A choice with the mark of its footnote.
std::string choice_words(const Uniform& uniform, const Footnotes& notes, std::string_view key) {
    const PropertyId id = property_id(key);
    return uniform.word(id) + notes.mark(id);
}

/// "2 bars of white, both sleeves, above the cuff; 12 mm wide, 10 mm apart"; empty if there are
/// none. `group`: `marks` or `service`.
std::string marks_words(const Uniform& uniform, const std::string& group) {
    const auto id = [&group](const char* name) { return property_id(group + "." + name); };
    const std::string shape = uniform.word(id("shape"));
    const int number = uniform.count(id("number"));
    if (shape == "none" || number == 0 || !uniform.speaks(id("cloth"))) {
        return {};
    }
    const std::map<std::string, std::string> names{{"bars", "bar"},
                                                   {"slanted", "slanted bar"},
                                                   {"chevrons-up", "chevron, point up"},
                                                   {"chevrons-down", "chevron, point down"}};
    const auto name = names.find(shape);
    const std::string what = name != names.end() ? name->second : shape;
    const std::string sleeves = uniform.word(id("sleeves"));
    const std::string place =
        uniform.word(id("place")) == "upper-arm" ? "upper arm" : "above the cuff";
    const std::size_t comma = what.find(',');
    const std::string counted = comma == std::string::npos
                                    ? plural(number, what)
                                    : plural(number, what.substr(0, comma)) + what.substr(comma);
    return counted + " of " + uniform.word(id("cloth")) + ", " +
           (sleeves == "both" ? "both sleeves" : sleeves + " sleeve") + ", " + place + "; " +
           measure_words(uniform, group + ".width") + " wide" +
           (number > 1 ? ", " + measure_words(uniform, group + ".spacing") + " apart" : "");
}

void describe_marks(const Uniform& uniform, const Footnotes& notes, Captions& captions) {
    for (const auto& [group, name] : {std::pair{"marks", "rank marks"}, {"service", "service"}}) {
        const std::string words = marks_words(uniform, group);
        if (!words.empty()) {
            const PropertyId number = property_id(std::string(group) + ".number");
            captions.particulars.emplace_back(name, words + notes.mark(number));
        }
    }
}

/// Only what is not the usual long coat with full lapels.
void describe_coat(const Uniform& uniform, const Footnotes& notes, Captions& captions) {
    const std::string cut = uniform.word(property_id("coat.cut"));
    if (cut == "none") {
        captions.particulars.emplace_back("coat", "laid off" + notes.mark(property_id("coat.cut")));
        return;
    }
    const PropertyId lapels = property_id("lapels.shape");
    const bool has_lapels = uniform.speaks(lapels);
    const std::string shape = uniform.word(lapels);
    if (cut != "long" || !has_lapels || shape != "full") {
        const std::string closing = has_lapels ? shape + " lapels" : "without lapels";
        captions.particulars.emplace_back(
            "coat", choice_words(uniform, notes, "coat.cut") + ", " + closing);
    }
}

void describe_pockets(const Uniform& uniform, const Footnotes& notes, Captions& captions) {
    if (!uniform.speaks(property_id("pockets.direction"))) {
        return;
    }
    std::string words = choice_words(uniform, notes, "pockets.direction");
    const std::string shape = uniform.word(property_id("pockets.shape"));
    words += shape == "scalloped" ? "" : ", " + choice_words(uniform, notes, "pockets.shape");
    const bool large = uniform.word(property_id("pockets.size")) == "large";
    words += large ? ", " + choice_words(uniform, notes, "pockets.size") : "";
    captions.particulars.emplace_back("pockets", words);
}

void describe_shoulders(const Uniform& uniform, const Footnotes& notes, Captions& captions) {
    const PropertyId worn = property_id("epaulettes.worn");
    if (uniform.word(worn) == "none" || !uniform.speaks(worn)) {
        return;
    }
    const std::string sides = uniform.word(worn);
    const bool fringed = uniform.material(property_id("epaulettes.fringe")) != nullptr;
    captions.particulars.emplace_back(
        "epaulettes",
        (sides == "both" ? "both shoulders" : sides + " shoulder") + notes.mark(worn) +
            (fringed ? ", " + uniform.word(property_id("epaulettes.fringe-kind")) + " fringe"
                     : ", without fringe"));
}

void describe_hat(const Uniform& uniform, const Footnotes& notes, Captions& captions) {
    if (uniform.word(property_id("hat.shape")) != "three-cornered") {
        captions.particulars.emplace_back("hat", choice_words(uniform, notes, "hat.shape"));
    }
}

/// Where the facts are from, if the plate does not say so itself.
std::string source_of(const Uniform& uniform) {
    std::string source = uniform.source;
    if (!source.empty()) {
        return source;
    }
    for (const NamedRegulation& regulation : uniform.facts.regulations) {
        source += (source.empty() ? "" : "; ") +
                  (regulation.source.empty() ? regulation.title : regulation.source);
    }
    return source;
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
        const PropertyId id = property_id(key);
        if (!uniform.speaks(id)) {
            continue;
        }
        const int count = uniform.count(id);
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
    captions.source = source_of(uniform);
    captions.notes = uniform.notes;
    const Footnotes notes(uniform);
    std::vector<PropertyId> order(properties().size());
    std::iota(order.begin(), order.end(), PropertyId{0});
    std::ranges::stable_sort(
        order, {}, [](PropertyId id) { return reading_rank(properties()[id].key); });
    for (const PropertyId id : order) {
        const Property& row = properties()[id];
        const Material* material = uniform.material(id);
        if (material != nullptr && keyed(row) && uniform.speaks(id) &&
            !same_as_plume(uniform, row)) {
            add_to_key(captions.key, *material, std::string(row.called()) + notes.mark(id));
        }
    }
    describe_coat(uniform, notes, captions);
    describe_buttons(uniform, captions);
    if (uniform.speaks(property_id("cuffs.shape"))) {
        captions.particulars.emplace_back("cuffs", choice_words(uniform, notes, "cuffs.shape"));
    }
    describe_pockets(uniform, notes, captions);
    describe_shoulders(uniform, notes, captions);
    describe_marks(uniform, notes, captions);
    describe_hat(uniform, notes, captions);
    for (std::string& line : notes.lines()) {
        captions.notes.push_back(std::move(line));
    }
    return captions;
}

}  // namespace platewright
