// Volumes added up face by face, most of them kept from the state before, against the kernel's own.
#include "solid/face_volumes.hpp"

#include <TopoDS_Shape.hxx>
#include <gtest/gtest.h>

#include "solid/kernel_shape.hpp"
#include "solid_samples.hpp"

namespace sparewright::solid {
namespace {

// The kernel's integration of a cone with a cut edge is no closer, and the further off the apex the less close.
constexpr double kIntegration = 1e-9;
constexpr double kFarOff = 1e-7;

TEST(FaceVolumes, AddUpToTheKernelsVolumeAfterEachCut) {
  const shape::Recipe recipe = tests::bracket();
  FaceVolumes kept({50.0, 30.0, 10.0});
  std::size_t states = 0;
  const auto made = make_solid(recipe, std::nullopt, [&](std::size_t, const Solid& work) {
    ++states;
    const double volume = kept.volume_mm3(to_kernel(work));
    EXPECT_NEAR(volume, work.volume_mm3(), kIntegration * work.volume_mm3()) << states;
    EXPECT_EQ(volume, FaceVolumes({50.0, 30.0, 10.0}).volume_mm3(to_kernel(work))) << states;
    return true;
  });
  ASSERT_TRUE(made);
  EXPECT_EQ(states, recipe.cuts().size());
}

TEST(FaceVolumes, DependLittleOnTheApex) {
  const Solid solid = tests::solid_of(tests::bracket());
  const double volume = solid.volume_mm3();
  EXPECT_NEAR(FaceVolumes({}).volume_mm3(to_kernel(solid)), volume, kFarOff * volume);
  EXPECT_NEAR(FaceVolumes({-500.0, 200.0, 900.0}).volume_mm3(to_kernel(solid)), volume, kFarOff * volume);
}

// A ring of round section has one face, closed in itself.
TEST(FaceVolumes, OfARing) {
  const shape::TurnedBody ring{{}, shape::circle({20.0, 0.0}, 5.0)};
  const double volume = shape::volume_mm3(ring);
  EXPECT_NEAR(FaceVolumes({}).volume_mm3(kernel_body(ring, 0.6, ring)), volume, 1e-9 * volume);
}

}  // namespace
}  // namespace sparewright::solid
