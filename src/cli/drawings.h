// SPDX-License-Identifier: MIT
// The drawings of the data folder: the views of each figure and the ornaments, read when needed.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/diagnostic.h"
#include "base/files.h"
#include "compose/compose.h"

namespace platewright::cli {

/// The views of one figure by name: `front`, `back`, `side`, `button`, `flat-coat-front` …
using Views = std::map<std::string, std::shared_ptr<const Template>>;

/// The files a view is drawn in, by path: its own first, then what is drawn onto it. `folder`
/// without a slash at the end.
std::vector<std::string> files_of_view(const FileReader& files,
                                       const std::string& folder,
                                       const std::string& view);

/// The view a file belongs to: `front` for `front-head.svg`.
std::string view_of_file(const std::string& file_name);

/// For one thread; what it hands out may be used by any.
class Drawings {
  public:
    Drawings(const FileReader& files, std::string data_folder, SourceMap& sources)
        : files_(files), data_folder_(std::move(data_folder)), sources_(sources) {}

    /// Take this one drawing for the front of every figure, and no other view.
    void use_only(std::string path) { only_ = std::move(path); }

    [[nodiscard]] bool has_only() const { return !only_.empty(); }

    /// The names of all views of a set, sorted.
    [[nodiscard]] std::vector<std::string> names(const std::string& set) const;

    /// A view, or null where it cannot be read; its problems are told at every plate that wants it.
    std::shared_ptr<const Template> view(const std::string& set,
                                         const std::string& name,
                                         Diagnostics& to);

    /// All ornaments of the data folder; null where one cannot be read.
    const Ornaments* ornaments(Diagnostics& to);

    /// A user's own drawing, by its path on the disk. Errors: cli.cannot-read and the template's.
    std::shared_ptr<const Template> own(const std::string& path, Diagnostics& to);

    /// A file that cannot be read was reported: not the fault of what is written in it.
    [[nodiscard]] bool missed_a_file() const { return missed_a_file_; }

  private:
    template <typename T>
    struct Loaded {
        T value;
        Diagnostics problems;
    };

    std::shared_ptr<const Template> read(const std::vector<std::string>& paths, Diagnostics& to);

    const FileReader& files_;
    std::string data_folder_;
    SourceMap& sources_;
    std::string only_;
    std::map<std::string, Loaded<std::shared_ptr<const Template>>> views_;
    std::map<std::string, Loaded<std::shared_ptr<const Template>>> own_;
    std::optional<Loaded<Ornaments>> ornaments_;
    bool missed_a_file_ = false;
};

}  // namespace platewright::cli
