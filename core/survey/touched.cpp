#include "core/survey/touched.hpp"

#include <algorithm>

#include <fmt/format.h>

namespace sparewright::survey {

std::string_view name_of(TouchedForm form) {
  switch (form) {
    case TouchedForm::kCircle:
      return "circle";
    case TouchedForm::kLine:
      return "line";
    case TouchedForm::kPlane:
      return "plane";
  }
  return "";
}

std::string_view name_of(TipSide side) {
  constexpr std::array<std::string_view, 8> kNames{"inside", "outside", "left",  "right",
                                                   "front",  "back",    "below", "above"};
  return kNames.at(static_cast<std::size_t>(side));
}

std::string_view name_of(HoleLayout layout) {
  return layout == HoleLayout::kCircle ? "circle" : "row";
}

bool is_round(TipSide side) {
  return side == TipSide::kInside || side == TipSide::kOutside;
}

std::size_t axis_of(TipSide side) {
  switch (side) {
    case TipSide::kFront:
    case TipSide::kBack:
      return 1;
    case TipSide::kBelow:
    case TipSide::kAbove:
      return 2;
    default:
      return 0;
  }
}

bool is_upward(TipSide side) {
  return side == TipSide::kRight || side == TipSide::kBack || side == TipSide::kAbove;
}

const ToldRow& row_of(Told told) {
  return *std::find_if(kToldRows.begin(), kToldRows.end(),
                       [&](const ToldRow& row) { return row.told == told; });
}

std::vector<Told> told_of(const Touched& touched) {
  switch (touched.form) {
    case TouchedForm::kCircle:
      return {Told::kX, Told::kY, Told::kDiameter, Told::kRadius};
    case TouchedForm::kLine:
      return {Told::kAt, Told::kLean};
    case TouchedForm::kPlane:
      break;
  }
  std::vector<Told> told{Told::kAt};
  constexpr std::array kLeans{Told::kLeanX, Told::kLeanY, Told::kLeanZ};
  for (std::size_t axis = 0; axis < kLeans.size(); ++axis) {
    if (axis != axis_of(touched.side)) told.push_back(kLeans.at(axis));
  }
  return told;
}

std::string touched_path(std::string_view form, Told told) {
  return fmt::format("touched/{}/{}", form, row_of(told).figure);
}

}  // namespace sparewright::survey
