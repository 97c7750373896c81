// Invented contents of drawings: plates with holes as their views would show them, with lengths and notes.
#pragma once

#include <algorithm>
#include <numbers>
#include <utility>

#include <fmt/format.h>

#include "drawing/part_drawing.hpp"
#include "splitmix.hpp"

namespace sparewright::tests {

inline void add_box(drawing::View& view, double width, double height) {
  view.low = {0.0, 0.0};
  view.high = {width, height};
  view.lines = {{{0, 0}, {width, 0}},
                {{width, 0}, {width, height}},
                {{width, height}, {0, height}},
                {{0, height}, {0, 0}}};
}

struct DrawnHole {
  double x = 0.0;
  double y = 0.0;
  double radius = 0.0;
};

// A plate with holes as its three views would show it.
inline drawing::PartContent random_drawing(SplitMix& random) {
  const double x = random.between(20.0, 400.0);
  const double y = random.between(20.0, 200.0);
  const double z = random.between(5.0, 80.0);
  drawing::PartContent content;
  content.projection = random.one_in(3) ? drawing::Projection::kFirstAngle : drawing::Projection::kThirdAngle;
  add_box(content.views.front, x, z);
  content.views.top.emplace();
  add_box(*content.views.top, x, y);
  if (random.one_in(2)) {
    content.views.end.emplace();
    add_box(*content.views.end, y, z);
  }
  add_box(content.views.slant, x, y);
  const std::size_t holes = random.below(7);
  for (std::size_t i = 0; i < holes; ++i) {
    const DrawnHole hole{random.between(0.1, 0.9) * x, random.between(0.1, 0.9) * y,
                         random.between(0.02, 0.1) * std::min(x, y)};
    content.views.top->arcs.push_back(
        {{hole.x, hole.y}, hole.radius, 0.0, 2.0 * std::numbers::pi, drawing::Seen::kVisible});
    for (const double side : {-1.0, 1.0})
      content.views.front.lines.push_back(
          {{hole.x + side * hole.radius, 0}, {hole.x + side * hole.radius, z}, drawing::Seen::kHidden});
    const auto length = [&](part::Axis along, shape::Point from) {
      drawing::LengthMark mark;
      mark.from = from;
      mark.to = {hole.x, hole.y, z};
      mark.along = along;
      mark.strong = random.one_in(3);
      mark.says = {fmt::format("{:.3f}", random.between(1.0, 99.0))};
      if (random.one_in(2)) mark.says.push_back(fmt::format("{:.3f}", random.between(1.0, 99.0)));
      mark.names = {fmt::format("length {}", content.marks.lengths.size())};
      content.marks.lengths.push_back(std::move(mark));
    };
    length(part::Axis::kX, {random.one_in(2) ? 0.0 : x, hole.y, z});
    length(part::Axis::kY, {hole.x, random.one_in(2) ? 0.0 : y, z});
    drawing::NoteMark note;
    note.at = {hole.x, hole.y, z};
    note.radius_mm = hole.radius;
    note.lines = {fmt::format("hole {}:", i + 1), "dia 6.60 through"};
    if (random.one_in(2)) note.lines.emplace_back("counterbore dia 11.00 x 6.80 deep");
    note.strong = random.one_in(4);
    content.marks.notes.push_back(std::move(note));
  }
  drawing::LengthMark thick;
  thick.to = {0, 0, z};
  thick.along = part::Axis::kZ;
  thick.seen_from = part::Face::kFront;
  thick.says = {"thick"};
  content.marks.lengths.push_back(std::move(thick));
  return content;
}

}  // namespace sparewright::tests
