// SPDX-License-Identifier: MIT
// Whole garments: pieces developed from the flats, girth by girth.
#include "pattern/pieces.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

#include "pattern/draft.h"
#include "pattern/marks.h"
#include "pattern/named_seams.h"
#include "pattern/placing.h"
#include "pattern/seams.h"
#include "pattern/shapes.h"
#include "pattern/shoulders.h"
#include "pattern/sleeves.h"
#include "words/workshop_messages.h"

namespace platewright {
namespace {

/// How far apart the heights are at which a garment is opened out, mm.
constexpr double kStep = 5;
/// Cloth for half a pleat at the hip, on the back and on the forepart each. Common practice, no
/// source; a civil coat of the 1770s in the Victoria and Albert Museum (O13940) has pleats 130 mm
/// deep.
constexpr double kPleat = 65;
/// How far its fold keeps from the turnback at the hem, mm, and how long skirts are that have one.
constexpr double kBesideTurnback = 12;
constexpr double kLeastSkirt = 200;
/// Where it begins.
constexpr double kPleatBelowWaist = 16;
/// How far from its lowest point the arm's hole is rounded, mm.
constexpr double kRoundHole = 32;
/// And how far from the point of the shoulder, and the hem where the back is unfolded beside it.
constexpr double kRoundShoulder = 22;
constexpr double kRoundHem = 16;
constexpr double kFar = shapes::kBeyondAll;

class Garments {
  public:
    explicit Garments(const PatternSource& source) : source_(source) {}

    std::vector<PatternPiece> all() {
        for (const char* garment : {"coat", "jacket"}) {
            const std::string begins = std::string("flat-") + garment;
            const Flat* front = source_.flat(begins + "-front");
            const Flat* back = source_.flat(begins + "-back");
            if (front != nullptr && back != nullptr) {
                add_body(*front, *back);
                add_sleeves(*front);
            }
        }
        for (const auto& rest :
             {waistcoat_pieces(source_), breeches_pieces(source_), gaiter_pieces(source_)}) {
            pieces_.insert(pieces_.end(), rest.begin(), rest.end());
        }
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
    /// How long the pleat of the back is.
    double back_pleat_ = 0;

    void keep(PatternPiece piece) { keep_drawn(std::move(piece), source_.allowance, pieces_); }

    /// The first part of the body of a coat: `coat-left`, `coatee-half-left` …
    static const FlatPart* body_part(const Flat& flat, std::string_view ending) {
        const auto found = std::ranges::find_if(
            flat.parts, [&](const FlatPart& part) { return is_coat_body(part.name, ending); });
        return found == flat.parts.end() ? nullptr : &*found;
    }

    /// The corner of the skirt that is turned back, let down again.
    static std::vector<Chain> with_corner(const Flat& flat, const std::vector<Chain>& shape) {
        std::vector<Chain> all = shape;
        for (const Turnback& turnback : turnbacks_of(flat)) {
            const Chain& fold = turnback.fold;
            for (const Chain& chain : turnback.corner.outline) {
                all.push_back(shapes::mirrored(chain, fold.front(), fold.back()));
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
        const Chain behind = between_uprights(*hind, -kFar, 0);
        const Chain line = with_pleat(back, behind, *seam);
        const auto shoulder = shoulder_of(back, behind);
        add_back(back, *hind, shoulder ? shoulder->back : behind, *seam, line);
        PatternPiece piece = draft_of("coat", "forepart", *fore);
        std::vector<Chain> parts = with_corner(front, fore->outline);
        const Chain side = shapes::joined(fore->outline);
        const Chain strip = under_arm(side, behind, *seam, line, back_pleat_);
        parts.push_back(strip);
        if (shoulder) {
            parts.push_back(shoulder->strip);
        }
        const double pit = pit_of(side, seam->front().y);
        // Front and back of the arm's hole run into one another below.
        piece.outline =
            rounded_at(shapes::joined(parts), {crossing(side, pit).greatest, pit}, kRoundHole);
        // What was unfolded ends a little above the hem beside it.
        piece.outline = rounded_at(piece.outline, outer_corner(side, 1), kRoundHem);
        if (const Chain* fold = front.guide("shoulder-left"); fold != nullptr && shoulder) {
            piece.outline = rounded_at(piece.outline, fold->back(), kRoundShoulder);
        }
        place_turnback(piece, front);
        place_pockets(piece, front);
        add_pleat_fold(piece, shapes::box(behind).bottom, seam->back().y);
        piece.inlay = kInlay;
        const double waist = seam->back().y;
        const Point at_waist{crossing(piece.outline, waist).greatest, waist};
        piece.inlay_seam = seam_between(piece.outline, strip.front(), at_waist);
        add_notch(piece, at_waist);
        add_notch(piece,
                  point_between(piece.outline, at_waist, strip.front(), length_of(*seam) / 2));
        if (const Chain* middle = back.guide("back-seam")) {
            const double y = middle->back().y;
            add_notch(piece, {crossing(piece.outline, y).least, y});
        }
        add_pleat_notch(piece, strip, waist);
        name_seam(piece, "side seam", strip.front(), at_waist);
        if (shoulder) {
            name_body_seams(piece, shoulder->neck_before, shoulder->end_before, strip.front());
        }
        if (const Chain* neck = front.guide("neckline-before"); neck != nullptr && shoulder) {
            name_seam(piece, "neck", shoulder->neck_before, neck->back());
        }
        place_lapel(piece, front);
        place_strap(piece, front);
        if (const Chain* fold = front.guide("shoulder-left")) {
            const Point corner = corner_of(piece);
            shoulder_ = (shoulder ? shoulder->end_before : fold->back()) - corner;
            under_arm_ = strip.front() - corner;
        }
        keep(std::move(piece));
    }

    /// Of back or forepart: the shoulder from the neck on, and the hole of the arm.
    static void name_body_seams(PatternPiece& piece, Point neck, Point shoulder, Point under_arm) {
        name_seam(piece, "shoulder seam", neck, shoulder);
        name_seam(piece, "armhole", shoulder, under_arm);
    }

    /// Where the side of the skirt is folded under the back.
    static void add_pleat_fold(PatternPiece& piece, double hem, double waist) {
        const double top = waist + kPleatBelowWaist + kStep;
        if (hem - waist <= kLeastSkirt) {
            return;
        }
        Chain fold;
        for (double y = top; y < hem; y += kStep) {
            const Point edge{crossing(piece.outline, y).greatest, y};
            // Near the hem the edge is the hem itself.
            if (!fold.empty() && edge.x - kPleat < fold.back().x - kStep) {
                break;
            }
            fold.push_back({edge.x - kPleat, y});
        }
        if (fold.size() < 2) {
            return;
        }
        // The hem slants; the fold goes on to it.
        const Point way = unit(fold.back() - fold[fold.size() - 2]);
        while (inside({piece.outline}, fold.back() + way)) {
            fold.back() = fold.back() + way;
        }
        say_along(piece, fold, "fold of the pleat");
        piece.lines.push_back(std::move(fold));
    }

    /// Halfway down the pleat, for that of the back.
    void add_pleat_notch(PatternPiece& piece, const Chain& strip, double waist) const {
        const auto corner = std::ranges::find_if(
            strip, [waist](Point p) { return p.y > waist + kPleatBelowWaist; });
        if (back_pleat_ > 0 && corner != strip.end()) {
            const Point hem = outer_corner(piece.outline, 1);
            add_notch(piece, point_between(piece.outline, *corner, hem, back_pleat_ / 2));
            name_seam(piece, "pleat", *corner, hem);
        }
    }

    static Point corner_of(const PatternPiece& piece) {
        const Rect box = shapes::box(piece.outline);
        return {box.left, box.top};
    }

    /// The curved seam and the fold of the pleat below it, which runs out at the hem behind the
    /// turnback, so that this can be folded.
    static Chain with_pleat(const Flat& flat, const Chain& half, const Chain& seam) {
        const Rect box = shapes::box(half);
        Chain line = seam;
        if (box.bottom - seam.back().y <= kLeastSkirt) {
            return line;
        }
        double foot = seam.back().x * 1.5;
        for (const Turnback& turnback : turnbacks_of(flat)) {
            foot = std::min(foot, turnback.fold.back().x - kBesideTurnback);
        }
        line.push_back({std::max(foot, box.left / 2), box.bottom + kStep});
        return line;
    }

    /// Between the middle of the back and the curved seam; below the waist a strip with its pleat.
    void add_back(const Flat& flat,
                  const FlatPart& hind,
                  const Chain& half,
                  const Chain& seam,
                  const Chain& line) {
        Chain region{{0, -kFar}, {-kFar, -kFar}, {-kFar, line.front().y}};
        region.insert(region.end(), line.begin(), line.end());
        region.push_back({line.back().x, kFar});
        region.push_back({0, kFar});
        const Chain body = shapes::common({half}, region);
        const Rect box = shapes::box(half);
        const double waist = seam.back().y;
        PatternPiece piece = draft_of("coat", "back", hind);
        // The pleat ends with the hem beside it.
        std::vector<Chain> parts = with_corner(flat, {body});
        const double hem = outer_corner(shapes::joined(parts), -1).y;
        const double top = waist + kPleatBelowWaist;
        const Chain pleat{{x_at(line, top), top},
                          {x_at(line, top) - kPleat, top},
                          {x_at(line, hem) - kPleat, hem},
                          {x_at(line, hem), hem}};
        back_pleat_ = 0;
        if (box.bottom - waist > kLeastSkirt) {
            back_pleat_ = length(pleat[2] - pleat[1]);
            parts.push_back(pleat);
            piece.lines.push_back({pleat[0], pleat[3]});
            say_along(piece, piece.lines.back(), "fold of the pleat");
        }
        piece.outline = shapes::joined(parts);
        place_turnback(piece, flat);
        place_hip_button(piece, hind);
        piece.inlay = kInlay;
        piece.inlay_seam = seam_between(piece.outline, seam.front(), seam.back());
        // Back and forepart meet at the waist and halfway up to the hole of the arm.
        add_notch(piece, seam.back());
        add_notch(piece,
                  point_between(piece.outline, seam.back(), seam.front(), length_of(seam) / 2));
        // The waist of the man is below that of the seam, where the hip buttons are.
        name_seam(piece, "side seam", seam.front(), seam.back());
        if (const Chain* middle = flat.guide("back-seam")) {
            add_notch(piece, middle->back());
        }
        if (const Chain* shoulder = flat.guide("shoulder-seam-left")) {
            name_body_seams(piece, shoulder->front(), shoulder->back(), seam.front());
            name_seam(piece, "neck", top_at_middle(half), shoulder->front());
        }
        if (back_pleat_ > 0) {
            add_notch(piece, (pleat[1] + pleat[2]) * 0.5);
            name_seam(piece, "pleat", pleat[1], pleat[2]);
        }
        if (const Chain* fold = flat.guide("shoulder-left")) {
            const Chain* parted = flat.guide("shoulder-seam-left");
            const Point end = parted != nullptr ? parted->back() : fold->back();
            hole_behind_ = length_between(piece.outline, end, seam.front());
            add_notch(piece,
                      point_between(piece.outline, end, seam.front(), hole_behind_ / 2),
                      Ticks::hind);
        }
        if (const Chain* middle = flat.guide("back-seam")) {
            name_back_seam(piece, flat, *middle);
        }
        keep(std::move(piece));
    }

    /// It is sewn down to where the corner of the skirt is turned back.
    void name_back_seam(PatternPiece& piece, const Flat& flat, const Chain& middle) const {
        Point end = middle.back();
        for (const Turnback& turnback : turnbacks_of(flat)) {
            end = turnback.fold.front();
            add_notch(piece, {0, end.y});
            piece.remarks.push_back(say(source_.uniform.language, messages::kSkirtsOpenBelow));
        }
        name_seam(piece, "back seam", middle.front(), {0, end.y}, Join::mirrored);
    }

    static Point top_at_middle(const Chain& half) {
        return *std::ranges::min_element(
            half, {}, [](Point p) { return std::abs(p.x) < 1 ? p.y : kFar; });
    }

    /// What lies between the fold of the side and the curved seam behind, laid out beside the
    /// front so that the girth at every height is kept.
    static Chain under_arm(const Chain& front,
                           const Chain& behind,
                           const Chain& seam,
                           const Chain& line,
                           double back_pleat) {
        const Rect box = shapes::box(front);
        const double waist = seam.back().y;
        const bool skirts = box.bottom - waist > kLeastSkirt;
        const double arm_pit = pit_of(front, seam.front().y);
        Chain outer;
        Chain inner;
        bool in_pleat = false;
        double along_pleat = 0;
        Point last;
        const Crossing at_pit = crossing(front, arm_pit);
        const double pit_seam = at_pit.greatest + width_behind(behind, seam, arm_pit);
        const double hem = outer_corner(front, 1).y - 1;
        for (double from = seam.front().y; from < hem + kStep; from += kStep) {
            const double y = std::min(from, hem);
            const Crossing side = crossing(front, y);
            const double width = std::max(0.0, width_behind(behind, line, y));
            if (y < arm_pit) {
                // The back unfolded about the side.
                const double x = pit_seam - std::abs(x_at(seam, y)) + std::abs(x_at(seam, arm_pit));
                outer.push_back({x, y});
                inner.push_back({x - width, y});
                continue;
            }
            const bool pleat = skirts && y > waist + kPleatBelowWaist;
            const Point edge{side.greatest + width + (pleat ? kPleat : 0), y};
            // The pleat is as long as the back's, which hangs straight: the hem rises towards it.
            along_pleat += pleat && in_pleat ? length(edge - last) : 0;
            in_pleat = pleat;
            const Point before = std::exchange(last, edge);
            if (along_pleat <= back_pleat) {
                outer.push_back(edge);
            } else if (along_pleat - length(edge - before) < back_pleat) {
                const Point way = unit(edge - before);
                outer.push_back(edge - way * (along_pleat - back_pleat));
            }
            // A little over the edge, so that the two are joined.
            inner.push_back({side.greatest - 1, y});
        }
        smooth_near(outer, arm_pit);
        true_to_back(outer, inner, seam, at_pit.greatest);
        outer.insert(outer.end(), inner.rbegin(), inner.rend());
        return outer;
    }

    /// Above and below the pit the edge is found by other ways; there it must not bend sharply.
    static void smooth_near(Chain& edge, double pit) {
        constexpr double reach = 10;
        const Chain found = edge;
        for (std::size_t i = 0; i < edge.size(); ++i) {
            const double away = std::abs(found[i].y - pit) / kStep;
            const std::size_t ends = std::min(i, edge.size() - 1 - i);
            const auto wide = std::min(ends, static_cast<std::size_t>(std::max(0.0, reach - away)));
            double sum = 0;
            for (std::size_t j = i - wide; j <= i + wide; ++j) {
                sum += found[j].x;
            }
            edge[i].x = sum / static_cast<double>(2 * wide + 1);
        }
    }

    /// From the waist up the edge is made as long as the seam of the back that it is sewn to; the
    /// arm's hole beside it rises with it, more the farther it is from the fold of the side.
    static void true_to_back(Chain& outer, Chain& inner, const Chain& seam, double fold) {
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
                const double share = (inner[i].x - fold) / (flat[i].x - fold);
                inner[i].y += (outer[i].y - above) * std::clamp(share, 0.0, 1.0);
            }
        }
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
        if (part == nullptr || hole_seam == nullptr) {
            return;
        }
        const double around = hole(*hole_seam);
        const double arm = source_.body.of(BodyMeasure::upper_arm);
        const std::optional<Sleeves> made = sleeves_of(flat, around, arm);
        if (!made) {
            return;
        }
        PatternPiece upper = draft_of("coat", "upper sleeve", *part);
        upper.outline = made->upper;
        upper.ease = made->upper_head + made->under_head - around;
        for (const PlacedMarks& marks : marks_on_sleeve(flat, upper.outline)) {
            for (const Chain& line : marks.lines) {
                upper.lines.push_back(line);
                say_along(upper, line, marks.group == "marks" ? "rank mark" : "service mark");
            }
        }
        PatternPiece under = draft_of("coat", "under sleeve", *part);
        under.outline = made->under;
        name_seam(upper, "armhole", made->hind, made->fore, Join::set_in);
        name_seam(under, "armhole", made->under_hind, made->under_fore, Join::set_in);
        name_arm_seams(upper, made->hind, made->fore);
        name_arm_seams(under, made->under_hind, made->under_fore);
        say_which_sleeve(upper, source_.uniform);
        if (hole_behind_ > 0) {
            // Under the arm it is sewn in plain.
            meet_hole(upper, *made, made->upper_head / (around - made->under_head));
        }
        for (PatternPiece* piece : {&upper, &under}) {
            add_notches_at(*piece, made->elbow, Ticks::fore, Ticks::hind);
            place_cuff_edge(*piece, made->cuff_edge);
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
    /// throughout. Halfway behind and before are marks too.
    void meet_hole(PatternPiece& upper, const Sleeves& sleeves, double fuller) {
        PatternPiece* body = forepart();
        const double before = sleeves.upper_head / fuller - hole_behind_;
        for (const double behind : {hole_behind_, hole_behind_ / 2, hole_behind_ + before / 2}) {
            add_notch(upper,
                      point_between(upper.outline, sleeves.hind, sleeves.fore, behind * fuller),
                      behind < hole_behind_ ? Ticks::hind : Ticks::fore);
        }
        for (const double down : {before, before / 2}) {
            add_notch(*body, point_between(body->outline, shoulder_, under_arm_, down));
        }
    }
};

}  // namespace

std::vector<PatternPiece> garment_pieces(const PatternSource& source) {
    return Garments(source).all();
}

}  // namespace platewright
