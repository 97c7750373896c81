// Which features' lines are worked out on a mill, as the work is held.
#include "core/route/route.hpp"

namespace sparewright::route {
namespace {

using part::Form;

// A saw on an upright spindle cuts level: its thickness lies up and down.
bool saw_lies_flat(const part::Formed& formed, part::Axis upright) {
  if (formed.form == Form::kSplit) return part::axis_of(formed.side) == upright;
  return part::axis_of(formed.side) != upright && part::axis_of(formed.of_into) != upright;
}

bool works_out(const part::Formed& formed, part::Face up) {
  switch (formed.form) {
    case Form::kSlot:
    case Form::kPocket:
    case Form::kKeyseat:
    case Form::kDimple:
    case Form::kTaperPinHole:
    case Form::kSpringPinHole:
      return part::axis_of(formed.side) == part::axis_of(up);
    case Form::kChamfer:  // upright edges and rims are not
      return formed.edge && (formed.side == up || *formed.edge == up);
    case Form::kSlit:
    case Form::kSplit:
      return saw_lies_flat(formed, part::axis_of(up));
    default:
      return false;
  }
}

}  // namespace

bool mill_works_out(const OnMill& on, const part::Feature& feature) {
  if (std::holds_alternative<part::Flat>(feature.shape)) return true;
  if (const auto* hole = std::get_if<part::Hole>(&feature.shape))
    return !hole->lean && !hole->around_bar && hole->placed_by == part::PlacedBy::kCoordinates;
  return works_out(std::get<part::Formed>(feature.shape), part::opposite(on.holding.sits_on));
}

}  // namespace sparewright::route
