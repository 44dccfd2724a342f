// SPDX-License-Identifier: MIT
// What is made from the table for people and their editors.
#pragma once

#include <string>

namespace platewright {

/// JSON Schema (draft 2020-12) of a plate, a regulation or a regiment, told apart by their keys;
/// two spaces an indent, with a line end. An editor that knows it completes keys and words and
/// marks mistakes; it cannot know the palettes, so any name may be a colour.
std::string json_schema();

/// Markdown page of every key: what may be written, what holds if it is not, what it means; and of
/// the units of length.
std::string reference_page();

}  // namespace platewright
