// SPDX-License-Identifier: MIT
// What comparisons say.
#pragma once

#include "words/message.h"

namespace platewright::messages {

/// Headings.
inline constexpr Message kInWhatTheyDiffer{
    "In what they differ", "Ce qui les distingue", "Worin sie sich unterscheiden"};
inline constexpr Message kInNothing{"In nothing.", "En rien.", "In nichts."};
inline constexpr Message kSameForAll{"The same for all", "Commun à tous", "Bei allen gleich"};
inline constexpr Message kSameForBoth{"The same for both", "Commun aux deux", "Bei beiden gleich"};
inline constexpr Message kWhatCarriesOver{
    "What carries over", "Ce qui peut resservir", "Was weiter dient"};
inline constexpr Message kToldApart{"Told apart", "À distance", "Aus der Ferne"};

/// Above parts of the men enlarged.
inline constexpr Message kSeenNear{"Seen near", "De près", "Aus der Nähe"};

/// That one man could take over nothing from the other; what on a thing would have to be changed.
inline constexpr Message kNothing{"nothing", "rien", "nichts"};
inline constexpr Message kToChange{
    "{1} (to change: {2})", "{1} (à changer : {2})", "{1} (zu ändern: {2})"};
/// Of more than two: what all could wear, and how the table of what some could wear is read.
inline constexpr Message kAmongAll{"Among all: {1}.", "Entre tous : {1}.", "Unter allen: {1}."};
inline constexpr Message kAmongSome{
    "Among some: men with the same sign in a row can wear each other’s.",
    "Entre quelques-uns : sur une ligne, ceux qui ont le même signe peuvent échanger l’effet.",
    "Unter einigen: Wer in einer Zeile dasselbe Zeichen hat, kann des anderen Stück tragen."};

/// The eyes, and what is seen.
inline constexpr Message kToAllEyes{"to all eyes", "pour tout œil", "für jedes Auge"};
inline constexpr Message kWithoutColour{"without colour", "sans couleur", "ohne Farbe"};
inline constexpr Message kToProtan{
    "to eyes without red cones (protan)", "pour un œil protan", "für rotblinde Augen (Protan)"};
inline constexpr Message kToDeutan{
    "to eyes without green cones (deutan)", "pour un œil deutan", "für grünblinde Augen (Deutan)"};
inline constexpr Message kToTritan{
    "to eyes without blue cones (tritan)", "pour un œil tritan", "für blaublinde Augen (Tritan)"};
inline constexpr Message kHardAtFiftyMetres{
    "{1} and {2} cannot be told apart at 50 m {3}: the largest difference of colour is {4} "
    "(ΔE2000). "
    "Near by they are told by: {5}.",
    "{1} et {2} ne se distinguent pas à 50 m {3} : le plus grand écart de couleur est de {4} "
    "(ΔE2000). De près on les distingue par : {5}.",
    "{1} und {2} sind auf 50 m {3} nicht zu unterscheiden: Der größte Farbabstand ist {4} "
    "(ΔE2000). "
    "Aus der Nähe unterscheidet sie: {5}."};
inline constexpr Message kEveryPairApart{
    "Every pair is told apart at 50 m, to all eyes and without colour; the least difference of "
    "colour is {1} (ΔE2000), between {2} and {3}: {4}.",
    "Toutes les paires se distinguent à 50 m, pour tout œil et sans couleur ; le plus petit écart "
    "de couleur est de {1} (ΔE2000), entre {2} et {3} : {4}.",
    "Jedes Paar ist auf 50 m zu unterscheiden, für jedes Auge und ohne Farbe; der kleinste "
    "Farbabstand ist {1} (ΔE2000), zwischen {2} und {3}: {4}."};
inline constexpr Message kTheTwoApart{
    "The two are told apart at 50 m, to all eyes and without colour; the least difference of "
    "colour is {1} (ΔE2000): {2}.",
    "Les deux se distinguent à 50 m, pour tout œil et sans couleur ; le plus petit écart de "
    "couleur est de {1} (ΔE2000) : {2}.",
    "Die beiden sind auf 50 m zu unterscheiden, für jedes Auge und ohne Farbe; der kleinste "
    "Farbabstand ist {1} (ΔE2000): {2}."};
/// A man, and things that the other has not.
inline constexpr Message kOnlyHas{"{2}: only {1}", "{2} : seul {1}", "{2}: nur {1}"};
inline constexpr Message kHowFarSeen{
    "Counted are areas seen from the front of at least ten squares of 14.5 mm, which is one minute "
    "of "
    "arc at 50 m; colours less than 10 apart count as alike (common practice, no source). Eyes are "
    "simulated as if the cone were missing, after Machado, Oliveira and Fernandes, 2009.",
    "Sont comptées les surfaces vues de face d’au moins dix carrés de 14,5 mm, soit une minute "
    "d’arc "
    "à 50 m ; des couleurs distantes de moins de 10 passent pour semblables (usage, sans source). "
    "Les "
    "yeux sont simulés sans le cône en question, d’après Machado, Oliveira et Fernandes, 2009.",
    "Gezählt sind von vorn sichtbare Flächen von mindestens zehn Quadraten von 14,5 mm, einer "
    "Bogenminute auf 50 m; Farben mit einem Abstand unter 10 gelten als gleich (üblich, ohne "
    "Quelle). "
    "Augen sind ohne den jeweiligen Zapfen nachgebildet, nach Machado, Oliveira und Fernandes, "
    "2009."};

}  // namespace platewright::messages
