#include "core/cutting/spindle.hpp"

namespace sparewright::cutting {

SpindleChoice choose_speed(double wanted_rpm, std::span<const double> speeds_rpm) {
  SpindleChoice choice{speeds_rpm.front(), wanted_rpm, speeds_rpm.front() > wanted_rpm};
  for (const double speed : speeds_rpm) {
    if (speed <= wanted_rpm) choice.rpm = speed;
  }
  return choice;
}

}  // namespace sparewright::cutting
