// SPDX-License-Identifier: MIT
// Free text: titles, names, remarks.
#include "read/texts.h"

#include <algorithm>
#include <utility>

#include "base/limits.h"
#include "base/text.h"
#include "read/extent.h"
#include "read/keys.h"

namespace platewright {
namespace {

bool has_control(std::string_view text) {
    return std::any_of(text.begin(), text.end(), [](char c) {
        const auto byte = static_cast<unsigned char>(c);
        return (byte < 0x20 && c != '\n') || byte == 0x7F;
    });
}

/// Line ends and runs of spaces come to one space.
std::string with_single_spaces(std::string_view words) {
    std::string result;
    for (const char c : words) {
        const bool blank = c == ' ' || c == '\n';
        if (!blank || (!result.empty() && result.back() != ' ')) {
            result += blank ? ' ' : c;
        }
    }
    return result;
}

/// A control character: written as it is, or by a backslash in double quotes.
void refuse_control(const Item& item, const ReadContext& context) {
    const std::string& text = context.sources.text(context.file);
    const std::string_view written =
        std::string_view(text).substr(item.span.begin, item.span.end - item.span.begin);
    if (written.starts_with('"') && written.find('\\') != std::string_view::npos) {
        context.to
            .error("read.control-character",
                   item.span,
                   "a backslash in double quotes makes a character that cannot be seen")
            .hints.emplace_back(
                "put the text in single quotes instead, or write the backslash twice");
        return;
    }
    const std::size_t tab = written.find('\t');
    if (tab != std::string_view::npos) {
        const std::size_t at = item.span.begin + tab;
        context.to.error("read.tab", {item.span.file, at, at + 1}, "a tab stands in this text")
            .hints.emplace_back("write a space instead");
        return;
    }
    context.to
        .error("read.control-character",
               item.span,
               "a character that cannot be seen stands in this text")
        .hints.emplace_back("delete it and write the words again");
}

}  // namespace

std::optional<WrittenText> read_words(const Item& item,
                                      const std::string& key,
                                      std::size_t most,
                                      const ReadContext& context) {
    if (item.form != Item::Form::text) {
        report_form(item, key, "write one text", context);
        return std::nullopt;
    }
    std::string words(trim(item.text));
    if (has_control(words) || invalid_utf8(words)) {
        refuse_control(item, context);
        return std::nullopt;
    }
    words = with_single_spaces(words);
    if (words.empty() || is_null_word(item)) {
        context.to.error("read.missing-value", item.span, quoted(key) + " holds no words")
            .hints.emplace_back("write a text, or leave the line out");
        return std::nullopt;
    }
    const std::size_t length = count_characters(words);
    if (length > most) {
        context.to
            .error("read.out-of-range",
                   item.span,
                   quoted(key) + " is " + std::to_string(length) + " characters long")
            .hints.push_back("write at most " + std::to_string(most));
        return std::nullopt;
    }
    return WrittenText{std::move(words), item.span};
}

std::optional<WrittenText> read_text(const TreeEntry& entry,
                                     std::size_t most,
                                     const ReadContext& context) {
    if (entry.value.form == Item::Form::nothing) {
        report_no_value(entry, "write a text, or leave the line out", context);
        return std::nullopt;
    }
    return read_words(entry.value, entry.key, most, context);
}

std::vector<WrittenText> read_texts(const TreeEntry& entry,
                                    std::size_t most,
                                    const ReadContext& context) {
    std::vector<WrittenText> texts;
    if (entry.value.form != Item::Form::list) {
        if (auto text = read_text(entry, most, context)) {
            texts.push_back(std::move(*text));
        }
        return texts;
    }
    for (const Item& item : entry.value.items) {
        if (item.form == Item::Form::nothing) {
            context.to
                .error("read.missing-value",
                       item.span,
                       "an item of " + quoted(entry.key) + " is empty")
                .hints.emplace_back("write a text after the dash, or leave the line out");
        } else if (item.form == Item::Form::group) {
            // `- see: below` is read as a key with a value, though a text was meant.
            report_form(item, entry.key, "put a text that holds a colon in quotes", context);
        } else if (auto text = read_words(item, entry.key, most, context)) {
            texts.push_back(std::move(*text));
        }
    }
    return texts;
}

bool is_null_word(const Item& item) {
    return item.form == Item::Form::text && !item.quoted && !item.text.empty() &&
           end_of_null_word(item.text, 0) == item.text.size();
}

}  // namespace platewright
