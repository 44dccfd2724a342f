// SPDX-License-Identifier: MIT
// A man's measures as a tailor takes them: one table of what they are called and how they are
// taken, and the rules by which they are believed.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace platewright {

/// The measures, by the names of ISO 8559-1:2017.
enum class BodyMeasure {
    height,
    chest,
    waist,
    hip,
    neck,
    nape_to_waist,
    arm,
    inside_leg,
    upper_arm,
    knee,
    lower_knee,
    calf,
    least_leg
};

/// How many there are.
inline constexpr std::size_t kBodyMeasures = 13;

/// One measure.
struct BodyRow {
    BodyMeasure measure = BodyMeasure::height;
    /// As written in a file and printed: `chest girth`.
    std::string_view name;
    /// Other names, separated by `|`: `bust girth`.
    std::string_view other_names;
    /// How it is taken, for the reference page and the table on the sheet.
    std::string_view taken;
    /// Least and most that is believed of a grown man, mm.
    double least = 0;
    double most = 0;
};

/// The rows, in the order of `BodyMeasure`.
std::span<const BodyRow> body_rows();

/// The measure of that name, or nothing.
std::optional<BodyMeasure> find_body_measure(std::string_view name);

/// All measures of one man, mm.
struct Body {
    std::array<double, kBodyMeasures> mm{};

    [[nodiscard]] double of(BodyMeasure measure) const {
        return mm[static_cast<std::size_t>(measure)];
    }

    double& of(BodyMeasure measure) { return mm[static_cast<std::size_t>(measure)]; }
};

/// The man whom the templates are drawn for.
const Body& reference_body();

/// What a man's measures have in common and his do not.
struct BodyDoubt {
    BodyMeasure about = BodyMeasure::height;
    /// One line: "a waist girth of 1100 mm with a chest girth of 900 mm".
    std::string found;
    /// The rule that speaks against it, with its source.
    std::string rule;
};

/// Everything that is unlikely of these measures together; to be measured once more, not an error.
std::vector<BodyDoubt> doubts_about(const Body& body);

/// The measures of a man of whom only some are known: the others follow from a standard size in the
/// proportion of the known ones of their kind (lengths with the height, girths with the chest).
Body completed(const Body& size, const std::array<std::optional<double>, kBodyMeasures>& known);

}  // namespace platewright
