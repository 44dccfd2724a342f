// SPDX-License-Identifier: MIT
// Units of the trade and reading lengths.
#include "vocabulary/measure.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

#include "base/geometry.h"
#include "base/text.h"

namespace platewright {

namespace {

/// Law of 19 frimaire an VIII (10 December 1799): the metre is 443.296 lignes of the toise of
/// Paris.
constexpr double kLigne = 1000.0 / 443.296;
constexpr double kRhinelandFoot = 139.13 * kLigne;
constexpr double kViennaFoot = 316.080720;

/// Nothing on a man is longer than this; a longer length is a slip.
constexpr double kLongestMm = 100'000;
constexpr std::size_t kLongestMeasure = 80;

constexpr std::string_view kParisLaw = "law of 19 frimaire an VIII: 443.296 lignes to the metre";
constexpr std::string_view kPrussianLaw =
    "Prussian ordinance of 1816: the foot is 139.13 Paris lignes";
constexpr std::string_view kAustrianLaw =
    "Austrian law of 23 July 1871; older tables give the foot 140.126867 Paris lignes";
constexpr std::string_view kInchTreaty = "International Yard and Pound Agreement 1959";
constexpr std::string_view kHerder = "Herder, Conversations-Lexikon (1854), in Paris lignes";
constexpr std::string_view kHerderUnsure =
    "Herder, Conversations-Lexikon (1854), in Paris lignes; its metre value disagrees";
constexpr std::string_view kHayes = "Hayes (1740): the English ell is 45 in, 20 nails";
constexpr std::string_view kRussianDecree = "decree of 1835: the arshin is 28 in";

constexpr std::array kUnits = std::to_array<LengthUnit>({
    {"mm", "millimetre|millimetres|millimeter|millimeters", 1, "metric system"},
    {"cm", "centimetre|centimetres|centimeter|centimeters", 10, "metric system"},
    {"m", "metre|metres|meter|meters", 1000, "metric system"},
    {"in", "inch|inches|in.|\"|″|english inch|english inches", kInch, kInchTreaty},
    {"ft", "foot|feet|ft.|'|′|english foot|english feet", 12 * kInch, kInchTreaty},
    {"yd", "yard|yards|yd.", 36 * kInch, kInchTreaty},
    {"quarter",
     "quarters|quarter of a yard|quarters of a yard",
     9 * kInch,
     "trade: a quarter of a yard"},
    {"nail", "nails", 2.25 * kInch, kHayes},
    {"ell english", "ells english", 45 * kInch, kHayes},
    {"ell flemish", "ells flemish", 27 * kInch, "English reckoning: 3 quarters of a yard"},
    {"ell french",
     "ells french",
     54 * kInch,
     "English reckoning: 6 quarters; not the aune of Paris"},
    {"ell scots", "ells scots", 37.0598 * kInch, "the ell of Edinburgh, 37.0598 in"},
    {"line", "lines|button line|button lines", kInch / 40, "button trade: 40 lines to the inch"},
    {"point paris", "points paris", kLigne / 12, kParisLaw},
    {"ligne paris", "lignes paris|line paris|lines paris", kLigne, kParisLaw},
    {"pouce paris", "pouces paris|inch paris|inches paris", 12 * kLigne, kParisLaw},
    {"pied paris",
     "pieds paris|foot paris|feet paris|pied du roi|pieds du roi",
     144 * kLigne,
     kParisLaw},
    {"toise paris", "toises paris", 864 * kLigne, kParisLaw},
    {"aune paris",
     "aunes paris",
     6322 * kLigne / 12,
     "adjustment of 1748: 3 pieds 7 pouces 10 5/6 lignes"},
    {"Linie rhineland",
     "Linien rhineland|Linie prussian|Linien prussian",
     kRhinelandFoot / 144,
     kPrussianLaw},
    {"Zoll rhineland",
     "Zoll prussian|Zoll rheinland|Zoll rhenish|inch rhineland|inches rhineland",
     kRhinelandFoot / 12,
     kPrussianLaw},
    {"Fuß rhineland",
     "Fuss rhineland|foot rhineland|feet rhineland|Fuß prussian|Fuss prussian|foot prussian|feet "
     "prussian",
     kRhinelandFoot,
     kPrussianLaw},
    {"Elle berlin",
     "Ellen berlin|Elle prussian|Ellen prussian|ell berlin|ells berlin",
     25.5 * kRhinelandFoot / 12,
     kPrussianLaw},
    {"Linie vienna", "Linien vienna|Linie wien|Linien wien", kViennaFoot / 144, kAustrianLaw},
    {"Zoll vienna",
     "Zoll wien|Zoll viennese|inch vienna|inches vienna",
     kViennaFoot / 12,
     kAustrianLaw},
    {"Fuß vienna",
     "Fuss vienna|Schuh vienna|foot vienna|feet vienna|Fuß wien|Fuss wien|Schuh wien",
     kViennaFoot,
     kAustrianLaw},
    {"Elle vienna",
     "Ellen vienna|Elle wien|Ellen wien|ell vienna|ells vienna",
     777.558,
     "Austrian law of 23 July 1871, cloth ell"},
    {"linen Elle vienna",
     "linen Ellen vienna|linen ell vienna|linen ells vienna",
     896,
     "standard at St Stephen's, Vienna"},
    {"Elle brabant", "Ellen brabant|ell brabant|ells brabant", 695, "694 to 696 mm by town"},
    {"Fuß saxon", "Fuss saxon|foot saxon|feet saxon", 125.562 * kLigne, kHerder},
    {"Elle saxon", "Ellen saxon|ell saxon|ells saxon", 2 * 125.562 * kLigne, "two Saxon feet"},
    {"Fuß bavarian", "Fuss bavarian|foot bavarian|feet bavarian", 129.380 * kLigne, kHerder},
    {"Fuß hessian", "Fuss hessian|foot hessian|feet hessian", 126.314 * kLigne, kHerderUnsure},
    {"Fuß hanoverian",
     "Fuss hanoverian|foot hanoverian|feet hanoverian",
     129.483 * kLigne,
     kHerderUnsure},
    {"Fuß württemberg",
     "Fuss württemberg|Fuß wuerttemberg|Fuss wuerttemberg|foot württemberg|feet württemberg|foot "
     "wuerttemberg|feet wuerttemberg",
     127.000 * kLigne,
     kHerder},
    {"fod danish", "foot danish|feet danish", 139.027 * kLigne, kHerder},
    {"fot swedish", "foot swedish|feet swedish", 131.587 * kLigne, kHerder},
    {"voet amsterdam", "foot amsterdam|feet amsterdam", 125.487 * kLigne, kHerder},
    {"Fuß bern", "Fuss bern|foot bern|feet bern", 293.3, "29.33 cm; other cantons differ"},
    {"arshin", "arshins", 28 * kInch, kRussianDecree},
    {"vershok", "vershoks|vershki", 1.75 * kInch, kRussianDecree},
});

/// Units that mean another length in every country: what was written, and what to write for it.
struct Ambiguous {
    std::string_view names;
    std::string_view write;
};

constexpr std::array kAmbiguous = std::to_array<Ambiguous>({
    {"ligne|lignes", "'{} ligne paris' or, for a button of the trade, '{} line'"},
    {"linie|linien", "'{} Linie rhineland' or '{} Linie vienna'"},
    {"pouce|pouces", "'{} pouce paris'"},
    {"pied|pieds", "'{} pied paris'"},
    {"point|points", "'{} point paris'"},
    {"toise|toises", "'{} toise paris'"},
    {"aune|aunes", "'{} aune paris'"},
    {"zoll", "'{} Zoll rhineland' or '{} Zoll vienna'"},
    {"fuß|fuss|schuh", "'{} Fuß rhineland' or '{} Fuß vienna'"},
    {"elle|ellen|ell|ells", "'{} Elle berlin', '{} Elle vienna' or '{} ell english'"},
});

/// Fractions that are one character.
constexpr std::array<std::pair<std::string_view, std::string_view>, 7> kVulgarFractions = {{
    {"½", " 1/2 "},
    {"¼", " 1/4 "},
    {"¾", " 3/4 "},
    {"⅛", " 1/8 "},
    {"⅜", " 3/8 "},
    {"⅝", " 5/8 "},
    {"⅞", " 7/8 "},
}};

/// The words of a unit in a form that compares: lower case, in alphabetical order, parted by single
/// spaces.
std::string comparable(std::string_view unit) {
    std::vector<std::string> words;
    for (const std::string_view word : split(unit, ' ')) {
        if (!trim(word).empty()) {
            words.push_back(lower(trim(word)));
        }
    }
    std::ranges::sort(words);
    std::string joined;
    for (const std::string& word : words) {
        joined += joined.empty() ? "" : " ";
        joined += word;
    }
    return joined;
}

struct KnownUnits {
    /// Sorted by the comparable form.
    std::vector<std::pair<std::string, const LengthUnit*>> by_name;
    /// As written, for suggestions.
    std::vector<std::string> names;

    KnownUnits() {
        for (const LengthUnit& unit : kUnits) {
            add(unit.name, unit);
            for (const std::string_view other : split(unit.other_names, '|')) {
                add(other, unit);
            }
        }
        std::ranges::sort(by_name);
    }

    void add(std::string_view name, const LengthUnit& unit) {
        by_name.emplace_back(comparable(name), &unit);
        names.emplace_back(name);
    }
};

const KnownUnits& known_units() {
    static const KnownUnits kKnown;
    return kKnown;
}

const LengthUnit* find_unit(std::string_view written) {
    const std::string wanted = comparable(written);
    const auto& by_name = known_units().by_name;
    const auto at = std::ranges::lower_bound(
        by_name, wanted, {}, &std::pair<std::string, const LengthUnit*>::first);
    return at != by_name.end() && at->first == wanted ? at->second : nullptr;
}

/// Spaces made single, vulgar fractions spelt out (`3½` becomes `3 1/2`).
std::string tidy(std::string_view text) {
    std::string plain(text);
    for (const auto& [sign, spelt] : kVulgarFractions) {
        for (std::size_t at = plain.find(sign); at != std::string::npos; at = plain.find(sign)) {
            plain.replace(at, sign.size(), spelt);
        }
    }
    std::string single;
    for (const std::string_view word : split(plain, ' ')) {
        if (!trim(word).empty()) {
            single += single.empty() ? "" : " ";
            single += trim(word);
        }
    }
    return single;
}

/// A plain decimal of at most nine digits on either side: `12`, `3.5`, `3,5`.
std::optional<double> parse_decimal(std::string_view text) {
    constexpr std::size_t most_digits = 9;
    std::string digits(text);
    std::ranges::replace(digits, ',', '.');
    const std::size_t point = std::min(digits.find('.'), digits.size());
    const bool plain = digits.find_first_not_of("0123456789.") == std::string::npos;
    const bool sized =
        point >= 1 && point <= most_digits && digits.size() <= point + 1 + most_digits;
    if (!plain || !sized || digits.back() == '.') {
        return std::nullopt;
    }
    double value = 0;
    const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    const bool all = read.ec == std::errc() && read.ptr == digits.data() + digits.size();
    return all ? std::optional(value) : std::nullopt;
}

/// `1/2`; a whole number before and after the stroke.
std::optional<double> parse_fraction(std::string_view text) {
    const std::size_t stroke = text.find('/');
    if (stroke == std::string_view::npos || text.find_first_of(".,") != std::string_view::npos) {
        return std::nullopt;
    }
    const std::optional<double> above = parse_decimal(text.substr(0, stroke));
    const std::optional<double> below = parse_decimal(text.substr(stroke + 1));
    if (!above || !below || *below == 0) {
        return std::nullopt;
    }
    return *above / *below;
}

/// `3`, `3.5`, `1/2`, `3 1/2` or `3-1/2`.
std::optional<double> parse_number(std::string_view text) {
    const std::size_t gap = text.find_first_of(" -");
    if (gap == std::string_view::npos) {
        return text.find('/') == std::string_view::npos ? parse_decimal(text)
                                                        : parse_fraction(text);
    }
    const std::string_view before = text.substr(0, gap);
    if (before.find_first_of(".,/") != std::string_view::npos) {
        return std::nullopt;
    }
    const std::optional<double> whole = parse_decimal(before);
    const std::optional<double> rest = parse_fraction(text.substr(gap + 1));
    if (!whole || !rest || *rest >= 1) {
        return std::nullopt;
    }
    return *whole + *rest;
}

bool is_one_of(std::string_view word, std::string_view names) {
    const auto all = split(names, '|');
    return std::ranges::find(all, word) != all.end();
}

std::string filled(std::string_view pattern, std::string_view number) {
    std::string text(pattern);
    for (std::size_t at = text.find("{}"); at != std::string::npos; at = text.find("{}")) {
        text.replace(at, 2, number);
    }
    return text;
}

/// Why `unit` is none we know, and what to write.
std::string problem_of_unit(std::string_view number, std::string_view unit) {
    if (unit.empty()) {
        return quoted(number) + " has no unit; write for instance " +
               filled("'{} mm', '{} cm' or '{} in'", number);
    }
    for (const Ambiguous& each : kAmbiguous) {
        if (is_one_of(lower(unit), each.names)) {
            return quoted(unit) + " is not the same length in every country; write " +
                   filled(each.write, number);
        }
    }
    const std::optional<std::string> near = nearest_word(unit, known_units().names);
    return "unknown unit " + quoted(unit) + "; " +
           (near ? "did you mean " + quoted(*near) + "?"
                 : "write for instance " +
                       filled("'{} mm', '{} in' or '{} Zoll rhineland'", number));
}

}  // namespace

std::span<const LengthUnit> length_units() {
    return kUnits;
}

std::optional<Measure> parse_measure(std::string_view text, std::string& problem) {
    const std::string printed(trim(text));
    if (printed.size() > kLongestMeasure) {
        problem =
            "too long for a length; write a number and its unit, such as '12 mm' or '3 1/2 in'";
        return std::nullopt;
    }
    const std::string plain = tidy(printed);
    const std::size_t unit_at = std::min(plain.find_first_not_of("0123456789.,/- "), plain.size());
    const std::string_view number = trim(std::string_view(plain).substr(0, unit_at));
    const std::string_view unit_name = std::string_view(plain).substr(unit_at);
    if (number.starts_with('-')) {
        problem = quoted(printed) + " is less than nothing; a length is 0 or more";
        return std::nullopt;
    }
    const std::optional<double> value = parse_number(number);
    if (!value) {
        problem = quoted(printed) +
                  " is not a length; write a number and its unit, such as '12 mm' or '3 1/2 in'";
        return std::nullopt;
    }
    const LengthUnit* unit = find_unit(unit_name);
    if (unit == nullptr) {
        problem = problem_of_unit(number, unit_name);
        return std::nullopt;
    }
    const double mm = *value * unit->mm;
    if (!(mm <= kLongestMm)) {
        problem = quoted(printed) + " is longer than 100 m";
        return std::nullopt;
    }
    return Measure{mm, printed};
}

}  // namespace platewright
