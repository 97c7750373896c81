#include "drawing/part_drawing.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "drawing/extra_row.hpp"
#include "drawing/label.hpp"
#include "drawing/long_break.hpp"
#include "drawing/part_layout.hpp"
#include "drawing/scale.hpp"
#include "drawing/view_lines.hpp"

namespace sparewright::drawing {
namespace {

constexpr TextStyle kNoteStyle{2.8, Face::kRegular};
constexpr TextStyle kStrongNoteStyle{2.8, Face::kBold};
constexpr TextStyle kLetterStyle{3.2, Face::kBold};
constexpr double kExtensionGap_mm = 0.8;   // between the edge and its extension line
constexpr double kExtensionOver_mm = 1.2;  // past the dimension line
constexpr double kArrow_mm = 2.2;
constexpr double kSectionOver_mm = 2.2;  // the plane of a section past the view
constexpr double kCentreOver_mm = 2.5;   // a centre line past its circle

// Everything of one drawing, put down in order; the ground for notes grows with it.
class Drawing {
 public:
  Drawing(const Layout& layout, const Marks& marks, const DrawingRoom& room, const Ruler& ruler)
      : layout_(layout), marks_(marks), ruler_(ruler) {
    ground_.area = {0.0, 0.0, room.width_mm, layout.height_mm};
  }

  void draw_views() {
    for (std::size_t i = 0; i < layout_.views.size(); ++i) {
      const bool is_slant = layout_.has_slant && i + 1 == layout_.views.size();
      draw_view(layout_.views[i]);
      if (is_slant) ground_.taken.push_back(layout_.views[i].box);
    }
  }

  // The plane of the section on the view from above: a chain line from side to side, thick at its ends, with arrows the way
  // one looks, and what the section is called.
  void draw_section(const PartViews& views) {
    if (!views.section_y_mm || !views.top) return;
    const Placed& front = layout_.placed(ViewOf::kFront);
    for (const ViewLine& l : views.hatched)
      list_.emplace_back(Line{front.on_paper(l.from), front.on_paper(l.to), Weight::kHatch});
    ground_.hatched.push_back(front.box);
    const Placed& top = layout_.placed(ViewOf::kTop);
    const double y = top.on_paper({0.0, *views.section_y_mm}).y_mm;
    const double left = top.box.left_mm - kSectionOver_mm;
    const double right = top.box.right_mm + kSectionOver_mm;
    line({left, y}, {right, y}, Weight::kCentre);
    for (const double end : {left, right}) {
      const double inwards = end == left ? kSectionOver_mm : -kSectionOver_mm;
      line({end, y}, {end + inwards, y}, Weight::kBold);
      line({end, y}, {end, y - 2.0 * kSectionOver_mm}, Weight::kVisible);
      add_arrowhead(list_, {end, y}, {end, y - 2.0 * kSectionOver_mm}, kArrow_mm);
    }
  }

  void draw_lengths() {
    for (const LengthRows& rows : layout_.rows) {
      for (const PlacedLength& one : rows.lengths)
        draw_length(rows, one);
    }
  }

  // Notes that found no place. The letters of extra views come first: without theirs nobody finds them.
  [[nodiscard]] std::vector<NoteMark> draw_notes(const PartViews& views,
                                                 const std::vector<ExtraView>& extras) {
    std::vector<Label> labels;
    for (const ExtraView& extra : extras) {
      const Placed& placed = layout_.placed(extra.of);
      const Disc round{placed.on_paper(extra.centre), placed.scale * extra.radius_mm};
      if (extra.radius_mm > 0.0) {
        list_.emplace_back(Circle{round.centre, round.radius_mm, Weight::kThin});
        add_round(ground_.lines, round.centre, round.radius_mm, 0.0, 2.0 * std::numbers::pi);
      }
      labels.push_back({{extra.letter}, kLetterStyle, round, std::nullopt, true});
    }
    for (const NoteMark& note : marks_.notes)
      labels.push_back(label_of(note, views, layout_.placed(view_of_side(views, note.seen_from))));
    const auto standing = place_labels(ruler_, labels, ground_);
    std::vector<NoteMark> left;
    for (std::size_t i = 0; i < labels.size(); ++i) {
      if (standing[i]) {
        add_label(list_, ruler_, labels[i], *standing[i]);
      } else if (i >= extras.size()) {
        left.push_back(marks_.notes[i - extras.size()]);
      }
    }
    return left;
  }

  [[nodiscard]] DisplayList done() && { return std::move(list_); }

 private:
  void line(Point from, Point to, Weight weight) {
    list_.emplace_back(Line{from, to, weight});
    ground_.lines.push_back({from, to});
  }

  // --- views ---
  void draw_view(const Placed& placed) {
    add_view(list_, ground_.lines, *placed.view, {placed.on_paper({0.0, 0.0}), placed.scale},
             [](Seen seen, bool) { return seen == Seen::kVisible ? Weight::kBold : Weight::kHidden; });
    for (const ViewArc& arc : placed.view->arcs) {
      if (is_whole(arc)) draw_centre(placed.on_paper(arc.centre), placed.scale * arc.radius_mm);
    }
  }

  // One cross for all circles about a middle, as long as the largest wants; drawn when it is the first or larger.
  void draw_centre(Point centre, double radius) {
    const double reach = radius + kCentreOver_mm;
    for (const Disc& there : crosses_) {
      if (distance(there.centre, centre) < 0.01 && there.radius_mm >= reach) return;
    }
    crosses_.push_back({centre, reach});
    line({centre.x_mm - reach, centre.y_mm}, {centre.x_mm + reach, centre.y_mm}, Weight::kCentre);
    line({centre.x_mm, centre.y_mm - reach}, {centre.x_mm, centre.y_mm + reach}, Weight::kCentre);
  }

  // --- lengths ---
  // From the view's box to the middle of the row's words.
  [[nodiscard]] static double off_of(const LengthRows& rows, int row) {
    double off = rows.start_mm;
    for (int i = 0; i < row; ++i)
      off += rows.depths_mm[static_cast<std::size_t>(i)];
    return off + rows.depths_mm[static_cast<std::size_t>(row)] / 2.0;
  }

  void draw_length(const LengthRows& rows, const PlacedLength& one) {
    const Placed& placed = layout_.placed(rows.view);
    const bool level = rows.beside == Beside::kAbove || rows.beside == Beside::kBelow;
    const double off = off_of(rows, one.place.row);
    const Point a = placed.on_paper(one.from);
    const Point b = placed.on_paper(one.to);
    const double out = rows.beside == Beside::kAbove || rows.beside == Beside::kLeft ? -1.0 : 1.0;
    const double across = rows.beside == Beside::kAbove   ? placed.box.top_mm - off
                          : rows.beside == Beside::kBelow ? placed.box.bottom_mm + off
                          : rows.beside == Beside::kLeft  ? placed.box.left_mm - off
                                                          : placed.box.right_mm + off;
    extension(a, across, level, out);
    extension(b, across, level, out);
    const double start = level ? placed.box.left_mm : placed.box.top_mm;
    dimension_line(level ? a.x_mm : a.y_mm, level ? b.x_mm : b.y_mm, across, start + one.place.text_middle,
                   level, *one.mark);
  }

  void extension(Point from, double across, bool level, double out) {
    Point start = from;
    Point end = from;
    (level ? start.y_mm : start.x_mm) += out * kExtensionGap_mm;
    (level ? end.y_mm : end.x_mm) = across + out * kExtensionOver_mm;
    line(start, end, Weight::kThin);
  }

  void dimension_line(double a, double b, double across, double middle, bool level, const LengthMark& mark) {
    const double low = std::min(a, b);
    const double high = std::max(a, b);
    const auto point = [&](double along) { return level ? Point{along, across} : Point{across, along}; };
    const WordsSize size = words_size(mark, ruler_);
    const double half = (level ? size.width_mm : size.height_mm) / 2.0 + 0.3;
    // Broken where the words stand; carried on to them where they stand beside.
    const double from = std::min(low, middle + half);
    const double to = std::max(high, middle - half);
    if (middle - half > from) line(point(from), point(std::min(to, middle - half)), Weight::kThin);
    if (middle + half < to) line(point(std::max(from, middle + half)), point(to), Weight::kThin);
    const bool room_between = high - low > 2.5 * kArrow_mm;
    const double beyond = 2.0 * kArrow_mm;
    if (!room_between) {
      line(point(low - beyond), point(low), Weight::kThin);
      line(point(high), point(high + beyond), Weight::kThin);
    }
    add_arrowhead(list_, point(room_between ? high : low - beyond), point(low), kArrow_mm);
    add_arrowhead(list_, point(room_between ? low : high + beyond), point(high), kArrow_mm);
    words(mark, point(middle), size);
  }

  void words(const LengthMark& mark, Point middle, const WordsSize& size) {
    const Box box{middle.x_mm - size.width_mm / 2.0, middle.y_mm - size.height_mm / 2.0,
                  middle.x_mm + size.width_mm / 2.0, middle.y_mm + size.height_mm / 2.0};
    double height = 0.0;
    for (const std::string& line : mark.says)
      height += ruler_.measure(line, kLengthStyle).height();
    double y = middle.y_mm - height / 2.0;
    for (const std::string& line : mark.says) {
      const TextSize one = ruler_.measure(line, kLengthStyle);
      list_.emplace_back(
          drawing::text(ruler_, line, {middle.x_mm, y + one.above_mm}, kLengthStyle, Anchor::kMiddle));
      y += one.height();
    }
    if (mark.strong) add_outline(list_, box, Weight::kVisible);
    ground_.taken.push_back(grown(box, 0.5));  // room for the stroke of the frame
  }

  // --- notes ---
  static Label label_of(const NoteMark& note, const PartViews& views, const Placed& placed) {
    Label label;
    label.lines = note.lines;
    label.style = note.strong ? kStrongNoteStyle : kNoteStyle;
    label.names = {placed.on_paper(views.shown(placed.which, note.at)), placed.scale * note.radius_mm};
    return label;
  }

  const Layout& layout_;
  const Marks& marks_;
  const Ruler& ruler_;
  DisplayList list_;
  Ground ground_;
  std::vector<Disc> crosses_;
};

double scale_without_words(const PartViews& views, Projection projection, const DrawingRoom& room,
                           const Ruler& ruler) {
  for (const Scale& scale : kScales) {
    if (laid_out(views, {}, projection, room, scale.factor, ruler)) return scale.factor;
  }
  return 0.0;
}

struct Sheet {
  PartDrawing drawing;
  double scale = 0.0;                 // 0: it fits at none
  std::optional<PartDrawing> beside;  // extra views that found no room under the others
};

void add_extras(Sheet& sheet, const std::vector<ExtraView>& extras, const DrawingRoom& room,
                const Ruler& ruler) {
  const ExtraRow row = extra_row(extras, room.width_mm, ruler);
  if (extras.empty()) return;
  if (sheet.drawing.height_mm + row.height_mm <= room.height_mm) {
    append(sheet.drawing.list, row.list, {0.0, sheet.drawing.height_mm});
    sheet.drawing.height_mm += row.height_mm;
    return;
  }
  sheet.beside = PartDrawing{row.list, row.height_mm, "as said under each", {}, false};
}

Sheet sheet_of(const PartViews& views, const Marks& marks, Projection projection, const DrawingRoom& room,
               const Ruler& ruler) {
  Sheet sheet;
  for (const Scale& scale : kScales) {
    const auto layout = laid_out(views, marks, projection, room, scale.factor, ruler);
    if (!layout) continue;
    Drawing pen(*layout, marks, room, ruler);
    pen.draw_views();
    pen.draw_section(views);
    pen.draw_lengths();
    const std::vector<ExtraView> extras = extra_views(views, marks, scale.factor);
    sheet.drawing.below = pen.draw_notes(views, extras);
    sheet.drawing.list = std::move(pen).done();
    sheet.drawing.height_mm = layout->height_mm;
    sheet.drawing.is_broken = views.broken.has_value();
    sheet.drawing.scale = scale.says;
    sheet.scale = scale.factor;
    add_extras(sheet, extras, room, ruler);
    return sheet;
  }
  sheet.drawing.below = marks.notes;
  return sheet;
}

// One after the other, so that what the job lists together stays together.
Marks share_of(const Marks& marks, std::size_t sheet, std::size_t of) {
  const auto take = [&](const auto& all) {
    const auto from = static_cast<std::ptrdiff_t>(all.size() * sheet / of);
    const auto to = static_cast<std::ptrdiff_t>(all.size() * (sheet + 1) / of);
    return std::decay_t<decltype(all)>(all.begin() + from, all.begin() + to);
  };
  return {take(marks.lengths), take(marks.notes)};
}

}  // namespace

std::vector<PartDrawing> draw_part(const PartContent& whole, const DrawingRoom& room, const Ruler& ruler) {
  const PartContent content{with_break(whole.views, whole.marks), whole.marks, whole.projection};
  constexpr std::size_t kMostSheets = 4;
  constexpr std::size_t kMostOnOne = 40;  // lengths and notes
  const Marks& marks = content.marks;
  constexpr double kMayShrink = 0.5;
  const double wanted = kMayShrink * scale_without_words(content.views, content.projection, room, ruler);
  const std::size_t first =
      std::min(kMostSheets, (marks.lengths.size() + marks.notes.size()) / kMostOnOne + 1);
  std::vector<PartDrawing> best;
  double best_scale = -1.0;
  for (std::size_t of = first; of <= kMostSheets; ++of) {
    std::vector<PartDrawing> sheets;
    double scale = kScales.front().factor;
    for (std::size_t i = 0; i < of; ++i) {
      PartViews views = content.views;
      if (i > 0) views.leaning.clear();  // once
      Sheet sheet = sheet_of(views, share_of(marks, i, of), content.projection, room, ruler);
      scale = std::min(scale, sheet.scale);
      sheets.push_back(std::move(sheet.drawing));
      if (sheet.beside) sheets.push_back(std::move(*sheet.beside));
    }
    if (scale > best_scale) {  // more sheets have to be worth it
      best_scale = scale;
      best = std::move(sheets);
    }
    if (best_scale >= wanted - 1e-9) break;
  }
  return best;
}

// A frustum, small end to the left, and its view from there: on the left in third angle, on the right in first (ISO 5456-2, from memory).
void add_symbol(DisplayList& list, Projection projection, Point at, double high_mm) {
  const double large = high_mm / 2.0;
  const double small = high_mm / 4.0;
  const double gap = high_mm / 2.0;
  const double length = high_mm;
  const bool third = projection == Projection::kThirdAngle;
  const double circles = third ? at.x_mm + large : at.x_mm + length + gap + large;
  const double left = third ? at.x_mm + 2.0 * large + gap : at.x_mm;
  const double y = at.y_mm;
  list.emplace_back(Circle{{circles, y}, large, Weight::kThin});
  list.emplace_back(Circle{{circles, y}, small, Weight::kThin});
  list.emplace_back(Line{{left, y - small}, {left, y + small}, Weight::kThin});
  list.emplace_back(Line{{left + length, y - large}, {left + length, y + large}, Weight::kThin});
  list.emplace_back(Line{{left, y - small}, {left + length, y - large}, Weight::kThin});
  list.emplace_back(Line{{left, y + small}, {left + length, y + large}, Weight::kThin});
}

}  // namespace sparewright::drawing
