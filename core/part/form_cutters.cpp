#include "core/part/form_cutters.hpp"

#include "core/part/form_sizes.hpp"

namespace sparewright::part {

std::vector<shape::Cutter> form_cutters(const Feature& feature, const Formed& formed, const Ask& ask) {
  const Sizes s{feature, formed, ask};
  switch (formed.form) {
    case Form::kSlot:
    case Form::kKeyseat:
    case Form::kPocket:
    case Form::kDovetail:
    case Form::kDimple:
    case Form::kTaperPinHole:
    case Form::kSpringPinHole:
    case Form::kSplit:
    case Form::kChuckingPiece:
      return milled_cutters(s);
    case Form::kChamfer:
    case Form::kRoundedEdge:
      return edge_cutters(s);
    case Form::kTurned:
    case Form::kThread:
    case Form::kGroove:
    case Form::kTaper:
    case Form::kCentreHole:
    case Form::kKnurl:
    case Form::kEccentric:
    case Form::kCrownedEnd:
      return turned_cutters(s);
    case Form::kRecess:
    case Form::kKeyway:
    case Form::kSlit:
    case Form::kOilGroove:
      return cutters_in_hole(s);
    case Form::kProfile:
      return profile_cutters(s);
    case Form::kBush:  // takes nothing: it is a piece of its own
      return {};
  }
  return {};
}

}  // namespace sparewright::part
