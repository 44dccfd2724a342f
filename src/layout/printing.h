// SPDX-License-Identifier: MIT
// What sheets are printed on and with, and finished pages for a press without colour.
#pragma once

#include "base/ink.h"
#include "layout/layout.h"
#include "layout/page.h"

namespace platewright {

/// What a sheet is printed on and with.
struct Printing {
    Paper paper;
    Ink ink = Ink::colour;
};

/// Turns a laid out document to what is printed with that ink: every colour to the grey of its own
/// lightness, paper to white. In colour it stays as it is. What is to be hatched was composed so.
void prepare_for(Ink ink, Document& document);

}  // namespace platewright
