// SPDX-License-Identifier: MIT
// What a template shows of a man, without drawing it: frames, and the properties that are seen.
#include <set>
#include <string>

#include "compose/compose.h"
#include "compose/easel.h"
#include "compose/sheet_reader.h"
#include "compose/template.h"

namespace platewright {
namespace {

/// Rings are marks of rank too.
PropertyId property_of_marks(const Detail& detail) {
    return property_id((detail.group == "service" ? "service" : "marks") + std::string(".cloth"));
}

}  // namespace

std::optional<PropertyId> property_of(const Detail& detail) {
    return detail.kind == DetailKind::buttons    ? detail.style
           : detail.kind == DetailKind::ornament ? detail.device
           : detail.kind == DetailKind::marks    ? property_of_marks(detail)
                                                 : detail.cloth.property;
}

namespace {

/// All that is drawn, with some paper round it.
Rect box_of(const Template& from, const Uniform& uniform, double air) {
    const Easel easel(uniform, 1, false, Ink::colour);
    Rect box;
    for (const Part& part : from.parts) {
        if (part.clip.empty() && easel.holds(part.when) && easel.paint_of(part.cloth)) {
            box.include(part.shape.bounds().grown(air));
        }
    }
    return box;
}

/// Room for the outline and a little paper round it; round a tailor's drawing more, for its
/// measures.
constexpr double kAir = 14;
constexpr double kAirOfFlat = 40;

bool is_figure(const Template& from) {
    return from.view == "front" || from.view == "back" || from.view == "side";
}

}  // namespace

Rect frame_of(const Template& from, const Uniform& uniform) {
    if (!is_figure(from) && from.view != "flat") {
        return from.frame;
    }
    // What is laid flat comes in many sizes in one file; its frame is what is drawn.
    const bool flat = from.view == "flat";
    Rect frame = box_of(from, uniform, flat ? kAirOfFlat : kAir);
    if (!flat || frame.empty()) {
        frame.include(from.frame);
    }
    return frame;
}

bool is_flat(const Template& view) {
    return view.view == "flat";
}

Rect close_frame_of(const Template& from, const Uniform& uniform) {
    Rect frame = frame_of(from, uniform);
    const Rect box = box_of(from, uniform, kAir);
    if (is_figure(from) && !box.empty()) {
        frame.left = box.left;
        frame.right = box.right;
    }
    return frame;
}

namespace {

/// Calls `each` with every property that gives a material to what is drawn on the view, or with the
/// colour that a part has on every man, and whether it is drawn of this man.
template <typename Each>
void for_materials(const Template& view, const Uniform& uniform, const Each& each) {
    const Easel easel(uniform, 1, false, Ink::colour);
    for (const Part& part : view.parts) {
        const bool there = easel.holds(part.when) && easel.paint_of(part.cloth);
        if (part.cloth.property) {
            each(std::string(properties()[*part.cloth.property].key), there);
        } else {
            each(to_hex(part.cloth.fixed), there);
        }
        for (const Detail& detail : part.details) {
            if (const auto property = property_of(detail)) {
                each(std::string(properties()[*property].key), there && easel.holds(detail.when));
            } else if (detail.kind == DetailKind::patch) {
                each(to_hex(detail.cloth.fixed), there && easel.holds(detail.when));
            }
        }
    }
}

}  // namespace

std::set<std::string> shown_on(const Template& view, const Uniform& uniform) {
    std::set<std::string> shown;
    for_materials(view, uniform, [&shown](const std::string& key, bool there) {
        if (there) {
            shown.insert(key);
        }
    });
    return shown;
}

std::set<std::string> hidden_on(const std::vector<const Template*>& views, const Uniform& uniform) {
    std::set<std::string> hidden;
    std::set<std::string> shown;
    for (const Template* view : views) {
        for_materials(*view, uniform, [&](const std::string& key, bool there) {
            (there ? shown : hidden).insert(key);
        });
    }
    for (const std::string& key : shown) {
        hidden.erase(key);
    }
    return hidden;
}

std::optional<Rect> frame_of(const Template& from, std::string_view name) {
    const auto found = from.frames.find(std::string(name));
    return found != from.frames.end() ? std::optional(found->second) : std::nullopt;
}

std::vector<std::string> frames_of(const Template& from) {
    return names_in(from.frames);
}

}  // namespace platewright
