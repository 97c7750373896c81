// The dimension of a quantity as powers of length, mass, time, temperature and angle.
#pragma once

namespace sparewright::quantity {

// Angle is a dimension of its own: rpm is angle/time and a feed per turn is length/angle, so a feed per turn
// times rpm is a feed rate. Where an angle becomes a pure number (arc = radius * angle) a named function says
// so.
struct Dimension {
  int length = 0;
  int mass = 0;
  int time = 0;
  int temperature = 0;
  int angle = 0;

  friend constexpr bool operator==(const Dimension&, const Dimension&) = default;

  friend constexpr Dimension operator*(const Dimension& a, const Dimension& b) {
    return {a.length + b.length, a.mass + b.mass, a.time + b.time, a.temperature + b.temperature,
            a.angle + b.angle};
  }
  friend constexpr Dimension operator/(const Dimension& a, const Dimension& b) {
    return {a.length - b.length, a.mass - b.mass, a.time - b.time, a.temperature - b.temperature,
            a.angle - b.angle};
  }
  [[nodiscard]] constexpr Dimension power(int n) const {
    return {length * n, mass * n, time * n, temperature * n, angle * n};
  }
};

inline constexpr Dimension kNumberDimension{};
inline constexpr Dimension kLengthDimension{.length = 1};
inline constexpr Dimension kMassDimension{.mass = 1};
inline constexpr Dimension kTimeDimension{.time = 1};
inline constexpr Dimension kTemperatureDimension{.temperature = 1};
inline constexpr Dimension kAngleDimension{.angle = 1};
inline constexpr Dimension kAreaDimension{.length = 2};
inline constexpr Dimension kVolumeDimension{.length = 3};
inline constexpr Dimension kDensityDimension{.length = -3, .mass = 1};
inline constexpr Dimension kForceDimension{.length = 1, .mass = 1, .time = -2};
inline constexpr Dimension kPressureDimension{.length = -1, .mass = 1, .time = -2};
inline constexpr Dimension kTorqueDimension{.length = 2, .mass = 1, .time = -2};
inline constexpr Dimension kPowerDimension{.length = 2, .mass = 1, .time = -3};
inline constexpr Dimension kSpeedDimension{.length = 1, .time = -1};
inline constexpr Dimension kRotationalSpeedDimension{.time = -1, .angle = 1};
inline constexpr Dimension kFeedPerTurnDimension{.length = 1, .angle = -1};

}  // namespace sparewright::quantity
