// SPDX-License-Identifier: MIT
// A man's place in the regulation, and what is said where he has none.
#include "resolve/man.h"

#include <algorithm>
#include <charconv>
#include <utility>

#include "base/text.h"

namespace platewright {

namespace {

std::optional<int> as_number(std::string_view text) {
    text = trim(text);
    int number = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), number);
    const bool whole = read.ec == std::errc() && read.ptr == text.data() + text.size();
    return whole ? std::optional(number) : std::nullopt;
}

const PlaceInForce* place_of_number(const InForce& law, int number) {
    const auto at = std::ranges::find(law.places, number, &PlaceInForce::number);
    return at == law.places.end() ? nullptr : &*at;
}

const PlaceInForce* place_of_name(const InForce& law, std::string_view name) {
    const auto at = std::ranges::find_if(law.places, [&](const PlaceInForce& place) {
        return place.name.text != nullptr && same_name(place.name.text->text, name);
    });
    return at == law.places.end() ? nullptr : &*at;
}

std::vector<std::string> names_of_places(const InForce& law) {
    std::vector<std::string> names;
    for (const PlaceInForce& place : law.places) {
        if (place.name.text != nullptr) {
            names.push_back(place.name.text->text);
        }
    }
    return names;
}

/// Finds a man by what his plate, his regiment and the regulation say of him.
class Finder {
  public:
    Finder(const SpecifiedPlate& plate, const Orders& orders, const InForce& law, Diagnostics& to)
        : plate_(plate), orders_(orders), law_(law), to_(to) {}

    Man find() {
        man_.law = &law_;
        man_.day = law_.day;
        if (orders_.regiment) {
            find_place_of_file(*orders_.regiment);
        } else if (plate_.regiment) {
            find_place_of_word(*plate_.regiment);
        }
        find_class();
        man_.company = find_in(law_.companies, plate_.company, "company", "companies");
        man_.order =
            find_in(law_.orders, plate_.order_of_dress, "order of dress", "orders of dress");
        find_rank();
        if (plate_.years_of_service) {
            man_.years = plate_.years_of_service->years;
        }
        return std::move(man_);
    }

  private:
    void find_place_of_file(const SpecifiedRegiment& regiment) {
        man_.regiment = regiment.name.text;
        if (!regiment.number) {
            man_.place = place_of_name(law_, regiment.name.text);
            if (man_.place != nullptr) {
                man_.number = man_.place->number;
            } else {
                suspect_name(regiment);
            }
            return;
        }
        man_.number = regiment.number->first;
        man_.place = place_of_number(law_, *man_.number);
        if (man_.place == nullptr) {
            report_number(*regiment.number);
        } else if (man_.place->name.text != nullptr &&
                   !same_name(man_.place->name.text->text, regiment.name.text)) {
            report_other_name(regiment, *man_.place);
        }
    }

    /// A name nearly that of a place is a slip; another is a corps outside the series.
    void suspect_name(const SpecifiedRegiment& regiment) {
        const auto near = nearest_word(regiment.name.text, names_of_places(law_));
        if (near || (!regiment.corps_class && !law_.places.empty())) {
            Diagnostic& problem = to_.error(
                "resolve.unknown-regiment",
                regiment.name.span,
                "the regulation has no place for the regiment " + quoted(regiment.name.text));
            problem.hints.push_back(near ? "did you mean " + quoted(*near) + "?"
                                         : "write 'number:', its place in the series, or 'class:' "
                                           "for a corps outside the series");
        }
    }

    void report_number(const std::pair<int, Span>& number) {
        Diagnostic& problem =
            to_.error("resolve.unknown-regiment",
                      number.second,
                      "the regulation has no regiment " + std::to_string(number.first));
        problem.hints.push_back(law_.places.empty()
                                    ? std::string("it has no series; leave 'number:' out")
                                    : "its regiments are numbered " +
                                          std::to_string(law_.places.front().number) + " to " +
                                          std::to_string(law_.places.back().number));
    }

    void report_other_name(const SpecifiedRegiment& regiment, const PlaceInForce& place) {
        Diagnostic& problem =
            to_.error("resolve.place-taken",
                      regiment.number->second,
                      "place " + std::to_string(place.number) + " of the series is taken by " +
                          quoted(place.name.text->text) + ", not by " + quoted(regiment.name.text));
        problem.labels.push_back({place.name.text->span, "here"});
        problem.hints.emplace_back("correct the number, or the name");
    }

    void find_place_of_word(const WrittenText& word) {
        const std::optional<int> number = as_number(word.text);
        man_.place = number ? place_of_number(law_, *number) : place_of_name(law_, word.text);
        if (man_.place == nullptr) {
            Diagnostic& problem = to_.error("resolve.unknown-regiment",
                                            word.span,
                                            "the regulation has no regiment " + quoted(word.text));
            add_suggestion(problem, word.text, names_of_places(law_), "its regiments are ");
            man_.regiment = word.text;
            return;
        }
        man_.number = man_.place->number;
        man_.regiment = man_.place->name.text != nullptr
                            ? man_.place->name.text->text
                            : "regiment " + std::to_string(man_.place->number);
    }

    void find_class() {
        const WrittenText* said[] = {man_.place != nullptr ? man_.place->corps_class.text : nullptr,
                                     orders_.regiment && orders_.regiment->corps_class
                                         ? &*orders_.regiment->corps_class
                                         : nullptr,
                                     plate_.corps_class ? &*plate_.corps_class : nullptr};
        const WrittenText* first = nullptr;
        for (const WrittenText* each : said) {
            if (first != nullptr && each != nullptr && !same_name(first->text, each->text)) {
                report_classes(*first, *each);
            }
            first = first == nullptr ? each : first;
        }
        if (first != nullptr) {
            man_.corps_class = find_in(law_.classes, *first, "class", "classes");
        }
    }

    void report_classes(const WrittenText& first, const WrittenText& second) {
        Diagnostic& problem = to_.error("resolve.conflict",
                                        second.span,
                                        "he cannot be of the classes " + quoted(first.text) +
                                            " and " + quoted(second.text) + " at once");
        problem.labels.push_back({first.span, "here " + quoted(first.text)});
        problem.hints.emplace_back("leave one of them out");
    }

    void find_rank() {
        if (!plate_.rank) {
            return;
        }
        man_.rank = find_entry(law_.ranks, plate_.rank->text);
        if (man_.rank != nullptr || plate_.values.contains(property_id("marks.shape"))) {
            return;
        }
        Diagnostic& problem = to_.error("resolve.unknown-rank",
                                        plate_.rank->span,
                                        "the regulation has no rank " + quoted(plate_.rank->text));
        suggest_entry(problem, law_.ranks, plate_.rank->text, "ranks");
        problem.hints.emplace_back(
            "a rank of your own needs its marks: write 'marks: none' or 'marks: {shape: bars, "
            "number: 2}'");
    }

    template <typename T>
    const T* find_in(const std::vector<T>& entries,
                     const std::optional<WrittenText>& name,
                     std::string_view what,
                     std::string_view section) {
        return name ? find_in(entries, *name, what, section) : nullptr;
    }

    template <typename T>
    const T* find_in(const std::vector<T>& entries,
                     const WrittenText& name,
                     std::string_view what,
                     std::string_view section) {
        const T* found = find_entry(entries, name.text);
        if (found == nullptr) {
            const std::string code = what == "order of dress" ? "order" : std::string(what);
            Diagnostic& problem =
                to_.error("resolve.unknown-" + code,
                          name.span,
                          "the regulation has no " + std::string(what) + " " + quoted(name.text));
            suggest_entry(problem, entries, name.text, section);
        }
        return found;
    }

    /// A title, or what it means, leads to the name as well.
    template <typename T>
    static void suggest_entry(Diagnostic& problem,
                              const std::vector<T>& entries,
                              std::string_view written,
                              std::string_view section) {
        for (const T& entry : entries) {
            const Named named = entry.named();
            if (same_name(named.title, written) || same_name(named.means, written)) {
                problem.hints.push_back("did you mean " + quoted(entry.name) + "?");
                return;
            }
        }
        if (entries.empty()) {
            problem.hints.push_back("it knows none; add them under '" + std::string(section) +
                                    ":'");
        }
        add_suggestion(
            problem, written, names_of(entries), "its " + std::string(section) + " are ");
    }

    const SpecifiedPlate& plate_;
    const Orders& orders_;
    const InForce& law_;
    Diagnostics& to_;
    Man man_;
};

}  // namespace

Man Man::as_any_of_regiment() const {
    Man any = *this;
    any.company = nullptr;
    any.rank = nullptr;
    any.years.reset();
    any.order = nullptr;
    return any;
}

std::vector<const RankEntry*> likeness(const RankEntry& rank, const InForce& law) {
    std::vector<const RankEntry*> line{&rank};
    while (line.back()->like != nullptr) {
        const RankEntry* next = find_entry(law.ranks, line.back()->like->text);
        if (next == nullptr || std::ranges::find(line, next) != line.end()) {
            break;
        }
        line.push_back(next);
    }
    std::ranges::reverse(line);
    return line;
}

Man find_man(const SpecifiedPlate& plate,
             const Orders& orders,
             const InForce& law,
             Diagnostics& to) {
    return Finder(plate, orders, law, to).find();
}

Facts facts_of(const Man& man) {
    Facts facts;
    if (man.law != nullptr) {
        for (const SpecifiedRegulation* edition : man.law->editions) {
            const auto& source = edition->grounds.source;
            const auto& from = edition->in_force_from;
            facts.regulations.push_back({edition->title.text,
                                         source ? source->text : std::string(),
                                         from ? std::optional(from->date) : std::nullopt});
        }
    }
    facts.regiment = man.regiment;
    facts.number = man.number;
    facts.corps_class = man.corps_class != nullptr ? man.corps_class->named() : Named{};
    facts.company = man.company != nullptr ? man.company->named() : Named{};
    facts.rank = man.rank != nullptr ? man.rank->named() : Named{};
    facts.officer = man.rank != nullptr && man.rank->officer;
    facts.years_of_service = man.years;
    facts.order_of_dress = man.order != nullptr ? man.order->named() : Named{};
    facts.day = man.day;
    return facts;
}

bool reaches(double years, const ServiceStep& step) {
    return step.more_than ? years > step.years : years >= step.years;
}

}  // namespace platewright
