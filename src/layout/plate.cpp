// SPDX-License-Identifier: MIT
// The reference plate: a plan drawn layer by layer.
#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "base/text.h"
#include "layout/furniture.h"
#include "layout/ground.h"
#include "layout/key.h"
#include "layout/layout.h"
#include "layout/plan.h"
#include "layout/plate_callouts.h"
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
/// A detail is shown at least so much larger than on the figure.
constexpr double kMagnified = 1.5;

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
/// drawn of two neighbours as between any others; half of what the frames leave at the ends.
std::vector<Stand> stand_up(const std::vector<Figure>& figures, const Plan& plan) {
    double top = 0;
    double air = 0;
    double spare = plan.figures.width();
    std::vector<Stand> stands;
    for (const Figure& figure : figures) {
        top = std::min(top, figure.frame.top);
        stands.push_back({{}, sheet::Silhouette(figure.drawing, figure.frame)});
        air += figure.frame.width() - stands.back().silhouette.box().width();
        spare -= figure.frame.width() * plan.factor;
    }
    air *= plan.factor / static_cast<double>(figures.size());
    const double between =
        air + (figures.size() > 1 ? spare / static_cast<double>(figures.size() - 1) : 0);
    double left = plan.figures.left + air / 2;
    for (Stand& stand : stands) {
        const Rect& box = stand.silhouette.box();
        stand.at = {left - box.left * plan.factor, plan.figures.top - top * plan.factor};
        left += box.width() * plan.factor + between;
    }
    return stands;
}

void put_ground(const std::vector<Figure>& figures,
                const std::vector<Stand>& stands,
                const Plan& plan,
                std::string_view name,
                Page& page) {
    std::vector<sheet::Footing> feet;
    for (std::size_t i = 0; i < stands.size(); ++i) {
        const Stand& stand = stands[i];
        auto foot = sheet::footing_of(stand.silhouette, stand.at, plan.factor);
        if (foot && !laid_flat(figures[i])) {
            feet.push_back(*std::move(foot));
        }
    }
    Layer ground("ground");
    const double inset = 6 * plan.style.unit;
    const Rect within{plan.neat.left + inset,
                      plan.figures.top,
                      (plan.beside ? plan.words.left : plan.neat.right) - inset,
                      plan.figures.bottom};
    sheet::draw_ground(feet, within, plan.factor, name, ground);
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
             sheet::with_figures(words, type),
             sheet::kInk,
             Align::middle);
}

/// What is shown in rings: the button first, if there is one, then the details.
struct RoundelTask {
    const PlatePictures& pictures;
    const Plan& plan;
    Language language;
};

bool shows_button(const PlatePictures& pictures) {
    return pictures.button && pictures.button->scale > 0 &&
           std::max(pictures.button->frame.width(), pictures.button->frame.height()) > 0;
}

/// A button on its ring's paper, at a usual scale.
void put_button(const Figure& button,
                const sheet::Roundel& roundel,
                const RoundelTask& task,
                Page& page) {
    const double across = std::max(button.frame.width(), button.frame.height());
    const double factor =
        std::min(1 / button.scale, usual_factor(2 * roundel.radius * kButtonFills / across));
    Layer ring("roundel");
    ring.fill(ellipse(roundel.centre, roundel.radius, roundel.radius), sheet::kPaper);
    put_ring(roundel, button_words(factor, task.language), task.plan, ring);
    std::move(ring).put_on(page);
    Placed placed{roundel.centre - button.frame.centre() * factor, factor, button.drawing};
    placed.drawing.root.name = "button";
    page.items.push_back(std::move(placed));
}

/// A part of the figure within a ring, at least twice as large as on the figure.
void put_detail(const PlateDetail& detail,
                const sheet::Roundel& roundel,
                const RoundelTask& task,
                Page& page) {
    Layer ground("detail-ground");
    ground.fill(ellipse(roundel.centre, roundel.radius, roundel.radius), sheet::kPaper);
    std::move(ground).put_on(page);
    const double inner = roundel.radius - 0.8 * task.plan.style.unit;
    const Rect& frame = detail.picture.frame;
    const double across = std::min(std::max(frame.width(), frame.height()),
                                   2 * inner / (kMagnified * task.plan.factor));
    const double factor = 2 * inner / across;
    const Point middle = frame.centre();
    Placed placed{roundel.centre - middle * factor, factor, detail.picture.drawing};
    placed.drawing.root.name = "detail";
    placed.drawing.root.clip = {placed.drawing.add(ellipse(middle, across / 2, across / 2))};
    page.items.push_back(std::move(placed));
    Layer ring("detail-ring");
    put_ring(roundel, term(task.language, detail.words), task.plan, ring);
    std::move(ring).put_on(page);
}

/// The places taken; what finds no room is left out.
std::vector<sheet::Roundel> put_roundels(const RoundelTask& task,
                                         const std::vector<Stand>& stands,
                                         Ruler& ruler,
                                         Page& page) {
    const Type type = sheet::italic(task.plan.style.small());
    const double unit = task.plan.style.unit;
    double radius = kRoundel * unit / 2;
    std::vector<double> widths;
    if (shows_button(task.pictures)) {
        const Figure& button = *task.pictures.button;
        const double across = std::max(button.frame.width(), button.frame.height());
        radius = std::min(across / button.scale / kButtonFills, kRoundel * unit) / 2;
        widths.push_back(0);
        for (const DetailScale& usual : kDetailScales) {
            widths.back() = std::max(widths.back(),
                                     ruler.width(button_words(usual.factor, task.language), type));
        }
    }
    const std::size_t first = widths.size();
    for (const PlateDetail& detail : task.pictures.details) {
        widths.push_back(ruler.width(term(task.language, detail.words), type));
    }
    std::vector<sheet::Roundel> taken;
    const auto places = sheet::find_roundels(task.plan, stands, radius, widths);
    for (std::size_t i = 0; i < places.size(); ++i) {
        if (!places[i]) {
            continue;
        }
        if (i < first) {
            put_button(*task.pictures.button, *places[i], task, page);
        } else {
            put_detail(task.pictures.details[i - first], *places[i], task, page);
        }
        taken.push_back(*places[i]);
    }
    return taken;
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

double window_width(double scale, const Paper& paper) {
    return (kRoundel - 1.6) * sheet::unit_of(paper) * scale / kMagnified;
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
    put_ground(figures, stands, plan, captions.title, page);
    put_figures(figures, stands, plan, page);
    const std::vector<sheet::Roundel> roundels =
        put_roundels({pictures, plan, captions.language}, stands, ruler, page);
    sheet::put_labels(stands, plan, ruler, page);
    sheet::put_callouts({figures, stands, roundels, task, plan}, ruler, page);
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
