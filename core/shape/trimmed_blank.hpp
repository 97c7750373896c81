// The blank without what flats take off it all over.
#pragma once

#include "core/shape/recipe.hpp"

namespace sparewright::shape {

// The blank of the work, smaller where a cut takes a whole side of a box down to a plane; the same metal is left of
// both, and its faces are where the metal ends. A blank that is no box square to the part frame comes back as it is, and so
// does one of which nothing would be left.
[[nodiscard]] Primitive trimmed_blank(const Work& work);

}  // namespace sparewright::shape
