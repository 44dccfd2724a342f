// SPDX-License-Identifier: MIT
// The keys of plates, regulations and regiments that are not groups of properties.
#include "vocabulary/records.h"

#include <algorithm>
#include <array>
#include <stdexcept>

#include "base/text.h"
#include "vocabulary/records_sheets.h"
#include "vocabulary/records_workshop.h"

namespace platewright {
namespace {

using rows::kBody;
using rows::kChart;
using rows::kComparison;
using rows::kHandout;
using rows::kKitItem;
using rows::kLanguage;
using rows::kUnit;
using rows::kWorkshop;

constexpr int kMostNumber = 9'999;
constexpr int kMostMen = 99'999;

constexpr std::array kGrounds = std::to_array<Key>({
    {.key = "source",
     .meaning = "where it is written: a book and page, an article, an order",
     .example = "article 9"},
    {.key = "certainty",
     .holds = Holds::choice,
     .meaning = "how sure it is; `documented` if not written",
     .choices = "documented|inferred|conjectural"},
    {.key = "why", .holds = Holds::note, .meaning = "the reason, as it is to be explained"},
    {.key = "other sources",
     .holds = Holds::records,
     .meaning = "sources that are not followed, and what they say instead",
     .example = "[{source: Order book of the depot, says: red collars}]",
     .of = Record::other_source},
});

constexpr std::array kOtherSource = std::to_array<Key>({
    {.key = "source", .meaning = "the other source", .required = true},
    {.key = "says", .holds = Holds::note, .meaning = "what it says of the same matter"},
});

constexpr std::array kPlate = std::to_array<Key>({
    {.key = "plate",
     .meaning = "title of the plate, its caption's first line",
     .example = "Private, Tannbruck Regiment",
     .required = true,
     .or_key = "wardrobe"},
    {.key = "wardrobe",
     .meaning =
         "instead of `plate`: title of an index that shows this man in everything he could wear"},
    {.key = "subtitle", .meaning = "second line of the caption"},
    {.key = "year", .meaning = "the year shown"},
    {.key = "drawn by", .meaning = "who described or drew the plate"},
    {.key = "source", .meaning = "where the facts are from"},
    {.key = "notes", .holds = Holds::notes, .meaning = "remarks printed below the caption"},
    kLanguage,
    {.key = "figure",
     .meaning = "the figure it is drawn on: a folder of `templates/`; `line-infantry` if not "
                "written"},
    {.key = "views",
     .holds = Holds::lines,
     .meaning = "the views to draw, in this order: `front`, `back`, `side`; front and back if not "
                "written"},
    {.key = "details",
     .holds = Holds::lines,
     .meaning = "what to show enlarged, as far as there is room: `hat`, `collar`, `breast`, "
                "`shoulder`, `cuff`, `pocket`, `turnback` …; or `automatic` for what matters of "
                "this man"},
    {.key = "callouts",
     .holds = Holds::yes_or_no,
     .meaning = "`yes` to name things beside the figure, each with a line to it; `no` if not "
                "written"},
    {.key = "regiment",
     .meaning = "the man's regiment: the path of its file from this one, or a name in the series "
                "of `regulation`",
     .example = "arvenholt/tannbruck.yaml"},
    {.key = "regulation",
     .meaning = "the path of a regulation from this file, where no regiment's file names one",
     .example = "arvenholt/regulation-1784.yaml"},
    {.key = "class", .meaning = "the class of his corps, where neither series nor regiment says"},
    {.key = "company", .meaning = "his company", .example = "grenadiers"},
    {.key = "rank",
     .meaning = "his rank; it decides the marks on his sleeves, by the regulation or by custom",
     .example = "corporal"},
    {.key = "years of service",
     .holds = Holds::years,
     .meaning = "how long he has served, in years",
     .example = "8"},
    {.key = "order of dress", .meaning = "what he is dressed for", .example = "parade"},
    {.key = "as of",
     .holds = Holds::first_day,
     .meaning = "the day whose regulations hold",
     .example = "1788-05-01"},
    {.key = "worn",
     .holds = Holds::choice,
     .meaning = "`as ordered` leaves departures out; `as worn` if not written",
     .choices = "as worn|as ordered"},
    {.key = "departures",
     .holds = Holds::records,
     .meaning = "what he wears instead of what was ordered",
     .of = Record::departure},
});

constexpr std::array kRegulation = std::to_array<Key>({
    {.key = "regulation",
     .meaning = "title of the regulation",
     .example = "Clothing regulation for the ducal infantry",
     .required = true},
    {.key = "in force from",
     .holds = Holds::first_day,
     .meaning = "the first day on which it holds",
     .example = "1784-03-01"},
    {.key = "until",
     .holds = Holds::last_day,
     .meaning = "the last day on which it holds",
     .example = "1788-04-30"},
    {.key = "amends",
     .meaning = "the path, from this file, of the regulation that this one changes in part",
     .example = "regulation-1784.yaml"},
    {.key = "must decide",
     .holds = Holds::properties,
     .meaning = "what may not be left to the built-in defaults",
     .example = "[coat.cloth, buttons.metal]"},
    {.key = "everyone",
     .holds = Holds::record,
     .meaning = "what every man wears",
     .of = Record::block},
    {.key = "classes",
     .holds = Holds::named,
     .meaning = "classes of corps, and what each wears",
     .of = Record::named_block},
    {.key = "shows",
     .holds = Holds::named,
     .meaning = "ways in which regiments of one colour show it",
     .of = Record::named_block},
    {.key = "series",
     .holds = Holds::records,
     .meaning = "the regiments, by their distinguishing colour",
     .of = Record::series},
    {.key = "rules",
     .holds = Holds::records,
     .meaning = "what is worn by those of whom something holds",
     .of = Record::rule},
    {.key = "companies",
     .holds = Holds::named,
     .meaning = "companies, and what each wears",
     .of = Record::company},
    {.key = "battalions",
     .holds = Holds::records,
     .meaning = "of which companies the battalions are made up",
     .of = Record::battalion},
    {.key = "strength",
     .holds = Holds::number,
     .meaning = "men of a regiment; checked against battalions, companies and men",
     .example = "1400 men",
     .most = kMostMen},
    {.key = "ranks",
     .holds = Holds::named,
     .meaning = "ranks, and the marks of each",
     .of = Record::rank},
    {.key = "service",
     .holds = Holds::records,
     .meaning = "marks for years of service; of those that hold, the later ones add to the earlier",
     .of = Record::service_step},
    {.key = "orders of dress",
     .holds = Holds::named,
     .meaning = "orders of dress, and what is put on or laid aside for each",
     .of = Record::named_block},
});

constexpr std::array kRegiment = std::to_array<Key>({
    {.key = "regiment",
     .meaning = "name of the regiment",
     .example = "Tannbruck",
     .required = true},
    {.key = "regulation",
     .holds = Holds::lines,
     .meaning = "the path of its regulation from this file, or a list; the one in force on the "
                "day is taken",
     .example = "regulation-1788.yaml"},
    {.key = "number",
     .holds = Holds::number,
     .meaning = "its number in the series, where the name does not tell",
     .example = "1",
     .most = kMostNumber},
    {.key = "class", .meaning = "the class of the corps, where the series does not say"},
    {.key = "departures",
     .holds = Holds::records,
     .meaning = "what was worn instead of what was ordered",
     .of = Record::departure},
});

constexpr std::array kNamedBlock = std::to_array<Key>({
    {.key = "title", .meaning = "its title, as printed"},
    {.key = "means", .meaning = "the title in the reader's language"},
});

constexpr std::array kSeries = std::to_array<Key>({
    {.key = "colour",
     .meaning = "the distinguishing colour; it decides `facings.cloth`",
     .example = "crimson",
     .required = true},
    {.key = "class", .meaning = "the class of these regiments"},
    {.key = "alike",
     .holds = Holds::yes_or_no,
     .meaning = "`yes` if nothing but the number is to tell them apart; `no` if not written"},
    {.key = "regiments",
     .holds = Holds::records,
     .meaning = "the regiments of this colour",
     .required = true,
     .of = Record::place},
});

constexpr std::array kPlace = std::to_array<Key>({
    {.key = "number",
     .holds = Holds::number,
     .meaning = "the regiment's number",
     .example = "1",
     .required = true,
     .most = kMostNumber},
    {.key = "name", .meaning = "its name", .example = "Tannbruck"},
    {.key = "shows", .meaning = "how it shows the colour: a name of `shows`"},
    {.key = "buttons", .meaning = "the metal of its buttons", .example = "white"},
});

constexpr std::array kRule = std::to_array<Key>({
    {.key = "name",
     .meaning = "a name for it; an amendment's rule of the same name takes its place",
     .example = "upright pockets"},
    {.key = "when",
     .holds = Holds::record,
     .meaning = "all of this must hold; always, if not written",
     .example = "{buttons.metal: white}",
     .of = Record::question},
    {.key = "unless",
     .holds = Holds::record,
     .meaning = "if any of this holds, the rule does not",
     .example = "{class: artillery}",
     .of = Record::question},
    {.key = "wear",
     .holds = Holds::record,
     .meaning = "what is worn then",
     .example = "{pockets: vertical}",
     .required = true,
     .of = Record::block},
});

constexpr std::array kQuestion = std::to_array<Key>({
    {.key = "class", .holds = Holds::lines, .meaning = "the class of his corps"},
    {.key = "regiment", .holds = Holds::lines, .meaning = "name or number of his regiment"},
    {.key = "company", .holds = Holds::lines, .meaning = "his company"},
    {.key = "rank", .holds = Holds::lines, .meaning = "his rank"},
    {.key = "order of dress", .holds = Holds::lines, .meaning = "what he is dressed for"},
    {.key = "years of service",
     .holds = Holds::years_asked,
     .meaning = "his years of service: `at least 8`, or `more than 6`",
     .example = "at least 8"},
});

constexpr std::array kCompany = std::to_array<Key>({
    {.key = "title", .meaning = "its title, as printed"},
    {.key = "means", .meaning = "the title in the reader's language"},
    {.key = "men",
     .holds = Holds::number,
     .meaning = "men of one such company",
     .example = "140",
     .most = kMostMen},
});

constexpr std::array kBattalion = std::to_array<Key>({
    {.key = "name", .meaning = "its name", .example = "first battalion", .required = true},
    {.key = "companies",
     .holds = Holds::numbers,
     .meaning = "how many companies of each kind it has",
     .example = "{musketeers: 4, grenadiers: 1}",
     .required = true,
     .most = 99},
});

constexpr std::array kRank = std::to_array<Key>({
    {.key = "title", .meaning = "its title, as printed"},
    {.key = "means", .meaning = "the title in the reader's language"},
    {.key = "like",
     .meaning = "another rank: what that one wears, this one wears, but for what is written here",
     .example = "corporal"},
    {.key = "officer",
     .holds = Holds::yes_or_no,
     .meaning = "`yes` for officers; `no` if not written"},
});

constexpr std::array kServiceStep = std::to_array<Key>({
    {.key = "at least",
     .holds = Holds::years,
     .meaning = "from so many years on",
     .example = "8 years"},
    {.key = "more than",
     .holds = Holds::years,
     .meaning = "after so many years, not on the day itself",
     .example = "6 years"},
    {.key = "rank", .holds = Holds::lines, .meaning = "only for this rank, or these"},
});

constexpr std::array kDeparture = std::to_array<Key>({
    {.key = "wear",
     .holds = Holds::record,
     .meaning = "what was worn",
     .example = "{pockets: horizontal}",
     .required = true,
     .of = Record::block},
    {.key = "instead of",
     .meaning = "what it departs from: a rule, an article, an order",
     .example = "upright pockets"},
    {.key = "company", .holds = Holds::lines, .meaning = "only in this company, or these"},
    {.key = "rank", .holds = Holds::lines, .meaning = "only this rank, or these"},
    {.key = "order of dress", .holds = Holds::lines, .meaning = "only in this order, or these"},
    {.key = "from",
     .holds = Holds::first_day,
     .meaning = "the first day of it",
     .example = "1784-03-01"},
    {.key = "until", .holds = Holds::last_day, .meaning = "the last day of it", .example = "1786"},
});

constexpr std::array kRecords = std::to_array<RecordRow>({
    {.record = Record::plate, .called = "a plate", .keys = kPlate, .groups = true},
    {.record = Record::regulation, .called = "a regulation", .keys = kRegulation, .grounds = true},
    {.record = Record::regiment,
     .called = "a regiment",
     .keys = kRegiment,
     .groups = true,
     .grounds = true},
    {.record = Record::block, .called = "what is worn", .groups = true, .grounds = true},
    {.record = Record::named_block,
     .called = "what goes by a name",
     .keys = kNamedBlock,
     .groups = true,
     .grounds = true},
    {.record = Record::series,
     .called = "a colour of the series",
     .keys = kSeries,
     .grounds = true},
    {.record = Record::place, .called = "a place in the series", .keys = kPlace},
    {.record = Record::rule, .called = "a rule", .keys = kRule, .grounds = true},
    {.record = Record::question, .called = "what a rule asks", .keys = kQuestion},
    {.record = Record::company,
     .called = "a company",
     .keys = kCompany,
     .groups = true,
     .grounds = true},
    {.record = Record::battalion, .called = "a battalion", .keys = kBattalion},
    {.record = Record::rank, .called = "a rank", .keys = kRank, .groups = true, .grounds = true},
    {.record = Record::service_step,
     .called = "a step of service",
     .keys = kServiceStep,
     .groups = true,
     .grounds = true},
    {.record = Record::departure, .called = "a departure", .keys = kDeparture, .grounds = true},
    {.record = Record::grounds, .called = "what a statement rests on", .keys = kGrounds},
    {.record = Record::other_source,
     .called = "another source",
     .keys = kOtherSource,
     .or_text = true},
    {.record = Record::comparison, .called = "a comparison", .keys = kComparison},
    {.record = Record::handout, .called = "a handout", .keys = kHandout},
    {.record = Record::unit, .called = "a unit", .keys = kUnit},
    {.record = Record::kit_item, .called = "a thing of the kit", .keys = kKitItem, .or_text = true},
    {.record = Record::chart, .called = "a chart", .keys = kChart},
    {.record = Record::workshop, .called = "a workshop sheet", .keys = kWorkshop},
    {.record = Record::body, .called = "a man's measures", .keys = kBody},
});

}  // namespace

const RecordRow& record_row(Record record) {
    const auto found = std::ranges::find(kRecords, record, &RecordRow::record);
    if (found == kRecords.end()) {
        throw std::logic_error("record without a row");
    }
    return *found;
}

std::span<const RecordRow> record_rows() {
    return kRecords;
}

std::vector<const Key*> keys_of(Record record) {
    const RecordRow& row = record_row(record);
    std::vector<const Key*> keys;
    for (const Key& key : row.keys) {
        keys.push_back(&key);
    }
    if (row.grounds) {
        for (const Key& key : kGrounds) {
            keys.push_back(&key);
        }
    }
    return keys;
}

const Key* find_key(Record record, std::string_view key) {
    const std::vector<const Key*> keys = keys_of(record);
    const auto found = std::ranges::find(keys, key, &Key::key);
    return found == keys.end() ? nullptr : *found;
}

std::vector<std::string_view> words_of(const Key& key) {
    return split(key.choices, '|');
}

}  // namespace platewright
