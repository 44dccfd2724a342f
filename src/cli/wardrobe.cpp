// SPDX-License-Identifier: MIT
// The index of the wardrobe: one picture of everything the table of properties knows.
#include "cli/wardrobe.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstdlib>
#include <map>
#include <optional>
#include <span>
#include <string_view>
#include <utility>
#include <variant>

#include "base/text.h"
#include "cli/wardrobe_views.h"
#include "cli/wardrobe_words.h"
#include "compose/template.h"

namespace platewright::cli {
namespace {

/// Ornaments are shown where most are worn, under a heading of their own.
constexpr std::string_view kOrnament = "turnbacks.ornament";
/// At each side of it less of the turnback is shown than on a plate.
constexpr double kLessGround = 0.08;
constexpr const char* kOrnaments = "Ornaments";
/// Among the coats that are worn these would look like another drawing.
constexpr const char* kLaidFlat = "The skirts of the coat, laid flat";
/// A later view is taken if it shows so much more than an earlier one; less would only turn one
/// picture of a row to another side.
constexpr double kClearlyMore = 1.6;
/// Where a difference is looked for, first in the first.
constexpr std::array<const char*, 4> kViews = {"front", "back", "side", "button"};
/// On the man a sleeve hides half of what these show whole.
constexpr std::array<const char*, 2> kFlatViews = {"flat-coat-front", "flat-coat-back"};
/// Shown without a coat, and so with the arms of the shirt beside it.
constexpr std::string_view kBareArms = "waistcoat";
/// Without them he looks like the man of the picture before.
constexpr std::array<std::string_view, 2> kBareWithout = {"belts.worn", "box.leather"};

/// The pockets, and the parts of the flap that is shown of them.
constexpr std::string_view kFlaps = "pockets";
constexpr std::string_view kLeftFlap = "pocket-left";

constexpr std::string_view kMusket = "musket";

/// The frame of a head with the highest of caps, and that of one with the broadest of hats.
constexpr std::string_view kHat = "hat";
constexpr std::string_view kLowHat = "low-hat";

bool shows_nothing(const Example& option) {
    const std::string_view key = properties()[option.property].key;
    return option.value == "none" && std::ranges::find(kBareWithout, key) != kBareWithout.end();
}

WrittenValue value_of(PropertyId id, const std::string& written) {
    if (written == "none") {
        return None{};
    }
    int number = 0;
    if (properties()[id].kind == Kind::count &&
        std::from_chars(written.data(), written.data() + written.size(), number).ec ==
            std::errc()) {
        return number;
    }
    return written;
}

/// Goes through the table once.
class Indexer {
  public:
    Indexer(const Workshop& workshop, const Job& job, const Printing& printing, Diagnostics& to)
        : workshop_(workshop), job_(job), printing_(printing), to_(to) {}

    WardrobeIndex index() {
        WardrobeIndex made;
        made.title = job_.plate.title.text;
        made.subtitle = job_.plate.subtitle ? job_.plate.subtitle->text : std::string();
        for (const Chapter& chapter : chapters()) {
            WardrobeSection section{std::string(chapter.title), {}};
            for (auto first = chapter.rows.begin(); first != chapter.rows.end();) {
                const auto end = std::find_if(first, chapter.rows.end(), [&](const Property& row) {
                    return row.group() != first->group();
                });
                add_group({first, end}, section);
                first = end;
            }
            made.sections.push_back(std::move(section));
            for (auto [apart, title] :
                 {std::pair(&laid_flat_, kLaidFlat), std::pair(&ornaments_, kOrnaments)}) {
                if (!apart->samples.empty()) {
                    made.sections.push_back(std::exchange(*apart, {}));
                    made.sections.back().title = title;
                }
            }
        }
        return made;
    }

  private:
    /// What may be looked at: a view and the part of it.
    struct Window {
        const Template* view = nullptr;
        Rect frame;
        bool framed = false;
        bool flat = false;
    };

    const Workshop& workshop_;
    const Job& job_;
    const Printing& printing_;
    Diagnostics& to_;
    std::map<std::string, Template> flats_;
    WardrobeSection laid_flat_;
    /// They are many, and worn elsewhere too.
    WardrobeSection ornaments_;

    std::optional<Uniform> dressed(std::vector<Setting> settings) {
        if (properties()[settings.back().property].key == kOrnament) {
            // The folds of hooked skirts would run behind it; what is written is the same.
            settings.insert(settings.begin(), {property_id("turnbacks.held"), "sewn"});
        }
        return workshop_.uniform_of(wearing(job_, settings), to_);
    }

    /// Ornaments are shown once each; where others may be worn, one is enough.
    [[nodiscard]] std::vector<Example> options_of(PropertyId id) const {
        std::vector<Example> options = examples_of(id);
        std::erase_if(options, shows_nothing);
        if (properties()[id].group() == kBareArms || properties()[id].key == "breeches.cut") {
            // The coat is laid off to show what is under it.
            for (Example& option : options) {
                option.settings.insert(option.settings.begin(), {property_id("coat.cut"), "none"});
            }
        }
        if (properties()[id].key == "breeches.cut") {
            // Long gaiters would hide the knee.
            for (Example& option : options) {
                option.settings.insert(option.settings.begin(),
                                       {property_id("gaiters.height"), "none"});
            }
        }
        if (properties()[id].key != kOrnament || options.empty()) {
            return options;
        }
        const Example first = options.front();
        options.clear();
        for (const auto& ornament : job_.ornaments) {
            options.push_back(first);
            options.back().settings.back().value = ornament.first;
            options.back().written.replace(
                first.written.rfind(first.value), first.value.size(), ornament.first);
        }
        return options;
    }

    /// A man without an option, and how he looks in each window: most options of a property have
    /// the same opposite.
    struct Plain {
        std::optional<Uniform> uniform;
        std::vector<std::string> looks;
    };

    /// An option in the window where it is seen best.
    struct Shown {
        IndexOption told;
        Uniform uniform;
        Window window;
        std::string look;
    };

    /// All options of the rows of one group, each picture once.
    void add_group(std::span<const Property> rows, WardrobeSection& section) {
        std::vector<Shown> group;
        for (const Property& row : rows) {
            add(property_id(row.key), group);
        }
        put_like_to_like(group);
        for (const Shown& shown : group) {
            const Rect& frame = shown.window.frame;
            const bool ornament = properties()[shown.told.option.property].key == kOrnament;
            const bool centred =
                ornament || shown.window.flat || shown.window.view->view == "detail";
            const double lowest = frame_of(*shown.window.view).bottom;
            (ornament            ? ornaments_
             : shown.window.flat ? laid_flat_
                                 : section)
                .samples.push_back(
                    {as_written(shown.told),
                     frame,
                     picture(shown.uniform, shown.window, room_round(frame, centred, lowest)),
                     trade_words(shown.told, shown.uniform),
                     centred});
        }
    }

    /// What is seen in one frame stands together, in the order of the table.
    static void put_like_to_like(std::vector<Shown>& group) {
        std::vector<std::pair<long, long>> shapes;
        const auto place_of = [&](const Shown& shown) {
            const Rect& frame = shown.window.frame;
            const std::pair shape(std::lround(frame.width()), std::lround(frame.height()));
            const auto known = std::ranges::find(shapes, shape);
            const auto place = known - shapes.begin();
            if (known == shapes.end()) {
                shapes.push_back(shape);
            }
            return std::pair(order_of(shown.told.option.property, shown.uniform, frame), place);
        };
        for (const Shown& shown : group) {
            place_of(shown);
        }
        std::ranges::stable_sort(group, {}, place_of);
    }

    void add(PropertyId id, std::vector<Shown>& group) {
        const std::vector<Window> windows = windows_of(id);
        std::map<std::string, Plain> opposites;
        for (const Example& option : options_of(id)) {
            const auto uniform = dressed(option.settings);
            if (!uniform) {
                continue;
            }
            std::vector<Setting> without = option.settings;
            without.back().value = opposite(id, without.back().value);
            const auto [plain, is_new] = opposites.try_emplace(key_of(without));
            if (is_new) {
                plain->second.uniform = dressed(without);
            }
            auto [window, look] = best_look(*uniform, plain->second, windows);
            show_whole_head(window, *uniform);
            if (window.flat && properties()[id].group() == kFlaps) {
                move_to_flap(window, *uniform);
            }
            const auto twin = std::ranges::find(group, look, &Shown::look);
            if (twin != group.end() && twin->told.option.property != id) {
                twin->told.twins.push_back(option);
            } else {
                group.push_back({{option, {}}, *uniform, window, std::move(look)});
            }
        }
    }

    static std::string key_of(const std::vector<Setting>& settings) {
        std::string key;
        for (const Setting& setting : settings) {
            key += std::to_string(setting.property) + "=" + setting.value + "\n";
        }
        return key;
    }

    [[nodiscard]] Figure picture(const Uniform& uniform,
                                 const Window& window,
                                 const Rect& cut) const {
        return compose(uniform,
                       *window.view,
                       job_.ornaments,
                       sample_scale(window.frame, printing_.paper),
                       cut,
                       printing_.ink);
    }

    [[nodiscard]] std::string look(const Uniform& uniform, const Window& window) const {
        return dump(picture(uniform, window, window.frame));
    }

    /// The window where the man differs most from `plain`, the first if he nowhere does, and the
    /// dump of his picture there.
    std::pair<Window, std::string> best_look(const Uniform& with,
                                             Plain& plain,
                                             const std::vector<Window>& windows) const {
        std::pair<Window, std::string> best;
        std::size_t most = 0;
        for (std::size_t i = 0; i < windows.size() && (most == 0 || windows[i].framed); ++i) {
            std::string shown = look(with, windows[i]);
            const std::size_t difference =
                plain.uniform ? lines_apart(shown, look_of(plain, windows, i)) : 0;
            if (best.first.view == nullptr ||
                static_cast<double>(difference) > static_cast<double>(most) * kClearlyMore) {
                best = {windows[i], std::move(shown)};
                most = difference;
            }
        }
        return best;
    }

    /// The plain man's look in that window, made when it is first asked for.
    const std::string& look_of(Plain& plain,
                               const std::vector<Window>& windows,
                               std::size_t window) const {
        plain.looks.resize(windows.size());
        if (plain.looks[window].empty()) {
            plain.looks[window] = look(*plain.uniform, windows[window]);
        }
        return plain.looks[window];
    }

    /// How many lines stand in one text and not in the other.
    static std::size_t lines_apart(const std::string& a, const std::string& b) {
        std::map<std::string_view, int> counts;
        for (const std::string_view line : split(a, '\n')) {
            ++counts[line];
        }
        for (const std::string_view line : split(b, '\n')) {
            --counts[line];
        }
        std::size_t apart = 0;
        for (const auto& [line, count] : counts) {
            apart += static_cast<std::size_t>(std::abs(count));
        }
        return apart;
    }

    /// A head is whole under whatever hat, with chin and collar; above a low hat is no sky. Side by
    /// side, as many as fill a row, all heads are of one size.
    static void show_whole_head(Window& window, const Uniform& man) {
        const auto high = frame_of(*window.view, kHat);
        const auto low = frame_of(*window.view, kLowHat);
        if (high && low && proportioned(*high).centre() == window.frame.centre()) {
            // Tassels hang over the brim; a cap is narrower than a brim below a plume.
            constexpr double beside = 1.05;
            const bool plumed = man.word(property_id("hat.plume")) != "none";
            const double half =
                plumed ? low->width() * beside / 2 : high->height() * kNarrowest / 2;
            window.frame =
                is_tall(man) ? Rect{-half, high->top, half, high->bottom} : low->widened(beside);
        }
    }

    /// Flaps of every direction and size stand in the middle of tiles of one scale.
    static void move_to_flap(Window& window, const Uniform& uniform) {
        const auto word_of = [&](PropertyId id) { return uniform.word(id); };
        const auto flap = std::ranges::find_if(window.view->parts, [&](const Part& part) {
            return part.name.starts_with(kLeftFlap) && holds(part.when, word_of);
        });
        if (flap != window.view->parts.end()) {
            const Point by = flap->shape.bounds().centre() - window.frame.centre();
            window.frame = {window.frame.left + by.x,
                            window.frame.top + by.y,
                            window.frame.right + by.x,
                            window.frame.bottom + by.y};
        }
    }

    static std::string opposite(PropertyId id, const std::string& value) {
        const Property& row = properties()[id];
        if (row.may_be_none && value != "none") {
            return "none";
        }
        if (row.kind == Kind::choice) {
            for (const Choice& choice : choices_of(id)) {
                if (choice.word != value) {
                    return std::string(choice.word);
                }
            }
        }
        return value == "none" ? std::string(row.initial) : "none";
    }

    /// The property's own frame in the flats, if it stands there; else in every view that has it,
    /// then the whole figures.
    [[nodiscard]] std::vector<Window> windows_of(PropertyId id) {
        std::vector<Window> windows;
        if (properties()[id].key == kOrnament) {
            add_windows(kFlatViews, "ornament-flat", windows);
            if (windows.empty()) {
                add_windows(kViews, "ornament", windows);
            }
            for (Window& window : windows) {
                window.frame = window.frame.grown(-window.frame.width() * kLessGround);
            }
            return windows;
        }
        if (properties()[id].group() == kMusket) {
            add_musket(windows);
        }
        if (windows.empty()) {
            add_windows(kFlatViews, std::string(frame_name(id)) + "-flat", windows);
        }
        if (windows.empty()) {
            add_windows(kViews, own_frame_name(id), windows);
        }
        if (windows.empty()) {
            add_windows(kViews, frame_name(id), windows);
            add_windows(kViews, std::nullopt, windows);
        }
        for (Window& window : windows) {
            if (window.view == front() && is_on_left_arm(id, window.frame)) {
                window.view = &flats_.try_emplace("arm", left_arm_of(*window.view)).first->second;
            }
        }
        return windows;
    }

    [[nodiscard]] const Template* front() const {
        const auto view = job_.views.find(kViews.front());
        return view == job_.views.end() ? nullptr : view->second.get();
    }

    void add_musket(std::vector<Window>& to) {
        constexpr double air = 1.08;
        if (front() == nullptr) {
            return;
        }
        const Template& laid =
            flats_.try_emplace(std::string(kMusket), laid_across(*front())).first->second;
        if (!laid.parts.empty()) {
            to.push_back({&laid, proportioned(laid.frame.widened(air)), true, false});
        }
    }

    /// Without the name of a frame the whole figures.
    void add_windows(std::span<const char* const> views,
                     std::optional<std::string_view> frame_name,
                     std::vector<Window>& to) {
        const bool flat = views.data() == kFlatViews.data();
        for (const char* name : views) {
            const auto view = job_.views.find(name);
            if (view == job_.views.end()) {
                continue;
            }
            const auto frame = frame_name ? frame_of(*view->second, *frame_name)
                                          : std::optional(frame_of(*view->second));
            if (!frame) {
                continue;
            }
            const Template* shown = view->second.get();
            if (flat) {
                shown = &flats_.try_emplace(name, without_sleeves(*shown)).first->second;
            }
            to.push_back({shown, proportioned(*frame), frame_name.has_value(), flat});
        }
    }

    /// Where two options would look alike in the frame that details are cut by, the index has one
    /// of the property's own.
    static std::string own_frame_name(PropertyId id) {
        const Property& row = properties()[id];
        return std::string(row.group()) + "-" + std::string(row.name()) + "-index";
    }

    /// Its own, or that of its group.
    static std::string_view frame_name(PropertyId id) {
        const Property& row = properties()[id];
        if (row.group() == kBareArms) {
            return "trunk";
        }
        if (!row.frame.empty()) {
            return row.frame;
        }
        for (const Property& other : properties()) {
            if (other.group() == row.group() && !other.frame.empty()) {
                return other.frame;
            }
        }
        return {};
    }
};

}  // namespace

Job wearing(const Job& job, const std::vector<Setting>& settings) {
    Job variant = job;
    for (const Setting& setting : settings) {
        variant.plate.values[setting.property] = {value_of(setting.property, setting.value),
                                                  job.plate.title.span};
    }
    return variant;
}

WardrobeIndex wardrobe_index(const Workshop& workshop,
                             const Job& job,
                             const Printing& printing,
                             Diagnostics& to) {
    return Indexer(workshop, job, printing, to).index();
}

Document wardrobe_of(const Workshop& workshop,
                     const Job& job,
                     const Printing& printing,
                     const Typesetter& type,
                     Diagnostics& to,
                     Timings& timings) {
    const WardrobeIndex index =
        timings.measure("compose", [&] { return wardrobe_index(workshop, job, printing, to); });
    return timings.measure("layout", [&] { return lay_out_wardrobe(index, printing.paper, type); });
}

}  // namespace platewright::cli
