// SPDX-License-Identifier: MIT
// Path data of an SVG (SVG 1.1, 8.3), as short as it goes.
#include "write/svg_path.h"

#include <array>
#include <cstdlib>

#include "write/numbers.h"

namespace platewright {

namespace {

/// A point in whole steps.
struct Step {
    std::int64_t x = 0;
    std::int64_t y = 0;

    friend Step operator-(Step a, Step b) { return {a.x - b.x, a.y - b.y}; }

    friend bool operator==(const Step&, const Step&) = default;
};

bool nearly(Step a, Step b) {
    return std::abs(a.x - b.x) <= 1 && std::abs(a.y - b.y) <= 1;
}

class PathData {
  public:
    explicit PathData(int places) : places_(places) {}

    void move(Point p) {
        const Step to = step(p);
        command('m');
        // A move may be followed by lines without their letter.
        letter_ = 'l';
        append(to - at_);
        at_ = start_ = control_ = to;
    }

    void line(Point p) {
        const Step to = step(p);
        const Step by = to - at_;
        if (by.y == 0) {
            command('h');
            number(by.x);
        } else if (by.x == 0) {
            command('v');
            number(by.y);
        } else {
            command('l');
            append(by);
        }
        at_ = control_ = to;
    }

    void cubic(Point b, Point c, Point d) {
        const Step first = step(b);
        const Step second = step(c);
        const Step to = step(d);
        // A curve that goes on smoothly needs no first control point; one step more or less cannot
        // be seen.
        const Step mirrored{2 * at_.x - control_.x, 2 * at_.y - control_.y};
        if (control_ != at_ && nearly(first, mirrored)) {
            command('s');
        } else {
            command('c');
            append(first - at_);
        }
        append(second - at_);
        append(to - at_);
        at_ = to;
        control_ = second;
    }

    void close() {
        out_ += 'z';
        letter_ = 'z';
        at_ = control_ = start_;
    }

    std::string take() { return std::move(out_); }

  private:
    static Step step(Point p) { return {to_steps(p.x, 0), to_steps(p.y, 0)}; }

    void command(char letter) {
        if (letter != letter_) {
            out_ += letter;
            letter_ = letter;
            after_number_ = false;
        }
    }

    void append(Step by) {
        number(by.x);
        number(by.y);
    }

    /// A number needs a space before it only where it would run into the one before.
    void number(std::int64_t steps) {
        text_.clear();
        append_steps(text_, steps, places_);
        const bool splits_itself = text_[0] == '-' || (text_[0] == '.' && has_point_);
        if (after_number_ && !splits_itself) {
            out_ += ' ';
        }
        out_ += text_;
        after_number_ = true;
        has_point_ = text_.find('.') != std::string::npos;
    }

    int places_;
    std::string out_;
    std::string text_;
    char letter_ = ' ';
    bool after_number_ = false;
    bool has_point_ = false;
    Step at_;
    Step start_;
    Step control_;
};

}  // namespace

std::string svg_path_data(const Path& path, const Grid& grid) {
    const Path steps = on_grid(path, grid);
    PathData data(grid.places);
    auto point = steps.points.begin();
    for (const Path::Verb verb : steps.verbs) {
        switch (verb) {
            case Path::Verb::move:
                data.move(*point++);
                break;
            case Path::Verb::line:
                data.line(*point++);
                break;
            case Path::Verb::cubic:
                data.cubic(point[0], point[1], point[2]);
                point += 3;
                break;
            case Path::Verb::close:
                data.close();
                break;
        }
    }
    return data.take();
}

}  // namespace platewright
