// How the part stands on the machine: which of its sides is up, away from the operator and to the right.
#pragma once

#include "core/base/result.hpp"
#include "core/part/face.hpp"
#include "core/route/plan.hpp"

namespace sparewright::route {

// The axis of the part that runs along an axis of the machine, and whether both run the same way.
struct Along {
  part::Axis axis = part::Axis::kX;
  bool same_way = true;
};

struct Orientation {
  part::Face up = part::Face::kTop;
  part::Face away = part::Face::kBack;
  part::Face right = part::Face::kRightEnd;

  [[nodiscard]] Along along_x() const;
  [[nodiscard]] Along along_y() const;
  [[nodiscard]] Along along_z() const;
};

// From what it sits on and what is away from the operator. Fails with kValueNotAccepted where the two are not at right
// angles to each other.
[[nodiscard]] base::Result<Orientation> orientation_of(const Holding& holding);

}  // namespace sparewright::route
