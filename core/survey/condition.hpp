// The state of the place that was measured.
#pragma once

#include <string_view>

namespace sparewright::survey {

enum class Condition { kSound, kWorn, kBent, kAcrossABreak };

[[nodiscard]] std::string_view name_of(Condition condition);

}  // namespace sparewright::survey
