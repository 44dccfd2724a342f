// SPDX-License-Identifier: MIT
// What must hold whatever the regulation: many regulations made up from words that fit, each by its
// number and always the same.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <random>

#include "support.h"

namespace platewright {
namespace {

constexpr int kRegulations = 300;

/// Makes a regulation and a man of it. Only its own arithmetic, so that every library gives the
/// same numbers.
class Maker {
  public:
    explicit Maker(unsigned number) : source_(number) {}

    std::size_t below(std::size_t count) { return source_() % count; }

    std::string pick(const std::vector<std::string>& words) { return words[below(words.size())]; }

    std::string wear() {
        static const std::vector<std::string> kPieces = {
            "coat: {cloth: red, lining: buff}",
            "coat: dark blue",
            "facings: white",
            "lapels: the facing colour",
            "collar: the coat colour",
            "cuffs: {cloth: the regiment's facing colour, shape: slashed, buttons: 4}",
            "pockets: vertical",
            "pockets: {direction: slanted, size: large}",
            "waistcoat: the lining colour",
            "marks: {shape: bars, number: 2, cloth: the button metal, width: 1/2 in}",
            "service: {number: 1, cloth: the facing colour}",
            "belts: {leather: black, worn: crossed}",
            "gaiters: {cloth: black, height: half, source: article 5}",
            "stock: red",
            "hat: {tape: the button metal, plume: white}"};
        std::vector<std::string> chosen;
        for (const std::string& piece : kPieces) {
            const std::string group = piece.substr(0, piece.find(':'));
            const bool taken = std::ranges::any_of(chosen, [&](const std::string& other) {
                return other.substr(0, other.find(':')) == group;
            });
            if (!taken && below(4) == 0) {
                chosen.push_back(piece);
            }
        }
        std::string text;
        for (const std::string& piece : chosen) {
            text += (text.empty() ? "" : ", ") + piece;
        }
        return "{" + text + "}";
    }

    /// Statements that do not depend on their order, in this order or another.
    std::vector<std::string> rules() {
        static const std::vector<std::string> kAsks = {"buttons.metal: white",
                                                       "class: b",
                                                       "company: x",
                                                       "rank: [p, q]",
                                                       "regiment: 2",
                                                       "years of service: at least 4"};
        std::vector<std::string> all;
        const std::size_t count = below(4);
        for (std::size_t i = 0; i < count; ++i) {
            all.push_back("  - {name: rule " + std::to_string(i) + ", when: {" + pick(kAsks) +
                          "}, wear: " + wear() + "}\n");
        }
        return all;
    }

    std::vector<std::string> named(const std::vector<std::string>& names) {
        std::vector<std::string> all;
        for (const std::string& name : names) {
            all.push_back("  " + name + ": " + wear() + "\n");
        }
        return all;
    }

    std::vector<std::string> shuffled(std::vector<std::string> lines) {
        for (std::size_t i = lines.size(); i > 1; --i) {
            std::swap(lines[i - 1], lines[below(i)]);
        }
        return lines;
    }

  private:
    std::minstd_rand source_;
};

struct Sections {
    std::string head;
    /// Title and its lines.
    std::vector<std::pair<std::string, std::vector<std::string>>> parts;

    [[nodiscard]] std::string text() const {
        std::string all = head;
        for (const auto& [title, lines] : parts) {
            all += lines.empty() ? "" : title + ":\n";
            for (const std::string& line : lines) {
                all += line;
            }
        }
        return all;
    }
};

Sections regulation(Maker& maker) {
    Sections made;
    made.head = "regulation: Made up\neveryone: " + maker.wear() + "\n";
    made.parts = {{"classes", maker.named({"a", "b"})},
                  {"shows", maker.named({"s"})},
                  {"series",
                   {"  - {colour: buff, class: a, regiments: [{number: 1, shows: s, buttons: "
                    "white}]}\n",
                    "  - {colour: white, class: b, regiments: [{number: 2, shows: s}]}\n"}},
                  {"rules", maker.rules()},
                  {"companies", maker.named({"x", "y"})},
                  {"ranks", maker.named({"p", "q"})},
                  {"service", {"  - {at least: 4, service: {number: 2}}\n"}},
                  {"orders of dress", maker.named({"o"})}};
    return made;
}

std::string plate(Maker& maker) {
    return "plate: A\nregiment: " + maker.pick({"1", "2"}) +
           "\ncompany: " + maker.pick({"x", "y"}) + "\nrank: " + maker.pick({"p", "q"}) +
           "\nyears of service: " + maker.pick({"1", "4", "9.5"}) + "\n" +
           maker.pick({"", "order of dress: o\n", "stock: white\n", "cuffs: {buttons: 2}\n"});
}

std::vector<std::string> words(const Uniform& man) {
    std::vector<std::string> all;
    for (PropertyId id = 0; id < man.decided.size(); ++id) {
        all.push_back(std::string(properties()[id].key) + " " + man.word(id));
    }
    return all;
}

void expect_sound_chains(const Outcome& outcome) {
    ASSERT_EQ(outcome.uniform->decided.size(), properties().size());
    for (PropertyId id = 0; id < properties().size(); ++id) {
        const std::vector<Decision>& chain = outcome.uniform->decided[id].chain;
        ASSERT_FALSE(chain.empty());
        EXPECT_EQ(chain.front().strength, Strength::initial);
        EXPECT_TRUE(std::ranges::is_sorted(chain, {}, &Decision::strength));
        EXPECT_TRUE(!std::ranges::any_of(chain.begin(), chain.end() - 1, [](const Decision& each) {
            return each.worked_out;
        })) << properties()[id].key;
        for (const Decision& each : chain) {
            EXPECT_EQ(each.span.has_value(), each.strength != Strength::initial);
            if (each.span) {
                const std::string& text = outcome.sources.text(each.span->file);
                EXPECT_LT(each.span->begin, each.span->end);
                EXPECT_LE(each.span->end, text.size());
                EXPECT_FALSE(outcome.sources.line_at(each.span->file, each.span->begin).empty());
            }
        }
    }
}

TEST(Generated, IsDecidedOnceAlwaysAlikeAndAccountedFor) {
    int decided = 0;
    for (unsigned number = 1; number <= kRegulations; ++number) {
        Maker maker(number);
        const Sections made = regulation(maker);
        const std::string man = plate(maker);
        const Outcome outcome = resolved(Given{man, {{made.text()}}});
        const Outcome again = resolved(Given{man, {{made.text()}}});
        ASSERT_EQ(outcome.uniform.has_value(), outcome.problems.error_count() == 0);
        ASSERT_EQ(outcome.problem(), again.problem());
        Sections other = made;
        for (auto& [title, lines] : other.parts) {
            lines = maker.shuffled(lines);
        }
        const Outcome shuffled = resolved(Given{man, {{other.text()}}});
        ASSERT_EQ(outcome.uniform.has_value(), shuffled.uniform.has_value())
            << made.text() << outcome.problem() << shuffled.problem();
        if (outcome.uniform) {
            ++decided;
            expect_sound_chains(outcome);
            EXPECT_EQ(dump(*outcome.uniform, outcome.sources), dump(*again.uniform, again.sources));
            EXPECT_EQ(words(*outcome.uniform), words(*shuffled.uniform)) << made.text();
        } else {
            EXPECT_TRUE(outcome.problems.all().front().code == "resolve.conflict" ||
                        outcome.problems.all().front().code == "resolve.circle")
                << outcome.problem();
        }
    }
    EXPECT_GT(decided, kRegulations / 2);
}

}  // namespace
}  // namespace platewright
