// SPDX-License-Identifier: MIT
// A page as a DXF drawing, AutoCAD release 12, ASCII: lines, polylines and words in layers, for
// cutters, plotters and drawing programs.
#include <glib.h>

#include <algorithm>
#include <cmath>
#include <memory>
#include <string>
#include <string_view>

#include "base/chain.h"
#include "base/text.h"
#include "write/numbers.h"
#include "write/write.h"

namespace platewright {
namespace {

/// Straight pieces for each cubic curve: within 0.01 mm on anything cut from cloth.
constexpr int kPieces = 24;

/// Names of layers may have letters, digits, `-` and `_` only, and 31 of them.
std::string layer_name(std::string_view name) {
    constexpr std::size_t longest = 31;
    std::string made;
    for (const char c : name.substr(0, longest)) {
        const bool small = c >= 'a' && c <= 'z';
        const bool plain = small || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-';
        made += small ? static_cast<char>(c - 'a' + 'A') : plain ? c : '_';
    }
    return made.empty() ? "0" : made;
}

/// Only ASCII is the same in every program: letters with accents lose them or are spelled out as
/// their language does (`ä` as `AE` or `A`), what has no like becomes `?`.
std::string ascii(const std::string& words, const std::string& language) {
    const std::unique_ptr<char, decltype(&g_free)> plain(
        g_str_to_ascii(words.c_str(), language.c_str()), &g_free);
    std::string made = plain.get();
    // A group's value ends with its line.
    std::erase_if(made, [](char c) { return c < 0x20 || c == 0x7f; });
    return made;
}

class DxfWriter {
  public:
    DxfWriter(const Page& page, const std::string& language) : page_(page), language_(language) {}

    std::string write() {
        for (const Placed& item : page_.items) {
            layers_.push_back(layer_name(item.drawing.root.name));
        }
        header();
        tables();
        pair(0, "SECTION");
        pair(2, "ENTITIES");
        for (std::size_t i = 0; i < page_.items.size(); ++i) {
            layer_ = layers_[i];
            group(page_.items[i], page_.items[i].drawing.root);
        }
        pair(0, "ENDSEC");
        pair(0, "EOF");
        return std::move(text_);
    }

  private:
    const Page& page_;
    const std::string& language_;
    std::vector<std::string> layers_;
    std::string layer_;
    std::string text_;

    void pair(int code, std::string_view value) {
        const std::string number = std::to_string(code);
        text_ += std::string(number.size() < 3 ? 3 - number.size() : 0, ' ') + number + "\n";
        text_ += std::string(value) + "\n";
    }

    void number(int code, double value) { pair(code, format_number(value, 4)); }

    /// y grows upward in these drawings.
    void point(int code, Point p) {
        number(code, p.x);
        number(code + 10, page_.height - p.y);
    }

    void header() {
        pair(0, "SECTION");
        pair(2, "HEADER");
        pair(9, "$ACADVER");
        pair(1, "AC1009");
        pair(9, "$EXTMIN");
        point(10, {0, page_.height});
        pair(9, "$EXTMAX");
        point(10, {page_.width, 0});
        pair(9, "$LUNITS");
        pair(70, "2");
        pair(0, "ENDSEC");
    }

    void tables() {
        pair(0, "SECTION");
        pair(2, "TABLES");
        pair(0, "TABLE");
        pair(2, "LTYPE");
        pair(70, "3");
        line_type("CONTINUOUS", "Solid", {});
        line_type("DASHED", "Seam", {2.4, -1.2});
        line_type("DASHDOT", "Fold", {6, -1.2, 0.4, -1.2});
        pair(0, "ENDTAB");
        pair(0, "TABLE");
        pair(2, "LAYER");
        std::vector<std::string> names = layers_;
        names.emplace_back("0");
        std::ranges::sort(names);
        names.erase(std::unique(names.begin(), names.end()), names.end());
        pair(70, std::to_string(names.size()));
        for (const std::string& name : names) {
            pair(0, "LAYER");
            pair(2, name);
            pair(70, "0");
            pair(62, "7");
            pair(6, "CONTINUOUS");
        }
        pair(0, "ENDTAB");
        pair(0, "ENDSEC");
    }

    void line_type(std::string_view name, std::string_view says, const std::vector<double>& dash) {
        pair(0, "LTYPE");
        pair(2, name);
        pair(70, "0");
        pair(3, says);
        pair(72, "65");
        pair(73, std::to_string(dash.size()));
        double sum = 0;
        for (const double each : dash) {
            sum += std::abs(each);
        }
        number(40, sum);
        for (const double each : dash) {
            number(49, each);
        }
    }

    void group(const Placed& item, const Group& from) {
        for (const Node& node : from.children) {
            if (const auto* shape = std::get_if<Shape>(&node)) {
                outline(item, *shape);
            } else if (const auto* words = std::get_if<Text>(&node)) {
                text(item, *words);
            } else {
                group(item, std::get<Group>(node));
            }
        }
    }

    void outline(const Placed& item, const Shape& shape) {
        const Path& path = item.drawing.paths[shape.path];
        std::vector<Point> chain;
        bool closed = false;
        std::size_t at = 0;
        const auto place = [&](Point p) {
            return item.at + shape.placing().apply(p) * item.factor;
        };
        const auto end = [&] {
            polyline(chain, closed, shape);
            chain.clear();
            closed = false;
        };
        for (const Path::Verb verb : path.verbs) {
            if (verb == Path::Verb::close) {
                closed = true;
            } else if (verb == Path::Verb::cubic) {
                curve(chain,
                      place(path.points[at]),
                      place(path.points[at + 1]),
                      place(path.points[at + 2]));
                at += 3;
            } else {
                if (verb == Path::Verb::move) {
                    end();
                }
                chain.push_back(place(path.points[at++]));
            }
        }
        end();
    }

    static void curve(std::vector<Point>& chain, Point b, Point c, Point d) {
        const Point a = chain.empty() ? b : chain.back();
        for (int i = 1; i <= kPieces; ++i) {
            const double t = static_cast<double>(i) / kPieces;
            const double u = 1 - t;
            chain.push_back(a * (u * u * u) + b * (3 * u * u * t) + c * (3 * u * t * t) +
                            d * (t * t * t));
        }
    }

    /// A knife stumbles over steps that are shorter than its own play.
    void polyline(const std::vector<Point>& all, bool closed, const Shape& shape) {
        const std::vector<Point> chain = without_steps(all, closed);
        if (chain.size() < 2) {
            return;
        }
        pair(0, "POLYLINE");
        pair(8, layer_);
        const std::size_t dashes = shape.stroke ? shape.stroke->dash.size() : 0;
        pair(6, dashes == 0 ? "CONTINUOUS" : dashes == 2 ? "DASHED" : "DASHDOT");
        pair(66, "1");
        number(10, 0);
        number(20, 0);
        pair(70, closed ? "1" : "0");
        for (const Point p : chain) {
            pair(0, "VERTEX");
            pair(8, layer_);
            point(10, p);
        }
        pair(0, "SEQEND");
        pair(8, layer_);
    }

    void text(const Placed& item, const Text& words) {
        const Point at = item.at + words.at * item.factor;
        pair(0, "TEXT");
        pair(8, layer_);
        point(10, at);
        // Height of capitals, not of the em.
        number(40, words.size * item.factor * 0.65);
        pair(1, ascii(words.words, language_));
        number(50, -words.degrees);
        if (words.align != Align::start) {
            pair(72, words.align == Align::middle ? "1" : "2");
            point(11, at);
        }
    }
};

}  // namespace

std::string write_dxf(const Document& document, std::size_t page) {
    return DxfWriter(document.pages.at(page), document.language).write();
}

}  // namespace platewright
