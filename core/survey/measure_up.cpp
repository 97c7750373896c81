#include "core/survey/measure_up.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "core/survey/open_ways.hpp"
#include "core/survey/start.hpp"

namespace sparewright::survey {
namespace {

using base::Result;
using ledger::Bound;

// The readings that are not sound, the one that tells most first.
std::vector<std::size_t> by_what_they_tell(const Network& network) {
  std::vector<std::size_t> order;
  for (std::size_t i = 0; i < network.readings.size(); ++i) {
    if (network.readings[i].bound != Bound::kExact) order.push_back(i);
  }
  const auto key = [&](std::size_t i) {
    const Observation& reading = network.readings[i];
    const double tightness = reading.bound == Bound::kAtLeast ? -reading.value : reading.value;
    return std::tuple(reading.bound == Bound::kNeither, reading.equation.typed(), tightness, i);
  };
  std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return key(a) < key(b); });
  return order;
}

// The unknowns as far as the sound readings say; the others as all readings together start.
std::vector<double> values_so_far(const Equations& equations, const Adjustment& sound) {
  std::vector<double> values = cold_start(equations).values;
  for (std::size_t j = 0; j < values.size(); ++j) {
    if (sound.unknowns[j].fixed) values[j] = sound.unknowns[j].value;
  }
  return values;
}

Result<std::vector<double>> slopes_of(const Equations& equations, std::size_t reading,
                                      const std::vector<double>& values) {
  const auto y = equations.at(reading, values);
  if (!y) return base::fail(y.error());
  std::vector<double> slopes(values.size(), 0.0);
  const auto own = equations.unknowns_of(reading);
  for (std::size_t k = 0; k < own.size(); ++k)
    slopes[own[k]] = y->slopes[k];
  return slopes;
}

Result<SetAside> set_aside(const Equations& equations, std::size_t reading,
                           const std::vector<double>& values) {
  const auto y = equations.at(reading, values);
  auto slopes = slopes_of(equations, reading, values);
  if (!y) return base::fail(y.error());
  return SetAside{reading, equations.network().readings[reading].name, y->value, std::move(*slopes)};
}

}  // namespace

Result<MeasuredUp> measure_up(const Network& network) {
  const auto equations = Equations::of(network);
  if (!equations) return base::fail(equations.error());
  MeasuredUp out;
  std::vector<bool> is_used(network.readings.size());
  for (std::size_t i = 0; i < is_used.size(); ++i) {
    is_used[i] = network.readings[i].bound == Bound::kExact;
    if (is_used[i]) out.used.push_back(i);
  }
  auto adjustment = adjust(part_of(network, out.used));
  if (!adjustment) return base::fail(adjustment.error());

  std::vector<double> values = values_so_far(*equations, *adjustment);
  OpenWays open(adjustment->gap_directions);
  for (const std::size_t i : by_what_they_tell(network)) {
    const auto slopes = slopes_of(*equations, i, values);
    if (!slopes) return base::fail(slopes.error());
    is_used[i] = open.close(*slopes);
    if (is_used[i]) out.used.push_back(i);
  }
  if (out.used.size() != adjustment->readings.size()) {
    std::sort(out.used.begin(), out.used.end());
    adjustment = adjust(part_of(network, out.used));
    if (!adjustment) return base::fail(adjustment.error());
    values = values_so_far(*equations, *adjustment);
  }
  for (std::size_t i = 0; i < is_used.size(); ++i) {
    if (is_used[i]) continue;
    auto aside = set_aside(*equations, i, values);
    if (!aside) return base::fail(aside.error());
    out.set_aside.push_back(std::move(*aside));
  }
  out.adjustment = std::move(*adjustment);
  return out;
}

base::Fingerprint fingerprint(const MeasuredUp& measured) {
  base::Hasher h;
  h.add(fingerprint(measured.adjustment));
  for (const std::size_t i : measured.used)
    h.add(static_cast<std::uint64_t>(i));
  for (const SetAside& aside : measured.set_aside) {
    h.add(static_cast<std::uint64_t>(aside.reading)).add(aside.name).add(aside.fitted);
    for (const double slope : aside.slopes)
      h.add(slope);
  }
  return h.done();
}

}  // namespace sparewright::survey
