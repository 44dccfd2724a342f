// SPDX-License-Identifier: MIT
// The command line.
#pragma once

namespace platewright::cli {

/// Runs one command. Exit codes: 0 done, 1 bad data, 2 bad usage, 3 cannot read or write, 70 a
/// fault of ours.
int run(int argc, char** argv);

}  // namespace platewright::cli
