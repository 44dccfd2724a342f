// SPDX-License-Identifier: MIT
// Problems for editors and scripts.
#include "cli/json.h"

#include "cli/json_value.h"

namespace platewright::cli {
namespace {

void put_place(Json& to, const Span& span, const SourceMap& sources) {
    const SourceMap::Place begin = sources.place(span.file, span.begin);
    const SourceMap::Place end = sources.place(span.file, span.end);
    to["file"] = sources.name(span.file);
    to["line"] = begin.line;
    to["column"] = begin.column;
    to["end"] = {{"line", end.line}, {"column", end.column}};
}

Json to_json(const Diagnostic& problem, const SourceMap& sources) {
    Json object = Json::object();
    if (problem.span) {
        put_place(object, *problem.span, sources);
    } else if (!problem.path.empty()) {
        object["file"] = problem.path;
    }
    object["severity"] = severity_name(problem.severity);
    object["code"] = problem.code;
    object["message"] = problem.message;
    object["hints"] = problem.hints;
    object["labels"] = Json::array();
    for (const Label& label : problem.labels) {
        Json place = Json::object();
        put_place(place, label.span, sources);
        place["text"] = label.text;
        object["labels"].push_back(std::move(place));
    }
    return object;
}

}  // namespace

std::string in_json(const Diagnostics& problems, const SourceMap& sources) {
    Json array = Json::array();
    for (const Diagnostic& problem : problems.all()) {
        array.push_back(to_json(problem, sources));
    }
    return array.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace platewright::cli
