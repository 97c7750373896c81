// Which of the speeds a machine has.
#pragma once

#include <span>

namespace sparewright::cutting {

struct SpindleChoice {
  double rpm = 0.0;  // one of the machine's speeds
  double wanted_rpm = 0.0;
  bool too_fast = false;  // even the slowest speed is above what is wanted
};

// The fastest speed that is not above the one wanted; the slowest where all are. speeds_rpm rises and is not empty.
[[nodiscard]] SpindleChoice choose_speed(double wanted_rpm, std::span<const double> speeds_rpm);

}  // namespace sparewright::cutting
