#include "core/route/orientation.hpp"

#include "core/shape/vector.hpp"

namespace sparewright::route {
namespace {

Along along(part::Face greater_side) {
  return {part::axis_of(greater_side), part::at_greater_end(greater_side)};
}

part::Face face_towards(const shape::Vector& direction) {
  for (const part::Face face : part::kFaces) {
    if (shape::dot(part::outward(face), direction) > 0.5) return face;
  }
  return part::Face::kRightEnd;  // no other direction reaches here
}

}  // namespace

Along Orientation::along_x() const {
  return along(right);
}
Along Orientation::along_y() const {
  return along(away);
}
Along Orientation::along_z() const {
  return along(up);
}

base::Result<Orientation> orientation_of(const Holding& holding) {
  const part::Face up = part::opposite(holding.sits_on);
  if (part::axis_of(up) == part::axis_of(holding.away)) {
    return base::fail(base::Code::kValueNotAccepted, part::name_of(holding.away),
                      "a side at right angles to the one it sits on",
                      holding.vise() != nullptr ? "fixed_jaw" : "away");
  }
  // Right-handed: right = away x up.
  const shape::Vector right = shape::cross(part::outward(holding.away), part::outward(up));
  return Orientation{up, holding.away, face_towards(right)};
}

}  // namespace sparewright::route
