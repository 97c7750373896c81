// What to do about one doubt. Used inside this room only.
#pragma once

#include "core/measuring/measuring.hpp"

namespace sparewright::measuring {

// By the largest cause in it: more repeats for a scatter, a finer instrument for its error or its steps, a proved zero for a
// zero, a thermometer for a temperature. The numbers are what it has to become so that all is known well enough, the rest of that
// reading's causes made smaller alike.
[[nodiscard]] Remedy remedy_for(const survey::Doubt& doubt, const Subject& subject);

}  // namespace sparewright::measuring
