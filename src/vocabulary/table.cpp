// SPDX-License-Identifier: MIT
// The table of properties: one row for everything that can be said of a uniform.
#include <array>

#include "vocabulary/property.h"
#include "vocabulary/rows_coat.h"
#include "vocabulary/rows_man.h"
#include "vocabulary/rows_marks.h"

namespace platewright {

namespace {

/// All rows in the order of dressing: what is put on first comes first.
constexpr auto all_rows() {
    std::array<Property,
               rows::kMan.size() + rows::kCoat.size() + rows::kMarks.size() + rows::kKit.size() +
                   rows::kHat.size()>
        all{};
    auto* next = all.data();
    const auto append = [&next](const auto& part) {
        for (const Property& row : part) {
            *next++ = row;
        }
    };
    append(rows::kMan);
    append(rows::kCoat);
    append(rows::kMarks);
    append(rows::kKit);
    append(rows::kHat);
    return all;
}

constexpr std::array kTable = all_rows();

/// The `count` rows from `first` on.
constexpr std::span<const Property> stretch(std::size_t first, std::size_t count) {
    return std::span(kTable).subspan(first, count);
}

constexpr std::size_t kCoatAt = rows::kMan.size();
constexpr std::size_t kMarksAt = kCoatAt + rows::kCoat.size();
constexpr std::size_t kKitAt = kMarksAt + rows::kMarks.size();
constexpr std::size_t kHatAt = kKitAt + rows::kKit.size();

constexpr std::array kChapters = std::to_array<Chapter>({
    {"The man, and what is under the coat", stretch(0, rows::kMan.size())},
    {"The coat", stretch(kCoatAt, rows::kCoat.size())},
    {"Marks of rank and service", stretch(kMarksAt, rows::kMarks.size())},
    {"Belts and equipment", stretch(kKitAt, rows::kKit.size())},
    {"Hats and caps", stretch(kHatAt, rows::kHat.size())},
});

}  // namespace

std::span<const Property> properties() {
    return kTable;
}

std::span<const Chapter> chapters() {
    return kChapters;
}

}  // namespace platewright
