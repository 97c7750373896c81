#include "solid/stl.hpp"

#include <array>
#include <map>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "bytes.hpp"
#include "solid_samples.hpp"

namespace sparewright::solid {
namespace {

using Corners = std::array<std::array<float, 3>, 3>;
using ::testing::StartsWith;

struct Facet {
  std::array<float, 3> normal;
  Corners corners;
};

std::vector<Facet> facets(const std::string& file) {
  const tests::Bytes bytes(file);
  std::vector<Facet> all(bytes.u32(80));
  EXPECT_EQ(file.size(), 84 + 50 * all.size());
  for (std::size_t i = 0; i < all.size(); ++i) {
    std::size_t at = 84 + 50 * i;
    for (float& n : all[i].normal)
      n = bytes.f32(std::exchange(at, at + 4));
    for (auto& corner : all[i].corners) {
      for (float& c : corner)
        c = bytes.f32(std::exchange(at, at + 4));
    }
    EXPECT_EQ(bytes.u16(at), 0U);
  }
  return all;
}

shape::Point point(const std::array<float, 3>& c) {
  return {c[0], c[1], c[2]};
}

TEST(Stl, ReadsBackClosedAndWithItsVolume) {
  const Mesh mesh = tests::mesh_of(tests::bracket());
  const auto file = write_stl(mesh);
  ASSERT_TRUE(file);
  const std::vector<Facet> all = facets(*file);
  ASSERT_EQ(all.size(), mesh.triangles.size());
  std::map<std::pair<std::array<float, 3>, std::array<float, 3>>, int> sides;
  double six = 0.0;
  for (const Facet& f : all) {
    for (std::size_t k = 0; k < 3; ++k) {
      const auto& from = f.corners[k];
      const auto& to = f.corners[(k + 1) % 3];
      from < to ? ++sides[{from, to}] : --sides[{to, from}];
    }
    const shape::Vector a = point(f.corners[0]) - shape::Point{};
    six += dot(a, cross(point(f.corners[1]) - shape::Point{}, point(f.corners[2]) - shape::Point{}));
  }
  for (const auto& [side, balance] : sides)
    EXPECT_EQ(balance, 0);
  EXPECT_NEAR(six / 6.0, volume_mm3(mesh), 1e-6 * volume_mm3(mesh));  // single precision
}

TEST(Stl, NormalsAreOfTheTriangles) {
  for (const Facet& f : facets(*write_stl(tests::mesh_of(tests::plate({}))))) {
    const shape::Vector across = direction(
        cross(point(f.corners[1]) - point(f.corners[0]), point(f.corners[2]) - point(f.corners[0])));
    EXPECT_NEAR(length_mm(across - (point(f.normal) - shape::Point{})), 0.0, 1e-6);
  }
}

TEST(Stl, HeaderIsFixedAndNotThatOfATextFile) {
  const std::string file = *write_stl(tests::mesh_of(tests::plate({})));
  EXPECT_EQ(file.size(), 84U + 12 * 50);
  EXPECT_THAT(file.substr(0, 80), StartsWith("Sparewright, binary STL, millimetres "));
  EXPECT_EQ(file.substr(0, 80).find('\0'), std::string::npos);
}

TEST(Stl, RepeatsByteForByte) {
  EXPECT_EQ(*write_stl(tests::mesh_of(tests::bracket())), *write_stl(tests::mesh_of(tests::bracket())));
}

TEST(Stl, MoreTrianglesThanTheFileCanCountAreRefused) {
  EXPECT_EQ(stl_count(0xFFFFFFFFU).value(), 0xFFFFFFFFU);
  const auto count = stl_count(0x1'0000'0000U);
  ASSERT_FALSE(count);
  EXPECT_EQ(count.error().code, base::Code::kTooMany);
  EXPECT_THAT(count.error().accepted, StartsWith("at most 4294967295"));
}

}  // namespace
}  // namespace sparewright::solid
