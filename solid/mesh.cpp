#include "solid/mesh.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include <fmt/format.h>

#include "solid/kernel_guard.hpp"
#include "solid/kernel_mesh.hpp"
#include "solid/kernel_shape.hpp"

namespace sparewright::solid {
namespace {

using base::Code;
using base::fail;
using base::Result;

constexpr std::string_view kSubject = "the mesh";

bool within(double value, double low, double high) {
  return value >= low && value <= high;  // neither holds for what is no number
}

Result<Fineness> checked(const Fineness& fineness) {
  if (!within(fineness.chord_mm, kFinestChord_mm, kCoarsestChord_mm)) {
    return fail(Code::kValueNotAccepted, fmt::format("{} mm", fineness.chord_mm),
                fmt::format("{} to {} mm", kFinestChord_mm, kCoarsestChord_mm), "chord of a mesh");
  }
  if (!within(fineness.angle_rad, kFinestAngle_rad, kCoarsestAngle_rad)) {
    return fail(Code::kValueNotAccepted, fmt::format("{} rad", fineness.angle_rad),
                fmt::format("{} to {} rad", kFinestAngle_rad, kCoarsestAngle_rad), "angle of a mesh");
  }
  return fineness;
}

// The volume between the surface and triangles that stray no farther than the chord, and what rounding may add.
double volume_bound_mm3(const Solid& solid, double chord_mm) {
  constexpr double kRounding = 1e-9;
  return chord_mm * solid.area_mm2() + kRounding * solid.volume_mm3();
}

}  // namespace

Result<Mesh> mesh_of(const Solid& solid, const Fineness& fineness) {
  const auto asked = checked(fineness);
  if (!asked) return tl::unexpected(asked.error());
  constexpr int kTries = 3;
  base::Failure last;
  for (int i = 0; i < kTries; ++i) {
    const double finer = std::ldexp(1.0, -i);
    auto mesh = guarded(kSubject, [&] {
      return kernel_mesh(to_kernel(solid), {finer * asked->chord_mm, finer * asked->angle_rad});
    });
    if (!mesh) {
      last = std::move(mesh.error());
    } else if (!closed(*mesh)) {
      last = fail(Code::kKernel, "its triangles do not close", {}, kSubject).value();
    } else if (std::abs(volume_mm3(*mesh) - solid.volume_mm3()) >
               volume_bound_mm3(solid, fineness.chord_mm)) {
      last = fail(Code::kKernel, "its triangles do not enclose the metal", {}, kSubject).value();
    } else {
      return mesh;
    }
  }
  return fail(std::move(last));
}

double volume_mm3(const Mesh& mesh) {
  if (mesh.points.empty()) return 0.0;
  const shape::Point& from = mesh.points.front();  // near the metal, so that little cancels
  double six = 0.0;
  for (const auto& t : mesh.triangles)
    six += dot(mesh.point_of(t[0]) - from, cross(mesh.point_of(t[1]) - from, mesh.point_of(t[2]) - from));
  return six / 6.0;
}

bool closed(const Mesh& mesh) {
  std::vector<std::pair<std::uint32_t, std::uint32_t>> along;
  along.reserve(3 * mesh.triangles.size());
  for (const auto& t : mesh.triangles) {
    for (std::size_t k = 0; k < 3; ++k)
      along.emplace_back(mesh.corners[t[k]].point, mesh.corners[t[(k + 1) % 3]].point);
  }
  auto back = along;
  for (auto& [from, to] : back)
    std::swap(from, to);
  std::sort(along.begin(), along.end());
  std::sort(back.begin(), back.end());
  const bool every_face =
      std::all_of(mesh.faces.begin(), mesh.faces.end(), [](const MeshFace& face) { return face.count > 0; });
  return !along.empty() && every_face && along == back;
}

}  // namespace sparewright::solid
