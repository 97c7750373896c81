// The cutters of a hole. Used inside this room only.
#pragma once

#include <vector>

#include "core/part/form_cutters.hpp"

namespace sparewright::part {

[[nodiscard]] std::vector<shape::Cutter> hole_cutters(const Feature& feature, const Hole& hole,
                                                      const Ask& ask);

}  // namespace sparewright::part
