// SPDX-License-Identifier: MIT
// Terms: the choices of properties, as they are printed after the name of what they are said of;
// French agrees with it in gender and number. Sources as in terms_dress.h.
#pragma once

#include <array>

#include "words/term.h"

namespace platewright {

/// A choice of one property, of one trait in every group (`.sleeves`), or, without a property, of
/// all.
struct ChoiceTerm {
    std::string_view property;
    TradeTerm term;
};

/// The choices, in the order of the table of properties.
inline constexpr std::array kChoiceTerms = std::to_array<ChoiceTerm>({
    {"", {"none", "sans", "ohne"}},
    {"waistcoat.cut", {"single", "single-breasted", "droite", "einreihig"}},
    {"waistcoat.cut", {"double", "double-breasted", "croisée", "zweireihig"}},
    {"breeches.cut", {"breeches", "culotte", "Kniehose"}},
    {"breeches.cut", {"overalls", "pantalon de route", "Überhose"}},
    {"gaiters.height", {"long", "longues", "lang"}},
    {"gaiters.height", {"half", "demi-guêtres", "halb"}},
    {"coat.cut", {"long", "long", "lang"}},
    {"coat.cut", {"short", "court", "kurz"}},
    {"coat.cut", {"jacket", "gilet à manches", "Ärmelweste"}},
    {"coat.cut", {"surtout", "surtout", "Überrock"}},
    {"lapels.shape", {"full", "entiers", "ganz"}},
    {"lapels.shape", {"half", "à mi-corps", "halb"}},
    {"lapels.buttonholes", {"plain", "unies", "schlicht"}},
    {"lapels.buttonholes", {"laced", "galonnées", "mit Litzen"}},
    {"collar.shape", {"falling", "rabattu", "umgelegt"}},
    {"collar.shape", {"standing", "droit", "stehend"}},
    {"collar.shape", {"stand-and-fall", "stand and fall", "droit et rabattu", "hoch umgelegt"}},
    {"cuffs.shape", {"round", "ronds", "rund"}},
    {"cuffs.shape", {"slashed", "fendus", "geschlitzt"}},
    {"cuffs.shape", {"pointed", "en pointe", "spitz"}},
    {"cuffs.shape", {"flap", "with a flap", "à patte", "mit Patte"}},
    {"cuffs.shape", {"open", "ouverts, en botte", "offen"}},
    {"turnbacks.shape", {"full", "tous les quatre", "alle vier"}},
    {"turnbacks.shape", {"front", "front only", "devant seulement", "nur vorn"}},
    {"turnbacks.held", {"hooked", "agrafés", "eingehakt"}},
    {"turnbacks.held", {"sewn", "sewn down", "cousus", "festgenäht"}},
    {"pockets.direction", {"horizontal", "en travers", "quer"}},
    {"pockets.direction", {"vertical", "en long", "längs"}},
    {"pockets.direction", {"slanted", "en biais", "schräg"}},
    {"pockets.shape", {"plain", "droites", "gerade"}},
    {"pockets.shape", {"pointed", "à trois pointes", "dreispitzig"}},
    {"pockets.shape", {"scalloped", "festonnées", "geschweift"}},
    {"pockets.size", {"usual", "ordinaires", "gewöhnlich"}},
    {"pockets.size", {"large", "grandes", "groß"}},
    {"wings.shape", {"wing", "flat", "plats", "flach"}},
    {"wings.shape", {"roll", "stuffed roll", "bourrelets", "Wülste"}},
    {"epaulettes.worn", {"both", "both shoulders", "aux deux épaules", "auf beiden Schultern"}},
    {"epaulettes.worn",
     {"right", "right shoulder", "à l’épaule droite", "auf der rechten Schulter"}},
    {"epaulettes.worn", {"left", "left shoulder", "à l’épaule gauche", "auf der linken Schulter"}},
    {"epaulettes.fringe-kind", {"thread", "de fil", "Faden"}},
    {"epaulettes.fringe-kind", {"bullion", "à torsades", "Kantillen"}},
    {"epaulettes.companion", {"strap", "shoulder strap", "patte d’épaule", "Achselklappe"}},
    {"epaulettes.companion",
     {"fringeless", "epaulette without fringe", "contre-épaulette", "Kontreepaulette"}},
    {".worn", {"both", "both shoulders", "aux deux épaules", "auf beiden Schultern"}},
    {".worn", {"right", "right shoulder", "à l’épaule droite", "auf der rechten Schulter"}},
    {".worn", {"left", "left shoulder", "à l’épaule gauche", "auf der linken Schulter"}},
    {"buttons.rim", {"roped", "cordé", "gekordelt"}},
    {"buttons.rim", {"plain", "uni", "glatt"}},
    {"buttons.rim", {"beaded", "perlé", "geperlt"}},
    {".shape", {"bars", "galons droits", "gerade Tressen"}},
    {".shape", {"slanted", "slanted bars", "galons en biais", "schräge Tressen"}},
    {".shape",
     {"chevrons-up", "chevrons, point up", "chevrons, pointe en haut", "Winkel, Spitze oben"}},
    {".shape",
     {"chevrons-down", "chevrons, point down", "chevrons, pointe en bas", "Winkel, Spitze unten"}},
    {".sleeves", {"both", "both sleeves", "aux deux manches", "an beiden Ärmeln"}},
    {".sleeves", {"left", "left sleeve", "à la manche gauche", "am linken Ärmel"}},
    {".sleeves", {"right", "right sleeve", "à la manche droite", "am rechten Ärmel"}},
    {".place", {"above-cuff", "above the cuff", "au-dessus du parement", "über dem Aufschlag"}},
    {".place", {"upper-arm", "upper arm", "au haut du bras", "am Oberarm"}},
    {"gorget.hung", {"buttons", "from the buttons", "aux boutons", "an den Knöpfen"}},
    {"gorget.hung", {"ribbon", "from a ribbon", "à un ruban", "an einem Band"}},
    {"sash.worn", {"waist", "round the waist", "à la ceinture", "um den Leib"}},
    {"sash.worn", {"shoulder", "over the shoulder", "en bandoulière", "über der Schulter"}},
    {"belts.worn", {"crossed", "croisée", "gekreuzt"}},
    {"belts.worn", {"single", "un seul baudrier", "nur eines"}},
    {"belts.worn", {"waist", "with a waist belt", "avec ceinturon", "mit Koppel"}},
    {"sword.worn", {"hanger", "sabre-briquet", "Kurzsäbel"}},
    {"sword.worn", {"sword", "épée", "Degen"}},
    {"musket.carried", {"beside", "beside the foot", "au pied", "bei Fuß"}},
    {"hat.shape", {"three-cornered", "à trois cornes", "Dreispitz"}},
    {"hat.shape", {"two-cornered", "à deux cornes", "Zweispitz"}},
    {"hat.shape", {"round", "rond", "runder Hut"}},
    {"hat.shape", {"fur-cap", "fur cap", "bonnet à poil", "Fellmütze"}},
    {"hat.shape", {"mitre", "mitre cap", "mitre", "Grenadiermütze"}},
    {"hat.shape", {"light-cap", "light cap", "casquette à chenille", "Raupenmütze"}},
    {"hat.shape", {"forage-cap", "forage cap", "bonnet de police", "Lagermütze"}},
    {"hat.shape", {"shako", "shako", "Tschako"}},
});

}  // namespace platewright
