// SPDX-License-Identifier: MIT
// The words a plate says of its own accord, in one place for the message catalogues of other
// languages.
#pragma once

#include <string>

namespace platewright::sheet::wording {

/// Headings, beginnings of lines, and the name of the press.
inline const std::string kColours = "Colours";
inline const std::string kParticulars = "Particulars";
inline const std::string kNotes = "Notes";
inline const std::string kSource = "Source: ";
inline const std::string kDrawnBy = "Drawn by ";
inline const std::string kButton = "button";
inline const std::string kColophon = "Platewright";

}  // namespace platewright::sheet::wording
