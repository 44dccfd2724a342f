// SPDX-License-Identifier: MIT
// Files on the disk (POSIX).
#include "base/files.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <filesystem>
#include <optional>
#include <string_view>
#include <system_error>
#include <utility>

#include "base/text.h"

namespace platewright {

namespace {

namespace fs = std::filesystem;

/// What the system says went wrong, in our words where they are plainer.
std::string problem_of(int error) {
    switch (error) {
        case ENOENT:
        case ENOTDIR:
            return "no such file";
        case EACCES:
        case EPERM:
            return "permission denied";
        case EISDIR:
            return "is a folder, not a file";
        case ENOSPC:
        case EDQUOT:
            return "the disk is full";
        case EROFS:
            return "the disk cannot be written to";
        case ENAMETOOLONG:
            return "the file name is too long";
        default:
            return lower(std::generic_category().message(error));
    }
}

/// Why a file of this kind is not read or written; empty for an ordinary file.
std::string problem_of_kind(mode_t mode) {
    if (S_ISREG(mode)) {
        return {};
    }
    if (S_ISDIR(mode)) {
        return "is a folder, not a file";
    }
    if (S_ISFIFO(mode)) {
        return "is a pipe, not a file; write '-' for standard input or output";
    }
    return "is a device, not a file; write '-' for standard input or output";
}

/// "1 MB", "200 kB", "12 bytes".
std::string size_in_words(std::size_t bytes) {
    constexpr double thousand = 1000;
    const auto size = static_cast<double>(bytes);
    if (size >= thousand * thousand) {
        return format_number(size / (thousand * thousand), 1) + " MB";
    }
    return size >= thousand ? format_number(size / thousand, 1) + " kB"
                            : format_number(size, 0) + " bytes";
}

/// An open file that is closed in time.
class OpenFile {
  public:
    explicit OpenFile(int number) : number_(number) {}

    ~OpenFile() { close(); }

    OpenFile(const OpenFile&) = delete;
    OpenFile& operator=(const OpenFile&) = delete;

    [[nodiscard]] int number() const { return number_; }

    /// False if the system could not keep what was written.
    bool close() {
        const int number = number_;
        number_ = -1;
        return number < 0 || ::close(number) == 0;
    }

  private:
    int number_;
};

/// Reads to the end or to `limit` + 1 bytes. Returns 0 or the system's error number.
int read_all(int file, std::size_t limit, std::string& to) {
    std::array<char, 65536> buffer{};
    while (to.size() <= limit) {
        const std::size_t room = std::min(buffer.size(), limit + 1 - to.size());
        const ssize_t got = ::read(file, buffer.data(), room);
        if (got == 0) {
            return 0;
        }
        if (got > 0) {
            to.append(buffer.data(), static_cast<std::size_t>(got));
        } else if (errno != EINTR) {
            return errno;
        }
    }
    return 0;
}

/// Returns 0 or the system's error number.
int write_all(int file, std::string_view bytes) {
    while (!bytes.empty()) {
        const ssize_t put = ::write(file, bytes.data(), bytes.size());
        if (put > 0) {
            bytes.remove_prefix(static_cast<std::size_t>(put));
        } else if (put == 0 || errno != EINTR) {
            return put == 0 ? EIO : errno;
        }
    }
    return 0;
}

/// A new file beside `path`; its name goes to `name`. Negative, with errno set, if there can be
/// none.
int open_beside(const std::string& path, std::string& name) {
    constexpr int tries = 1000;
    constexpr mode_t for_all = 0666;
    for (int i = 0; i < tries; ++i) {
        name = path + ".part-" + std::to_string(::getpid()) + "-" + std::to_string(i);
        const int file = ::open(name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, for_all);
        if (file >= 0 || errno != EEXIST) {
            return file;
        }
    }
    return -1;
}

/// Fills the new file and makes sure of it. Returns 0 or the system's error number.
int fill(OpenFile& file, const std::string& bytes) {
    if (const int error = write_all(file.number(), bytes)) {
        return error;
    }
    if (::fsync(file.number()) != 0) {
        return errno;
    }
    return file.close() ? 0 : errno;
}

/// The file a symbolic link stands for, so that writing keeps the link.
std::string behind_links(const std::string& path) {
    std::error_code problem;
    if (!fs::is_symlink(path, problem)) {
        return path;
    }
    const fs::path target = fs::weakly_canonical(path, problem);
    return problem ? path : target.string();
}

/// Writes the new file and puts it in the old one's place. Returns 0 or the system's error number.
int replace(const std::string& path, const std::string& bytes, std::optional<mode_t> mode) {
    std::string part;
    OpenFile file(open_beside(path, part));
    if (file.number() < 0) {
        return errno;
    }
    // Rights are a courtesy: a file that cannot have them is still the right file.
    const bool kept = !mode || ::fchmod(file.number(), *mode) == 0;
    static_cast<void>(kept);
    int error = fill(file, bytes);
    if (error == 0 && ::rename(part.c_str(), path.c_str()) != 0) {
        error = errno;
    }
    if (error != 0) {
        ::unlink(part.c_str());
    }
    return error;
}

}  // namespace

FileResult DiskReader::read(const std::string& path, std::size_t limit) const {
    if (path.find('\0') != std::string::npos) {
        return {{}, "no such file"};
    }
    // Without O_NONBLOCK, opening a pipe nobody writes to would wait for ever.
    const OpenFile file(::open(path.c_str(), O_RDONLY | O_NONBLOCK | O_CLOEXEC));

    struct stat about {};

    if (file.number() < 0 || ::fstat(file.number(), &about) != 0) {
        return {{}, problem_of(errno)};
    }
    if (std::string problem = problem_of_kind(about.st_mode); !problem.empty()) {
        return {{}, std::move(problem)};
    }
    FileResult result;
    if (const int error = read_all(file.number(), limit, result.text)) {
        return {{}, problem_of(error)};
    }
    if (result.text.size() > limit) {
        return {{}, "larger than " + size_in_words(limit) + ": too much for a file of this kind"};
    }
    return result;
}

std::vector<std::string> DiskReader::list(const std::string& folder,
                                          const std::string& ending) const {
    std::vector<std::string> names;
    std::error_code problem;
    fs::directory_iterator at(folder, problem);
    for (; !problem && at != fs::directory_iterator(); at.increment(problem)) {
        std::string name = at->path().filename().string();
        std::error_code ignored;
        if (name.ends_with(ending) && at->is_regular_file(ignored)) {
            names.push_back(std::move(name));
        }
    }
    std::ranges::sort(names);
    return names;
}

std::string write_whole(const std::string& path, const std::string& bytes) {
    if (path.empty() || path.find('\0') != std::string::npos) {
        return "this is no file name";
    }
    const std::string target = behind_links(path);

    struct stat about {};

    std::optional<mode_t> mode;
    if (::stat(target.c_str(), &about) == 0) {
        if (std::string problem = problem_of_kind(about.st_mode); !problem.empty()) {
            return problem;
        }
        constexpr mode_t rights = 07777;
        mode = about.st_mode & rights;
    }
    const int error = replace(target, bytes, mode);
    if (error == ENOENT || error == ENOTDIR) {
        return "there is no folder '" + fs::path(target).parent_path().string() + "'";
    }
    return error == 0 ? std::string() : problem_of(error);
}

}  // namespace platewright
