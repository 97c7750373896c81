// Press fits against published shrink temperatures, and two published formulas against each other.
#include "core/handbook/press_fits.hpp"

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

INSTANTIATE_TEST_SUITE_P(OutsideLame, OutsideLame,
                         testing::Values(Cylinders{0, 60, 100}, Cylinders{20, 50, 100}, Cylinders{10, 25, 30},
                                         Cylinders{50, 75, 150}, Cylinders{20, 24, 200}));

}  // namespace
}  // namespace sparewright::handbook
