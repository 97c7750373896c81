// The flat faces of a primitive, as planes.
#pragma once

#include <vector>

#include "core/shape/primitive.hpp"

namespace sparewright::shape {

// Every plane that a flat face of the primitive lies in, as the half-space on the body's side of it: its z points out of
// the body. In a fixed order; two faces in one plane may both be told. Round and conical faces are none.
[[nodiscard]] std::vector<HalfSpace> flat_faces(const Primitive& primitive);

}  // namespace sparewright::shape
