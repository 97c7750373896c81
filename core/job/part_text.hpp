// Reading the new part: blank and features.
#pragma once

#include <string>

#include "core/handbook/materials.hpp"
#include "core/job/dimension_text.hpp"
#include "core/part/part.hpp"

namespace sparewright::job {

struct MaterialText {
  std::optional<handbook::Material> material;
  std::string assumed;
};
// blank.material, looked up in the handbook. "not known" is accepted: then speeds and weight are NOT KNOWN.
[[nodiscard]] MaterialText read_material(const text::TableReader& blank);

[[nodiscard]] part::Blank read_blank(const text::TableReader& blank, const MaterialText& material,
                                     const Names& names);

// All features; names given twice and places without a start are told.
[[nodiscard]] std::vector<part::Feature> read_features(const text::TableReader& job, part::BlankShape blank,
                                                       const Names& names);

[[nodiscard]] part::GeneralTolerances read_general_tolerances(const text::TableReader& job,
                                                              quantity::UnitSystem system);

}  // namespace sparewright::job
