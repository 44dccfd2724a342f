// SPDX-License-Identifier: MIT
// The parts of a man that a plate shows enlarged.
#include "cli/details.h"

#include <algorithm>
#include <optional>
#include <utility>

#include "base/text.h"
#include "cli/wardrobe_views.h"
#include "resolve/notable.h"

namespace platewright::cli {
namespace {

const std::string kAutomatic = "automatic";
constexpr std::size_t kMostChosen = 3;
/// A fifth of the template's man: what is larger is seen on the figure well enough, mm.
constexpr double kLargestChosen = 346;
/// Enlarged cloth wants a broader pen.
constexpr double kBroaderPen = 1.12;

bool is_automatic(const SpecifiedPlate& plate) {
    return plate.details.size() == 1 && plate.details.front().text == kAutomatic;
}

/// A place on the figure, in the first view that has it.
struct Window {
    const Template* view = nullptr;
    Rect box;
};

std::optional<Window> window_of(const Job& job, std::string_view frame) {
    for (const Template* view : views_of(job)) {
        if (const auto box = frame_of(*view, frame)) {
            return Window{view, box->squared()};
        }
    }
    return std::nullopt;
}

bool holds(const Rect& box, Point at) {
    return box.left <= at.x && at.x <= box.right && box.top <= at.y && at.y <= box.bottom;
}

bool shows_the_same(const Window& one, const Window& other) {
    return one.view == other.view &&
           (holds(one.box, other.box.centre()) || holds(other.box, one.box.centre()));
}

std::vector<std::string> chosen_details(const Uniform& uniform, const Job& job) {
    std::vector<std::string> names;
    std::vector<Window> chosen;
    for (const std::string_view frame : frames_that_matter(uniform)) {
        const auto window = window_of(job, frame);
        const bool seen = window && std::ranges::any_of(chosen, [&](const Window& each) {
                              return shows_the_same(each, *window);
                          });
        if (!window || seen || window->box.width() > kLargestChosen) {
            continue;
        }
        chosen.push_back(*window);
        names.emplace_back(frame);
        if (names.size() == kMostChosen) {
            break;
        }
    }
    return names;
}

}  // namespace

bool check_details(const Job& job, Diagnostics& to) {
    if (is_automatic(job.plate)) {
        return true;
    }
    std::vector<std::string> known;
    for (const auto& [name, view] : job.views) {
        for (const std::string& frame : frames_of(*view)) {
            known.push_back(frame);
        }
    }
    std::ranges::sort(known);
    known.erase(std::unique(known.begin(), known.end()), known.end());
    bool complete = true;
    for (const WrittenText& asked : job.plate.details) {
        if (std::ranges::find(known, asked.text) != known.end()) {
            continue;
        }
        complete = false;
        Diagnostic& problem =
            to.error("cli.unknown-detail",
                     asked.span,
                     "the views of this plate have no detail " + platewright::quoted(asked.text));
        add_suggestion(problem, asked.text, known, "the details are ");
        problem.hints.emplace_back("or write 'details: automatic' for what matters of this man");
    }
    return complete;
}

std::vector<std::string> detail_names(const Uniform& uniform, const Job& job) {
    if (is_automatic(job.plate)) {
        return chosen_details(uniform, job);
    }
    std::vector<std::string> names;
    for (const WrittenText& asked : job.plate.details) {
        names.push_back(asked.text);
    }
    return names;
}

std::vector<PlateDetail> details_of_plate(const Uniform& uniform,
                                          const Job& job,
                                          const Printing& printing,
                                          double scale) {
    const double widest = window_width(scale, printing.paper);
    std::vector<PlateDetail> details;
    for (const std::string& name : detail_names(uniform, job)) {
        const auto window = window_of(job, name);
        if (!window) {
            continue;
        }
        const double width = window->box.width();
        const Rect box = width > widest ? window->box.grown((widest - width) / 2) : window->box;
        const double true_scale = window_scale(box, printing.paper);
        Figure picture = compose(uniform,
                                 seen_near(name, *window->view),
                                 job.ornaments,
                                 true_scale * kBroaderPen,
                                 box,
                                 printing.ink);
        picture.scale = true_scale;
        details.push_back({name, std::move(picture)});
    }
    return details;
}

}  // namespace platewright::cli
