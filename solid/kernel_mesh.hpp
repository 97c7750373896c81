// The kernel's triangles as a mesh of ours. For this room's .cpp files only.
#pragma once

#include "solid/mesh.hpp"

namespace sparewright::solid {

// Meshes a copy of the shape. The kernel gives each face triangles of its own; points on an edge or a vertex of the
// solid become one point for all faces that meet there, by the topology and not by distance.
// A face the kernel could not mesh has no triangles. Throws what the kernel throws.
[[nodiscard]] Mesh kernel_mesh(const TopoDS_Shape& shape, const Fineness& fineness);

}  // namespace sparewright::solid
