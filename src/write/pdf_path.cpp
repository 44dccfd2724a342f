// SPDX-License-Identifier: MIT
// Paths in the operators of a PDF (ISO 32000-1, 8.5.2).
#include "write/pdf_path.h"

#include "write/numbers.h"

namespace platewright {

void append_pdf_path(std::string& to, const Path& path, const Grid& grid) {
    const Path steps = on_grid(path, grid);
    auto point = steps.points.begin();
    const auto append = [&](int count, char verb) {
        for (int i = 0; i < count; ++i, ++point) {
            append_steps(to, to_steps(point->x, 0), grid.places);
            to += ' ';
            append_steps(to, to_steps(point->y, 0), grid.places);
            to += ' ';
        }
        to += verb;
        to += '\n';
    };
    for (const Path::Verb verb : steps.verbs) {
        switch (verb) {
            case Path::Verb::move:
                append(1, 'm');
                break;
            case Path::Verb::line:
                append(1, 'l');
                break;
            case Path::Verb::cubic:
                append(3, 'c');
                break;
            case Path::Verb::close:
                append(0, 'h');
                break;
        }
    }
}

}  // namespace platewright
