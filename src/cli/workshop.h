// SPDX-License-Identifier: MIT
// Everything a plate needs besides itself, loaded once, and the way of a plate through the stages.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "base/files.h"
#include "cli/drawings.h"
#include "cli/orders.h"
#include "cli/timings.h"
#include "compose/compose.h"
#include "layout/printing.h"
#include "read/read.h"
#include "resolve/resolve.h"

namespace platewright::cli {

/// A plate that is read, with what it is to be drawn with.
struct Job {
    SpecifiedPlate plate;
    /// What else decides about the man; never null.
    std::shared_ptr<const Orders> orders;
    const SpecifiedCustoms* customs = nullptr;
    /// Empty if only `uniform_of` is wanted.
    Views views;
    /// Those of the data folder, and the plate's own.
    Ornaments ornaments;
};

/// Palettes, customs and templates are loaded when first needed, so that a command pays for what it
/// uses. Loading is for one thread; afterwards any number of threads may take their jobs through
/// the stages.
class Workshop {
  public:
    Workshop(const FileReader& files, std::string data_folder, SourceMap& sources)
        : files_(files),
          data_folder_(std::move(data_folder)),
          sources_(sources),
          drawings_(files, data_folder_, sources),
          orders_(files, sources) {}

    /// Draw every plate on this one template instead of its figure's.
    void use_template(std::string path) { drawings_.use_only(std::move(path)); }

    /// Let every sheet speak this language, whatever it says itself.
    void use_language(Language language) { language_ = language; }

    /// The language of a sheet that writes this; English if nobody says. A sheet of several men
    /// sets it on each Job's plate, which may speak another.
    [[nodiscard]] Language language_of(const std::optional<Language>& written) const {
        return language_ ? *language_ : written.value_or(Language::english);
    }

    /// Reads a plate and loads what it needs; `with_views`: the templates too.
    /// Adds cli.not-a-plate, cli.unknown-figure, cli.unknown-view, cli.unknown-ornament, and what
    /// the stages add. Problems of the data are added at every plate that needs it.
    std::optional<Job> prepare(FileId plate, bool with_views, Diagnostics& to, Timings& timings);

    /// The same for a man who stands in no file of his own: described in code, or changed.
    std::optional<Job> prepare(SpecifiedPlate plate, bool with_views, Diagnostics& to);

    /// The same for a plate that another file names, to be drawn in these views, whatever it says
    /// itself. Adds cli.cannot-read and cli.wrong-file too.
    std::optional<Job> prepare_named(const WrittenText& path,
                                     const std::vector<WrittenText>& views,
                                     Diagnostics& to,
                                     Timings& timings);

    /// The palettes; empty after an error.
    std::vector<SpecifiedPalette> all_palettes(Diagnostics& to);

    /// The standard sizes of the men that the job's figure stands for. Adds cli.cannot-read and the
    /// reader's errors.
    std::optional<SpecifiedSizes> sizes_of(const Job& job, Diagnostics& to);

    /// The text and name of every file that was read.
    [[nodiscard]] const SourceMap& sources() const { return sources_; }

    /// The regulation in a file, after what it amends; empty after an error.
    std::vector<SpecifiedRegulation> regulation_in(FileId file, Diagnostics& to);

    /// Reads and looks through a regulation with what it amends, or a regiment with its
    /// regulations.
    void check_regulation(FileId file, Diagnostics& to);
    void check_regiment(FileId file, Diagnostics& to);

    /// After `prepare`, from any thread.
    [[nodiscard]] std::optional<Uniform> uniform_of(const Job& job, Diagnostics& to) const;

    /// A file that cannot be read was reported: not the fault of what is written in it.
    [[nodiscard]] bool missed_a_file() const { return missed_a_file_ || drawings_.missed_a_file(); }

  private:
    /// What was loaded, with the problems of loading it.
    template <typename T>
    struct Loaded {
        std::optional<T> value;
        Diagnostics problems;
    };

    /// Whether templates are to be read, and which views instead of the plate's own.
    struct Wanted {
        bool views = false;
        const std::vector<WrittenText>* only = nullptr;
    };

    std::optional<Job> prepare(FileId plate,
                               const Wanted& wanted,
                               Diagnostics& to,
                               Timings& timings);
    void check_editions(const std::vector<SpecifiedRegulation>& editions, Diagnostics& to);
    /// Loads what the plate needs.
    std::optional<Job> equip(SpecifiedPlate plate, bool with_views, Diagnostics& to);
    const Loaded<std::vector<SpecifiedPalette>>& palettes();
    const Loaded<SpecifiedCustoms>& customs(const std::string& set);
    bool add_views(Job& job, const std::string& set, Diagnostics& to);
    bool add_ornaments(Job& job, Diagnostics& to);
    bool add_ornament(Job& job, const Decided& worn, Diagnostics& to);
    bool check_figure(const SpecifiedPlate& plate, const std::string& set, Diagnostics& to) const;
    std::optional<FileId> open(const std::string& name, std::size_t limit, Diagnostics& to);

    const FileReader& files_;
    std::string data_folder_;
    SourceMap& sources_;
    Drawings drawings_;
    OrdersLoader orders_;
    std::optional<Language> language_;
    std::optional<Loaded<std::vector<SpecifiedPalette>>> palettes_;
    std::map<std::string, Loaded<SpecifiedCustoms>> customs_;
    bool missed_a_file_ = false;
};

/// The views a plate shows, in its order; of an index those there are.
std::vector<const Template*> views_of(const Job& job);

/// The man on every view his plate asks for, for print at 1 : `scale`.
std::vector<Figure> figures_of(const Uniform& uniform,
                               const Job& job,
                               double scale,
                               Ink ink = Ink::colour);

/// The plate of a uniform. For any thread with a typesetter of its own.
Document plate_of(const Uniform& uniform,
                  const Job& job,
                  const Printing& printing,
                  const Typesetter& type,
                  Diagnostics& to,
                  Timings& timings);

}  // namespace platewright::cli
