#include "core/handbook/parallel_keys.hpp"

#include <array>

#include <fmt/format.h>

#include "core/handbook/keyseat_formulas.hpp"
#include "core/handbook/lookup.hpp"
#include "core/handbook/shaft_size.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr ParallelKey kParallelKeys[] = {
#include "generated/core/handbook/parallel_keys.inc"
};

enum class InchKeyFit { kClearance, kTight };
struct InchKeyWidth {
  InchKeyFit fit = InchKeyFit::kClearance;
  KeyShape shape = KeyShape::kSquare;
  Length over;
  Length up_to;
  Length key_lower;
  Length key_upper;
  Length keyseat_upper;
  Source source;
};
constexpr InchKeyWidth kInchKeyWidths[] = {
#include "generated/core/handbook/inch_key_fits.inc"
};

// DIN 6885-1; the key itself is h9 (from memory).
struct MetricKeyFit {
  std::string_view name;
  std::string_view shaft;
  std::string_view hub;
};
constexpr std::array kMetricKeyFits{MetricKeyFit{"easy", "N9", "JS9"}, MetricKeyFit{"tight", "P9", "P9"},
                                    MetricKeyFit{"sliding", "H9", "D10"}};
constexpr std::string_view kKeyBar = "h9";

// Clearance over the key in an inch hub, and the tolerances of S and T (ASME B17.1).
constexpr Length kHubClearance = Length::of(5, unit::thou);
constexpr Length kShaftTooDeep = Length::of(15, unit::thou);
constexpr Length kHubTooDeep = Length::of(10, unit::thou);
constexpr Source kInchDepthTolerance{
    "tolerances of S (+0.000 -0.015 in) and T (+0.010 -0.000 in), ASME B17.1", "", Basis::kFromMemory};

std::string shown(Diameter diameter, KeySystem system) {
  const bool inch = system == KeySystem::kInch;
  return "a shaft of " +
         to_string(ShaftSize{diameter, inch ? quantity::UnitSystem::kInch : quantity::UnitSystem::kMetric});
}

KeyWidthFit inch_fit_of(const InchKeyWidth& row) {
  const bool tight = row.fit == InchKeyFit::kTight;
  const FitDeviations seat{Length{}, row.keyseat_upper, row.source, row.source};
  return {tight ? "class 2, tight" : "class 1, clearance",
          {},
          {},
          {row.key_lower, row.key_upper, row.source, row.source},
          seat,
          seat,
          row.source};
}

base::Result<std::vector<KeyWidthFit>> inch_width_fits(const ParallelKey& key) {
  std::vector<KeyWidthFit> fits;
  for (const InchKeyWidth& row : kInchKeyWidths) {
    if (row.shape == key.shape && in_range(key.width, {row.over}, {row.up_to}))
      fits.push_back(inch_fit_of(row));
  }
  if (!fits.empty()) return fits;
  return not_tabled("the fit of an inch key", fmt::format("{:.4f} in", key.width.in(unit::inch)),
                    "widths up to 1.5 in");
}

base::Result<std::vector<KeyWidthFit>> metric_width_fits(const ParallelKey& key) {
  const Diameter width = as_diameter(key.width);
  const auto bar = iso286_deviations(kKeyBar, width);
  if (!bar) return tl::unexpected(bar.error());
  std::vector<KeyWidthFit> fits;
  for (const MetricKeyFit& fit : kMetricKeyFits) {
    const auto shaft = iso286_deviations(fit.shaft, width);
    if (!shaft) return tl::unexpected(shaft.error());
    const auto hub = iso286_deviations(fit.hub, width);
    if (!hub) return tl::unexpected(hub.error());
    fits.push_back({fit.name, fit.shaft, fit.hub, *bar, *shaft, *hub, key.source});
  }
  return fits;
}

// Depths and measures, widths left out.
ParallelKeyseat inch_keyseat(const ParallelKey& key, Diameter shaft) {
  const double diameter_mm = shaft.in(unit::millimetre);
  const double width_mm = key.width.in(unit::millimetre);
  ParallelKeyseat seat{key, shaft, {}, {}, {}, {}, {}, {}, {}, {}, kKeyseatGeometry};
  seat.side_depth = key.height / 2.0;
  const Length hub_side = seat.side_depth + kHubClearance;
  seat.arc_height = Length::of(keyseat_arc_height_mm(diameter_mm, width_mm), unit::millimetre);
  seat.crest_depth = seat.arc_height + seat.side_depth;
  seat.over_back = {
      Length::of(keyseat_over_back_mm(diameter_mm, width_mm, seat.side_depth.in(unit::millimetre)),
                 unit::millimetre),
      -kShaftTooDeep, Length{}, kInchDepthTolerance};
  seat.hub_over_back = {
      Length::of(hub_keyseat_over_back_mm(diameter_mm, width_mm, hub_side.in(unit::millimetre)),
                 unit::millimetre),
      Length{}, kHubTooDeep, kInchDepthTolerance};
  seat.hub_depth = seat.hub_over_back.nominal - across(shaft);
  seat.top_clearance = kHubClearance;
  return seat;
}

ParallelKeyseat metric_keyseat(const ParallelKey& key, Diameter shaft) {
  // Printed up to 5 x 5 mm; the head of parallel_keys.csv.
  const bool printed = key.width <= Length::of(5, unit::millimetre);
  const Source tolerance{key.source.text, key.source.address,
                         printed ? Basis::kPublished : Basis::kFromMemory};
  ParallelKeyseat seat{key, shaft, {}, {}, {}, {}, {}, {}, {}, {}, key.source};
  seat.arc_height = Length::of(
      keyseat_arc_height_mm(shaft.in(unit::millimetre), key.width.in(unit::millimetre)), unit::millimetre);
  seat.crest_depth = *key.shaft_depth;
  seat.side_depth = seat.crest_depth - seat.arc_height;
  seat.over_back = {across(shaft) - seat.crest_depth, -*key.depth_tolerance, Length{}, tolerance};
  seat.hub_depth = *key.hub_depth;
  seat.hub_over_back = {across(shaft) + seat.hub_depth, Length{}, *key.depth_tolerance, tolerance};
  seat.top_clearance = seat.crest_depth + seat.hub_depth - key.height;
  return seat;
}

}  // namespace

std::span<const ParallelKey> parallel_keys() {
  return kParallelKeys;
}

base::Result<ParallelKey> parallel_key(Diameter shaft, KeySystem system, KeyShape shape) {
  const ParallelKey* first = nullptr;
  const ParallelKey* last = nullptr;
  for (const ParallelKey& key : kParallelKeys) {
    if (key.system != system || (system == KeySystem::kInch && key.shape != shape)) continue;
    if (first == nullptr) first = &key;
    last = &key;
    if (in_range(shaft, {key.over}, {key.up_to})) return key;
  }
  const bool inch = system == KeySystem::kInch;
  const std::string shafts =
      inch ? fmt::format("shafts over {:.4f} up to {:.4f} in", first->over.in(unit::inch),
                         last->up_to.in(unit::inch))
           : fmt::format("shafts over {:g} up to {:g} mm", first->over.in(unit::millimetre),
                         last->up_to.in(unit::millimetre));
  return not_tabled(inch ? "the key of ASME B17.1" : "the key of DIN 6885-1", shown(shaft, system), shafts);
}

base::Result<ParallelKeyseat> parallel_keyseat(const ParallelKey& key, Diameter shaft) {
  const bool inch = key.system == KeySystem::kInch;
  const std::string subject = fmt::format("the keyseat of a {} key", key.name);
  if (key.width.base() >= shaft.base())
    return base::fail(base::Code::kOutsideDomain, shown(shaft, key.system), "a shaft wider than the key",
                      subject);
  ParallelKeyseat seat = inch ? inch_keyseat(key, shaft) : metric_keyseat(key, shaft);
  if (seat.side_depth <= Length{} || seat.over_back.nominal.base() <= shaft.base() / 2.0)
    return base::fail(base::Code::kOutsideDomain, shown(shaft, key.system),
                      "a shaft whose middle lies below the bottom of the keyseat, and its edges above",
                      subject);
  auto fits = inch ? inch_width_fits(key) : metric_width_fits(key);
  if (!fits) return tl::unexpected(fits.error());
  seat.width_fits = *std::move(fits);
  return seat;
}

base::Result<std::vector<ParallelKeyseat>> keyseats_for_shaft(std::string_view shaft) {
  const auto typed = read_shaft_size(shaft);
  if (!typed) return tl::unexpected(typed.error());
  const bool metric = typed->system == quantity::UnitSystem::kMetric;
  std::vector<ParallelKeyseat> seats;
  const auto add = [&](KeySystem system, KeyShape shape) -> base::Result<void> {
    const auto key = parallel_key(typed->diameter, system, shape);
    if (!key) return tl::unexpected(key.error());
    const auto seat = parallel_keyseat(*key, typed->diameter);
    if (!seat) return tl::unexpected(seat.error());
    seats.push_back(*seat);
    return {};
  };
  const auto usual = add(metric ? KeySystem::kMetric : KeySystem::kInch, KeyShape::kSquare);
  if (!usual) return tl::unexpected(usual.error());
  // A shaft up to 7/16 in has the square key alone.
  if (!metric && parallel_key(typed->diameter, KeySystem::kInch, KeyShape::kRectangular)) {
    const auto flat = add(KeySystem::kInch, KeyShape::kRectangular);
    if (!flat) return tl::unexpected(flat.error());
  }
  return seats;
}

}  // namespace sparewright::handbook
