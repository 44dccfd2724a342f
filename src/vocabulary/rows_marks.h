// SPDX-License-Identifier: MIT
// Rows of the table: marks of rank and service, equipment and headgear.
#pragma once

#include <array>

#include "vocabulary/rows.h"

namespace platewright::rows {

/// Sleeves that may carry marks.
inline constexpr std::string_view kSleeves = "both|left|right";
/// Shapes of sleeve marks.
inline constexpr std::string_view kShapes =
    "bars=straight|slanted=slanting|chevrons-up|chevrons-down";
/// Places on a sleeve.
inline constexpr std::string_view kPlaces = "above-cuff=forearm|upper-arm";

/// Marks of rank and service.
inline constexpr std::array kMarks = std::to_array<Property>({
    choice("marks.shape",
           "none",
           kShapes,
           "rank marks on the sleeves: bars along the cuff, slanting bars, or chevrons pointing up "
           "or down")
        .or_none()
        .by_one_word()
        .when("coat.cut")
        .seen_in("forearm"),
    count("marks.number", "1", 6, "how many marks on a sleeve").when("coat.cut and marks.shape"),
    cloth("marks.cloth", "white", "the tape or lace of the rank marks; a metal gives metal lace")
        .called("rank marks")
        .when("coat.cut and marks.shape and marks.number"),
    choice("marks.sleeves",
           "both",
           kSleeves,
           "the sleeves that carry marks; left and right are the wearer's")
        .when("coat.cut and marks.shape and marks.number")
        .seen_in("trunk"),
    choice("marks.place", "above-cuff", kPlaces, "where on the sleeve the marks sit")
        .when("coat.cut and marks.shape and marks.number")
        .seen_in("sleeve"),
    measure("marks.width", "12 mm", 2, 60, "width of one mark")
        .when("coat.cut and marks.shape and marks.number"),
    measure("marks.spacing", "10 mm", 0, 60, "cloth left free between two marks")
        .when("coat.cut and marks.shape and marks.number"),
    measure("marks.height",
            "none",
            0,
            300,
            "cloth left free below the lowest mark; `none` for the spacing")
        .or_none()
        .when("coat.cut and marks.shape and marks.number"),
    choice("service.shape", "chevrons-up", kShapes, "marks for years of service")
        .by_one_word()
        .when("coat.cut and service.number")
        .seen_in("upper-arm"),
    count("service.number", "none", 6, "how many marks of service on a sleeve").when("coat.cut"),
    cloth("service.cloth", "white", "the tape or lace of the service marks")
        .called("service marks")
        .when("coat.cut and service.number"),
    choice("service.sleeves", "left", kSleeves, "the sleeves that carry marks of service")
        .when("coat.cut and service.number")
        .seen_in("trunk"),
    choice("service.place", "upper-arm", kPlaces, "where on the sleeve they sit")
        .when("coat.cut and service.number")
        .seen_in("sleeve"),
    measure("service.width", "12 mm", 2, 60, "width of one mark of service")
        .when("coat.cut and service.number"),
    measure("service.spacing", "10 mm", 0, 60, "cloth left free between two marks of service")
        .when("coat.cut and service.number"),
    ornament("badge.device", "none", "the badge for long service, worn on the left breast")
        .by_one_word()
        .when("coat.cut")
        .seen_in("badge")
        .shown_as("star"),
    count("badge.number", "1", 4, "how many badges").when("coat.cut and badge.device"),
    cloth("badge.cloth", "as buttons.metal", "the badges for long service")
        .called("service badges")
        .when("coat.cut and badge.device and badge.number"),
    ornament("medal.device", "none", "a medal on the breast, hung from a ribbon")
        .by_one_word()
        .is_kit()
        .seen_in("badge")
        .shown_as("crown"),
    metal("medal.metal", "silver", "the medal").when("medal.device").is_kit(),
    cloth("medal.ribbon", "red", "the ribbon of the medal")
        .called("medal ribbon")
        .when("medal.device")
        .is_kit(),
    metal("gorget.metal", "none", "the gorget at the throat")
        .or_none()
        .by_one_word()
        .is_kit()
        .seen_in("collar")
        .shown_as("silver"),
    choice("gorget.hung",
           "buttons",
           "buttons|ribbon",
           "hung from the upper buttons of the lapels, or from a ribbon round the neck")
        .when("gorget.metal")
        .is_kit()
        .seen_in("collar"),
    cloth("gorget.ribbon", "as facings.cloth", "ribbon or bows of the gorget")
        .called("gorget ribbon")
        .when("gorget.metal")
        .is_kit(),
    choice("sash.worn",
           "none",
           "waist|shoulder",
           "the sash: round the waist, or over the right shoulder")
        .or_none()
        .is_kit()
        .seen_in("trunk")
        .by_one_word(),
    cloth("sash.cloth", "crimson", "the sash").by_one_word().when("sash.worn").is_kit(),
});

/// Belts and equipment.
inline constexpr std::array kKit = std::to_array<Property>({
    leather("belts.leather", "white", "the belts, also that of a drum")
        .by_one_word()
        .when("belts.worn")
        .or_else_when("drum.shell")
        .is_kit(),
    choice("belts.worn",
           "crossed",
           "crossed=two|single=one|waist=waist-belt",
           "both belts crossed on the breast; only that of the cartridge box; or that of the box "
           "with a waist belt")
        .or_none()
        .by_one_word()
        .is_kit()
        .seen_in("trunk"),
    metal("belts.plate", "as buttons.metal", "the plate on the belts")
        .or_none()
        .called("belt plate")
        .when("belts.worn = crossed or waist")
        .is_kit(),
    leather("box.leather", "black", "the cartridge box; `none` for a man without")
        .or_none()
        .by_one_word()
        .called("cartridge box")
        .when("belts.worn")
        .is_kit()
        .seen_in("box"),
    ornament("box.device", "none", "a badge on the flap of the cartridge box")
        .when("belts.worn and box.leather")
        .is_kit()
        .shown_as("crown")
        .seen_in("box"),
    leather("scabbard.leather", "black", "the scabbards of bayonet and sword")
        .by_one_word()
        .when("belts.worn = crossed or waist")
        .or_else_when("sword.worn")
        .is_kit(),
    metal("hilt.metal", "steel", "the socket and shank of the bayonet")
        .by_one_word()
        .called("bayonet")
        .when("belts.worn = crossed or waist")
        .is_kit(),
    choice("sword.worn",
           "none",
           "hanger=short-sabre|sword=straight-sword",
           "a hanger or a straight sword at the left side")
        .or_none()
        .is_kit()
        .seen_in("side")
        .by_one_word(),
    metal("sword.hilt", "as buttons.metal", "the hilt of the sword")
        .by_one_word()
        .called("sword hilt")
        .when("sword.worn")
        .is_kit(),
    leather("sword.belt",
            "as belts.leather",
            "the frog of the sword, and its belt where no other belt carries it")
        .called("sword belt")
        .when("sword.worn")
        .is_kit(),
    cloth("sword.knot", "none", "the knot of cord or ribbon on the sword hilt")
        .or_none()
        .called("sword knot")
        .when("sword.worn")
        .is_kit()
        .shown_as("crimson"),
    cloth("haversack.cloth", "none", "the haversack, on the left side")
        .or_none()
        .by_one_word()
        .is_kit()
        .seen_in("haversack"),
    cloth("canteen.cloth", "none", "the canteen, on its cord")
        .or_none()
        .by_one_word()
        .is_kit()
        .shown_as("steel")
        .seen_in("haversack"),
    leather("knapsack.leather", "none", "the knapsack, seen from behind")
        .or_none()
        .by_one_word()
        .is_kit()
        .shown_as("brown")
        .seen_in("knapsack"),
    cloth("blanket.cloth", "none", "cloak or blanket, rolled on the knapsack or across the back")
        .or_none()
        .by_one_word()
        .is_kit()
        .shown_as("iron grey")
        .seen_in("knapsack"),
    cloth("drum.shell", "none", "the shell of the drum; `none` for a man without a drum")
        .or_none()
        .by_one_word()
        .is_kit()
        .shown_as("red")
        .seen_in("drum"),
    cloth("drum.hoops", "as facings.cloth", "the hoops of the drum")
        .called("drum hoops")
        .when("drum.shell")
        .is_kit(),
    cloth("fife.case", "none", "the case of the fife, on its cord")
        .or_none()
        .by_one_word()
        .called("fife case")
        .is_kit()
        .shown_as("yellow")
        .seen_in("fife"),
    choice("musket.carried",
           "none",
           "beside=ordered",
           "the musket, standing beside the man's right foot")
        .or_none()
        .by_one_word()
        .is_kit()
        .seen_in("musket"),
    leather("musket.sling", "as belts.leather", "the sling of the musket")
        .called("musket sling")
        .when("musket.carried")
        .is_kit(),
});

/// Hats and caps.
inline constexpr std::array kHat = std::to_array<Property>({
    choice("hat.shape",
           "three-cornered",
           "three-cornered=cocked|two-cornered=athwart|round|fur-cap=grenadier-cap|mitre=mitre-"
           "cap|light-cap=crested-cap|forage-cap=fatigue-cap|shako",
           "a hat cocked in three or in two; a round hat; a tall fur cap; a mitre cap; a light cap "
           "with a crest; a forage cap; or a shako")
        .or_none()
        .makes_garment()
        .seen_in("hat")
        .by_one_word(),
    cloth("hat.felt", "black", "the hat or cap: felt, fur or cloth")
        .called("hat")
        .when("hat.shape")
        .makes_garment()
        .by_one_word(),
    cloth("hat.front",
          "as facings.cloth",
          "the front of a mitre cap, the turban of a light cap, the band of a forage cap")
        .called("cap front")
        .when("hat.shape = mitre or light-cap or forage-cap"),
    cloth("hat.patch", "as facings.cloth", "the patch of cloth high on the back of a fur cap")
        .called("cap patch")
        .when("hat.shape = fur-cap"),
    metal("hat.plate", "as buttons.metal", "the plate on the front of a cap or shako")
        .or_none()
        .called("cap plate")
        .when("hat.shape = fur-cap or light-cap or shako"),
    ornament("hat.device", "none", "the badge on the front of a cap or shako")
        .when("hat.shape = fur-cap or mitre or light-cap or shako or forage-cap")
        .shown_as("grenade"),
    cloth("hat.device-cloth", "as buttons.metal", "the metal or cloth of that badge")
        .called("cap badge")
        .when("hat.device and hat.shape = fur-cap or mitre or light-cap or shako or forage-cap"),
    cloth(
        "hat.tape", "white", "the tape or lace round the edge of the hat; a metal gives metal lace")
        .or_none()
        .called("hat tape")
        .when("hat.shape"),
    cloth("hat.cockade", "black", "the cockade; its outer ring where it has several")
        .or_none()
        .called("cockade")
        .when("hat.shape and hat.shape != forage-cap or mitre")
        .seen_in("cockade"),
    cloth("hat.cockade-middle", "none", "the second ring of the cockade")
        .or_none()
        .called("middle of the cockade")
        .when("hat.cockade and hat.shape and hat.shape != forage-cap or mitre")
        .shown_as("white")
        .seen_in("cockade"),
    cloth("hat.cockade-centre", "none", "the innermost ring of the cockade")
        .or_none()
        .called("centre of the cockade")
        .when("hat.cockade and hat.shape and hat.shape != forage-cap or mitre")
        .shown_as("red")
        .seen_in("cockade"),
    cloth("hat.loop", "white", "the loop that holds the cockade; a metal gives metal lace")
        .or_none()
        .called("cockade loop")
        .when("hat.cockade and hat.shape and hat.shape != forage-cap or mitre")
        .seen_in("cockade"),
    cloth("hat.tuft", "none", "the woollen tuft above the cockade")
        .or_none()
        .called("hat tuft")
        .when("hat.shape and hat.shape != forage-cap")
        .seen_in("hat")
        .shown_as("red"),
    cloth("hat.plume", "none", "the tall plume above the cockade")
        .or_none()
        .called("plume")
        .when("hat.shape and hat.shape != forage-cap")
        .seen_in("hat"),
    cloth("hat.plume-tip", "as hat.plume", "the upper part of the plume")
        .or_none()
        .called("tip of the plume")
        .when("hat.plume and hat.shape and hat.shape != forage-cap")
        .shown_as("red"),
    cloth("hat.feather", "none", "the ostrich feather laid round the edge of a hat, or over a cap")
        .or_none()
        .called("feather")
        .when("hat.shape = three-cornered or two-cornered or round or light-cap")
        .seen_in("hat"),
    cloth("hat.tassels", "none", "tassels in the corners of a hat; cords and tassels of a cap")
        .or_none()
        .called("tassels")
        .when("hat.shape and hat.shape != light-cap")
        .seen_in("hat"),
    cloth("hat.cover", "none", "the cover of waxed linen over a hat or shako")
        .or_none()
        .called("hat cover")
        .when("hat.shape = three-cornered or two-cornered or round or shako")
        .is_kit()
        .seen_in("hat")
        .shown_as("black"),
});

}  // namespace platewright::rows
