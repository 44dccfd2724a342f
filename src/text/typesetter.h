// SPDX-License-Identifier: MIT
// Type: the faces, their measures and line breaking. The same shaping library draws the PDF and PNG, so widths are true.
#pragma once

#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "base/drawing.h"

namespace platewright {

/// A face at a size, in mm.
struct Type {
    Face face = Face::roman;
    double size = 4;
    double tracking = 0;
};

/// Rise and fall of a face about the baseline, in mm, both positive.
struct LineMeasures {
    double ascent = 0;
    double descent = 0;
    double x_height = 0;
};

/// Not for use by two threads at once; make one for each.
class Typesetter {
  public:
    Typesetter();
    ~Typesetter();
    Typesetter(const Typesetter&) = delete;
    Typesetter& operator=(const Typesetter&) = delete;

    /// Advance width of one line, in mm.
    [[nodiscard]] double width(std::string_view words, const Type& type) const;

    [[nodiscard]] LineMeasures measures(const Type& type) const;

    /// Lines no wider than `width` mm, broken where Unicode allows; a single word that is too long is broken inside.
    [[nodiscard]] std::vector<std::string> wrap(std::string_view words, const Type& type, double width) const;

    struct Impl;
    [[nodiscard]] Impl& impl() const { return *impl_; }

  private:
    std::unique_ptr<Impl> impl_;
};

}  // namespace platewright
