// SPDX-License-Identifier: MIT
// Paths in the operators of a PDF (ISO 32000-1, 8.5.2).
#include "write/pdf_path.h"

#include "write/numbers.h"

namespace platewright {

void append_pdf_path(std::string& to, const Path& path, int places) {
    auto point = path.points.begin();
    const auto append = [&](int count, char verb) {
        for (int i = 0; i < count; ++i, ++point) {
            append_short(to, point->x, places);
            to += ' ';
            append_short(to, point->y, places);
            to += ' ';
        }
        to += verb;
        to += '\n';
    };
    for (const Path::Verb verb : path.verbs) {
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
