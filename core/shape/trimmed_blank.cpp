#include "core/shape/trimmed_blank.hpp"

#include <algorithm>

#include "core/shape/support.hpp"
#include "core/shape/wall.hpp"

namespace sparewright::shape {
namespace {

// A box whose sides run along the axes of the part frame.
bool is_square_box(const Primitive& body) {
  const auto* box = std::get_if<Box>(&body);
  if (box == nullptr) return false;
  const Bounds b = bounds(body);
  const Vector size = b.size();
  const double spare = size.x * size.y * size.z - box->size.x * box->size.y * box->size.z;
  return spare <= kTouch_mm * (size.x * size.y + size.y * size.z + size.z * size.x);
}

double Point::*const kAxes[] = {&Point::x, &Point::y, &Point::z};

bool spans(const Bounds& cut, const Bounds& blank, double Point::*axis) {
  return cut.low.*axis <= blank.low.*axis && cut.high.*axis >= blank.high.*axis;
}

// Takes the cut off the bounds where it goes from side to side along the two other axes and out at one end.
void trim(Bounds& blank, const Bounds& cut) {
  for (int k = 0; k < 3; ++k) {
    double Point::*axis = kAxes[k];
    if (!spans(cut, blank, kAxes[(k + 1) % 3]) || !spans(cut, blank, kAxes[(k + 2) % 3])) continue;
    if (cut.high.*axis >= blank.high.*axis) blank.high.*axis = std::min(blank.high.*axis, cut.low.*axis);
    if (cut.low.*axis <= blank.low.*axis) blank.low.*axis = std::max(blank.low.*axis, cut.high.*axis);
  }
}

}  // namespace

Primitive trimmed_blank(const Work& work) {
  if (!is_square_box(work.blank)) return work.blank;
  Bounds left = bounds(work.blank);
  for (const Cut& cut : work.cuts) {
    if (is_square_box(cut.body)) trim(left, bounds(cut.body));
  }
  const Vector size = left.size();
  const bool nothing = std::min({size.x, size.y, size.z}) < kShortestSide_mm;
  if (nothing || left == bounds(work.blank)) return work.blank;
  return Box{Frame::at(left.low), size};
}

}  // namespace sparewright::shape
