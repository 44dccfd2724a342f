// SPDX-License-Identifier: MIT
// From yaml-cpp's events to a tree with exact places. The library passes much over in silence (an
// unclosed quote at the end, a key without a colon, dropped bytes), so every byte between two
// pieces is looked at again here.
#include "read/parse.h"

#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/parser.h>

#include <algorithm>
#include <map>
#include <sstream>
#include <string>
#include <utility>

#include "base/limits.h"
#include "read/extent.h"

namespace platewright {
namespace {

/// Thrown by our own event handler only, and caught in `parse_yaml`.
struct Stop {
    Fault fault;
};

class TreeBuilder : public YAML::EventHandler {
  public:
    TreeBuilder(
        std::string_view text, std::size_t begin, std::size_t end, FileId file, Diagnostics& to)
        : text_(text.substr(0, end)), base_(begin), covered_(begin), file_(file), to_(to) {}

    void OnDocumentStart(const YAML::Mark& mark) override {
        if (done_) {
            throw Stop{{Trouble::outdented, offset(mark), std::nullopt}};
        }
    }

    void OnDocumentEnd() override {
        done_ = true;
        cover(text_.size(), text_.size());
    }

    void OnNull(const YAML::Mark& mark, YAML::anchor_t anchor) override {
        const std::size_t at = offset(mark);
        Item item;
        if (refuse_anchor(at, anchor)) {
            item.form = Item::Form::broken;
            item.span = skip_properties(at);
            count(at);
            put(std::move(item));
            return;
        }
        // `~` and `null` come as nothing, but the user did write a word.
        const std::size_t end = end_of_null_word(text_, std::max(at, covered_));
        if (at >= covered_ && end > at) {
            item.form = Item::Form::text;
            item.text = text_.substr(at, end - at);
            item.span = cover(at, end);
        } else {
            const std::size_t place = empty_place();
            item.span = {file_, place, place};
        }
        count(at);
        put(std::move(item));
    }

    void OnAlias(const YAML::Mark& mark, YAML::anchor_t /*anchor*/) override {
        const std::size_t at = offset(mark);
        refuse_reference(at);
        Item item;
        item.form = Item::Form::broken;
        item.span = cover(at, end_of_word(text_, at));
        count(at);
        put(std::move(item));
    }

    void OnScalar(const YAML::Mark& mark,
                  const std::string& tag,
                  YAML::anchor_t anchor,
                  const std::string& value) override {
        std::size_t at = offset(mark);
        Item item;
        item.form = Item::Form::text;
        if (refuse_anchor(at, anchor) || refuse_tag(at, tag)) {
            item.form = Item::Form::broken;
            at = skip_properties(at).end;
        }
        const Extent extent = extent_of(text_, at, value);
        if (!extent.closed) {
            throw Stop{{Trouble::quote, at, at}};
        }
        item.text = value;
        item.quoted = extent.quoted;
        item.span = cover(at, extent.end);
        count(at);
        put(std::move(item));
    }

    void OnSequenceStart(const YAML::Mark& mark,
                         const std::string& tag,
                         YAML::anchor_t anchor,
                         YAML::EmitterStyle::value style) override {
        open(Item::Form::list, offset(mark), tag, anchor, style == YAML::EmitterStyle::Flow);
    }

    void OnSequenceEnd() override { close(']'); }

    void OnMapStart(const YAML::Mark& mark,
                    const std::string& tag,
                    YAML::anchor_t anchor,
                    YAML::EmitterStyle::value style) override {
        open(Item::Form::group, offset(mark), tag, anchor, style == YAML::EmitterStyle::Flow);
    }

    void OnMapEnd() override { close('}'); }

    [[nodiscard]] std::optional<std::size_t> open_brace() const {
        const auto last = std::find_if(
            stack_.rbegin(), stack_.rend(), [](const Level& level) { return level.in_braces; });
        return last == stack_.rend() ? std::nullopt : std::optional(last->item.span.begin);
    }

    [[nodiscard]] std::size_t offset(const YAML::Mark& mark) const {
        return mark.pos < 0 ? base_
                            : std::min(base_ + static_cast<std::size_t>(mark.pos), text_.size());
    }

    Item take() { return std::move(root_); }

  private:
    struct Level {
        Item item;
        /// What it is, even where the item itself counts as broken.
        bool is_list = false;
        bool in_braces = false;
        /// The key that waits for its value; `drop` when the entry was reported as broken.
        std::optional<TreeEntry> key;
        bool drop = false;
        /// An entry was dropped.
        bool lost = false;
    };

    void count(std::size_t at) {
        if (++pieces_ > limits::kYamlNodes) {
            throw Stop{{Trouble::too_many, at, std::nullopt}};
        }
    }

    /// Whoever uses one uses many; the first few are told.
    void refuse_reference(std::size_t at) {
        constexpr int told = 5;
        if (references_++ < told) {
            report_reference(text_, at, file_, to_);
        }
    }

    bool refuse_anchor(std::size_t at, YAML::anchor_t anchor) {
        if (anchor == 0) {
            return false;
        }
        refuse_reference(at);
        return true;
    }

    bool refuse_tag(std::size_t at, const std::string& tag) {
        const bool written = at < text_.size() && text_[at] == '!';
        if (!written && (tag.empty() || tag == "?" || tag == "!")) {
            return false;
        }
        refuse_reference(at);
        return true;
    }

    /// Passes over what was refused.
    Span skip_properties(std::size_t at) {
        const std::size_t end = after_properties(text_, at);
        covered_ = std::max(covered_, end);
        return {file_, at, end};
    }

    /// Notes that `begin` to `end` is accounted for; what lies before must be blanks, remarks and
    /// signs of the notation.
    Span cover(std::size_t begin, std::size_t end) {
        if (const auto lost = first_unexplained(text_, covered_, begin); lost && !reported_loss_) {
            reported_loss_ = true;
            to_.error("read.yaml",
                      {file_, *lost, end_of_word(text_, *lost)},
                      "this cannot be understood here")
                .hints.emplace_back("put the whole value in quotes");
        }
        covered_ = std::max(covered_, end);
        return {file_, begin, end};
    }

    /// Just after the colon of the key that waits or the dash of the item, or where the reading has
    /// come to.
    std::size_t empty_place() {
        if (stack_.empty()) {
            return covered_;
        }
        const Level& level = stack_.back();
        if (level.is_list && !level.in_braces) {
            covered_ = after_sign(text_, covered_, '-');
            return covered_;
        }
        return level.key.has_value() ? after_colon(text_, covered_) : covered_;
    }

    void open(
        Item::Form form, std::size_t at, const std::string& tag, YAML::anchor_t anchor, bool flow) {
        const bool refused = refuse_anchor(at, anchor) || refuse_tag(at, tag);
        if (stack_.size() >= limits::kYamlDepth) {
            throw Stop{{Trouble::too_deep, at, std::nullopt}};
        }
        count(at);
        Level level;
        level.is_list = form == Item::Form::list;
        level.item.form = refused ? Item::Form::broken : form;
        at = refused ? skip_properties(at).end : at;
        level.item.span = {file_, at, at};
        const char sign = at < text_.size() ? text_[at] : ' ';
        // `[a: b]` opens a group without braces of its own.
        level.in_braces = flow && (sign == '{' || sign == '[') && !same_brace(at);
        stack_.push_back(std::move(level));
    }

    [[nodiscard]] bool same_brace(std::size_t at) const {
        return std::any_of(stack_.begin(), stack_.end(), [at](const Level& level) {
            return level.in_braces && level.item.span.begin == at;
        });
    }

    void close(char sign) {
        Level level = std::move(stack_.back());
        stack_.pop_back();
        std::size_t end = std::max(covered_, level.item.span.begin);
        if (level.in_braces) {
            end = after_sign(text_, std::max(covered_, level.item.span.begin + 1), sign);
            cover(end, end);
        }
        level.item.span.end = end;
        if (level.lost && level.item.entries.empty()) {
            level.item.form = Item::Form::broken;
        }
        put(std::move(level.item));
    }

    void put(Item item) {
        if (stack_.empty()) {
            root_ = std::move(item);
            return;
        }
        Level& level = stack_.back();
        if (level.is_list) {
            level.item.items.push_back(std::move(item));
        } else if (!level.key) {
            take_key(level, std::move(item));
        } else {
            if (!level.drop) {
                level.key->value = std::move(item);
                level.item.entries.push_back(std::move(*level.key));
            }
            level.lost = level.lost || level.drop;
            level.key.reset();
        }
    }

    void take_key(Level& level, Item item) {
        level.key.emplace();
        level.key->key = std::move(item.text);
        level.key->key_span = item.span;
        level.drop = true;
        if (item.form == Item::Form::broken) {
            return;
        }
        if (item.form != Item::Form::text || level.key->key.empty()) {
            to_.error("read.yaml", item.span, "no key stands before this colon")
                .hints.emplace_back("every line is a key, a colon, a space and a value");
            return;
        }
        if (!has_colon(text_, item.span.end)) {
            report_no_colon(level.key->key, item.span, to_);
            return;
        }
        level.drop = false;
    }

    std::string_view text_;
    std::size_t base_;
    /// Everything before this byte is accounted for.
    std::size_t covered_;
    FileId file_;
    Diagnostics& to_;
    std::vector<Level> stack_;
    Item root_;
    std::size_t pieces_ = 0;
    int references_ = 0;
    bool done_ = false;
    bool reported_loss_ = false;
};

/// What each of the library's messages comes to. Messages, not types: it throws one type for all.
Trouble trouble_of(const std::string& message) {
    namespace Msg = YAML::ErrorMsg;
    static const std::map<std::string_view, Trouble> kTroubles = {
        {Msg::MAP_VALUE, Trouble::colon},        {Msg::MAP_KEY, Trouble::colon},
        {Msg::END_OF_MAP, Trouble::stray},       {Msg::END_OF_SEQ, Trouble::stray},
        {Msg::END_OF_MAP_FLOW, Trouble::brace},  {Msg::END_OF_SEQ_FLOW, Trouble::brace},
        {Msg::FLOW_END, Trouble::brace},         {Msg::EOF_IN_SCALAR, Trouble::quote},
        {Msg::DOC_IN_SCALAR, Trouble::quote},    {Msg::UNKNOWN_TOKEN, Trouble::first_character},
        {Msg::BLOCK_ENTRY, Trouble::dash},       {Msg::ALIAS_NOT_FOUND, Trouble::alias},
        {Msg::ANCHOR_NOT_FOUND, Trouble::alias}, {Msg::CHAR_IN_ALIAS, Trouble::alias},
        {Msg::CHAR_IN_ANCHOR, Trouble::alias},   {Msg::UNKNOWN_ANCHOR, Trouble::alias},
        {Msg::ALIAS_CONTENT, Trouble::alias},    {Msg::MULTIPLE_ANCHORS, Trouble::alias},
        {Msg::TAG_WITH_NO_SUFFIX, Trouble::tag}, {Msg::END_OF_VERBATIM_TAG, Trouble::tag},
        {Msg::CHAR_IN_TAG_HANDLE, Trouble::tag}, {Msg::MULTIPLE_TAGS, Trouble::tag},
        {Msg::BAD_FILE, Trouble::too_deep},
    };
    if (const auto found = kTroubles.find(message); found != kTroubles.end()) {
        return found->second;
    }
    const bool escape = message.starts_with(Msg::INVALID_ESCAPE) ||
                        message.starts_with(Msg::INVALID_UNICODE) ||
                        message.starts_with(Msg::INVALID_HEX);
    return escape ? Trouble::escape : Trouble::other;
}

}  // namespace

Parsed parse_yaml(
    std::string_view text, std::size_t begin, std::size_t end, FileId file, Diagnostics& to) {
    TreeBuilder builder(text, begin, end, file, to);
    Parsed parsed;
    try {
        std::istringstream stream{std::string(text.substr(begin, end - begin))};
        YAML::Parser parser(stream);
        while (parser.HandleNextDocument(builder)) {
        }
    } catch (const Stop& stop) {
        parsed.fault = stop.fault;
    } catch (const YAML::Exception& problem) {
        parsed.fault =
            Fault{trouble_of(problem.msg), builder.offset(problem.mark), builder.open_brace()};
    }
    parsed.root = builder.take();
    return parsed;
}

}  // namespace platewright
