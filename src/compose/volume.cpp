// SPDX-License-Identifier: MIT
// A zone made ready to be modelled: its hatching and its light.
#include "compose/easel.h"

namespace platewright {
namespace {

void add_glow(Easel& easel, Volume& volume, const Zone& zone) {
    constexpr int steps = 5;
    const Path round = rectangle(zone.path.bounds().grown(400));
    for (Path& patch : glow(zone, steps)) {
        Path rest = round;
        rest.append(patch);
        volume.glow.push_back(easel.drawing().add(std::move(patch)));
        volume.unlit.push_back(easel.drawing().add(std::move(rest)));
    }
}

}  // namespace

Volume volume_of(Easel& easel, const Zone& zone) {
    Volume made;
    made.cover = easel.drawing().add(cover_of(zone.path));
    made.outline = easel.drawing().add(zone.path);
    if (easel.line_drawing()) {
        return made;
    }
    add_glow(easel, made, zone);
    const double pitch = easel.printed(3.4);
    made.rings = hatch(zone, {pitch, easel.weight(1.0), 0, 0.30});
    made.chalked = hatch(zone, {pitch, easel.weight(0.9), 0, 0.22, true});
    if (!zone.falls) {
        made.crossed = hatch(zone, {pitch, easel.weight(0.75), -0.55, 0.06});
    }
    return made;
}

}  // namespace platewright
