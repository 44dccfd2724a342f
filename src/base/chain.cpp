// SPDX-License-Identifier: MIT
// Chains of points and level lines.
#include "base/chain.h"

#include <algorithm>
#include <cmath>

namespace platewright {

bool inside(const std::vector<Chain>& closed, Point p) {
    bool within = false;
    for (const Chain& chain : closed) {
        for (std::size_t i = 0, j = chain.size() - 1; i < chain.size(); j = i++) {
            const Point a = chain[i];
            const Point b = chain[j];
            if ((a.y > p.y) != (b.y > p.y) && p.x < (b.x - a.x) * (p.y - a.y) / (b.y - a.y) + a.x) {
                within = !within;
            }
        }
    }
    return within;
}

Crossing crossing(const Chain& closed, double y) {
    Crossing found;
    for (std::size_t i = 0; i < closed.size(); ++i) {
        const Point a = closed[i];
        const Point b = closed[(i + 1) % closed.size()];
        if ((a.y <= y) == (b.y <= y)) {
            continue;
        }
        const double x = a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y);
        found.least = found.found ? std::min(found.least, x) : x;
        found.greatest = found.found ? std::max(found.greatest, x) : x;
        found.found = true;
    }
    return found;
}

double x_at(const Chain& open, double y) {
    for (std::size_t i = 1; i < open.size(); ++i) {
        const Point a = open[i - 1];
        const Point b = open[i];
        if ((a.y <= y) != (b.y <= y)) {
            return a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y);
        }
    }
    if (open.empty()) {
        return 0;
    }
    const bool first = std::abs(open.front().y - y) < std::abs(open.back().y - y);
    return first ? open.front().x : open.back().x;
}

Chain without_steps(const Chain& chain, bool closed, double least) {
    Chain kept;
    for (const Point p : chain) {
        if (kept.empty() || length(p - kept.back()) > least) {
            kept.push_back(p);
        }
    }
    while (closed && kept.size() > 2 && length(kept.back() - kept.front()) <= least) {
        kept.pop_back();
    }
    return kept;
}

}  // namespace platewright
