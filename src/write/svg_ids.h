// SPDX-License-Identifier: MIT
// Readable ids, each used once in a document.
#pragma once

#include <cstddef>
#include <set>
#include <string>
#include <string_view>

namespace platewright {

/// Hands out ids made from names of groups. Ids of a letter and digits only are left to paths and
/// clips.
class SvgIds {
  public:
    /// `Coat, left` in `front` is `coat-left`; the second time `front-coat-left`; then
    /// `front-coat-left-2`.
    std::string make(std::string_view name, std::string_view within);

  private:
    std::set<std::string> used_;
};

/// Id number `index` of a kind of definition: `P0` to `P9`, `Pa` to `Pz`, `P10` … The capital keeps
/// it apart from groups.
std::string short_id(char kind, std::size_t index);

}  // namespace platewright
