// SPDX-License-Identifier: MIT
// The guides of the legs, by their names.
#include "pattern/legs.h"

#include <initializer_list>

namespace platewright {
namespace {

const Chain* leg_seam_on(const Flat& flat,
                         const FlatPart& legs,
                         std::initializer_list<const char*> names,
                         double side) {
    for (const char* which : names) {
        const Chain* seam = flat.guide(legs.name + which);
        if (seam != nullptr && seam->front().x * side > 0) {
            return seam;
        }
    }
    return nullptr;
}

}  // namespace

const FlatPart* legs_of(const Flat& flat) {
    const FlatPart* breeches = flat.part("breeches");
    return breeches != nullptr ? breeches : flat.part("overalls");
}

const Chain* inner_seam_of(const Flat& flat, const FlatPart& legs, double side) {
    return leg_seam_on(flat, legs, {"-left-inseam", "-right-inseam"}, side);
}

const Chain* side_seam_of(const Flat& flat, const FlatPart& legs, double side) {
    return leg_seam_on(flat, legs, {"-left-seam", "-right-seam"}, side);
}

double side_at_waist(const Flat& front) {
    const FlatPart* legs = legs_of(front);
    const Chain* seam = legs != nullptr ? side_seam_of(front, *legs, 1) : nullptr;
    return seam != nullptr ? seam->front().x : 0;
}

}  // namespace platewright
