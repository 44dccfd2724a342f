// SPDX-License-Identifier: MIT
// Rows of the table: the coat and everything sewn on it.
#pragma once

#include <array>

#include "vocabulary/rows.h"

namespace platewright::rows {

/// Facings follow the lapels, and where a coat has none, the facing colour.
inline constexpr std::string_view kAsLapels = "as lapels.cloth or facings.cloth";

/// The coat and everything sewn on it.
inline constexpr std::array kCoat = std::to_array<Property>({
    choice("coat.cut",
           "long",
           "long|short=coatee|jacket=sleeved-waistcoat|surtout=frock",
           "a long coat, a coat with short skirts, a sleeved waistcoat, or a wide surtout; `none` "
           "for a man in his waistcoat")
        .or_none()
        .makes_garment()
        .seen_in("body")
        .by_one_word(),
    cloth("coat.cloth", "dark blue", "the coat: body, sleeves and skirts")
        .by_one_word()
        .when("coat.cut")
        .makes_garment(),
    cloth(
        "coat.lining", "white", "the lining, seen inside the skirts and where they are turned back")
        .called("lining")
        .when("coat.cut")
        .makes_garment()
        .seen_in("skirts"),
    lace("coat.lace", "coat lace", "lace along the front edges of the coat")
        .when("coat.cut")
        .seen_in("body"),
    cloth("facings.cloth",
          "red",
          "the facing colour: lapels, collar and cuffs, where they are not given a colour of their "
          "own")
        .by_one_word()
        .is_no_work(),
    lace("lace.cloth", "regimental lace", "the regiment's own lace, for whatever follows it")
        .by_one_word()
        .is_no_work(),
    words("lace.pattern", "none", 60, "the pattern of the regiment's lace, in words")
        .when("lace.cloth")
        .is_no_work(),
    choice("lapels.shape",
           "full",
           "full=cut-away|half=to-the-waist",
           "full lapels on fronts that fall open, or half lapels on fronts that close to the waist")
        .when("coat.cut = long or short and lapels.cloth")
        .makes_garment()
        .seen_in("breast"),
    cloth("lapels.cloth",
          "as facings.cloth",
          "the lapels; `none` for a coat that closes with a plain edge")
        .or_none()
        .by_one_word()
        .when("coat.cut = long or short"),
    measure("lapels.width",
            "none",
            30,
            200,
            "width of the lapels where an order states it, the same above and below; figure and "
            "tailor's sheets follow it")
        .or_none()
        .when("coat.cut = long or short and lapels.cloth"),
    piping("lapels.piping", "lapel piping", "cord of cloth along the edge of the lapels")
        .when("coat.cut = long or short and lapels.cloth"),
    count("lapels.buttons",
          "7",
          14,
          "buttons on each lapel, or down the front edge of a coat without lapels")
        .when("coat.cut"),
    choice("lapels.buttonholes",
           "plain",
           "plain=worked|laced=looped",
           "the buttonholes of the lapels: worked in thread, or set with loops of lace")
        .or_none()
        .when("coat.cut = long or short and lapels.cloth")
        .seen_in("breast"),
    cloth("lapels.lace",
          "white",
          "the lace of the loops, where the buttonholes are laced; a metal gives metal lace")
        .called("buttonhole lace")
        .when("coat.cut = long or short and lapels.cloth and lapels.buttonholes = laced"),
    cloth("collar.cloth", kAsLapels, "the collar").by_one_word().when("coat.cut and collar.shape"),
    choice("collar.shape",
           "falling",
           "falling=turned-down|standing=upright|stand-and-fall=high-turned-down",
           "turned down on the coat, standing up round the neck, or standing with its upper half "
           "turned down")
        .or_none()
        .by_one_word()
        .when("coat.cut")
        .seen_in("collar"),
    measure("collar.height",
            "none",
            10,
            150,
            "height of the collar at the middle of the back, where an order states it; figure and "
            "tailor's sheets follow it")
        .or_none()
        .when("coat.cut and collar.shape"),
    piping("collar.piping", "collar piping", "cord of cloth along the edge of the collar")
        .when("coat.cut and collar.shape"),
    lace("collar.lace", "collar lace", "lace along the edge of the collar")
        .when("coat.cut and collar.shape"),
    cloth("cuffs.cloth", kAsLapels, "the cuffs").by_one_word().when("coat.cut"),
    choice("cuffs.shape",
           "round",
           "round=plain|slashed=slit|pointed=peaked|flap=flapped|open=split",
           "a plain band; a band with a buttoned slit; one that rises to a point; one with an "
           "upright buttoned flap; or a wide one open behind")
        .by_one_word()
        .when("coat.cut")
        .seen_in("cuff"),
    cloth("cuffs.flap", "as cuffs.cloth", "the upright flap of the cuffs")
        .called("cuff flaps")
        .when("coat.cut and cuffs.shape = flap"),
    count("cuffs.buttons", "3", 6, "buttons on each cuff").when("coat.cut"),
    measure("cuffs.height",
            "none",
            40,
            200,
            "height of the cuffs, where an order states it; figure and tailor's sheets follow it")
        .or_none()
        .when("coat.cut"),
    piping("cuffs.piping", "cuff piping", "cord of cloth along the upper edge of the cuffs")
        .when("coat.cut"),
    cloth("rings.cloth", "as buttons.metal", "lace rings round the cuffs")
        .by_one_word()
        .called("cuff rings")
        .when("coat.cut and rings.number"),
    count("rings.number", "none", 4, "rings of lace round each cuff")
        .when("coat.cut")
        .seen_in("cuff"),
    measure("rings.width", "15 mm", 3, 40, "width of one ring").when("coat.cut and rings.number"),
    choice("turnbacks.shape",
           "full",
           "full=all-four|front=front-only",
           "all four corners of the skirts turned back, or only the front ones")
        .or_none()
        .when("coat.cut = long or short")
        .seen_in("skirts")
        .by_one_word(),
    choice("turnbacks.held",
           "hooked",
           "hooked|sewn=sewn-down",
           "hooked, so that they can be let down, or sewn down for good")
        .when("coat.cut = long or short and turnbacks.shape")
        .seen_in("turnback"),
    cloth("turnbacks.cloth", "as coat.lining", "the corners of the skirts that are turned back")
        .by_one_word()
        .when("coat.cut = long or short and turnbacks.shape"),
    piping("turnbacks.piping", "turnback piping", "cord of cloth along the edge of the turnbacks")
        .when("coat.cut = long or short and turnbacks.shape"),
    ornament("turnbacks.ornament", "button", "what sits where the turnbacks are held together")
        .when("coat.cut = long or short and turnbacks.shape")
        .seen_in("turnback"),
    cloth("turnbacks.ornament-cloth", kAsLapels, "the colour of that ornament")
        .called("turnback ornament")
        .when("coat.cut = long or short and turnbacks.shape and turnbacks.ornament != button or "
              "none"),
    choice("pockets.direction",
           "horizontal",
           "horizontal=cross|vertical=long|slanted=slanting",
           "pocket flaps set across the skirts, upright, or slanting")
        .by_one_word()
        .when("coat.cut = long or short or surtout")
        .seen_in("flap"),
    choice("pockets.shape",
           "scalloped",
           "plain=straight|pointed=three-pointed|scalloped",
           "the lower edge of the flaps: straight, in three points, or in scallops")
        .when("coat.cut = long or short or surtout")
        .seen_in("flap"),
    choice("pockets.size",
           "usual",
           "usual=small|large",
           "flaps of the usual size, or larger by a third")
        .when("coat.cut = long or short or surtout")
        .seen_in("flap"),
    measure(
        "pockets.width",
        "none",
        60,
        300,
        "width of the pocket flaps from side to side, where an order states it; tailor's sheets "
        "follow it")
        .or_none()
        .when("coat.cut = long or short or surtout and pockets.direction = horizontal or vertical"),
    measure("pockets.depth",
            "none",
            30,
            350,
            "depth of the pocket flaps from top to bottom, where an order states it; tailor's "
            "sheets follow it")
        .or_none()
        .when("coat.cut = long or short or surtout and pockets.direction = horizontal or vertical"),
    count("pockets.buttons", "3", 6, "buttons on each pocket flap")
        .when("coat.cut = long or short or surtout"),
    piping("pockets.piping", "pocket piping", "cord of cloth along the edge of the pocket flaps")
        .when("coat.cut = long or short or surtout"),
    lace("pockets.lace", "pocket lace", "lace along the edge of the pocket flaps")
        .when("coat.cut = long or short or surtout"),
    cloth("straps.cloth",
          "as coat.cloth",
          "the shoulder straps that hold the belts; `none` for bare shoulders")
        .or_none()
        .by_one_word()
        .called("shoulder straps")
        .when("coat.cut and epaulettes.worn != both")
        .seen_in("shoulder"),
    piping("straps.piping",
           "shoulder-strap piping",
           "cord of cloth along the edge of the shoulder straps")
        .when("coat.cut and epaulettes.worn != both and straps.cloth"),
    cloth("wings.cloth", "none", "the wings or rolls at the tops of the sleeves")
        .or_none()
        .by_one_word()
        .when("coat.cut")
        .shown_as("red"),
    choice("wings.shape",
           "wing",
           "wing|roll",
           "a flat wing round the top of the sleeve, or a stuffed roll")
        .when("coat.cut and wings.cloth")
        .seen_in("shoulder")
        .by_one_word(),
    lace("wings.lace", "wing lace", "lace along the edge of the wings")
        .when("coat.cut and wings.cloth")
        .shown_as("white"),
    choice("epaulettes.worn",
           "none",
           "both=two|right|left",
           "the shoulders that carry an epaulette; left and right are the wearer's")
        .or_none()
        .when("coat.cut")
        .seen_in("shoulders")
        .by_one_word(),
    cloth("epaulettes.cloth", "as buttons.metal", "strap and field of the epaulettes")
        .by_one_word()
        .when("coat.cut and epaulettes.worn"),
    cloth("epaulettes.fringe", "as epaulettes.cloth", "the fringe; `none` for epaulettes without")
        .or_none()
        .called("epaulette fringe")
        .when("coat.cut and epaulettes.worn"),
    choice("epaulettes.fringe-kind",
           "thread",
           "thread=thin|bullion=twisted",
           "a fringe of fine threads, or of thick twisted bullion")
        .when("coat.cut and epaulettes.worn and epaulettes.fringe")
        .seen_in("shoulder"),
    count("epaulettes.stripes", "none", 4, "stripes along the strap of the epaulette")
        .when("coat.cut and epaulettes.worn"),
    cloth("epaulettes.stripe-cloth", "red", "the stripes of the epaulette")
        .called("epaulette stripes")
        .when("coat.cut and epaulettes.worn and epaulettes.stripes"),
    choice(
        "epaulettes.companion",
        "strap",
        "strap|fringeless",
        "what the other shoulder carries where only one has an epaulette: the shoulder strap, an "
        "epaulette without fringe, or nothing")
        .or_none()
        .when("coat.cut and epaulettes.worn = left or right")
        .seen_in("shoulders"),
    choice("knot.worn",
           "none",
           "right|left|both",
           "the shoulder that carries a knot of cord with its ends hanging")
        .or_none()
        .when("coat.cut")
        .seen_in("shoulders")
        .by_one_word(),
    cloth("knot.cloth", "as buttons.metal", "the shoulder knot")
        .by_one_word()
        .called("shoulder knot")
        .when("coat.cut and knot.worn"),
    choice("cords.worn",
           "none",
           "right|left",
           "the shoulder from which plaited cords hang across to the lapel")
        .or_none()
        .when("coat.cut")
        .seen_in("shoulders")
        .by_one_word(),
    cloth("cords.cloth", "white", "the shoulder cords")
        .by_one_word()
        .called("shoulder cords")
        .when("coat.cut and cords.worn"),
    metal("buttons.metal", "yellow", "all buttons of coat, waistcoat and hat").by_one_word(),
    words("buttons.number",
          "none",
          6,
          "what is stamped on the buttons: the regiment's number or letters")
        .shown_as("4"),
    choice("buttons.rim",
           "roped",
           "roped|plain|beaded",
           "the rim of the buttons: like a rope, plain, or a row of beads")
        .seen_in("button"),
    ornament("buttons.device", "none", "a device stamped on the buttons").shown_as("crown"),
});

}  // namespace platewright::rows
