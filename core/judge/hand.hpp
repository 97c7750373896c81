// The part against its images. Used inside this room only.
#pragma once

#include "core/judge/judge.hpp"
#include "core/shape/recipe.hpp"

namespace sparewright::judge {

// What lies no further out than the tolerance of places that have none of their own cannot be told apart.
[[nodiscard]] double alike_mm(const Subject& subject);

// Whether there is no left and right of it.
[[nodiscard]] bool is_its_own_mirror_image(const Subject& subject, const shape::Work& work);

}  // namespace sparewright::judge
