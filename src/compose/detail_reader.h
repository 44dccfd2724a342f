// SPDX-License-Identifier: MIT
// Reads one line, tone or trimming of a template's part.
#pragma once

#include <map>
#include <optional>
#include <string>

#include "compose/attributes.h"
#include "compose/template.h"

namespace platewright {

/// The detail on `words.element()`; empty if an error was added.
std::optional<Detail> read_detail(Attributes& words,
                                  const Affine& to_page,
                                  const std::map<std::string, Curve>& guides);

/// `data-line`, left alone if absent.
void read_line_weight(Attributes& words, LineWeight& into);

}  // namespace platewright
