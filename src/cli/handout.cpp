// SPDX-License-Identifier: MIT
// A recruit's own sheets.
#include "cli/handout.h"

#include <algorithm>
#include <array>
#include <utility>

#include "base/text.h"
#include "cli/handout_parts.h"
#include "cli/kit.h"
#include "compose/material_words.h"
#include "layout/handout.h"
#include "read/read.h"
#include "resolve/change.h"
#include "resolve/notable.h"
#include "words/handout_messages.h"
#include "words/sheet_messages.h"
#include "words/terms.h"

namespace platewright::cli {
namespace {

const std::string kFront = "front";
const std::string kBack = "back";
const std::string kButtonView = "button";

std::vector<std::string> texts_of(const std::vector<WrittenText>& written) {
    std::vector<std::string> texts;
    texts.reserve(written.size());
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
    Ink ink = Ink::colour;

    [[nodiscard]] const Template& view() const { return *job->views.at(kFront); }

    [[nodiscard]] Figure figure(double scale) const {
        return compose(uniform, view(), job->ornaments, scale, {}, ink);
    }
};

/// A kind of mark: the property that gives its material, and the frame where it is seen.
struct MarkRow {
    std::string_view head;
    std::string_view frame;
    /// What the particulars of a plate call it; empty: they do not speak of it.
    std::string_view particular = {};
};

constexpr std::array kMarkRows = std::to_array<MarkRow>({
    {"marks.cloth", "forearm", "rank marks"},
    {"service.cloth", "upper-arm", "service"},
    {"rings.cloth", "cuff"},
    {"badge.cloth", "badge"},
    {"epaulettes.cloth", "shoulders", "epaulettes"},
    {"buttons.metal", "trunk", "buttons"},
});

/// The length of a property that says something; null if there is none.
const Measure* length_of(const Uniform& man, std::string_view group, std::string_view name) {
    const auto id = find_property(std::string(group) + "." + std::string(name));
    return id && man.speaks(*id) ? std::get_if<Measure>(&man.value(*id)) : nullptr;
}

/// The measures of a group, as printed and in mm. Above a cuff the lowest mark keeps from it what
/// the marks keep from each other, unless something else is ordered.
std::vector<HandoutMeasure> measures_of(const Uniform& man, std::string_view group) {
    std::vector<HandoutMeasure> measures;
    const auto add = [&](const Message& what, const Measure* measure) {
        if (measure != nullptr) {
            measures.push_back({say(man.language, what),
                                measure->printed,
                                number_words(man.language, measure->mm, 1)});
        }
    };
    const auto number = find_property(std::string(group) + ".number");
    const auto place = find_property(std::string(group) + ".place");
    const Measure* spacing = length_of(man, group, "spacing");
    const Measure* height = length_of(man, group, "height");
    const bool above_cuff = place && man.word(*place) == "above-cuff";
    add(messages::kWidthOfEach, length_of(man, group, "width"));
    add(messages::kBetweenTwo, number && man.count(*number) > 1 ? spacing : nullptr);
    add(messages::kBelowLowest, height == nullptr && above_cuff ? spacing : height);
    return measures;
}

/// "gold, upper arm": what is said of a thing by those of its properties that say something.
std::string values_in_words(const Uniform& man, const std::vector<PropertyId>& of) {
    std::vector<std::string> all;
    for (const PropertyId id : of) {
        const Property& row = properties()[id];
        if (!man.speaks(id)) {
            continue;
        }
        std::string words;
        if (const Material* material = man.material(id)) {
            words = material_in_words(man.language, *material);
        } else if (row.kind == Kind::count) {
            words = trait_term(man.language, row.name()) + " " + std::to_string(man.count(id));
        } else if (row.kind == Kind::choice) {
            words = choice_term(man.language, row.key, man.word(id));
        } else if (row.kind == Kind::ornament) {
            words = term(man.language, man.word(id));
        }
        if (!words.empty() && std::ranges::find(all, words) == all.end()) {
            all.push_back(std::move(words));
        }
    }
    return comma_list(all);
}

/// The properties of a group.
std::vector<PropertyId> group_of(std::string_view group) {
    std::vector<PropertyId> found;
    for (PropertyId id = 0; id < properties().size(); ++id) {
        if (properties()[id].group() == group) {
            found.push_back(id);
        }
    }
    return found;
}

/// One button, large enough to be known again.
Figure button_of(const Dressed& man,
                 const Template& drawing,
                 const Paper& paper,
                 double closeness) {
    const double scale = mark_scale(frame_of(drawing), paper, closeness);
    return compose(man.uniform, drawing, man.job->ornaments, scale, {}, man.ink);
}

std::optional<Figure> part_of(const Dressed& man,
                              std::string_view frame,
                              const Paper& paper,
                              double closeness) {
    const auto found = frame_of(man.view(), frame);
    if (!found) {
        return std::nullopt;
    }
    const Rect window = found->squared();
    return compose(man.uniform,
                   man.view(),
                   man.job->ornaments,
                   mark_scale(window, paper, closeness),
                   window,
                   man.ink);
}

/// What the plate's particulars say of a mark, else what its properties say.
std::string words_of(const MarkRow& row, const Uniform& man, const Captions& captions) {
    const std::string name = term(man.language, row.particular);
    for (const auto& [thing, words] : captions.particulars) {
        if (!row.particular.empty() && thing == name) {
            return words;
        }
    }
    return values_in_words(man, group_of(row.head.substr(0, row.head.find('.'))));
}

std::vector<HandoutMark> marks_of(const Dressed& man,
                                  const Captions& captions,
                                  const Paper& paper,
                                  double closeness) {
    std::vector<HandoutMark> marks;
    for (const MarkRow& row : kMarkRows) {
        const PropertyId head = property_id(row.head);
        if (man.uniform.material(head) == nullptr || !man.uniform.speaks(head)) {
            continue;
        }
        const std::string_view group = properties()[head].group();
        const auto button = man.job->views.find(group == "buttons" ? kButtonView : "");
        marks.push_back(
            {term(man.uniform.language, called_on(man.uniform, head)),
             words_of(row, man.uniform, captions),
             measures_of(man.uniform, group),
             button != man.job->views.end()
                 ? button_of(man, *button->second, paper, closeness)
                 : part_of(man, frame_of_marks(man.uniform, group, row.frame), paper, closeness)});
    }
    return marks;
}

/// "rank marks, service marks": what he does not wear when he joins.
std::string earned_marks(const Uniform& man) {
    std::vector<std::string> names;
    for (const MarkRow& row : kMarkRows) {
        const PropertyId head = property_id(row.head);
        if (man.material(head) != nullptr && is_earned(man, head)) {
            names.push_back(term(man.language, properties()[head].called()));
        }
    }
    return comma_list(names);
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
    const auto name = [&](const Change& change) { return term(man.language, change.thing); };
    std::vector<std::string> on;
    std::vector<std::string> lines;
    std::vector<std::string> off;
    for (const Change& change : found.changes) {
        const bool replaced = is_replaced(found, change);
        if (!change.comes_with.empty() || (leaves(change) && replaced)) {
            continue;
        }
        if (leaves(change)) {
            off.push_back(name(change));
        } else if (change.deed == Deed::swap || replaced) {
            lines.push_back(say(man.language,
                                messages::kNameAndValue,
                                {name(change), values_in_words(man, change.properties)}));
        } else {
            on.push_back(name(change));
        }
    }
    if (!on.empty()) {
        lines.insert(lines.begin(), say(man.language, messages::kWith, {comma_list(on)}));
    }
    if (!off.empty()) {
        lines.push_back(say(man.language, messages::kWithout, {comma_list(off)}));
    }
    if (lines.empty()) {
        lines.push_back(say(man.language, messages::kAsInFullDress));
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

    [[nodiscard]] std::optional<Document> draw(const Printing& printing,
                                               const Typesetter& type,
                                               Diagnostics& to,
                                               Timings& timings) const override {
        auto uniform = timings.measure("resolve", [&] { return workshop_.uniform_of(man_, to); });
        std::vector<Dressed> orders;
        for (const Job& job : orders_) {
            auto other = timings.measure("resolve", [&] { return workshop_.uniform_of(job, to); });
            if (other) {
                orders.push_back({&job, *std::move(other), printing.ink});
            }
        }
        if (!uniform || orders.size() < orders_.size()) {
            return std::nullopt;
        }
        const Dressed man{&man_, *std::move(uniform), printing.ink};
        std::optional<Document> best;
        Diagnostics problems;
        for (const double closeness : kHandoutClosenesses) {
            Diagnostics found;
            const Handout handout = timings.measure(
                "compose", [&] { return handout_of(man, orders, printing.paper, closeness); });
            Document document = timings.measure(
                "layout", [&] { return lay_out_handout(handout, printing.paper, type, found); });
            if (!best || document.pages.size() < best->pages.size()) {
                best = std::move(document);
                problems = std::move(found);
            }
            if (best->pages.size() <= most_handout_pages(printing.paper)) {
                break;
            }
        }
        to.add_all(problems);
        return best;
    }

  private:
    const Workshop& workshop_;
    SpecifiedHandout written_;
    Job man_;
    std::vector<Job> orders_;

    [[nodiscard]] Handout handout_of(const Dressed& man,
                                     const std::vector<Dressed>& orders,
                                     const Paper& paper,
                                     double closeness) const {
        const SheetWords& words = written_.words;
        const Captions captions = captions_of(man.uniform);
        Handout made;
        made.closeness = closeness;
        made.language = man.uniform.language;
        made.title = words.title.text;
        made.subtitle = words.subtitle ? words.subtitle->text : man.uniform.title;
        made.drawn_by = words.drawn_by ? words.drawn_by->text : man.uniform.drawn_by;
        made.source = words.source ? words.source->text : captions.source;
        made.notes = texts_of(words.notes);
        made.notes.insert(made.notes.end(), captions.notes.begin(), captions.notes.end());
        made.footnotes = captions.footnotes;
        made.unit = text_of(written_.unit.name);
        made.contact = texts_of(written_.unit.contact);
        made.unit_notes = texts_of(written_.unit.notes);
        made.putting_on = texts_of(written_.putting_on);
        made.care = texts_of(written_.care);
        made.cautions = texts_of(written_.cautions);
        made.man = man.figure(handout_scale(frame_of(man.view(), man.uniform), paper, closeness));
        made.parts = parts_of(man.uniform, made.man, captions);
        made.earned = earned_marks(man.uniform);
        if (const auto back = man.job->views.find(kBack); back != man.job->views.end()) {
            const Template& view = *back->second;
            const double scale = back_scale(frame_of(view, man.uniform), paper, closeness);
            made.back = compose(man.uniform, view, man.job->ornaments, scale, {}, man.ink);
            made.parts_behind = parts_behind(man.uniform, *made.back, captions, made.parts);
        }
        made.marks = marks_of(man, captions, paper, closeness);
        forget_marks_not_printed(made);
        add_kit_list(made, man, orders);
        show_musket(made);
        add_orders(made, man, orders, paper);
        if (man.ink == Ink::hatched) {
            name_hatching(made);
        } else {
            forget_hatching(made);
        }
        return made;
    }

    void add_kit_list(Handout& to, const Dressed& man, const std::vector<Dressed>& orders) const {
        std::vector<KitThing> kit = kit_of(man.uniform);
        for (const Dressed& order : orders) {
            const Named& named = order.uniform.facts.order_of_dress;
            add_kit(
                kit, man.uniform, order.uniform, named.means.empty() ? named.name : named.means);
        }
        merge_kit(kit, written_.kit, to.language);
        for (KitThing& thing : kit) {
            // What holds for all stands at the end.
            thing.item.source = thing.item.source == to.source ? "" : thing.item.source;
        }
        to.stages = stages_of(kit, to.language);
        std::vector<HandoutItem> all;
        for (const HandoutStage& stage : to.stages) {
            all.insert(all.end(), stage.items.begin(), stage.items.end());
        }
        to.total = total_of(all, to.language);
    }

    /// Its wood, which is no property of a man, is known from the figure.
    static void show_musket(Handout& in) {
        const std::string name = term(in.language, "musket");
        const auto part = std::ranges::find(in.parts, name, &HandoutPart::name);
        for (HandoutStage& stage : in.stages) {
            for (HandoutItem& item : stage.items) {
                if (part != in.parts.end() && item.name == name && item.material.empty()) {
                    item.material = part->material;
                    item.colour = part->colour;
                    item.hatch = part->hatch;
                }
            }
        }
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
            to.orders.push_back(
                {named.title.empty() ? named.name : named.title,
                 named.means,
                 changes_of(man.uniform, order.uniform),
                 order.figure(order_scale(widest, orders.size(), paper, to.closeness))});
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
    auto man = workshop.prepare_named(written->man, {{kFront, {}}, {kBack, {}}}, to, timings);
    if (!man) {
        return nullptr;
    }
    if (written->words.language) {
        man->plate.language = workshop.language_of(written->words.language);
    }
    const std::vector<WrittenText> names =
        written->orders.empty() ? orders_of(*man->orders) : written->orders;
    std::vector<Job> orders;
    for (const WrittenText& name : names) {
        SpecifiedPlate plate = man->plate;
        plate.order_of_dress = name;
        plate.views = {{kFront, {}}};
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
