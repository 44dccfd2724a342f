// SPDX-License-Identifier: MIT
// Sheets to cut and sew from.
#include <algorithm>
#include <span>
#include <utility>

#include "base/limits.h"
#include "base/text.h"
#include "read/lengths.h"
#include "read/read.h"
#include "read/record.h"
#include "read/texts.h"
#include "read/tree.h"

namespace platewright {
namespace {

/// Scales of enlargement and reduction are those of ISO 5455; these are of use for a garment.
constexpr std::array kScales = {2, 5, 10, 20};

class WorkshopReader {
  public:
    explicit WorkshopReader(const ReadContext& context) : context_(context) {}

    void read(const Item& root) {
        read_outermost(root, Record::workshop, targets(), {}, context_);
        check_words(sheet_.garments, kGarmentNames, "garment");
        check_words(sheet_.sheets, kWorkshopSheets, "sheet of a workshop");
    }

    SpecifiedWorkshop take() { return std::move(sheet_); }

  private:
    std::vector<KeyTarget> targets() {
        SheetWords& words = sheet_.words;
        const auto scale = [this](const TreeEntry& entry) { read_scale(entry); };
        const auto measures = [this](const TreeEntry& entry) {
            read_body(entry, "measures", sheet_.body, context_);
        };
        const auto allowance = [this](const TreeEntry& entry) {
            sheet_.allowance = read_length(entry, 0, 100, context_);
        };
        const auto width = [this](const TreeEntry& entry) {
            sheet_.cloth_width = read_length(entry, 200, 5000, context_);
        };
        return {{"workshop", &words.title},
                {"subtitle", &words.subtitle},
                {"drawn by", &words.drawn_by},
                {"source", &words.source},
                {"notes", &words.notes},
                {"language", &words.language},
                {"man", &sheet_.man},
                {"garments", &sheet_.garments},
                {"sheets", &sheet_.sheets},
                {"scale", scale},
                {"size", &sheet_.size},
                {"measures", measures},
                {"seam allowance", allowance},
                {"cloth width", width},
                {"whole garments", &sheet_.whole_garments}};
    }

    void read_scale(const TreeEntry& entry) {
        const auto text = read_text(entry, limits::kLineCharacters, context_);
        if (!text) {
            return;
        }
        for (const int scale : kScales) {
            const std::string number = std::to_string(scale);
            if (text->text == "1:" + number || text->text == "1 : " + number) {
                sheet_.scale = scale;
                return;
            }
        }
        context_.to
            .error("read.unknown-choice",
                   text->span,
                   quoted(text->text) + " is no scale for the flats of a garment")
            .hints.emplace_back("write '1:2', '1:5', '1:10' or '1:20'");
    }

    void check_words(const std::vector<WrittenText>& written,
                     std::span<const std::string_view> known,
                     const char* what) {
        const std::vector<std::string> words(known.begin(), known.end());
        for (const WrittenText& each : written) {
            if (std::ranges::find(words, each.text) != words.end()) {
                continue;
            }
            Diagnostic& problem = context_.to.error(
                "read.unknown-choice", each.span, quoted(each.text) + " is no " + what);
            add_suggestion(problem, each.text, words, "write ");
        }
    }

    const ReadContext& context_;
    SpecifiedWorkshop sheet_;
};

}  // namespace

std::optional<SpecifiedWorkshop> read_workshop(const SourceMap& sources,
                                               FileId file,
                                               Diagnostics& to) {
    const std::size_t errors = to.error_count();
    const auto root = read_tree(sources, file, to);
    const ReadContext context{sources, file, to, to.error_count() == errors};
    WorkshopReader reader(context);
    if (root) {
        reader.read(*root);
    }
    SpecifiedWorkshop sheet = reader.take();
    sheet.span = {file, 0, 0};
    return to.error_count() == errors ? std::optional(std::move(sheet)) : std::nullopt;
}

}  // namespace platewright
