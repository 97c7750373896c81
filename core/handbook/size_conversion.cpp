#include "core/handbook/size_conversion.hpp"

#include <array>
#include <cmath>
#include <limits>
#include <optional>
#include <variant>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"
#include "core/quantity/typed.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Length;
namespace unit = quantity::unit;

constexpr int kMostPlaces = 10;

// The shortest decimal that is the number to the last bits it has. A quotient such as 10 / 25.4 has none.
WrittenDecimal written(double value) {
  constexpr double kLastBits = 4.0 * std::numeric_limits<double>::epsilon();
  for (int places = 0; places <= kMostPlaces; ++places) {
    if (std::abs(quantity::rounded(value, places) - value) <= kLastBits * std::abs(value)) {
      return {quantity::fixed(value, places), true};
    }
  }
  std::string text = quantity::fixed(value, kMostPlaces);
  text.erase(text.find_last_not_of('0') + 1);
  return {text, false};
}

Drill nearest_drill(Length size) {
  constexpr std::array kOrder{DrillSeries::kFraction, DrillSeries::kNumber, DrillSeries::kLetter,
                              DrillSeries::kMetric};
  std::optional<Drill> best;
  const auto off = [&](const Drill& drill) {
    return std::abs((quantity::across(drill.diameter) - size).base());
  };
  for (const DrillSeries series : kOrder) {
    const DrillsAround around = drills_around(quantity::as_diameter(size), series);
    for (const std::optional<Drill>& one : {around.at_or_below, around.at_or_above}) {
      if (one && (!best || off(*one) < off(*best) - kSizeSlackMm)) best = one;
    }
  }
  return best.value();  // every size has a drill on one side
}

base::Result<Length> size_of(const quantity::Size& size) {
  if (const auto* typed = std::get_if<quantity::Typed>(&size)) return typed->length();
  const auto drill = find_drill(std::get<quantity::Designation>(size));
  if (!drill) return tl::unexpected(drill.error());
  return quantity::across(drill->diameter);
}

std::string typed_of(const quantity::Size& size) {
  return std::visit([](const auto& one) { return one.typed; }, size);
}

}  // namespace

base::Result<SizeConversion> convert_size(std::string_view text) {
  const auto read = quantity::read_size(text, quantity::Kind::kLength, std::nullopt);
  if (!read) return tl::unexpected(read.error());
  const auto size = size_of(*read);
  if (!size) return tl::unexpected(size.error());
  if (*size <= Length()) {
    return base::fail(base::Code::kSizeNotPositive, typed_of(*read), "a size over zero", "the size");
  }
  SizeConversion out{.typed = typed_of(*read),
                     .size = *size,
                     .inch = written(size->in(unit::inch)),
                     .millimetre = written(size->in(unit::millimetre)),
                     .nearest_64th = quantity::nearest_64th(*size),
                     .nearest_drill = nearest_drill(*size)};
  out.drill_off = quantity::across(out.nearest_drill.diameter) - *size;
  out.nearest_thou = Length::of(quantity::rounded(size->in(unit::thou), 0), unit::thou);
  out.thou_off = out.nearest_thou - *size;
  out.nearest_hundredth = Length::of(quantity::rounded(size->in(unit::millimetre), 2), unit::millimetre);
  out.hundredth_off = out.nearest_hundredth - *size;
  return out;
}

}  // namespace sparewright::handbook
