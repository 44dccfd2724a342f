// SPDX-License-Identifier: MIT
// Rows of the table: the man himself and what he wears under and below his coat.
#pragma once

#include <array>

#include "vocabulary/rows.h"

namespace platewright::rows {

/// The man and what is under and below his coat.
inline constexpr std::array kMan = std::to_array<Property>({
    cloth("figure.skin", "fair", "the man's skin")
        .of(SubstanceKind::skin)
        .is_no_work()
        .seen_in("head"),
    cloth("figure.hair", "powdered", "the man's hair")
        .of(SubstanceKind::hair)
        .is_no_work()
        .seen_in("head"),
    cloth("ribbon.cloth", "black", "the ribbon that binds the queue")
        .by_one_word()
        .called("queue ribbon")
        .is_kit(),
    cloth("shirt.cloth", "white", "the shirt, seen at the wrists and the breast")
        .by_one_word()
        .makes_garment(),
    cloth("stock.cloth", "black", "the stiff band round the neck")
        .by_one_word()
        .is_kit()
        .seen_in("collar"),
    choice("waistcoat.cut",
           "single",
           "single=single-breasted|double=double-breasted",
           "one row of buttons, or two")
        .makes_garment()
        .seen_in("breast")
        .by_one_word(),
    cloth("waistcoat.cloth", "white", "the waistcoat").by_one_word().makes_garment(),
    count("waistcoat.buttons", "8", 16, "buttons down the front of the waistcoat, in each row"),
    lace("waistcoat.lace", "waistcoat lace", "lace along the edges of the waistcoat")
        .seen_in("breast"),
    choice("breeches.cut",
           "breeches",
           "breeches|overalls=trousers",
           "breeches that end below the knee, or overalls down to the shoe")
        .by_one_word()
        .makes_garment()
        .seen_in("breeches"),
    cloth("breeches.cloth", "as waistcoat.cloth", "the breeches or overalls")
        .by_one_word()
        .makes_garment(),
    cloth("stockings.cloth", "white", "the stockings, seen where there are no gaiters")
        .by_one_word()
        .when("breeches.cut = breeches and gaiters.height != long")
        .makes_garment(),
    cloth("garters.leather", "black", "the straps below the knee that hold the gaiters up")
        .of(SubstanceKind::leather)
        .by_one_word()
        .when("breeches.cut = breeches and gaiters.height = long")
        .is_kit(),
    choice(
        "gaiters.height", "long", "long|half=short", "gaiters over the knee, to the calf, or none")
        .or_none()
        .by_one_word()
        .is_kit()
        .seen_in("legs"),
    cloth("gaiters.cloth", "black", "the gaiters")
        .by_one_word()
        .when("breeches.cut = breeches and gaiters.height")
        .is_kit(),
    count("gaiters.buttons", "22", 40, "buttons down the outer side of each gaiter")
        .when("breeches.cut = breeches and gaiters.height")
        .is_kit(),
    leather("shoes.leather", "black", "the shoes").by_one_word().is_kit(),
    metal("shoes.buckles", "as buttons.metal", "the buckles of the shoes")
        .called("shoe buckles")
        .is_kit()
        .seen_in("legs"),
});

}  // namespace platewright::rows
