// SPDX-License-Identifier: MIT
// The reference page's part about answers for scripts.
#include "vocabulary/guide.h"

namespace platewright {

std::string_view answers_guide() {
    return R"(## Answers for scripts

`--json` gives one object (for `check` a list of problems). Keys keep their names and meanings; more may be added.
What is not known is `null`.

**`explain` of a plate or a regiment**

| key | what it holds |
| --- | --- |
| `plate` | the title |
| `facts` | `regulations` in force (`title`, `source`, `in force from`), `regiment`, `number`, `class`, `company`, `rank` and `order of dress` (each `name`, `title`, `means`), `officer`, `years of service`, `day`, `worn` |
| `properties` | a list in the order of dressing: `property`, `value`, `colour` (`#rrggbb`), `mm` of a length, `seen` (whether it says anything of this man), `decisions` |
| `decisions` | the strongest first: `strength` (`initial`, `custom`, `regulation`, `class`, `series`, `rule`, `regiment`, `company`, `rank`, `service`, `order of dress`, `departure`, `plate`), `who` in words, `written`, `value` (what it comes to), `file`, `line`, `column`, `source`, `certainty`, `why`, `departure`, `instead of`, `other sources` (`source`, `says`) |

**`explain` of a regulation**

| key | what it holds |
| --- | --- |
| `regulations` | the regulation, then its amendments: `title`, `in force from`, `until`, `source` |
| `classes`, `orders of dress` | `name`, `title`, `means` |
| `regiments` | by number: `number`, `regiment`, `class`, and `look`: what any man of it shows, by property |
| `rules` | `name`, `wear`, `why` |
| `companies` | `name`, `title`, `means`, `men` |
| `battalions` | `name`, `companies` with how many of each, `men` |
| `men`, `strength` | what the battalions come to, and what the regulation says |
| `ranks` | `name`, `title`, `means`, `officer`, `like` |
| `service` | `years`, `more than`, `wear` |

**`change`**

| key | what it holds |
| --- | --- |
| `from`, `to`, `wish` | the titles, and what `--to` says |
| `changes` | `deed` (`buy`, `sew on`, `take off`, `swap`, `lay aside`), `thing`, `words`, `comes with` (the new or old garment it is on), `number` (`from`, `to`), `properties` (`property`, `from`, `to`) |
| `stays` | `thing`, and `on new`: the new garment it has to be put on |

)";
}

}  // namespace platewright
