// Where the plan view of a setup lies on paper: the scale, the jaws, the room kept free round the work.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/route/sheet.hpp"
#include "drawing/display_list.hpp"
#include "drawing/geometry.hpp"
#include "drawing/hatch.hpp"
#include "drawing/held_views.hpp"
#include "drawing/text.hpp"

namespace sparewright::drawing {

// The room a picture may take, each way at least kLeastPicture_mm, and how much larger than usual its words and marks are.
struct PictureRoom {
  double width_mm = 0.0;
  double height_mm = 0.0;
  double larger = 1.0;
};
inline constexpr double kLeastPicture_mm = 50.0;  // for letters of the usual size; times `larger` else

// The words and marks of the picture, all mm.
struct PlanType {
  TextStyle jaw{2.4, Face::kBold};
  TextStyle cut{2.4, Face::kBold};  // names of what is cut here
  TextStyle other{2.1, Face::kRegular};
  TextStyle side{2.2, Face::kRegular};
  TextStyle zero{2.2, Face::kBold};
  TextStyle axis{2.6, Face::kBold};
  TextStyle legend{1.9, Face::kRegular};
  double compass_mm = 12.0;            // the corner that shows +X and +Y
  double zero_mm = 2.6;                // half the diamond
  Weight cut_here = Weight::kVisible;  // against the rest, which is thin
};
[[nodiscard]] PlanType plan_type(double larger);

struct PlanFrame {
  PlanType type;
  double scale = 1.0;  // mm on paper for one mm of work
  Point zero;          // the picked-up zero on paper
  Box work;
  Box picture;  // all of it but the legend, which stands below
  Box legend;
  Box end_view;  // within the legend's height; no width where there is none
  double end_scale = 1.0;
  double end_jaw_mm = 0.0;  // how thick a jaw is drawn there
  double end_tool_mm =
      0.0;        // over the work, for the arrow of the tool; a jaw's name and the tool's above one another
  Box fixed_jaw;  // as far as it is drawn; no width where there are no jaws
  Box moving_jaw;
  bool jaws_run_on_left = false;  // broken off near the edge of the picture
  bool jaws_run_on_right = false;
  std::vector<std::string> left_side;  // names, broken into lines
  std::vector<std::string> right_side;
  std::vector<std::string> against_fixed_jaw;
  std::vector<std::string> against_moving_jaw;
  std::vector<std::string> legend_lines;
  std::vector<std::string> not_named;  // sides whose names would leave no room for the work

  [[nodiscard]] Point on_paper(double x_mm, double y_mm) const {
    return {zero.x_mm + scale * x_mm, zero.y_mm - scale * y_mm};
  }
  [[nodiscard]] Box on_paper(const route::PlanView::Rectangle& r) const;
};

inline constexpr Hatching kFixedJawHatching{Slant::kRising, 1.8};
inline constexpr Hatching kMovingJawHatching{Slant::kFalling, 1.8};
inline constexpr double kEndBed_mm = 1.6;  // under it

// The words over the jaws in the view from the right.
inline constexpr std::array kEndJawNames{"moving", "FIXED"};

// The frame may be lower than its room. Fails with kSizeNotPositive where the work has no length or width, or is not known.
// held  nullptr where the work cannot be seen as it is
[[nodiscard]] base::Result<PlanFrame> plan_frame(const route::PlanView& view, const HeldViews* held,
                                                 const PictureRoom& room, const Ruler& ruler);

}  // namespace sparewright::drawing
