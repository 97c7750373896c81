// STL files, binary, millimetres.
//
// Source, from memory: the format has no standard; it is that of 3D Systems' "StereoLithography Interface
// Specification" (1988) as every program reads it: 80 bytes of header that do not begin with "solid", the number of
// triangles, and for each its normal, its three corners counterclockwise seen from outside, and two bytes of nothing.
// All little endian, numbers in single precision. The format states no unit; millimetres are usual.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>

#include "core/base/result.hpp"
#include "solid/mesh.hpp"

namespace sparewright::solid {

// The file as bytes; the same mesh gives the same bytes. Coordinates as in the part frame, Z up, rounded to single
// precision: within 4e-6 mm up to 100 mm from the origin. Fails as stl_count() does.
[[nodiscard]] base::Result<std::string> write_stl(const Mesh& mesh);

// The number as the file can hold it. Fails with kTooMany where it needs more than 32 bits.
[[nodiscard]] base::Result<std::uint32_t> stl_count(std::size_t triangles);

}  // namespace sparewright::solid
