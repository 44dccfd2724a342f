// SPDX-License-Identifier: MIT
// Sheets of any kind: which file makes which.
#include "cli/sheet.h"

#include <utility>

#include "base/limits.h"
#include "base/text.h"
#include "cli/chart.h"
#include "cli/comparison.h"
#include "cli/handout.h"
#include "cli/tailor.h"
#include "cli/wardrobe.h"

namespace platewright::cli {
namespace {

/// One man's plate, or the index of all he could wear.
class PlateSheet : public Sheet {
  public:
    PlateSheet(const Workshop& workshop, Job job) : workshop_(workshop), job_(std::move(job)) {}

    [[nodiscard]] std::optional<Document> draw(const Printing& printing,
                                               const Typesetter& type,
                                               Diagnostics& to,
                                               Timings& timings) const override {
        const auto uniform =
            timings.measure("resolve", [&] { return workshop_.uniform_of(job_, to); });
        if (!uniform) {
            return std::nullopt;
        }
        return job_.plate.wardrobe ? wardrobe_of(workshop_, job_, printing, type, to, timings)
                                   : plate_of(*uniform, job_, printing, type, to, timings);
    }

  private:
    const Workshop& workshop_;
    Job job_;
};

}  // namespace

std::unique_ptr<Sheet> prepare_sheet(Workshop& workshop,
                                     FileId file,
                                     Diagnostics& to,
                                     Timings& timings) {
    if (kind_of_file(workshop.sources().text(file)) == FileKind::chart) {
        return prepare_chart(workshop, file, to, timings);
    }
    if (kind_of_file(workshop.sources().text(file)) == FileKind::comparison) {
        return prepare_comparison(workshop, file, to, timings);
    }
    if (kind_of_file(workshop.sources().text(file)) == FileKind::handout) {
        return prepare_handout(workshop, file, to, timings);
    }
    if (kind_of_file(workshop.sources().text(file)) == FileKind::workshop) {
        return prepare_workshop_sheet(workshop, file, to, timings);
    }
    auto job = workshop.prepare(file, true, to, timings);
    return job ? std::make_unique<PlateSheet>(workshop, std::move(*job)) : nullptr;
}

std::vector<std::optional<Job>> men_of(Workshop& workshop,
                                       const std::vector<WrittenText>& paths,
                                       const std::vector<WrittenText>& views,
                                       Diagnostics& to,
                                       Timings& timings) {
    std::vector<std::optional<Job>> men;
    men.reserve(paths.size());
    for (const WrittenText& path : paths) {
        men.push_back(workshop.prepare_named(path, views, to, timings));
    }
    return men;
}

}  // namespace platewright::cli
