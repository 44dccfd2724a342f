// SPDX-License-Identifier: MIT
// Short names of colours.
#include "write/colour_name.h"

namespace platewright {

std::string colour_name(Colour colour) {
    std::string name = to_hex(colour);
    if (name[1] == name[2] && name[3] == name[4] && name[5] == name[6]) {
        name = {'#', name[1], name[3], name[5]};
    }
    return name;
}

}  // namespace platewright
