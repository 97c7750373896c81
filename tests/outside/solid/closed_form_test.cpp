// Volumes, centres of gravity and flat faces of whole parts, as the kernel's solid has them, against closed forms
// (closed_forms.hpp).
#include <cmath>

#include <gtest/gtest.h>

#include "closed_form_bars.hpp"
#include "kernel_measures.hpp"
#include "solid/make_solid.hpp"

namespace sparewright::solid {
namespace {

using tests::ClosedForm;

constexpr double kVolumeShare = 1e-9;
constexpr double kCentre_mm = 1e-7;
constexpr double kAreaShare = 1e-9;
// Corners lie on the grid: half a step of it along an outline of 200 mm.
constexpr double kGrid_mm2 = shape::kGrid_mm / 2 * 200.0;

class OutsideClosedForm : public ::testing::TestWithParam<ClosedForm> {
 protected:
  static Solid solid() {
    const auto recipe = shape::Recipe::make({"blank", GetParam().blank}, GetParam().cutters);
    EXPECT_TRUE(recipe);
    const auto made = make_solid(recipe.value());
    EXPECT_TRUE(made) << made.error().subject << ": " << made.error().found;
    return made.value().solid;
  }
};

TEST_P(OutsideClosedForm, VolumeCentreOfGravityAndFlatFaces) {
  const ClosedForm& part = GetParam();
  const Solid made = solid();
  const double volume = part.volume_mm3();
  EXPECT_NEAR(made.volume_mm3(), volume, kVolumeShare * volume) << part.name;
  EXPECT_LT(distance_mm(made.centre_of_gravity(), part.centre()), kCentre_mm) << part.name;
  for (const tests::FlatFace& face : part.faces) {
    EXPECT_NEAR(tests::kernel_area_mm2(made, face.on, face.out), face.area_mm2,
                kAreaShare * face.area_mm2 + kGrid_mm2)
        << part.name;
  }
  EXPECT_EQ(made.pieces(), part.lumps) << part.name;
  EXPECT_TRUE(made.valid()) << part.name;
}

TEST(OutsideClosedFormParts, AreFortyOrMore) {
  EXPECT_GE(tests::closed_forms().size(), 40U);
}

INSTANTIATE_TEST_SUITE_P(Parts, OutsideClosedForm, ::testing::ValuesIn(tests::closed_forms()),
                         [](const auto& part) { return std::to_string(part.index); });

}  // namespace
}  // namespace sparewright::solid
