// The dangers of the work, named where they sit. Common practice of the trade; no list is complete.
#pragma once

#include <string>
#include <vector>

#include "core/handbook/work.hpp"

namespace sparewright::route {

// What every spindle asks, said once for a job.
[[nodiscard]] std::string spindle_caution();

// What a material asks: chips that burn, dust, lead, fumes. Empty where nothing is known against it.
// name: as the materials list has it ("bronze C932"); leaded ones are told by it.
[[nodiscard]] std::vector<std::string> material_cautions(handbook::WorkGroup group, std::string_view name);

}  // namespace sparewright::route
