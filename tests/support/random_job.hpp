// A random job for the ledger: stages that ask one another, with ifs that change which questions are asked,
// so that any sequence of edits can be compared with the same job worked out afresh.
#pragma once

#include <array>
#include <cmath>
#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "core/ledger/ledger.hpp"
#include "splitmix.hpp"
#include "stages.hpp"

namespace sparewright::tests {

// Names with common beginnings, and stages below other stages.
inline constexpr std::array kStageNames{"op 3", "op 30", "op 3/line 1", "op",     "a",
                                        "a/b",  "a/b/c", "check/fit",   "survey", "z"};
inline constexpr std::array kFigureNames{"root", "work", "choice", "margin", "nothing"};
inline constexpr std::array kCauses{"caliper", "micrometer", "temperature", "first", "second"};

struct RandomStage {
  std::size_t place = 0;        // in kStageNames
  std::uint64_t edition = 0;    // what it does
  int size = 0;                 // of its root
  bool may_ask_anyone = false;  // or only those before it, so that there is no circle

  [[nodiscard]] std::string name() const { return kStageNames.at(place); }
  [[nodiscard]] ledger::Stage made() const {
    const RandomStage self = *this;
    return {name(), base::Hasher().add(name()).add(edition).add(size).add(may_ask_anyone).done(),
            [self](ledger::Pen& pen) { self.write(pen); }};
  }

 private:
  void write(ledger::Pen& pen) const {
    SplitMix random(edition * 1000003U + place);
    ledger::Root root = length(size / 4.0);
    for (std::size_t n = random.below(3); n > 0; --n) {
      root.shares.push_back({kCauses.at(random.below(kCauses.size())), random.between(-1.0, 1.0)});
    }
    if (random.one_in(6)) root.bound = ledger::Bound::kAtLeast;
    if (random.one_in(8)) root.value.reset();
    const ledger::Figure& own = pen.root("root", root);
    if (random.one_in(2)) pen.publish("value", size / 2, base::Hasher().add(size / 2).done());

    std::vector<ledger::Term> terms{{&own, 1.0}};
    double value = own.value;
    for (std::size_t n = random.below(6); n > 0; --n) {
      const ledger::Figure& other = ask(pen, random);
      // an if on a number: this question is asked only for large ones
      if (other.known() && other.value > 2.0) ask(pen, random);
      if (other.known() || random.one_in(8)) {
        const double slope = static_cast<double>(random.below(5)) - 2.0;
        terms.push_back({&other, slope});
        value += slope * other.value;
      }
    }
    const ledger::Figure& work = pen.linear("work", quantity::Kind::kLength, "sum", value, terms);
    // rounded, so that many edits stop here
    const ledger::Figure& choice =
        pen.decide("choice", {.value = work.known() ? std::floor(work.value / 8.0) : 0.0, .inputs = {&work}});
    pen.judge({.check = name(), .subject = "it", .figure = &choice, .low = &own});
    if (choice.known() && choice.value > 1.0) pen.query({.id = name(), .says = std::to_string(choice.value)});
  }

  [[nodiscard]] std::string somebody(SplitMix& random) const {
    const std::size_t among = may_ask_anyone ? kStageNames.size() : place;
    return among == 0 ? "nobody" : kStageNames.at(random.below(among));
  }

  const ledger::Figure& ask(ledger::Pen& pen, SplitMix& random) const {
    const std::string stage = somebody(random);
    const std::string figure = stage + "/" + kFigureNames.at(random.below(kFigureNames.size()));
    switch (random.below(8)) {
      case 0:
        pen.root("names of " + std::to_string(random.next()),
                 length(static_cast<double>(pen.names(stage).size())));
        break;
      case 1: {
        const int* value = pen.value<int>(stage + "/value");
        pen.root("value of " + std::to_string(random.next()), length(value == nullptr ? -1.0 : *value));
        break;
      }
      case 2:
        if (random.one_in(3)) pen.need_value<int>(stage + "/value");
        break;
      case 3:
        if (random.one_in(3)) return pen.need(figure);
        break;
      default:
        break;
    }
    return pen.ask(figure);
  }
};

// The whole job as it stands.
struct RandomJob {
  std::map<std::size_t, RandomStage> stages;  // by place
  std::map<std::string, ledger::Replacement> replacements;

  [[nodiscard]] std::vector<ledger::Stage> made() const {
    std::vector<ledger::Stage> all;
    for (const auto& [place, stage] : stages)
      all.push_back(stage.made());
    return all;
  }
  // The same job in a ledger that has seen nothing else.
  [[nodiscard]] ledger::Ledger fresh() const {
    ledger::Ledger ledger;
    ledger.declare(made());
    for (const auto& [root, replacement] : replacements)
      ledger.replace(root, replacement);
    return ledger;
  }
};

}  // namespace sparewright::tests
