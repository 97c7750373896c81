#include "drawing/plan_view.hpp"

#include <algorithm>
#include <array>

#include "drawing/end_view.hpp"
#include "drawing/hatch.hpp"
#include "drawing/label.hpp"
#include "drawing/plan_marks.hpp"
#include "drawing/standings.hpp"
#include "drawing/wrap.hpp"

namespace sparewright::drawing {
namespace {

constexpr double kWidestName = 0.38;  // of the picture's width
constexpr Hatching kFlatHatching{Slant::kRising, 3.2};
constexpr double kAxisArrow_mm = 2.6;
constexpr double kIntoForm = 0.3;  // a leader ends so far from its middle, as a share of what it is narrow

std::string joined(const std::vector<std::string>& lines) {
  std::string all;
  for (const std::string& line : lines)
    all += (all.empty() ? "" : " ") + line;
  return all;
}

class Naming {
 public:
  Naming(const PlanFrame& frame, const PlanMarks& marks, const Ruler& ruler)
      : frame_(frame), marks_(marks), ruler_(ruler) {}

  [[nodiscard]] std::vector<Name> names() {
    const Box& work = frame_.work;
    const PlanType& type = frame_.type;
    if (frame_.fixed_jaw.width() > 0.0) {
      add_within(frame_.against_fixed_jaw, type.jaw, frame_.fixed_jaw, true);
      add_within(frame_.against_moving_jaw, type.jaw, frame_.moving_jaw, true);
    }
    add_within(frame_.left_side, type.side, {0.0, work.top_mm, work.left_mm, work.bottom_mm}, false);
    add_within(frame_.right_side, type.side,
               {work.right_mm, work.top_mm, frame_.picture.right_mm, work.bottom_mm}, false);
    if (marks_.zero) names_.push_back({"ZERO", {{"ZERO"}, type.zero, *marks_.zero, std::nullopt, true}});
    for (const auto& flat : marks_.flats) {
      if (add(flat.name, flat.cut_here, {free_place(flat.box), 0.0})) names_.back().label.within = flat.box;
    }
    for (const auto& form : marks_.forms) {
      const double reach = kIntoForm * std::min(form.box.width(), form.box.height());
      if (add(form.name, form.cut_here, {form.box.middle(), reach})) names_.back().label.within = form.box;
    }
    for (const bool here : {true, false}) {
      for (const auto& round : marks_.rounds) {
        if (round.cut_here == here) add(round.name, here, marks_.outermost(round.disc));
      }
    }
    return std::move(names_);
  }

 private:
  void add_within(const std::vector<std::string>& lines, const TextStyle& style, const Box& within,
                  bool may_lead) {
    if (lines.empty()) return;
    names_.push_back({joined(lines), {lines, style, {within.middle(), 0.0}, within, may_lead}});
  }

  bool add(const std::string& name, bool cut_here, const Disc& named) {
    const TextStyle& style = cut_here ? frame_.type.cut : frame_.type.other;
    auto lines = wrap_even(ruler_, name, style, kWidestName * frame_.picture.width());
    if (lines.empty()) return false;
    names_.push_back({name, {std::move(lines), style, named, std::nullopt, true}, true});
    return true;
  }

  // Where a leader to a flat may end: the place in it farthest from the holes.
  [[nodiscard]] Point free_place(const Box& flat) const {
    constexpr std::array kShares{0.5, 0.25, 0.75};
    Point best = flat.middle();
    double farthest = -1.0;
    for (const double across : kShares) {
      for (const double down : kShares) {
        const Point p{flat.left_mm + across * flat.width(), flat.top_mm + down * flat.height()};
        double nearest = flat.width() + flat.height();
        for (const auto& round : marks_.rounds) {
          nearest = std::min(nearest, distance(p, round.disc.centre) - round.disc.radius_mm);
        }
        if (nearest > farthest) {
          farthest = nearest;
          best = p;
        }
      }
    }
    return best;
  }

  const PlanFrame& frame_;
  const PlanMarks& marks_;
  const Ruler& ruler_;
  std::vector<Name> names_;
};

DisplayList hatching(const PlanFrame& frame, const PlanMarks& marks, const std::vector<Box>& left_out) {
  DisplayList list;
  std::vector<Disc> discs;
  for (const auto& round : marks.rounds)
    discs.push_back(round.disc);
  const auto add = [&](const Box& area, const Hatching& how) {
    for (const Segment& s : hatch(area, how, left_out, discs))
      list.emplace_back(Line{s.from, s.to, Weight::kHatch});
  };
  if (frame.fixed_jaw.width() > 0.0) {
    add(frame.fixed_jaw, kFixedJawHatching);
    add(frame.moving_jaw, kMovingJawHatching);
  }
  for (const auto& flat : marks.flats) {
    if (flat.cut_here) add(flat.box, kFlatHatching);
  }
  return list;
}

void add_arrow(DisplayList& list, Point from, Point tip) {
  const double length = distance(from, tip);
  const double share = 1.0 - 0.5 * kAxisArrow_mm / length;  // the line ends within the head
  list.emplace_back(
      Line{from,
           {from.x_mm + share * (tip.x_mm - from.x_mm), from.y_mm + share * (tip.y_mm - from.y_mm)},
           Weight::kVisible});
  add_arrowhead(list, from, tip, kAxisArrow_mm);
}

// The way the collar readings rise, as arrows from one corner. Each name stands on the far side of the other arrow.
void add_directions(DisplayList& list, const PlanFrame& frame, const route::PlanView& view,
                    const Ruler& ruler) {
  const PlanType& type = frame.type;
  const Box& legend = frame.legend;
  const double length = 0.8 * type.compass_mm;
  const double beside = 0.14 * type.compass_mm;
  const double right = view.x_rises_right ? 1.0 : -1.0;
  const double down = view.y_rises_away ? -1.0 : 1.0;
  const double name_width = ruler.measure("+Y", type.axis).width_mm + beside;
  const Point corner{view.x_rises_right ? legend.right_mm - type.compass_mm : legend.right_mm - name_width,
                     view.y_rises_away ? legend.top_mm + type.compass_mm - 1.0
                                       : legend.top_mm + type.compass_mm - 1.0 - length};
  const Point x_tip{corner.x_mm + right * length, corner.y_mm};
  const Point y_tip{corner.x_mm, corner.y_mm + down * length};
  add_arrow(list, corner, x_tip);
  add_arrow(list, corner, y_tip);
  const double x_name_y = corner.y_mm + (view.y_rises_away ? -beside : beside + type.axis.cap_mm);
  if (view.x_rises_right) {
    list.emplace_back(text(ruler, "+X", {legend.right_mm, x_name_y}, type.axis, Anchor::kRight));
  } else {
    list.emplace_back(text(ruler, "+X", {x_tip.x_mm, x_name_y}, type.axis));
  }
  const TextSize name = ruler.measure("+Y", type.axis);
  const double under_name = name.height() - name.above_mm;
  const double y_name_y = view.y_rises_away ? y_tip.y_mm + type.axis.cap_mm : y_tip.y_mm - under_name;
  list.emplace_back(text(ruler, "+Y", {y_tip.x_mm - right * beside, y_name_y}, type.axis,
                         view.x_rises_right ? Anchor::kRight : Anchor::kLeft));
}

void add_legend(DisplayList& list, const PlanFrame& frame, const route::PlanView& view, const Ruler& ruler) {
  const Box& legend = frame.legend;
  const PlanType& type = frame.type;
  double y = legend.top_mm;
  if (frame.end_view.width() > 0.0) {
    y = legend.bottom_mm;
    for (const std::string& words : frame.legend_lines)
      y -= ruler.measure(words, type.legend).height();
  }
  for (const std::string& words : frame.legend_lines) {
    const TextSize size = ruler.measure(words, type.legend);
    list.emplace_back(text(ruler, words, {0.0, y + size.above_mm}, type.legend));
    y += size.height();
  }
  add_directions(list, frame, view, ruler);
}

}  // namespace

base::Result<Picture> plan_view(const route::PlanView& view, const HeldViews* held, const PictureRoom& room,
                                const Ruler& ruler) {
  const auto frame = plan_frame(view, held, room, ruler);
  if (!frame) return base::fail(frame.error());
  const PlanMarks marks = plan_marks(view, held, *frame);
  const Standings standings(Naming(*frame, marks, ruler).names(), marks.ground, ruler);

  Picture picture;
  picture.height_mm = frame->legend.bottom_mm;
  picture.not_named = frame->not_named;
  picture.not_shown = marks.not_shown;
  DisplayList words;
  std::vector<Box> not_hatched;
  standings.add_to(picture, words, not_hatched);
  picture.list = hatching(*frame, marks, not_hatched);  // underneath
  append(picture.list, marks.list);
  append(picture.list, words);
  if (held != nullptr && frame->end_view.width() > 0.0)
    add_end_view(picture.list, *frame, view, *held, ruler);
  add_legend(picture.list, *frame, view, ruler);
  return picture;
}

}  // namespace sparewright::drawing
