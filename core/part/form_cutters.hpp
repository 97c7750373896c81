// The cutters of a formed feature. Used inside this room only.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/part/feature.hpp"
#include "core/shape/recipe.hpp"

namespace sparewright::part {

// Gives a figure's value in mm by its name.
using Ask = std::function<double(const std::string&)>;

[[nodiscard]] std::vector<shape::Cutter> form_cutters(const Feature& feature, const Formed& formed,
                                                      const Ask& ask);

}  // namespace sparewright::part
