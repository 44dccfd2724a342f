// SPDX-License-Identifier: MIT
// `platewright schema` and `platewright reference`: what is made from the table of properties.

#include "cli/commands.h"
#include "cli/print.h"
#include "vocabulary/schema.h"

namespace platewright::cli {
namespace {

ExitCode print(const std::string& text) {
    return write_output(text) ? ExitCode::done : ExitCode::cannot_read_or_write;
}

}  // namespace

ExitCode schema() {
    return print(json_schema());
}

ExitCode reference() {
    return print(reference_page());
}

}  // namespace platewright::cli
