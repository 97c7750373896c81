#include "core/handbook/bar_stock.hpp"

#include <array>
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

// Ranges are printed either 'over 0.75 up to and including 1.5' or '0.750 to 0.999'; in the second a size at
// the start of a range belongs to it.
bool starts_below(const BarTolerance& row, Length size) {
  if (!row.over) return true;
  const bool start_belongs =
      row.standard == BarStandard::kExtrudedAluminium || row.standard == BarStandard::kColdFinishedAluminium;
  return start_belongs ? size.base() >= row.over->base() - kSizeSlackMm
                       : size.base() > row.over->base() + kSizeSlackMm;
}

}  // namespace

std::string_view name_of(BarStandard standard) {
  constexpr std::array<std::string_view, 6> kNames{"ASTM A108, carbon 0.28 % at most",
                                                   "ASTM A108, carbon 0.28 to 0.55 %",
                                                   "EN 10278, drawn",
                                                   "EN 10278, turned",
                                                   "extruded aluminium",
                                                   "cold-finished aluminium"};
  return kNames.at(static_cast<std::size_t>(standard));
}

std::string_view name_of(BarForm form) {
  constexpr std::array<std::string_view, 6> kNames{"round", "hexagon",     "square",
                                                   "flat",  "flat, width", "flat, thickness"};
  return kNames.at(static_cast<std::size_t>(form));
}

base::Result<BarTolerance> bar_tolerance(BarStandard standard, BarForm form, Length size) {
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
