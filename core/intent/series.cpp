#include "core/intent/series.hpp"

#include <array>
#include <cmath>

#include <fmt/format.h>

#include "core/handbook/preferred_numbers.hpp"
#include "core/intent/collecting.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::intent {
namespace {

constexpr double kInch_mm = 25.4;

// Fine steps are common on small work: by which a share of them is multiplied.
double finely(double size_mm) {
  constexpr double kUsual_mm = 12.0;
  return std::clamp(kUsual_mm / size_mm, 0.3, 2.0);
}

void add_fractions(Collector& found) {
  const double fine = finely(found.size_mm());
  const std::array grids{
      Grid{kInch_mm, kInch_mm, "a whole inch", {0.09, 0.004}},
      Grid{kInch_mm / 2, kInch_mm, "half inches", {0.09, 0.004}},
      Grid{kInch_mm / 4, kInch_mm / 2, "quarters", {0.11, 0.004}},
      Grid{kInch_mm / 8, kInch_mm / 4, "8ths", {0.13, 0.004}},
      Grid{kInch_mm / 16, kInch_mm / 8, "16ths", {0.13, 0.003}},
      Grid{kInch_mm / 32, kInch_mm / 16, "32nds", {0.08 * fine, 0.001}},
      Grid{kInch_mm / 64, kInch_mm / 32, "64ths", {0.03 * fine, 0.0005}},
  };
  found.add_grids(grids, fraction_name, "inches halved to 64ths (common practice)");
}

// Holes go by the tools there are, seldom by decimals.
void add_decimals(Collector& found) {
  const double seldom = found.measured().role == Role::kHole ? 0.15 : 1.0;
  const std::array grids{
      Grid{0.100 * kInch_mm, 0.100 * kInch_mm, "0.100 in steps", {0.02 * seldom, 0.0005}},
      Grid{0.050 * kInch_mm, 0.100 * kInch_mm, "0.050 in steps", {0.012 * seldom, 0.0005}},
      Grid{0.010 * kInch_mm, 0.0125 * kInch_mm, "0.010 in steps", {0.02 * seldom, 0.0005}},
      Grid{0.005 * kInch_mm, 0.010 * kInch_mm, "0.005 in steps", {0.015 * seldom, 0.0005}},
  };
  found.add_grids(grids, decimal_name, "decimal inches in round steps (common practice)");
}

void add_millimetres(Collector& found) {
  const double fine = finely(found.size_mm());
  const std::array grids{
      Grid{10.0, 10.0, "tens of millimetres", {0.007, 0.15}},
      Grid{5.0, 10.0, "fives of millimetres", {0.007, 0.14}},
      Grid{2.0, 2.5, "even millimetres", {0.007, 0.17}},
      Grid{1.0, 2.5, "whole millimetres", {0.006, 0.14}},
      Grid{0.5, 1.0, "half millimetres", {0.003, 0.06 * fine}},
      Grid{0.1, 0.125, "tenths of a millimetre", {0.001, 0.03 * fine}},
  };
  found.add_grids(grids, metric_name, "millimetres in round steps (common practice)");
}

// From a tenth of a millimetre to ten metres.
Table preferred(handbook::RenardSeries series) {
  std::vector<Row> rows;
  for (const double decade : {0.1, 1.0, 10.0, 100.0, 1000.0}) {
    for (const double number : handbook::preferred_numbers(series)) {
      const double size = quantity::rounded(number * decade, 6);
      rows.push_back({metric_name(size),
                      fmt::format("preferred numbers R{}", static_cast<int>(series)),
                      size,
                      {},
                      handbook::cite(handbook::kPreferredNumbers)});
    }
  }
  return Table(std::move(rows));
}

void add_preferred(Collector& found) {
  using handbook::RenardSeries;
  static const Table kR10 = preferred(RenardSeries::kR10);
  static const Table kR20 = preferred(RenardSeries::kR20);
  static const Table kR40 = preferred(RenardSeries::kR40);
  found.add_table(kR10, {0.001, 0.06});
  found.add_table(kR20, {0.001, 0.04});
  found.add_table(kR40, {0.0005, 0.02});
}

}  // namespace

std::string fraction_name(double mm) {
  return to_string(quantity::nearest_64th(quantity::Length::from_base(mm))) + " in";
}
std::string decimal_name(double mm) {
  return quantity::fixed(mm / kInch_mm, 3) + " in";
}
std::string metric_name(double mm) {
  return fmt::format("{:g} mm", quantity::rounded(mm, 3));
}

void collect_grids(Collector& found) {
  add_fractions(found);
  add_decimals(found);
  add_millimetres(found);
  add_preferred(found);
}

Nominals nominals_near(const MeasuredUp& measured) {
  Collector found(measured);
  if (measured.role == Role::kPitch) {
    collect_pitches(found);
    return std::move(found).take({0.03, 0.03});
  }
  if (measured.role == Role::kModule) {
    collect_modules(found);
    return std::move(found).take({0.03, 0.03});
  }
  collect_grids(found);
  collect_tables(found);
  collect_threads(found);
  return std::move(found).take({0.06, 0.06});
}

}  // namespace sparewright::intent
