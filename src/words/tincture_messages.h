// SPDX-License-Identifier: MIT
// The tinctures of hatched sheets and how each is hatched, in the order of base/tincture.h.
#pragma once

#include <array>

#include "words/message.h"

namespace platewright::messages {

/// A tincture's name, and its lines in words.
struct TinctureWords {
    Message name;
    Message hatching;
};

/// By the rows of base/tincture.h. French and German names are those of heraldry where it has
/// them; common practice, no source.
inline constexpr std::array<TinctureWords, 21> kTinctureWords{{
    {{"or", "or", "Gold"}, {"dots", "pointillé", "Punkte"}},
    {{"argent", "argent", "Silber"}, {"plain", "uni", "leer"}},
    {{"gules", "gueules", "Rot"}, {"upright lines", "lignes verticales", "senkrechte Linien"}},
    {{"azure", "azur", "Blau"}, {"level lines", "lignes horizontales", "waagrechte Linien"}},
    {{"sable", "sable", "Schwarz"},
     {"upright and level lines",
      "lignes verticales et horizontales",
      "senkrechte und waagrechte Linien"}},
    {{"vert", "sinople", "Grün"},
     {"falling lines", "lignes descendantes", "nach rechts fallende Linien"}},
    {{"purpure", "pourpre", "Purpur"},
     {"rising lines", "lignes montantes", "nach rechts steigende Linien"}},
    {{"tenne", "tanné", "Orange"},
     {"rising and level lines",
      "lignes montantes et horizontales",
      "steigende und waagrechte Linien"}},
    {{"sanguine", "sanguine", "Blutrot"},
     {"falling and rising lines",
      "lignes descendantes et montantes",
      "fallende und steigende Linien"}},
    {{"marron", "marron", "Braun"},
     {"falling and upright lines",
      "lignes descendantes et verticales",
      "fallende und senkrechte Linien"}},
    {{"fer", "fer", "Eisen"},
     {"rising and upright lines",
      "lignes montantes et verticales",
      "steigende und senkrechte Linien"}},
    {{"buff", "chamois", "Chamois"}, {"sparse dots", "points espacés", "weite Punkte"}},
    {{"rose", "rose", "Rosa"},
     {"broken upright lines", "lignes verticales interrompues", "unterbrochene senkrechte Linien"}},
    {{"sky blue", "bleu céleste", "Himmelblau"},
     {"broken level lines", "lignes horizontales interrompues", "unterbrochene waagrechte Linien"}},
    {{"pale green", "vert pâle", "Blassgrün"},
     {"broken falling lines", "lignes descendantes interrompues", "unterbrochene fallende Linien"}},
    {{"lilac", "gris de lin", "Lila"},
     {"broken rising lines", "lignes montantes interrompues", "unterbrochene steigende Linien"}},
    {{"fawn", "fauve", "Rehbraun"},
     {"broken falling and upright lines",
      "lignes descendantes et verticales interrompues",
      "unterbrochene fallende und senkrechte Linien"}},
    {{"light grey", "gris clair", "Hellgrau"},
     {"broken rising and upright lines",
      "lignes montantes et verticales interrompues",
      "unterbrochene steigende und senkrechte Linien"}},
    {{"deep red", "rouge foncé", "Dunkelrot"},
     {"upright lines in pairs", "lignes verticales par paires", "senkrechte Linien in Paaren"}},
    {{"deep blue", "bleu foncé", "Dunkelblau"},
     {"level lines in pairs", "lignes horizontales par paires", "waagrechte Linien in Paaren"}},
    {{"deep green", "vert foncé", "Dunkelgrün"},
     {"falling lines in pairs", "lignes descendantes par paires", "fallende Linien in Paaren"}},
}};

/// A tincture and its hatching; the second where heraldry has none such.
inline constexpr Message kHatchedAs{"{1}: {2}", "{1} : {2}", "{1}: {2}"};
inline constexpr Message kHatchedByUs{
    "{1} (not heraldic): {2}", "{1} (hors blason) : {2}", "{1} (nicht heraldisch): {2}"};

/// Of wood and metal of arms, which are alike on every man.
inline constexpr Message kNotHatched{"not hatched", "sans hachures", "ohne Schraffur"};

}  // namespace platewright::messages
