// Counterbores for socket head cap screws. Four inch sets are in print and they disagree (1/4 in: 0.4375,
// 0.4062, 0.400 and 0.416), so a counterbore always says which set it is of.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

enum class CounterboreSet {
  kAppendix,      // ASME B18.3 appendix, fractional counterbores (from memory)
  kTight,         // web chart of fractional counterbores
  kInHouseClose,  // aerospace builder's in-house chart, over a close clearance hole
  kInHouseFree,   // the same over a free clearance hole
  kMetric,        // DIN 974 type, medium
};
[[nodiscard]] std::string_view name_of(CounterboreSet set);  // "ASME B18.3 appendix"

struct Counterbore {
  CounterboreSet set = CounterboreSet::kAppendix;
  std::string_view size;  // "#10", "5/16", "M8"
  quantity::Diameter diameter;
  std::optional<quantity::Length>
      depth;              // where the set prints none, the screw's greatest head height is the depth
  std::string_view note;  // what another source gives; empty where none is known
  Source source;
};

// The counterbore that is used unless another set is asked for: for inch screws the ASME B18.3 appendix,
// whose counterbores are fractional stock tools and clear the largest head by 0.03 in or more; for metric
// screws the one set there is. size as in read_screw_size. Fails as that does, or with kNotTabled.
[[nodiscard]] base::Result<Counterbore> counterbore(std::string_view size);
[[nodiscard]] base::Result<Counterbore> counterbore(std::string_view size, CounterboreSet set);

// What every set gives for a size, in the order of CounterboreSet. Fails with kNotTabled where none has it.
[[nodiscard]] base::Result<std::vector<Counterbore>> counterbores(std::string_view size);

}  // namespace sparewright::handbook
