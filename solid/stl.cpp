#include "solid/stl.hpp"

#include <array>
#include <limits>
#include <string_view>

#include <fmt/format.h>

#include "solid/little_endian.hpp"

namespace sparewright::solid {
namespace {

constexpr std::size_t kHeader_bytes = 80;
constexpr std::size_t kTriangle_bytes = 50;
constexpr std::string_view kHeader = "Sparewright, binary STL, millimetres";
static_assert(kHeader.size() <= kHeader_bytes);

void put_vector(std::string& bytes, double x, double y, double z) {
  for (const double value : {x, y, z})
    put_float(bytes, static_cast<float>(value) + 0.0F);  // -0 becomes 0
}

// Zero for a triangle with no area, which readers work out anew from the corners.
shape::Vector flat_normal(const std::array<shape::Point, 3>& corners) {
  const shape::Vector across = cross(corners[1] - corners[0], corners[2] - corners[0]);
  return length_mm(across) > 0.0 ? direction(across) : shape::Vector{};
}

}  // namespace

base::Result<std::uint32_t> stl_count(std::size_t triangles) {
  constexpr std::size_t kMost = std::numeric_limits<std::uint32_t>::max();
  if (triangles <= kMost) return static_cast<std::uint32_t>(triangles);
  return base::fail(base::Code::kTooMany, fmt::format("{} triangles", triangles),
                    fmt::format("at most {}; a coarser mesh", kMost), "the STL file");
}

base::Result<std::string> write_stl(const Mesh& mesh) {
  const auto count = stl_count(mesh.triangles.size());
  if (!count) return tl::unexpected(count.error());
  std::string bytes;
  bytes.reserve(kHeader_bytes + 4 + kTriangle_bytes * mesh.triangles.size());
  bytes += kHeader;
  bytes.resize(kHeader_bytes, ' ');
  put_u32(bytes, *count);
  for (const auto& t : mesh.triangles) {
    const std::array<shape::Point, 3> corners{mesh.point_of(t[0]), mesh.point_of(t[1]), mesh.point_of(t[2])};
    const shape::Vector normal = flat_normal(corners);
    put_vector(bytes, normal.x, normal.y, normal.z);
    for (const shape::Point& p : corners)
      put_vector(bytes, p.x, p.y, p.z);
    put_u16(bytes, 0);
  }
  return bytes;
}

}  // namespace sparewright::solid
