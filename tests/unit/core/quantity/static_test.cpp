// What must compile and what must not. Nothing runs here: a wrong line stops the build.
#include <concepts>
#include <type_traits>

#include "core/quantity/quantity.hpp"

namespace sparewright::quantity {
namespace {

template <typename A, typename B>
concept Adds = requires(A a, B b) {
  a + b;
};
template <typename A, typename B>
concept Subtracts = requires(A a, B b) {
  a - b;
};
template <typename A, typename B>
concept Multiplies = requires(A a, B b) {
  a* b;
};
template <typename A, typename B>
concept Divides = requires(A a, B b) {
  a / b;
};
template <typename A, typename B>
concept Compares = requires(A a, B b) {
  a < b;
};
template <typename A, typename B>
concept Equates = requires(A a, B b) {
  a == b;
};
template <typename Q, typename U>
concept CountsIn = requires(Q q, U u) {
  Q::of(1.0, u);
  q.in(u);
};
template <typename A, typename B>
using Sum = decltype(std::declval<A>() + std::declval<B>());
template <typename A, typename B>
using Difference = decltype(std::declval<A>() - std::declval<B>());
template <typename A, typename B>
using Product = decltype(std::declval<A>() * std::declval<B>());
template <typename A, typename B>
using Quotient = decltype(std::declval<A>() / std::declval<B>());

// A number is no quantity and a quantity is no number: the unit is named both ways.
static_assert(!std::is_constructible_v<Length, double>);
static_assert(!std::is_convertible_v<double, Length>);
static_assert(!std::is_convertible_v<int, Angle>);
static_assert(!std::is_constructible_v<double, Length>);
static_assert(!std::is_assignable_v<Length&, double>);
static_assert(!Adds<Length, double> && !Adds<double, Length> && !Subtracts<Length, double>);
static_assert(!Compares<Length, double> && !Equates<Length, double>);
static_assert(Length{} == Length::from_base(0.0));

// A unit of another kind is refused.
static_assert(CountsIn<Length, decltype(unit::inch)> && CountsIn<Radius, decltype(unit::millimetre)>);
static_assert(!CountsIn<Length, decltype(unit::degree)> && !CountsIn<Length, decltype(unit::square_inch)>);
static_assert(!CountsIn<Angle, decltype(unit::inch)> && !CountsIn<Mass, decltype(unit::pound_force)>);
static_assert(!CountsIn<Pressure, decltype(unit::newton)> && !CountsIn<Torque, decltype(unit::horsepower)>);
static_assert(!CountsIn<FeedRate, decltype(unit::inch_per_turn)>);
static_assert(!CountsIn<FeedPerTurn, decltype(unit::inch_per_minute)>);

// Temperatures and their differences.
static_assert(CountsIn<Temperature, decltype(unit::degree_celsius)> &&
              CountsIn<Temperature, decltype(unit::kelvin)>);
static_assert(CountsIn<TemperatureDifference, decltype(unit::fahrenheit_difference)>);
static_assert(CountsIn<TemperatureDifference, decltype(unit::kelvin)>);
static_assert(!CountsIn<TemperatureDifference, decltype(unit::degree_fahrenheit)>);
static_assert(!CountsIn<Temperature, decltype(unit::celsius_difference)>);
static_assert(!Adds<Temperature, Temperature>);
static_assert(std::same_as<Difference<Temperature, Temperature>, TemperatureDifference>);
static_assert(std::same_as<Sum<Temperature, TemperatureDifference>, Temperature>);
static_assert(!Multiplies<Temperature, double>);

// Lengths in their roles.
static_assert(std::same_as<Sum<Length, Length>, Length>);
static_assert(std::same_as<Sum<Length, Radius>, Length> && std::same_as<Difference<Length, Radius>, Length>);
static_assert(std::same_as<Sum<Length, Diameter>, Length> &&
              std::same_as<Difference<Length, Diameter>, Length>);
static_assert(std::same_as<Sum<Diameter, Diameter>, Length> &&
              std::same_as<Difference<Radius, Radius>, Length>);
static_assert(std::same_as<Difference<Diameter, Diameter>, Length> &&
              std::same_as<Sum<Radius, Radius>, Length>);
static_assert(!Adds<Radius, Diameter> && !Adds<Diameter, Radius>);
static_assert(!Subtracts<Radius, Diameter> && !Subtracts<Diameter, Radius>);
static_assert(!Adds<Length, Angle> && !Adds<Angle, Length> && !Subtracts<Length, Angle>);
static_assert(!Adds<Length, Area> && !Adds<Force, Pressure> && !Subtracts<Time, Angle>);
static_assert(!std::is_convertible_v<Diameter, Radius> && !std::is_convertible_v<Radius, Diameter>);
static_assert(!std::is_constructible_v<Radius, Diameter> && !std::is_constructible_v<Diameter, Radius>);
static_assert(!std::is_convertible_v<Length, Diameter> && !std::is_convertible_v<Diameter, Length>);
static_assert(!std::is_assignable_v<Radius&, Diameter> && !std::is_assignable_v<Diameter&, Radius>);
static_assert(!Compares<Radius, Diameter> && !Equates<Radius, Diameter> && !Compares<Length, Diameter>);
static_assert(Compares<Radius, Radius> && Compares<Length, Length> && Equates<Coordinate, Coordinate>);

// Half and twice are named; a bare 2 changes no kind.
static_assert(std::same_as<decltype(half(Diameter{})), Radius>);
static_assert(std::same_as<decltype(twice(Radius{})), Diameter>);
static_assert(!std::is_invocable_v<decltype(&half), Radius> &&
              !std::is_invocable_v<decltype(&twice), Diameter>);
static_assert(!std::is_invocable_v<decltype(&half), Length>);
static_assert(!Divides<Diameter, double> && !Multiplies<double, Radius>);
static_assert(half(Diameter::of(0.5, unit::inch)) == Radius::of(0.25, unit::inch));
static_assert(twice(half(Diameter::of(0.7498, unit::inch))) == Diameter::of(0.7498, unit::inch));

// Coordinates are points.
static_assert(!Adds<Coordinate, Coordinate>);
static_assert(std::same_as<Difference<Coordinate, Coordinate>, Length>);
static_assert(std::same_as<Sum<Coordinate, Length>, Coordinate>);
static_assert(std::same_as<Difference<Coordinate, Length>, Coordinate>);
static_assert(std::same_as<Sum<Coordinate, Radius>, Coordinate>);
static_assert(!Adds<Coordinate, Diameter> && !Subtracts<Coordinate, Diameter>);
static_assert(!Adds<Length, Coordinate> && !Subtracts<Length, Coordinate>);
static_assert(!Multiplies<Coordinate, double> && !Compares<Coordinate, Length>);

// Products and quotients carry their dimensions.
static_assert(std::same_as<Product<Length, Length>, Area> && std::same_as<Product<Area, Length>, Volume>);
static_assert(std::same_as<Product<Density, Volume>, Mass>);
static_assert(std::same_as<Product<Pressure, Area>, Force> && std::same_as<Quotient<Force, Area>, Pressure>);
static_assert(std::same_as<Product<Force, Length>, Torque>);
static_assert(std::same_as<Product<Force, Speed>, Power>);
static_assert(std::same_as<Quotient<Length, Time>, Speed> && std::same_as<Product<FeedRate, Time>, Length>);
static_assert(std::same_as<Product<FeedPerTurn, RotationalSpeed>, FeedRate>);
static_assert(std::same_as<Quotient<Angle, Time>, RotationalSpeed>);
static_assert(std::same_as<Quotient<Length, Length>, double>);
static_assert(
    !std::same_as<Product<Torque, RotationalSpeed>, Power>);  // an angle is left over: power() says so
static_assert(std::same_as<decltype(power(Torque{}, RotationalSpeed{})), Power>);
static_assert(std::same_as<decltype(surface_speed(Diameter{}, RotationalSpeed{})), Speed>);
static_assert(!std::is_invocable_v<decltype(&surface_speed), Radius, RotationalSpeed>);
static_assert(!std::is_invocable_v<decltype(&spindle_speed), Speed, Radius>);
static_assert((kForceDimension / kAreaDimension) == kPressureDimension);
static_assert(kLengthDimension.power(3) == kVolumeDimension && kLengthDimension.power(0) == kNumberDimension);

// The inch is 25.4 mm exactly, and every 64th of it the nearest double.
static_assert(Length::of(1.0, unit::inch).in(unit::millimetre) == 25.4);
static_assert(Length::of(1.375, unit::inch).in(unit::millimetre) == 34.925);
static_assert(Length::of(1.0, unit::foot) == Length::of(12.0, unit::inch));
static_assert(Length::of(1000.0, unit::thou) == Length::of(1.0, unit::inch));

}  // namespace
}  // namespace sparewright::quantity
