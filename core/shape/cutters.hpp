// The usual cuts as cutters, in the trade's own sizes.
//
// Places and directions are in the part frame. `entry` is where the axis meets the surface the cut starts
// from; on work that is not flat there, the highest point of the metal round the hole. `into` leads into the
// metal, any length.
#pragma once

#include <string>

#include "core/quantity/quantity.hpp"
#include "core/shape/recipe.hpp"

namespace sparewright::shape {

// Both ends open: `length` is the metal gone through, from entry to where the axis leaves it.
[[nodiscard]] Cutter through_hole(std::string feature, const Point& entry, const Vector& into,
                                  quantity::Diameter diameter, quantity::Length length);

// Full diameter to `depth`, then the point.
[[nodiscard]] Cutter drilled_hole(std::string feature, const Point& entry, const Vector& into,
                                  quantity::Diameter diameter, quantity::Length depth,
                                  quantity::Angle point = quantity::Angle::from_base(kUsualPoint_rad));

// A counterbore, a spotface, a bored or end-milled blind hole.
[[nodiscard]] Cutter flat_bottomed_hole(std::string feature, const Point& entry, const Vector& into,
                                        quantity::Diameter diameter, quantity::Length depth);

// diameter at the surface, angle included: 82 or 90 degrees for screw heads, 60 for a centre.
[[nodiscard]] Cutter countersink(std::string feature, const Point& entry, const Vector& into,
                                 quantity::Diameter diameter, quantity::Angle angle);

// A step, a flat, a straight slot with square ends, a pocket: the metal between two opposite corners of a box
// square to `frame`, given in its coordinates. The corners may come in any order; `open` says which faces are
// in the air.
[[nodiscard]] Cutter milled_box(std::string feature, const Frame& frame, const Point& corner,
                                const Point& opposite, Open open);

}  // namespace sparewright::shape
