// The equation of a reading: what it would read if the dimensions were known.
#pragma once

#include <span>
#include <string>

#include "core/base/result.hpp"
#include "core/formula/expression.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::survey {

// The equation in words that expressions are written in, built from the names. d/2 stands for half of a
// diameter; a dimension that is a radius is taken whole there, and doubled where the faces touch it across
// (outside, inside).
//
//   outside, inside              d                     the faces touch the size itself, square across
//   depth                        d                     from the rim the base sits on to the floor
//   edge to hole edge, near      e - h/2               from the straight edge to the nearer side of the hole,
//                                                      on the line square to the edge through its centre
//   edge to hole edge, far       e + h/2               to the farther side, on the same line
//   over pins                    c + a/2 + b/2         outside to outside of two parallel round pins (or plugs
//                                                      in two holes), on the line through both centres
//   between pins                 c - a/2 - b/2         inside to inside, on the same line
//   expression                   as written
// Source: plane geometry of circles touched on the line through their centres.
//
// Fails with kValueNotAccepted where `of` has another count of names, kNameUnknown where one is not a
// dimension, kKindsDoNotMix where one is no diameter, radius or length where that is wanted.
[[nodiscard]] base::Result<std::string> equation_text(const Reading& reading,
                                                      std::span<const Dimension> dimensions);

// The same, read and with its units checked against the kind of the repeats (at least one). Fails also as
// formula::Expression does; the span is into the expression.
[[nodiscard]] base::Result<formula::Formula> equation_of(const Reading& reading,
                                                         std::span<const Dimension> dimensions,
                                                         quantity::UnitSystem system);

}  // namespace sparewright::survey
