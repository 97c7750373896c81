// What a number is: the kinds told apart at run time, for texts, formulas and figures.
#pragma once

#include <string_view>

#include "core/quantity/dimension.hpp"

namespace sparewright::quantity {

enum class Kind {
  kNumber,
  kLength,
  kDiameter,
  kRadius,
  kCoordinate,
  kAngle,
  kArea,
  kVolume,
  kMass,
  kDensity,
  kTime,
  kTemperature,
  kTemperatureDifference,
  kForce,
  kPressure,
  kTorque,
  kPower,
  kSpeed,
  kRotationalSpeed,
  kFeedPerTurn,
  kFeedRate,
};
inline constexpr int kKinds = static_cast<int>(Kind::kFeedRate) + 1;

[[nodiscard]] Dimension dimension_of(Kind kind);

// "a diameter": as it reads in a sentence.
[[nodiscard]] std::string_view name_of(Kind kind);

// "diameter": the stable name printed in --json.
[[nodiscard]] std::string_view code_name(Kind kind);

// Length, diameter, radius and coordinate are lengths of different kinds.
[[nodiscard]] constexpr bool is_length_like(Kind kind) {
  return kind == Kind::kLength || kind == Kind::kDiameter || kind == Kind::kRadius ||
         kind == Kind::kCoordinate;
}

}  // namespace sparewright::quantity
