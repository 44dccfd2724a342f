// SPDX-License-Identifier: MIT
// What a handout says of its own accord.
#pragma once

#include <array>
#include <string>

namespace platewright::sheet::wording {

inline const std::string kHimself = "In full dress";
inline const std::string kContents = "Contents";
inline const std::string kUnit = "The unit";
inline const std::string kKit = "What to get";
inline const std::string kMarks = "Where the marks go";
inline const std::string kOrders = "What to wear when";
inline const std::string kPuttingOn = "How to put it on";
inline const std::string kCare = "How to care for it";
inline const std::string kCautions = "Before you march";
inline const std::string kItem = "Item";
inline const std::string kMaterial = "Material";
inline const std::string kQuantity = "Number";
inline const std::string kWay = "How";
inline const std::string kCost = "Cost";
inline const std::string kWhereFrom = "Source";
inline const std::string kTotal = "All together: ";
inline const std::string kRegulation = "as ordered";
inline const std::string kCheckBar = "50 mm: measure it before you cut anything by these pages.";

/// The usual cautions, a subject and what is to be said of it.
struct Caution {
    std::string subject;
    std::string words;
};

inline const std::array<Caution, 5> kUsualCautions{
    {{"Blades and arms",
      "Bayonet and sword stay in their scabbards, and the musket unloaded, unless the one who "
      "commands says otherwise. Who may carry, transport or fire what is for local law and the "
      "rules of the event; both go before these pages."},
     {"Heat",
      "Wool keeps the sun's heat in. Drink before you are thirsty, open stock and coat at every "
      "halt, and fall out in time."},
     {"Old garments",
      "What is old is not for wear: show it to a museum, copy it, and leave it as it is."},
     {"Decorations",
      "Wear the marks of the rank and service you have in the unit, and no medal or order that "
      "is given to the living; in many countries the law forbids it."},
     {"Print scale",
      "Print at full size (100 per cent, no fitting to the page). The measures count, not the "
      "picture."}}};

}  // namespace platewright::sheet::wording
