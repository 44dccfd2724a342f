// SPDX-License-Identifier: MIT
// A whole file to one group of entries; after a fault each outermost entry is tried by itself.
#include "read/tree.h"

#include <algorithm>
#include <map>
#include <string>
#include <string_view>
#include <utility>

#include "base/limits.h"
#include "base/text.h"
#include "read/extent.h"
#include "read/parse.h"
#include "read/screen.h"

namespace platewright {
namespace {

/// After this many faults the file is something else than a description.
constexpr int kFaults = 20;

/// A line that can only begin an outermost entry: nothing before its first character, which opens
/// no list and closes nothing.
bool begins_entry(std::string_view line) {
    return !line.empty() &&
           std::string_view(" \t\r#-]},").find(line.front()) == std::string_view::npos;
}

/// Where the outermost entries begin, and the end of the text.
std::vector<std::size_t> entry_bounds(std::string_view text, std::size_t start) {
    std::vector<std::size_t> bounds = {start};
    for (std::size_t at = start; at < text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        if (at > start && begins_entry(text.substr(at, end - at))) {
            bounds.push_back(at);
        }
        at = end + 1;
    }
    bounds.push_back(text.size());
    return bounds;
}

/// A file that has no keys at all.
void refuse_root(const Item& root, Diagnostics& to) {
    if (root.form == Item::Form::text) {
        report_no_colon(root.text, root.span, to);
    } else if (root.form == Item::Form::list) {
        const Span first = {
            root.span.file, root.span.begin, std::min(root.span.begin + 1, root.span.end)};
        to.error("read.wrong-kind", first, "a list stands where a key is expected")
            .hints.emplace_back("begin with a line such as 'plate: Private, Tannbruck Regiment'");
    }
}

/// Reads entry by entry and keeps what can be read.
class Salvage {
  public:
    Salvage(std::string_view text, FileId file, Diagnostics& to)
        : text_(text), file_(file), to_(to) {
        root_.form = Item::Form::group;
    }

    /// False if every entry alone is in order, so that the fault lies between them.
    bool run(std::size_t start) {
        root_.span = {file_, start, text_.size()};
        const std::vector<std::size_t> bounds = entry_bounds(text_, start);
        for (std::size_t i = 0; i + 1 < bounds.size() && faults_ < kFaults; ++i) {
            take(bounds[i], bounds[i + 1]);
        }
        return faults_ > 0;
    }

    Item root() { return std::move(root_); }

  private:
    void take(std::size_t begin, std::size_t end) {
        Diagnostics found;
        Parsed piece = parse_yaml(text_, begin, end, file_, found);
        if (piece.fault) {
            // What was found before is often only the fault's own shadow.
            ++faults_;
            explain(*piece.fault, text_.substr(0, end), file_, to_);
            return;
        }
        to_.add_all(found);
        if (piece.root.form == Item::Form::group) {
            std::move(piece.root.entries.begin(),
                      piece.root.entries.end(),
                      std::back_inserter(root_.entries));
        } else if (piece.root.form != Item::Form::nothing) {
            ++faults_;
            refuse_root(piece.root, to_);
        }
    }

    std::string_view text_;
    FileId file_;
    Diagnostics& to_;
    Item root_;
    int faults_ = 0;
};

/// Takes the second and later entries of one key out of every group.
void refuse_repeated(Item& item, Diagnostics& to) {
    std::map<std::string, Span> seen;
    std::vector<TreeEntry> kept;
    kept.reserve(item.entries.size());
    for (TreeEntry& entry : item.entries) {
        const auto [first, is_new] = seen.emplace(entry.key, entry.key_span);
        if (is_new) {
            refuse_repeated(entry.value, to);
            kept.push_back(std::move(entry));
            continue;
        }
        Diagnostic& problem =
            to.error("read.duplicate-key", entry.key_span, quoted(entry.key) + " is written twice");
        problem.labels.push_back({first->second, "first written here"});
        problem.hints.emplace_back(entry.value.form == Item::Form::group
                                       ? "put everything into one group"
                                       : "keep one of the two");
    }
    item.entries = std::move(kept);
    for (Item& part : item.items) {
        refuse_repeated(part, to);
    }
}

/// `Company #3`: what was meant as text is passed over as a remark.
void warn_of_remarks(const Item& item, std::string_view text, Diagnostics& to) {
    for (const TreeEntry& entry : item.entries) {
        warn_of_remarks(entry.value, text, to);
    }
    for (const Item& part : item.items) {
        warn_of_remarks(part, text, to);
    }
    if (item.form != Item::Form::text || item.quoted) {
        return;
    }
    const std::size_t at = text.find_first_not_of(' ', item.span.end);
    if (at == std::string_view::npos || text[at] != '#' || at + 1 >= text.size()) {
        return;
    }
    if (std::string_view(" #!-=\r\n\t").find(text[at + 1]) == std::string_view::npos) {
        Diagnostic& problem = to.warning("read.remark-in-value",
                                         {item.span.file, at, end_of_word(text, at)},
                                         "from '#' on the line is a remark and is not read");
        problem.hints.emplace_back("put the whole text in quotes if it belongs to it");
        problem.hints.emplace_back("write a space after '#' if it is a remark");
    }
}

/// Only if the shape of the text can be trusted is the parser's fault worth telling.
std::optional<Item> tree_of(const Screened& screened, FileId file, Diagnostics& to) {
    const std::string_view text = screened.text;
    Diagnostics found;
    Parsed whole = parse_yaml(text, screened.start, text.size(), file, found);
    if (!whole.fault && whole.root.form != Item::Form::text) {
        to.add_all(found);
        return std::move(whole.root);
    }
    if (screened.patched) {
        return std::nullopt;
    }
    const bool whole_file = whole.fault && (whole.fault->trouble == Trouble::outdented ||
                                            whole.fault->trouble == Trouble::too_many);
    if (whole_file) {
        explain(*whole.fault, text, file, to);
        return std::nullopt;
    }
    Salvage salvage(text, file, to);
    if (!salvage.run(screened.start)) {
        explain(whole.fault.value_or(Fault{}), text, file, to);
    }
    return salvage.root();
}

}  // namespace

std::optional<Item> read_tree(const SourceMap& sources, FileId file, Diagnostics& to) {
    const std::optional<Screened> screened = screen(sources, file, to);
    if (!screened) {
        return std::nullopt;
    }
    std::optional<Item> root = tree_of(*screened, file, to);
    if (!root) {
        return std::nullopt;
    }
    if (root->form == Item::Form::nothing && !screened->patched) {
        to.error("read.empty",
                 {file, screened->start, screened->start},
                 "the file holds no description")
            .hints.emplace_back("begin with a line such as 'plate: Private, Tannbruck Regiment'");
    }
    if (root->form != Item::Form::group) {
        refuse_root(*root, to);
        return std::nullopt;
    }
    refuse_repeated(*root, to);
    warn_of_remarks(*root, screened->text, to);
    return root;
}

}  // namespace platewright
