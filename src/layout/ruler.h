// SPDX-License-Identifier: MIT
// Measuring words: a typesetter that remembers, since a plate tries the same words at many sizes.
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>
#include <vector>

#include "text/typesetter.h"

namespace platewright::sheet {

/// Widths and line breaks, in mm. One for each plate; not for two threads.
class Ruler {
  public:
    explicit Ruler(const Typesetter& type) : type_(type) {}

    /// Advance width of one line; type is scaled from one measuring, which is exact for outline
    /// type without hinting.
    double width(const std::string& words, const Type& type);

    /// Lines no wider than `room`.
    std::vector<std::string> lines(const std::string& words, const Type& type, double room);

    /// The same, and no short word alone on the last of them where others can join it without
    /// another line.
    std::vector<std::string> lines_in_company(const std::string& words,
                                              const Type& type,
                                              double room);

    /// As `lines`, for running text in that language, whose words are parted with hyphens.
    std::vector<std::string> lines(const std::string& words,
                                   const Type& type,
                                   double room,
                                   const std::string& language);

    /// Whether the last of several lines is a single word narrower than that.
    bool ends_alone(const std::vector<std::string>& set, const Type& type, double narrow);

    /// Room below which a word must be broken inside.
    double least_width(const std::string& words, const Type& type, const std::string& language);

    /// Whether the words run from right to left.
    bool runs_leftward(const std::string& words);

    /// As few lines as `lines` gives, made as even as they can be, for titles.
    std::vector<std::string> even_lines(const std::string& words, const Type& type, double room);

    /// The words of a label: on two lines, if it takes two, parted after a comma or a colon rather
    /// than within what belongs together (`collar: sea green,` and not `collar: sea`), and even.
    std::vector<std::string> label_lines(const std::string& words, const Type& type, double room);

    /// Rise and fall of the face at that size.
    LineMeasures measures(const Type& type);

  private:
    const Typesetter& type_;
    /// Face, kind of figures, size of type, room, words: all that decides where lines end.
    using Wrapping = std::tuple<Face, bool, double, double, std::string>;
    /// Face, kind of figures, tracking in ems, language and words of what may be narrowest.
    using Narrowing = std::tuple<Face, bool, double, std::string, std::string>;

    std::map<std::tuple<Face, bool, std::string>, double> widths_;
    std::map<Wrapping, std::vector<std::string>> wrapped_;
    std::map<Narrowing, double> narrowest_;
    std::map<Face, LineMeasures> measures_;
};

/// That type, with lining figures where the words are a measure or a number (`11 mm`) or end in a
/// scale (`front   1 : 10`).
Type with_figures(const std::string& words, const Type& type);

/// The words on one line: line ends, tabs and other control characters become spaces, outer spaces
/// go.
std::string on_one_line(std::string_view words);

}  // namespace platewright::sheet
