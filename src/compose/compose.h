// SPDX-License-Identifier: MIT
// Third stage: a uniform and a layered template to a figure.
#pragma once

#include <memory>
#include <optional>
#include <string>

#include "base/diagnostic.h"
#include "compose/figure.h"
#include "resolve/uniform.h"

namespace platewright {

struct Template;

/// Reads and checks a template; on errors (template.*) returns null. Shared and never changed
/// afterwards.
std::shared_ptr<const Template> read_template(const SourceMap& sources,
                                              FileId file,
                                              Diagnostics& to);

/// The size of the template's frame, for choosing a scale before composing.
Rect frame_of(const Template& from);

/// Draws the uniform on the template for print at 1 : `scale`. Never fails: a read template can
/// always be drawn.
Figure compose(const Uniform& uniform, const Template& on, double scale);

/// What the sheets must say of this man.
Captions captions_of(const Uniform& uniform);

/// Text dump of the stage: groups, shapes with rounded boxes and colours, texts, anchors.
std::string dump(const Figure& figure);

}  // namespace platewright
