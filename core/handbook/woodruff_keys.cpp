#include "core/handbook/woodruff_keys.hpp"

#include <fmt/format.h>

#include "core/handbook/keyseat_formulas.hpp"
#include "core/handbook/lookup.hpp"
#include "core/handbook/shaft_size.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr WoodruffKey kWoodruffKeys[] = {
#include "generated/core/handbook/woodruff_keys.inc"
};

struct WoodruffShafts {
  Length width;
  Diameter from;
  Diameter up_to;
  Source source;
};
constexpr WoodruffShafts kWoodruffShafts[] = {
#include "generated/core/handbook/woodruff_shafts.inc"
};

// ASME B17.2: depth of the keyseat in the hub is W/2 and this; every printed row agrees (kWoodruffGeometry).
constexpr Length kHubBeyondHalfWidth = Length::of(6, unit::thou);
constexpr Length kDeeper = Length::of(5, unit::thou);
constexpr Source kDepthTolerance{"depths of Woodruff keyseats +0.005 -0.000 in, ASME B17.2", "",
                                 Basis::kFromMemory};

}  // namespace

std::span<const WoodruffKey> woodruff_keys() {
  return kWoodruffKeys;
}

base::Result<WoodruffKey> woodruff_key(std::string_view number) {
  std::string_view wanted = quantity::trimmed(number);
  if (wanted.starts_with('#')) wanted.remove_prefix(1);
  for (const WoodruffKey& key : kWoodruffKeys) {
    if (key.number == wanted) return key;
  }
  return unknown(number, "Woodruff key",
                 names_of(kWoodruffKeys, [](const WoodruffKey& key) { return key.number; }));
}

std::vector<WoodruffKey> woodruff_keys_for(Diameter shaft) {
  std::vector<WoodruffKey> keys;
  for (const WoodruffKey& key : kWoodruffKeys) {
    for (const WoodruffShafts& row : kWoodruffShafts) {
      const bool suits = shaft.base() >= row.from.base() - kSizeSlackMm && in_range(shaft, {}, {row.up_to});
      if (row.width == key.width && suits) keys.push_back(key);
    }
  }
  return keys;
}

base::Result<WoodruffKeyseat> woodruff_keyseat(const WoodruffKey& key, Diameter shaft) {
  const double shaft_mm = shaft.in(unit::millimetre);
  const double width_mm = key.width.in(unit::millimetre);
  const double side_mm = woodruff_side_depth_mm(key.height_min.in(unit::millimetre), width_mm);
  if (width_mm >= shaft_mm || keyseat_over_back_mm(shaft_mm, width_mm, side_mm) <= shaft_mm / 2.0) {
    return base::fail(base::Code::kOutsideDomain,
                      "a shaft of " + to_string(ShaftSize{shaft, quantity::UnitSystem::kInch}),
                      "a shaft whose middle lies below the bottom of the keyseat",
                      fmt::format("the keyseat of Woodruff key {}", key.number));
  }
  WoodruffKeyseat seat{key, shaft, {}, {}, {}, {}, {}, {}, {}, kDeeper, kWoodruffGeometry, kDepthTolerance};
  seat.arc_height = Length::of(keyseat_arc_height_mm(shaft_mm, width_mm), unit::millimetre);
  seat.side_depth = Length::of(side_mm, unit::millimetre);
  seat.crest_depth = seat.arc_height + seat.side_depth;
  seat.over_back = across(shaft) - seat.crest_depth;
  seat.length = Length::of(plunged_length_mm(key.diameter.in(unit::millimetre), side_mm), unit::millimetre);
  seat.hub_depth = key.width / 2.0 + kHubBeyondHalfWidth;
  seat.hub_over_back = Length::of(
      hub_keyseat_over_back_mm(shaft_mm, width_mm, seat.hub_depth.in(unit::millimetre)), unit::millimetre);
  return seat;
}

}  // namespace sparewright::handbook
