// A solid as triangles, for files that know no curved surfaces and for looking at.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

#include "core/base/result.hpp"
#include "core/shape/vector.hpp"
#include "solid/solid.hpp"

namespace sparewright::solid {

// How far triangles may stray from the surface they stand for.
struct Fineness {
  double chord_mm = 0.02;  // farthest from the surface; kFinestChord_mm to kCoarsestChord_mm
  double angle_rad =
      0.2;  // greatest turn along one side of a triangle; kFinestAngle_rad to kCoarsestAngle_rad
};
inline constexpr double kFinestChord_mm = 1e-4;
inline constexpr double kCoarsestChord_mm = 100.0;
inline constexpr double kFinestAngle_rad = 0.01;
inline constexpr double kCoarsestAngle_rad = 1.0;

// A point as one face sees it: faces that meet in a point have a corner of their own there, each with its own normal.
struct Corner {
  std::uint32_t point = 0;  // which of Mesh::points
  shape::Vector normal;     // of the face's surface, out of the metal, length 1
};

// The triangles of one face of the solid: they stand together in Mesh::triangles.
struct MeshFace {
  std::size_t first = 0;
  std::size_t count = 0;
};

// Lengths in mm, part frame.
//
// Guarantees of mesh_of(): (1) no gaps: every side of a triangle is run along in the other direction by another one,
// through the very same points. Where metal touches itself along a line, four or more triangles share it, in pairs;
// separate lumps share no points. (2) Seen from outside, the corners of a triangle run counterclockwise.
// (3) |volume_mm3(mesh) - solid.volume_mm3()| <= chord_mm * area. (4) The same solid made from the same recipe gives
// the same mesh.
struct Mesh {
  std::vector<shape::Point> points;
  std::vector<Corner> corners;
  std::vector<std::array<std::uint32_t, 3>> triangles;  // three corners each
  std::vector<MeshFace> faces;                          // as the solid has them

  [[nodiscard]] const shape::Point& point_of(std::uint32_t corner) const {
    return points[corners[corner].point];
  }
};

// The solid itself is left as it is: a copy of it is meshed.
// Fails with kValueNotAccepted where the fineness is out of its range, with kKernel where the kernel's triangles do not
// close or do not enclose the volume, after they have been tried finer. Never throws anything of the kernel's.
[[nodiscard]] base::Result<Mesh> mesh_of(const Solid& solid, const Fineness& fineness = {});

// What the triangles enclose, by the divergence theorem: a sixth of the sum of the triple products of their corners.
[[nodiscard]] double volume_mm3(const Mesh& mesh);

// Whether guarantee (1) holds.
[[nodiscard]] bool closed(const Mesh& mesh);

}  // namespace sparewright::solid
