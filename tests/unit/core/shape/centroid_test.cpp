// The centre of gravity by rays where it can be told exactly, and how it moves with the part.
#include "core/shape/centroid.hpp"

#include <gtest/gtest.h>

#include "core/shape/volume.hpp"
#include "random_shapes.hpp"
#include "shape_samples.hpp"

namespace sparewright::shape {
namespace {

constexpr double kRounding_mm = 1e-7;

TEST(CentreOfGravity, OfABoxIsExactWhereverItStands) {
  tests::Random random(52);
  for (int i = 0; i < 50; ++i) {
    const Frame frame = tests::random_frame(random, 100.0);
    const Box box{frame, {random.size(1.0, 100.0), random.size(1.0, 100.0), random.size(1.0, 100.0)}};
    const auto found = centre_of_gravity({box, {}}, Effort::kQuick);
    ASSERT_TRUE(found);
    ASSERT_LE(distance_mm(found->centre, frame.to_world(Point{} + 0.5 * box.size)), kRounding_mm) << i;
    ASSERT_LE(found->error_mm, kRounding_mm) << i;
  }
}

TEST(CentreOfGravity, IsNowhereWhereNoMetalIs) {
  const auto gone =
      Recipe::make({"block", Box{{}, {10.0, 10.0, 10.0}}},
                   std::vector{Cutter{"all", HalfSpace{Frame::at({0.0, 0.0, 20.0})}, Open::kNone}});
  ASSERT_TRUE(gone);
  EXPECT_FALSE(centre_of_gravity(gone->work()));
}

// The moments of a part and of what is cut off it are together those of the blank.
TEST(CentreOfGravity, BalancesWithWhatIsCutOff) {
  tests::Random random(53);
  for (int i = 0; i < 40; ++i) {
    const Box block{{}, {60.0, 40.0, 25.0}};
    const Frame plane = Frame::along({30.0, 20.0, 12.0}, random.direction());
    const auto half = [&](const Vector& z) {
      return Recipe::make({"block", block},
                          std::vector{Cutter{"half", HalfSpace{Frame::along(plane.origin, z)}, Open::kNone}})
          .value();
    };
    const Recipe one = half(plane.z);
    const Recipe other = half(-plane.z);
    const auto centre_of_one = centre_of_gravity(one.work(), Effort::kCareful);
    const auto centre_of_other = centre_of_gravity(other.work(), Effort::kCareful);
    ASSERT_TRUE(centre_of_one && centre_of_other);
    const RayVolume volume = metal_volume(one.work(), Effort::kCareful);
    const Point balanced =
        between(centre_of_other->centre, centre_of_one->centre, volume.volume_mm3 / volume_mm3(block));
    const double lever_mm = distance_mm(centre_of_one->centre, centre_of_other->centre);
    ASSERT_LE(distance_mm(balanced, {30.0, 20.0, 12.5}), centre_of_one->error_mm + centre_of_other->error_mm +
                                                             lever_mm * volume.error_mm3 / volume_mm3(block))
        << i;
  }
}

}  // namespace
}  // namespace sparewright::shape
