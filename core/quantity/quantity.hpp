// Quantities that cannot be mixed up: built by naming the unit, read by naming the unit.
//
//   Length gap = Length::of(1.375, unit::inch);
//   double mm = gap.in(unit::millimetre);           // 34.925
//   Radius r = half(Diameter::of(0.5, unit::inch)); // a diameter halved is a radius
//
// Lengths come in roles. What compiles:
//   length +- length, length +- radius, length +- diameter -> length
//   diameter - diameter, radius - radius (and sums)        -> length
//   coordinate - coordinate                                -> length;   coordinate +- length or radius ->
//   coordinate half(diameter) -> radius;  twice(radius) -> diameter
// What does not: radius + diameter, coordinate + coordinate, length + angle, a length from a plain number, a
// temperature difference in degrees that count from a shifted zero
// (tests/unit/core/quantity/static_test.cpp holds these as static_asserts).
#pragma once

#include <compare>

#include "core/quantity/dimension.hpp"
#include "core/quantity/unit.hpp"

namespace sparewright::quantity {

enum class Role { kPlain, kDiameter, kRadius, kPoint };

template <Dimension D, Role R = Role::kPlain>
class Quantity {
  // A temperature is not counted in a unit of differences, nor a difference from a shifted zero.
  static constexpr bool takes(Zero zero) {
    return zero == Zero::kTrue || (zero == Zero::kShifted) == (R == Role::kPoint);
  }

 public:
  constexpr Quantity() = default;  // zero

  template <Zero Z>
  requires(takes(Z)) [[nodiscard]] static constexpr Quantity of(double count, const UnitOf<D, Z>& named) {
    return Quantity(named.to_base(count));
  }
  // In the coherent base unit: mm, kg, s, K, rad and their products.
  [[nodiscard]] static constexpr Quantity from_base(double base) { return Quantity(base); }

  template <Zero Z>
  requires(takes(Z)) [[nodiscard]] constexpr double in(const UnitOf<D, Z>& named) const {
    return named.from_base(base_);
  }
  [[nodiscard]] constexpr double base() const { return base_; }

  // NOLINTNEXTLINE(modernize-use-nullptr): a false alarm of clang-tidy 14 on <=>
  friend constexpr auto operator<=>(const Quantity&, const Quantity&) = default;

 private:
  constexpr explicit Quantity(double base) : base_(base) {}
  double base_ = 0.0;
};

using Length = Quantity<kLengthDimension>;
using Diameter = Quantity<kLengthDimension, Role::kDiameter>;
using Radius = Quantity<kLengthDimension, Role::kRadius>;
using Coordinate = Quantity<kLengthDimension, Role::kPoint>;
using Angle = Quantity<kAngleDimension>;
using Area = Quantity<kAreaDimension>;
using Volume = Quantity<kVolumeDimension>;
using Mass = Quantity<kMassDimension>;
using Density = Quantity<kDensityDimension>;
using Time = Quantity<kTimeDimension>;
using Temperature = Quantity<kTemperatureDimension, Role::kPoint>;
using TemperatureDifference = Quantity<kTemperatureDimension>;
using Force = Quantity<kForceDimension>;
using Pressure = Quantity<kPressureDimension>;
using Torque = Quantity<kTorqueDimension>;
using Power = Quantity<kPowerDimension>;
using Speed = Quantity<kSpeedDimension>;
using RotationalSpeed = Quantity<kRotationalSpeedDimension>;
using FeedPerTurn = Quantity<kFeedPerTurnDimension>;
using FeedRate = Quantity<kSpeedDimension>;

// --- plain quantities
// ---------------------------------------------------------------------------------------------
template <Dimension D>
constexpr Quantity<D> operator+(Quantity<D> a, Quantity<D> b) {
  return Quantity<D>::from_base(a.base() + b.base());
}
template <Dimension D>
constexpr Quantity<D> operator-(Quantity<D> a, Quantity<D> b) {
  return Quantity<D>::from_base(a.base() - b.base());
}
template <Dimension D>
constexpr Quantity<D> operator-(Quantity<D> a) {
  return Quantity<D>::from_base(-a.base());
}
template <Dimension D>
constexpr Quantity<D> operator*(Quantity<D> a, double k) {
  return Quantity<D>::from_base(a.base() * k);
}
template <Dimension D>
constexpr Quantity<D> operator*(double k, Quantity<D> a) {
  return a * k;
}
template <Dimension D>
constexpr Quantity<D> operator/(Quantity<D> a, double k) {
  return Quantity<D>::from_base(a.base() / k);
}
template <Dimension A, Dimension B>
constexpr auto operator*(Quantity<A> a, Quantity<B> b) {
  return Quantity<A * B>::from_base(a.base() * b.base());
}
template <Dimension A, Dimension B>
constexpr auto operator/(Quantity<A> a, Quantity<B> b) {
  if constexpr (A == B) {
    return a.base() / b.base();
  } else {
    return Quantity<A / B>::from_base(a.base() / b.base());
  }
}

// --- diameters and radii
// ------------------------------------------------------------------------------------------
constexpr Radius half(Diameter d) {
  return Radius::from_base(d.base() / 2);
}
constexpr Diameter twice(Radius r) {
  return Diameter::from_base(r.base() * 2);
}
constexpr Length across(Diameter d) {
  return Length::from_base(d.base());
}
constexpr Length reach(Radius r) {
  return Length::from_base(r.base());
}
constexpr Diameter as_diameter(Length l) {
  return Diameter::from_base(l.base());
}
constexpr Radius as_radius(Length l) {
  return Radius::from_base(l.base());
}

constexpr Length operator+(Length l, Diameter d) {
  return l + across(d);
}
constexpr Length operator-(Length l, Diameter d) {
  return l - across(d);
}
constexpr Length operator+(Length l, Radius r) {
  return l + reach(r);
}
constexpr Length operator-(Length l, Radius r) {
  return l - reach(r);
}
constexpr Length operator+(Diameter a, Diameter b) {
  return across(a) + across(b);
}
constexpr Length operator-(Diameter a, Diameter b) {
  return across(a) - across(b);
}
constexpr Length operator+(Radius a, Radius b) {
  return reach(a) + reach(b);
}
constexpr Length operator-(Radius a, Radius b) {
  return reach(a) - reach(b);
}
Length operator+(Radius, Diameter) = delete;
Length operator-(Radius, Diameter) = delete;
Length operator+(Diameter, Radius) = delete;
Length operator-(Diameter, Radius) = delete;

// --- points: coordinates and temperatures
// -------------------------------------------------------------------------
template <Dimension D>
constexpr Quantity<D> operator-(Quantity<D, Role::kPoint> a, Quantity<D, Role::kPoint> b) {
  return Quantity<D>::from_base(a.base() - b.base());
}
template <Dimension D>
constexpr Quantity<D, Role::kPoint> operator+(Quantity<D, Role::kPoint> a, Quantity<D> b) {
  return Quantity<D, Role::kPoint>::from_base(a.base() + b.base());
}
template <Dimension D>
constexpr Quantity<D, Role::kPoint> operator-(Quantity<D, Role::kPoint> a, Quantity<D> b) {
  return Quantity<D, Role::kPoint>::from_base(a.base() - b.base());
}
constexpr Coordinate operator+(Coordinate c, Radius r) {
  return c + reach(r);
}
constexpr Coordinate operator-(Coordinate c, Radius r) {
  return c - reach(r);
}

// --- where an angle becomes a number, by name
// --------------------------------------------------------------------- Surface speed of a diameter at a
// spindle speed: v = r w.
constexpr Speed surface_speed(Diameter d, RotationalSpeed n) {
  return Speed::from_base(d.base() / 2 * n.base());
}
// The spindle speed that gives a surface speed on a diameter. d must not be zero.
constexpr RotationalSpeed spindle_speed(Speed v, Diameter d) {
  return RotationalSpeed::from_base(v.base() / (d.base() / 2));
}
// Power of a torque at a spindle speed: P = T w.
constexpr Power power(Torque t, RotationalSpeed n) {
  return Power::from_base(t.base() * n.base());
}

}  // namespace sparewright::quantity
