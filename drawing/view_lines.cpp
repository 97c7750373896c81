#include "drawing/view_lines.hpp"

#include <cmath>
#include <numbers>

namespace sparewright::drawing {
namespace {

void add_arc(DisplayList& list, std::vector<Segment>& ground, const ViewArc& arc, const ViewPlace& place,
             Weight weight) {
  const Point centre = place.on_paper(arc.centre);
  const double radius = place.scale * arc.radius_mm;
  if (is_whole(arc)) {
    list.emplace_back(Circle{centre, radius, weight});
  } else {  // clockwise on paper is counterclockwise with v up
    list.emplace_back(Arc{centre, radius, -arc.to_rad, -arc.from_rad, weight});
  }
  add_round(ground, centre, radius, arc.from_rad, arc.to_rad);
}

}  // namespace

void add_round(std::vector<Segment>& ground, Point centre, double radius_mm, double from_rad, double to_rad) {
  constexpr int kRound = 24;
  const auto at = [&](int i) {
    const double angle = from_rad + (to_rad - from_rad) * i / kRound;
    return Point{centre.x_mm + radius_mm * std::cos(angle), centre.y_mm - radius_mm * std::sin(angle)};
  };
  for (int i = 1; i <= kRound; ++i)
    ground.push_back({at(i - 1), at(i)});
}

bool is_whole(const ViewArc& arc) {
  return arc.to_rad - arc.from_rad >= 2.0 * std::numbers::pi - 1e-6;
}

void add_view(DisplayList& list, std::vector<Segment>& ground, const View& view, const ViewPlace& place,
              const WeightOf& weight_of) {
  const auto add_line = [&](const shape::FlatPoint& from, const shape::FlatPoint& to, Weight weight) {
    list.emplace_back(Line{place.on_paper(from), place.on_paper(to), weight});
    ground.push_back({place.on_paper(from), place.on_paper(to)});
  };
  for (const ViewLine& line : view.lines) {
    if (const auto weight = weight_of(line.seen, line.cut_here)) add_line(line.from, line.to, *weight);
  }
  for (const ViewArc& arc : view.arcs) {
    if (const auto weight = weight_of(arc.seen, arc.cut_here)) add_arc(list, ground, arc, place, *weight);
  }
  for (const ViewLine& line : view.thin_lines)
    add_line(line.from, line.to, Weight::kThin);
  for (const ViewArc& arc : view.thin_arcs)
    add_arc(list, ground, arc, place, Weight::kThin);
  for (const ViewWave& wave : view.waves) {
    const Point top = place.on_paper({wave.u, wave.high});
    const Point bottom = place.on_paper({wave.u, wave.low});
    const double wide = add_wave(list, top.x_mm, top.y_mm, bottom.y_mm);
    for (const double x : {top.x_mm - wide, top.x_mm, top.x_mm + wide})
      ground.push_back({{x, top.y_mm}, {x, bottom.y_mm}});
  }
  for (const ViewPath& path : view.paths) {
    const auto weight = weight_of(path.seen, path.cut_here);
    for (std::size_t i = 1; weight && i < path.points.size(); ++i)
      add_line(path.points[i - 1], path.points[i], *weight);
  }
}

}  // namespace sparewright::drawing
