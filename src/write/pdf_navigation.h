// SPDX-License-Identifier: MIT
// How one finds one's way in a PDF: outline, links, metadata.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "layout/page.h"
#include "write/pdf_file.h"

namespace platewright {

/// The outline (ISO 32000-1, 12.3.3): that of the document, or a bookmark a page where it has none.
/// An entry that leads to no page is left out.
PdfObject write_outline(PdfFile& file,
                        const Document& document,
                        const std::vector<PdfObject>& pages);

/// The entry `/Annots` of a page with its links (12.5.6.5); empty if it has none.
std::string page_links(PdfFile& file,
                       const Document& document,
                       std::size_t page,
                       const std::vector<PdfObject>& pages);

/// The entry `/Names` of the catalog with the places that links lead to by name (12.3.2.3), and no
/// others; empty if there are none.
std::string named_places(PdfFile& file,
                         const Document& document,
                         const std::vector<PdfObject>& pages);

/// Title, author and so on for the trailer (14.3.3).
PdfObject write_info(PdfFile& file, const Document& document, std::optional<std::int64_t> created);

/// The same as XMP (14.3.2, ISO 16684-1), with the language, which the other lacks.
PdfObject write_metadata(PdfFile& file,
                         const Document& document,
                         std::optional<std::int64_t> created);

}  // namespace platewright
