// Lame's thick cylinders beside a slow twin: the ring solved by finite differences, which knows nothing of
// Lame's answer.
#include <array>
#include <cstddef>
#include <vector>

#include <gtest/gtest.h>

#include "core/handbook/lame_formulas.hpp"

namespace sparewright::handbook {
namespace {

// Radial displacement u of a ring of modulus 1 under a pressure of 1 on its inside (or outside): u'' + u'/r -
// u/r^2 = 0, plane stress, sigma_r = (u' + nu u/r)/(1 - nu^2), by central differences on n points and
// Thomas's algorithm.
double boundary_displacement(double inner, double outer, double nu, bool pressed_inside) {
  constexpr int kPoints = 4001;
  const double h = (outer - inner) / (kPoints - 1);
  std::vector<double> low(kPoints);
  std::vector<double> mid(kPoints);
  std::vector<double> up(kPoints);
  std::vector<double> right(kPoints, 0.0);
  for (int i = 0; i < kPoints; ++i) {
    const auto at = static_cast<std::size_t>(i);
    const double r = inner + i * h;
    low[at] = 1.0 / (h * h) - 1.0 / (2.0 * r * h);
    mid[at] = -2.0 / (h * h) - 1.0 / (r * r);
    up[at] = 1.0 / (h * h) + 1.0 / (2.0 * r * h);
  }
  // A point outside either end is eliminated by the stress there: u' = (1 - nu^2) sigma_r - nu u / r.
  const auto end = [&](std::size_t at, double r, double stress, double& outside_point, double& inside_point,
                       double side) {
    mid[at] += -side * outside_point * 2.0 * h * nu / r;
    right[at] -= side * outside_point * 2.0 * h * (1.0 - nu * nu) * stress;
    inside_point += outside_point;
  };
  end(0, inner, pressed_inside ? -1.0 : 0.0, low[0], up[0], -1.0);
  end(kPoints - 1, outer, pressed_inside ? 0.0 : -1.0, up[kPoints - 1], low[kPoints - 1], 1.0);
  for (std::size_t i = 1; i < kPoints; ++i) {
    const double factor = low[i] / mid[i - 1];
    mid[i] -= factor * up[i - 1];
    right[i] -= factor * right[i - 1];
  }
  std::vector<double> u(kPoints);
  u[kPoints - 1] = right[kPoints - 1] / mid[kPoints - 1];
  for (std::size_t i = kPoints - 1; i-- > 0;)
    u[i] = (right[i] - up[i] * u[i + 1]) / mid[i];
  return pressed_inside ? u.front() : u.back();
}

struct Cylinders {
  double bore;
  double joint;
  double outside;
};

TEST(LameProperty, FiniteDifferencesOpenAndShrinkAsMuch) {
  constexpr std::array kCylinders{Cylinders{0, 60, 100}, Cylinders{20, 50, 100}, Cylinders{10, 25, 30},
                                  Cylinders{50, 75, 150}, Cylinders{20, 24, 200}};
  constexpr double kNu = 0.29;
  constexpr double kDiscretised = 1e-4;
  for (const auto& [bore, joint, outside] : kCylinders) {
    const double opens = boundary_displacement(joint / 2, outside / 2, kNu, true);
    EXPECT_NEAR(opens / (joint / 2) / hub_opening(joint, outside, kNu), 1.0, kDiscretised);
    if (bore <= 0.0) continue;  // r = 0 is singular
    const double shrinks = -boundary_displacement(bore / 2, joint / 2, kNu, false);
    EXPECT_NEAR(shrinks / (joint / 2) / shaft_shrinking(joint, bore, kNu), 1.0, kDiscretised);
  }
}

}  // namespace
}  // namespace sparewright::handbook
