// SPDX-License-Identifier: MIT
// Gaiters: an inner side, and an outer one that opens where it is buttoned.
#include <string>
#include <vector>

#include "pattern/draft.h"
#include "pattern/seams.h"

namespace platewright {
namespace {

/// Beyond the line of buttons the fore part laps over by so much, for its holes, and the hind part
/// passes under it by so much, for the shanks, mm. Common practice, no source.
constexpr double kLap = 14;
constexpr double kUnder = 30;
/// Where the sides are marked to be sewn together, on the flats.
constexpr double kCalf = 300;

/// Everything on one side of a line that runs down, the line moved outward; ends drawn out beyond
/// the garment. `side`: -1 for the left of the page.
Chain beside(const Chain& line, double side, double by) {
    Chain region;
    const double move = -side * by;
    region.push_back({line.front().x + move, -shapes::kBeyondAll});
    for (const Point p : line) {
        region.push_back({p.x + move, p.y});
    }
    region.push_back({line.back().x + move, shapes::kBeyondAll});
    region.push_back({side * shapes::kBeyondAll, shapes::kBeyondAll});
    region.push_back({side * shapes::kBeyondAll, -shapes::kBeyondAll});
    return region;
}

class Gaiters {
  public:
    explicit Gaiters(const PatternSource& source) : source_(source) {}

    std::vector<PatternPiece> all() {
        if (const FlatPart* part = side("flat-gaiter-outer")) {
            add_outer(*part);
        }
        if (const FlatPart* part = side("flat-gaiter-inner")) {
            PatternPiece piece = draft_of("gaiters", "inner side", *part);
            piece.outline = shapes::joined(part->outline);
            add_notches_at(piece, kCalf);
            keep(std::move(piece));
        }
        return std::move(pieces_);
    }

  private:
    const PatternSource& source_;
    std::vector<PatternPiece> pieces_;

    [[nodiscard]] const FlatPart* side(const std::string& view) const {
        const auto found = source_.flats.find(view);
        return found == source_.flats.end() ? nullptr : found->second.part("gaiter-");
    }

    void keep(PatternPiece piece) {
        if (piece.outline.size() >= 3) {
            finish(piece, source_.allowance);
            pieces_.push_back(std::move(piece));
        }
    }

    static std::vector<std::pair<Point, Point>> holes_on(const FlatPart& part) {
        std::vector<std::pair<Point, Point>> holes;
        for (const FlatRow& row : part.rows) {
            holes.insert(holes.end(), row.holes.begin(), row.holes.end());
        }
        return holes;
    }

    /// The toe points to the left of the page.
    void add_outer(const FlatPart& part) {
        const Chain whole = shapes::joined(part.outline);
        const FlatRow* buttons = nullptr;
        for (const FlatRow& row : part.rows) {
            buttons = row.kind == FlatRow::Kind::buttons ? &row : buttons;
        }
        if (buttons == nullptr || buttons->line.size() < 2) {
            PatternPiece piece = draft_of("gaiters", "outer side", part);
            piece.outline = whole;
            add_notches_at(piece, kCalf);
            keep(std::move(piece));
            return;
        }
        const Chain& line = buttons->line;
        PatternPiece fore = draft_of("gaiters", "outer side, fore part", part);
        fore.outline = shapes::common({whole}, beside(line, -1, kLap));
        fore.lines = {line};
        fore.holes = holes_on(part);
        add_notch(fore, {crossing(fore.outline, kCalf).least, kCalf});
        keep(std::move(fore));
        PatternPiece hind = draft_of("gaiters", "outer side, hind part", part);
        hind.outline = shapes::common({whole}, beside(line, 1, kUnder));
        hind.lines = {line};
        hind.buttons = buttons->at;
        add_notch(hind, {crossing(hind.outline, kCalf).greatest, kCalf});
        keep(std::move(hind));
    }
};

}  // namespace

std::vector<PatternPiece> gaiter_pieces(const PatternSource& source) {
    return Gaiters(source).all();
}

}  // namespace platewright
