// SPDX-License-Identifier: MIT
// Type: the faces, their measures and line breaking. The same shaping library draws the PDF and
// PNG, so widths are true.
#pragma once

#include <memory>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include "base/drawing.h"

namespace platewright {

/// The type family, or the patterns for parting words, are not on this machine. `what()` is one
/// line for the user that tells how to install them; the command line prints it and leaves with
/// "cannot read".
class FontsMissing : public std::runtime_error {
  public:
    using std::runtime_error::runtime_error;
};

/// A face at a size, in mm. `tracking` is added between letters (not after the last) and turns
/// ligatures off. `lining`: figures as high as capitals, where an old-style 1 would be taken for a
/// Roman one.
struct Type {
    Face face = Face::roman;
    double size = 4;
    double tracking = 0;
    bool lining = false;
};

/// Rise and fall of a face about the baseline, in mm, all positive.
struct LineMeasures {
    double ascent = 0;
    double descent = 0;
    double x_height = 0;
};

/// Sets type in EB Garamond, unhinted, so that every length is proportional to the size. Its
/// figures are old-style unless lining ones are asked for. Characters the family lacks (Hebrew,
/// Chinese …) come from whatever the system has; the bold face has ASCII and little more, and words
/// with other letters are set in roman instead. Words may be any bytes: what is not valid UTF-8 and
/// control characters are replaced, and only the first 16 KB are set. Not for use by two threads at
/// once; make one for each.
class Typesetter {
  public:
    /// Throws FontsMissing.
    Typesetter();
    ~Typesetter();
    Typesetter(const Typesetter&) = delete;
    Typesetter& operator=(const Typesetter&) = delete;

    /// Advance width of one line, in mm.
    [[nodiscard]] double width(std::string_view words, const Type& type) const;

    [[nodiscard]] LineMeasures measures(const Type& type) const;

    /// Lines no wider than `width` mm, broken where Unicode allows and at line feeds; a single word
    /// that is too long is broken inside. White space at the ends of lines is dropped. No words: no
    /// lines.
    [[nodiscard]] std::vector<std::string> wrap(std::string_view words,
                                                const Type& type,
                                                double width) const;

    /// The same for running text in that language (`en`, `fr`, `de`): words are also parted with a
    /// hyphen. Throws FontsMissing.
    [[nodiscard]] std::vector<std::string> wrap(std::string_view words,
                                                const Type& type,
                                                double width,
                                                std::string_view language) const;

    /// Width of the longest piece that `wrap` would not break, in mm: in anything narrower a word
    /// is broken inside.
    [[nodiscard]] double least_width(std::string_view words,
                                     const Type& type,
                                     std::string_view language) const;

    /// The first letter with a direction runs leftward.
    [[nodiscard]] bool runs_leftward(std::string_view words) const;

    struct Impl;

    [[nodiscard]] Impl& impl() const { return *impl_; }

  private:
    std::unique_ptr<Impl> impl_;
};

}  // namespace platewright
