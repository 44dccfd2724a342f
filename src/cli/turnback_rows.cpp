// SPDX-License-Identifier: MIT
// The words of hooks, eyes and buttons at the corners of skirts.
#include "cli/turnback_rows.h"

#include <algorithm>
#include <cmath>

#include "pattern/draft.h"
#include "pattern/wares.h"
#include "words/terms.h"
#include "words/workshop_messages.h"

namespace platewright::cli {
namespace {

/// The other side of the same garment, or null.
const Flat* other_side(const TableSource& source, const std::string& view) {
    const std::string begins = view.substr(0, view.rfind('-') + 1);
    const auto found = source.flats.find(begins + (view.ends_with("front") ? "back" : "front"));
    return found == source.flats.end() ? nullptr : &found->second;
}

double dimension_of(const TableSource& source, const std::string& view, std::string_view what) {
    const auto all = source.dimensions.find(view);
    if (all == source.dimensions.end()) {
        return 0;
    }
    const auto found = std::ranges::find(all->second, what, &Dimension::what);
    return found == all->second.end() ? 0 : found->mm();
}

/// Along the hem from a corner that is turned back to the side of the skirt.
double to_the_side(const Flat& flat, std::string_view body_side, double page_side) {
    const auto body = std::ranges::find_if(
        flat.parts, [&](const FlatPart& part) { return is_coat_body(part.name, body_side); });
    const std::vector<Turnback> corners = turnbacks_of(flat);
    if (body == flat.parts.end() || corners.empty()) {
        return 0;
    }
    const Chain outline = shapes::joined(body->outline);
    const Rect corner = shapes::box(shapes::joined(corners.front().corner.outline));
    // The end of the corner that points to the side.
    const double end = page_side > 0 ? corner.right : corner.left;
    return std::abs(outer_corner(outline, page_side).x - end);
}

}  // namespace

std::string with_corner_held(const TableSource& source,
                             const std::string& view,
                             const FlatPart& part,
                             const std::string& words) {
    if (!part.name.starts_with("turnback-")) {
        return words;
    }
    if (!has_hooked_turnbacks(source.uniform)) {
        return say(source.language, messages::kSewnThroughCorner, {words});
    }
    const Flat* behind = view.ends_with("front") ? other_side(source, view) : nullptr;
    const bool meets = behind != nullptr && behind->part("turnback-") != nullptr;
    return meets ? say(source.language, messages::kEyeBeneathButton, {words}) : words;
}

std::vector<WorkshopRow> hook_rows(const TableSource& source, const std::string& view) {
    const double up = dimension_of(source, view, "turnback hook above the hem");
    const Flat* before = view.ends_with("back") ? other_side(source, view) : nullptr;
    if (!has_hooked_turnbacks(source.uniform) || up <= 0 || before == nullptr) {
        return {};
    }
    const double within = dimension_of(source, view, "turnback hook within the edge");
    const double between =
        to_the_side(*before, "-left", 1) + to_the_side(source.flats.at(view), "-back", -1);
    const auto mm = [&](double value) { return number_words(source.language, value, 0); };
    return {{title_term(source.language, "turnback"),
             say(source.language, messages::kHookOfCorner, {mm(up), mm(within), mm(between)})}};
}

}  // namespace platewright::cli
