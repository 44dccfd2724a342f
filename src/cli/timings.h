// SPDX-License-Identifier: MIT
// How long each stage took.
#pragma once

#include <chrono>
#include <string>
#include <string_view>
#include <vector>

namespace platewright::cli {

/// Sums of time by stage, in the order the stages were first named. Not for two threads at once.
class Timings {
  public:
    /// Does `work` and adds its time to `stage`.
    template <typename Work>
    auto measure(std::string_view stage, const Work& work) {
        const Stopwatch stopwatch{*this, stage, Clock::now()};
        return work();
    }

    void add(const Timings& other);

    /// A line a stage: `read 1.23 ms`.
    [[nodiscard]] std::string in_words() const;

  private:
    using Clock = std::chrono::steady_clock;

    struct Stopwatch {
        Timings& to;
        std::string_view stage;
        Clock::time_point start;

        ~Stopwatch() {
            to.add(stage, std::chrono::duration<double, std::milli>(Clock::now() - start).count());
        }
    };

    void add(std::string_view stage, double milliseconds);

    struct Stage {
        std::string name;
        double milliseconds = 0;
    };

    std::vector<Stage> stages_;
};

}  // namespace platewright::cli
