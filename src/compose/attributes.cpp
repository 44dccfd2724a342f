// SPDX-License-Identifier: MIT
// Reading the words on one element of a template.
#include "compose/attributes.h"

#include <algorithm>
#include <cmath>

#include "base/limits.h"
#include "base/text.h"
#include "compose/svg_shapes.h"

namespace platewright {

Attributes::Attributes(pugi::xml_node element,
                       const SourceMap& sources,
                       FileId file,
                       Diagnostics& to)
    : element_(element), sources_(sources), file_(file), to_(to) {}

Span Attributes::here() const {
    const std::string& text = sources_.text(file_);
    const auto begin =
        static_cast<std::size_t>(std::max<std::ptrdiff_t>(0, element_.offset_debug()));
    const std::size_t end = text.find_first_of(" \t\r\n/>", begin);
    return {file_, begin, std::min(end, text.size())};
}

Span Attributes::place(const std::string& attribute) const {
    const Span tag = here();
    const std::string_view file = sources_.text(file_);
    // Not further than the tag: what is not in it may not be in the file either.
    const std::string_view text = file.substr(0, file.find('>', tag.end));
    const std::size_t stop = text.size();
    std::size_t at = tag.end;
    while ((at = text.find(attribute, at)) < stop) {
        const std::size_t after = at + attribute.size();
        const bool whole =
            std::string_view(" \t\r\n").find(text[at - 1]) != std::string_view::npos &&
            after < stop && (text[after] == '=' || text[after] == ' ');
        if (whole) {
            const std::size_t open = text.find_first_of("\"'", after);
            const std::size_t shut = open < stop ? file.find(file[open], open + 1) : stop;
            return {file_, at, std::min(shut + 1, file.size())};
        }
        at = after;
    }
    return tag;
}

std::optional<std::string> Attributes::words(const std::string& name) {
    const std::string full = "data-" + name;
    read_.insert(full);
    const pugi::xml_attribute found = element_.attribute(full.c_str());
    if (found.empty()) {
        return std::nullopt;
    }
    return std::string(trim(found.value()));
}

void Attributes::number(const std::string& name, double& into, double least, double most) {
    const auto text = words(name);
    if (!text) {
        return;
    }
    const auto numbers = parse_numbers(*text);
    if (!numbers || numbers->size() != 1 || numbers->front() < least || numbers->front() > most) {
        to_.error("template.number",
                  place("data-" + name),
                  "data-" + name + " should be a number from " + format_number(least, 2) + " to " +
                      format_number(most, 2) + ", not " + quoted(*text));
        return;
    }
    into = numbers->front();
}

void Attributes::numbers(const std::string& name,
                         std::vector<double>& into,
                         double least,
                         double most) {
    const auto text = words(name);
    if (!text) {
        return;
    }
    const auto numbers = parse_numbers(*text);
    const bool good =
        numbers && !numbers->empty() && std::ranges::all_of(*numbers, [&](double number) {
            return number >= least && number <= most;
        });
    if (!good) {
        to_.error("template.number",
                  place("data-" + name),
                  "data-" + name + " should be numbers from " + format_number(least, 2) + " to " +
                      format_number(most, 2) + " with blanks between, not " + quoted(*text));
        return;
    }
    into = *numbers;
}

void Attributes::property(const std::string& name, std::optional<PropertyId>& into) {
    const auto text = words(name);
    if (!text) {
        return;
    }
    into = find_property(*text);
    if (!into) {
        std::vector<std::string> keys;
        for (const Property& row : properties()) {
            keys.emplace_back(row.key);
        }
        Diagnostic& error = to_.error("template.unknown-property",
                                      place("data-" + name),
                                      "there is no property " + quoted(*text));
        if (const auto near = nearest_word(*text, keys)) {
            error.hints.push_back("did you mean '" + *near + "'?");
        }
    }
}

void Attributes::condition(Condition& into) {
    const auto text = words("when");
    if (!text) {
        return;
    }
    std::string problem;
    if (auto condition = parse_condition(*text, problem)) {
        into = std::move(*condition);
    } else {
        to_.error("template.condition", place("data-when"), problem);
    }
}

bool Attributes::cloth(ClothSource& into) {
    number("shade", into.shade, 0, 3);
    const auto text = words("cloth");
    if (!text) {
        return false;
    }
    if (*text == "ornament") {
        into.given = true;
        return true;
    }
    if (const auto colour = parse_hex(*text)) {
        into.fixed = *colour;
        into.property.reset();
        return true;
    }
    property("cloth", into.property);
    if (into.property) {
        const Kind kind = properties()[*into.property].kind;
        if (kind != Kind::cloth && kind != Kind::metal) {
            to_.error("template.not-a-cloth",
                      place("data-cloth"),
                      quoted(*text) + " is not a cloth or metal, so nothing can be made of it");
        }
    }
    return true;
}

void Attributes::device(std::optional<PropertyId>& into) {
    property("of", into);
    if (!into) {
        if (!words("of")) {
            to_.error("template.missing",
                      here(),
                      "an ornament needs data-of: the property that says which it is");
        }
    } else if (properties()[*into].kind != Kind::ornament) {
        to_.error("template.not-an-ornament",
                  place("data-of"),
                  quoted(properties()[*into].key) + " does not speak of ornaments");
    }
}

void Attributes::count(Detail& into) {
    const auto text = words("number");
    if (!text) {
        to_.error("template.missing",
                  here(),
                  "this trimming needs data-number: how many, or the property that says so");
        return;
    }
    const auto numbers = parse_numbers(*text);
    if (numbers && numbers->size() == 1) {
        double value = 0;
        number("number", value, 0, limits::kStations);
        into.count = static_cast<int>(std::lround(value));
        return;
    }
    property("number", into.count_from);
    if (into.count_from && properties()[*into.count_from].kind != Kind::count) {
        to_.error("template.not-a-count", place("data-number"), quoted(*text) + " is not a count");
    }
}

std::optional<std::size_t> Attributes::choice(const std::string& name,
                                              const std::vector<std::string>& allowed) {
    const auto text = words(name);
    if (!text) {
        return std::nullopt;
    }
    const auto found = std::ranges::find(allowed, *text);
    if (found == allowed.end()) {
        to_.error("template.choice",
                  place("data-" + name),
                  "data-" + name + " should be " + or_list(allowed) + ", not " + quoted(*text));
        return std::nullopt;
    }
    return static_cast<std::size_t>(found - allowed.begin());
}

std::vector<std::string> Attributes::names(const std::string& name) {
    std::vector<std::string> found;
    const std::string text = words(name).value_or("");
    for (const std::string_view word : split(text, ' ')) {
        if (!trim(word).empty()) {
            found.emplace_back(trim(word));
        }
    }
    return found;
}

void Attributes::report_unread() {
    for (const pugi::xml_attribute& attribute : element_.attributes()) {
        const std::string name = attribute.name();
        if (!name.starts_with("data-") || read_.contains(name)) {
            continue;
        }
        const std::vector<std::string> known(read_.begin(), read_.end());
        Diagnostic& error = to_.error(
            "template.unknown-attribute", place(name), "nothing here is called " + quoted(name));
        if (const auto near = nearest_word(name, known)) {
            error.hints.push_back("did you mean '" + *near + "'?");
        } else {
            error.hints.push_back("here may stand: " + or_list(known));
        }
    }
}

}  // namespace platewright
