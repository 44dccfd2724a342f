// SPDX-License-Identifier: MIT
// What is cut besides the garments and their facings: linings, facings of openings, pocket bags,
// straps.
#include <algorithm>
#include <cmath>
#include <numbers>
#include <string_view>
#include <utility>

#include "pattern/draft.h"
#include "pattern/named_seams.h"
#include "pattern/pieces.h"
#include "pattern/pockets.h"
#include "pattern/seams.h"
#include "pattern/shapes.h"
#include "pattern/stiffening.h"
#include "words/terms.h"

namespace platewright {
namespace {

/// The lining of a sleeve ends above its hem, so that it does not show. Common practice, no source.
constexpr double kSleeveLiningShort = 12;
/// A pocket bag is as wide as its mouth under the flap and so deep, its lower corners rounded.
/// Common practice, no source.
constexpr double kBagDepth = 220;
constexpr double kBagCorner = 40;
/// That of an upright pocket is so wide, and reaches so far above its mouth and below, mm. Common
/// practice, no source.
constexpr double kUprightBag = 180;
constexpr double kBagAbove = 40;
constexpr double kBagBelow = 100;
/// The bag of a fob is so deep, and so much wider than its mouth; the welt that faces the mouth of
/// a pocket is so deep. Common practice, no source.
constexpr double kFobDepth = 90;
constexpr double kFobWider = 15;
constexpr double kWeltDeep = 45;
/// Stiff linen behind the front of a coat: how wide at the breast and at its lower end, and how far
/// that lies below the waist. Common practice, no source.
constexpr double kCanvasWide = 190;
constexpr double kCanvasNarrow = 60;
constexpr double kCanvasBelowWaist = 150;
constexpr double kCanvasStep = 5;
/// How wide the linen is behind the holes and behind the buttons of a gaiter. Common practice, no
/// source.
constexpr double kOpeningFacing = 45;
/// A garter is so much longer than the leg is round, for its buckle and its end. Common practice,
/// no source.
constexpr double kGarterEnds = 130;
constexpr double kLongStrap = 300;
/// A foot strap is so much longer than what is seen of it on both sides. Common practice, no
/// source.
constexpr double kUnderTheSole = 90;

class Lesser {
  public:
    Lesser(const PatternSource& source, const std::vector<PatternPiece>& pieces)
        : source_(source), pieces_(pieces) {}

    std::vector<PatternPiece> all() {
        for (const PatternPiece& piece : pieces_) {
            if (is_lined_alike(piece)) {
                add_lining(piece);
            }
            if (piece.garment == "coat" && piece.name == "forepart" && !piece.notches.empty()) {
                add_canvas(piece);
            }
            if (piece.garment == "gaiters" && !piece.lines.empty()) {
                add_opening_facing(piece);
            }
        }
        for (const PatternPiece& piece : pieces_) {
            if (piece.name == "pocket flap") {
                add_bags_below(piece);
            }
        }
        add_pockets_of_breeches();
        add_foot_strap();
        add_garter();
        return std::move(made_);
    }

  private:
    const PatternSource& source_;
    const std::vector<PatternPiece>& pieces_;
    std::vector<PatternPiece> made_;

    [[nodiscard]] Material linen() const {
        Material linen;
        linen.name = term(source_.uniform.language, "unbleached linen");
        return linen;
    }

    void keep(PatternPiece piece) {
        finish(piece, source_.allowance);
        made_.push_back(std::move(piece));
    }

    /// Whole garments are lined by the pattern of their cloth. A facing lies beside the lining, not
    /// over it; gaiters have none.
    static bool is_lined_alike(const PatternPiece& piece) {
        const bool leg = piece.garment == "breeches" && piece.name.ends_with(" leg");
        const bool body = (piece.garment == "coat" || piece.garment == "waistcoat") &&
                          piece.name != "front facing";
        return piece.draft && piece.stuff == "cloth" && (leg || body);
    }

    /// As its cloth is cut; only those of the sleeve and beside a facing have patterns of their
    /// own.
    void add_lining(const PatternPiece& of) {
        PatternPiece piece = of;
        const Material* own = source_.uniform.material(property_id("coat.lining"));
        piece.stuff = "lining";
        piece.is_lining = true;
        // Nothing is sewn or buttoned to it; bags hang between it and the cloth.
        std::erase_if(piece.slits, [&](const Chain& slit) { return is_mouth(slit, of.outline); });
        piece.lines.clear();
        piece.buttons.clear();
        piece.holes.clear();
        piece.eyelets.clear();
        piece.remarks.clear();
        piece.inlay = 0;
        piece.inlay_seam.clear();
        piece.inlay_line.clear();
        piece.words.clear();
        piece.closes_in_front = false;
        piece.cloth = of.garment == "coat" && own != nullptr ? *own : linen();
        piece.cloth_key = "coat.lining";
        piece.ease = 0;
        piece.repeats = of.name.find("sleeve") == std::string::npos && of.lined_part.empty();
        if (!of.lined_part.empty()) {
            line_beside_facing(piece);
        } else if (!piece.repeats) {
            const double end = shapes::box(of.outline).bottom - kSleeveLiningShort;
            constexpr double far = shapes::kBeyondAll;
            piece.outline = shapes::within({of.outline}, {-far, -far, far, end});
        }
        keep(std::move(piece));
    }

    /// What lies on the facing is not on the lining.
    static void line_beside_facing(PatternPiece& piece) {
        piece.outline = std::exchange(piece.lined_part, {});
        std::erase_if(piece.notches, [&](const auto& notch) {
            return !inside({shapes::enlarged(piece.outline, 1)}, notch.at);
        });
    }

    /// Behind the front edge from the shoulder down: over the whole breast, then narrowing to below
    /// the waist, at the height of the first mark.
    void add_canvas(const PatternPiece& fore) {
        const double top = shapes::box(fore.outline).top;
        const double waist = fore.notches[0].at.y;
        const double end = waist + kCanvasBelowWaist;
        PatternPiece piece = canvas_of(source_, fore, "canvas");
        std::vector<double> heights;
        for (double y = top + 1; y < end; y += kCanvasStep) {
            heights.push_back(y);
        }
        piece.outline = along_front(fore.outline, heights, [&](double y) {
            const double down = std::clamp((y - waist / 2) / (end - waist / 2), 0.0, 1.0);
            return kCanvasWide + (kCanvasNarrow - kCanvasWide) * down;
        });
        keep_drawn(std::move(piece), source_.allowance, made_);
    }

    /// Below the mouth of a flap; beside it, where that stands upright.
    void add_bags_below(const PatternPiece& flap) {
        const Chain* mouth = nullptr;
        for (const PatternPiece& piece : pieces_) {
            const bool cut = piece.garment == flap.garment && piece.name == "forepart";
            mouth = cut && !piece.slits.empty() ? &piece.slits.front() : mouth;
        }
        if (mouth == nullptr) {
            const double wide = shapes::box(flap.outline).width();
            add_bags(
                {flap.garment, "pocket bag", wide - 2 * kMouthWithinFlap, kBagDepth, flap.number});
            return;
        }
        const Point way = mouth->back() - mouth->front();
        if (std::abs(way.x) > std::abs(way.y)) {
            add_bags({flap.garment, "pocket bag", length(way), kBagDepth, flap.number});
        } else {
            add_upright_bag(flap, length(way));
        }
    }

    /// One side is sewn to the mouth; the bag hangs behind it, deeper than its foot.
    void add_upright_bag(const PatternPiece& flap, double mouth) {
        PatternPiece piece{.garment = flap.garment,
                           .name = "pocket bag",
                           .cloth = linen(),
                           .cloth_key = "coat.lining"};
        piece.stuff = "lining";
        const double high = kBagAbove + mouth + kBagBelow;
        piece.outline = bag(kUprightBag, high);
        constexpr double aside = 6;
        piece.lines = {{{aside, kBagAbove}, {aside, kBagAbove + mouth}}};
        say_along(piece, piece.lines.front(), "mouth of the pocket");
        add_notch(piece, {0, kBagAbove});
        add_notch(piece, {0, kBagAbove + mouth});
        piece.number = 2 * flap.number;
        keep(std::move(piece));
    }

    /// Its lower corners are round; a small bag is round below.
    static Chain bag(double wide, double deep) {
        const double round = std::min(kBagCorner, wide / 2);
        Chain outline = {{0, 0}, {wide, 0}};
        constexpr double quarter = std::numbers::pi / 2;
        for (const bool left : {false, true}) {
            const double from = left ? quarter : 0;
            const Point middle{left ? round : wide - round, deep - round};
            const Chain corner = shapes::arc(middle, round, round, from, from + quarter);
            outline.insert(outline.end(), corner.begin(), corner.end());
        }
        return outline;
    }

    /// Bags of some pockets of one size.
    struct Bags {
        std::string garment;
        const char* name;
        /// Between the ends of the mouth, and how deep.
        double mouth;
        double depth;
        int pockets;
    };

    void add_bags(const Bags& bags) {
        PatternPiece piece{.garment = bags.garment,
                           .name = bags.name,
                           .cloth = linen(),
                           .cloth_key = "coat.lining"};
        piece.stuff = "lining";
        piece.outline = bag(bags.mouth, bags.depth);
        // Two to a pocket.
        piece.number = 2 * bags.pockets;
        keep(std::move(piece));
    }

    void add_pockets_of_breeches() {
        const Flat* front = source_.flat("flat-breeches-front");
        const FlatPart* fob = front != nullptr ? front->part("fob-left") : nullptr;
        const auto mouth = front != nullptr ? breeches_mouth(*front) : std::nullopt;
        const FlatPart* leg = front != nullptr ? front->part("waistband") : nullptr;
        if (mouth && leg != nullptr) {
            PatternPiece welt{.garment = "breeches",
                              .name = "pocket welt",
                              .cloth = leg->cloth,
                              .cloth_key = leg->cloth_key};
            const double along = length(mouth->second - mouth->first) + 2 * kWeltBeyondMouth;
            // The grain runs along the mouth, so that it does not stretch.
            welt.outline = {{0, 0}, {kWeltDeep, 0}, {kWeltDeep, along}, {0, along}};
            welt.number = 2;
            keep(std::move(welt));
            add_bags({"breeches", "pocket bag", along, kBagDepth, 2});
        }
        if (fob != nullptr) {
            const double across = shapes::box(shapes::joined(fob->outline)).width();
            add_bags({"breeches", "fob bag", across + kFobWider, kFobDepth, 2});
        }
    }

    /// Linen behind the buttonholes of a gaiter or behind its buttons, along the edge that opens.
    void add_opening_facing(const PatternPiece& side) {
        const bool holes = !side.holes.empty();
        PatternPiece piece{.garment = side.garment,
                           .name = holes ? "buttonhole facing" : "button facing",
                           .cloth = linen(),
                           .cloth_key = side.cloth_key};
        piece.stuff = "lining";
        piece.draft = true;
        const Chain& line = side.lines.front();
        // Holes lie to the left of the line, buttons to its right; the edges lie beyond it.
        piece.outline =
            shapes::common({side.outline}, beside(line, holes ? 1 : -1, kOpeningFacing));
        piece.lines = {line};
        piece.number = 2;
        piece.paired = true;
        if (piece.outline.size() > 2) {
            keep(std::move(piece));
        }
    }

    /// Once round the leg below the knee, where it is drawn.
    void add_garter() {
        const Flat* outer = source_.flat("flat-gaiter-outer");
        const FlatPart* part = outer != nullptr ? outer->part("garter") : nullptr;
        if (part == nullptr || part->outline.empty()) {
            return;
        }
        const Chain outline = shapes::joined(part->outline);
        const double round = shapes::box(outline).width();
        add_strap(*part, "garter", depth_of(outline), 2 * round + kGarterEnds);
    }

    void add_foot_strap() {
        const Flat* outer = source_.flat("flat-gaiter-outer");
        const FlatPart* part = outer != nullptr ? outer->part("foot-strap") : nullptr;
        if (part != nullptr && !part->outline.empty()) {
            const Rect seen = shapes::box(part->outline.front());
            add_strap(*part, "foot strap", seen.width(), 2 * seen.height() + kUnderTheSole);
        }
    }

    /// A pair, of leather, cut at the line.
    void add_strap(const FlatPart& part, const char* name, double wide, double along) {
        PatternPiece piece{
            .garment = "gaiters", .name = name, .cloth = part.cloth, .cloth_key = part.cloth_key};
        piece.stuff = "leather";
        piece.outline = {{0, 0}, {wide, 0}, {wide, along}, {0, along}};
        if (name == std::string_view("foot strap")) {
            const double from_end = kStrapHole;
            piece.holes = {{{wide / 2, from_end}, {wide / 2, 2 * from_end}}};
        }
        piece.number = 2;
        piece.at_line = true;
        // A long strap is cut by its measures.
        piece.draft = along > kLongStrap;
        finish(piece, 0);
        made_.push_back(std::move(piece));
    }
};

}  // namespace

std::vector<PatternPiece> lesser_pieces(const PatternSource& source,
                                        const std::vector<PatternPiece>& pieces) {
    return Lesser(source, pieces).all();
}

}  // namespace platewright
