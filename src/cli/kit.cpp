// SPDX-License-Identifier: MIT
// The kit list of a man.
#include "cli/kit.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <utility>

#include "base/text.h"
#include "cli/compared.h"
#include "compose/material_words.h"
#include "resolve/change.h"
#include "resolve/notable.h"
#include "vocabulary/property.h"
#include "words/handout_messages.h"
#include "words/sheet_messages.h"
#include "words/terms.h"

namespace platewright::cli {
namespace {

/// What is a thing of its own: the property that gives its material, the words for it, and the
/// groups of what is on it.
struct KitRow {
    std::string_view head;
    /// A term.
    std::string_view name;
    int quantity;
    KitStage stage;
    KitWay way;
    /// Besides the group of the head.
    std::string_view groups = {};
    /// The head is only a part of it: the sling of the musket.
    bool head_is_part = false;
};

/// Stages and ways: common practice, no source.
constexpr std::array kRows = std::to_array<KitRow>({
    {"hat.felt", "hat", 1, KitStage::first_muster, KitWay::buy},
    {"stock.cloth", "stock", 1, KitStage::first_muster, KitWay::make},
    {"shirt.cloth", "shirt", 2, KitStage::first_muster, KitWay::make},
    {"waistcoat.cloth", "waistcoat", 1, KitStage::first_muster, KitWay::make},
    {"coat.cloth",
     "coat",
     1,
     KitStage::season,
     KitWay::make,
     "lapels collar cuffs rings turnbacks pockets straps wings epaulettes knot cords buttons marks "
     "service badge"},
    {"breeches.cloth", "breeches", 1, KitStage::first_muster, KitWay::make},
    {"stockings.cloth", "stockings", 2, KitStage::first_muster, KitWay::buy},
    {"gaiters.cloth", "gaiters", 1, KitStage::season, KitWay::make},
    {"garters.leather", "garters", 1, KitStage::season, KitWay::make},
    {"shoes.leather", "shoes", 1, KitStage::first_muster, KitWay::buy},
    {"ribbon.cloth", "queue ribbon", 1, KitStage::later, KitWay::buy},
    {"belts.leather", "belts", 1, KitStage::borrow, KitWay::borrow},
    {"box.leather", "cartridge box", 1, KitStage::borrow, KitWay::borrow},
    {"hilt.metal", "bayonet", 1, KitStage::borrow, KitWay::borrow, "scabbard"},
    {"sword.hilt", "sword", 1, KitStage::borrow, KitWay::borrow, "scabbard", true},
    {"musket.sling", "musket", 1, KitStage::borrow, KitWay::borrow, {}, true},
    {"drum.shell", "drum", 1, KitStage::borrow, KitWay::borrow},
    {"fife.case", "fife case", 1, KitStage::borrow, KitWay::borrow},
    {"sash.cloth", "sash", 1, KitStage::season, KitWay::buy},
    {"gorget.metal", "gorget", 1, KitStage::borrow, KitWay::borrow},
    {"haversack.cloth", "haversack", 1, KitStage::later, KitWay::make},
    {"canteen.cloth", "canteen", 1, KitStage::later, KitWay::buy},
    {"knapsack.leather", "knapsack", 1, KitStage::later, KitWay::buy},
    {"blanket.cloth", "blanket", 1, KitStage::later, KitWay::buy},
});

std::string word_of(const Uniform& man, std::string_view key) {
    return man.word(property_id(key));
}

/// The property that says of what sort a thing is, and what sort needs no word.
struct Sort {
    std::string_view head;
    std::string_view property;
    std::string_view usual;
};

constexpr std::array<Sort, 5> kSorts{{{"hat.felt", "hat.shape", ""},
                                      {"coat.cloth", "coat.cut", "long"},
                                      {"breeches.cloth", "breeches.cut", "breeches"},
                                      {"gaiters.cloth", "gaiters.height", ""},
                                      {"sword.hilt", "sword.worn", "sword"}}};

/// Caps and overalls have a word of their own; of the others the sort follows: "gaiters, long".
bool stands_alone(std::string_view head, std::string_view sort) {
    return (head == "hat.felt" && sort != "round" && !sort.ends_with("cornered")) ||
           head == "breeches.cloth" || head == "sword.hilt" ||
           (head == "coat.cloth" && sort != "short");
}

/// What this man's thing is called: the shape of his hat, the cut of his coat.
std::string called(const KitRow& row, const Uniform& man) {
    std::string name = term(man.language, row.name);
    const auto sort = std::ranges::find(kSorts, row.head, &Sort::head);
    if (sort == kSorts.end() || word_of(man, sort->property) == sort->usual) {
        return name;
    }
    const std::string what = word_of(man, sort->property);
    const std::string words = choice_term(man.language, sort->property, what);
    return stands_alone(row.head, what) ? words : name + ", " + words;
}

/// Things that are counted by the pair.
constexpr std::array<std::string_view, 4> kPairwise{
    "stockings.cloth", "gaiters.cloth", "garters.leather", "shoes.leather"};

/// Things of cloth, felt or leather, to which applies what the palettes say of dye and stuff: a
/// shirt is linen, a canteen tin or wood.
constexpr std::array<std::string_view, 10> kOfDyedCloth{"hat.felt",
                                                        "coat.cloth",
                                                        "waistcoat.cloth",
                                                        "breeches.cloth",
                                                        "blanket.cloth",
                                                        "shoes.leather",
                                                        "garters.leather",
                                                        "belts.leather",
                                                        "box.leather",
                                                        "knapsack.leather"};

/// Two belts where they are crossed or one goes round the waist.
int quantity_of(const KitRow& row, const Uniform& man) {
    const std::string worn = word_of(man, "belts.worn");
    const bool two = row.head == "belts.leather" && (worn == "crossed" || worn == "waist");
    return two ? 2 : row.quantity;
}

bool has_group(std::string_view groups, std::string_view group) {
    const std::vector<std::string_view> all = split(groups, ' ');
    return std::ranges::find(all, group) != all.end();
}

/// Whether the property is something on the thing, of a material of its own.
bool is_on(const Property& row, const KitRow& thing, std::string_view group) {
    return row.work != Work::none && (thing.head_is_part || row.key != thing.head) &&
           (row.group() == group || has_group(thing.groups, row.group()));
}

/// "buff: lapels, collar, cuffs; white metal: buttons".
std::string details_of(const KitRow& thing, const Uniform& man) {
    const std::string_view group = thing.head.substr(0, thing.head.find('.'));
    std::vector<std::pair<std::string, std::string>> found;
    for (PropertyId id = 0; id < properties().size(); ++id) {
        const Property& row = properties()[id];
        const Material* material = man.material(id);
        if (material == nullptr || !man.speaks(id) || !is_on(row, thing, group) ||
            is_earned(man, id) || is_tip_alike(man, row)) {
            continue;
        }
        const std::string name = material_in_words(man.language, *material);
        const auto at = std::ranges::find(found, name, &std::pair<std::string, std::string>::first);
        if (at == found.end()) {
            found.emplace_back(name, term(man.language, called_on(man, id)));
        } else {
            at->second += ", " + term(man.language, called_on(man, id));
        }
    }
    std::string all;
    for (const auto& [name, places] : found) {
        all +=
            (all.empty() ? "" : "; ") + say(man.language, messages::kNameAndValue, {name, places});
    }
    return all;
}

/// The strongest statement about the thing that has a source.
std::string source_of(const Uniform& man, PropertyId head) {
    const std::vector<Decision>& chain = man.decided[head].chain;
    const auto at = std::find_if(
        chain.rbegin(), chain.rend(), [](const Decision& each) { return !each.source.empty(); });
    return at == chain.rend() ? std::string() : at->source;
}

/// Its sample beside the words.
void show_material(const Material& material, HandoutItem& item) {
    item.colour = material.colour;
    item.hatch = material.tincture();
    item.metal = material.metal;
}

/// In the order of dressing.
std::size_t place_of(const KitRow& row) {
    return static_cast<std::size_t>(&row - kRows.data());
}

KitThing thing_of(const KitRow& row, const Uniform& man, PropertyId head) {
    const Material& material = *man.material(head);
    KitThing thing;
    thing.item.name = called(row, man);
    if (!row.head_is_part) {
        thing.item.material = material_in_words(man.language, material);
        const bool dyed = std::ranges::find(kOfDyedCloth, row.head) != kOfDyedCloth.end();
        thing.item.material +=
            dyed && !material.made_of.empty() ? ", " + material.made_of : std::string();
        show_material(material, thing.item);
    }
    thing.quantity = quantity_of(row, man);
    thing.in_pairs = std::ranges::find(kPairwise, row.head) != kPairwise.end();
    thing.item.details = details_of(row, man);
    thing.item.source = source_of(man, head);
    thing.stage = row.stage;
    thing.way = row.way;
    thing.group = properties()[head].group();
    thing.called = properties()[head].called();
    thing.place = place_of(row);
    return thing;
}

/// What is sewn or put on a garment for another order of dress: a tuft on the hat.
KitThing trimming_of(const Change& change, const Uniform& man, const Material& material) {
    KitThing thing;
    thing.item.name = term(man.language, change.thing);
    thing.item.material = material_in_words(man.language, material);
    show_material(material, thing.item);
    thing.item.source = source_of(man, change.head);
    const std::string_view group = properties()[change.head].group();
    for (const KitRow& row : kRows) {
        if (row.head.substr(0, row.head.find('.')) == group || has_group(row.groups, group)) {
            thing.place = place_of(row);
            break;
        }
    }
    return thing;
}

/// For another order of dress, besides what he has.
void add_for_order(std::vector<KitThing>& to,
                   KitThing thing,
                   const Uniform& man,
                   const std::string& title) {
    thing.item.note = say(man.language, messages::kForOrder, {title});
    thing.stage = thing.stage == KitStage::borrow ? thing.stage : KitStage::later;
    to.push_back(std::move(thing));
}

bool is_had(const std::vector<KitThing>& kit, const KitThing& thing) {
    return std::ranges::any_of(kit, [&](const KitThing& each) {
        return each.item.name == thing.item.name && each.item.colour == thing.item.colour;
    });
}

std::string word_of(KitWay way, Language language) {
    return say(language,
               way == KitWay::make  ? messages::kMake
               : way == KitWay::buy ? messages::kBuy
                                    : messages::kBorrow);
}

std::string title_of(KitStage stage, Language language) {
    switch (stage) {
        case KitStage::first_muster:
            return say(language, messages::kFirstMuster);
        case KitStage::season:
            return say(language, messages::kSeason);
        case KitStage::later:
            return say(language, messages::kLater);
        case KitStage::borrow:
            break;
    }
    return say(language, messages::kBorrowUntilThen);
}

/// What is written of a thing, where it is written.
void lay_over(KitThing& thing, const KitItem& written, Language language) {
    const auto take = [](std::string& to, const std::optional<WrittenText>& from) {
        to = from ? from->text : to;
    };
    take(thing.item.material, written.material);
    take(thing.item.cost, written.cost);
    // A number and its currency stay on one line.
    for (std::size_t at = thing.item.cost.find(' '); at != std::string::npos;
         at = thing.item.cost.find(' ')) {
        thing.item.cost.replace(at, 1, "\u00a0");
    }
    take(thing.item.source, written.source);
    const auto add = [&](const std::string& words) {
        thing.item.note += (thing.item.note.empty() ? "" : "; ") + words;
    };
    if (written.note) {
        add(written.note->text);
    }
    if (written.from) {
        add(say(language, messages::kFrom, {written.from->text}));
    }
    thing.stage = written.stage.value_or(thing.stage);
    thing.way = written.way.value_or(thing.way);
    thing.quantity = written.quantity ? written.quantity->first : thing.quantity;
}

bool is_called(const KitThing& thing, const std::string& written) {
    const std::string name = lower(written);
    return name == lower(thing.item.name) || name == thing.group || name == thing.called;
}

/// A number with what is written before and behind it: `220` and `EUR`.
struct Price {
    double amount = 0;
    std::string currency;
};

std::optional<Price> price_of(const std::string& cost) {
    const std::size_t begin = cost.find_first_of("0123456789");
    if (begin == std::string::npos) {
        return std::nullopt;
    }
    const std::size_t end = std::min(cost.find_first_not_of("0123456789.,", begin), cost.size());
    std::string digits = cost.substr(begin, end - begin);
    std::ranges::replace(digits, ',', '.');
    const auto points = std::ranges::count(digits, '.');
    constexpr std::size_t most = 12;
    if (points > 1 || digits.size() > most) {
        return std::nullopt;
    }
    Price price;
    double unit = 1;
    bool whole = true;
    for (const char c : digits) {
        if (c == '.') {
            whole = false;
        } else if (whole) {
            price.amount = price.amount * 10 + (c - '0');
        } else {
            unit /= 10;
            price.amount += unit * (c - '0');
        }
    }
    for (const std::string& part : {cost.substr(0, begin), cost.substr(end)}) {
        price.currency += part.starts_with("\u00a0") ? part.substr(2) : std::string(trim(part));
    }
    return price;
}

/// `45`, `45.50`.
std::string amount_in_words(double amount, Language language) {
    std::string words = number_words(language, amount, 2);
    const std::size_t mark = words.find_last_not_of("0123456789");
    const bool one_place = mark != std::string::npos && mark + 2 == words.size();
    return one_place ? words + "0" : words;
}

}  // namespace

std::vector<KitThing> kit_of(const Uniform& man) {
    std::vector<KitThing> kit;
    for (const KitRow& row : kRows) {
        const PropertyId head = property_id(row.head);
        if (man.material(head) != nullptr && man.speaks(head)) {
            kit.push_back(thing_of(row, man, head));
        }
    }
    return kit;
}

void add_kit(std::vector<KitThing>& to,
             const Uniform& full,
             const Uniform& man,
             const std::string& title) {
    for (KitThing& thing : kit_of(man)) {
        if (is_had(to, thing)) {
            continue;
        }
        // What the unit says of `hat` is said of the hat of full dress, if there is one.
        const bool second = std::ranges::find(to, thing.group, &KitThing::group) != to.end();
        thing.group = second ? std::string_view() : thing.group;
        thing.called = second ? std::string_view() : thing.called;
        add_for_order(to, std::move(thing), man, title);
    }
    for (const Change& change : compare(full, man).changes) {
        const Material* material = man.material(change.head);
        if (change.deed != Deed::sew_on || !change.comes_with.empty() || material == nullptr) {
            continue;
        }
        KitThing thing = trimming_of(change, man, *material);
        if (!is_had(to, thing)) {
            add_for_order(to, std::move(thing), man, title);
        }
    }
}

void merge_kit(std::vector<KitThing>& kit, const std::vector<KitItem>& written, Language language) {
    for (const KitItem& each : written) {
        auto at = std::ranges::find_if(
            kit, [&](const KitThing& thing) { return is_called(thing, each.item.text); });
        if (at == kit.end()) {
            KitThing own;
            own.item.name = each.item.text;
            at = kit.insert(kit.end(), std::move(own));
        }
        lay_over(*at, each, language);
    }
}

std::vector<HandoutStage> stages_of(std::vector<KitThing> kit, Language language) {
    std::ranges::stable_sort(kit, {}, &KitThing::place);
    std::vector<HandoutStage> stages;
    for (const KitStage stage :
         {KitStage::first_muster, KitStage::season, KitStage::later, KitStage::borrow}) {
        HandoutStage made{title_of(stage, language), {}, {}};
        for (const KitThing& thing : kit) {
            if (thing.stage == stage) {
                made.items.push_back(thing.item);
                HandoutItem& item = made.items.back();
                item.way = word_of(thing.way, language);
                item.quantity = thing.in_pairs ? say(language, messages::kPairs, thing.quantity)
                                               : std::to_string(thing.quantity);
            }
        }
        made.total = total_of(made.items, language);
        if (!made.items.empty()) {
            stages.push_back(std::move(made));
        }
    }
    return stages;
}

std::string total_of(const std::vector<HandoutItem>& items, Language language) {
    std::vector<Price> sums;
    int without = 0;
    for (const HandoutItem& item : items) {
        const auto price = price_of(item.cost);
        if (!price) {
            without += item.way == word_of(KitWay::borrow, language) ? 0 : 1;
            continue;
        }
        const auto at = std::ranges::find(sums, price->currency, &Price::currency);
        if (at == sums.end()) {
            sums.push_back(*price);
        } else {
            at->amount += price->amount;
        }
    }
    std::string total;
    for (const Price& sum : sums) {
        total += (total.empty() ? "" : " + ") + amount_in_words(sum.amount, language) +
                 (sum.currency.empty() ? "" : "\u00a0") + sum.currency;
    }
    return total.empty() || without == 0
               ? total
               : say(language, messages::kAndWithoutPrice, without, {total});
}

}  // namespace platewright::cli
