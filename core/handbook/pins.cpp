#include "core/handbook/pins.hpp"

#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include "core/handbook/iso286.hpp"
#include "core/handbook/lookup.hpp"
#include "core/handbook/shaft_size.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

struct DowelSize {
  std::string_view name;
  Diameter nominal;
  Source source;
};
constexpr DowelSize kDowelSizes[] = {
#include "generated/core/handbook/dowel_pins.inc"
};

struct SpringSize {
  std::string_view name;
  Diameter nominal;
  std::optional<Diameter> hole_least;
  std::optional<Diameter> hole_most;
  Source source;
};
constexpr SpringSize kSpringSizes[] = {
#include "generated/core/handbook/spring_pins.inc"
};

// Inch dowels, ASME B18.8.2 (from memory).
constexpr Length kPinOver = Length::of(0.2, unit::thou);
constexpr Length kPinPlusMinus = Length::of(0.1, unit::thou);
constexpr Length kHoleUnder = Length::of(0.5, unit::thou);
constexpr Length kOversize = Length::of(1.0, unit::thou);

constexpr std::string_view kMetricPin = "m6";
constexpr std::string_view kMetricDowelHole = "H7";
constexpr std::string_view kMetricSpringHole = "H12";

DiameterRange range(Diameter nominal, Length lower, Length upper) {
  return {as_diameter(across(nominal) + lower), as_diameter(across(nominal) + upper)};
}

base::Result<DiameterRange> zone_range(std::string_view zone, Diameter nominal) {
  return iso286_deviations(zone, nominal).map([nominal](const FitDeviations& deviations) {
    return range(nominal, deviations.lower, deviations.upper);
  });
}

bool is_metric(std::string_view name) {
  return name.ends_with("mm");
}

// The row whose name is of the system written and whose size is that size.
template <class Row, std::size_t kRows>
base::Result<Row> pin_of(const Row (&rows)[kRows], std::string_view size, std::string_view subject) {
  const auto wanted = read_shaft_size(size);
  if (!wanted) return tl::unexpected(wanted.error());
  std::vector<std::string> known;
  for (const Row& row : rows) {
    if (is_metric(row.name) != (wanted->system == quantity::UnitSystem::kMetric)) continue;
    if (std::abs(row.nominal.base() - wanted->diameter.base()) <= kSizeSlackMm) return row;
    known.emplace_back(row.name);
  }
  return not_tabled_among(subject, to_string(*wanted), known);
}

}  // namespace

base::Result<DowelPin> dowel_pin(std::string_view size) {
  const auto row = pin_of(kDowelSizes, size, "the dowel pin");
  if (!row) return tl::unexpected(row.error());
  if (!is_metric(row->name)) {
    return DowelPin{row->name,
                    row->nominal,
                    range(row->nominal, kPinOver - kPinPlusMinus, kPinOver + kPinPlusMinus),
                    range(row->nominal, -kHoleUnder, Length{}),
                    kOversize,
                    row->source,
                    row->source};
  }
  const auto pin = zone_range(kMetricPin, row->nominal);
  if (!pin) return tl::unexpected(pin.error());
  const auto hole = iso286_deviations(kMetricDowelHole, row->nominal);
  if (!hole) return tl::unexpected(hole.error());
  return DowelPin{row->name, row->nominal, *pin,        range(row->nominal, hole->lower, hole->upper),
                  Length{},  row->source,  hole->source};
}

base::Result<SpringPin> spring_pin(std::string_view size) {
  const auto row = pin_of(kSpringSizes, size, "the spring pin");
  if (!row) return tl::unexpected(row.error());
  if (row->hole_least && row->hole_most)
    return SpringPin{row->name, row->nominal, {*row->hole_least, *row->hole_most}, row->source};
  const auto hole = zone_range(kMetricSpringHole, row->nominal);
  if (!hole) return tl::unexpected(hole.error());
  return SpringPin{row->name, row->nominal, *hole, row->source};
}

}  // namespace sparewright::handbook
