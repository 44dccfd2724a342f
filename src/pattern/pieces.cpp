// SPDX-License-Identifier: MIT
// Whole garments: pieces developed from the flats, girth by girth.
#include "pattern/pieces.h"

#include <algorithm>
#include <cmath>

#include "pattern/seams.h"
#include "pattern/shapes.h"

namespace platewright {
namespace {

/// How far apart the heights are at which a garment is opened out, mm.
constexpr double kStep = 5;
/// Cloth for half a pleat at the hip, on the back and on the forepart each. Common practice, no
/// source; a civil coat of the 1770s in the Victoria and Albert Museum (O13940) has pleats 130 mm
/// deep.
constexpr double kPleat = 65;
/// How much wider the upper sleeve is than the lower, each way. Common practice, no source.
constexpr double kSleeveShift = 14;
/// How much longer the sleeve's head is than its hole, to be eased in. Common practice, no source.
constexpr double kSleeveEase = 25;
/// The wedge that gives breeches their seat, at the waist behind. Common practice, no source.
constexpr double kSeatWedge = 45;
/// By so much one end of a knee band laps over the other, for its buckle. Common practice, no
/// source.
constexpr double kKneeLap = 40;
/// Beyond the cut at a side seam. Common practice, no source.
constexpr double kInlay = 25;
/// Heights on the flats at which pieces of a garment are marked to be sewn together.
constexpr double kWaistcoatSide = 380;
constexpr double kAboveKnee = 480;
constexpr double kCalf = 300;
constexpr double kFar = shapes::kBeyondAll;

PatternPiece piece_of(const char* garment, const char* name, const FlatPart& part) {
    PatternPiece piece{
        .garment = garment, .name = name, .cloth = part.cloth, .cloth_key = part.cloth_key};
    piece.number = 2;
    piece.paired = true;
    piece.draft = true;
    return piece;
}

Chain left_half(const FlatPart& part, double from, double to) {
    return shapes::within(part.outline, {from, -kFar, to, kFar});
}

class Garments {
  public:
    explicit Garments(const PatternSource& source) : source_(source) {}

    std::vector<PatternPiece> all() {
        for (const char* garment : {"coat", "jacket"}) {
            const std::string begins = std::string("flat-") + garment;
            const Flat* front = flat(begins + "-front");
            const Flat* back = flat(begins + "-back");
            if (front != nullptr && back != nullptr) {
                add_body(*front, *back);
                add_sleeves(*front);
            }
        }
        add_waistcoat();
        add_breeches();
        add_gaiters();
        return std::move(pieces_);
    }

  private:
    const PatternSource& source_;
    std::vector<PatternPiece> pieces_;
    /// How much of the arm's hole lies on the back, and on the forepart as it is kept the point of
    /// the shoulder and the end of the hole.
    double hole_behind_ = 0;
    Point shoulder_;
    Point under_arm_;

    [[nodiscard]] const Flat* flat(const std::string& view) const {
        const auto found = source_.flats.find(view);
        return found == source_.flats.end() ? nullptr : &found->second;
    }

    void keep(PatternPiece piece) {
        if (piece.outline.size() < 3) {
            return;
        }
        finish(piece, source_.allowance);
        pieces_.push_back(std::move(piece));
    }

    /// The first part of the body of a coat: `coat-left`, `coatee-half-left` …
    static const FlatPart* body_part(const Flat& flat, const std::string& ending) {
        for (const FlatPart& part : flat.parts) {
            for (const char* cut : {"coat-", "coatee-", "surtout-", "jacket-"}) {
                if (part.name.starts_with(cut) && part.name.ends_with(ending) &&
                    part.name.find("welt") == std::string::npos) {
                    return &part;
                }
            }
        }
        return nullptr;
    }

    /// The corner of the skirt that is turned back, let down again.
    static std::vector<Chain> with_corner(const Flat& flat, const std::vector<Chain>& shape) {
        std::vector<Chain> all = shape;
        for (const char* name : {"turnback-left", "turnback-short-left"}) {
            const FlatPart* corner = flat.part(name);
            const Chain* fold = flat.guide(std::string(name) + "-fold");
            if (corner != nullptr && fold != nullptr) {
                for (const Chain& chain : corner->outline) {
                    all.push_back(shapes::mirrored(chain, fold->front(), fold->back()));
                }
            }
        }
        return all;
    }

    void add_body(const Flat& front, const Flat& back) {
        const FlatPart* fore = body_part(front, "-left");
        const FlatPart* hind = body_part(back, "-back");
        const Chain* seam = back.guide("side-back-left-seam");
        if (fore == nullptr || hind == nullptr || seam == nullptr || seam->empty()) {
            return;
        }
        const Chain behind = left_half(*hind, -kFar, 0);
        add_back(back, *hind, behind, *seam);
        PatternPiece piece = piece_of("coat", "forepart", *fore);
        std::vector<Chain> parts = with_corner(front, fore->outline);
        const Chain strip = under_arm(shapes::joined(fore->outline), behind, *seam);
        parts.push_back(strip);
        piece.outline = shapes::joined(parts);
        if (const Chain* fold = front.guide("turnback-left-fold");
            fold != nullptr && front.part("turnback-left") != nullptr) {
            piece.lines.push_back(*fold);
        }
        piece.inlay = kInlay;
        const double waist = seam->back().y;
        const Point at_waist{crossing(piece.outline, waist).greatest, waist};
        add_notch(piece, at_waist);
        add_notch(piece,
                  point_between(piece.outline, at_waist, strip.front(), length_of(*seam) / 2));
        if (const Chain* shoulder = front.guide("shoulder-left")) {
            const Point corner = corner_of(piece);
            shoulder_ = shoulder->back() - corner;
            under_arm_ = strip.front() - corner;
        }
        keep(std::move(piece));
    }

    static Point corner_of(const PatternPiece& piece) {
        const Rect box = shapes::box(piece.outline);
        return {box.left, box.top};
    }

    /// Between the middle of the back and the curved seam; below the waist a strip with its pleat.
    void add_back(const Flat& flat, const FlatPart& hind, const Chain& half, const Chain& seam) {
        Chain region{{0, -kFar}, {-kFar, -kFar}, {-kFar, seam.front().y}};
        region.insert(region.end(), seam.begin(), seam.end());
        region.push_back({seam.back().x, kFar});
        region.push_back({0, kFar});
        const Chain body = shapes::common({half}, region);
        const Rect box = shapes::box(half);
        const double waist = seam.back().y;
        PatternPiece piece = piece_of("coat", "back", hind);
        // The pleat ends with the hem beside it.
        std::vector<Chain> parts = with_corner(flat, {body});
        const double hem = outer_corner(shapes::joined(parts), -1).y;
        const Chain pleat{{seam.back().x, waist + 16},
                          {seam.back().x - kPleat, waist + 16},
                          {seam.back().x - kPleat, hem},
                          {seam.back().x, hem}};
        if (box.bottom - waist > 200) {
            parts.push_back(pleat);
            piece.lines.push_back({pleat[0], pleat[3]});
        }
        piece.outline = shapes::joined(parts);
        piece.inlay = kInlay;
        // Back and forepart meet at the waist and halfway up to the hole of the arm.
        add_notch(piece, seam.back());
        add_notch(piece,
                  point_between(piece.outline, seam.back(), seam.front(), length_of(seam) / 2));
        if (const Chain* shoulder = flat.guide("shoulder-left")) {
            hole_behind_ = length_between(piece.outline, shoulder->back(), seam.front());
        }
        keep(std::move(piece));
    }

    /// What lies between the fold of the side and the curved seam behind, laid out beside the
    /// front so that the girth at every height is kept.
    static Chain under_arm(const Chain& front, const Chain& behind, const Chain& seam) {
        const Rect box = shapes::box(front);
        const double waist = seam.back().y;
        const bool skirts = box.bottom - waist > 200;
        const double arm_pit = pit_of(front, seam.front().y);
        Chain outer;
        Chain inner;
        const Crossing at_pit = crossing(front, arm_pit);
        const double pit_seam = at_pit.greatest + width_behind(behind, seam, arm_pit);
        const double hem = outer_corner(front, 1).y - 1;
        for (double from = seam.front().y; from < hem + kStep; from += kStep) {
            const double y = std::min(from, hem);
            const Crossing side = crossing(front, y);
            const double width = std::max(0.0, width_behind(behind, seam, y));
            if (y < arm_pit) {
                const double x = pit_seam + std::abs(x_at(seam, y)) - std::abs(x_at(seam, arm_pit));
                outer.push_back({x, y});
                inner.push_back({x - width, y});
                continue;
            }
            const bool pleat = skirts && y > waist + 16;
            outer.push_back({side.greatest + width + (pleat ? kPleat : 0), y});
            // A little over the edge, so that the two are joined.
            inner.push_back({side.greatest - 1, y});
        }
        true_to_back(outer, seam);
        outer.insert(outer.end(), inner.rbegin(), inner.rend());
        return outer;
    }

    /// From the waist up the edge is made as long as the seam of the back that it is sewn to.
    static void true_to_back(Chain& outer, const Chain& seam) {
        const Chain flat = outer;
        for (std::size_t i = outer.size() - 1; i-- > 0;) {
            const double above = flat[i].y;
            const double below = flat[i + 1].y;
            if (above < seam.back().y) {
                const double end = std::min(below, seam.back().y);
                const Point behind{x_at(seam, end) - x_at(seam, above), end - above};
                const double across = (flat[i + 1].x - flat[i].x) * (end - above) / (below - above);
                const double rise = std::sqrt(std::max(1.0, dot(behind, behind) - across * across));
                outer[i].y = outer[i + 1].y - (below - end) - rise;
            }
        }
    }

    /// Where side and hem meet: on the right of the page, or with -1 on the left.
    static Point outer_corner(const Chain& outline, double side) {
        return *std::max_element(outline.begin(), outline.end(), [side](Point a, Point b) {
            return side * a.x + a.y < side * b.x + b.y;
        });
    }

    /// The height below which the side is no longer the arm's hole: where it is farthest out.
    static double pit_of(const Chain& front, double from) {
        double widest = 0;
        double at = from;
        for (double y = from; y < from + 120; y += 2) {
            const Crossing side = crossing(front, y);
            if (side.greatest > widest + 0.01) {
                widest = side.greatest;
                at = y;
            }
        }
        return at;
    }

    static double width_behind(const Chain& behind, const Chain& seam, double y) {
        const Crossing side = crossing(behind, y);
        return side.found ? std::abs(side.least) - std::abs(x_at(seam, y)) : 0;
    }

    void add_sleeves(const Flat& flat) {
        const FlatPart* part = flat.part("sleeve-left");
        const Chain* hole_seam = flat.guide("sleeve-left-seam");
        const Chain* hem = flat.guide("cuff-hem-left");
        if (part == nullptr || hole_seam == nullptr || hem == nullptr) {
            return;
        }
        const Point along = (hem->front() + hem->back()) * 0.5 - hole_seam->front();
        const Chain whole = shapes::turned_down(shapes::joined(part->outline), along);
        const Chain seam = shapes::turned_down(*hole_seam, along);
        const double pit = seam.back().y;
        const double end = shapes::box(whole).bottom - 12;
        const double around = hole(*hole_seam);
        PatternPiece under = piece_of("coat", "under sleeve", *part);
        under.outline = sleeve(whole, pit, end, -kSleeveShift);
        const double under_head = close_head(under.outline, /*upper=*/false, 0);
        PatternPiece upper = piece_of("coat", "upper sleeve", *part);
        upper.outline = sleeve(whole, pit, end, kSleeveShift);
        // On the left sleeve seen from before, the hind arm is at the outer side.
        const Point fore = upper.outline.back();
        const Point hind = upper.outline.front();
        const double head =
            close_head(upper.outline, /*upper=*/true, around + kSleeveEase - under_head);
        upper.ease = head + under_head - around;
        if (hole_behind_ > 0) {
            meet_hole(upper, hind, fore, head, (head + under_head) / around);
        }
        const double elbow = (pit + end) / 2;
        for (PatternPiece* piece : {&upper, &under}) {
            add_notches_at(*piece, elbow);
            keep(std::move(*piece));
        }
    }

    /// Round the hole of the arm, on back and forepart; without them by the flat.
    double hole(const Chain& seam) {
        PatternPiece* fore = forepart();
        return fore != nullptr && hole_behind_ > 0
                   ? hole_behind_ + length_between(fore->outline, shoulder_, under_arm_)
                   : length_of(seam) * 2;
    }

    PatternPiece* forepart() {
        const auto found = std::ranges::find_if(pieces_, [](const PatternPiece& piece) {
            return piece.garment == "coat" && piece.name == "forepart";
        });
        return found == pieces_.end() ? nullptr : &*found;
    }

    /// The seam of the hind arm meets that of the side; from there the head is sewn in past the
    /// shoulder to where the seam of the fore arm meets the forepart, fuller than the hole
    /// throughout.
    void meet_hole(PatternPiece& upper, Point hind, Point fore, double head, double fuller) {
        PatternPiece* body = forepart();
        add_notch(upper, point_between(upper.outline, hind, fore, hole_behind_ * fuller));
        add_notch(
            *body,
            point_between(body->outline, shoulder_, under_arm_, head / fuller - hole_behind_));
    }

    /// The two long sides from the arm-pit down; the head is open.
    static Chain sleeve(const Chain& whole, double pit, double end, double shift) {
        Chain right;
        Chain left;
        for (double y = pit; y < end + kStep; y += kStep) {
            const Crossing at = crossing(whole, std::min(y, end));
            right.push_back({at.greatest + shift, std::min(y, end)});
            left.push_back({at.least - shift, std::min(y, end)});
        }
        right.insert(right.end(), left.rbegin(), left.rend());
        return right;
    }

    /// The head of the upper sleeve rises until it is that long, that of the under sleeve is
    /// hollowed. Gives its length.
    static double close_head(Chain& outline, bool upper, double wanted) {
        const Point from = outline.back();
        const Point to = outline.front();
        // The hollow of the under sleeve; common practice, no source.
        double height = -22;
        if (upper) {
            double low = 0;
            double high = 400;
            for (int i = 0; i < 40; ++i) {
                height = (low + high) / 2;
                (length_of(bow(from, to, height)) < wanted ? low : high) = height;
            }
        }
        const Chain head = bow(from, to, height);
        outline.insert(outline.end(), head.begin() + 1, head.end() - 1);
        return length_of(head);
    }

    /// A bow from point to point that rises by `height`.
    static Chain bow(Point from, Point to, double height) {
        Chain chain;
        for (int i = 0; i <= 24; ++i) {
            const double u = i / 24.0;
            // Fuller than a parabola at the shoulder.
            const double rise = std::pow(std::sin(u * 3.14159265358979), 0.8);
            const Point at = from + (to - from) * u;
            chain.push_back({at.x, at.y - height * rise});
        }
        return chain;
    }

    void add_waistcoat() {
        const Flat* front = flat("flat-waistcoat-front");
        const Flat* back = flat("flat-waistcoat-back");
        if (front == nullptr || back == nullptr) {
            return;
        }
        for (const char* name : {"waistcoat-left", "waistcoat-double-left"}) {
            if (const FlatPart* part = front->part(name)) {
                PatternPiece piece = piece_of("waistcoat", "forepart", *part);
                piece.outline = shapes::joined(part->outline);
                for (const FlatRow& row : part->rows) {
                    if (row.kind == FlatRow::Kind::buttons) {
                        piece.buttons.insert(piece.buttons.end(), row.at.begin(), row.at.end());
                    }
                }
                add_notch(piece, {shapes::box(piece.outline).right, kWaistcoatSide});
                keep(std::move(piece));
                break;
            }
        }
        if (const FlatPart* part = back->part("waistcoat-back")) {
            PatternPiece piece = piece_of("waistcoat", "back", *part);
            piece.outline = left_half(*part, -kFar, 0);
            piece.inlay = kInlay;
            add_notch(piece, {shapes::box(piece.outline).left, kWaistcoatSide});
            keep(std::move(piece));
        }
    }

    /// The legs of breeches or overalls on the flat of that side; none if it shows none.
    [[nodiscard]] const FlatPart* legs(const std::string& side) const {
        const Flat* view = flat("flat-breeches-" + side);
        if (view == nullptr) {
            return nullptr;
        }
        const FlatPart* breeches = view->part("breeches");
        return breeches != nullptr ? breeches : view->part("overalls");
    }

    void add_breeches() {
        for (const char* side : {"front", "back"}) {
            const FlatPart* part = legs(side);
            if (part == nullptr) {
                continue;
            }
            const bool front = std::string_view(side) == "front";
            PatternPiece piece = piece_of("breeches", front ? "fore leg" : "hind leg", *part);
            // The wearer's left lies at positive x before, at negative behind.
            Chain half = front ? left_half(*part, 0, kFar) : left_half(*part, -kFar, 0);
            if (!front && !half.empty()) {
                const double top = shapes::box(half).top;
                half = shapes::joined({half, {{0, top}, {kSeatWedge, top - 20}, {0, top + 260}}});
            }
            piece.outline = half;
            add_notches_at(piece, kAboveKnee);
            piece.inlay = front ? 0 : kInlay;
            keep(std::move(piece));
        }
        add_knee_bands();
        const Flat* front = flat("flat-breeches-front");
        for (const char* name : {"waistband", "fall"}) {
            if (const FlatPart* part = front != nullptr ? front->part(name) : nullptr) {
                PatternPiece piece = piece_of("breeches", name, *part);
                piece.outline = shapes::joined(part->outline);
                piece.number = name == std::string_view("fall") ? 1 : 2;
                piece.paired = false;
                piece.lined = true;
                keep(std::move(piece));
            }
        }
    }

    /// Cut double and folded along its lower edge: as long as it is before and behind, and its lap.
    void add_knee_bands() {
        const Flat* front = flat("flat-breeches-front");
        const Flat* back = flat("flat-breeches-back");
        const FlatPart* before = front != nullptr ? front->part("knee-band-left") : nullptr;
        const FlatPart* behind = back != nullptr ? back->part("knee-band-left") : nullptr;
        if (before == nullptr || behind == nullptr) {
            return;
        }
        const Chain outline = shapes::joined(before->outline);
        const double length = shapes::box(outline).width() +
                              shapes::box(shapes::joined(behind->outline)).width() + kKneeLap;
        const double height = shapes::area(outline) / shapes::box(outline).width();
        PatternPiece piece = piece_of("breeches", "knee band", *before);
        piece.outline = {{0, 0}, {length, 0}, {length, 2 * height}, {0, 2 * height}};
        piece.lines = {{{0, height}, {length, height}}};
        piece.paired = false;
        keep(std::move(piece));
    }

    void add_gaiters() {
        for (const char* side : {"outer", "inner"}) {
            const Flat* view = flat(std::string("flat-gaiter-") + side);
            const FlatPart* part = view != nullptr ? view->part("gaiter-") : nullptr;
            if (part != nullptr) {
                PatternPiece piece =
                    piece_of("gaiters",
                             side == std::string_view("outer") ? "outer side" : "inner side",
                             *part);
                piece.outline = shapes::joined(part->outline);
                add_notches_at(piece, kCalf);
                keep(std::move(piece));
            }
        }
    }
};

}  // namespace

std::vector<PatternPiece> garment_pieces(const PatternSource& source) {
    return Garments(source).all();
}

}  // namespace platewright
