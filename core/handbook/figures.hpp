// What several sources print for one question: the lowest, the highest, the middle one, and every figure with
// its source. Unlike a Spread it says nothing of where to start.
#pragma once

#include <algorithm>
#include <cassert>
#include <utility>
#include <vector>

#include "core/handbook/spread.hpp"

namespace sparewright::handbook {

template <class Quantity>
struct Figures {
  Quantity low;  // the lowest of all
  Quantity
      median;     // of the middles of the printed ranges; of an even number the mean of the two in the middle
  Quantity high;  // the highest of all
  std::vector<Printed<Quantity>> printed;  // in the order of the table, not empty
};

// printed must not be empty.
template <class Quantity>
[[nodiscard]] Figures<Quantity> figures_of(std::vector<Printed<Quantity>> printed) {
  assert(!printed.empty());
  std::vector<Quantity> middles;
  Figures<Quantity> figures{printed.front().low, {}, printed.front().high, {}};
  for (const Printed<Quantity>& one : printed) {
    figures.low = std::min(figures.low, one.low);
    figures.high = std::max(figures.high, one.high);
    middles.push_back((one.low + one.high) / 2.0);
  }
  std::sort(middles.begin(), middles.end());
  const std::size_t half = middles.size() / 2;
  figures.median = middles.size() % 2 == 1 ? middles[half] : (middles[half - 1] + middles[half]) / 2.0;
  figures.printed = std::move(printed);
  return figures;
}

}  // namespace sparewright::handbook
