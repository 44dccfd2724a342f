// SPDX-License-Identifier: MIT
// Names that must be fit for something: a folder, a look-up.
#include "read/names.h"

#include <string>

#include "base/text.h"
#include "read/keys.h"

namespace platewright {

bool check_set_name(const WrittenText& name, Diagnostics& to) {
    if (name.text.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") == std::string::npos) {
        return true;
    }
    to.error("read.bad-name", name.span, shown(name.text) + " is not the name of a figure")
        .hints.emplace_back(
            "write a name such as 'line-infantry': small letters, digits and hyphens");
    return false;
}

bool check_name(const WrittenText& name, Diagnostics& to) {
    const std::string word = lower(name.text);
    if (word != "none" && !word.starts_with("as ") && !word.starts_with("the ") &&
        !word.starts_with('#')) {
        return true;
    }
    to.error("read.bad-name", name.span, shown(name.text) + " cannot be a name")
        .hints.emplace_back(
            "'none', and words that begin with '#', 'as' or 'the', mean something else");
    return false;
}

void report_repeated_name(const WrittenText& second, const Span& first, Diagnostics& to) {
    Diagnostic& problem =
        to.error("read.duplicate-name", second.span, shown(second.text) + " is named twice");
    problem.labels.push_back({first, "first named here"});
    problem.hints.emplace_back("give one of them another name");
}

}  // namespace platewright
