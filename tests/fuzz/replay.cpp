// SPDX-License-Identifier: MIT
// Stands in for the fuzzer: gives each file named on the command line, or in a folder named there,
// to the target once.
#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

// The name is the fuzzer's.
// NOLINTNEXTLINE(readability-identifier-naming)
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace {

void collect(const std::filesystem::path& path, std::vector<std::filesystem::path>& to) {
    if (!std::filesystem::is_directory(path)) {
        to.push_back(path);
        return;
    }
    for (const auto& entry : std::filesystem::recursive_directory_iterator(path)) {
        if (entry.is_regular_file()) {
            to.push_back(entry.path());
        }
    }
}

void replay(const std::filesystem::path& path) {
    // Said before, so that a crash shows which file it was.
    std::printf("%s\n", path.c_str());
    static_cast<void>(std::fflush(stdout));
    std::ifstream file(path, std::ios::binary);
    const std::vector<char> bytes{std::istreambuf_iterator<char>(file), {}};
    const std::vector<std::uint8_t> data(bytes.begin(), bytes.end());
    LLVMFuzzerTestOneInput(data.data(), data.size());
}

}  // namespace

int main(int argc, char** argv) {
    std::vector<std::filesystem::path> files;
    for (int i = 1; i < argc; ++i) {
        collect(argv[i], files);
    }
    std::sort(files.begin(), files.end());
    std::for_each(files.begin(), files.end(), replay);
    // A replay of nothing would pass for ever.
    return files.empty() ? 1 : 0;
}
