// Materials by name and condition.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/bar_stock.hpp"
#include "core/handbook/source.hpp"
#include "core/handbook/work.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// Properties are typical figures of the condition, not minima a part may be sold on; strengths are the low
// end of the range printed.
struct Material {
  std::string_view name;       // "steel 1018"
  std::string_view condition;  // "cold drawn"; may be empty
  WorkGroup group = WorkGroup::kLowCarbonSteel;
  quantity::Density density;
  std::optional<quantity::Pressure> modulus;
  std::optional<quantity::Pressure> yield;
  std::optional<quantity::Pressure> ultimate;
  std::string_view hardness;  // as printed: "126 HB", "78 HRB"; may be empty
  std::optional<double> brinell_low;
  std::optional<double> brinell_high;
  std::optional<double> expansion_per_million;  // 1e-6 per kelvin
  std::optional<BarStandard> inch_bar;          // what an inch cold-drawn bar of it is sold to
  Source source;
  std::string_view from_memory;  // names of the properties no page showed: "density modulus expansion"
};

[[nodiscard]] std::span<const Material> materials();
[[nodiscard]] std::string to_string(const Material& material);  // "steel 1018, cold drawn"

enum class MaterialProperty { kDensity, kModulus, kYield, kUltimate, kHardness, kExpansion };

// Where one property of a material comes from: its row's source, or a nominal figure from memory.
[[nodiscard]] Source source_of(const Material& material, MaterialProperty property);

// The work a piece of it is, with its hardness.
[[nodiscard]] Work work_of(const Material& material);

struct FoundMaterial {
  Material material;
  std::string assumed;  // what had to be assumed, a sentence; empty where nothing
};

// Finds a material by words in any order: "1018 cold drawn", "CD 1018 steel", "aluminum 6061-T6", "12L14",
// "SAE 660". Every word must belong to the material. Where several conditions of one name fit, the usual one
// is taken and said; a word the trade uses for a material (mild steel, drill rod) is taken for what it
// usually means, and said. Fails with kNameUnknown, naming the nearest, or all that fit where several names
// do.
[[nodiscard]] base::Result<FoundMaterial> find_material(std::string_view text);

}  // namespace sparewright::handbook
