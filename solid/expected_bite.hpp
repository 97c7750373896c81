// What a cut has to take, by rays, asked as precisely as the comparison needs.
#pragma once

#include "core/shape/volume.hpp"

namespace sparewright::solid {

// Starts with few rays and adds more only while the answer is in doubt. Valid as long as the work and body are.
class ExpectedBite {
 public:
  ExpectedBite(const shape::Work& before, const shape::Primitive& body);

  // Whether the kernel may have taken this much: within the rays' error and kAgreeShare (make_solid.hpp), the error
  // itself below kSureShare. Not agreed only once the rays are at their most painstaking.
  [[nodiscard]] bool agrees_with(double taken_mm3);

  [[nodiscard]] const shape::RayVolume& volume() const { return volume_; }

 private:
  shape::Work before_;
  const shape::Primitive& body_;
  shape::Effort effort_ = shape::Effort::kQuick;
  shape::RayVolume volume_;
};

}  // namespace sparewright::solid
