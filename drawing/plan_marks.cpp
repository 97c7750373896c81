#include "drawing/plan_marks.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "drawing/view_lines.hpp"

namespace sparewright::drawing {
namespace {

constexpr double kLeastRadius_mm = 0.8;  // of a hole as drawn
constexpr double kPastRim_mm = 1.8;      // centre lines run on so far
constexpr double kEyeShare = 0.35;       // of the diamond

Box about(Point middle, double half_mm) {
  return grown({middle.x_mm, middle.y_mm, middle.x_mm, middle.y_mm}, half_mm);
}

class Marking {
 public:
  Marking(const route::PlanView& view, const View* seen, const PlanFrame& frame)
      : view_(view), seen_(seen), frame_(frame) {}

  PlanMarks draw() {
    marks_.ground.area = frame_.picture;
    if (frame_.fixed_jaw.width() > 0.0) {
      draw_jaw(frame_.fixed_jaw);
      draw_jaw(frame_.moving_jaw);
      draw_parallels();
    }
    if (seen_ != nullptr) {
      add_view(marks_.list, marks_.ground.lines, *seen_, {frame_.zero, frame_.scale},
               [&](Seen seen, bool cut_here) {
                 return seen == Seen::kVisible ? std::optional(weight(cut_here)) : std::nullopt;
               });
    } else {
      outline(frame_.work, Weight::kThin);
    }
    for (const auto& flat : view_.flats)
      draw_box(flat, marks_.flats);
    for (const auto& form : view_.forms)
      draw_box(form, marks_.forms);
    for (const auto& hole : view_.holes)
      draw_hole(hole);
    draw_centre_lines();
    draw_zero();
    return std::move(marks_);
  }

 private:
  [[nodiscard]] Weight weight(bool cut_here) const { return cut_here ? frame_.type.cut_here : Weight::kThin; }

  void line(Point from, Point to, Weight weight) {
    marks_.list.emplace_back(Line{from, to, weight});
    marks_.ground.lines.push_back({from, to});
  }

  void outline(const Box& box, Weight weight) {
    line({box.left_mm, box.top_mm}, {box.right_mm, box.top_mm}, weight);
    line({box.right_mm, box.top_mm}, {box.right_mm, box.bottom_mm}, weight);
    line({box.right_mm, box.bottom_mm}, {box.left_mm, box.bottom_mm}, weight);
    line({box.left_mm, box.bottom_mm}, {box.left_mm, box.top_mm}, weight);
  }

  // A jaw that runs on ends in the wave of a break.
  void jaw_end(double x_mm, const Box& jaw, bool runs_on) {
    if (!runs_on) return line({x_mm, jaw.top_mm}, {x_mm, jaw.bottom_mm}, Weight::kThin);
    const double wide = add_wave(marks_.list, x_mm, jaw.top_mm, jaw.bottom_mm);
    marks_.ground.taken.push_back({x_mm - wide, jaw.top_mm, x_mm + wide, jaw.bottom_mm});
  }

  void draw_jaw(const Box& jaw) {
    marks_.ground.hatched.push_back(jaw);
    line({jaw.left_mm, jaw.top_mm}, {jaw.right_mm, jaw.top_mm}, Weight::kThin);
    line({jaw.left_mm, jaw.bottom_mm}, {jaw.right_mm, jaw.bottom_mm}, Weight::kThin);
    jaw_end(jaw.left_mm, jaw, frame_.jaws_run_on_left);
    jaw_end(jaw.right_mm, jaw, frame_.jaws_run_on_right);
  }

  // Where they lie hidden under the work.
  void draw_parallels() {
    const Box& work = frame_.work;
    const double thick = frame_.scale * view_.parallel_mm;
    const double left = std::max(work.left_mm, frame_.fixed_jaw.left_mm);
    const double right = std::min(work.right_mm, frame_.fixed_jaw.right_mm);
    if (!(thick > 0.0 && 2.0 * thick < work.height() && left < right)) return;
    const double middle = (work.top_mm + work.bottom_mm) / 2.0;
    const std::array edges = view_.parallels_in_middle
                                 ? std::array{middle - thick, middle + thick}
                                 : std::array{work.top_mm + thick, work.bottom_mm - thick};
    for (const double y : edges)
      line({left, y}, {right, y}, Weight::kHidden);
  }

  // Metal that is there: earlier cuts may have left less than the blank.
  [[nodiscard]] Box as_far_as_seen(Box box) const {
    if (seen_ == nullptr) return box;
    const Point upper_left = frame_.on_paper(seen_->low.u, seen_->high.v);
    const Point lower_right = frame_.on_paper(seen_->high.u, seen_->low.v);
    box.left_mm = std::max(box.left_mm, upper_left.x_mm);
    box.top_mm = std::max(box.top_mm, upper_left.y_mm);
    box.right_mm = std::min(box.right_mm, lower_right.x_mm);
    box.bottom_mm = std::min(box.bottom_mm, lower_right.y_mm);
    return box;
  }

  // False, and noted, where it is not within the picture or not known (a NaN is within nothing).
  bool is_shown(const Box& box, const std::string& name) {
    const bool known = box.left_mm <= box.right_mm && box.top_mm <= box.bottom_mm;
    if (known && holds(frame_.picture, box)) return true;
    if (!name.empty()) marks_.not_shown.push_back(name);
    return false;
  }

  void draw_box(const route::PlanView::Rectangle& cut, std::vector<PlanMarks::Flat>& boxes) {
    const Box box = as_far_as_seen(frame_.on_paper(cut));
    if (!is_shown(box, cut.name)) return;
    if (seen_ == nullptr) outline(box, weight(cut.cut_here));
    boxes.push_back({cut.name, box, cut.cut_here});
  }

  void draw_hole(const route::PlanView::Circle& hole) {
    const Point centre = frame_.on_paper(hole.x_mm, hole.y_mm);
    const double radius = frame_.scale * hole.radius_mm;
    if (!is_shown(about(centre, std::isnan(radius) ? radius : std::max(radius, kLeastRadius_mm)), hole.name))
      return;
    const Disc disc{centre, std::max(radius, kLeastRadius_mm)};
    if (seen_ == nullptr || radius < kLeastRadius_mm) {
      marks_.list.emplace_back(Circle{disc.centre, disc.radius_mm, weight(hole.cut_here)});
    }
    marks_.ground.rounds.push_back(disc);
    marks_.rounds.push_back({hole.name, disc, hole.cut_here});
  }

  void draw_centre_lines() {
    for (const auto& round : marks_.rounds) {
      if (!round.cut_here || round.disc.radius_mm < marks_.outermost(round.disc).radius_mm) continue;
      const Point c = round.disc.centre;
      const double reach = round.disc.radius_mm + kPastRim_mm;
      const Box& all = frame_.picture;
      line({std::max(c.x_mm - reach, all.left_mm), c.y_mm}, {std::min(c.x_mm + reach, all.right_mm), c.y_mm},
           Weight::kCentre);
      line({c.x_mm, std::max(c.y_mm - reach, all.top_mm)}, {c.x_mm, std::min(c.y_mm + reach, all.bottom_mm)},
           Weight::kCentre);
    }
  }

  void diamond(double half_mm, Ink ink) {
    const Point z = frame_.zero;
    marks_.list.emplace_back(Filled{{{z.x_mm - half_mm, z.y_mm},
                                     {z.x_mm, z.y_mm - half_mm},
                                     {z.x_mm + half_mm, z.y_mm},
                                     {z.x_mm, z.y_mm + half_mm}},
                                    ink});
  }

  void draw_zero() {
    const double half = frame_.type.zero_mm;
    const Box room = about(frame_.zero, half);
    if (!is_shown(room, "the zero")) return;
    diamond(half, Ink::kBlack);
    diamond(kEyeShare * half, Ink::kWhite);
    marks_.ground.taken.push_back(room);
    marks_.zero = Disc{frame_.zero, half};
  }

  const route::PlanView& view_;
  const View* seen_;
  const PlanFrame& frame_;
  PlanMarks marks_;
};

}  // namespace

Disc PlanMarks::outermost(Disc disc) const {
  for (const Round& round : rounds) {
    const bool same_centre = distance(round.disc.centre, disc.centre) < kTouch_mm;
    if (same_centre) disc.radius_mm = std::max(disc.radius_mm, round.disc.radius_mm);
  }
  return disc;
}

PlanMarks plan_marks(const route::PlanView& view, const HeldViews* held, const PlanFrame& frame) {
  return Marking(view, held != nullptr ? &held->above : nullptr, frame).draw();
}

}  // namespace sparewright::drawing
