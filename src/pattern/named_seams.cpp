// SPDX-License-Identifier: MIT
// Names, letters and lengths of seams.
#include "pattern/named_seams.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "pattern/seams.h"

namespace platewright {
namespace {

/// An edge, and whose it is.
struct Edge {
    PatternPiece* piece;
    Seam* seam;
};

/// Linings follow the pattern of their cloth, and have its letters.
bool has_letters(const PatternPiece& piece) {
    return !piece.is_lining;
}

bool same_seam(const PatternPiece& a, const Seam& one, const PatternPiece& b, const Seam& other) {
    return a.garment == b.garment && one.name == other.name;
}

/// Whether anything is sewn to it: another edge, or the same one mirrored.
bool is_paired(const std::vector<Edge>& edges) {
    return edges.size() > 1 || edges.front().seam->join == Join::mirrored;
}

/// All edges, those of one seam together, by the first piece that has it.
std::vector<std::vector<Edge>> edges_of(std::vector<PatternPiece>& pieces) {
    std::vector<std::vector<Edge>> all;
    for (PatternPiece& piece : pieces) {
        for (Seam& seam : piece.seams) {
            if (!has_letters(piece)) {
                continue;
            }
            const auto known = std::ranges::find_if(all, [&](const std::vector<Edge>& edges) {
                return same_seam(*edges.front().piece, *edges.front().seam, piece, seam);
            });
            if (known == all.end()) {
                all.push_back({{&piece, &seam}});
            } else {
                known->push_back({&piece, &seam});
            }
        }
    }
    std::erase_if(all, [](const std::vector<Edge>& edges) { return !is_paired(edges); });
    return all;
}

std::string letter_of(std::size_t which) {
    constexpr std::size_t letters = 26;
    const std::string last(1, static_cast<char>('A' + which % letters));
    return which < letters ? last : letter_of(which / letters - 1) + last;
}

/// What is set in stands here, of equals the first.
bool stands_here(const Edge& edge, const std::vector<Edge>& all) {
    const bool any_set_in =
        std::ranges::any_of(all, [](const Edge& each) { return each.seam->join == Join::set_in; });
    return any_set_in ? edge.seam->join == Join::set_in : edge.seam == all.front().seam;
}

/// A lining's seams have the letters of the cloth that it lies behind.
void letter_as_cloth(PatternPiece& lining, const std::vector<PatternPiece>& pieces) {
    const auto cloth = std::ranges::find_if(pieces, [&](const PatternPiece& piece) {
        return has_letters(piece) && piece.garment == lining.garment && piece.name == lining.name;
    });
    if (cloth == pieces.end()) {
        return;
    }
    for (Seam& seam : lining.seams) {
        const auto alike = std::ranges::find(cloth->seams, seam.name, &Seam::name);
        seam.letter = alike != cloth->seams.end() ? alike->letter : "";
    }
}

}  // namespace

void name_seam(PatternPiece& piece, const char* name, Point from, Point to, Join join) {
    if (piece.outline.size() > 2) {
        piece.seams.push_back({name, join, seam_between(piece.outline, from, to)});
    }
}

void say_along(PatternPiece& piece, const Chain& line, const char* word) {
    double left = length_of(line) / 2;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const Point step = line[i] - line[i - 1];
        if (left <= length(step) && length(step) > 0) {
            double degrees = std::atan2(step.y, step.x) * 180 / std::numbers::pi;
            // Read from below or from the right.
            degrees += degrees > 89.9 ? -180 : degrees <= -90.1 ? 180 : 0;
            piece.words.push_back({word, line[i - 1] + unit(step) * left, degrees});
            return;
        }
        left -= length(step);
    }
}

void say_at(PatternPiece& piece, Point at, const char* word) {
    piece.words.push_back({word, at});
}

void letter_seams(std::vector<PatternPiece>& pieces) {
    std::size_t next = 0;
    for (const std::vector<Edge>& edges : edges_of(pieces)) {
        const std::string letter = letter_of(next++);
        for (const Edge& edge : edges) {
            edge.seam->letter = letter;
        }
    }
    for (PatternPiece& lining : pieces) {
        if (lining.is_lining) {
            letter_as_cloth(lining, pieces);
        }
    }
}

std::vector<PairedSeam> paired_seams(std::vector<PatternPiece> pieces) {
    std::vector<PairedSeam> all;
    for (const std::vector<Edge>& edges : edges_of(pieces)) {
        const Edge& first = edges.front();
        PairedSeam& pair = all.emplace_back(
            PairedSeam{first.piece->garment, first.seam->letter, first.seam->name, {}, {}});
        for (const Edge& edge : edges) {
            const bool here = stands_here(edge, edges);
            (here ? pair.here : pair.there).push_back(edge.piece->number_in_list);
            (here ? pair.length_here : pair.length_there) += length_of(edge.seam->line);
        }
        if (pair.there.empty()) {
            pair.there = pair.here;
            pair.length_there = pair.length_here;
        }
    }
    return all;
}

}  // namespace platewright
