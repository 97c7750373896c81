#include "core/judge/finishing_tools.hpp"

namespace sparewright::judge {
namespace {

using part::Form;
using part::HoleMake;
using shop::ToolKind;

std::vector<ToolKind> for_hole(HoleMake make) {
  switch (make) {
    case HoleMake::kDrilled:
      return {ToolKind::kTwistDrill};
    case HoleMake::kBored:
      return {ToolKind::kBoringHead};
    case HoleMake::kReamed:
      return {ToolKind::kReamer};
    case HoleMake::kTapped:
      return {ToolKind::kTap};
    case HoleMake::kCounterbored:
    case HoleMake::kSpotfaced:
      return {ToolKind::kCounterbore, ToolKind::kEndMill};
    case HoleMake::kCountersunk:
      return {ToolKind::kCountersink};
    case HoleMake::kThroughAndTapped:
      return {};  // its cuts are not worked out
  }
  return {};
}

std::vector<ToolKind> milled(Form form) {
  switch (form) {
    case Form::kSlot:
    case Form::kPocket:
    case Form::kKeyseat:
      return {ToolKind::kEndMill};
    case Form::kChamfer:
      return {ToolKind::kCountersink, ToolKind::kSpotDrill};
    case Form::kSlit:
    case Form::kSplit:
      return {ToolKind::kSlittingSaw};
    case Form::kDimple:
      return {ToolKind::kCountersink, ToolKind::kSpotDrill, ToolKind::kTwistDrill};
    case Form::kTaperPinHole:
      return {ToolKind::kReamer};
    case Form::kSpringPinHole:
      return {ToolKind::kTwistDrill, ToolKind::kReamer};
    default:
      return {};
  }
}

std::vector<ToolKind> turned(Form form) {
  switch (form) {
    case Form::kGroove:
      return {ToolKind::kGroovingTool, ToolKind::kPartingTool};
    case Form::kThread:
      return {ToolKind::kThreadingTool, ToolKind::kDie};
    case Form::kCentreHole:
      return {ToolKind::kCentreDrill};
    case Form::kKnurl:
      return {ToolKind::kKnurlingTool};
    case Form::kChuckingPiece:
      return {ToolKind::kPartingTool};
    default:
      return {ToolKind::kTurningTool};
  }
}

std::vector<ToolKind> by_hand(const part::Formed& formed) {
  switch (formed.form) {
    case Form::kSplit:
    case Form::kSlit:
      return {ToolKind::kSawBlade, ToolKind::kSlittingSaw};
    case Form::kThread:
      return {ToolKind::kDie};
    case Form::kBush:
      return formed.is_bonded ? std::vector<ToolKind>{} : std::vector{ToolKind::kPress};
    default:
      return {ToolKind::kFile};
  }
}

}  // namespace

std::vector<ToolKind> finishing_tools(const route::Setup& setup, const part::Feature& feature) {
  const bool on_lathe = setup.machine.kind == shop::MachineKind::kLathe;
  if (const auto* hole = std::get_if<part::Hole>(&feature.shape)) {
    const bool by_bar = on_lathe && hole->make == HoleMake::kBored;
    return by_bar ? std::vector{ToolKind::kBoringBar} : for_hole(hole->make);
  }
  const auto* formed = std::get_if<part::Formed>(&feature.shape);
  if (on_lathe) return formed != nullptr ? turned(formed->form) : std::vector{ToolKind::kTurningTool};
  if (setup.machine.kind == shop::MachineKind::kSaw) return {ToolKind::kSawBlade, ToolKind::kSlittingSaw};
  if (shop::is_by_hand(setup.machine.kind))
    return formed != nullptr ? by_hand(*formed) : std::vector{ToolKind::kFile};
  return formed != nullptr ? milled(formed->form) : std::vector{ToolKind::kEndMill};
}

}  // namespace sparewright::judge
