// Binary glTF 2.0 files (.glb), for viewers.
//
// Source, from memory: the Khronos Group's "glTF 2.0 Specification" (also ISO/IEC 12113:2022), sections "Coordinate
// System and Units", "Accessors", "Meshes" and "GLB File Format Specification".
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "core/base/result.hpp"
#include "solid/mesh.hpp"

namespace sparewright::solid {

// The file as bytes; the same mesh and name give the same bytes.
// name  of the node and the mesh; what is not UTF-8 in it becomes the replacement character.
//
// The standard wants metres and +Y up; ours are millimetres and Z up. The coordinates themselves are written turned, no
// node turns them: file (x, y, z) = part (x, z, -y) / 1000, in single precision. One mesh of one primitive: a vertex
// for each corner, with its normal; faces share no vertices, but points on their edges are equal to the last bit.
// Fails with kTooMany where the file needs lengths or indices of more than 32 bits.
[[nodiscard]] base::Result<std::string> write_glb(const Mesh& mesh, std::string_view name);

// The length of the file's binary chunk in bytes, of so many corners and triangles. Fails as write_glb() does.
[[nodiscard]] base::Result<std::uint32_t> glb_binary_bytes(std::size_t corners, std::size_t triangles);

}  // namespace sparewright::solid
