#include "core/intent/series.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <span>

#include <fmt/format.h>

#include "core/handbook/bearings.hpp"
#include "core/handbook/drills.hpp"
#include "core/handbook/parallel_keys.hpp"
#include "core/handbook/preferred_numbers.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::intent {
namespace {

constexpr double kInch_mm = 25.4;
constexpr double kSame_mm = 1e-6;

// Sizes at equal steps.
struct Grid {
  double step_mm;
  std::string_view series;
};

constexpr std::array kFractions{
    Grid{kInch_mm, "a whole inch"}, Grid{kInch_mm / 2, "half inches"}, Grid{kInch_mm / 4, "quarters"},
    Grid{kInch_mm / 8, "8ths"},     Grid{kInch_mm / 16, "16ths"},      Grid{kInch_mm / 32, "32nds"},
    Grid{kInch_mm / 64, "64ths"},
};
constexpr std::array kDecimals{
    Grid{0.100 * kInch_mm, "0.100 in steps"}, Grid{0.050 * kInch_mm, "0.050 in steps"},
    Grid{0.010 * kInch_mm, "0.010 in steps"}, Grid{0.005 * kInch_mm, "0.005 in steps"},
    Grid{0.001 * kInch_mm, "0.001 in steps"},
};
constexpr std::array kMillimetres{
    Grid{10.0, "tens of millimetres"}, Grid{5.0, "fives of millimetres"},   Grid{1.0, "whole millimetres"},
    Grid{0.5, "half millimetres"},     Grid{0.1, "tenths of a millimetre"},
};

std::string fraction_name(double mm) {
  return to_string(quantity::nearest_64th(quantity::Length::from_base(mm))) + " in";
}
std::string decimal_name(double mm) {
  return quantity::fixed(mm / kInch_mm, 3) + " in";
}
std::string metric_name(double mm) {
  return fmt::format("{:g} mm", quantity::rounded(mm, 3));
}

// Widest steps first: a whole inch stands for the halves and quarters it is too.
void add_grids(std::span<const Grid> grids, double measured_mm, std::string (*name)(double),
               const char* source, std::vector<Nearest>& all) {
  std::vector<double> there;
  for (const Grid& grid : grids) {
    const double size = std::round(measured_mm / grid.step_mm) * grid.step_mm;
    const bool again =
        std::any_of(there.begin(), there.end(), [&](double one) { return std::abs(one - size) < kSame_mm; });
    if (size <= 0.0 || again) continue;
    there.push_back(size);
    all.push_back({name(size), std::string(grid.series), size, grid.step_mm, source});
  }
}

void add_preferred(double measured_mm, std::vector<Nearest>& all) {
  using handbook::RenardSeries;
  for (const RenardSeries series : {RenardSeries::kR10, RenardSeries::kR20}) {
    const auto around = handbook::preferred_around(measured_mm, series);
    if (!around) continue;
    const bool below = measured_mm - around->at_or_below <= around->at_or_above - measured_mm;
    const double size = below ? around->at_or_below : around->at_or_above;
    const double step = std::pow(10.0, 1.0 / static_cast<int>(series)) - 1.0;
    all.push_back({metric_name(size), fmt::format("preferred numbers R{}", static_cast<int>(series)), size,
                   step * size, handbook::cite(handbook::kPreferredNumbers)});
  }
}

// One size of a table.
struct Row {
  std::string name;
  std::string series;
  double size_mm;
  std::string source;
};

// The nearest row, and how far apart the sizes of the table lie there. A size past the ends of the table by more than the
// last step is none of it.
void add_nearest(std::vector<Row> rows, double measured_mm, std::vector<Nearest>& all) {
  std::stable_sort(rows.begin(), rows.end(),
                   [](const Row& a, const Row& b) { return a.size_mm < b.size_mm; });
  rows.erase(
      std::unique(rows.begin(), rows.end(),
                  [](const Row& a, const Row& b) { return std::abs(a.size_mm - b.size_mm) < kSame_mm; }),
      rows.end());
  if (rows.size() < 2) return;
  const auto above = static_cast<std::size_t>(
      std::find_if(rows.begin(), rows.end(), [&](const Row& r) { return r.size_mm > measured_mm; }) -
      rows.begin());
  std::size_t best = std::min(above, rows.size() - 1);
  if (above > 0 &&
      (above == rows.size() || measured_mm - rows[above - 1].size_mm <= rows[above].size_mm - measured_mm))
    best = above - 1;
  const std::size_t low = best == 0 ? 0 : best - 1;
  const std::size_t high = std::min(best + 1, rows.size() - 1);
  const double spacing = (rows[high].size_mm - rows[low].size_mm) / static_cast<double>(high - low);
  if (std::abs(measured_mm - rows[best].size_mm) > spacing) return;
  all.push_back({rows[best].name, rows[best].series, rows[best].size_mm, spacing, rows[best].source});
}

void add_drills(double measured_mm, std::vector<Nearest>& all) {
  using handbook::DrillSeries;
  constexpr std::array kSeries{std::pair{DrillSeries::kNumber, "number drill"},
                               std::pair{DrillSeries::kLetter, "letter drill"},
                               std::pair{DrillSeries::kMetric, "metric drill"}};
  for (const auto& [series, name] : kSeries) {
    std::vector<Row> rows;
    for (const handbook::Drill& drill : handbook::drills(series))
      rows.push_back({std::string(drill.name), name, drill.diameter.base(), handbook::cite(drill.source)});
    add_nearest(std::move(rows), measured_mm, all);
  }
}

void add_bearings(double measured_mm, bool is_bore, std::vector<Nearest>& all) {
  std::vector<Row> rows;
  for (const handbook::Bearing& bearing : handbook::bearings()) {
    const double size = (is_bore ? bearing.bore : bearing.outside).base();
    rows.push_back({metric_name(size),
                    fmt::format("{} of bearing {}", is_bore ? "bore" : "outside", bearing.number), size,
                    handbook::cite(bearing.source)});
  }
  add_nearest(std::move(rows), measured_mm, all);
}

void add_keys(double measured_mm, std::vector<Nearest>& all) {
  for (const handbook::KeySystem system : {handbook::KeySystem::kInch, handbook::KeySystem::kMetric}) {
    const bool is_inch = system == handbook::KeySystem::kInch;
    std::vector<Row> rows;
    for (const handbook::ParallelKey& key : handbook::parallel_keys()) {
      if (key.system != system) continue;
      const double size = key.width.base();
      rows.push_back({is_inch ? fraction_name(size) : metric_name(size),
                      is_inch ? "width of an inch key" : "width of a metric key", size,
                      handbook::cite(key.source)});
    }
    add_nearest(std::move(rows), measured_mm, all);
  }
}

}  // namespace

std::vector<Nearest> nearest_of_each_series(double measured_mm, quantity::Kind kind, Role role) {
  constexpr const char* kHalved = "inches halved to 64ths (common practice)";
  constexpr const char* kDecimal = "decimal inches in round steps (common practice)";
  constexpr const char* kMetric = "millimetres in round steps (common practice)";
  std::vector<Nearest> all;
  add_grids(kFractions, measured_mm, fraction_name, kHalved, all);
  add_grids(kDecimals, measured_mm, decimal_name, kDecimal, all);
  add_grids(kMillimetres, measured_mm, metric_name, kMetric, all);
  add_preferred(measured_mm, all);
  if (role == Role::kHole) add_drills(measured_mm, all);
  if (role != Role::kOther) add_bearings(measured_mm, role == Role::kShaft, all);
  if (kind == quantity::Kind::kLength) add_keys(measured_mm, all);
  return all;
}

}  // namespace sparewright::intent
