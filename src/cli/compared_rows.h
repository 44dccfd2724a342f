// SPDX-License-Identifier: MIT
// The table of what men differ in: one row for a thing, with its shape and number beneath its
// colour, and marks where one of them departs from what is ordered.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "cli/compared.h"
#include "compose/footnotes.h"
#include "layout/comparison.h"

namespace platewright::cli {

/// Makes the rows; the men must outlive it.
class ComparedRows {
  public:
    ComparedRows(Language language, const std::vector<const Uniform*>& men);

    /// All that differs, in its order, each property with the name of its row.
    void fill(const std::vector<DifferingRow>& rows, const std::vector<std::string>& names);

    [[nodiscard]] const std::vector<ComparedThing>& things() const { return things_; }

    /// The number of the thing in which that row is told.
    [[nodiscard]] std::size_t thing_of(std::size_t row) const { return thing_of_[row]; }

    /// What the marks stand for, each note with the man it is of.
    [[nodiscard]] const std::vector<std::string>& notes() const { return notes_; }

  private:
    Language language_;
    std::vector<const Uniform*> men_;
    std::vector<Footnotes> footnotes_;
    std::vector<ComparedThing> things_;
    std::vector<std::size_t> thing_of_;
    std::vector<std::string> notes_;
    /// The mark a man's plate gives a note, and the one it has here.
    std::vector<std::vector<std::pair<std::string, std::string>>> marks_;

    ComparedThing thing(const DifferingRow& row, const std::string& name);
    void add_trait(const DifferingRow& row, ComparedThing& to);
    std::string mark(std::size_t man, PropertyId id);
};

}  // namespace platewright::cli
