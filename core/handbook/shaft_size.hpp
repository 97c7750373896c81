// A shaft or bore as people write it, with the system it is written in: keys, rings and pins of inch and
// metric machines are of different standards.
#pragma once

#include <string>
#include <string_view>

#include "core/base/result.hpp"
#include "core/quantity/quantity.hpp"
#include "core/quantity/unit.hpp"

namespace sparewright::handbook {

struct ShaftSize {
  quantity::Diameter diameter;  // more than zero
  quantity::UnitSystem system = quantity::UnitSystem::kInch;
};

// Reads "30 mm", "1-1/4 in", "1-1/4", "1.250 in". A number without a unit that is no fraction fails, since it
// may be either; so does what is not more than zero (kSizeNotPositive), and whatever read_number refuses.
[[nodiscard]] base::Result<ShaftSize> read_shaft_size(std::string_view text);

// "1.2500 in", "30 mm".
[[nodiscard]] std::string to_string(const ShaftSize& size);

}  // namespace sparewright::handbook
