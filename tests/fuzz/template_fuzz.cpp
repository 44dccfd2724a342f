// SPDX-License-Identifier: MIT
// Any bytes as a template: an answer or an error, and what was read can be drawn.
#include <cstdint>
#include <string>

#include "base/diagnostic.h"
#include "compose/compose.h"
#include "read/read.h"
#include "require.h"
#include "resolve/resolve.h"

namespace platewright::fuzz {
namespace {

/// A man in the built-in defaults, with a palette that holds every colour they name as far as the
/// fuzzer needs it.
Uniform any_uniform() {
    Uniform uniform;
    uniform.title = "x";
    for (const Property& property : properties()) {
        Decided decided;
        switch (property.kind) {
            case Kind::cloth:
            case Kind::metal:
                decided.value =
                    Material{"blue", Colour{30, 40, 90}, property.kind == Kind::metal, ""};
                break;
            case Kind::count:
                decided.value = property.most;
                break;
            case Kind::measure:
                decided.value = Measure{20, "20 mm"};
                break;
            case Kind::choice:
            case Kind::ornament:
            case Kind::words:
                decided.value = std::string(property.initial);
                break;
        }
        Decision initial;
        initial.as_written = property.initial;
        initial.reason = "built-in default";
        decided.chain.push_back(initial);
        uniform.decided.push_back(decided);
    }
    return uniform;
}

void draw_on(const std::string& text) {
    SourceMap sources;
    const FileId file = sources.add("fuzz.svg", text);
    Diagnostics problems;
    const auto read = read_template(sources, std::span(&file, 1), problems);
    require((read != nullptr) == (problems.error_count() == 0));
    if (read) {
        static const Uniform kUniform = any_uniform();
        require(!dump(compose(kUniform, *read, {{"grenade", read}}, 8)).empty());
    }
}

}  // namespace
}  // namespace platewright::fuzz

// The name is the fuzzer's.
// NOLINTNEXTLINE(readability-identifier-naming)
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    platewright::fuzz::draw_on(std::string(data, data + size));
    return 0;
}
