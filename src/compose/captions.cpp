// SPDX-License-Identifier: MIT
// What a sheet must say of a man: colour key and particulars.
#include <algorithm>
#include <array>
#include <numeric>

#include "base/text.h"
#include "compose/compose.h"
#include "compose/fixtures.h"
#include "compose/footnotes.h"
#include "compose/material_words.h"
#include "words/man_messages.h"
#include "words/sheet_messages.h"
#include "words/terms.h"

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

void add_to_key(Captions& captions,
                const Material& material,
                const std::string& place,
                std::string_view property) {
    const std::string name = material_in_words(captions.language, material);
    const auto entry = std::ranges::find_if(captions.key, [&](const KeyEntry& e) {
        return e.name == name && e.colour == material.colour && e.metal == material.metal;
    });
    if (entry != captions.key.end()) {
        // Buckles are on several things.
        entry->worn += entry->worn.ends_with(place) ? "" : ", " + place;
        entry->properties.emplace_back(property);
        return;
    }
    captions.key.push_back({name,
                            material.made_of,
                            material.colour,
                            material.metal,
                            place,
                            material.tincture(),
                            {std::string(property)}});
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

/// What the particulars are written from and to.
struct Particulars {
    const Uniform& uniform;
    Footnotes& notes;
    Captions& captions;

    [[nodiscard]] Language language() const { return captions.language; }

    /// The choice made, in the captions' language.
    [[nodiscard]] std::string choice(std::string_view key) const {
        return choice_term(language(), key, uniform.word(property_id(key)));
    }

    /// The same with the mark of its footnote.
    [[nodiscard]] std::string marked_choice(std::string_view key) const {
        return choice(key) + notes.mark(property_id(key));
    }

    void add(std::string_view name, const std::string& words) const {
        captions.particulars.emplace_back(term(language(), name), words);
    }
};

const Counted& message_of_marks(std::string_view shape) {
    return shape == "bars"          ? messages::kBars
           : shape == "slanted"     ? messages::kSlantedBars
           : shape == "chevrons-up" ? messages::kChevronsUp
                                    : messages::kChevronsDown;
}

/// "2 bars of white, both sleeves, above the cuff; 12 mm wide, 10 mm apart"; empty if there are
/// none. `group`: `marks` or `service`.
std::string marks_words(const Particulars& to, const std::string& group) {
    const Uniform& uniform = to.uniform;
    const auto id = [&group](const char* name) { return property_id(group + "." + name); };
    const std::string shape = uniform.word(id("shape"));
    const int number = uniform.count(id("number"));
    if (shape == "none" || number == 0 || !uniform.speaks(id("cloth"))) {
        return {};
    }
    const Language language = to.language();
    const Material* cloth = uniform.material(id("cloth"));
    const std::string of =
        cloth != nullptr ? material_in_words(language, *cloth) : uniform.word(id("cloth"));
    std::string words = say(language, message_of_marks(shape), number, {of}) + ", " +
                        to.choice(group + ".sleeves") + ", " + to.choice(group + ".place") + "; " +
                        say(language, messages::kWide, {measure_words(uniform, group + ".width")});
    if (number > 1) {
        words +=
            ", " + say(language, messages::kApart, {measure_words(uniform, group + ".spacing")});
    }
    return words;
}

void describe_marks(const Particulars& to) {
    for (const auto& [group, name] : {std::pair{"marks", "rank marks"}, {"service", "service"}}) {
        const std::string words = marks_words(to, group);
        if (!words.empty()) {
            to.add(name,
                   words + to.notes.mark_of_thing(property_id(std::string(group) + ".cloth")));
        }
    }
}

/// Only what is not the usual long coat with full lapels.
void describe_coat(const Particulars& to) {
    const PropertyId collar = property_id("collar.shape");
    const std::string cut = to.uniform.word(property_id("coat.cut"));
    if (cut == "none") {
        to.add("coat",
               say(to.language(), messages::kLaidOff) + to.notes.mark(property_id("coat.cut")));
        return;
    }
    const PropertyId lapels = property_id("lapels.shape");
    const bool has_lapels = to.uniform.speaks(lapels);
    const bool has_collar = to.uniform.word(collar) != "none";
    if (cut != "long" || !has_lapels || to.uniform.word(lapels) != "full" || !has_collar) {
        std::string words = to.marked_choice("coat.cut") + ", ";
        words += has_lapels ? say(to.language(), messages::kWithLapels, {to.choice("lapels.shape")})
                            : say(to.language(), messages::kWithoutLapels) +
                                  to.notes.mark_of_thing(property_id("lapels.cloth"));
        words += has_collar ? std::string()
                            : ", " + say(to.language(), messages::kWithoutCollar) +
                                  to.notes.mark_of_thing(property_id("collar.cloth"));
        to.add("coat", words);
    }
}

void describe_pockets(const Particulars& to) {
    if (!to.uniform.speaks(property_id("pockets.direction"))) {
        return;
    }
    std::string words = to.marked_choice("pockets.direction");
    const std::string shape = to.uniform.word(property_id("pockets.shape"));
    words += shape == "scalloped" ? "" : ", " + to.marked_choice("pockets.shape");
    const bool large = to.uniform.word(property_id("pockets.size")) == "large";
    words += large ? ", " + to.marked_choice("pockets.size") : "";
    to.add("pockets", words + to.notes.mark_of_rest("pockets"));
}

void describe_shoulders(const Particulars& to) {
    const PropertyId worn = property_id("epaulettes.worn");
    if (to.uniform.word(worn) == "none" || !to.uniform.speaks(worn)) {
        return;
    }
    const bool fringed = to.uniform.material(property_id("epaulettes.fringe")) != nullptr;
    const std::string fringe =
        fringed ? say(to.language(), messages::kWithFringe, {to.choice("epaulettes.fringe-kind")})
                : say(to.language(), messages::kWithoutFringe);
    std::string words = to.marked_choice("epaulettes.worn") + ", " + fringe;
    const PropertyId companion = property_id("epaulettes.companion");
    const std::string other = to.uniform.speaks(companion) ? to.uniform.word(companion) : "strap";
    if (other != "strap" && other != "none") {
        words += "; " + say(to.language(),
                            messages::kNameAndValue,
                            {trait_term(to.language(), properties()[companion].name()),
                             to.marked_choice("epaulettes.companion")});
    }
    const PropertyId stripes = property_id("epaulettes.stripes");
    if (to.uniform.speaks(stripes) && to.uniform.count(stripes) > 0) {
        words += "; " + say(to.language(),
                            messages::kNameAndValue,
                            {trait_term(to.language(), properties()[stripes].name()),
                             std::to_string(to.uniform.count(stripes))});
    }
    to.add("epaulettes", words);
}

void describe_hat(const Particulars& to) {
    if (to.uniform.word(property_id("hat.shape")) != "three-cornered") {
        to.add("hat", to.marked_choice("hat.shape"));
    }
}

/// His rank by the name that files go by; on a sheet of another language by its title, which is
/// no nearer to English than to that.
const std::string& rank_of(const Uniform& uniform) {
    const std::string& title = uniform.facts.rank.title;
    return uniform.language == Language::english || title.empty() ? uniform.rank : title;
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

/// "; 7 to a lapel, 3 to a cuff": how many there are at each place that has any to speak of.
std::string button_counts(const Particulars& to) {
    const PropertyId lapel = property_id("lapels.cloth");
    const bool lapels = to.uniform.speaks(lapel) && to.uniform.material(lapel) != nullptr;
    const std::vector<std::pair<std::string_view, Message>> places{
        {"lapels.buttons", lapels ? messages::kToALapel : messages::kDownTheFront},
        {"cuffs.buttons", messages::kToACuff},
        {"pockets.buttons", messages::kToAPocket}};
    std::string words;
    for (const auto& [key, place] : places) {
        const PropertyId id = property_id(key);
        if (!to.uniform.speaks(id)) {
            continue;
        }
        const int count = to.uniform.count(id);
        const std::string number =
            count > 0 ? std::to_string(count) : say(to.language(), messages::kNoButtons);
        words += (words.empty() ? "; " : ", ") + say(to.language(), place, {number});
    }
    return words;
}

void describe_buttons(const Particulars& to) {
    const Material* metal = to.uniform.material(property_id("buttons.metal"));
    std::string words = metal != nullptr ? material_in_words(to.language(), *metal)
                                         : say(to.language(), messages::kNoButtons);
    const std::string number = to.uniform.word(property_id("buttons.number"));
    if (!number.empty() && number != "none") {
        const bool figures = number.find_first_not_of("0123456789") == std::string::npos;
        const Message& stamped = figures ? messages::kNumberStamped : messages::kLettersStamped;
        words += ", " + say(to.language(), stamped, {number});
    }
    to.add("buttons", words + button_counts(to));
}

/// "cuffs: crimson, slashed": the first of a group's colours also tells of its shape.
void add_callout(const Particulars& to, PropertyId id, const Material& material) {
    const Property& row = properties()[id];
    const auto shape = find_property(std::string(row.group()) + ".shape");
    std::string words = material_in_words(to.language(), material);
    if (row.name() == "cloth" && shape && to.uniform.speaks(*shape) &&
        properties()[*shape].kind == Kind::choice) {
        words +=
            ", " + choice_term(to.language(), properties()[*shape].key, to.uniform.word(*shape));
    }
    const std::string mark = to.notes.mark_of_thing(id);
    const std::string name = term(to.language(), seen_as(to.uniform, id));
    to.captions.callouts.push_back(
        {std::string(row.key),
         say(to.language(), messages::kNameAndValue, {name, words + mark}),
         mark});
}

/// The marks that stand at the musket stand at its stock, which is named first.
void add_fixtures(const Particulars& to, const std::set<std::string>* shown) {
    const auto drawn = [shown](std::string_view thing) {
        return shown == nullptr || shown->contains(std::string(thing));
    };
    const Language language = to.language();
    for (const Fixture& fixture : fixtures()) {
        if (!drawn(fixture.thing) || !drawn(to_hex(fixture.drawn)) ||
            !has_fixture(to.uniform, fixture)) {
            continue;
        }
        const Material material{
            term(language, fixture.name), fixture.colour, fixture.metal, std::string()};
        const bool musket = fixture.thing == "musket.carried";
        const auto before = to.captions.key.size();
        add_to_key(to.captions,
                   material,
                   term(language, fixture.place) +
                       (musket ? to.notes.mark_of_rest("musket") : std::string()),
                   fixture.thing);
        if (to.captions.key.size() > before) {
            to.captions.key.back().fixed = true;
        }
    }
    const PropertyId musket = property_id("musket.carried");
    if (drawn("musket.carried") && to.uniform.speaks(musket) &&
        !is_nothing(to.uniform.value(musket))) {
        const std::string mark = to.notes.mark(musket);
        to.captions.callouts.push_back({"musket.carried", term(language, "musket") + mark, mark});
    }
}

/// What is worn, in one word.
std::string value_in_words(const Particulars& to, PropertyId id) {
    const Uniform& uniform = to.uniform;
    const Property& row = properties()[id];
    if (const Material* material = uniform.material(id)) {
        return material_in_words(to.language(), *material);
    }
    if (row.kind == Kind::ornament) {
        return term(to.language(), uniform.word(id));
    }
    return row.kind == Kind::choice || is_nothing(uniform.value(id))
               ? choice_term(to.language(), row.key, uniform.word(id))
               : uniform.word(id);
}

/// What a footnote speaks of and the sheet names nowhere yet: no note without its mark.
void describe_what_is_noted(const Particulars& to) {
    while (const auto id = to.notes.next_without_mark()) {
        const Property& row = properties()[*id];
        const std::string words = value_in_words(to, *id) + to.notes.mark(*id);
        const bool whole = row.kind == Kind::cloth || row.kind == Kind::metal;
        const std::string trait = whole ? words
                                        : say(to.language(),
                                              messages::kNameAndValue,
                                              {trait_term(to.language(), row.name()), words});
        to.add(name_in_key(to.uniform, *id), trait);
    }
}

void describe_key(const Particulars& to, const std::set<std::string>* shown) {
    std::vector<PropertyId> order(properties().size());
    std::iota(order.begin(), order.end(), PropertyId{0});
    std::ranges::stable_sort(
        order, {}, [](PropertyId id) { return reading_rank(properties()[id].key); });
    for (const PropertyId id : order) {
        const Property& row = properties()[id];
        const Material* material = to.uniform.material(id);
        const bool drawn = shown == nullptr || shown->contains(std::string(row.key));
        if (material != nullptr && drawn && keyed(row) && to.uniform.speaks(id) &&
            !same_as_plume(to.uniform, row)) {
            add_to_key(to.captions,
                       *material,
                       term(to.language(), seen_as(to.uniform, id)) + to.notes.mark_of_thing(id),
                       row.key);
            add_callout(to, id, *material);
        }
    }
}

}  // namespace

Captions captions_of(const Uniform& uniform, const std::set<std::string>* shown) {
    Captions captions;
    captions.language = uniform.language;
    captions.title = uniform.title;
    captions.subtitle = uniform.subtitle;
    captions.rank = rank_of(uniform);
    captions.year = uniform.year;
    captions.drawn_by = uniform.drawn_by;
    captions.source = source_of(uniform);
    captions.notes = uniform.notes;
    Footnotes notes(uniform);
    const Particulars to{uniform, notes, captions};
    describe_key(to, shown);
    add_fixtures(to, shown);
    describe_coat(to);
    describe_buttons(to);
    if (uniform.speaks(property_id("cuffs.shape"))) {
        to.add("cuffs", to.marked_choice("cuffs.shape"));
    }
    describe_pockets(to);
    describe_shoulders(to);
    describe_marks(to);
    describe_hat(to);
    describe_what_is_noted(to);
    captions.footnotes = notes.all();
    return captions;
}

}  // namespace platewright
