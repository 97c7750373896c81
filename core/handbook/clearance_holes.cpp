#include "core/handbook/clearance_holes.hpp"

#include "core/handbook/lookup.hpp"
#include "core/handbook/screw_size.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
namespace unit = quantity::unit;

constexpr ClearanceHole kClearanceHoles[] = {
#include "generated/core/handbook/clearance_holes.inc"
};

}  // namespace

base::Result<ClearanceHole> clearance_hole(std::string_view size, ClearanceFit fit) {
  const auto wanted = read_screw_size(size);
  if (!wanted) return tl::unexpected(wanted.error());
  for (const ClearanceHole& hole : kClearanceHoles) {
    if (hole.size == wanted->name && hole.fit == fit) return hole;
  }
  return not_tabled_among("the clearance hole", wanted->name,
                          names_of(kClearanceHoles, [](const ClearanceHole& hole) { return hole.size; }));
}

}  // namespace sparewright::handbook
