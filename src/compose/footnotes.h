// SPDX-License-Identifier: MIT
// Footnotes of a plate: what was not worn as ordered, and what is not documented.
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "compose/figure.h"
#include "resolve/uniform.h"

namespace platewright {

/// Names a property's thing as the key does: what is said of the number or shape of a thing is said
/// of the thing. Pockets are of the coat's cloth, and a musket is no sling: they have only a group.
std::string_view name_in_key(const Uniform& man, PropertyId id);

/// `*`, `†` … of the first, the second footnote of a page.
std::string mark_of_footnote(std::size_t number);

/// The footnotes of one man, each with a mark that stands where the matter is named.
class Footnotes {
  public:
    /// Goes through everything that is to be seen on him; the man must outlive them.
    explicit Footnotes(const Uniform& uniform);

    /// The mark of a property, `*`, `†` …; empty if there is nothing to say of it. Asking for a
    /// mark counts as printing it.
    [[nodiscard]] std::string mark(PropertyId id);

    /// The marks of the thing a material is of: also if only its shape or number has a footnote.
    [[nodiscard]] std::string mark_of_thing(PropertyId id);

    /// Those of a thing that goes by its group, without the marks printed before.
    [[nodiscard]] std::string mark_of_rest(std::string_view group);

    /// A property of a thing that a footnote names, and whose mark was never printed beside it.
    [[nodiscard]] std::optional<PropertyId> next_without_mark() const;

    /// `*` and "pockets: not as ordered, instead of the rule 'upright pockets': …", in the order of
    /// the marks.
    [[nodiscard]] std::vector<Footnote> all() const;

  private:
    struct Note {
        std::string words;
        std::vector<std::string> about;
    };

    void add(PropertyId id, std::string words);
    /// Of all properties for which `belongs(id)` holds, each once.
    template <typename Belongs>
    std::string marks_of(const Belongs& belongs);

    const Uniform& uniform_;
    Language language_;
    std::vector<Note> notes_;
    std::map<PropertyId, std::size_t> of_;
    std::set<PropertyId> borne_;
};

}  // namespace platewright
