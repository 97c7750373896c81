#include "core/handbook/shaft_size.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "core/quantity/typed.hpp"

namespace sparewright::handbook {

using quantity::UnitSystem;
namespace unit = quantity::unit;

base::Result<ShaftSize> read_shaft_size(std::string_view text) {
  const auto typed = quantity::read_number(text, quantity::Kind::kDiameter, std::nullopt);
  if (!typed) return tl::unexpected(typed.error());
  if (typed->base <= 0.0) return base::fail(base::Code::kSizeNotPositive, typed->typed, {}, "the diameter");
  constexpr std::array<quantity::Unit, 4> kMetric{unit::millimetre, unit::centimetre, unit::metre,
                                                  unit::micrometre};
  const bool metric = std::find(kMetric.begin(), kMetric.end(), typed->unit) != kMetric.end();
  return ShaftSize{typed->diameter(), metric ? UnitSystem::kMetric : UnitSystem::kInch};
}

std::string to_string(const ShaftSize& size) {
  return size.system == UnitSystem::kInch ? fmt::format("{:.4f} in", size.diameter.in(unit::inch))
                                          : fmt::format("{:g} mm", size.diameter.in(unit::millimetre));
}

}  // namespace sparewright::handbook
