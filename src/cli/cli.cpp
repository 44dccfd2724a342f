// SPDX-License-Identifier: MIT
// The command line: which command, and what its mistakes are called.
#include "cli/cli.h"

#include <CLI/App.hpp>
#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>
#include <exception>
#include <functional>
#include <string>
#include <utility>
#include <vector>

#include "base/text.h"
#include "cli/commands.h"
#include "cli/excerpt.h"
#include "cli/print.h"

namespace platewright::cli {
namespace {

/// The command the user was in, for the hint.
std::string help_hint(const CLI::App& app) {
    const auto chosen = app.get_subcommands();
    const std::string command = chosen.empty() ? "" : " " + chosen.front()->get_name();
    return "'platewright" + command + " --help' tells what can be written";
}

/// Names of the commands, or of the options of the command the user was in.
std::vector<std::string> known_words(const CLI::App& app) {
    std::vector<std::string> words;
    const auto chosen = app.get_subcommands();
    if (chosen.empty()) {
        for (const CLI::App* command : app.get_subcommands([](const CLI::App*) { return true; })) {
            words.push_back(command->get_name());
        }
        return words;
    }
    for (const CLI::Option* option : chosen.front()->get_options()) {
        for (const std::string& name : option->get_lnames()) {
            words.push_back("--" + name);
        }
    }
    return words;
}

ExitCode refuse_extra(const CLI::App& app) {
    const std::vector<std::string> extra = app.remaining(true);
    const std::string word = extra.empty() ? "" : extra.front();
    const bool option = word.starts_with('-');
    const auto near = nearest_word(word.substr(0, word.find('=')), known_words(app));
    const std::string kind = option                          ? " is no option"
                             : app.get_subcommands().empty() ? " is no command"
                                                             : " has no place here";
    return refuse_usage(platewright::quoted(word) + kind,
                        near ? "did you mean " + platewright::quoted(*near) + "?" : help_hint(app));
}

/// The library's errors in our words.
ExitCode refuse(const CLI::App& app, const CLI::ParseError& error) {
    const auto* extra = dynamic_cast<const CLI::ExtrasError*>(&error);
    if (extra != nullptr) {
        return refuse_extra(app);
    }
    if (dynamic_cast<const CLI::RequiredError*>(&error) != nullptr) {
        if (app.get_subcommands().empty()) {
            return app.remaining(true).empty() ? refuse_usage("no command is given", help_hint(app))
                                               : refuse_extra(app);
        }
        const std::string what = error.what();
        const bool stage = what.find("--stage") != std::string::npos;
        return refuse_usage(stage ? "no stage is given" : "no file is given", help_hint(app));
    }
    if (dynamic_cast<const CLI::ArgumentMismatch*>(&error) != nullptr) {
        const std::string what = error.what();
        const std::string option = what.substr(0, what.find_first_of(": "));
        return refuse_usage(platewright::quoted(option) + " needs exactly one value",
                            help_hint(app));
    }
    return refuse_usage("the command line cannot be understood", help_hint(app));
}

/// Where the explanations of the help begin.
constexpr std::size_t kHelpColumn = 22;

using Run = std::function<ExitCode()>;

void describe_draw(CLI::App& app, DrawOptions& options) {
    app.add_option("FILE", options.files, "descriptions to draw; - reads one from standard input")
        ->required()
        ->type_name("");
    app.add_option("-o,--output",
                   options.out,
                   "file to write, or a folder/, made if missing; - is standard output (else "
                   "FILE.pdf here)")
        ->type_name("OUT");
    app.add_option("--format", options.format, "svg, pdf or png (else what OUT ends in, else pdf)")
        ->type_name("FORMAT");
    app.add_option("--paper",
                   options.paper,
                   "A4, A3, letter, tabloid, or width by height: 210x297mm (else A4)")
        ->type_name("PAPER");
    app.add_option(
           "--ink", options.ink, "colour, greyscale, or hatched for a photocopier (else colour)")
        ->type_name("INK");
    app.add_option("--dpi", options.dpi, "dots to the inch of a PNG (else 300)")->type_name("N");
    app.add_option("--language",
                   options.language,
                   "en, fr or de, whatever the sheets say themselves (else as they say, else en)")
        ->type_name("CODE");
    app.add_option("--template",
                   options.only_template,
                   "draw on this one template instead of the figure's front and back")
        ->type_name("SVG");
    app.add_option("--jobs", options.jobs, "plates to draw at the same time (else one a processor)")
        ->type_name("N");
    app.add_flag("--timings", options.timings, "tell how long each stage took");
    app.footer(
        "Examples:\n"
        "  platewright draw private.yaml                   writes private.pdf\n"
        "  platewright draw private.yaml -o private.svg    the format follows the ending\n"
        "  platewright draw plates/*.yaml -o sheets/ --format png --dpi 150");
}

void describe_check(CLI::App& app, CheckOptions& options) {
    app.add_option("FILE",
                   options.files,
                   "plates, palettes, customs (.yaml) and templates (.svg); - reads standard input")
        ->required()
        ->type_name("");
    app.add_flag(
        "--json", options.json, "for editors and scripts: one JSON array on standard output");
    app.footer(
        "Examples:\n"
        "  platewright check plates/*.yaml palettes/*.yaml\n"
        "  platewright check templates/line-infantry/front.svg");
}

void describe_dump(CLI::App& app, DumpOptions& options) {
    app.add_option("FILE", options.file, "description of a plate; - reads standard input")
        ->required()
        ->type_name("");
    app.add_option("--stage", options.stage, "read, resolve, compose or layout")
        ->required()
        ->type_name("STAGE");
    app.add_option("--paper", options.paper, "paper for the stage layout (else A4)")
        ->type_name("PAPER");
    app.add_option("--ink",
                   options.ink,
                   "colour, greyscale or hatched, for the stages compose and layout (else colour)")
        ->type_name("INK");
    app.add_option("--template",
                   options.only_template,
                   "use this one template instead of the figure's front and back")
        ->type_name("SVG");
    app.footer(
        "Example:\n"
        "  platewright dump --stage resolve private.yaml    every decision with its reason");
}

void describe_explain(CLI::App& app, ExplainOptions& options) {
    app.add_option(
           "FILE", options.file, "a plate, a regiment or a regulation; - reads standard input")
        ->required()
        ->type_name("");
    app.add_option("PROPERTY",
                   options.properties,
                   "tell only of these: lapels, or lapels.cloth (else of all about which somebody "
                   "said something)")
        ->type_name("");
    app.add_flag("--all", options.all, "tell also what is left to the built-in defaults");
    app.add_flag("--json", options.json, "for scripts: one JSON object");
    app.footer(
        "Examples:\n"
        "  platewright explain private.yaml cuffs buttons.metal    who decides it, and on what "
        "source\n"
        "  platewright explain regulation.yaml    its regiments, companies and ranks");
}

void describe_change(CLI::App& app, ChangeOptions& options) {
    app.add_option("FILE", options.files, "one man, and the other; - reads standard input")
        ->required()
        ->type_name("");
    app.add_option("--to",
                   options.to,
                   "what becomes of the one man: rank=sergeant, company=grenadiers; as often as "
                   "needed")
        ->expected(1)
        ->take_all()
        ->type_name("KEY=VALUE");
    app.add_flag("--json", options.json, "for scripts: one JSON object");
    app.footer(
        "Examples:\n"
        "  platewright change private.yaml --to rank=corporal    what a promotion costs\n"
        "  platewright change private.yaml drummer.yaml              what a transfer costs");
}

void describe_pieces(CLI::App& app, PiecesOptions& options) {
    app.add_option("FILE", options.file, "a workshop sheet; - reads standard input")
        ->required()
        ->type_name("");
    app.add_option("-o,--output", options.out, "the file to write; its ending says .dxf or .svg")
        ->required()
        ->type_name("FILE");
    app.footer(
        "Example:\n"
        "  platewright pieces workshop.yaml -o pieces.dxf    for a cutter or a plotter, in mm");
}

void describe_materials(CLI::App& app, MaterialsOptions& options) {
    app.add_option("FILE", options.file, "a workshop sheet; - reads standard input")
        ->required()
        ->type_name("");
    app.add_option("--format", options.format, "text, csv or json (else text)")
        ->type_name("FORMAT");
    app.footer(
        "Example:\n"
        "  platewright materials workshop.yaml --format csv > shopping.csv");
}

/// Everything that can be written on the command line, and what was.
class CommandLine {
  public:
    CommandLine() {
        app_.name("platewright");
        app_.require_subcommand(1);
        const auto labels = app_.get_formatter();
        labels->label("Positionals", "Files");
        labels->label("SUBCOMMAND", "COMMAND");
        labels->label("Subcommands", "Commands");
        labels->label("REQUIRED", "");
        labels->column_width(kHelpColumn);
        app_.set_help_flag("-h,--help", "print this help");
        app_.set_version_flag(
            "--version", std::string("platewright ") + PLATEWRIGHT_VERSION, "print the version");
        app_.footer(
            "Example:\n"
            "  platewright draw private.yaml    writes private.pdf\n\n"
            "'platewright draw --help' tells more of a command.");
        describe_draw(
            add("draw", "Draw plates from their descriptions", [this] { return draw(draw_); }),
            draw_);
        describe_check(add("check",
                           "Tell what is wrong with descriptions, palettes and templates",
                           [this] { return check(check_); }),
                       check_);
        describe_explain(add("explain",
                             "Tell why a man is dressed as he is, or what a regulation sets up",
                             [this] { return explain(explain_); }),
                         explain_);
        describe_change(add("change",
                            "Tell what to buy, sew on and take off to turn one man into another",
                            [this] { return change(change_); }),
                        change_);
        describe_pieces(add("pieces",
                            "Write pattern pieces at full size, for a cutter or a plotter",
                            [this] { return pieces(pieces_); }),
                        pieces_);
        describe_materials(add("materials",
                               "Tell what cloth, lace and buttons a man's clothing takes",
                               [this] { return materials(materials_); }),
                           materials_);
        describe_dump(add("dump",
                          "Show as text what a stage makes of a plate",
                          [this] { return dump(dump_); }),
                      dump_);
        add("schema", "Print the JSON Schema of a plate, for editors", schema)
            .footer(
                "Example:\n"
                "  platewright schema > plate.schema.json    an editor that knows it completes the "
                "keys");
        add("reference", "Print everything that can be written, on one page", reference)
            .footer(
                "Example:\n"
                "  platewright reference | less");
    }

    ExitCode run(int argc, char** argv) {
        try {
            app_.parse(argc, argv);
        } catch (const CLI::CallForHelp&) {
            const auto commands = app_.get_subcommands();
            return answer(commands.empty() ? app_.help() : commands.front()->help(app_.get_name()));
        } catch (const CLI::CallForVersion& version) {
            return answer(std::string(version.what()) + "\n");
        } catch (const CLI::ParseError& error) {
            return refuse(app_, error);
        }
        return chosen_();
    }

  private:
    CLI::App& add(const std::string& name, const std::string& does, Run run) {
        CLI::App* command = app_.add_subcommand(name, does)->group("Commands");
        command->callback([this, run = std::move(run)] { chosen_ = run; });
        return *command;
    }

    CLI::App app_{"Draws uniforms as plates, from descriptions in plain words."};
    DrawOptions draw_;
    CheckOptions check_;
    ExplainOptions explain_;
    ChangeOptions change_;
    DumpOptions dump_;
    PiecesOptions pieces_;
    MaterialsOptions materials_;
    Run chosen_;
};

}  // namespace

ExitCode refuse_usage(const std::string& message, const std::string& hint) {
    write_error("platewright: error: " + visible(message) + "\n  hint: " + visible(hint) + "\n");
    return ExitCode::bad_usage;
}

int run(int argc, char** argv) {
    try {
        return CommandLine().run(argc, argv);
    } catch (const std::exception& fault) {
        write_error("platewright: internal error: " + visible(fault.what()) + "\n");
        return ExitCode::our_fault;
    }
}

}  // namespace platewright::cli
