// SPDX-License-Identifier: MIT
// Files on the disk: what is refused, and that no half file is ever seen.
#include "base/files.h"

#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <csignal>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

namespace platewright {
namespace {

namespace fs = std::filesystem;

class Files : public testing::Test {
  protected:
    void SetUp() override {
        std::string pattern = testing::TempDir() + "platewright-files-XXXXXX";
        ASSERT_NE(mkdtemp(pattern.data()), nullptr);
        folder_ = pattern;
    }

    void TearDown() override { fs::remove_all(folder_); }

    [[nodiscard]] std::string path(const std::string& name) const { return folder_ / name; }

    [[nodiscard]] std::string content(const std::string& name) const {
        std::ostringstream text;
        text << std::ifstream(path(name)).rdbuf();
        return text.str();
    }

    void put(const std::string& name, const std::string& text) const {
        std::ofstream(path(name)) << text;
    }

    [[nodiscard]] std::size_t number_of_files() const {
        return static_cast<std::size_t>(
            std::distance(fs::directory_iterator(folder_), fs::directory_iterator()));
    }

    fs::path folder_;
    DiskReader disk_;
};

TEST_F(Files, ReadsTheWholeFile) {
    put("a.yaml", std::string(200'000, 'x'));
    const FileResult result = disk_.read(path("a.yaml"), 200'000);
    EXPECT_TRUE(result.ok());
    EXPECT_EQ(result.text.size(), 200'000U);
}

TEST_F(Files, RefusesAFileLargerThanTheLimit) {
    put("a.yaml", "123456");
    EXPECT_TRUE(disk_.read(path("a.yaml"), 6).ok());
    const FileResult result = disk_.read(path("a.yaml"), 5);
    EXPECT_EQ(result.problem, "larger than 5 bytes: too much for a file of this kind");
    EXPECT_EQ(result.text, "");
    EXPECT_EQ(disk_.read("/proc/self/environ", 0).problem,
              "larger than 0 bytes: too much for a file of this kind");
}

TEST_F(Files, SaysTheLimitInUsualUnits) {
    put("a.yaml", std::string(1'500'001, 'x'));
    EXPECT_EQ(disk_.read(path("a.yaml"), 1'500'000).problem,
              "larger than 1.5 MB: too much for a file of this kind");
    EXPECT_EQ(disk_.read(path("a.yaml"), 2000).problem,
              "larger than 2 kB: too much for a file of this kind");
}

TEST_F(Files, SaysWhatIsNotAFile) {
    ASSERT_EQ(mkfifo(path("pipe").c_str(), 0600), 0);
    EXPECT_EQ(disk_.read(path("none"), 10).problem, "no such file");
    EXPECT_EQ(disk_.read(path("none/none"), 10).problem, "no such file");
    EXPECT_EQ(disk_.read("", 10).problem, "no such file");
    EXPECT_EQ(disk_.read(std::string("/dev/null\0x", 11), 10).problem, "no such file");
    EXPECT_EQ(disk_.read(folder_, 10).problem, "is a folder, not a file");
    EXPECT_EQ(disk_.read(path("pipe"), 10).problem,
              "is a pipe, not a file; write '-' for standard input or output");
    EXPECT_EQ(disk_.read("/dev/zero", 10).problem,
              "is a device, not a file; write '-' for standard input or output");
    EXPECT_EQ(disk_.read(std::string(5000, 'x'), 10).problem, "the file name is too long");
}

TEST_F(Files, ListsFilesOfOneEndingInOrder) {
    put("b.yaml", "");
    put("a.yaml", "");
    put("c.svg", "");
    fs::create_directory(path("folder.yaml"));
    EXPECT_EQ(disk_.list(folder_, ".yaml"), (std::vector<std::string>{"a.yaml", "b.yaml"}));
    EXPECT_TRUE(disk_.list(path("none"), ".yaml").empty());
    EXPECT_TRUE(disk_.list(path("a.yaml"), ".yaml").empty());
}

TEST_F(Files, WritesANewFileAndLeavesNothingBeside) {
    EXPECT_EQ(write_whole(path("a.svg"), "<svg/>"), "");
    EXPECT_EQ(content("a.svg"), "<svg/>");
    EXPECT_EQ(number_of_files(), 1U);
}

TEST_F(Files, ReplacesAFileAndKeepsItsRights) {
    put("a.svg", "old and longer");
    ASSERT_EQ(chmod(path("a.svg").c_str(), 0640), 0);
    EXPECT_EQ(write_whole(path("a.svg"), "new"), "");
    EXPECT_EQ(content("a.svg"), "new");
    EXPECT_EQ(fs::status(path("a.svg")).permissions(), fs::perms(0640));
    EXPECT_EQ(number_of_files(), 1U);
}

TEST_F(Files, WritesThroughALink) {
    put("a.svg", "old");
    fs::create_symlink("a.svg", path("link.svg"));
    EXPECT_EQ(write_whole(path("link.svg"), "new"), "");
    EXPECT_TRUE(fs::is_symlink(path("link.svg")));
    EXPECT_EQ(content("a.svg"), "new");
}

TEST_F(Files, WillNotWriteOverWhatIsNotAFile) {
    ASSERT_EQ(mkfifo(path("pipe").c_str(), 0600), 0);
    EXPECT_EQ(write_whole(folder_, "x"), "is a folder, not a file");
    EXPECT_EQ(write_whole(path("pipe"), "x"),
              "is a pipe, not a file; write '-' for standard input or output");
    EXPECT_EQ(write_whole("/dev/null", "x"),
              "is a device, not a file; write '-' for standard input or output");
    EXPECT_EQ(write_whole("", "x"), "this is no file name");
    EXPECT_EQ(write_whole(path("none/a.svg"), "x"), "there is no folder '" + path("none") + "'");
    EXPECT_EQ(number_of_files(), 1U);
}

/// While it lives, this process can write no file larger than `bytes`.
class SmallFilesOnly {
  public:
    explicit SmallFilesOnly(rlim_t bytes) {
        getrlimit(RLIMIT_FSIZE, &before_);
        const rlimit small = {bytes, before_.rlim_max};
        setrlimit(RLIMIT_FSIZE, &small);
        handler_ = std::signal(SIGXFSZ, SIG_IGN);
    }

    ~SmallFilesOnly() {
        setrlimit(RLIMIT_FSIZE, &before_);
        std::signal(SIGXFSZ, handler_);
    }

    SmallFilesOnly(const SmallFilesOnly&) = delete;
    SmallFilesOnly& operator=(const SmallFilesOnly&) = delete;

  private:
    rlimit before_{};
    void (*handler_)(int) = nullptr;
};

TEST_F(Files, KeepsTheOldFileAndTidiesUpWhenWritingFailsHalfway) {
    put("a.svg", "old");
    std::string problem;
    {
        const SmallFilesOnly small(1000);
        problem = write_whole(path("a.svg"), std::string(10'000, 'x'));
    }
    EXPECT_EQ(problem, "file too large");
    EXPECT_EQ(content("a.svg"), "old");
    EXPECT_EQ(number_of_files(), 1U);
}

}  // namespace
}  // namespace platewright
