// SPDX-License-Identifier: MIT
// What is said of one man: particulars of his dress, and footnotes.
#pragma once

#include "words/message.h"

namespace platewright::messages {

/// Coat, shoulders.
inline constexpr Message kLaidOff{"laid off", "quitté", "abgelegt"};
inline constexpr Message kWithLapels{"{1} lapels", "revers {1}", "{1}e Rabatten"};
inline constexpr Message kWithoutLapels{"without lapels", "sans revers", "ohne Rabatten"};
inline constexpr Message kWithoutCollar{"without collar", "sans collet", "ohne Kragen"};
inline constexpr Message kWithFringe{"{1} fringe", "franges {1}", "{1}fransen"};
inline constexpr Message kWithoutFringe{"without fringe", "sans franges", "ohne Fransen"};

/// Buttons. French writes its word for number with a degree sign here: the raised letter is not in
/// every face.
inline constexpr Message kNoButtons{"none", "aucun", "keine"};
inline constexpr Message kNumberStamped{"No.\u00a0{1}", "n°\u00a0{1}", "Nr.\u00a0{1}"};
inline constexpr Message kLettersStamped{"marked {1}", "marqués {1}", "gestempelt {1}"};
inline constexpr Message kToALapel{
    "{1}\u00a0to a lapel", "{1}\u00a0par revers", "{1}\u00a0je Rabatte"};
inline constexpr Message kDownTheFront{
    "{1}\u00a0down the front", "{1}\u00a0sur le devant", "{1}\u00a0vorn"};
inline constexpr Message kToACuff{
    "{1}\u00a0to a cuff", "{1}\u00a0par parement", "{1}\u00a0je Aufschlag"};
inline constexpr Message kToAPocket{
    "{1}\u00a0to a pocket", "{1}\u00a0par poche", "{1}\u00a0je Tasche"};

/// Marks on a sleeve: how many, and the name of their cloth.
inline constexpr Counted kBars{
    {"{1} bar of {2}", "{1} galon droit ({2})", "{1} gerade Tresse ({2})"},
    {"{1} bars of {2}", "{1} galons droits ({2})", "{1} gerade Tressen ({2})"}};
inline constexpr Counted kSlantedBars{
    {"{1} slanted bar of {2}", "{1} galon en biais ({2})", "{1} schräge Tresse ({2})"},
    {"{1} slanted bars of {2}", "{1} galons en biais ({2})", "{1} schräge Tressen ({2})"}};
inline constexpr Counted kChevronsUp{{"{1} chevron of {2}, point up",
                                      "{1} chevron ({2}), pointe en haut",
                                      "{1} Winkel ({2}), Spitze oben"},
                                     {"{1} chevrons of {2}, point up",
                                      "{1} chevrons ({2}), pointe en haut",
                                      "{1} Winkel ({2}), Spitze oben"}};
inline constexpr Counted kChevronsDown{{"{1} chevron of {2}, point down",
                                        "{1} chevron ({2}), pointe en bas",
                                        "{1} Winkel ({2}), Spitze unten"},
                                       {"{1} chevrons of {2}, point down",
                                        "{1} chevrons ({2}), pointe en bas",
                                        "{1} Winkel ({2}), Spitze unten"}};
inline constexpr Message kWide{"{1} wide", "largeur {1}", "{1} breit"};
inline constexpr Message kApart{"{1} apart", "intervalle {1}", "Abstand {1}"};

/// Footnotes.
inline constexpr Message kNotAsOrdered{
    "not as ordered", "non conforme à l’ordonnance", "nicht wie befohlen"};
inline constexpr Message kInsteadOf{"instead of {1}", "au lieu de {1}", "anstelle von {1}"};
inline constexpr Message kInferred{"inferred", "déduit", "erschlossen"};
inline constexpr Message kConjecture{"a conjecture", "conjecture", "Vermutung"};
inline constexpr Message kSourcesDisagree{
    "sources disagree", "les sources divergent", "die Quellen widersprechen sich"};
inline constexpr Message kBecause{"{1}: {2}", "{1} : {2}", "{1}: {2}"};
inline constexpr Message kAfterSource{"source: {1}", "source : {1}", "Quelle: {1}"};
inline constexpr Message kOtherwise{"otherwise {1}", "autrement {1}", "anders {1}"};

}  // namespace platewright::messages
