#include "drawing/plan_frame.hpp"

#include <algorithm>
#include <cmath>

#include "drawing/wrap.hpp"

namespace sparewright::drawing {
namespace {

constexpr double kSideName_mm = 9.0;  // names of the ends are broken to this, unless a word is longer
constexpr double kLongestWord_mm = 20.0;
constexpr double kRoundText_mm = 1.5;
constexpr double kInJaw_mm = 2.4;     // hatching above and below the words in a jaw
constexpr std::size_t kJawLines = 2;  // of words in a jaw; a longer name of a side is left out
constexpr double kAboveLegend_mm = 2.0;
constexpr double kAboveWords_mm = 1.0;
constexpr double kThinWork_mm = 16.0;  // a work drawn narrower than this has room for names outside the jaws
constexpr double kNamesOutside_mm = 7.0;
constexpr double kEndViewShare = 0.62;  // of the picture's width, at most
constexpr double kEndViewHigh_mm = 22.0;
constexpr double kEndGaps_mm = 1.8;
constexpr double kBesideJawName_mm = 0.8;
constexpr double kJawRunsOut_mm = 3.0;  // a jaw that runs on is broken off this far from the edge

double height_of(const std::vector<std::string>& lines, const TextStyle& style, const Ruler& ruler) {
  double height = 0.0;
  for (const std::string& line : lines)
    height += ruler.measure(line, style).height();
  return height;
}

// Into a narrow column, but no word broken that is not very long.
std::vector<std::string> narrow(const std::string& name, const TextStyle& style, const Ruler& ruler) {
  const double word = longest_word(ruler, name, style);
  return wrap(ruler, name, style, std::clamp(word, kSideName_mm, kLongestWord_mm));
}

// The view from the right end: as wide as the work between two jaws, as high as the tool that comes down on it.
void size_end_view(PlanFrame& frame, const route::PlanView& view, const View& seen, const PictureRoom& room,
                   const Ruler& ruler) {
  double words = 0.0;
  for (const char* name : kEndJawNames)
    words = std::max(words, ruler.measure(name, frame.type.legend).width_mm);
  const double tool = 2.0 * ruler.measure("tool", frame.type.legend).height() + kEndGaps_mm;
  const double width = kEndViewShare * room.width_mm;
  const double high = std::max(seen.high.v, view.jaw_high_mm);
  const double across = view.work.far_mm - view.work.near_mm;
  const double scale = std::min((width - 2.0 * (words + kBesideJawName_mm)) / across,
                                (kEndViewHigh_mm * room.larger - tool - kEndBed_mm) / high);
  if (!(scale > 0.0) || !std::isfinite(scale)) return;
  frame.end_scale = scale;
  frame.end_tool_mm = tool;
  frame.end_jaw_mm = words + kBesideJawName_mm;
  frame.end_view = {0.0, 0.0, scale * across + 2.0 * frame.end_jaw_mm, scale * high + tool + kEndBed_mm};
}

void write_names(PlanFrame& frame, const route::PlanView& view, double width_mm, const Ruler& ruler) {
  frame.left_side = narrow(view.left_side, frame.type.side, ruler);
  frame.right_side = narrow(view.right_side, frame.type.side, ruler);
  const auto against = [&](const std::string& side, const std::string& jaw) {
    auto lines = wrap(ruler, side.empty() ? jaw : side + " to " + jaw, frame.type.jaw, width_mm / 2.0);
    if (lines.size() <= kJawLines) return lines;
    frame.not_named.push_back(side);
    return wrap(ruler, jaw, frame.type.jaw, width_mm / 2.0);
  };
  frame.against_fixed_jaw = against(view.far_side, "FIXED JAW");
  frame.against_moving_jaw = against(view.near_side, "moving jaw");
  // Under the view from the right as wide as the picture, else beside the directions.
  if (frame.end_view.width() > 0.0) {
    frame.legend_lines =
        wrap(ruler,
             "Above as you stand, here from the right; not to scale. Thick: cut here. Thin: not now. "
             "Dashed: parallels, or cut inside.",
             frame.type.legend, width_mm);
    return;
  }
  const double compass = frame.type.compass_mm + ruler.measure("+Y", frame.type.axis).width_mm;
  const double legend_width = width_mm - compass - 2.5 * kRoundText_mm;
  const char* scale = view.parallel_mm > 0.0 ? "Not to scale. Dashed: parallels." : "Not to scale.";
  for (const char* sentence : {"Seen from above, as you stand.", scale, "Thick: cut here. Thin: not now."}) {
    for (std::string& line : wrap(ruler, sentence, frame.type.legend, legend_width))
      frame.legend_lines.push_back(std::move(line));
  }
}

// What stands below the picture.
double legend_height(const PlanFrame& frame, const Ruler& ruler) {
  const double words = height_of(frame.legend_lines, frame.type.legend, ruler);
  if (frame.end_view.width() > 0.0)
    return std::max(frame.type.compass_mm, frame.end_view.height()) + kAboveWords_mm + words;
  return std::max(frame.type.compass_mm, words);
}

void place(PlanFrame& frame, const route::PlanView& view, const PictureRoom& room, const Ruler& ruler) {
  const PlanType& type = frame.type;
  const double zero = ruler.measure("ZERO", type.zero).width_mm;
  const auto beside = [&](const std::vector<std::string>& name) {
    return std::max(zero, widest(ruler, name, type.side)) + 2.0 * kRoundText_mm;
  };
  const double left = beside(frame.left_side);
  const double right = beside(frame.right_side);
  const double legend = legend_height(frame, ruler) + kAboveLegend_mm;
  const double fixed = height_of(frame.against_fixed_jaw, type.jaw, ruler) + 2.0 * kInJaw_mm;
  const double moving = height_of(frame.against_moving_jaw, type.jaw, ruler) + 2.0 * kInJaw_mm;

  const double work_width = view.work.right_mm - view.work.left_mm;
  const double work_height = view.work.far_mm - view.work.near_mm;
  const double room_across = room.width_mm - left - right;
  const double room_down = room.height_mm - legend - fixed - moving;
  frame.scale = std::min(room_across / work_width, room_down / work_height);
  const double drawn_width = frame.scale * work_width;
  const double drawn_height = frame.scale * work_height;

  const double spare = (room_down - drawn_height) / 2.0;
  const double outside = drawn_height < kThinWork_mm ? std::min(kNamesOutside_mm, spare) : 0.0;
  frame.work.left_mm = left + (room_across - drawn_width) / 2.0;
  frame.work.right_mm = frame.work.left_mm + drawn_width;
  frame.work.top_mm = outside + fixed;
  frame.work.bottom_mm = frame.work.top_mm + drawn_height;
  frame.zero = {frame.work.left_mm - frame.scale * view.work.left_mm,
                frame.work.top_mm + frame.scale * view.work.far_mm};
  frame.picture = {0.0, 0.0, room.width_mm, frame.work.bottom_mm + moving + outside};
  frame.legend = {0.0, frame.picture.bottom_mm + kAboveLegend_mm, room.width_mm,
                  frame.picture.bottom_mm + legend};
  frame.end_view = moved(frame.end_view, {0.0, frame.legend.top_mm});
  frame.fixed_jaw = {0.0, frame.work.top_mm - fixed, 0.0, frame.work.top_mm};
  frame.moving_jaw = {0.0, frame.work.bottom_mm, 0.0, frame.work.bottom_mm + moving};
}

void run_jaws(PlanFrame& frame, const route::PlanView& view) {
  if (!(view.jaw_right_mm > view.jaw_left_mm)) return;
  const double left = frame.on_paper(view.jaw_left_mm, 0.0).x_mm;
  const double right = frame.on_paper(view.jaw_right_mm, 0.0).x_mm;
  const double least = frame.picture.left_mm + kJawRunsOut_mm;
  const double most = frame.picture.right_mm - kJawRunsOut_mm;
  if (right <= least || left >= most) return;
  frame.jaws_run_on_left = left < least;
  frame.jaws_run_on_right = right > most;
  for (Box* jaw : {&frame.fixed_jaw, &frame.moving_jaw}) {
    jaw->left_mm = std::max(left, least);
    jaw->right_mm = std::min(right, most);
  }
}

}  // namespace

Box PlanFrame::on_paper(const route::PlanView::Rectangle& r) const {
  const Point upper_left = on_paper(r.left_mm, r.far_mm);
  const Point lower_right = on_paper(r.right_mm, r.near_mm);
  return {upper_left.x_mm, upper_left.y_mm, lower_right.x_mm, lower_right.y_mm};
}

PlanType plan_type(double larger) {
  PlanType type;
  for (TextStyle* style :
       {&type.jaw, &type.cut, &type.other, &type.side, &type.zero, &type.axis, &type.legend}) {
    style->cap_mm *= larger;
  }
  if (larger > 1.0) type.cut_here = Weight::kBold;
  type.compass_mm *= larger;
  type.zero_mm *= larger;
  return type;
}

base::Result<PlanFrame> plan_frame(const route::PlanView& view, const HeldViews* held,
                                   const PictureRoom& room, const Ruler& ruler) {
  const double length = view.work.right_mm - view.work.left_mm;
  const double width = view.work.far_mm - view.work.near_mm;
  if (!(std::isfinite(length) && std::isfinite(width) && length > 0.0 && width > 0.0)) {
    return base::fail(base::Code::kSizeNotPositive, "not known or nothing", {}, "the work in the picture");
  }
  PlanFrame frame;
  frame.type = plan_type(room.larger);
  if (held != nullptr && view.jaw_right_mm > view.jaw_left_mm)
    size_end_view(frame, view, held->from_right, room, ruler);
  write_names(frame, view, room.width_mm, ruler);
  place(frame, view, room, ruler);
  run_jaws(frame, view);
  return frame;
}

}  // namespace sparewright::drawing
