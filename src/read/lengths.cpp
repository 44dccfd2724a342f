// SPDX-License-Identifier: MIT
// Lengths within limits, and a man's measures.
#include "read/lengths.h"

#include <utility>
#include <vector>

#include "base/limits.h"
#include "base/text.h"
#include "read/record.h"
#include "read/texts.h"

namespace platewright {

std::optional<WrittenLength> read_length(const TreeEntry& entry,
                                         double least,
                                         double most,
                                         const ReadContext& context) {
    const auto text = read_text(entry, limits::kLineCharacters, context);
    if (!text || text->text == "none") {
        return std::nullopt;
    }
    std::string problem;
    auto length = parse_measure(text->text, problem);
    if (!length) {
        context.to.error("read.wrong-kind", text->span, quoted(text->text) + " is no length")
            .hints.push_back(problem);
        return std::nullopt;
    }
    if (length->mm < least || length->mm > most) {
        context.to
            .error("read.out-of-range",
                   text->span,
                   quoted(entry.key) + " is from " + format_number(least, 0) + " to " +
                       format_number(most, 0) + " mm, and this is " + format_number(length->mm, 0) +
                       " mm")
            .hints.emplace_back("look at the number and its unit once more");
        return std::nullopt;
    }
    return WrittenLength{std::move(*length), text->span};
}

void read_body(const TreeEntry& entry,
               const std::string& owner,
               WrittenBody& body,
               const ReadContext& context) {
    std::vector<KeyTarget> targets;
    for (const BodyRow& row : body_rows()) {
        const auto length = [&](const TreeEntry& each) {
            body[static_cast<std::size_t>(row.measure)] =
                read_length(each, row.least, row.most, context);
        };
        targets.push_back({row.name, length});
    }
    read_record(entry, Record::body, owner, targets, {}, context);
}

}  // namespace platewright
