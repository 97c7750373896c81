// The kernel's volume of a solid that is cut again and again: only faces it has not met yet are measured.
// For this room's .cpp files only.
#pragma once

#include <memory>

#include "core/shape/vector.hpp"

class TopoDS_Shape;

namespace sparewright::solid {

// A solid's volume is the sum of the cones from one point over its faces, each with the sign of its side. A cut leaves
// most faces as they are, so their cones are kept. The faces met stay in memory as long as this does.
class FaceVolumes {
 public:
  // apex  of the cones, anywhere; near the solid it costs the fewest digits.
  explicit FaceVolumes(const shape::Point& apex);
  ~FaceVolumes();
  FaceVolumes(const FaceVolumes&) = delete;
  FaceVolumes& operator=(const FaceVolumes&) = delete;

  // As kernel_volume_mm3(), to the error of the kernel's integration (1e-9 of it); the same whatever was measured before. Throws the kernel's exceptions.
  [[nodiscard]] double volume_mm3(const TopoDS_Shape& shape);

 private:
  struct Cones;
  shape::Point apex_;
  std::unique_ptr<Cones> cones_;
};

}  // namespace sparewright::solid
