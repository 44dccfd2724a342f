// SPDX-License-Identifier: MIT
// How one finds one's way in a PDF: outline, links, metadata.
#include "write/pdf_navigation.h"

#include <algorithm>
#include <array>
#include <ctime>
#include <map>
#include <set>

#include "text/shaping.h"
#include "write/numbers.h"
#include "write/svg_type.h"
#include "write/utf8.h"

namespace platewright {

namespace {

/// One entry on its way: which it is in and which are in it, by number.
struct Bookmark {
    OutlineEntry entry;
    std::vector<std::size_t> inner;
    PdfObject object = 0;
};

/// `D:19700101000000Z`, or with another pattern; empty for years a date cannot hold.
std::string date(std::optional<std::int64_t> seconds, const char* pattern) {
    const std::time_t time = seconds.value_or(0);
    std::tm parts{};
    if (!seconds || gmtime_r(&time, &parts) == nullptr || parts.tm_year < -1900 ||
        parts.tm_year > 9999 - 1900) {
        return {};
    }
    std::array<char, 32> text{};
    const std::size_t count = std::strftime(text.data(), text.size(), pattern, &parts);
    return {text.data(), count};
}

/// `[4 0 R /XYZ null 700 null]`: that page with that height at the top of the window.
std::string destination(const Document& document,
                        const std::vector<PdfObject>& pages,
                        std::size_t page,
                        double y) {
    std::string made = "[" + reference(pages[page]) + " /XYZ null ";
    append_short(made, (document.pages[page].height - y) * kPointsPerMm, 1);
    return made + " null]";
}

bool has_place(const Document& document, const std::string& name) {
    return std::ranges::any_of(document.pages, [&](const Page& page) {
        return std::ranges::find(page.places, name, &NamedPlace::name) != page.places.end();
    });
}

/// `/Dest (key-2)`, `/Dest [4 0 R …]`, or what opens an address; empty if it leads nowhere.
std::string target_of(const Link& link,
                      const Document& document,
                      const std::vector<PdfObject>& pages) {
    if (!link.uri.empty()) {
        return "/A << /S /URI /URI " + pdf_text(printable(link.uri)) + " >>";
    }
    if (!link.to.empty()) {
        return has_place(document, link.to) ? "/Dest (" + link.to + ")" : std::string();
    }
    return link.page < pages.size() ? "/Dest " + destination(document, pages, link.page, link.y)
                                    : std::string();
}

/// A bookmark a page.
std::vector<OutlineEntry> pages_as_outline(const Document& document) {
    std::vector<OutlineEntry> entries;
    const std::size_t count = document.pages.size();
    for (std::size_t i = 0; i < count; ++i) {
        const std::string number = count > 1 ? " (" + std::to_string(i + 1) + ")" : "";
        entries.push_back({document.title + number, 1, i, 0});
    }
    return entries;
}

/// The entries with what is in each; number 0 is the root.
std::vector<Bookmark> tree_of(const std::vector<OutlineEntry>& entries, std::size_t pages) {
    std::vector<Bookmark> marks(1);
    std::vector<std::size_t> open{0};
    for (const OutlineEntry& entry : entries) {
        if (entry.page >= pages) {
            continue;
        }
        const auto level = static_cast<std::size_t>(std::max(entry.level, 1));
        open.resize(std::min(level, open.size()));
        marks[open.back()].inner.push_back(marks.size());
        open.push_back(marks.size());
        marks.push_back({entry, {}, 0});
    }
    return marks;
}

/// How many entries are in it at any depth: all are shown at first.
std::size_t count_within(const Bookmark& mark, const std::vector<Bookmark>& all) {
    std::size_t count = mark.inner.size();
    for (const std::size_t inner : mark.inner) {
        count += count_within(all[inner], all);
    }
    return count;
}

void append_children(std::string& body, const Bookmark& mark, const std::vector<Bookmark>& all) {
    if (!mark.inner.empty()) {
        body += " /First " + reference(all[mark.inner.front()].object) + " /Last " +
                reference(all[mark.inner.back()].object) + " /Count " +
                std::to_string(count_within(mark, all));
    }
}

/// An element of XMP, if there is something in it.
void append_element(std::string& to,
                    const std::string& open,
                    const std::string& words,
                    const std::string& close) {
    if (!words.empty()) {
        to += open + xml_escaped(printable(words)) + close + "\n";
    }
}

}  // namespace

PdfObject write_outline(PdfFile& file,
                        const Document& document,
                        const std::vector<PdfObject>& pages) {
    std::vector<Bookmark> marks = tree_of(
        document.outline.empty() ? pages_as_outline(document) : document.outline, pages.size());
    for (Bookmark& mark : marks) {
        mark.object = file.reserve();
    }
    for (const Bookmark& parent : marks) {
        for (std::size_t i = 0; i < parent.inner.size(); ++i) {
            const Bookmark& mark = marks[parent.inner[i]];
            std::string body = "<< /Title " + pdf_text(printable(mark.entry.title)) + " /Parent " +
                               reference(parent.object);
            if (i > 0) {
                body += " /Prev " + reference(marks[parent.inner[i - 1]].object);
            }
            if (i + 1 < parent.inner.size()) {
                body += " /Next " + reference(marks[parent.inner[i + 1]].object);
            }
            append_children(body, mark, marks);
            file.set(mark.object,
                     body + " /Dest " +
                         destination(document, pages, mark.entry.page, mark.entry.y) + " >>");
        }
    }
    std::string root = "<< /Type /Outlines";
    append_children(root, marks.front(), marks);
    file.set(marks.front().object, root + " >>");
    return marks.front().object;
}

std::string page_links(PdfFile& file,
                       const Document& document,
                       std::size_t page,
                       const std::vector<PdfObject>& pages) {
    std::string list;
    for (const Link& link : document.pages[page].links) {
        const std::string target = target_of(link, document, pages);
        if (target.empty()) {
            continue;
        }
        const double height = document.pages[page].height;
        std::string body = "<< /Type /Annot /Subtype /Link /Border [0 0 0] /Rect [";
        for (const double mm :
             {link.area.left, height - link.area.bottom, link.area.right, height - link.area.top}) {
            append_short(body, mm * kPointsPerMm, 2);
            body += ' ';
        }
        body += "] ";
        body += target;
        body += " >>";
        list += reference(file.add(body));
        list += ' ';
    }
    return list.empty() ? list : " /Annots [ " + list + "]";
}

std::string named_places(PdfFile& file,
                         const Document& document,
                         const std::vector<PdfObject>& pages) {
    std::set<std::string> wanted;
    for (const Page& page : document.pages) {
        for (const Link& link : page.links) {
            wanted.insert(link.to);
        }
    }
    // A tree of names is read by halving: they stand in the order of their bytes.
    std::map<std::string, std::string> places;
    for (std::size_t page = 0; page < document.pages.size(); ++page) {
        for (const NamedPlace& place : document.pages[page].places) {
            if (wanted.contains(place.name)) {
                places.try_emplace(place.name, destination(document, pages, page, place.at.y));
            }
        }
    }
    std::string names;
    for (const auto& [name, place] : places) {
        for (const std::string_view part : {std::string_view("("),
                                            std::string_view(name),
                                            std::string_view(") "),
                                            std::string_view(place),
                                            std::string_view(" ")}) {
            names += part;
        }
    }
    return names.empty() ? names
                         : " /Names << /Dests " +
                               reference(file.add("<< /Names [ " + names + "] >>")) + " >>";
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
    add("CreationDate", date(created, "D:%Y%m%d%H%M%SZ"));
    return file.add(body + " >>");
}

PdfObject write_metadata(PdfFile& file,
                         const Document& document,
                         std::optional<std::int64_t> created) {
    std::string xmp =
        "<?xpacket begin=\"\xEF\xBB\xBF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
        "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n"
        "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
        "<rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\""
        " xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\" xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\">\n";
    const std::string alternative = "<rdf:Alt><rdf:li xml:lang=\"x-default\">";
    append_element(
        xmp, "<dc:title>" + alternative, document.title, "</rdf:li></rdf:Alt></dc:title>");
    append_element(
        xmp, "<dc:creator><rdf:Seq><rdf:li>", document.author, "</rdf:li></rdf:Seq></dc:creator>");
    append_element(xmp,
                   "<dc:description>" + alternative,
                   document.subject,
                   "</rdf:li></rdf:Alt></dc:description>");
    append_element(xmp,
                   "<dc:language><rdf:Bag><rdf:li>",
                   document.language,
                   "</rdf:li></rdf:Bag></dc:language>");
    append_element(xmp, "<xmp:CreatorTool>", "Platewright", "</xmp:CreatorTool>");
    append_element(
        xmp, "<xmp:CreateDate>", date(created, "%Y-%m-%dT%H:%M:%SZ"), "</xmp:CreateDate>");
    append_element(xmp, "<pdf:Producer>", "Platewright", "</pdf:Producer>");
    xmp += "</rdf:Description>\n</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>";
    return file.add_plain_stream("/Type /Metadata /Subtype /XML", xmp);
}

}  // namespace platewright
