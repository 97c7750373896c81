#include "core/handbook/standard_sizes.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <optional>

#include <fmt/format.h>

#include "core/handbook/bearings.hpp"
#include "core/handbook/drills.hpp"
#include "core/handbook/lookup.hpp"
#include "core/handbook/stock_sizes.hpp"
#include "core/handbook/tapers.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr Source kFractions{"inches halved to 64ths", "", Basis::kCommonPractice};
constexpr Source kMillimetres{"whole and half millimetres", "", Basis::kCommonPractice};

struct Candidate {
  std::string name;
  Length size;
  Source source;
};

// The row nearest to a size; the first of equally near ones. rows must not be empty.
template <class Rows, class SizeOf, class NameOf>
Candidate nearest_row(const Rows& rows, Length wanted, SizeOf size_of, NameOf name_of_row) {
  const auto off = [&](const auto& row) { return std::abs((size_of(row) - wanted).base()); };
  const auto best = std::min_element(
      rows.begin(), rows.end(), [&](const auto& a, const auto& b) { return off(a) < off(b) - kSizeSlackMm; });
  return {std::string(name_of_row(*best)), size_of(*best), best->source};
}

Candidate nearest_fraction(Length wanted) {
  const quantity::InchFraction fraction = quantity::nearest_64th(wanted);
  return {to_string(fraction) + " in", wanted + fraction.error, kFractions};
}

Candidate nearest_half_millimetre(Length wanted) {
  const double mm = std::round(wanted.in(unit::millimetre)*2.0) / 2.0;
  return {fmt::format("{} mm", mm), Length::of(mm, unit::millimetre), kMillimetres};
}

Candidate nearest_drill(DrillSeries series, Length wanted) {
  return nearest_row(
      drills(series), wanted, [](const Drill& one) { return quantity::across(one.diameter); },
      [](const Drill& one) { return one.name; });
}

Candidate nearest_stock(StockKind kind, Length wanted) {
  return nearest_row(
      stock_sizes(kind), wanted, [](const StockSize& one) { return one.size; },
      [](const StockSize& one) { return one.name; });
}

Candidate nearest_bearing(quantity::Diameter Bearing::*size, Length wanted) {
  return nearest_row(
      bearings(), wanted, [&](const Bearing& one) { return quantity::across(one.*size); },
      [](const Bearing& one) { return one.number; });
}

Candidate nearest_in(SizeSeries series, Length wanted) {
  switch (series) {
    case SizeSeries::kInchFraction:
      return nearest_fraction(wanted);
    case SizeSeries::kNumberDrill:
      return nearest_drill(DrillSeries::kNumber, wanted);
    case SizeSeries::kLetterDrill:
      return nearest_drill(DrillSeries::kLetter, wanted);
    case SizeSeries::kMetricDrill:
      return nearest_drill(DrillSeries::kMetric, wanted);
    case SizeSeries::kMetric:
      return nearest_half_millimetre(wanted);
    case SizeSeries::kInchReamer:
      return nearest_stock(StockKind::kInchReamer, wanted);
    case SizeSeries::kDowelReamer:
      return nearest_stock(StockKind::kDowelReamer, wanted);
    case SizeSeries::kMetricReamer:
      return nearest_stock(StockKind::kMetricReamer, wanted);
    case SizeSeries::kBearingBore:
      return nearest_bearing(&Bearing::bore, wanted);
    case SizeSeries::kBearingOutside:
      return nearest_bearing(&Bearing::outside, wanted);
    case SizeSeries::kTaperPin:
      return nearest_row(
          taper_pins(), wanted, [](const TaperPin& one) { return quantity::across(one.large_end); },
          [](const TaperPin& one) { return one.number; });
    case SizeSeries::kPipe:
      return nearest_row(
          pipes(), wanted, [](const Pipe& one) { return quantity::across(one.outside); },
          [](const Pipe& one) { return one.nominal; });
    case SizeSeries::kThread:
    case SizeSeries::kLast:
      break;
  }
  return nearest_row(
      stock_taps(), wanted, [](const StockTap& one) { return quantity::across(one.major); },
      [](const StockTap& one) { return one.thread; });
}

}  // namespace

std::string_view name_of(SizeSeries series) {
  constexpr std::array<std::string_view, static_cast<std::size_t>(SizeSeries::kLast)> kNames{
      "inch fraction", "number drill", "letter drill",  "metric drill", "metric",
      "inch reamer",   "dowel reamer", "metric reamer", "bearing bore", "bearing outside",
      "taper pin",     "pipe outside", "thread"};
  return kNames.at(static_cast<std::size_t>(series));
}

base::Result<std::vector<NearStandardSize>> nearest_standard_sizes(Diameter measured, Length uncertainty) {
  if (measured <= Diameter() || uncertainty < Length()) {
    return base::fail(
        base::Code::kSizeNotPositive,
        fmt::format("{} mm within {} mm", measured.in(unit::millimetre), uncertainty.in(unit::millimetre)),
        "a size over zero and an uncertainty of zero or more", "the measured size");
  }
  constexpr double kMostOff = 0.05;
  constexpr double kMostOffMm = 0.5;
  const double most_mm = std::max(kMostOff * measured.base(), kMostOffMm);
  std::vector<NearStandardSize> out;
  for (int i = 0; i < static_cast<int>(SizeSeries::kLast); ++i) {
    const auto series = static_cast<SizeSeries>(i);
    Candidate near = nearest_in(series, quantity::across(measured));
    const Length off = quantity::across(measured) - near.size;
    if (near.size <= Length() || std::abs(off.base()) > most_mm) continue;
    const bool possible = std::abs(off.base()) <= uncertainty.base() + kSizeSlackMm;
    out.push_back({series, std::move(near.name), near.size, off, possible, near.source});
  }
  std::stable_sort(out.begin(), out.end(), [](const NearStandardSize& a, const NearStandardSize& b) {
    return std::abs(a.off.base()) < std::abs(b.off.base()) - kSizeSlackMm;
  });
  return out;
}

}  // namespace sparewright::handbook
