// Volumes, centres of gravity and flat faces of whole parts, by rays, against closed forms (closed_forms.hpp).
#include <gtest/gtest.h>

#include "closed_form_bars.hpp"
#include "core/shape/centroid.hpp"
#include "core/shape/face_area.hpp"
#include "core/shape/volume.hpp"

namespace sparewright::shape {
namespace {

using tests::ClosedForm;

class OutsideClosedFormByRays : public ::testing::TestWithParam<ClosedForm> {
 protected:
  static Recipe recipe() { return Recipe::make({"blank", GetParam().blank}, GetParam().cutters).value(); }
};

TEST_P(OutsideClosedFormByRays, Volume) {
  const Recipe part = recipe();
  const RayVolume rays = metal_volume(part.work(), Effort::kCareful);
  EXPECT_NEAR(rays.volume_mm3, GetParam().volume_mm3(), rays.error_mm3) << GetParam().name;
  EXPECT_LT(rays.error_mm3, 5e-3 * rays.volume_mm3) << GetParam().name;
}

TEST_P(OutsideClosedFormByRays, CentreOfGravity) {
  constexpr double kOf100_mm = 0.05;  // what the error may be on parts up to 100 mm long
  const Recipe part = recipe();
  const auto found = centre_of_gravity(part.work(), Effort::kCareful);
  ASSERT_TRUE(found);
  EXPECT_LE(distance_mm(found->centre, GetParam().centre()), found->error_mm) << GetParam().name;
  EXPECT_LT(found->error_mm, kOf100_mm) << GetParam().name;
}

TEST_P(OutsideClosedFormByRays, FlatFaces) {
  // Half a step of the grid along the outline, which is no longer than 200 mm where it has corners off the grid.
  constexpr double kGrid_mm2 = kGrid_mm / 2 * 200.0;
  constexpr double kTouching_mm2 = 0.05;  // what a round side that runs into the plane may leave in doubt
  ASSERT_FALSE(GetParam().faces.empty());
  const Recipe part = recipe();
  for (const tests::FlatFace& face : GetParam().faces) {
    const FaceArea found = face_area(part.work(), Frame::along(face.on, face.out));
    EXPECT_NEAR(found.area_mm2, face.area_mm2, found.error_mm2 + kGrid_mm2) << GetParam().name;
    EXPECT_LE(found.error_mm2, kTouching_mm2) << GetParam().name;
  }
}

INSTANTIATE_TEST_SUITE_P(Parts, OutsideClosedFormByRays, ::testing::ValuesIn(tests::closed_forms()),
                         [](const auto& part) { return std::to_string(part.index); });

}  // namespace
}  // namespace sparewright::shape
