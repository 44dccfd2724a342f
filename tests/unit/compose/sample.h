// SPDX-License-Identifier: MIT
// A small template and a decided uniform for the tests of this stage.
#pragma once

#include <memory>
#include <string>

#include "compose/compose.h"
#include "compose/template.h"

namespace platewright {

/// A template with the given parts, zones and guides around them.
inline std::string template_with(const std::string& parts) {
    return R"(<svg xmlns="http://www.w3.org/2000/svg" viewBox="-100 0 200 400" data-view="front"><title>Trial</title>
<g id="guides"><path id="edge" d="M 0 10 L 0 110"/><path id="low" d="M -40 300 L 40 300"/><path id="high" d="M -40 200 L 40 200"/>
<path id="axis" d="M 0 0 L 0 400"/></g>
<g id="zones"><path id="zone-body" d="M -50 0 H 50 V 400 H -50 Z" data-axis="axis" data-bulge="10"/></g>
<g id="anchors"><path id="anchor-top" d="M 0 0 l 0 -10"/></g>
<g id="parts">)" +
           parts + "</g></svg>";
}

struct Reading {
    SourceMap sources;
    Diagnostics problems;
    std::shared_ptr<const Template> made;
};

inline std::unique_ptr<Reading> read_text(const std::string& text) {
    auto reading = std::make_unique<Reading>();
    const FileId file = reading->sources.add("trial.svg", text);
    reading->made = read_template(reading->sources, std::span(&file, 1), reading->problems);
    return reading;
}

/// Every property decided: cloth dark blue, counts 3, choices their first word, measures 12 mm.
inline Uniform trial_uniform() {
    Uniform uniform;
    for (PropertyId id = 0; id < properties().size(); ++id) {
        const Property& row = properties()[id];
        Decided decided;
        decided.chain.emplace_back().reason = "built-in default";
        switch (row.kind) {
            case Kind::cloth:
            case Kind::metal:
                decided.value =
                    Material{"dark blue", {0x28, 0x38, 0x5f}, row.kind == Kind::metal, ""};
                break;
            case Kind::choice:
                decided.value = std::string(choices_of(id).front().word);
                break;
            case Kind::count:
                decided.value = 3;
                break;
            case Kind::measure:
                decided.value = Measure{12, "12 mm"};
                break;
            case Kind::ornament:
            case Kind::words:
                decided.value = std::string("4");
                break;
        }
        uniform.decided.push_back(std::move(decided));
    }
    return uniform;
}

inline void set(Uniform& uniform, std::string_view key, Value value) {
    uniform.decided[property_id(key)].value = std::move(value);
}

}  // namespace platewright
