#include "drawing/turned_view.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

#include "drawing/hatch.hpp"
#include "drawing/standings.hpp"
#include "drawing/turned_outline.hpp"
#include "drawing/wrap.hpp"

namespace sparewright::drawing {
namespace {

constexpr double kWidestName = 0.38;  // of the picture's width
constexpr double kNamesAbove_mm = 9.0;
constexpr double kNamesBelow_mm = 9.0;
constexpr double kJawHigh_mm = 6.0;
constexpr double kBehindWork_mm = 5.0;  // the chuck's body at the left edge
constexpr double kPastWork_mm = 3.0;    // the axis runs on so far
constexpr double kCentreLong_mm = 11.0;
constexpr double kCentreHigh_mm = 5.0;
constexpr double kAboveLegend_mm = 2.0;
constexpr double kBesideArrow_mm = 1.2;
constexpr double kAxisArrow_mm = 2.6;
constexpr double kZeroBelow_mm = 1.5;
constexpr double kEyeShare = 0.35;
constexpr Hatching kJawHatching{Slant::kRising, 1.8};

constexpr const char* kLegend =
    "As you stand, headstock left; not to scale. Thick: cut here. Thin: not now. Dashed: inside.";

class Drawing {
 public:
  Drawing(const route::TurnedView& view, const PictureRoom& room, const Ruler& ruler)
      : view_(view),
        room_(room),
        ruler_(ruler),
        type_(plan_type(room.larger)),
        pieces_(turned_outline(view)) {}

  [[nodiscard]] bool can_be_drawn() const {
    return std::isfinite(largest()) && largest() > 0.0 && view_.work_to_mm > view_.work_from_mm;
  }

  Picture draw() {
    lay_out();
    draw_jaws();
    draw_work();
    draw_bores();
    draw_tail();
    draw_axis();
    draw_zero();
    const Standings standings(names(), ground_, ruler_);
    Picture picture;
    DisplayList words;
    std::vector<Box> not_hatched;
    standings.add_to(picture, words, not_hatched);
    for (const Box& jaw : jaws_) {
      for (const Segment& s : hatch(jaw, kJawHatching, not_hatched))
        picture.list.emplace_back(Line{s.from, s.to, Weight::kHatch});
    }
    append(picture.list, list_);
    append(picture.list, words);
    add_legend(picture.list);
    picture.not_shown = std::move(not_shown_);
    picture.height_mm = legend_bottom_mm_;
    return picture;
  }

 private:
  [[nodiscard]] double largest() const {
    double most = 0.0;
    for (const TurnedPiece& piece : pieces_)
      most = std::max({most, piece.from_radius_mm, piece.to_radius_mm});
    return most;
  }
  [[nodiscard]] double x(double along_mm) const { return zero_x_mm_ - scale_ * along_mm; }
  [[nodiscard]] bool has_jaws() const { return view_.work_to_mm - view_.jaws_from_mm > 0.0; }
  [[nodiscard]] Weight weight(bool cut_here) const { return cut_here ? type_.cut_here : Weight::kThin; }

  void line(Point from, Point to, Weight weight) {
    list_.emplace_back(Line{from, to, weight});
    ground_.lines.push_back({from, to});
  }
  // The same below the axis.
  void both_sides(double x1, double r1, double x2, double r2, Weight weight) {
    line({x1, axis_mm_ - scale_ * r1}, {x2, axis_mm_ - scale_ * r2}, weight);
    line({x1, axis_mm_ + scale_ * r1}, {x2, axis_mm_ + scale_ * r2}, weight);
  }

  void lay_out() {
    const double larger = room_.larger;
    const double compass = type_.compass_mm;
    legend_lines_ = wrap(ruler_, kLegend, type_.legend, room_.width_mm);
    const double words =
        static_cast<double>(legend_lines_.size()) * ruler_.measure("x", type_.legend).height();
    const double legend = compass + words + kAboveLegend_mm + kBesideArrow_mm;
    const double zero = 2.0 * type_.zero_mm + kZeroBelow_mm;
    const double jaw = has_jaws() ? kJawHigh_mm * larger : 0.0;
    const double above = kNamesAbove_mm * larger + jaw;
    const double below = std::max(jaw, zero) + kNamesBelow_mm * larger;
    const double left = kBehindWork_mm + kPastWork_mm;
    const double right = kPastWork_mm + (view_.tail_is_centre ? kCentreLong_mm : 2.0 * type_.zero_mm);
    const double across = room_.width_mm - left - right;
    const double down = room_.height_mm - above - below - legend;
    const double length = view_.work_to_mm - view_.work_from_mm;
    scale_ = std::min(across / length, down / (2.0 * largest()));
    const double high = 2.0 * scale_ * largest();
    zero_x_mm_ = left + scale_ * length + (across - scale_ * length) / 2.0 + scale_ * view_.work_from_mm;
    axis_mm_ = above + high / 2.0;
    picture_ = {0.0, 0.0, room_.width_mm, above + high + below};
    ground_.area = picture_;
    legend_bottom_mm_ = picture_.bottom_mm + legend;
  }

  void draw_jaws() {
    if (!has_jaws()) return;
    const double face = x(view_.jaws_from_mm);
    const double back = x(view_.work_to_mm) - kBehindWork_mm;
    const double grip =
        std::isfinite(view_.jaws_grip_diameter_mm) ? view_.jaws_grip_diameter_mm / 2.0 : largest();
    const double held = scale_ * std::min(grip, largest());
    const double high = kJawHigh_mm * room_.larger + scale_ * largest() - held;
    for (const double way : {-1.0, 1.0}) {
      const double inner = axis_mm_ + way * held;
      const double outer = inner + way * high;
      const Box jaw{back, std::min(inner, outer), face, std::max(inner, outer)};
      jaws_.push_back(jaw);
      ground_.hatched.push_back(jaw);
      line({back, outer}, {face, outer}, Weight::kThin);
      line({face, outer}, {face, inner}, Weight::kThin);
      line({back, outer}, {back, inner}, Weight::kThin);
      line({back, inner}, {face, inner}, Weight::kThin);
    }
  }

  void draw_work() {
    for (std::size_t i = 0; i < pieces_.size(); ++i) {
      const TurnedPiece& piece = pieces_[i];
      both_sides(x(piece.from_mm), piece.from_radius_mm, x(piece.to_mm), piece.to_radius_mm,
                 weight(piece.cut_here));
      const TurnedPiece* next = i + 1 < pieces_.size() ? &pieces_[i + 1] : nullptr;
      const double beside = next == nullptr ? 0.0 : next->from_radius_mm;
      // The shoulder belongs to the smaller of the two.
      const bool next_is_smaller = next != nullptr && next->from_radius_mm < piece.to_radius_mm;
      both_sides(x(piece.to_mm), piece.to_radius_mm, x(piece.to_mm), beside,
                 weight(next_is_smaller ? next->cut_here : next != nullptr && piece.cut_here));
    }
    const TurnedPiece& first = pieces_.front();
    const bool faced = std::any_of(view_.steps.begin(), view_.steps.end(), [&](const auto& step) {
      return step.cut_here && step.from_mm == step.to_mm && step.from_mm == view_.work_from_mm;
    });
    both_sides(x(first.from_mm), 0.0, x(first.from_mm), first.from_radius_mm, weight(faced));
  }

  void draw_bores() {
    for (const auto& step : view_.steps) {
      if (!step.is_bore) continue;
      const bool known = std::isfinite(step.from_mm) && std::isfinite(step.to_mm) &&
                         std::isfinite(step.from_diameter_mm) && step.to_mm > step.from_mm;
      if (!known || step.from_mm < view_.work_from_mm - 1e-6 || step.to_mm > view_.work_to_mm + 1e-6) {
        not_shown_.push_back(step.name);
        continue;
      }
      const Weight how = step.cut_here ? type_.cut_here : Weight::kHidden;
      const double r = step.from_diameter_mm / 2.0;
      both_sides(x(step.from_mm), r, x(step.to_mm), r, how);
      if (step.to_mm < view_.work_to_mm - 1e-6) both_sides(x(step.to_mm), r, x(step.to_mm), 0.0, how);
    }
  }

  void draw_tail() {
    if (!view_.tail_is_centre) return;
    const double tip = x(view_.work_from_mm);
    const double half = kCentreHigh_mm / 2.0;
    const double cone = half * std::sqrt(3.0);  // 60 degrees
    const double end = tip + kCentreLong_mm;
    for (const double way : {-1.0, 1.0}) {
      line({tip, axis_mm_}, {tip + cone, axis_mm_ + way * half}, Weight::kThin);
      line({tip + cone, axis_mm_ + way * half}, {end, axis_mm_ + way * half}, Weight::kThin);
    }
    line({end, axis_mm_ - half}, {end, axis_mm_ + half}, Weight::kThin);
    tail_at_ = {tip + (cone + kCentreLong_mm) / 2.0, axis_mm_ - half / 2.0};
  }

  void draw_axis() {
    const double right = view_.tail_is_centre ? x(view_.work_from_mm) : x(view_.work_from_mm) + kPastWork_mm;
    line({x(view_.work_to_mm) - kPastWork_mm, axis_mm_}, {right, axis_mm_}, Weight::kCentre);
  }

  void diamond(Point z, double half, Ink ink) {
    list_.emplace_back(Filled{
        {{z.x_mm - half, z.y_mm}, {z.x_mm, z.y_mm - half}, {z.x_mm + half, z.y_mm}, {z.x_mm, z.y_mm + half}},
        ink});
  }

  // Below the free end, on a line that leads there.
  void draw_zero() {
    const double half = type_.zero_mm;
    const double end = x(view_.work_from_mm);
    const double below = axis_mm_ + scale_ * largest() + kZeroBelow_mm + half;
    line({end, axis_mm_ + scale_ * pieces_.front().from_radius_mm}, {end, below - half}, Weight::kThin);
    zero_ = {{end, below}, half};
    diamond(zero_.centre, half, Ink::kBlack);
    diamond(zero_.centre, kEyeShare * half, Ink::kWhite);
    const Box room{end - half, below - half, end + half, below + half};
    ground_.taken.push_back(room);
  }

  void add_name(std::vector<Name>& names, const std::string& says, const TextStyle& style, Point at,
                bool of_feature) const {
    if (says.empty()) return;
    auto lines = wrap_even(ruler_, says, style, kWidestName * room_.width_mm);
    if (lines.empty()) return;
    names.push_back({says, {std::move(lines), style, {at, 0.0}, std::nullopt, true}, of_feature});
  }

  // A place on the step that shows it: near its outside, or half way to the wall of a hole.
  [[nodiscard]] Point place_of(const route::TurnedView::Step& step) const {
    const double from = std::max(step.from_mm, view_.work_from_mm);
    const double to = std::min(step.to_mm, view_.work_to_mm);
    const double radius = (step.from_diameter_mm + step.to_diameter_mm) / 4.0;
    constexpr double kOutside = 0.8;
    return {x((from + to) / 2.0), axis_mm_ - scale_ * radius * (step.is_bore ? 0.5 : kOutside)};
  }

  [[nodiscard]] std::vector<Name> names() const {
    std::vector<Name> all;
    all.push_back({"ZERO", {{"ZERO"}, type_.zero, zero_, std::nullopt, true}});
    for (const bool here : {true, false}) {
      for (const auto& step : view_.steps) {
        const Point at = place_of(step);
        const bool known =
            std::isfinite(at.x_mm) && std::isfinite(at.y_mm) && step.to_mm >= view_.work_from_mm;
        if (step.cut_here == here && known)
          add_name(all, step.name, here ? type_.cut : type_.other, at, true);
      }
    }
    if (!jaws_.empty()) add_name(all, view_.holder, type_.jaw, jaws_.front().middle(), false);
    if (view_.tail_is_centre) add_name(all, view_.tail, type_.side, tail_at_, false);
    const double rim = axis_mm_ - 0.7 * scale_ * pieces_.front().from_radius_mm;
    add_name(all, view_.free_end, type_.side, {x(view_.work_from_mm), rim}, false);
    return all;
  }

  void add_arrow(DisplayList& list, Point from, Point tip) const {
    const double length = distance(from, tip);
    const double share = 1.0 - 0.5 * kAxisArrow_mm / length;  // the line ends within the head
    list.emplace_back(
        Line{from,
             {from.x_mm + share * (tip.x_mm - from.x_mm), from.y_mm + share * (tip.y_mm - from.y_mm)},
             Weight::kVisible});
    add_arrowhead(list, from, tip, kAxisArrow_mm);
  }

  // Readings rise to the headstock and in to the axis.
  void add_legend(DisplayList& list) const {
    const double long_mm = 0.8 * type_.compass_mm;
    const double top = picture_.bottom_mm + kAboveLegend_mm;
    const Point corner{room_.width_mm - kBesideArrow_mm, top + type_.compass_mm};
    const Point along{corner.x_mm - long_mm, corner.y_mm};
    const Point in{corner.x_mm, corner.y_mm - long_mm};
    add_arrow(list, corner, along);
    add_arrow(list, corner, in);
    list.emplace_back(
        text(ruler_, "+ along", {along.x_mm - kBesideArrow_mm, corner.y_mm}, type_.axis, Anchor::kRight));
    list.emplace_back(text(ruler_, "+ in", {in.x_mm - kAxisArrow_mm, in.y_mm + type_.axis.cap_mm}, type_.axis,
                           Anchor::kRight));
    double y = corner.y_mm + kBesideArrow_mm;
    for (const std::string& says : legend_lines_) {
      const TextSize size = ruler_.measure(says, type_.legend);
      list.emplace_back(text(ruler_, says, {0.0, y + size.above_mm}, type_.legend));
      y += size.height();
    }
  }

  const route::TurnedView& view_;
  const PictureRoom& room_;
  const Ruler& ruler_;
  PlanType type_;
  std::vector<TurnedPiece> pieces_;
  double scale_ = 1.0;
  double zero_x_mm_ = 0.0;
  double axis_mm_ = 0.0;
  double legend_bottom_mm_ = 0.0;
  Box picture_;
  Ground ground_;
  DisplayList list_;
  std::vector<Box> jaws_;
  Disc zero_;
  Point tail_at_;
  std::vector<std::string> legend_lines_;
  std::vector<std::string> not_shown_;
};

}  // namespace

base::Result<Picture> turned_view(const route::TurnedView& view, const PictureRoom& room,
                                  const Ruler& ruler) {
  Drawing drawing(view, room, ruler);
  if (!drawing.can_be_drawn())
    return base::fail(base::Code::kSizeNotPositive, "not known or nothing", {}, "the work in the picture");
  return drawing.draw();
}

}  // namespace sparewright::drawing
