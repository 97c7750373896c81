#include "drawing/part_layout.hpp"

#include <algorithm>
#include <cmath>

namespace sparewright::drawing {
namespace {

using shape::FlatPoint;

// Between two views, and round the whole, for leaders and notes.
constexpr double kBetweenViews_mm = 12.0;
constexpr double kNotes_mm = 14.0;

bool is_level(const LengthMark& mark, const Sight& sight) {
  const shape::Vector along = mark.to - mark.from;
  return std::abs(shape::dot(along, sight.right)) >= std::abs(shape::dot(along, sight.up));
}

bool shows(const LengthMark& mark, const Sight& sight) {
  shape::Vector axis;
  part::component(axis, mark.along) = 1.0;
  return std::abs(shape::dot(axis, sight.towards)) < 0.5;
}

// The view that shows its side, if its axis lies in it; else the first that has the axis.
ViewOf home_of(const LengthMark& mark, const PartViews& views) {
  const ViewOf wanted = view_of_side(views, mark.seen_from);
  if (shows(mark, sight_of(wanted))) return wanted;
  if (shows(mark, sight_of(ViewOf::kFront))) return ViewOf::kFront;
  if (views.top) return ViewOf::kTop;
  return views.end ? ViewOf::kEnd : ViewOf::kFront;
}

// Outwards, away from the other views; beside front and top on the side that is nearer.
Beside side_of(ViewOf view, bool is_level, Projection projection, bool has_top, bool nearer_right) {
  const bool third = projection == Projection::kThirdAngle;
  if (!is_level && view != ViewOf::kEnd) return nearer_right ? Beside::kRight : Beside::kLeft;
  if (!is_level) return third ? Beside::kRight : Beside::kLeft;
  if (view == ViewOf::kTop) return third ? Beside::kAbove : Beside::kBelow;
  return third || !has_top ? Beside::kBelow : Beside::kAbove;
}

LengthRows& rows_for(std::vector<LengthRows>& all, ViewOf view, Beside beside) {
  const auto found = std::find_if(all.begin(), all.end(), [&](const LengthRows& rows) {
    return rows.view == view && rows.beside == beside;
  });
  if (found != all.end()) return *found;
  all.push_back({view, beside, {}, {}});
  return all.back();
}

void put_in_rows(LengthRows& rows, const View& view, double scale, const Ruler& ruler) {
  const bool level = rows.beside == Beside::kAbove || rows.beside == Beside::kBelow;
  std::vector<RowSpan> spans;
  for (const PlacedLength& one : rows.lengths) {
    // Along the row from its start on paper: to the right, or down.
    const double a = level ? scale * (one.from.u - view.low.u) : scale * (view.high.v - one.from.v);
    const double b = level ? scale * (one.to.u - view.low.u) : scale * (view.high.v - one.to.v);
    const WordsSize words = words_size(*one.mark, ruler);
    spans.push_back({std::min(a, b), std::max(a, b), level ? words.width_mm : words.height_mm});
  }
  const std::vector<RowPlace> places = rows_of(spans);
  for (std::size_t i = 0; i < places.size(); ++i) {
    rows.lengths[i].place = places[i];
    const auto row = static_cast<std::size_t>(places[i].row);
    if (rows.depths_mm.size() <= row) rows.depths_mm.resize(row + 1, 0.0);
    const WordsSize words = words_size(*rows.lengths[i].mark, ruler);
    rows.depths_mm[row] =
        std::max(rows.depths_mm[row], (level ? words.height_mm : words.width_mm) + kRowPitch_mm);
  }
}

// How far the words of the columns beside a view stand out above or below it: rows there keep clear of them.
double overhang(const std::vector<LengthRows>& all, const LengthRows& of, const View& view, double scale,
                const Ruler& ruler) {
  if (of.beside != Beside::kAbove && of.beside != Beside::kBelow) return 0.0;
  const double height = scale * (view.high.v - view.low.v);
  double most = 0.0;
  for (const LengthRows& column : all) {
    if (column.view != of.view || (column.beside != Beside::kLeft && column.beside != Beside::kRight))
      continue;
    for (const PlacedLength& one : column.lengths) {
      const double half = words_size(*one.mark, ruler).height_mm / 2.0;
      most = std::max(most, of.beside == Beside::kAbove ? half - one.place.text_middle
                                                        : one.place.text_middle + half - height);
    }
  }
  return most;
}

std::vector<LengthRows> all_rows(const PartViews& views, const Marks& marks, Projection projection,
                                 double scale, const Ruler& ruler) {
  std::vector<LengthRows> all;
  for (const LengthMark& mark : marks.lengths) {
    const ViewOf home = home_of(mark, views);
    const Sight sight = sight_of(home);
    const View& view = views.view(home);
    const FlatPoint to = views.shown(home, mark.to);
    const bool nearer_right = to.u > (view.low.u + view.high.u) / 2.0;
    LengthRows& rows = rows_for(
        all, home, side_of(home, is_level(mark, sight), projection, views.top.has_value(), nearer_right));
    rows.lengths.push_back({&mark, views.shown(home, mark.from), to, {}});
  }
  for (LengthRows& rows : all)
    put_in_rows(rows, views.view(rows.view), scale, ruler);
  for (LengthRows& rows : all)
    rows.start_mm = kRowFree_mm + overhang(all, rows, views.view(rows.view), scale, ruler);
  return all;
}

struct Margins {
  double left = 0.0;
  double right = 0.0;
  double top = 0.0;
  double bottom = 0.0;
};

// What stands out beside a view: its rows, and the words of rows and columns that reach past its ends.
Margins margins_of(const std::vector<LengthRows>& all, ViewOf view, const View& seen, double scale,
                   const Ruler& ruler) {
  const double width = scale * (seen.high.u - seen.low.u);
  const double height = scale * (seen.high.v - seen.low.v);
  Margins m;
  for (const LengthRows& rows : all) {
    if (rows.view != view) continue;
    const bool level = rows.beside == Beside::kAbove || rows.beside == Beside::kBelow;
    double& margin = rows.beside == Beside::kLeft    ? m.left
                     : rows.beside == Beside::kRight ? m.right
                     : rows.beside == Beside::kAbove ? m.top
                                                     : m.bottom;
    margin = std::max(margin, rows.depth_mm());
    for (const PlacedLength& one : rows.lengths) {
      const WordsSize words = words_size(*one.mark, ruler);
      const double half = (level ? words.width_mm : words.height_mm) / 2.0 + 1.0;
      double& before = level ? m.left : m.top;
      double& after = level ? m.right : m.bottom;
      before = std::max(before, half - one.place.text_middle);
      after = std::max(after, one.place.text_middle + half - (level ? width : height));
    }
  }
  return m;
}

Box box_at(const View& view, double left, double top, double scale) {
  return {left, top, left + scale * (view.high.u - view.low.u), top + scale * (view.high.v - view.low.v)};
}

// Into the corner that the three views leave free.
void add_slant(const PartViews& views, const DrawingRoom& room, Projection projection, const Ruler& ruler,
               Layout& layout) {
  if (!views.top) return;
  const Placed& top = layout.placed(ViewOf::kTop);
  const bool third = projection == Projection::kThirdAngle;
  const Margins margins = margins_of(layout.rows, ViewOf::kTop, *views.top, layout.scale, ruler);
  const double left = (third ? top.box.right_mm + margins.right : 0.0) + kNotes_mm;
  const double width = (third ? room.width_mm : top.box.left_mm - margins.left) - left - 4.0;
  const double height = top.box.height();
  const double u = views.slant.high.u - views.slant.low.u;
  const double v = views.slant.high.v - views.slant.low.v;
  const double scale = std::min({layout.scale, width / u, height / v});
  if (scale < layout.scale / 3.0 || width <= 0.0) return;
  const double x = left + (width - scale * u) / 2.0;
  const double y = top.box.top_mm + (height - scale * v) / 2.0;
  layout.views.push_back({&views.slant, ViewOf::kFront, box_at(views.slant, x, y, scale), scale});
  layout.has_slant = true;
}

}  // namespace

WordsSize words_size(const LengthMark& mark, const Ruler& ruler) {
  WordsSize size;
  for (const std::string& line : mark.says) {
    const TextSize one = ruler.measure(line, kLengthStyle);
    size.width_mm = std::max(size.width_mm, one.width_mm);
    size.height_mm += one.height();
  }
  constexpr double kFrame_mm = 1.6;
  const double round = mark.strong ? kFrame_mm : 0.6;
  return {size.width_mm + round, size.height_mm + round};
}

double LengthRows::depth_mm() const {
  double sum = start_mm;
  for (const double depth : depths_mm)
    sum += depth;
  return sum;
}

const Placed& Layout::placed(ViewOf view) const {
  return *std::find_if(views.begin(), views.end(), [&](const Placed& p) { return p.which == view; });
}

std::optional<Layout> laid_out(const PartViews& views, const Marks& marks, Projection projection,
                               const DrawingRoom& room, double scale, const Ruler& ruler) {
  Layout layout;
  layout.scale = scale;
  layout.rows = all_rows(views, marks, projection, scale, ruler);
  const Margins front = margins_of(layout.rows, ViewOf::kFront, views.front, scale, ruler);
  const Margins top = views.top ? margins_of(layout.rows, ViewOf::kTop, *views.top, scale, ruler) : Margins{};
  const Margins end = views.end ? margins_of(layout.rows, ViewOf::kEnd, *views.end, scale, ruler) : Margins{};
  const bool third = projection == Projection::kThirdAngle;
  const auto height = [&](const std::optional<View>& v) { return v ? scale * (v->high.v - v->low.v) : 0.0; };
  const auto width = [&](const std::optional<View>& v) { return v ? scale * (v->high.u - v->low.u) : 0.0; };
  const double front_height = height(views.front);
  const double front_width = width(views.front);

  // Columns: front and top, and the end on its side. Rows: top and front, in the order of the projection.
  const double column_left = std::max(front.left, top.left);
  const double column_right = std::max(front.right, top.right);
  const double end_room = views.end ? end.left + width(views.end) + end.right + kBetweenViews_mm : 0.0;
  const double x_front = kNotes_mm + column_left + (third ? 0.0 : end_room);
  const double x_end =
      third ? x_front + front_width + column_right + kBetweenViews_mm + end.left : kNotes_mm + end.left;
  const double all_width = kNotes_mm + column_left + front_width + column_right + end_room + kNotes_mm;
  const double top_room = views.top ? top.top + height(views.top) + top.bottom + kBetweenViews_mm : 0.0;
  const double y_first = kNotes_mm;
  const double front_top = std::max(front.top, end.top);
  const double y_front = third ? y_first + top_room + front_top : y_first + front_top;
  const double y_top =
      third ? y_first + top.top
            : y_front + front_height + std::max(front.bottom, end.bottom) + kBetweenViews_mm + top.top;
  const double all_height =
      kNotes_mm + top_room + front_top + front_height + std::max(front.bottom, end.bottom) + kNotes_mm;
  if (all_width > room.width_mm || all_height > room.height_mm) return std::nullopt;

  const double shift = (room.width_mm - all_width) / 2.0;
  layout.height_mm = all_height;
  layout.views.push_back(
      {&views.front, ViewOf::kFront, box_at(views.front, shift + x_front, y_front, scale), scale});
  if (views.top)
    layout.views.push_back(
        {&*views.top, ViewOf::kTop, box_at(*views.top, shift + x_front, y_top, scale), scale});
  if (views.end)
    layout.views.push_back(
        {&*views.end, ViewOf::kEnd, box_at(*views.end, shift + x_end, y_front, scale), scale});
  add_slant(views, room, projection, ruler, layout);
  return layout;
}

}  // namespace sparewright::drawing
