// The outside of round work as it stands between two cuts: which diameter it has where.
#pragma once

#include <vector>

#include "core/ledger/figure.hpp"

namespace sparewright::route {

class Outside {
 public:
  struct Step {
    double from_mm = 0.0;  // along the axis, coordinates of the part; from < to
    double to_mm = 0.0;
    const ledger::Figure* diameter = nullptr;
  };

  Outside() = default;
  // One diameter from end to end.
  Outside(double from_mm, double to_mm, const ledger::Figure& diameter);

  // Turned down between two places, in either order: where it is larger than that. What is not known leaves it as it is.
  void turn(double from_mm, double to_mm, const ledger::Figure& diameter);
  // What lies beyond a place is cut off: above it, or below it.
  void cut_off(double at_mm, bool above);

  // The largest diameter between two places, in either order; none where there is no metal.
  [[nodiscard]] const ledger::Figure* largest(double from_mm, double to_mm) const;
  [[nodiscard]] const std::vector<Step>& steps() const { return steps_; }  // rising
  [[nodiscard]] double low_mm() const;  // not a number where there is no metal
  [[nodiscard]] double high_mm() const;

 private:
  std::vector<Step> steps_;
};

}  // namespace sparewright::route
