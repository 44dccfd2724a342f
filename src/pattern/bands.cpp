// SPDX-License-Identifier: MIT
// Straight bands, measured on the pieces and girths that they are sewn to.
#include "pattern/bands.h"

#include <algorithm>

#include "pattern/draft.h"
#include "pattern/fit.h"
#include "pattern/legs.h"
#include "pattern/named_seams.h"
#include "pattern/openings.h"
#include "pattern/seams.h"
#include "pattern/shapes.h"
#include "words/workshop_messages.h"

namespace platewright {
namespace {

/// The tongue of a knee band reaches so far beyond the fore leg, for the buckle. Common practice,
/// no source.
constexpr double kKneeTongue = 65;
/// Eyelets lie so far within the end of the waistband. Common practice, no source.
constexpr double kEyeletWithin = 12;
/// And so far from its upper and lower seam.
constexpr double kEyeletClear = 8;

class Waistband {
  public:
    Waistband(const Flat& front, const Flat* back, const FlatPart& part, double length)
        : front_(front),
          back_(back),
          part_(part),
          outline_(shapes::joined(part.outline)),
          length_(length) {}

    [[nodiscard]] PatternPiece made(double gathered) const {
        const double depth = waistband_depth(front_);
        PatternPiece piece = draft_of("breeches", "waistband", part_);
        // The grain runs along it, so that it does not stretch.
        piece.outline = {{0, 0}, {depth, 0}, {depth, length_}, {0, length_}};
        piece.lines = {{{0, middle()}, {depth, middle()}}};
        say_along(piece, piece.lines.front(), "middle");
        piece.lined = true;
        mark(piece);
        mark_seams(piece, depth);
        if (gathered > 0) {
            add_notch(piece, {depth, kGatherFrom});
            add_notch(piece, {depth, kGatherTo - gathered});
        }
        mark_eyelets(piece);
        return piece;
    }

  private:
    const Flat& front_;
    const Flat* back_;
    const FlatPart& part_;
    Chain outline_;
    double length_;

    /// Of the body's front.
    [[nodiscard]] double middle() const { return length_ - kFrontLap; }

    /// Turned so that its upper edge is the left one.
    [[nodiscard]] Point turned(Point p) const {
        const Chain top = upper_edge(outline_);
        const auto after = std::ranges::find_if(top, [&](Point q) { return q.x >= p.x; });
        const double level = after == top.end() ? top.back().y : after->y;
        return {p.y - level, middle() - p.x};
    }

    /// The buttons of one half and the holes of the other, and the mouth of the fob pocket.
    void mark(PatternPiece& piece) const {
        for (const Point button : buttons_of(part_)) {
            piece.buttons.push_back(turned(button));
        }
        for (const auto& [from, to] : holes_of(part_)) {
            piece.holes.emplace_back(turned(from), turned(to));
        }
        piece.closes_in_front = !piece.holes.empty();
        if (const FlatPart* fob = front_.part("fob-left")) {
            const Chain mouth = upper_edge(shapes::joined(fob->outline));
            piece.slits.push_back({turned(mouth.front()), turned(mouth.back())});
        }
    }

    /// The fall begins below one mark, the side seam meets the other.
    void mark_seams(PatternPiece& piece, double depth) const {
        if (const Chain* slit = front_.guide("fall-edge")) {
            add_notch(piece, {depth, middle() - slit->front().x});
        }
        if (const double side = side_at_waist(front_); side > 0) {
            add_notch(piece, {depth, middle() - side});
        }
    }

    /// Of the half on the wearer's left, which lies to the left of the page behind: as many as are
    /// drawn, clear of both seams.
    void mark_eyelets(PatternPiece& piece) const {
        const FlatPart* band = back_ != nullptr ? back_->part("waistband") : nullptr;
        if (band == nullptr) {
            return;
        }
        // They are drawn as dots.
        const auto drawn = std::ranges::count_if(band->lines, [](const Chain& line) {
            return length_of(line) < 1 && line.front().x < 0;
        });
        const double depth = waistband_depth(front_) - 2 * kEyeletClear;
        for (int i = 0; i < drawn; ++i) {
            const double share =
                drawn > 1 ? static_cast<double>(i) / static_cast<double>(drawn - 1) : 0.5;
            piece.eyelets.push_back({kEyeletClear + depth * share, kEyeletWithin});
        }
    }
};

/// How far the fore leg's edge keeps from its side seam at the hem.
double knee_cut_back(const Flat& front, const Chain& slit) {
    const FlatPart* part = legs_of(front);
    const Chain* seam = part != nullptr ? side_seam_of(front, *part, 1) : nullptr;
    return seam != nullptr ? x_at(*seam, slit.back().y) - slit.back().x : 0;
}

/// The bar of the buckle: the middle of the tongue reaches it where the band is closed.
void mark_buckle(PatternPiece& band, double closed, double width) {
    const double bar = closed - kKneeTongue / 2;
    band.lines.push_back({{0, bar}, {width, bar}});
    say_along(band, band.lines.back(), "buckle");
}

/// Where the parts of a knee band end, mm from the tip of its tongue.
struct KneeBand {
    /// The inner seam, and the side seam beneath the lap.
    double inner = 0;
    double outer = 0;
    double end = 0;
    /// The edge of the fore leg when it is buttoned; and how much wider the legs are.
    double closed = 0;
    double eased = 0;
};

/// Closed, it is as long as the man's leg below the knee and its ease; wider legs are eased in.
KneeBand knee_band(const PatternSource& source,
                   const Flat& front,
                   const PatternPiece& fore_leg,
                   const PatternPiece& hind_leg) {
    const double fore = length_of(lower_edge(fore_leg.outline));
    const double hind = length_of(lower_edge(hind_leg.outline));
    const double lap = knee_underlap(front);
    const Chain* slit = front.guide("knee-slit-left");
    const double cut_back = slit != nullptr ? knee_cut_back(front, *slit) : 0;
    const double round = fore + hind - lap + cut_back;
    const double buckled = source.body.of(BodyMeasure::lower_knee) + kBuckledEase;
    KneeBand band;
    band.eased = lap > 0 ? std::max(0.0, round - buckled) : 0;
    const double share = 1 - band.eased / (fore + hind);
    band.inner = kKneeTongue + fore * share;
    band.end = band.inner + hind * share;
    band.outer = band.end - lap;
    band.closed = band.outer + cut_back;
    return band;
}

}  // namespace

double waistband_depth(const Flat& front) {
    const FlatPart* part = front.part("waistband");
    const Chain outline = part != nullptr ? shapes::joined(part->outline) : Chain{};
    return outline.empty() ? 0 : depth_of(outline);
}

std::optional<PatternPiece> waistband_of(const PatternSource& source, double gathered) {
    const Flat* front = source.flat("flat-breeches-front");
    const FlatPart* part = front != nullptr ? front->part("waistband") : nullptr;
    const auto girths =
        front != nullptr ? finished_girths(*front, source.body) : std::vector<FinishedGirth>{};
    if (part == nullptr || girths.empty()) {
        return std::nullopt;
    }
    const double length = girths.front().finished / 2 + kFrontLap;
    return Waistband(*front, source.flat("flat-breeches-back"), *part, length).made(gathered);
}

std::optional<PatternPiece> knee_band_of(const PatternSource& source,
                                         const PatternPiece& fore_leg,
                                         const PatternPiece& hind_leg) {
    const Flat* front = source.flat("flat-breeches-front");
    const FlatPart* part = front != nullptr ? front->part("knee-band-left") : nullptr;
    if (part == nullptr || fore_leg.outline.empty() || hind_leg.outline.empty()) {
        return std::nullopt;
    }
    const double height = depth_of(shapes::joined(part->outline));
    const KneeBand band = knee_band(source, *front, fore_leg, hind_leg);
    const double end = band.end;
    PatternPiece piece = draft_of("breeches", "knee band", *part);
    piece.outline = {{0, 0}, {2 * height, 0}, {2 * height, end}, {0, end}};
    piece.lines = {{{height, 0}, {height, end}}, {{0, kKneeTongue}, {2 * height, kKneeTongue}}};
    say_along(piece, piece.lines.front(), "fold");
    say_along(piece, piece.lines.back(), "tongue");
    if (band.outer < end) {
        // Buttoned, the edge of the fore leg lies here over the end that passes under.
        piece.lines.push_back({{0, band.closed}, {2 * height, band.closed}});
        say_along(piece, piece.lines.back(), "lap ends");
        mark_buckle(piece, band.closed, 2 * height);
    }
    for (const double seam : {band.inner, band.outer}) {
        add_notches_at(piece, seam);
    }
    name_seam(piece, "knee band", {0, kKneeTongue}, {0, end});
    constexpr double least = 1;
    if (band.eased >= least) {
        const Language language = source.uniform.language;
        piece.remarks.push_back(
            say(language, messages::kLegsEasedIn, {number_words(language, band.eased, 0)}));
    }
    piece.paired = false;
    return piece;
}

}  // namespace platewright
