#include "core/handbook/drills.hpp"

#include <algorithm>
#include <string>

#include "core/handbook/lookup.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Designation;
using quantity::Diameter;
namespace unit = quantity::unit;

constexpr Drill kDrills[] = {
#include "generated/core/handbook/drills.inc"
};

base::Result<Drill> no_such_drill(std::string_view typed) {
  return unknown(typed, "drill", names_of(kDrills, [](const Drill& drill) { return drill.name; }),
                 "a drill such as #7, letter F, 27/64 or 6.8 mm");
}

base::Result<Drill> drill_named(std::string_view name, std::string_view typed) {
  for (const Drill& drill : kDrills) {
    if (drill.name == name) return drill;
  }
  return no_such_drill(typed);
}

}  // namespace

std::span<const Drill> drills(DrillSeries series) {
  const auto* first = std::find_if(std::begin(kDrills), std::end(kDrills),
                                   [&](const Drill& drill) { return drill.series == series; });
  const auto* last =
      std::find_if(first, std::end(kDrills), [&](const Drill& drill) { return drill.series != series; });
  return {first, last};
}

base::Result<Drill> find_drill(const Designation& designation) {
  const bool numbered = designation.series == Designation::Series::kNumberDrill;
  return drill_named((numbered ? "#" : "letter ") + designation.name, designation.typed);
}

base::Result<Drill> find_drill(std::string_view text) {
  const std::string word = folded(text);
  std::string_view name = word;
  if (name.starts_with("letter ")) name.remove_prefix(7);
  if (name.size() == 1 && quantity::is_lower(name.front())) {
    return drill_named(std::string("letter ") + static_cast<char>(name.front() - 'a' + 'A'), text);
  }
  if (name.starts_with('#')) return drill_named("#" + std::string(quantity::trimmed(name.substr(1))), text);
  const auto size = quantity::read_number(text, quantity::Kind::kDiameter, std::nullopt);
  if (!size) return no_such_drill(text);
  const bool metric = size->unit == unit::millimetre;
  const bool named_in_inches = size->unit == unit::inch && size->places <= 0;  // a fraction or a whole number
  const DrillsAround around =
      drills_around(size->diameter(), metric ? DrillSeries::kMetric : DrillSeries::kFraction);
  if (!(metric || named_in_inches) || !around.at_or_above || around.at_or_below != around.at_or_above) {
    return no_such_drill(text);
  }
  return *around.at_or_above;
}

DrillsAround drills_around(Diameter size, DrillSeries series) {
  DrillsAround around;
  for (const Drill& drill : drills(series)) {
    const double over_mm = drill.diameter.base() - size.base();
    if (over_mm <= kSizeSlackMm) around.at_or_below = drill;
    if (over_mm >= -kSizeSlackMm && !around.at_or_above) around.at_or_above = drill;
  }
  return around;
}

std::vector<Drill> drills_between(Diameter low, Diameter high, std::span<const DrillSeries> series) {
  std::vector<Drill> out;
  for (const DrillSeries one : series) {
    for (const Drill& drill : drills(one)) {
      const double mm = drill.diameter.base();
      if (mm >= low.base() - kSizeSlackMm && mm <= high.base() + kSizeSlackMm) out.push_back(drill);
    }
  }
  std::stable_sort(out.begin(), out.end(),
                   [](const Drill& a, const Drill& b) { return a.diameter < b.diameter; });
  return out;
}

}  // namespace sparewright::handbook
