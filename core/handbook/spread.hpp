// A figure that several sources print, each with its own range: kept apart, so that it can be seen how far
// they differ.
#pragma once

#include <algorithm>
#include <cassert>
#include <string_view>
#include <utility>
#include <vector>

#include "core/handbook/source.hpp"

namespace sparewright::handbook {

template <class Quantity>
struct Printed {
  Quantity low;
  Quantity high;
  std::string_view material;  // as the source names it
  std::string_view note;      // empty where there is none
  Source source;
};

// What every start value of a spread rests on.
inline constexpr Source kStartLow{
    "start at the lowest figure in print; a hand-operated or worn machine is not sped up until the cut "
    "sounds right",
    "", Basis::kCommonPractice};

template <class Quantity>
struct Spread {
  Quantity low;    // the lowest of all
  Quantity high;   // the highest of all
  Quantity start;  // where to start: low
  Source start_rule = kStartLow;
  std::vector<Printed<Quantity>> printed;  // in the order of the table, not empty
};

// printed must not be empty.
template <class Quantity>
[[nodiscard]] Spread<Quantity> spread_of(std::vector<Printed<Quantity>> printed) {
  assert(!printed.empty());
  Spread<Quantity> spread;
  spread.low = printed.front().low;
  spread.high = printed.front().high;
  for (const Printed<Quantity>& one : printed) {
    spread.low = std::min(spread.low, one.low);
    spread.high = std::max(spread.high, one.high);
  }
  spread.start = spread.low;
  spread.printed = std::move(printed);
  return spread;
}

}  // namespace sparewright::handbook
