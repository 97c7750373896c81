// A solid as the kernel has it. A value: cheap to copy, never changed once made, safe to read from several threads.
#pragma once

#include <memory>

#include "core/shape/support.hpp"
#include "core/shape/vector.hpp"

class TopoDS_Shape;  // the kernel's; seen in this room's .cpp files only

namespace sparewright::solid {

// Sizes in mm in the part frame. All are computed from the kernel's own surfaces when asked for, not stored.
class Solid {
 public:
  [[nodiscard]] double volume_mm3() const;
  [[nodiscard]] double area_mm2() const;
  [[nodiscard]] shape::Point centre_of_gravity() const;
  // Tight to 1e-6 mm on flat faces, cylinders and cones; on other surfaces it may be wider.
  [[nodiscard]] shape::Bounds bounds() const;

  [[nodiscard]] int pieces() const;  // separate lumps of metal
  [[nodiscard]] int faces() const;
  [[nodiscard]] int edges() const;

  // The kernel's own check of topology and tolerances. Takes milliseconds. A valid solid is no proof that it is the
  // right one: that is what the check by rays in make_solid() is for.
  [[nodiscard]] bool valid() const;

 private:
  struct Body;
  explicit Solid(std::shared_ptr<const Body> body);
  std::shared_ptr<const Body> body_;

  friend Solid from_kernel(const TopoDS_Shape& shape);
  friend const TopoDS_Shape& to_kernel(const Solid& solid);
};

}  // namespace sparewright::solid
