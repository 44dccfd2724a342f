// SPDX-License-Identifier: MIT
// A recruit's own sheets.
#include "cli/handout.h"

#include <algorithm>
#include <array>
#include <utility>

#include "base/text.h"
#include "cli/change_words.h"
#include "cli/columns.h"
#include "cli/kit.h"
#include "layout/handout.h"
#include "read/read.h"
#include "resolve/change.h"

namespace platewright::cli {
namespace {

const std::string kFront = "front";

std::string text_of(const std::optional<WrittenText>& written) {
    return written ? written->text : std::string();
}

std::vector<std::string> texts_of(const std::vector<WrittenText>& written) {
    std::vector<std::string> texts;
    for (const WrittenText& each : written) {
        texts.push_back(each.text);
    }
    return texts;
}

/// The orders of dress of every regulation he stands under, by name, each once.
std::vector<WrittenText> orders_of(const Orders& orders) {
    std::vector<WrittenText> names;
    for (const auto& editions : orders.regulations) {
        for (const SpecifiedRegulation& edition : editions) {
            for (const NamedBlock& order : edition.orders) {
                if (std::ranges::find(names, order.name.text, &WrittenText::text) == names.end()) {
                    names.push_back(order.name);
                }
            }
        }
    }
    return names;
}

/// A man with his uniform.
struct Dressed {
    const Job* job = nullptr;
    Uniform uniform;

    [[nodiscard]] const Template& view() const { return *job->views.at(kFront); }

    [[nodiscard]] Figure figure(double scale) const {
        return compose(uniform, view(), job->ornaments, scale);
    }
};

/// A kind of mark: its name, the property that gives its material, the frame where it is seen, and
/// what is measured of it.
struct MarkRow {
    std::string_view name;
    std::string_view head;
    std::string_view frame;
    std::string_view other_frame = {};
};

constexpr std::array kMarkRows = std::to_array<MarkRow>({
    {"Marks of rank", "marks.cloth", "forearm", "upper-arm"},
    {"Marks of service", "service.cloth", "upper-arm", "forearm"},
    {"Cuff rings", "rings.cloth", "cuff"},
    {"Badge for long service", "badge.cloth", "badge"},
    {"Epaulettes", "epaulettes.cloth", "shoulders"},
});

/// Buttons are counted, not measured: words for each place.
constexpr std::array<std::pair<std::string_view, std::string_view>, 3> kButtonRows{
    {{"lapels.buttons", " on each front edge"},
     {"cuffs.buttons", " on each cuff"},
     {"pockets.buttons", " on each pocket flap"}}};

/// What a measure is of: `width`; a mark's `height` is the cloth below it.
std::string measured(std::string_view name) {
    return name == "height"    ? "cloth left free below the lowest"
           : name == "spacing" ? "cloth left free between two"
                               : "width of each";
}

/// The measures of a group that say something, as printed and in mm.
std::vector<HandoutMeasure> measures_of(const Uniform& man, std::string_view group) {
    std::vector<HandoutMeasure> measures;
    const auto number = find_property(std::string(group) + ".number");
    for (PropertyId id = 0; id < properties().size(); ++id) {
        const Property& row = properties()[id];
        const auto* measure = std::get_if<Measure>(&man.value(id));
        const bool between_one = row.name() == "spacing" && number && man.count(*number) < 2;
        if (row.group() == group && measure != nullptr && man.speaks(id) && !between_one) {
            measures.push_back(
                {measured(row.name()), measure->printed, format_number(measure->mm, 1)});
        }
    }
    return measures;
}

/// The properties of a group that say something.
std::vector<PropertyId> speaking(const Uniform& man, std::string_view group) {
    std::vector<PropertyId> found;
    for (PropertyId id = 0; id < properties().size(); ++id) {
        if (properties()[id].group() == group && man.speaks(id)) {
            found.push_back(id);
        }
    }
    return found;
}

std::optional<Figure> part_of(const Dressed& man, std::string_view frame, const Paper& paper) {
    const auto found = frame_of(man.view(), frame);
    if (!found) {
        return std::nullopt;
    }
    const Rect window = found->squared();
    return compose(man.uniform, man.view(), man.job->ornaments, mark_scale(window, paper), window);
}

/// The frame of a kind of mark; marks may sit on either half of the sleeve.
std::string_view frame_of_marks(const MarkRow& row, const Uniform& man, std::string_view group) {
    const auto place = find_property(std::string(group) + ".place");
    if (!place) {
        return row.frame;
    }
    const bool upper = man.word(*place) == "upper-arm";
    return upper == (row.frame == "upper-arm") ? row.frame : row.other_frame;
}

std::vector<HandoutMark> marks_of(const Dressed& man, const Paper& paper) {
    std::vector<HandoutMark> marks;
    for (const MarkRow& row : kMarkRows) {
        const PropertyId head = property_id(row.head);
        if (man.uniform.material(head) == nullptr || !man.uniform.speaks(head)) {
            continue;
        }
        const std::string_view group = properties()[head].group();
        const Change whole{
            Deed::sew_on, properties()[head].called(), head, speaking(man.uniform, group), {}};
        marks.push_back({std::string(row.name),
                         thing_in_words(man.uniform, whole),
                         measures_of(man.uniform, group),
                         part_of(man, frame_of_marks(row, man.uniform, group), paper)});
    }
    HandoutMark buttons{"Buttons", {}, {}, part_of(man, "trunk", paper)};
    int all = 0;
    for (const auto& [key, place] : kButtonRows) {
        const PropertyId id = property_id(key);
        if (man.uniform.speaks(id) && man.uniform.count(id) > 0) {
            buttons.words += std::to_string(man.uniform.count(id)) + std::string(place) + ", ";
            all += number_of(man.uniform, id);
        }
    }
    if (all > 0) {
        buttons.words += std::to_string(all) + " in all";
    }
    if (!buttons.words.empty()) {
        marks.push_back(std::move(buttons));
    }
    return marks;
}

/// Trimmings are left to the kit list: a number is for what a man puts on, and for what tells his
/// regiment.
bool is_numbered(const Property& row) {
    const bool head = row.name() == "cloth" || row.name() == "leather" || row.name() == "metal" ||
                      row.name() == "felt" || row.name() == "plume" || row.name() == "cockade" ||
                      row.name() == "plate" || row.name() == "tuft" || row.name() == "hilt" ||
                      row.name() == "buckles" || row.name() == "sling";
    return head && row.work != Work::none;
}

std::vector<HandoutPart> parts_of(const Uniform& man, const Figure& figure) {
    std::vector<HandoutPart> parts;
    for (PropertyId id = 0; id < properties().size(); ++id) {
        const Property& row = properties()[id];
        const Material* material = man.material(id);
        const auto seen = figure.seen.find(std::string(row.key));
        if (material == nullptr || !man.speaks(id) || !is_numbered(row) ||
            seen == figure.seen.end() || seen->second.sites.empty()) {
            continue;
        }
        HandoutPart part{
            std::string(row.called()), material->name, material->colour, material->metal, {}};
        for (const Site& site : seen->second.sites) {
            part.sites.push_back(site.at);
        }
        parts.push_back(std::move(part));
    }
    return parts;
}

bool leaves(const Change& change) {
    return change.deed == Deed::lay_aside || change.deed == Deed::take_off;
}

/// Whether another thing takes the place of one that is laid aside.
bool is_replaced(const platewright::Comparison& found, const Change& change) {
    return std::ranges::any_of(found.changes, [&](const Change& other) {
        return other.thing == change.thing && leaves(other) != leaves(change);
    });
}

/// What is done for another order of dress: what comes, a line for each thing that changes, and
/// what goes.
std::vector<std::string> changes_of(const Uniform& full, const Uniform& man) {
    const platewright::Comparison found = compare(full, man);
    const TwoMen men{full, man, {}};
    std::vector<std::string> on;
    std::vector<std::string> lines;
    std::vector<std::string> off;
    for (const Change& change : found.changes) {
        const bool replaced = is_replaced(found, change);
        if (!change.comes_with.empty() || (leaves(change) && replaced)) {
            continue;
        }
        if (leaves(change)) {
            off.emplace_back(change.thing);
        } else if (change.deed == Deed::swap || replaced) {
            lines.push_back(change_in_words(men, change));
        } else {
            on.emplace_back(change.thing);
        }
    }
    if (!on.empty()) {
        lines.insert(lines.begin(), "with " + and_list(on));
    }
    if (!off.empty()) {
        lines.push_back("without " + and_list(off));
    }
    if (lines.empty()) {
        lines.emplace_back("as in full dress");
    }
    return lines;
}

class HandoutSheet : public Sheet {
  public:
    HandoutSheet(const Workshop& workshop,
                 SpecifiedHandout written,
                 Job man,
                 std::vector<Job> orders)
        : workshop_(workshop),
          written_(std::move(written)),
          man_(std::move(man)),
          orders_(std::move(orders)) {}

    [[nodiscard]] std::optional<Document> draw(const Paper& paper,
                                               const Typesetter& type,
                                               Diagnostics& to,
                                               Timings& timings) const override {
        auto uniform = timings.measure("resolve", [&] { return workshop_.uniform_of(man_, to); });
        std::vector<Dressed> orders;
        for (const Job& job : orders_) {
            auto other = timings.measure("resolve", [&] { return workshop_.uniform_of(job, to); });
            if (other) {
                orders.push_back({&job, *std::move(other)});
            }
        }
        if (!uniform || orders.size() < orders_.size()) {
            return std::nullopt;
        }
        const Dressed man{&man_, *std::move(uniform)};
        const Handout handout =
            timings.measure("compose", [&] { return handout_of(man, orders, paper); });
        return timings.measure("layout", [&] { return lay_out_handout(handout, paper, type, to); });
    }

  private:
    const Workshop& workshop_;
    SpecifiedHandout written_;
    Job man_;
    std::vector<Job> orders_;

    [[nodiscard]] Handout handout_of(const Dressed& man,
                                     const std::vector<Dressed>& orders,
                                     const Paper& paper) const {
        const SheetWords& words = written_.words;
        Handout made;
        made.title = words.title.text;
        made.subtitle = words.subtitle ? words.subtitle->text : man.uniform.title;
        made.drawn_by = words.drawn_by ? words.drawn_by->text : man.uniform.drawn_by;
        made.source = words.source ? words.source->text : captions_of(man.uniform).source;
        made.notes = texts_of(words.notes);
        made.unit = text_of(written_.unit.name);
        made.contact = texts_of(written_.unit.contact);
        made.unit_notes = texts_of(written_.unit.notes);
        made.putting_on = texts_of(written_.putting_on);
        made.care = texts_of(written_.care);
        made.cautions = texts_of(written_.cautions);
        made.man = man.figure(handout_scale(frame_of(man.view(), man.uniform), paper));
        made.parts = parts_of(man.uniform, made.man);
        made.marks = marks_of(man, paper);
        add_kit_list(made, man, orders);
        add_orders(made, man, orders, paper);
        return made;
    }

    void add_kit_list(Handout& to, const Dressed& man, const std::vector<Dressed>& orders) const {
        std::vector<KitThing> kit = kit_of(man.uniform);
        for (const Dressed& order : orders) {
            const Named& named = order.uniform.facts.order_of_dress;
            add_kit(kit, order.uniform, named.means.empty() ? named.name : named.means);
        }
        merge_kit(kit, written_.kit);
        for (KitThing& thing : kit) {
            // What holds for all stands at the end.
            thing.item.source = thing.item.source == to.source ? "" : thing.item.source;
        }
        to.stages = stages_of(kit);
        std::vector<HandoutItem> all;
        for (const HandoutStage& stage : to.stages) {
            all.insert(all.end(), stage.items.begin(), stage.items.end());
        }
        to.total = total_of(all);
    }

    static void add_orders(Handout& to,
                           const Dressed& man,
                           const std::vector<Dressed>& orders,
                           const Paper& paper) {
        Rect widest;
        for (const Dressed& order : orders) {
            widest.include(frame_of(order.view(), order.uniform));
        }
        for (const Dressed& order : orders) {
            const Named& named = order.uniform.facts.order_of_dress;
            to.orders.push_back({named.title.empty() ? named.name : named.title,
                                 named.means,
                                 changes_of(man.uniform, order.uniform),
                                 order.figure(order_scale(widest, orders.size(), paper))});
        }
    }
};

}  // namespace

std::unique_ptr<Sheet> prepare_handout(Workshop& workshop,
                                       FileId file,
                                       Diagnostics& to,
                                       Timings& timings) {
    auto written =
        timings.measure("read", [&] { return read_handout(workshop.sources(), file, to); });
    if (!written) {
        return nullptr;
    }
    auto man = workshop.prepare_named(written->man, {{kFront, {}}}, to, timings);
    if (!man) {
        return nullptr;
    }
    const std::vector<WrittenText> names =
        written->orders.empty() ? orders_of(*man->orders) : written->orders;
    std::vector<Job> orders;
    for (const WrittenText& name : names) {
        SpecifiedPlate plate = man->plate;
        plate.order_of_dress = name;
        auto job = timings.measure("data", [&] { return workshop.prepare(plate, true, to); });
        if (job) {
            orders.push_back(*std::move(job));
        }
    }
    if (orders.size() < names.size()) {
        return nullptr;
    }
    return std::make_unique<HandoutSheet>(
        workshop, *std::move(written), *std::move(man), std::move(orders));
}

}  // namespace platewright::cli
