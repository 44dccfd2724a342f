// SPDX-License-Identifier: MIT
// The one printer of problems, for people.
#pragma once

#include <string>
#include <string_view>

#include "base/diagnostic.h"
#include "cli/exit_code.h"

namespace platewright::cli {

/// Every problem with its line and underline, in the order of `problems`, and a line that counts
/// them. After `limits::kProblemsShown` the rest is only counted. Empty if there is none.
std::string in_words(const Diagnostics& problems, const SourceMap& sources, bool coloured);

/// "2 errors, 1 warning".
std::string count_of(const Diagnostics& problems);

/// Standard error is a terminal that shows colours, and the user has nothing against them
/// (NO_COLOR).
bool wants_colour();

/// To standard error, at once.
void write_error(std::string_view text);

/// False if standard output did not take all of it.
bool write_output(std::string_view text);

/// The same for a command's answer: the exit code, and a message if it could not be given.
ExitCode answer(std::string_view text);

}  // namespace platewright::cli
