// Rotary tables by the dial of the handwheel: turns of the handwheel and degrees, minutes and seconds.
#pragma once

#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/ratio.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// An angle as it is read on a dial: 51 deg 25 min 42.86 sec.
struct DegreesMinutesSeconds {
  bool negative = false;
  int degrees = 0;
  int minutes = 0;
  double seconds = 0.0;  // 0 up to, not including, 60
};
// Of a finite angle under 1000 turns. Rounded to that many places of a second (0 to 6) before it is split, so
// that 59.9999 seconds carry over.
[[nodiscard]] DegreesMinutesSeconds in_degrees_minutes_seconds(quantity::Angle angle, int places = 0);
[[nodiscard]] quantity::Angle angle_of(const DegreesMinutesSeconds& parts);
[[nodiscard]] std::string to_string(const DegreesMinutesSeconds& parts, int places = 0);  // 51 deg 25' 43"

// worm is turns of the handwheel for one of the table (1 to 720); one turn passes 360/worm degrees (90:1: 4).
// mark is what dial and vernier read to, a whole number of arc seconds in practice; from 0.01 arc seconds
// up to one turn of the handwheel.
struct RotaryTable {
  int worm = 90;
  quantity::Angle mark = quantity::Angle::of(1.0, quantity::unit::arc_minute);
};

// One setting of the table, counted from its zero, always turning the same way to keep the backlash out.
struct RotaryReading {
  int number = 1;
  quantity::Angle wanted;
  int turns = 0;          // whole turns of the handwheel from zero
  quantity::Angle dial;   // what its dial shows then: 0 up to 360/worm degrees
  quantity::Angle error;  // of the nearest mark: reading less wanted, at most half a mark

  [[nodiscard]] bool exact() const { return error == quantity::Angle(); }
};

// The setting of an angle from 0 up to and including 360 degrees. Fails with kValueNotAccepted.
[[nodiscard]] base::Result<RotaryReading> rotary_reading(const RotaryTable& table, quantity::Angle angle);

// The settings of equal divisions, the first at `start` (0 up to 360 degrees); beyond 360 degrees they are
// counted from 0 again. Each is rounded for itself, so that errors do not add up. Fails as part_for_divisions
// and rotary_reading.
[[nodiscard]] base::Result<std::vector<RotaryReading>> rotary_divisions(const RotaryTable& table,
                                                                        int divisions,
                                                                        quantity::Angle start = {});

}  // namespace sparewright::handbook
