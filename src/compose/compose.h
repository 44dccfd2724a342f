// SPDX-License-Identifier: MIT
// Third stage: a uniform and a layered template to a figure.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "base/ink.h"
#include "compose/figure.h"
#include "resolve/uniform.h"

namespace platewright {

struct Template;

/// Reads and checks one view, which may be drawn in several files; the first gives title and frame.
/// On errors (template.*) returns null. Shared and never changed afterwards.
std::shared_ptr<const Template> read_template(const SourceMap& sources,
                                              std::span<const FileId> files,
                                              Diagnostics& to);

/// The template's own frame.
Rect frame_of(const Template& from);

/// The same, grown to hold what this man wears: a plume stands out of the usual frame. For choosing
/// a scale before composing.
Rect frame_of(const Template& from, const Uniform& uniform);

/// Whether it is a garment laid flat.
bool is_flat(const Template& view);

/// The same without paper at the sides, where nothing is drawn.
Rect close_frame_of(const Template& from, const Uniform& uniform);

/// The part of a template that shows a matter best: `cuff`, `hat`; nothing if it has no such frame.
std::optional<Rect> frame_of(const Template& from, std::string_view name);

/// The names of all frames, sorted.
std::vector<std::string> frames_of(const Template& from);

/// Ornaments by name: grenades, stars, a user's own badge; templates of the view `ornament`.
using Ornaments = std::map<std::string, std::shared_ptr<const Template>>;

/// Draws the uniform on the template for print at 1 : `scale`; with a `window`, only what lies in
/// it. What is printed in greys is drawn in colour; the finished page is turned to greys. Never
/// fails: a read template can always be drawn. An ornament that is not among `ornaments` is left
/// off.
Figure compose(const Uniform& uniform,
               const Template& on,
               const Ornaments& ornaments,
               double scale,
               const std::optional<Rect>& window = {},
               Ink ink = Ink::colour);

/// The keys of all properties that have a material in this view.
std::set<std::string> shown_on(const Template& view, const Uniform& uniform);

/// The keys of all properties that have a material on these views of other men but on none of this
/// one: what is hidden, such as buckles under gaiters, and what is not worn.
std::set<std::string> hidden_on(const std::vector<const Template*>& views, const Uniform& uniform);

/// What the sheets must say of this man; with `shown`, of materials only those of these keys.
Captions captions_of(const Uniform& uniform, const std::set<std::string>* shown = nullptr);

/// Text dump of the stage: groups, shapes with rounded boxes and colours, texts, anchors.
std::string dump(const Figure& figure);

}  // namespace platewright
