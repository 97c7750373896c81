#include "core/handbook/chuck_grip.hpp"

#include <algorithm>
#include <iterator>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
namespace unit = quantity::unit;

constexpr ChuckMargin kChuckMargins[] = {
#include "generated/core/handbook/chuck_margins.inc"
};
constexpr ChuckSpeed kChuckSpeeds[] = {
#include "generated/core/handbook/chuck_speeds.inc"
};

}  // namespace

std::span<const ChuckMargin> chuck_margins() {
  return kChuckMargins;
}

std::span<const ChuckSpeed> chuck_speeds() {
  return kChuckSpeeds;
}

base::Result<ChuckSpeed> chuck_speed(Diameter chuck) {
  const auto found = std::find_if(
      std::begin(kChuckSpeeds), std::end(kChuckSpeeds),
      [chuck](const ChuckSpeed& row) { return row.chuck.base() >= chuck.base() - kSizeSlackMm; });
  if (found != std::end(kChuckSpeeds) && chuck > Diameter{}) return *found;
  return not_tabled(
      "the speed of a scroll chuck", fmt::format("{:g} mm", chuck.in(unit::millimetre)),
      fmt::format("chucks up to {:g} mm", std::prev(std::end(kChuckSpeeds))->chuck.in(unit::millimetre)));
}

}  // namespace sparewright::handbook
