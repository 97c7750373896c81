// Standard pitches of gears, forms of teeth, and the cutters that come in sets of eight.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

enum class GearPitchSystem { kDiametralPitch, kModule };

// A standard pitch: "8 DP" or "module 2.5".
struct GearPitch {
  GearPitchSystem system = GearPitchSystem::kModule;
  double number = 0.0;  // teeth per inch of pitch diameter, or mm of pitch diameter per tooth
  int preference = 1;   // 1: first choice of the standard, 2: second or only cutters of it are made
  Source source;

  [[nodiscard]] quantity::Length module() const;  // 25.4 mm / diametral pitch, or the module
};
[[nodiscard]] std::string to_string(const GearPitch& pitch);

// All standard pitches, coarse ones first in each system.
[[nodiscard]] std::span<const GearPitch> gear_pitches();

// A system of teeth. Addendum and dedendum in modules, extra_dedendum to be added.
struct ToothForm {
  std::string_view name;  // "14-1/2 deg full depth"
  GearPitchSystem system = GearPitchSystem::kModule;
  quantity::Angle pressure_angle;
  double addendum = 1.0;
  double dedendum = 1.25;
  quantity::Length extra_dedendum;
  double finest = 0.0;    // the form is for pitches (DP) or modules from here
  double coarsest = 0.0;  // up to here
  Source source;
};
[[nodiscard]] std::span<const ToothForm> tooth_forms();
// Fails with kNameUnknown.
[[nodiscard]] base::Result<ToothForm> find_tooth_form(std::string_view name);

// A cutter of the set of eight: what it cuts correctly is its smallest number of teeth, the larger ones
// nearly.
struct GearCutter {
  int number = 0;  // as inch sets count: 1 for 135 teeth to a rack, 8 for 12 and 13
  int from_teeth = 0;
  int up_to_teeth = 0;  // 0: a rack
  Source source;

  // Sets of module cutters made on the European continent count the other way: 1 for 12 and 13 teeth. The
  // range stamped on the cutter decides.
  [[nodiscard]] int continental_number() const { return 9 - number; }
};
// Fails with kNotTabled under 12 teeth: such pinions are generated, or cut with a cutter made for them.
[[nodiscard]] base::Result<GearCutter> gear_cutter(int teeth);

}  // namespace sparewright::handbook
