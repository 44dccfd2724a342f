// SPDX-License-Identifier: MIT
// Numbers and letters in small discs beside a picture, each with a line to what it speaks of.
#pragma once

#include <string>
#include <vector>

#include "layout/callouts.h"
#include "layout/slab.h"

namespace platewright::sheet {

/// A disc, in ems of its sign.
inline constexpr double kDisc = 0.82;

/// The width of a column of discs whose signs are of that size.
double disc_column(double size);

/// Discs in the outer columns of `columns`, as far as they have room; `left_out` tells of the
/// others. The links of the plan are empty.
CalloutPlan place_discs(const std::vector<Callout>& callouts,
                        const CalloutColumns& columns,
                        double size,
                        Ruler& ruler);

/// The middle of a placed disc.
Point disc_centre(const PlacedCallout& placed, const CalloutColumns& columns, double size);

/// A disc with its sign.
void draw_disc(Point centre, const std::string& sign, const Type& type, double line, Layer& on);

/// Lines and discs; `signs` by the numbers of the callouts.
void draw_discs(const CalloutPlan& plan,
                const std::vector<std::string>& signs,
                const CalloutColumns& columns,
                const Type& type,
                double unit,
                Layer& on);

/// What signs stand for, for those who do not turn to the table: in the middle, on as few lines as
/// it takes, each about as long. Names without a sign are left out.
Slab disc_legend(const std::vector<std::string>& signs,
                 const std::vector<std::string>& names,
                 double width,
                 Press& press);

}  // namespace platewright::sheet
