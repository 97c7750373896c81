#include "core/handbook/stock_lengths.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Length;
using quantity::UnitSystem;
namespace unit = quantity::unit;

struct Steps {
  double up_to_in;
  double step_in;
};
constexpr std::array kInchSteps{Steps{0.25, 1.0 / 16}, Steps{1.0, 1.0 / 8}, Steps{3.5, 0.25}, Steps{7.0, 0.5},
                                Steps{10.0, 1.0}};
constexpr double kShortest_in = 0.125;
constexpr std::array<double, 32> kMetric_mm{2,  2.5, 3,   4,   5,   6,   8,   10,  12,  16, 20,
                                            25, 30,  35,  40,  45,  50,  55,  60,  65,  70, 80,
                                            90, 100, 110, 120, 130, 140, 150, 160, 180, 200};

std::string shown(UnitSystem system, Length length) {
  return system == UnitSystem::kInch ? fmt::format("{:.3f} in", length.in(unit::inch))
                                     : fmt::format("{:g} mm", length.in(unit::millimetre));
}

}  // namespace

std::vector<Length> stock_lengths(UnitSystem system) {
  std::vector<Length> out;
  if (system == UnitSystem::kMetric) {
    for (const double mm : kMetric_mm)
      out.push_back(Length::of(mm, unit::millimetre));
    return out;
  }
  double inches = kShortest_in;
  out.push_back(Length::of(inches, unit::inch));
  for (const Steps& steps : kInchSteps) {
    while (inches + steps.step_in <= steps.up_to_in)  // exact: every length is a number of 16ths
      out.push_back(Length::of(inches += steps.step_in, unit::inch));
  }
  return out;
}

base::Result<ScrewLength> screw_length(UnitSystem system, Length thickness, Length engagement,
                                       std::optional<Length> deepest) {
  for (const auto& [length, name] :
       {std::pair{thickness, "the thickness"}, std::pair{engagement, "the engagement"}}) {
    if (length <= Length{}) return base::fail(base::Code::kSizeNotPositive, shown(system, length), {}, name);
  }
  const Length wanted = thickness + engagement;
  const std::vector<Length> lengths = stock_lengths(system);
  const auto found = std::find_if(lengths.begin(), lengths.end(), [&](Length length) {
    return length.base() >= wanted.base() - kSizeSlackMm;
  });
  if (found == lengths.end())
    return not_tabled("a stock screw", shown(system, wanted),
                      "lengths up to " + shown(system, lengths.back()));
  ScrewLength out{*found, *found - thickness, std::nullopt, kStockLengths};
  if (found != lengths.begin()) out.shorter = *(found - 1);
  if (deepest && out.engagement.base() > deepest->base() + kSizeSlackMm) {
    return base::fail(base::Code::kOutsideDomain, "a hole with room for " + shown(system, *deepest),
                      "a screw cut short, a washer under the head or a deeper hole",
                      fmt::format("a stock screw of {}", shown(system, *found)));
  }
  return out;
}

}  // namespace sparewright::handbook
