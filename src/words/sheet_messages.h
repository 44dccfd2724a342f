// SPDX-License-Identifier: MIT
// What sheets of every kind say: headings, credits, the description for those who cannot see.
#pragma once

#include "words/message.h"

namespace platewright::messages {

/// Headings, and beginnings of lines.
inline constexpr Message kColours{"Colours", "Couleurs", "Farben"};
inline constexpr Message kParticulars{"Particulars", "Détails", "Einzelheiten"};
inline constexpr Message kNotes{"Notes", "Notes", "Anmerkungen"};
inline constexpr Message kSource{"Source: {1}", "Source : {1}", "Quelle: {1}"};
inline constexpr Message kDrawnBy{"Drawn by {1}", "Dessiné par {1}", "Gezeichnet von {1}"};

/// A thing and its scale, under its picture.
inline constexpr Message kAtScale{"{1}, {2}", "{1}, {2}", "{1}, {2}"};
inline constexpr Message kLifeSize{"life size", "grandeur nature", "natürliche Größe"};

/// For those who cannot see the picture.
inline constexpr Message kPlateOf{
    "Uniform plate: {1}.", "Planche d’uniforme : {1}.", "Uniformtafel: {1}."};
inline constexpr Message kViews{"Views: {1}.", "Vues : {1}.", "Ansichten: {1}."};

/// A name and what belongs to it.
inline constexpr Message kNameAndWords{"{1}: {2}.", "{1} : {2}.", "{1}: {2}."};
inline constexpr Message kNameAndValue{"{1}: {2}", "{1} : {2}", "{1}: {2}"};

}  // namespace platewright::messages
