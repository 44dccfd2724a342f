// SPDX-License-Identifier: MIT
// `platewright schema` and `platewright reference`: what is made from the table of properties.
#include "cli/commands.h"
#include "cli/print.h"
#include "vocabulary/schema.h"

namespace platewright::cli {

ExitCode schema() {
    return answer(json_schema());
}

ExitCode reference() {
    return answer(reference_page());
}

}  // namespace platewright::cli
