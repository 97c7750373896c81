// Whether a part looks the same from another side or in a mirror.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "core/shape/recipe.hpp"
#include "core/shape/support.hpp"

namespace sparewright::shape {

// A turn by quarters about the middle of a box, a mirror image, or both: where each axis of the part frame goes.
//
//   a half turn about z: {-x, -y, z}; a mirror image front to back: {x, -y, z}
struct Image {
  std::array<Vector, 3> axes{Vector{1.0, 0.0, 0.0}, Vector{0.0, 1.0, 0.0}, Vector{0.0, 0.0, 1.0}};
  Point middle;

  [[nodiscard]] Vector of(const Vector& v) const;
  [[nodiscard]] Point of(const Point& p) const { return middle + of(p - middle); }
  [[nodiscard]] Image back() const;    // the image that undoes it
  [[nodiscard]] bool mirrors() const;  // no turning brings it about
};

// Every image that leaves a box of that size, standing square about the middle, as it is; the part itself first. Sides
// that are the same length to alike_mm can take each other's place.
[[nodiscard]] std::vector<Image> images_of(const Bounds& box, double alike_mm);

// The first cut, by its place in the work, that tells the work from its image: where it has air and the image metal, or
// the other way round; as many as there are cuts where it is the blank that does. None: the two are alike.
//
// alike_mm  what lies no further than that from its image is alike: a tolerance, at least kAlikeAtLeast_mm. Along a ray each
//           stretch counts by itself: many cuts that are each a little out are alike.
//
// Cuts that have a like cut in the image are set aside; the others are compared by rays through their own bounds, so that
// a small one is not missed. Of the blank counts what no cut takes away.
[[nodiscard]] std::optional<std::size_t> difference(const Work& work, const Image& image, double alike_mm);

inline constexpr double kAlikeAtLeast_mm = 0.005;

}  // namespace sparewright::shape
