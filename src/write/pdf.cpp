// SPDX-License-Identifier: MIT
// PDF: the frame of a document round its pages' content. Written here and not by cairo, which
// spells out every copy of a path and so makes a plate four times too large.
#include "text/shaping.h"
#include "write/numbers.h"
#include "write/pdf_content.h"
#include "write/pdf_file.h"
#include "write/pdf_navigation.h"
#include "write/pdf_type.h"
#include "write/write.h"

namespace platewright {

namespace {

void write_page(PdfFile& file,
                PdfObject object,
                const Page& page,
                const std::string& content,
                const std::string& entries) {
    std::string box = "0 0 ";
    append_short(box, page.width * kPointsPerMm, 3);
    box += ' ';
    append_short(box, page.height * kPointsPerMm, 3);
    const PdfObject stream = file.add_stream("", content);
    // The group makes viewers mix transparent colours in RGB, as screens do.
    file.set(object,
             "<< /Type /Page" + entries + " /MediaBox [" + box + "] /Contents " +
                 reference(stream) +
                 " /Group << /Type /Group /S /Transparency /CS /DeviceRGB >> >>");
}

}  // namespace

std::string write_pdf(const Document& document,
                      const Typesetter& type,
                      std::optional<std::int64_t> created) {
    if (document.pages.empty()) {
        throw CannotWrite("a document without pages cannot be a PDF");
    }
    PdfFile file;
    PdfType words(document, type);
    PdfOpacities opacities;
    const PdfObject tree = file.reserve();
    const PdfObject resources = file.reserve();
    const std::string inherited =
        " /Parent " + reference(tree) + " /Resources " + reference(resources);
    std::vector<PdfObject> pages;
    std::string kids;
    for (std::size_t i = 0; i < document.pages.size(); ++i) {
        pages.push_back(file.reserve());
        kids += reference(pages.back()) + " ";
    }
    for (std::size_t i = 0; i < document.pages.size(); ++i) {
        const Page& page = document.pages[i];
        write_page(file,
                   pages[i],
                   page,
                   pdf_content(page, words, opacities),
                   inherited + page_links(file, document, i, pages));
    }
    file.set(
        tree,
        "<< /Type /Pages /Count " + std::to_string(pages.size()) + " /Kids [ " + kids + "] >>");
    const std::string fonts = words.write(file);
    file.set(resources,
             "<< /ExtGState <<" + opacities.entries() + " >> /Font <<" + fonts + " >> >>");
    const PdfObject outline = write_outline(file, document, pages);
    const PdfObject catalog = file.add(
        "<< /Type /Catalog /Pages " + reference(tree) + " /Outlines " + reference(outline) +
        " /Lang " + pdf_text(printable(document.language)) + named_places(file, document, pages) +
        " /Metadata " + reference(write_metadata(file, document, created)) +
        " /ViewerPreferences << /DisplayDocTitle true >> >>");
    return file.finish(catalog, write_info(file, document, created));
}

}  // namespace platewright
