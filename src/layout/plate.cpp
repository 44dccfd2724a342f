// SPDX-License-Identifier: MIT
// The reference plate: a plan drawn layer by layer.
#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "base/text.h"
#include "layout/callouts.h"
#include "layout/furniture.h"
#include "layout/ground.h"
#include "layout/key.h"
#include "layout/layout.h"
#include "layout/plan.h"
#include "words/sheet_messages.h"
#include "words/terms.h"

namespace platewright {
namespace {

using sheet::Layer;
using sheet::Plan;
using sheet::Ruler;
using sheet::Stand;

/// Diameter of the roundel on A4, and how much of it the frame of the button fills.
constexpr double kRoundel = 21.5;
constexpr double kButtonFills = 0.95;
/// The lowest part of a figure, as a share of its height, that counts as its feet.
constexpr double kFeet = 0.04;

/// A garment laid flat stands on no ground.
bool laid_flat(const Figure& figure) {
    return figure.view == "flat";
}

/// `front`, `back`; of a garment laid flat, which it is.
std::string label_of(const Figure& figure, Language language) {
    return term(language, laid_flat(figure) ? lower(figure.title) : figure.view);
}

sheet::Task task_of(const std::vector<Figure>& figures,
                    const Captions& captions,
                    const Paper& paper) {
    sheet::Task task{{}, captions, paper};
    for (const Figure& figure : figures) {
        task.frames.push_back(figure.frame);
        task.labels.push_back(label_of(figure, captions.language));
    }
    return task;
}

/// Where each figure's origin goes: all origins at one height, and as much air between what is
/// drawn of two neighbours as between any others; half of it at the ends.
std::vector<Stand> stand_up(const std::vector<Figure>& figures, const Plan& plan) {
    double top = 0;
    double air = 0;
    std::vector<Stand> stands;
    for (const Figure& figure : figures) {
        top = std::min(top, figure.frame.top);
        stands.push_back({{}, sheet::Silhouette(figure.drawing, figure.frame)});
        air += figure.frame.width() - stands.back().silhouette.box().width();
    }
    air *= plan.factor / static_cast<double>(figures.size());
    double left = plan.figures.left + air / 2;
    for (Stand& stand : stands) {
        const Rect& box = stand.silhouette.box();
        stand.at = {left - box.left * plan.factor, plan.figures.top - top * plan.factor};
        left += box.width() * plan.factor + air;
    }
    return stands;
}

void put_ground(const std::vector<Figure>& figures,
                const std::vector<Stand>& stands,
                const Plan& plan,
                Page& page) {
    std::vector<sheet::Footing> feet;
    for (std::size_t i = 0; i < stands.size(); ++i) {
        const Stand& stand = stands[i];
        const Rect& box = stand.silhouette.box();
        if (box.empty() || laid_flat(figures[i])) {
            continue;
        }
        const double ankles = box.bottom - box.height() * kFeet;
        const auto reach = stand.silhouette.reach(ankles, box.bottom);
        if (reach) {
            auto edges = stand.silhouette.undersides(ankles);
            for (std::vector<Point>& edge : edges) {
                for (Point& p : edge) {
                    p = stand.at + p * plan.factor;
                }
            }
            feet.push_back({stand.at.x + reach->first * plan.factor,
                            stand.at.x + reach->second * plan.factor,
                            stand.at.y + box.bottom * plan.factor,
                            std::move(edges)});
        }
    }
    Layer ground("ground");
    const double inset = 6 * plan.style.unit;
    const Rect within{plan.neat.left + inset,
                      plan.figures.top,
                      (plan.beside ? plan.words.left : plan.neat.right) - inset,
                      plan.figures.bottom};
    sheet::draw_ground(feet, within, plan.factor, ground);
    std::move(ground).put_on(page);
}

void put_figures(const std::vector<Figure>& figures,
                 const std::vector<Stand>& stands,
                 const Plan& plan,
                 Page& page) {
    for (std::size_t i = 0; i < figures.size(); ++i) {
        Placed placed{stands[i].at, plan.factor, figures[i].drawing};
        placed.drawing.root.name = "figure-" + std::to_string(i + 1) + "-" + figures[i].view;
        page.items.push_back(std::move(placed));
    }
}

/// Usual scales of enlarged details; life size is said in words.
struct DetailScale {
    double factor;
    std::string_view words;
};

constexpr std::array<DetailScale, 10> kDetailScales{{{5, "5 : 1"},
                                                     {4, "4 : 1"},
                                                     {3, "3 : 1"},
                                                     {2, "2 : 1"},
                                                     {1.5, "3 : 2"},
                                                     {1.25, "5 : 4"},
                                                     {1, ""},
                                                     {0.75, "3 : 4"},
                                                     {0.5, "1 : 2"},
                                                     {0.25, "1 : 4"}}};

/// The largest usual scale up to `most`; `most` itself if it is below all of them.
double usual_factor(double most) {
    for (const DetailScale& scale : kDetailScales) {
        if (scale.factor <= most * (1 + 1e-9)) {
            return scale.factor;
        }
    }
    return most;
}

/// "button, life size", "button, 3 : 2"; without a scale if it is none of the usual.
std::string button_words(double factor, Language language) {
    std::string button = term(language, "button");
    for (const DetailScale& scale : kDetailScales) {
        if (std::abs(scale.factor - factor) < 1e-6) {
            const std::string size =
                scale.words.empty() ? say(language, messages::kLifeSize) : std::string(scale.words);
            return say(language, messages::kAtScale, {button, size});
        }
    }
    return button;
}

/// The ring round an enlarged detail, and the words under it.
void put_ring(const sheet::Roundel& roundel,
              const std::string& words,
              const Plan& plan,
              Layer& on) {
    const double unit = plan.style.unit;
    const Type type = sheet::italic(plan.style.small());
    on.stroke(ellipse(roundel.centre, roundel.radius, roundel.radius),
              sheet::kInk,
              std::max(0.18, 0.22 * unit));
    const double inner = roundel.radius - 0.8 * unit;
    on.stroke(ellipse(roundel.centre, inner, inner), sheet::kInk, std::max(0.08, 0.1 * unit));
    on.words(words,
             {roundel.centre.x, roundel.centre.y + roundel.radius + type.size * 1.25},
             type,
             sheet::kInk,
             Align::middle);
}

/// Where roundels go, and those that are there already.
struct RoundelGround {
    const Plan& plan;
    const std::vector<Stand>& stands;
    Language language;
    Ruler& ruler;
    Page& page;
    std::vector<sheet::Roundel> placed;

    /// Room for one of that radius with such words under it; `placed` is told of it.
    std::optional<sheet::Roundel> take(double radius, double words) {
        const double under = sheet::italic(plan.style.small()).size * 1.9;
        auto found = sheet::find_roundel(plan, stands, placed, {radius, words, under});
        if (found) {
            placed.push_back(*found);
        }
        return found;
    }
};

void put_button(const Figure& button, RoundelGround& on) {
    const Plan& plan = on.plan;
    const double across = std::max(button.frame.width(), button.frame.height());
    if (across <= 0 || button.scale <= 0) {
        return;
    }
    const double unit = plan.style.unit;
    const double radius = std::min(across / button.scale / kButtonFills, kRoundel * unit) / 2;
    const Type type = sheet::italic(plan.style.small());
    double widest = 0;
    for (const DetailScale& usual : kDetailScales) {
        widest = std::max(widest, on.ruler.width(button_words(usual.factor, on.language), type));
    }
    const auto roundel = on.take(radius, widest);
    if (!roundel) {
        return;
    }
    const double factor =
        std::min(1 / button.scale, usual_factor(2 * roundel->radius * kButtonFills / across));
    Layer ring("roundel");
    ring.fill(ellipse(roundel->centre, roundel->radius, roundel->radius), sheet::kPaper);
    put_ring(*roundel, button_words(factor, on.language), plan, ring);
    std::move(ring).put_on(on.page);
    Placed placed{roundel->centre - button.frame.centre() * factor, factor, button.drawing};
    placed.drawing.root.name = "button";
    on.page.items.push_back(std::move(placed));
}

/// A part of the figure enlarged within a ring; left out where there is no room for it.
void put_detail(const PlateDetail& detail, RoundelGround& on) {
    const Plan& plan = on.plan;
    const double across = std::max(detail.picture.frame.width(), detail.picture.frame.height());
    if (across <= 0) {
        return;
    }
    const std::string words = term(on.language, detail.words);
    const auto roundel = on.take(kRoundel * plan.style.unit / 2,
                                 on.ruler.width(words, sheet::italic(plan.style.small())));
    if (!roundel) {
        return;
    }
    Layer ground("detail-ground");
    ground.fill(ellipse(roundel->centre, roundel->radius, roundel->radius), sheet::kPaper);
    std::move(ground).put_on(on.page);
    const double inner = roundel->radius - 0.8 * plan.style.unit;
    const double factor = 2 * inner / across;
    const Point middle = detail.picture.frame.centre();
    Placed placed{roundel->centre - middle * factor, factor, detail.picture.drawing};
    placed.drawing.root.name = "detail";
    placed.drawing.root.clip = {placed.drawing.add(ellipse(middle, across / 2, across / 2))};
    on.page.items.push_back(std::move(placed));
    Layer ring("detail-ring");
    put_ring(*roundel, words, plan, ring);
    std::move(ring).put_on(on.page);
}

/// Where on the page a property's material is seen on a figure.
std::vector<Point> sites_on(const Figure& figure,
                            const Stand& stand,
                            const Plan& plan,
                            const std::string& key) {
    std::vector<Point> sites;
    const auto seen = figure.seen.find(key);
    if (seen != figure.seen.end() && seen->second.area >= kLeastFound) {
        for (const Site& site : seen->second.sites) {
            sites.push_back(stand.at + site.at * plan.factor);
        }
    }
    return sites;
}

/// Every callout leads to the row of the key that lists its thing; the first of a row is where that
/// leads back to.
void link_callouts(const Captions& captions,
                   const Type& type,
                   Ruler& ruler,
                   sheet::CalloutPlan& plan) {
    std::vector<bool> led_to(captions.key.size(), false);
    for (sheet::PlacedCallout& placed : plan.placed) {
        const std::string& property = captions.callouts[placed.number].key;
        const auto row = std::ranges::find_if(captions.key, [&](const KeyEntry& entry) {
            return std::ranges::find(entry.properties, property) != entry.properties.end();
        });
        if (row == captions.key.end()) {
            continue;
        }
        const auto number = static_cast<std::size_t>(row - captions.key.begin());
        placed.link = {led_to[number] ? std::string() : sheet::callout_anchor(number),
                       sheet::key_anchor(number),
                       sheet::words_area(placed, type, ruler)};
        led_to[number] = true;
    }
}

/// Things of the first figure are named on its left, those of the last on its right; of a single
/// figure on both sides.
void put_callouts(const std::vector<Figure>& figures,
                  const std::vector<Stand>& stands,
                  const sheet::Task& task,
                  const Plan& plan,
                  Ruler& ruler,
                  Page& page) {
    const Captions& captions = task.captions;
    const double width = task.callout_width();
    if (width <= 0) {
        return;
    }
    std::vector<sheet::Callout> callouts;
    for (const CalloutWords& words : captions.callouts) {
        callouts.push_back({words.words,
                            sites_on(figures.front(), stands.front(), plan, words.key),
                            sites_on(figures.back(), stands.back(), plan, words.key)});
    }
    const double air = 1.2 * plan.style.unit;
    const Rect& row = plan.figures;
    const sheet::CalloutColumns columns{
        {row.left - width + air, row.top, row.left - air, row.bottom},
        {row.right + air, row.top, row.right + width - air, row.bottom}};
    const Type type = sheet::italic(plan.style.small());
    Layer layer("callouts");
    sheet::CalloutPlan placed = sheet::place_callouts(callouts, columns, type, ruler);
    link_callouts(captions, type, ruler, placed);
    sheet::draw_callouts(placed, type, layer);
    std::move(layer).put_on(page);
}

void put_words(const Plan& plan, Page& page) {
    Layer title("title");
    double y = plan.words.top;
    for (const sheet::TitleLine& line : plan.title) {
        title.words(line.words,
                    {plan.words.centre().x, y + line.baseline},
                    line.type,
                    line.colour,
                    Align::middle);
        y += line.height;
    }
    const double key_top = plan.words.top + plan.key_at;
    const double free = key_top - y;
    if (plan.economy < sheet::Economy::wide_spacing && !plan.key.empty()) {
        sheet::draw_swelled_rule({plan.words.centre().x, y + free * 0.5},
                                 std::min(44 * plan.style.unit, plan.words.width() * 0.5),
                                 title);
    }
    std::move(title).put_on(page);
    Layer key("key");
    plan.key.draw({plan.words.left, key_top}, key);
    std::move(key).put_on(page);
    Layer notes("notes");
    plan.notes.draw({plan.words.left, plan.words.bottom - plan.notes.height}, notes);
    std::move(notes).put_on(page);
}

/// Between the frame and the edge of the plate, where engravers signed.
void put_credits(
    const Captions& captions, const sheet::Task& task, const Plan& plan, Ruler& ruler, Page& page) {
    Layer credits("credits");
    const double size = plan.style.small();
    const double baseline = plan.neat.bottom + size * 1.15;
    if (!captions.drawn_by.empty() && sheet::credit_fits(task, plan.style, ruler)) {
        credits.words(sheet::credit_of(captions),
                      {plan.neat.left, baseline},
                      sheet::italic(size),
                      sheet::kSoftInk);
    }
    if (plan.economy < sheet::Economy::colophon) {
        credits.words(sheet::kColophon,
                      {plan.neat.right, baseline},
                      sheet::small_capitals(size, 0.06),
                      sheet::kSoftInk,
                      Align::end);
    }
    std::move(credits).put_on(page);
}

std::string description_of(const std::vector<Figure>& figures, const Captions& captions) {
    const Language language = captions.language;
    std::string text = say(language, messages::kPlateOf, {captions.title});
    std::string views;
    for (const Figure& figure : figures) {
        views += (views.empty() ? "" : ", ") + label_of(figure, language);
    }
    text += views.empty() ? "" : " " + say(language, messages::kViews, {views});
    for (const KeyEntry& entry : captions.key) {
        text += " " + say(language, messages::kNameAndWords, {entry.name, entry.worn});
    }
    return sheet::on_one_line(text);
}

void warn_if_small(const Plan& plan, Diagnostics& to) {
    if (!plan.too_small()) {
        return;
    }
    Diagnostic warning;
    warning.severity = Severity::warning;
    warning.code = "layout.too-long";
    warning.message = "the words of this plate fit only in type of " +
                      format_number(plan.style.body * 72 / kInch, 1) +
                      " pt, and below 7 pt they are hard to read";
    warning.hints = {"use larger paper, for example `--paper A3`",
                     "or shorten the title, the notes and the names in the colour key"};
    to.add(std::move(warning));
}

}  // namespace

double plate_scale(const std::vector<Rect>& frames,
                   const Captions& captions,
                   const Paper& paper,
                   const Typesetter& type) {
    Ruler ruler(type);
    return sheet::choose_scale({frames, captions, paper}, ruler);
}

double window_scale(const Rect& frame, const Paper& paper) {
    const double room = (kRoundel - 1.6) * sheet::unit_of(paper);
    return std::max({frame.width(), frame.height(), 1.0}) / room;
}

double detail_scale(const Rect& frame, const Paper& paper) {
    const double room = kRoundel * sheet::unit_of(paper) * kButtonFills;
    const double across = std::max(frame.width(), frame.height());
    return across > 0 ? 1 / usual_factor(room / across) : 1;
}

Document lay_out_plate(const PlatePictures& pictures,
                       const Captions& captions,
                       const Paper& paper,
                       const Typesetter& type,
                       Diagnostics& to) {
    const std::vector<Figure>& figures = pictures.figures;
    Ruler ruler(type);
    const sheet::Task task = task_of(figures, captions, paper);
    const double scale = figures.empty() ? 10 : std::max(figures.front().scale, 1e-3);
    const Plan plan = sheet::make_plan(task, scale, ruler);
    const std::vector<Stand> stands = stand_up(figures, plan);

    Page page;
    page.width = paper.width;
    page.height = paper.height;
    page.paper = sheet::kPaper;
    Layer frame("frame");
    sheet::draw_frame(plan, frame);
    std::move(frame).put_on(page);
    put_ground(figures, stands, plan, page);
    put_figures(figures, stands, plan, page);
    RoundelGround roundels{plan, stands, captions.language, ruler, page, {}};
    if (pictures.button) {
        put_button(*pictures.button, roundels);
    }
    for (const PlateDetail& detail : pictures.details) {
        put_detail(detail, roundels);
    }
    sheet::put_labels(stands, plan, ruler, page);
    put_callouts(figures, stands, task, plan, ruler, page);
    put_words(plan, page);
    put_credits(captions, task, plan, ruler, page);
    warn_if_small(plan, to);

    Document document;
    document.title = sheet::on_one_line(captions.title);
    document.author = sheet::on_one_line(captions.drawn_by);
    document.subject = sheet::on_one_line(captions.subtitle);
    document.description = description_of(figures, captions);
    document.language = language_code(captions.language);
    document.pages.push_back(std::move(page));
    return document;
}

}  // namespace platewright
