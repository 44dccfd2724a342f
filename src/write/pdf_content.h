// SPDX-License-Identifier: MIT
// The drawing tree in the operators of a PDF.
#pragma once

#include <map>
#include <string>

#include "layout/page.h"
#include "write/pdf_type.h"

namespace platewright {

/// The opacities a document uses; each has an entry in the resources that content streams call by
/// name.
class PdfOpacities {
  public:
    /// Name of the graphics state that sets the opacity of fills (or of lines): `f550`.
    std::string name(double alpha, bool of_lines);

    /// Entries of the resource dictionary's `/ExtGState`, sorted by name.
    [[nodiscard]] std::string entries() const;

  private:
    std::map<std::string, std::string> states_;
};

/// One page's content stream. Lines of text are taken from `type` in order, so pages must come in
/// order.
std::string pdf_content(const Page& page, PdfType& type, PdfOpacities& opacities);

}  // namespace platewright
