#include "core/measuring/needs.hpp"

#include <algorithm>

namespace sparewright::measuring {
namespace {

void add_of(const part::Feature& feature, const part::NamedDimension& named, std::vector<Need>& needs) {
  if (const auto* formula = std::get_if<formula::Formula>(&named.dimension->size)) {
    for (const std::string& name : formula->names())
      needs.push_back({name, feature.name, named.local, named.dimension, false});
  }
  if (const auto* mate = std::get_if<part::OnMate>(&named.dimension->size))
    needs.push_back({mate->mate, feature.name, named.local, named.dimension, true});
}

}  // namespace

std::vector<Need> needs_of(const part::Part& part) {
  std::vector<Need> needs;
  for (const part::Feature& feature : part.features) {
    const std::vector<part::NamedDimension> all = part::dimensions_of(feature);
    for (const part::NamedDimension& named : all)
      add_of(feature, named, needs);
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    if (hole == nullptr || hole->mate.empty()) continue;
    const auto diameter =
        std::find_if(all.begin(), all.end(), [](const auto& named) { return named.local == "diameter"; });
    if (diameter != all.end())
      needs.push_back({hole->mate, feature.name, "diameter", diameter->dimension, true});
  }
  return needs;
}

}  // namespace sparewright::measuring
