// SPDX-License-Identifier: MIT
// Names that must be fit for something: a folder, a look-up.
#pragma once

#include "base/diagnostic.h"
#include "read/specified.h"

namespace platewright {

/// The name of a template set is a folder's: small letters, digits and hyphens, so that no other
/// folder can be reached. Adds read.bad-name if it is not.
bool check_set_name(const WrittenText& name, Diagnostics& to);

/// The name of a colour or a rank can be told from `none`, `as …`, `the …` and `#rrggbb`. Adds
/// read.bad-name if it cannot.
bool check_name(const WrittenText& name, Diagnostics& to);

/// Two that differ by capitals only are the same. Adds read.duplicate-name at the second.
void report_repeated_name(const WrittenText& second, const Span& first, Diagnostics& to);

}  // namespace platewright
