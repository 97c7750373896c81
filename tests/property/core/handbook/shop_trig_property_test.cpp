// Circles from touches, and packing in a three-jaw chuck, against the thing itself tried out.
#include <array>
#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "core/handbook/arcs.hpp"
#include "core/handbook/eccentric_packing.hpp"
#include "property.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Coordinate;
using quantity::Diameter;
using quantity::Length;
using tests::holds;
namespace unit = quantity::unit;

std::array<Touch, 3> touches_of(double x, double y, const std::array<double, 3>& radius,
                                const std::array<double, 3>& angle) {
  std::array<Touch, 3> out;
  for (std::size_t i = 0; i < 3; ++i) {
    out.at(i) = {Coordinate::of(x + radius.at(i) * std::cos(angle.at(i)), unit::millimetre),
                 Coordinate::of(y + radius.at(i) * std::sin(angle.at(i)), unit::millimetre)};
  }
  return out;
}

TEST(ShopTrigProperty, CentreComesBackAndErrorsAreAsLargeAsSaid) {
  int found = 0;
  EXPECT_TRUE(holds("touches made on a circle give it, and small errors of touch no more than is said", [&] {
    const double x = *rc::gen::inRange(-1000, 1000) / 10.0;
    const double y = *rc::gen::inRange(-1000, 1000) / 10.0;
    const double radius = *rc::gen::inRange(20, 2000) / 10.0;
    std::array<double, 3> angle{};
    for (double& one : angle)
      one = *rc::gen::inRange(0, 360) * std::numbers::pi / 180.0;
    const auto zero = Diameter();
    const auto circle =
        circle_from_touches(touches_of(x, y, {radius, radius, radius}, angle), zero, TouchedSide::kHole);
    if (!circle) return;
    ++found;
    RC_ASSERT(std::abs(circle->x.base() - x) < 1e-6 && std::abs(circle->y.base() - y) < 1e-6);
    RC_ASSERT(std::abs(circle->diameter.base() - 2.0 * radius) < 1e-6);
    const double error = radius * 1e-7;
    double worst_centre = 0.0;
    double worst_diameter = 0.0;
    for (unsigned signs = 0; signs < 8; ++signs) {
      std::array<double, 3> moved{};
      for (std::size_t i = 0; i < 3; ++i)
        moved.at(i) = radius + ((signs >> i & 1U) != 0 ? error : -error);
      const auto again = circle_from_touches(touches_of(x, y, moved, angle), zero, TouchedSide::kHole);
      RC_ASSERT(again.has_value());
      worst_centre = std::max(worst_centre, std::hypot(again->x.base() - x, again->y.base() - y));
      worst_diameter = std::max(worst_diameter, std::abs(again->diameter.base() - 2.0 * radius));
    }
    // to first order; what is left grows with the square of the magnification
    const double slack = 1e-3 * circle->centre_per_touch * error + 1e-9;
    RC_ASSERT(std::abs(worst_centre - circle->centre_per_touch * error) < slack);
    RC_ASSERT(std::abs(worst_diameter - circle->diameter_per_touch * error) < 2.0 * slack);
  }));
  EXPECT_GT(found, 200);
}

// Closes two jaws on a round whose centre stands off the axis, in the direction away from the first jaw, until a point of
// their faces touches it: how far they stand out then.
double jaws_at(double radius, double off, double width) {
  double out = 0.0;
  const double direction = 2.0 * std::numbers::pi / 3.0;
  constexpr int kPoints = 2000;
  for (int i = 0; i <= kPoints; ++i) {
    const double along_face = width * (i / static_cast<double>(kPoints) - 0.5);
    // the point of the face at `along_face` stands at out * u + along_face * v; find out with it on the circle
    const double cu = -off * std::cos(direction);
    const double cv = off * std::sin(direction);
    const double rest = radius * radius - (along_face - cv) * (along_face - cv);
    if (rest >= 0.0) out = std::max(out, cu + std::sqrt(rest));
  }
  return out;
}

TEST(ShopTrigProperty, PackingIsWhatTheJawsLeave) {
  int on_the_edge = 0;
  int on_the_face = 0;
  EXPECT_TRUE(holds("the packing fills what two closed jaws leave at the third", [&] {
    const double radius = *rc::gen::inRange(100, 1000) / 10.0;
    const double off = radius * *rc::gen::inRange(1, 50) / 100.0;
    const double width = *rc::gen::inRange(0, 400) / 10.0;
    const double left = jaws_at(radius, off, width) - (radius - off);
    const auto packing =
        eccentric_packing(Length::of(off, unit::millimetre), Diameter::of(2 * radius, unit::millimetre),
                          Length::of(width, unit::millimetre));
    RC_ASSERT(std::abs(packing->packing.base() - left) < 1e-4);
    RC_ASSERT(packing->packing <= packing->by_the_rule && packing->packing >= packing->narrow);
    (packing->packing < packing->by_the_rule ? on_the_edge : on_the_face) += 1;
  }));
  EXPECT_GT(on_the_edge, 50);
  EXPECT_GT(on_the_face, 50);
}

}  // namespace
}  // namespace sparewright::handbook
