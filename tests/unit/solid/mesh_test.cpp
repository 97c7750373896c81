#include "solid/mesh.hpp"

#include <map>
#include <numbers>
#include <thread>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "solid/step.hpp"
#include "solid_samples.hpp"

namespace sparewright::solid {
namespace {

using tests::bracket;
using tests::plate;
using tests::round_bar;
using tests::solid_of;

constexpr double kPi = std::numbers::pi;

// Slow and plain: how often each side is run along, in each direction.
void expect_two_triangles_on_every_side(const Mesh& mesh) {
  std::map<std::pair<std::uint32_t, std::uint32_t>, int> runs;
  for (const auto& t : mesh.triangles) {
    for (std::size_t k = 0; k < 3; ++k)
      ++runs[{mesh.corners[t[k]].point, mesh.corners[t[(k + 1) % 3]].point}];
  }
  ASSERT_FALSE(runs.empty());
  for (const auto& [side, count] : runs) {
    ASSERT_EQ(count, 1) << "side " << side.first << " to " << side.second;
    ASSERT_TRUE(runs.contains({side.second, side.first})) << "side " << side.first << " to " << side.second;
  }
}

void expect_normals_out_of_the_triangles(const Mesh& mesh) {
  for (const auto& t : mesh.triangles) {
    const shape::Vector across =
        cross(mesh.point_of(t[1]) - mesh.point_of(t[0]), mesh.point_of(t[2]) - mesh.point_of(t[0]));
    if (length_mm(across) < 1e-12) continue;
    for (const std::uint32_t corner : t) {
      const shape::Vector& normal = mesh.corners[corner].normal;
      EXPECT_NEAR(length_mm(normal), 1.0, 1e-12);
      EXPECT_GT(dot(normal, direction(across)), std::cos(kCoarsestAngle_rad));
    }
  }
}

class MeshOf : public testing::TestWithParam<double> {};

TEST_P(MeshOf, AllKindsOfFacesClose) {
  const Solid solid = solid_of(bracket());
  const Fineness fineness{GetParam(), 0.5};
  const auto mesh = mesh_of(solid, fineness);
  ASSERT_TRUE(mesh) << mesh.error().found;
  EXPECT_TRUE(closed(*mesh));
  expect_two_triangles_on_every_side(*mesh);
  expect_normals_out_of_the_triangles(*mesh);
  EXPECT_NEAR(volume_mm3(*mesh), solid.volume_mm3(), GetParam() * solid.area_mm2());
  EXPECT_EQ(mesh->faces.size(), static_cast<std::size_t>(solid.faces()));
}

INSTANTIATE_TEST_SUITE_P(Chords, MeshOf, testing::Values(1.0, 0.1, 0.02, 0.002));

TEST(Mesh, ABoxIsTwelveTrianglesAndExact) {
  const Mesh mesh = tests::mesh_of(plate({}));
  EXPECT_EQ(mesh.triangles.size(), 12U);
  EXPECT_EQ(mesh.points.size(), 8U);
  EXPECT_EQ(mesh.corners.size(), 24U);
  EXPECT_EQ(mesh.faces.size(), 6U);
  EXPECT_NEAR(volume_mm3(mesh), 120000.0, 1e-9);
}

// The area of a circle less that of a polygon in it whose sagitta is at most s is at most the sum of its segments, each
// 2/3 chord times sagitta (the parabola's share, a little under the circle's): under 2/3 s times the circumference,
// and 1 in 1000 more for the circle.
TEST(Mesh, ACylinderIsWithinItsSagitta) {
  constexpr double kRadius = 25.0;
  constexpr double kLong = 80.0;
  for (const double sagitta : {0.5, 0.1, 0.01}) {
    const Mesh mesh = tests::mesh_of(round_bar({}), {sagitta, 1.0});
    const double exact = kPi * kRadius * kRadius * kLong;
    const double missing = exact - volume_mm3(mesh);
    EXPECT_GT(missing, 0.0);
    EXPECT_LE(missing, 1.001 * 2.0 / 3.0 * sagitta * 2.0 * kPi * kRadius * kLong) << sagitta;
    expect_two_triangles_on_every_side(mesh);
  }
}

TEST(Mesh, TheAngleCountsWhereTheChordWouldBeCoarse) {
  const Mesh coarse = tests::mesh_of(round_bar({}), {10.0, 1.0});
  const Mesh fine = tests::mesh_of(round_bar({}), {10.0, 0.1});
  EXPECT_GE(fine.triangles.size(), static_cast<std::size_t>(4 * 2.0 * kPi / 0.1) - 8);
  EXPECT_LT(coarse.triangles.size(), fine.triangles.size() / 3);
}

TEST(Mesh, NormalsOfARoundFaceAreTheSurfacesOwn) {
  const Mesh mesh = tests::mesh_of(round_bar({}), {0.5, 1.0});
  int round = 0;
  for (const Corner& corner : mesh.corners) {
    if (std::abs(corner.normal.x) > 0.5) continue;  // the ends
    const shape::Point& p = mesh.points[corner.point];
    EXPECT_NEAR(length_mm(corner.normal - shape::Vector{0.0, p.y / 25.0, p.z / 25.0}), 0.0, 1e-9);
    ++round;
  }
  EXPECT_GT(round, 20);
}

TEST(Mesh, FacesHoldAllTrianglesInTurn) {
  const Mesh mesh = tests::mesh_of(bracket());
  std::size_t next = 0;
  for (const MeshFace& face : mesh.faces) {
    EXPECT_EQ(face.first, next);
    EXPECT_GT(face.count, 0U);
    next += face.count;
  }
  EXPECT_EQ(next, mesh.triangles.size());
}

TEST(Mesh, LumpsShareNoPoints) {
  const Solid sawn = solid_of(plate({tests::saw_cut(40.0, 43.0)}));
  ASSERT_EQ(sawn.pieces(), 2);
  const auto mesh = mesh_of(sawn);
  ASSERT_TRUE(mesh);
  EXPECT_EQ(mesh->points.size(), 16U);
  EXPECT_NEAR(volume_mm3(*mesh), 97.0 * 60.0 * 20.0, 1e-6);
}

// Two pockets that meet in one edge: the metal touches itself along a line.
TEST(Mesh, MetalThatTouchesItselfAlongALineIsClosedAllTheSame) {
  const auto open = shape::Open::kZLow | shape::Open::kZHigh;
  const Solid solid =
      solid_of(plate({shape::milled_box("one", {}, {20.0, 20.0, 0.0}, {40.0, 30.0, 20.0}, open),
                      shape::milled_box("other", {}, {40.0, 30.0, 0.0}, {60.0, 40.0, 20.0}, open)}));
  const auto mesh = mesh_of(solid);
  ASSERT_TRUE(mesh) << mesh.error().found;
  EXPECT_NEAR(volume_mm3(*mesh), 120000.0 - 2 * 20.0 * 10.0 * 20.0, 1e-6);
}

bool same(const Mesh& a, const Mesh& b) {
  const auto same_corner = [](const Corner& c, const Corner& d) {
    return c.point == d.point && c.normal == d.normal;
  };
  return a.points == b.points && a.triangles == b.triangles &&
         std::equal(a.corners.begin(), a.corners.end(), b.corners.begin(), b.corners.end(), same_corner);
}

TEST(Mesh, RepeatsAndLeavesTheSolidAsItIs) {
  const Solid solid = solid_of(bracket());
  const std::string before = *write_step(solid, "bracket");
  const auto first = mesh_of(solid);
  const auto coarse = mesh_of(solid, {1.0, 0.5});
  const auto again = mesh_of(solid);
  ASSERT_TRUE(first && coarse && again);
  EXPECT_TRUE(same(*first, *again));
  EXPECT_LT(coarse->triangles.size(), first->triangles.size());
  EXPECT_EQ(*write_step(solid, "bracket"), before);
}

TEST(Mesh, MayBeMadeFromSeveralThreadsAtOnce) {
  const Solid solid = solid_of(bracket());
  const Mesh alone = mesh_of(solid).value();
  std::vector<Mesh> meshes(4);
  std::vector<std::thread> threads;
  for (std::size_t i = 0; i < meshes.size(); ++i)
    threads.emplace_back([&, i] { meshes[i] = mesh_of(solid).value(); });
  for (std::thread& thread : threads)
    thread.join();
  for (const Mesh& mesh : meshes)
    EXPECT_TRUE(same(mesh, alone));
}

TEST(Mesh, FinenessOutOfItsRangeIsRefused) {
  const Solid solid = solid_of(plate({}));
  const double none = std::nan("");
  for (const Fineness& fineness :
       {Fineness{0.0, 0.2}, Fineness{-1.0, 0.2}, Fineness{none, 0.2}, Fineness{0.02, 0.0},
        Fineness{0.02, none}, Fineness{1e-5, 0.2}, Fineness{0.02, 2.0}}) {
    const auto mesh = mesh_of(solid, fineness);
    ASSERT_FALSE(mesh);
    EXPECT_EQ(mesh.error().code, base::Code::kValueNotAccepted);
    EXPECT_NE(mesh.error().accepted, "");
  }
}

TEST(Mesh, AMeshWithAHoleIsNotClosed) {
  Mesh mesh = tests::mesh_of(plate({}));
  ASSERT_TRUE(closed(mesh));
  Mesh turned = mesh;
  std::swap(turned.triangles[3][0], turned.triangles[3][1]);
  EXPECT_FALSE(closed(turned));
  mesh.triangles.pop_back();
  EXPECT_FALSE(closed(mesh));
  EXPECT_FALSE(closed(Mesh{}));
}

}  // namespace
}  // namespace sparewright::solid
