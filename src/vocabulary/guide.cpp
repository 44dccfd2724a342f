// SPDX-License-Identifier: MIT
// How a regulation is written, told by an example; a test reads every file of it.
#include "vocabulary/guide.h"

namespace platewright {

namespace {

constexpr std::string_view kGuide = R"(## Writing a regulation

A file that begins with `regulation:` is a clothing regulation. It says what everybody wears, then what makes the difference:
the class of corps, the regiment's colour and how it is shown, rules, company, rank, years of service, order of dress. Whatever
comes later in this row overrules what comes before.

```yaml
regulation: Clothing regulation for the ducal infantry
in force from: 1784-03-01
source: Printed at the ducal press, Arvenholt 1784     # holds for everything that has no source of its own

everyone:
  coat: {cloth: dark green, lining: buff}
  waistcoat: {cloth: buff, source: article 9}

shows:                                                 # the names are your own
  lapels and cuffs: {lapels: the facing colour, cuffs: the facing colour}
  cuffs alone: {lapels: {cloth: the coat colour, piping: the facing colour}}

series:
  - colour: crimson
    regiments:
      - {number: 1, name: Tannbruck, shows: lapels and cuffs, buttons: yellow}
      - {number: 2, name: Seeholm, shows: cuffs alone, buttons: white}

rules:
  - name: upright pockets
    when: {buttons.metal: white}
    wear: {pockets: vertical}
    why: so that regiments of one colour can be told apart from behind

companies:
  musketeers: {}
  grenadiers: {hat: {shape: fur-cap}}

ranks:
  private: {}
  corporal: {marks: {shape: bars, number: 2, cloth: the button metal}}
  drummer: {coat: the regiment's facing colour, facings: the regiment's coat colour}

service:
  - {at least: 8 years, service: {number: 1}}

orders of dress:
  fatigue: {coat: {cut: none}, belts: none}
```

A later regulation that changes only a part names the older one with `amends:` and writes what changes. Blocks of the same name
are laid over each other, places in the series are replaced by their number, rules by their name.

```yaml
regulation: Order on the cuffs of the ducal infantry
amends: regulation-1784.yaml
in force from: 1788-05-01
everyone:
  cuffs: {shape: slashed}
```

A file that begins with `regiment:` says under which regulations the regiment stands, what it decided for itself, and where it
departed from the orders.

```yaml
regiment: Seeholm
regulation: [regulation-1784.yaml, regulation-1788.yaml]
straps: {cloth: crimson, source: order of the colonel, certainty: inferred}
departures:
  - wear: {pockets: horizontal}
    instead of: upright pockets
    until: 1786
    why: the old coats were worn out first
```

A plate then needs only the man.

```yaml
plate: Corporal, Seeholm Regiment
regiment: seeholm.yaml
company: grenadiers
rank: corporal
years of service: 9
as of: 1785
```

)";

}  // namespace

std::string_view regulation_guide() {
    return kGuide;
}

}  // namespace platewright
