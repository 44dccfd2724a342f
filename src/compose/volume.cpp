// SPDX-License-Identifier: MIT
// A zone made ready to be modelled: its hatching and its light.
#include <algorithm>

#include "compose/easel.h"

namespace platewright {

namespace {

/// A zone's outline with straight sides. Its washes are faint and many: these are enough, and most
/// of a file would be such outlines otherwise.
std::vector<std::vector<Point>> rim_of(const Path& zone) {
    const Rect box = zone.bounds();
    const double unseen = std::clamp(0.012 * std::min(box.width(), box.height()), 0.25, 1.2);
    std::vector<std::vector<Point>> rim;
    for (const std::vector<Point>& chain : outlines(zone)) {
        rim.push_back(Curve(chain).simplified(unseen));
    }
    return rim;
}

/// Everything round a zone.
Path cover_of(const Rect& box, const std::vector<std::vector<Point>>& rim) {
    // Larger than any shift of the zone, so that its own edges never show.
    Path cover = rectangle(box.grown(400));
    for (const std::vector<Point>& chain : rim) {
        cover.append(polygon(chain));
    }
    return cover;
}

}  // namespace

Volume volume_of(Easel& easel, const Zone& zone) {
    Volume made;
    made.rim = rim_of(zone.path);
    made.cover = easel.drawing().add(cover_of(zone.path.bounds(), made.rim));
    made.outline = easel.drawing().add(zone.path);
    if (easel.line_drawing()) {
        return made;
    }
    constexpr int glow_steps = 8;
    for (Path& patch : glow(zone, glow_steps)) {
        made.glow.push_back(easel.drawing().add(std::move(patch)));
    }
    const double pitch = easel.printed(2.3);
    made.rings = hatch(zone, {zone.falls ? 1.35 * pitch : pitch, easel.weight(0.95), 0, 0.5});
    made.chalked = hatch(zone, {pitch, easel.weight(0.9), 0, 0.34, true});
    if (!zone.falls) {
        made.crossed = hatch(zone, {1.6 * pitch, easel.weight(0.75), -0.55, 0.08});
    }
    return made;
}

}  // namespace platewright
