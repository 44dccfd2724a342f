// SPDX-License-Identifier: MIT
// The regiment's file of a plate and its regulations, each file read once.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "base/files.h"
#include "read/read.h"

namespace platewright::cli {

/// Paths count from the file that names them. Every problem of a file is told wherever the file is
/// needed. For one thread.
class OrdersLoader {
  public:
    OrdersLoader(const FileReader& files, SourceMap& sources) : files_(files), sources_(sources) {}

    /// What decides about the man of a plate; empty orders for a plate that stands alone, null
    /// after an error. Errors: those of reading, cli.cannot-read (at the name of the file),
    /// cli.wrong-file, cli.no-regulation, cli.two-regulations, cli.too-many-regulations,
    /// resolve.circle.
    std::shared_ptr<const Orders> of_plate(const SpecifiedPlate& plate, Diagnostics& to);

    /// The regulation in a file that was opened already: what it amends, then itself. Empty after
    /// an error. Who names its path later gets this file.
    std::vector<SpecifiedRegulation> of_regulation(FileId file, Diagnostics& to);

    /// The file of a plate that another file names. Errors: cli.cannot-read, cli.wrong-file.
    std::optional<FileId> open_plate(const WrittenText& named, Diagnostics& to) {
        return open(path_of(named), FileKind::plate, named.span, to);
    }

    /// The regiment in a file that was opened already, with its regulations; null after an error.
    std::shared_ptr<const Orders> of_regiment(FileId file, Diagnostics& to);

  private:
    /// One file, read.
    template <typename T>
    struct Loaded {
        std::optional<T> value;
        Diagnostics problems;
    };

    template <typename T>
    using Shelf = std::map<std::string, Loaded<T>>;

    template <typename T>
    const T* take(const Loaded<T>& loaded, Diagnostics& to) const;

    /// A path, and where it is written.
    struct Naming {
        const std::string& path;
        const Span& at;
    };

    /// The file of that path, read once however often it is named.
    template <typename T, typename Read>
    const T* named_file(
        Shelf<T>& known, FileKind kind, const Read& read, const Naming& naming, Diagnostics& to);
    std::optional<FileId> open(const std::string& path,
                               FileKind kind,
                               const Span& named,
                               Diagnostics& to);
    const SpecifiedRegulation* regulation(const std::string& path,
                                          const Span& named,
                                          Diagnostics& to);
    const SpecifiedRegiment* regiment(const std::string& path, const Span& named, Diagnostics& to);
    /// The regulation at that path and what it amends, the base first.
    std::vector<SpecifiedRegulation> editions(const std::string& path,
                                              const Span& named,
                                              Diagnostics& to);
    std::shared_ptr<const Orders> with_regulations(Orders orders,
                                                   const std::vector<WrittenText>& named,
                                                   Diagnostics& to);
    std::shared_ptr<const Orders> of_regiment_file(const SpecifiedPlate& plate, Diagnostics& to);
    [[nodiscard]] std::string path_of(const WrittenText& named) const;

    const FileReader& files_;
    SourceMap& sources_;
    Shelf<SpecifiedRegulation> regulations_;
    Shelf<SpecifiedRegiment> regiments_;
    /// By the paths of regiment and regulation.
    std::map<std::string, std::shared_ptr<const Orders>> orders_;
};

}  // namespace platewright::cli
