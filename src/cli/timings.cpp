// SPDX-License-Identifier: MIT
// How long each stage took.
#include "cli/timings.h"

#include <algorithm>

#include "base/text.h"

namespace platewright::cli {

void Timings::add(std::string_view stage, double milliseconds) {
    const auto found = std::find_if(
        stages_.begin(), stages_.end(), [stage](const Stage& each) { return each.name == stage; });
    if (found == stages_.end()) {
        stages_.push_back({std::string(stage), milliseconds});
    } else {
        found->milliseconds += milliseconds;
    }
}

void Timings::add(const Timings& other) {
    for (const Stage& stage : other.stages_) {
        add(stage.name, stage.milliseconds);
    }
}

std::string Timings::in_words() const {
    std::string text;
    for (const Stage& stage : stages_) {
        text += stage.name + " " + format_number(stage.milliseconds, 2) + " ms\n";
    }
    return text;
}

}  // namespace platewright::cli
