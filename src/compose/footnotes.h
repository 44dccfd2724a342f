// SPDX-License-Identifier: MIT
// Footnotes of a plate: what was not worn as ordered, and what is not documented.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "compose/figure.h"
#include "resolve/uniform.h"

namespace platewright {

/// The footnotes of one man, each with a mark that stands where the matter is named.
class Footnotes {
  public:
    /// Goes through everything that is to be seen on him.
    explicit Footnotes(const Uniform& uniform);

    /// The mark of a property, `*`, `†` …; empty if there is nothing to say of it.
    [[nodiscard]] std::string mark(PropertyId id) const;

    /// The same of the thing a material is of: also if only its shape or number has a footnote.
    [[nodiscard]] std::string mark_of_thing(PropertyId id) const;

    /// `*` and "pockets: not as ordered, instead of the rule 'upright pockets': …", in the order of
    /// the marks.
    [[nodiscard]] std::vector<Footnote> all() const;

  private:
    struct Note {
        std::string words;
        std::vector<std::string> about;
    };

    void add(PropertyId id, std::string words);

    Language language_;
    std::vector<Note> notes_;
    std::map<PropertyId, std::size_t> of_;
};

}  // namespace platewright
