// SPDX-License-Identifier: MIT
// What charts say.
#pragma once

#include "words/message.h"

namespace platewright::messages {

/// A metal of buttons.
inline constexpr Message kMetalButtons{"{1} buttons", "boutons : {1}", "Knöpfe: {1}"};

/// Years of service, from which a mark is worn.
inline constexpr Message kRecruit{"recruit", "recrue", "Rekrut"};
inline constexpr Message kFromYears{"from {1} years", "dès {1} ans", "ab {1} Jahren"};
inline constexpr Message kMoreThanYears{
    "more than {1} years", "plus de {1} ans", "mehr als {1} Jahre"};

/// Of the man beside others who are marked.
inline constexpr Message kNoMark{"no mark", "sans marque", "ohne Abzeichen"};

}  // namespace platewright::messages
