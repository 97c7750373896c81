// A pitch or lead as people write it: threads to the inch, or a length.
#pragma once

#include <optional>
#include <string_view>

#include "core/base/result.hpp"
#include "core/quantity/quantity.hpp"
#include "core/quantity/unit.hpp"

namespace sparewright::handbook {

struct TypedPitch {
  quantity::Length pitch;                                     // more than zero
  quantity::UnitSystem system = quantity::UnitSystem::kInch;  // it was written in
};

// Reads 8 tpi, 4-1/2 tpi, 16 threads per inch, 16 per inch, 1.25 mm, 1/8 in. A bare number takes the unit of `bare`, and
// fails where there is none. Fails with kNotANumber or kSizeNotPositive, and as read_number; accepted names examples.
[[nodiscard]] base::Result<TypedPitch> read_pitch(std::string_view text,
                                                  std::optional<quantity::UnitSystem> bare = {});

}  // namespace sparewright::handbook
