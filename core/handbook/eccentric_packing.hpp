// Packing under one jaw of a three-jaw chuck to turn an eccentric.
//
// The jaws move together. With a packing under one jaw the work's axis moves away from that jaw by the throw e; it then
// runs out by 2 e. How thick the packing must be depends on how the jaws meet the work (R its radius):
// - flat jaw faces wide enough that the work rests on their middle part: exactly 1.5 e, whatever R;
// - jaws that meet it on a narrow line: 1.5 e + sqrt(R^2 - 0.75 e^2) - R, which is less;
// - flat faces of width w that the work overhangs: between the two, solved here (half of w in the place of 0).
// For e = R/10 wide faces need 1.5 e and narrow ones 1.46 e. Whatever was reckoned, the throw is proved by a dial
// indicator: it must show 2 e in one turn. Source: geometry; 1.5 e is the old shop rule (common
// practice).
#pragma once

#include <cmath>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

inline constexpr Source kOneAndAHalfThrow{
    "packing for an eccentric in a three-jaw chuck: one and a half times the throw", "",
    Basis::kCommonPractice};
inline constexpr Source kPackingGeometry{
    "packing for an eccentric in a three-jaw chuck, geometry of the jaws", "", Basis::kDerived};

// Narrow jaws, and jaw faces of the width given (0: narrow). Wants throw and radius over 0, throw up to the radius. With
// e = 5, R = 25 mm: 7.5 on wide faces, 7.12 on narrow ones.
template <class Scalar>
[[nodiscard]] Scalar eccentric_packing_mm(const Scalar& throw_mm, const Scalar& radius_mm,
                                          double jaw_width_mm) {
  using std::sqrt;
  // A jaw without packing stands 60 degrees off the throw: the work's centre lies beside its middle line by so much.
  const Scalar aside = throw_mm * (std::sqrt(3.0) / 2.0) - jaw_width_mm / 2.0;
  if (aside <= 0.0) return 1.5 * throw_mm;  // the work rests on the face, not on its edge
  return 1.5 * throw_mm + sqrt(radius_mm * radius_mm - aside * aside) - radius_mm;
}

struct EccentricPacking {
  quantity::Length packing;      // for these jaws
  quantity::Length by_the_rule;  // 1.5 e
  quantity::Length narrow;       // were the jaws mere lines
  quantity::Length run_out;      // what an indicator shows in one turn: 2 e
};

// Fails with kSizeNotPositive for throw or diameter, kValueNotAccepted for a negative width of jaw or a throw over half
// the radius: then a jaw has no hold worth speaking of, and a four-jaw chuck or a fixture is the way.
[[nodiscard]] base::Result<EccentricPacking> eccentric_packing(quantity::Length eccentric_throw,
                                                               quantity::Diameter work,
                                                               quantity::Length jaw_width);

// The throw a packing gives with these jaws: the inverse, to a nanometre. Fails in the same cases.
[[nodiscard]] base::Result<quantity::Length> throw_of_packing(quantity::Length packing,
                                                              quantity::Diameter work,
                                                              quantity::Length jaw_width);

}  // namespace sparewright::handbook
