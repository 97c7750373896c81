#include "core/handbook/bar_stock.hpp"

#include <array>
#include <optional>
#include <string>

#include "core/handbook/lookup.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Length;
namespace unit = quantity::unit;

constexpr BarTolerance kBarStock[] = {
#include "generated/core/handbook/bar_stock.inc"
};

// ASTM A29, rounds and squares.
struct HotRolledRow {
  Length over;
  Length up_to;
  std::optional<Length> plus_minus;
  std::optional<double> percent;
  Source source;
};
constexpr HotRolledRow kHotRolled[] = {
#include "generated/core/handbook/hot_rolled_bars.inc"
};

// Ranges are printed either 'over 0.75 up to and including 1.5' or '0.750 to 0.999'; in the second a size at
// the start of a range belongs to it.
bool starts_below(const BarTolerance& row, Length size) {
  if (!row.over) return true;
  const bool start_belongs = row.standard == BarStandard::kExtrudedAluminium ||
                             row.standard == BarStandard::kColdFinishedAluminium ||
                             row.standard == BarStandard::kEn755Group1 ||
                             row.standard == BarStandard::kEn755Group2;
  return start_belongs ? size.base() >= row.over->base() - kSizeSlackMm
                       : size.base() > row.over->base() + kSizeSlackMm;
}

base::Result<BarTolerance> hot_rolled(BarForm form, Length size) {
  const bool tabled = form == BarForm::kRound || form == BarForm::kSquare;
  for (const HotRolledRow& row : kHotRolled) {
    if (!tabled || !in_range(size, {row.over}, {row.up_to})) continue;
    BarTolerance out{
        .standard = BarStandard::kA29HotRolled, .form = form, .over = row.over, .up_to = row.up_to};
    out.plus = out.minus = row.plus_minus.value_or(size * (row.percent.value_or(0.0) / 100.0));
    out.note = row.percent ? "1 % of the size" : "";
    out.source = row.source;
    return out;
  }
  return not_tabled("the mill tolerance of hot-rolled bar", quantity::three_ways(size),
                    "rounds and squares over 0 up to 250 mm");
}

}  // namespace

std::string_view name_of(BarStandard standard) {
  constexpr std::array<std::string_view, 9> kNames{"ASTM A108, carbon 0.28 % at most",
                                                   "ASTM A108, carbon 0.28 to 0.55 %",
                                                   "EN 10278, drawn",
                                                   "EN 10278, turned",
                                                   "extruded aluminium",
                                                   "cold-finished aluminium",
                                                   "EN 755, group 1",
                                                   "EN 755, group 2",
                                                   "ASTM A29, hot rolled"};
  return kNames.at(static_cast<std::size_t>(standard));
}

std::string_view name_of(BarForm form) {
  constexpr std::array<std::string_view, 6> kNames{"round", "hexagon",     "square",
                                                   "flat",  "flat, width", "flat, thickness"};
  return kNames.at(static_cast<std::size_t>(form));
}

base::Result<BarTolerance> bar_tolerance(BarStandard standard, BarForm form, Length size) {
  if (standard == BarStandard::kA29HotRolled) return hot_rolled(form, size);
  const BarTolerance* found = nullptr;
  const BarTolerance* last = nullptr;
  for (const BarTolerance& row : kBarStock) {
    if (row.standard != standard || row.form != form) continue;
    if (starts_below(row, size)) found = &row;
    last = &row;
  }
  const bool fits = found != nullptr && size > Length() && (found != last || in_range(size, {}, last->up_to));
  if (fits) return *found;
  const std::string subject = std::string("the mill tolerance of ") + std::string(name_of(form)) + " bar (" +
                              std::string(name_of(standard)) + ")";
  return not_tabled(subject, quantity::three_ways(size),
                    last == nullptr ? "another form: this standard has no such bar here"
                    : last->up_to   ? "sizes up to " + quantity::three_ways(*last->up_to)
                                    : std::string("a size over 0"));
}

}  // namespace sparewright::handbook
