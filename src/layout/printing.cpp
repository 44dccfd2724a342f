// SPDX-License-Identifier: MIT
// Finished pages for a press without colour.
#include "layout/printing.h"

#include "base/vision.h"
#include "layout/style.h"

namespace platewright {
namespace {

constexpr Colour kWhite{0xff, 0xff, 0xff};

/// The tones of laid paper are no colours of the drawing: they are left to the sheet itself.
Colour printed(Colour colour) {
    const bool bare = colour == sheet::kPaper || colour == sheet::kPlateTone;
    return bare ? kWhite : grey_of(colour);
}

void print_group(Group& group) {
    for (Node& node : group.children) {
        if (auto* shape = std::get_if<Shape>(&node)) {
            if (shape->fill) {
                shape->fill->colour = printed(shape->fill->colour);
            }
            if (shape->stroke) {
                shape->stroke->colour = printed(shape->stroke->colour);
            }
        } else if (auto* text = std::get_if<Text>(&node)) {
            text->colour = printed(text->colour);
        } else if (auto* inner = std::get_if<Group>(&node)) {
            print_group(*inner);
        }
    }
}

}  // namespace

void prepare_for(Ink ink, Document& document) {
    if (ink == Ink::colour) {
        return;
    }
    for (Page& page : document.pages) {
        page.paper = kWhite;
        for (Placed& item : page.items) {
            print_group(item.drawing.root);
        }
    }
}

}  // namespace platewright
