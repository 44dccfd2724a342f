// SPDX-License-Identifier: MIT
// The subcommands, with what the user chose for each.
#pragma once

#include <string>
#include <vector>

#include "cli/exit_code.h"

namespace platewright::cli {

/// Options as written; the command itself checks them, so that its messages can say what to write.
struct DrawOptions {
    std::vector<std::string> files;
    std::string out;
    std::string format;
    std::string paper = "A4";
    std::string ink = "colour";
    std::string dpi = "300";
    /// Empty: as each sheet says itself.
    std::string language;
    std::string only_template;
    /// Empty: one for each processor.
    std::string jobs;
    bool timings = false;
};

/// What is to be checked.
struct CheckOptions {
    std::vector<std::string> files;
    bool json = false;
};

/// Which stage of which plate.
struct DumpOptions {
    std::string file;
    std::string stage;
    std::string paper = "A4";
    std::string ink = "colour";
    std::string only_template;
};

/// What is to be explained.
struct ExplainOptions {
    std::string file;
    /// Keys or groups of properties; empty: those about which somebody said something.
    std::vector<std::string> properties;
    bool all = false;
    bool json = false;
};

/// Two men, or one and what becomes of him.
struct ChangeOptions {
    std::vector<std::string> files;
    /// `rank=sergeant`.
    std::vector<std::string> to;
    bool json = false;
};

/// Pattern pieces for a cutter.
struct PiecesOptions {
    std::string file;
    std::string out;
};

/// What a man's clothing takes.
struct MaterialsOptions {
    std::string file;
    std::string format = "text";
};

/// Draws plates; problems go to standard error, the names of written files to standard output.
ExitCode draw(const DrawOptions& options);
/// Tells problems on standard error, or as JSON on standard output.
ExitCode check(const CheckOptions& options);
/// Why a man is dressed as he is, or what a regulation sets up, on standard output.
ExitCode explain(const ExplainOptions& options);
/// What turns one man into another, on standard output.
ExitCode change(const ChangeOptions& options);
/// Writes the pieces of a workshop sheet as DXF or SVG, at full size on one page.
ExitCode pieces(const PiecesOptions& options);
/// Prints what the garments of a workshop sheet take.
ExitCode materials(const MaterialsOptions& options);
/// The text dump of a stage on standard output.
ExitCode dump(const DumpOptions& options);

/// The JSON Schema of a plate on standard output.
ExitCode schema();

/// The reference page on standard output.
ExitCode reference();

/// Says what is wrong with the command line, and what to do.
ExitCode refuse_usage(const std::string& message, const std::string& hint);

}  // namespace platewright::cli
