// What a cut has to take, by rays, asked as precisely as the comparison needs.
#pragma once

#include "core/shape/volume.hpp"

namespace sparewright::solid {

// Starts with few rays and adds more until their error is small enough to compare by; more still only while the kernel
// seems to be wrong. Valid as long as the work and body are.
class ExpectedBite {
 public:
  // Takes as long as the rays that any comparison needs.
  ExpectedBite(const shape::Work& before, const shape::Primitive& body);

  // Whether the kernel may have taken this much: within the rays' error and kAgreeShare (make_solid.hpp), the error
  // itself below kSureShare. Not agreed only once the rays are at their most painstaking.
  [[nodiscard]] bool agrees_with(double taken_mm3);

  [[nodiscard]] const shape::RayVolume& volume() const { return volume_; }

 private:
  [[nodiscard]] bool sure() const;
  [[nodiscard]] bool more();

  shape::Work before_;
  const shape::Primitive& body_;
  shape::Effort effort_ = shape::Effort::kQuick;
  shape::RayVolume volume_;
};

}  // namespace sparewright::solid
