// SPDX-License-Identifier: MIT
// How the corners of skirts that are turned back are held.
#pragma once

#include <string>

#include "cli/tailor_tables.h"

namespace platewright::cli {

/// What is said behind the words of the button on the corner of that part: `words` themselves if
/// nothing is. Of a fore corner, and of a hind one that is sewn down.
std::string with_corner_held(const TableSource& source,
                             const std::string& view,
                             const FlatPart& part,
                             const std::string& words);

/// Of the back of a coat whose turnbacks are hooked: where the hook is, where its eye, and how much
/// of the skirt hangs between the corners. Nothing of any other view.
std::vector<WorkshopRow> hook_rows(const TableSource& source, const std::string& view);

}  // namespace platewright::cli
