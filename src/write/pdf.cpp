// SPDX-License-Identifier: MIT
// PDF: the frame of a document round its pages' content. Written here and not by cairo, which
// spells out every copy of a path and so makes a plate four times too large.
#include <array>
#include <ctime>

#include "text/shaping.h"
#include "write/numbers.h"
#include "write/pdf_content.h"
#include "write/pdf_file.h"
#include "write/pdf_type.h"
#include "write/write.h"

namespace platewright {

namespace {

constexpr double kPointsPerMm = 72 / 25.4;

/// `D:19700101000000Z`; empty for years a date cannot hold.
std::string pdf_date(std::int64_t seconds) {
    const std::time_t time = seconds;
    std::tm parts{};
    if (gmtime_r(&time, &parts) == nullptr || parts.tm_year < -1900 ||
        parts.tm_year > 9999 - 1900) {
        return {};
    }
    std::array<char, 32> text{};
    const std::size_t count = std::strftime(text.data(), text.size(), "D:%Y%m%d%H%M%SZ", &parts);
    return {text.data(), count};
}

PdfObject write_info(PdfFile& file, const Document& document, std::optional<std::int64_t> created) {
    std::string body = "<<";
    const auto add = [&body](const char* key, const std::string& text) {
        if (!text.empty()) {
            body += std::string(" /") + key + " " + pdf_text(text);
        }
    };
    add("Title", printable(document.title));
    add("Author", printable(document.author));
    add("Subject", printable(document.subject));
    add("Creator", "Platewright");
    add("Producer", "Platewright");
    add("CreationDate", created ? pdf_date(*created) : std::string());
    return file.add(body + " >>");
}

/// One bookmark a page.
PdfObject write_outline(PdfFile& file,
                        const Document& document,
                        const std::vector<PdfObject>& pages) {
    const PdfObject root = file.reserve();
    std::vector<PdfObject> entries;
    entries.reserve(pages.size());
    for (std::size_t i = 0; i < pages.size(); ++i) {
        entries.push_back(file.reserve());
    }
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const std::string number =
            pages.size() > 1 ? " (" + std::to_string(i + 1) + ")" : std::string();
        std::string body = "<< /Title " + pdf_text(printable(document.title) + number) +
                           " /Parent " + reference(root);
        if (i > 0) {
            body += " /Prev " + reference(entries[i - 1]);
        }
        if (i + 1 < pages.size()) {
            body += " /Next " + reference(entries[i + 1]);
        }
        file.set(entries[i], body + " /Dest [" + reference(pages[i]) + " /Fit] >>");
    }
    file.set(root,
             "<< /Type /Outlines /First " + reference(entries.front()) + " /Last " +
                 reference(entries.back()) + " /Count " + std::to_string(entries.size()) + " >>");
    return root;
}

void write_page(PdfFile& file,
                PdfObject object,
                const Page& page,
                const std::string& content,
                const std::string& inherited) {
    std::string box = "0 0 ";
    append_short(box, page.width * kPointsPerMm, 3);
    box += ' ';
    append_short(box, page.height * kPointsPerMm, 3);
    const PdfObject stream = file.add_stream("", content);
    // The group makes viewers mix transparent colours in RGB, as screens do.
    file.set(object,
             "<< /Type /Page" + inherited + " /MediaBox [" + box + "] /Contents " +
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
    for (const Page& page : document.pages) {
        pages.push_back(file.reserve());
        kids += reference(pages.back()) + " ";
        write_page(file, pages.back(), page, pdf_content(page, words, opacities), inherited);
    }
    file.set(
        tree,
        "<< /Type /Pages /Count " + std::to_string(pages.size()) + " /Kids [ " + kids + "] >>");
    const std::string fonts = words.write(file);
    file.set(resources,
             "<< /ExtGState <<" + opacities.entries() + " >> /Font <<" + fonts + " >> >>");
    const PdfObject outline = write_outline(file, document, pages);
    const PdfObject catalog =
        file.add("<< /Type /Catalog /Pages " + reference(tree) + " /Outlines " +
                 reference(outline) + " /Lang " + pdf_text(printable(document.language)) +
                 " /ViewerPreferences << /DisplayDocTitle true >> >>");
    return file.finish(catalog, write_info(file, document, created));
}

}  // namespace platewright
