// A spur gear from its teeth and pitch: the blank, the cut, what to measure; and what an old gear was, from
// what can still be measured on it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/gear_pitches.hpp"
#include "core/handbook/spur_gear_formulas.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

inline constexpr int kLeastGearTeeth = 5;
inline constexpr int kMostGearTeeth = 1000;

// Without backlash and profile shift. A gear to run with another is cut a little deeper, by half the backlash
// wanted / (2 tan(pressure angle)) for each of the two.
struct SpurGear {
  int teeth = 0;
  GearPitch pitch;
  ToothForm form;
  quantity::Diameter pitch_diameter;
  quantity::Diameter blank;  // outside diameter
  quantity::Diameter root;
  quantity::Diameter base_circle;
  quantity::Length addendum;
  quantity::Length whole_depth;  // of the cut, from the outside of the blank
  quantity::Length circular_pitch;
  quantity::Length chordal_thickness;
  quantity::Length chordal_addendum;
  int spanned = 0;  // teeth in the span measurement
  quantity::Length span;
  std::optional<GearCutter> cutter;  // of the set of eight; none under 12 teeth
  // A generated gear of fewer teeth is undercut: 2 a / sin(alpha)^2, rounded up.
  int least_teeth_not_undercut = 0;
};

// Fails with kValueNotAccepted: teeth outside 5 to 1000, a form of the other system than the pitch or not for
// it.
[[nodiscard]] base::Result<SpurGear> spur_gear(int teeth, const GearPitch& pitch, const ToothForm& form);

// Teeth in the span measurement: N alpha / 180 deg + 1/2, rounded; at least 2.
[[nodiscard]] int spanned_teeth(int teeth, quantity::Angle pressure_angle);

// What an old gear still shows. At least one of the outside diameter, the centre distance with the mate's
// teeth, and both spans must be there. Tops of teeth wear and were often turned small; a pinion of few teeth
// may have been made with a larger outside on purpose: the centre distance is the better witness.
struct OldGear {
  int teeth = 0;
  std::optional<quantity::Diameter> outside;
  std::optional<int> mate_teeth;
  std::optional<quantity::Length> centres;
  std::optional<quantity::Length> whole_depth;
  std::optional<quantity::Length> span;           // over any number of teeth that the anvils touch on flanks
  std::optional<quantity::Length> span_one_more;  // over one tooth more
};

// One pitch and form the gear may have been, and how far each measurement is from it (measured less nominal).
struct GearCandidate {
  GearPitch pitch;
  ToothForm form;
  double misfit = 0.0;  // root mean square of the relative differences; depth counts a fifth
  std::optional<quantity::Length> outside_off;
  std::optional<quantity::Length> centres_off;
  std::optional<quantity::Length> depth_off;
  std::optional<quantity::Length> base_pitch_off;
};

// Two candidates whose misfits are nearer than this are not told apart by these measurements.
inline constexpr double kTellsApart = 0.003;
inline constexpr double kMostMisfit = 0.02;

// Every standard pitch with every form made for it whose misfit is under 2 %, best first, of equal ones the
// preferred pitch first. Empty where nothing standard is near: then look for a stub form with two pitches
// (6/8), a circular pitch (old cast gears: 1/2 in between teeth), or a shifted profile. Fails with
// kReadingsTooFew, kValueNotAccepted (teeth) or kSizeNotPositive.
[[nodiscard]] base::Result<std::vector<GearCandidate>> identify_spur_gear(const OldGear& gear);

// The pressure angle two spans show, whatever the backlash: their difference is the base pitch, pi m
// cos(alpha).
struct PressureAngleHint {
  quantity::Angle measured;
  quantity::Angle nearest;  // of 14-1/2, 20 and 25 degrees
};
// Fails with kReadingsDisagree where the difference is no base pitch of that module (angle under 0 or over 35
// deg).
[[nodiscard]] base::Result<PressureAngleHint> pressure_angle_hint(quantity::Length module,
                                                                  quantity::Length span,
                                                                  quantity::Length span_one_more);

}  // namespace sparewright::handbook
