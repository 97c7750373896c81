#include "drawing/end_view.hpp"

#include <algorithm>
#include <optional>

#include "drawing/hatch.hpp"
#include "drawing/view_lines.hpp"

namespace sparewright::drawing {
namespace {

constexpr double kToolHead_mm = 2.2;
constexpr double kOverWork_mm = 1.0;
constexpr double kOverJaw_mm = 0.8;

class EndView {
 public:
  EndView(DisplayList& list, const PlanFrame& frame, const route::PlanView& view, const HeldViews& held,
          const Ruler& ruler)
      : list_(list), frame_(frame), view_(view), held_(held), ruler_(ruler) {
    const Box& box = frame.end_view;
    near_mm_ = box.left_mm + frame.end_jaw_mm;
    far_mm_ = box.right_mm - frame.end_jaw_mm;
    bed_mm_ = box.bottom_mm - kEndBed_mm;
  }

  void draw() {
    const Box& box = frame_.end_view;
    const double jaw_top = bed_mm_ - frame_.end_scale * view_.jaw_high_mm;
    draw_jaw({box.left_mm, jaw_top, near_mm_, bed_mm_}, kMovingJawHatching, kEndJawNames.front(),
             Anchor::kLeft);
    draw_jaw({far_mm_, jaw_top, box.right_mm, bed_mm_}, kFixedJawHatching, kEndJawNames.back(),
             Anchor::kRight);
    add_outline(list_, {box.left_mm, bed_mm_, box.right_mm, box.bottom_mm}, Weight::kThin);
    draw_parallels();
    std::vector<Segment> ground;
    add_view(list_, ground, held_.from_right,
             {{near_mm_ - frame_.end_scale * view_.work.near_mm, bed_mm_}, frame_.end_scale},
             [&](Seen seen, bool cut_here) { return weight(seen, cut_here); });
    draw_tool(std::min(jaw_top, bed_mm_ - frame_.end_scale * held_.from_right.high.v));
  }

 private:
  [[nodiscard]] std::optional<Weight> weight(Seen seen, bool cut_here) const {
    if (seen == Seen::kHidden) return cut_here ? std::optional(Weight::kHidden) : std::nullopt;
    return cut_here ? frame_.type.cut_here : Weight::kThin;
  }

  void draw_jaw(const Box& jaw, const Hatching& hatching, const char* name, Anchor anchor) {
    for (const Segment& s : hatch(jaw, hatching, {}))
      list_.emplace_back(Line{s.from, s.to, Weight::kHatch});
    add_outline(list_, jaw, Weight::kThin);
    const TextStyle& style = frame_.type.legend;
    const double x = anchor == Anchor::kLeft ? jaw.left_mm : jaw.right_mm;
    const double y = jaw.top_mm - kOverJaw_mm - ruler_.measure(name, style).below_mm;
    list_.emplace_back(text(ruler_, name, {x, y}, style, anchor));
  }

  void draw_parallels() {
    const double thick = frame_.end_scale * view_.parallel_mm;
    const double top = bed_mm_ - frame_.end_scale * view_.parallel_high_mm;
    if (!(thick > 0.0 && top < bed_mm_ && 2.0 * thick < far_mm_ - near_mm_)) return;
    if (view_.parallels_in_middle) {
      const double middle = (near_mm_ + far_mm_) / 2.0;
      add_outline(list_, {middle - thick, top, middle, bed_mm_}, Weight::kThin);
      add_outline(list_, {middle, top, middle + thick, bed_mm_}, Weight::kThin);
      return;
    }
    add_outline(list_, {near_mm_, top, near_mm_ + thick, bed_mm_}, Weight::kThin);
    add_outline(list_, {far_mm_ - thick, top, far_mm_, bed_mm_}, Weight::kThin);
  }

  void draw_tool(double work_top) {
    const double x = (near_mm_ + far_mm_) / 2.0;
    const Point tip{x, work_top - kOverWork_mm};
    const Point start{x, frame_.end_view.top_mm};
    list_.emplace_back(Line{start, {x, tip.y_mm - kToolHead_mm / 2.0}, Weight::kBold});
    add_arrowhead(list_, start, tip, kToolHead_mm);
    const TextSize size = ruler_.measure("tool", frame_.type.legend);
    list_.emplace_back(
        text(ruler_, "tool", {x + kOverJaw_mm, start.y_mm + size.above_mm}, frame_.type.legend));
  }

  DisplayList& list_;
  const PlanFrame& frame_;
  const route::PlanView& view_;
  const HeldViews& held_;
  const Ruler& ruler_;
  double near_mm_ = 0.0;  // on paper: the jaw's faces and the bed
  double far_mm_ = 0.0;
  double bed_mm_ = 0.0;
};

}  // namespace

void add_end_view(DisplayList& list, const PlanFrame& frame, const route::PlanView& view,
                  const HeldViews& held, const Ruler& ruler) {
  EndView(list, frame, view, held, ruler).draw();
}

}  // namespace sparewright::drawing
