#include "core/judge/mill_tools.hpp"

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
  }
  return {};
}

std::vector<ToolKind> for_form(Form form) {
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

}  // namespace

std::vector<ToolKind> mill_finishing_tools(const part::Feature& feature) {
  if (const auto* hole = std::get_if<part::Hole>(&feature.shape)) return for_hole(hole->make);
  if (const auto* formed = std::get_if<part::Formed>(&feature.shape)) return for_form(formed->form);
  return {ToolKind::kEndMill};
}

}  // namespace sparewright::judge
