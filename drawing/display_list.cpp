#include "drawing/display_list.hpp"

#include <cmath>
#include <numbers>
#include <utility>

namespace sparewright::drawing {
namespace {

constexpr double kArrowSlimness = 0.22;  // half its width over its length

Element moved_by(Line line, Point by) {
  line.from = moved(line.from, by);
  line.to = moved(line.to, by);
  return line;
}

Element moved_by(Circle circle, Point by) {
  circle.centre = moved(circle.centre, by);
  return circle;
}

Element moved_by(Arc arc, Point by) {
  arc.centre = moved(arc.centre, by);
  return arc;
}

Element moved_by(Filled filled, Point by) {
  for (Point& corner : filled.corners)
    corner = moved(corner, by);
  return filled;
}

Element moved_by(Text text, Point by) {
  text.at = moved(text.at, by);
  text.box = moved(text.box, by);
  return text;
}

}  // namespace

Stroke stroke_of(Weight weight) {
  switch (weight) {
    case Weight::kFrame:
      return {0.9, {}};
    case Weight::kBold:
      return {0.7, {}};
    case Weight::kVisible:
      return {0.5, {}};
    case Weight::kThin:
      return {0.25, {}};
    case Weight::kHidden:
      return {0.3, {2.4, 1.2}};
    case Weight::kCentre:
      return {0.18, {4.0, 0.8, 0.8, 0.8}};
    case Weight::kHatch:
      return {0.18, {}};
  }
  return {};
}

Text text(const Ruler& ruler, std::string says, Point at, const TextStyle& style, Anchor anchor, Ink ink) {
  const TextSize size = ruler.measure(says, style);
  const double share = anchor == Anchor::kLeft ? 0.0 : anchor == Anchor::kMiddle ? 0.5 : 1.0;
  const double left = at.x_mm - share * size.width_mm;
  const Box box{left, at.y_mm - size.above_mm, left + size.width_mm, at.y_mm + size.below_mm};
  return {std::move(says), at, anchor, style, ink, box};
}

Element moved(const Element& element, Point by) {
  return std::visit([&](const auto& e) { return moved_by(e, by); }, element);
}

void append(DisplayList& list, const DisplayList& more, Point moved_by) {
  for (const Element& element : more)
    list.push_back(moved(element, moved_by));
}

void add_outline(DisplayList& list, const Box& box, Weight weight) {
  const Point a{box.left_mm, box.top_mm};
  const Point b{box.right_mm, box.top_mm};
  const Point c{box.right_mm, box.bottom_mm};
  const Point d{box.left_mm, box.bottom_mm};
  for (const auto& [from, to] : {Segment{a, b}, Segment{b, c}, Segment{c, d}, Segment{d, a}}) {
    list.emplace_back(Line{from, to, weight});
  }
}

void add_filled(DisplayList& list, const Box& box, Ink ink) {
  list.emplace_back(Filled{{{box.left_mm, box.top_mm},
                            {box.right_mm, box.top_mm},
                            {box.right_mm, box.bottom_mm},
                            {box.left_mm, box.bottom_mm}},
                           ink});
}

double add_wave(DisplayList& list, double x_mm, double top_mm, double bottom_mm) {
  constexpr double kThirty = std::numbers::pi / 6.0;
  const double radius = (bottom_mm - top_mm) / 2.0;  // of 60 degrees: the chord
  const double off = radius * std::cos(kThirty);
  constexpr double kPi = std::numbers::pi;
  list.emplace_back(
      Arc{{x_mm + off, top_mm + radius / 2.0}, radius, kPi - kThirty, kPi + kThirty, Weight::kThin});
  list.emplace_back(Arc{{x_mm - off, bottom_mm - radius / 2.0}, radius, -kThirty, kThirty, Weight::kThin});
  return radius - off;
}

void add_arrowhead(DisplayList& list, Point from, Point tip, double length_mm) {
  const double apart = distance(from, tip);
  if (apart == 0.0) return;
  const Point along{(tip.x_mm - from.x_mm) / apart, (tip.y_mm - from.y_mm) / apart};
  const Point back{tip.x_mm - length_mm * along.x_mm, tip.y_mm - length_mm * along.y_mm};
  const double half = kArrowSlimness * length_mm;
  list.emplace_back(Filled{{tip,
                            {back.x_mm - half * along.y_mm, back.y_mm + half * along.x_mm},
                            {back.x_mm + half * along.y_mm, back.y_mm - half * along.x_mm}},
                           Ink::kBlack});
}

}  // namespace sparewright::drawing
