// SPDX-License-Identifier: MIT
// The kit list of a man.
#include "cli/kit.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <map>
#include <utility>

#include "base/text.h"
#include "vocabulary/property.h"

namespace platewright::cli {
namespace {

/// What is a thing of its own: the property that gives its material, the words for it, and the
/// groups of what is on it.
struct KitRow {
    std::string_view head;
    std::string_view name;
    int quantity;
    KitStage stage;
    KitWay way;
    /// Besides the group of the head.
    std::string_view groups = {};
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
    {"stockings.cloth", "pair of stockings", 2, KitStage::first_muster, KitWay::buy},
    {"gaiters.cloth", "pair of gaiters", 1, KitStage::season, KitWay::make},
    {"garters.leather", "pair of garters", 1, KitStage::season, KitWay::make},
    {"shoes.leather", "pair of shoes", 1, KitStage::first_muster, KitWay::buy},
    {"ribbon.cloth", "queue ribbon", 1, KitStage::later, KitWay::buy},
    {"belts.leather", "belt", 1, KitStage::borrow, KitWay::borrow},
    {"box.leather", "cartridge box", 1, KitStage::borrow, KitWay::borrow},
    {"hilt.metal", "bayonet", 1, KitStage::borrow, KitWay::borrow, "scabbard"},
    {"sword.hilt", "sword", 1, KitStage::borrow, KitWay::borrow},
    {"musket.sling", "musket", 1, KitStage::borrow, KitWay::borrow},
    {"drum.shell", "drum", 1, KitStage::borrow, KitWay::borrow},
    {"fife.case", "fife", 1, KitStage::borrow, KitWay::borrow},
    {"sash.cloth", "sash", 1, KitStage::season, KitWay::buy},
    {"gorget.metal", "gorget", 1, KitStage::borrow, KitWay::borrow},
    {"haversack.cloth", "haversack", 1, KitStage::later, KitWay::make},
    {"canteen.cloth", "canteen", 1, KitStage::later, KitWay::buy},
    {"knapsack.leather", "knapsack", 1, KitStage::later, KitWay::buy},
    {"blanket.cloth", "blanket", 1, KitStage::later, KitWay::buy},
});

std::string word(const Uniform& man, const char* key) {
    return man.word(property_id(key));
}

std::string spaced(std::string name) {
    std::ranges::replace(name, '-', ' ');
    return name;
}

/// What this man's thing is called: the shape of his hat, the cut of his coat.
std::string called(const KitRow& row, const Uniform& man) {
    if (row.head == "hat.felt") {
        const std::string shape = word(man, "hat.shape");
        const bool is_hat = shape == "round" || shape.ends_with("cornered");
        return is_hat ? shape + " hat" : spaced(shape);
    }
    if (row.head == "coat.cloth") {
        const std::string cut = word(man, "coat.cut");
        return cut == "long" ? "coat" : cut == "short" ? "short coat" : cut;
    }
    if (row.head == "breeches.cloth") {
        return word(man, "breeches.cut");
    }
    if (row.head == "gaiters.cloth") {
        return "pair of " + word(man, "gaiters.height") + " gaiters";
    }
    if (row.head == "sword.hilt") {
        return word(man, "sword.worn");
    }
    return std::string(row.name);
}

/// Two belts where they are crossed or one goes round the waist.
int quantity_of(const KitRow& row, const Uniform& man) {
    return row.head == "belts.leather" && word(man, "belts.worn") != "single" ? 2 : row.quantity;
}

bool has_group(std::string_view groups, std::string_view group) {
    const std::vector<std::string_view> all = split(groups, ' ');
    return std::ranges::find(all, group) != all.end();
}

/// Whether the property is something on the thing, of a material of its own.
bool is_on(const Property& row, const KitRow& thing, std::string_view group) {
    return row.work != Work::none && row.key != thing.head &&
           (row.group() == group || has_group(thing.groups, row.group()));
}

/// "buff: lapels, collar, cuffs; white metal: buttons".
std::string details_of(const KitRow& thing, const Uniform& man) {
    const std::string_view group = thing.head.substr(0, thing.head.find('.'));
    std::vector<std::pair<std::string, std::string>> found;
    for (PropertyId id = 0; id < properties().size(); ++id) {
        const Property& row = properties()[id];
        const Material* material = man.material(id);
        if (material == nullptr || !man.speaks(id) || !is_on(row, thing, group)) {
            continue;
        }
        const std::string name = material_in_words(*material);
        const auto at = std::ranges::find(found, name, &std::pair<std::string, std::string>::first);
        if (at == found.end()) {
            found.emplace_back(name, row.called());
        } else {
            at->second += ", " + std::string(row.called());
        }
    }
    std::string all;
    for (const auto& [name, places] : found) {
        all += (all.empty() ? "" : "; ") + name + ": " + places;
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

KitThing thing_of(const KitRow& row, const Uniform& man, PropertyId head) {
    const Material& material = *man.material(head);
    KitThing thing;
    thing.item.name = called(row, man);
    thing.item.material = material_in_words(material);
    thing.item.material += material.made_of.empty() ? "" : ", " + material.made_of;
    thing.item.colour = material.colour;
    thing.item.metal = material.metal;
    thing.item.quantity = quantity_of(row, man);
    thing.item.details = details_of(row, man);
    thing.item.source = source_of(man, head);
    thing.stage = row.stage;
    thing.way = row.way;
    thing.group = properties()[head].group();
    thing.called = properties()[head].called();
    return thing;
}

std::string_view word_of(KitWay way) {
    return way == KitWay::make ? "make" : way == KitWay::buy ? "buy" : "borrow";
}

std::string_view title_of(KitStage stage) {
    switch (stage) {
        case KitStage::first_muster:
            return "Before the first muster";
        case KitStage::season:
            return "Within the season";
        case KitStage::later:
            return "Later";
        case KitStage::borrow:
            break;
    }
    return "To be borrowed until then";
}

/// What is written of a thing, where it is written.
void lay_over(KitThing& thing, const KitItem& written) {
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
        add("from " + written.from->text);
    }
    thing.stage = written.stage.value_or(thing.stage);
    thing.way = written.way.value_or(thing.way);
    thing.item.quantity = written.quantity ? written.quantity->first : thing.item.quantity;
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
    price.currency = std::string(trim(cost.substr(0, begin) + cost.substr(end)));
    return price;
}

}  // namespace

std::string material_in_words(const Material& material) {
    const bool bare = material.metal && (material.name == "white" || material.name == "yellow");
    return bare ? material.name + " metal" : material.name;
}

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

void add_kit(std::vector<KitThing>& to, const Uniform& man, const std::string& title) {
    for (KitThing& thing : kit_of(man)) {
        const bool known = std::ranges::any_of(to, [&](const KitThing& each) {
            return each.group == thing.group && each.item.name == thing.item.name &&
                   each.item.colour == thing.item.colour;
        });
        if (!known) {
            thing.item.note = "for " + title;
            thing.stage = thing.stage == KitStage::borrow ? thing.stage : KitStage::later;
            // What the unit says of `hat` is said of the hat of full dress, if there is one.
            const bool second = std::ranges::find(to, thing.group, &KitThing::group) != to.end();
            thing.group = second ? std::string_view() : thing.group;
            thing.called = second ? std::string_view() : thing.called;
            to.push_back(std::move(thing));
        }
    }
}

void merge_kit(std::vector<KitThing>& kit, const std::vector<KitItem>& written) {
    for (const KitItem& each : written) {
        auto at = std::ranges::find_if(
            kit, [&](const KitThing& thing) { return is_called(thing, each.item.text); });
        if (at == kit.end()) {
            KitThing own;
            own.item.name = each.item.text;
            at = kit.insert(kit.end(), std::move(own));
        }
        lay_over(*at, each);
    }
}

std::vector<HandoutStage> stages_of(const std::vector<KitThing>& kit) {
    std::vector<HandoutStage> stages;
    for (const KitStage stage :
         {KitStage::first_muster, KitStage::season, KitStage::later, KitStage::borrow}) {
        HandoutStage made{std::string(title_of(stage)), {}, {}};
        for (const KitThing& thing : kit) {
            if (thing.stage == stage) {
                made.items.push_back(thing.item);
                made.items.back().way = word_of(thing.way);
            }
        }
        made.total = total_of(made.items);
        if (!made.items.empty()) {
            stages.push_back(std::move(made));
        }
    }
    return stages;
}

std::string total_of(const std::vector<HandoutItem>& items) {
    std::vector<Price> sums;
    std::size_t priced = 0;
    for (const HandoutItem& item : items) {
        const auto price = price_of(item.cost);
        if (!price) {
            continue;
        }
        ++priced;
        const auto at = std::ranges::find(sums, price->currency, &Price::currency);
        if (at == sums.end()) {
            sums.push_back(*price);
        } else {
            at->amount += price->amount;
        }
    }
    std::string total;
    for (const Price& sum : sums) {
        total += (total.empty() ? "" : " + ") + format_number(sum.amount, 2) + " " + sum.currency;
    }
    return total.empty() || priced == items.size() ? total : total + " for what has a price";
}

}  // namespace platewright::cli
