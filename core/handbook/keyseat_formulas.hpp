// Keyseats as formulas, generic in their scalar. All lengths in one unit.
//
// Notation: D diameter of shaft and bore, W width and H height of the key, Y height of the arc over the
// keyseat, from the crest of the shaft to the level of the keyseat's edges.
#pragma once

#include <cmath>

#include "core/handbook/source.hpp"

namespace sparewright::handbook {

inline constexpr Source kKeyseatGeometry{
    "Y = (D - sqrt(D^2 - W^2))/2, S = D - Y - H/2, T = D - Y + H/2 + 0.005 in, ASME B17.1; the results are "
    "those of Machinery's Handbook 31st ed., Table 2",
    "https://online.flippingbook.com/view/954046886/1230", Basis::kFromMemory};
inline constexpr Source kWoodruffGeometry{
    "depth at the side of a Woodruff keyseat: least height less W/2 in the shaft, W/2 + 0.006 in in the hub",
    "https://digilib.universitaspertamina.ac.id/ebook/Shigley%27s%20Mechanical%20Engineering%20Design/files/"
    "basic-html/page418.html",
    Basis::kDerived};

// Y. W must be less than D.
template <class Scalar>
[[nodiscard]] Scalar keyseat_arc_height_mm(const Scalar& diameter_mm, const Scalar& width_mm) {
  using std::sqrt;
  return (diameter_mm - sqrt(diameter_mm * diameter_mm - width_mm * width_mm)) / 2.0;
}

// From the bottom of the keyseat to the opposite side of the shaft, the depth being taken at its side: S.
// Source: kKeyseatGeometry (1 in shaft, 1/4 in square key: 0.859 in).
template <class Scalar>
[[nodiscard]] Scalar keyseat_over_back_mm(const Scalar& diameter_mm, const Scalar& width_mm,
                                          const Scalar& side_depth_mm) {
  return diameter_mm - keyseat_arc_height_mm(diameter_mm, width_mm) - side_depth_mm;
}

// The same in the hub: from the bottom of its keyseat to the opposite side of the bore, T.
// Source: kKeyseatGeometry (1 in bore, 1/4 in square key, 0.125 + 0.005 deep: 1.114 in).
template <class Scalar>
[[nodiscard]] Scalar hub_keyseat_over_back_mm(const Scalar& diameter_mm, const Scalar& width_mm,
                                              const Scalar& side_depth_mm) {
  return diameter_mm - keyseat_arc_height_mm(diameter_mm, width_mm) + side_depth_mm;
}

// Depth of a Woodruff keyseat at its side. Source: kWoodruffGeometry (key 406: 0.2455 in).
template <class Scalar>
[[nodiscard]] Scalar woodruff_side_depth_mm(const Scalar& least_height_mm, const Scalar& width_mm) {
  return least_height_mm - width_mm / 2.0;
}

// How long a round cutter fed straight in has cut when it is that deep: a chord, 2 sqrt(d (F - d)).
// Source: geometry.
template <class Scalar>
[[nodiscard]] Scalar plunged_length_mm(const Scalar& cutter_diameter_mm, const Scalar& depth_mm) {
  using std::sqrt;
  return 2.0 * sqrt(depth_mm * (cutter_diameter_mm - depth_mm));
}

}  // namespace sparewright::handbook
