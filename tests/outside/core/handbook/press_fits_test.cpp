// Press fits against published shrink temperatures, two published formulas against each other, and a thick
// cylinder solved by finite differences, which knows nothing of Lame's answer.
#include "core/handbook/press_fits.hpp"

#include <cmath>
#include <vector>

#include <gtest/gtest.h>

#include "core/handbook/lame_formulas.hpp"

namespace sparewright::handbook {
namespace {

// A steel rod of 2.002 cm cooled to go into a hole of 2.000 cm, 12e-6 per kelvin: -83 C from 0, worked
// problem (justaaa.com).
TEST(OutsideShrink, CooledRod) {
  EXPECT_NEAR(temperature_change_k(2.002 - 2.000, 2.002, 12e-6), 83.0, 0.5);
}

// A hole of 2.0000 heated to take 2.0046, 12e-6 per kelvin: 191.67 C, worked problem (askanewquestion.com).
TEST(OutsideShrink, HeatedHole) {
  EXPECT_NEAR(temperature_change_k(2.0046 - 2.0000, 2.0000, 12e-6), 191.67, 0.005);
}

// Equation 3-57 of Mechanical Engineering Design (one material) is a case of 3-56 (two): printed apart, they
// must agree, whatever the Poisson's ratio.
struct Cylinders {
  double bore;
  double joint;
  double outside;
};
class OutsideLame : public testing::TestWithParam<Cylinders> {};
TEST_P(OutsideLame, TheTwoPrintedFormulasAgree) {
  const auto [bore, joint, outside] = GetParam();
  constexpr double kModulus = 207e3;
  for (const double nu : {0.0, 0.25, 0.29, 0.34}) {
    const double two = press_pressure(0.03, joint, hub_opening(joint, outside, nu) / kModulus,
                                      shaft_shrinking(joint, bore, nu) / kModulus);
    const double one = press_pressure_of_one_material(0.03, joint, bore, outside, kModulus);
    EXPECT_NEAR(two / one, 1.0, 1e-12);
  }
}

// Radial displacement u of a ring of modulus 1 under a pressure of 1 on its inside (or outside): u'' + u'/r -
// u/r^2 = 0, plane stress, sigma_r = (u' + nu u/r)/(1 - nu^2), by central differences on n points and
// Thomas's algorithm.
struct Displaced {
  double inner;
  double outer;
};
Displaced displacement(double inner, double outer, double nu, bool pressed_inside) {
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
  return {u.front(), u.back()};
}

TEST_P(OutsideLame, FiniteDifferencesOpenShrinkAndCloseAsMuch) {
  const auto [bore, joint, outside] = GetParam();
  constexpr double kNu = 0.29;
  constexpr double kDiscretised = 1e-4;
  const double opens = displacement(joint / 2, outside / 2, kNu, true).inner;
  EXPECT_NEAR(opens / (joint / 2) / hub_opening(joint, outside, kNu), 1.0, kDiscretised);
  if (bore <= 0.0) return;  // r = 0 is singular
  const Displaced pressed = displacement(bore / 2, joint / 2, kNu, false);
  EXPECT_NEAR(-pressed.outer / (joint / 2) / shaft_shrinking(joint, bore, kNu), 1.0, kDiscretised);
  EXPECT_NEAR(-2.0 * pressed.inner / bore_closing(1.0, joint, bore, 1.0), 1.0, kDiscretised);
  // in a boss that does not give the interference is what the outside goes in by
  EXPECT_LT(-2.0 * pressed.inner, most_bore_closing(-2.0 * pressed.outer, joint, bore));
}
INSTANTIATE_TEST_SUITE_P(OutsideLame, OutsideLame,
                         testing::Values(Cylinders{0, 60, 100}, Cylinders{20, 50, 100}, Cylinders{10, 25, 30},
                                         Cylinders{50, 75, 150}, Cylinders{20, 24, 200}));

}  // namespace
}  // namespace sparewright::handbook
