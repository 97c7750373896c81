#include "drawing/clip.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace sparewright::drawing {
namespace {

using shape::FlatPoint;

class Clip {
 public:
  Clip(const FlatPoint& centre, double radius) : centre_(centre), radius_(radius) {}

  [[nodiscard]] std::vector<ViewLine> lines(const std::vector<ViewLine>& all) const {
    std::vector<ViewLine> out;
    for (const ViewLine& line : all) {
      if (const auto piece = inside(line)) out.push_back(*piece);
    }
    return out;
  }

  // Those that lie within whole; the others in pieces, as paths.
  [[nodiscard]] std::vector<ViewArc> arcs(const std::vector<ViewArc>& all,
                                          std::vector<ViewPath>& paths) const {
    std::vector<ViewArc> out;
    for (const ViewArc& arc : all) {
      const double apart = std::hypot(arc.centre.u - centre_.u, arc.centre.v - centre_.v);
      if (apart + arc.radius_mm <= radius_) {
        out.push_back(arc);
        continue;
      }
      constexpr int kPieces = 180;
      ViewPath whole{{}, arc.seen, arc.cut_here};
      for (int i = 0; i <= kPieces; ++i) {
        const double angle = arc.from_rad + (arc.to_rad - arc.from_rad) * i / kPieces;
        whole.points.push_back(
            {arc.centre.u + arc.radius_mm * std::cos(angle), arc.centre.v + arc.radius_mm * std::sin(angle)});
      }
      add(whole, paths);
    }
    return out;
  }

  void add(const ViewPath& path, std::vector<ViewPath>& out) const {
    ViewPath now{{}, path.seen, path.cut_here};
    const auto finish = [&] {
      if (now.points.size() > 1) out.push_back(now);
      now.points.clear();
    };
    for (std::size_t i = 1; i < path.points.size(); ++i) {
      const auto piece = inside({path.points[i - 1], path.points[i]});
      if (!piece) {
        finish();
        continue;
      }
      if (now.points.empty() || !(now.points.back() == piece->from)) {
        finish();
        now.points.push_back(piece->from);
      }
      now.points.push_back(piece->to);
    }
    finish();
  }

 private:
  // The stretch of a line where (from + t (to - from) - centre)^2 <= radius^2.
  [[nodiscard]] std::optional<ViewLine> inside(const ViewLine& line) const {
    const FlatPoint way{line.to.u - line.from.u, line.to.v - line.from.v};
    const FlatPoint off{line.from.u - centre_.u, line.from.v - centre_.v};
    const double a = way.u * way.u + way.v * way.v;
    const double b = way.u * off.u + way.v * off.v;
    const double c = off.u * off.u + off.v * off.v - radius_ * radius_;
    const double root = b * b - a * c;
    if (!(a > 0.0) || !(root > 0.0)) return std::nullopt;
    const double from = std::max(0.0, (-b - std::sqrt(root)) / a);
    const double to = std::min(1.0, (-b + std::sqrt(root)) / a);
    if (from >= to) return std::nullopt;
    ViewLine piece = line;
    if (from > 0.0) piece.from = {line.from.u + from * way.u, line.from.v + from * way.v};
    if (to < 1.0) piece.to = {line.from.u + to * way.u, line.from.v + to * way.v};
    return piece;
  }

  FlatPoint centre_;
  double radius_;
};

}  // namespace

View within(const View& view, const FlatPoint& centre, double radius_mm) {
  const Clip clip(centre, radius_mm);
  View out;
  out.lines = clip.lines(view.lines);
  out.thin_lines = clip.lines(view.thin_lines);
  out.arcs = clip.arcs(view.arcs, out.paths);
  for (const ViewPath& path : view.paths)
    clip.add(path, out.paths);
  std::vector<ViewPath> thin;
  out.thin_arcs = clip.arcs(view.thin_arcs, thin);
  for (const ViewPath& path : thin) {
    for (std::size_t i = 1; i < path.points.size(); ++i)
      out.thin_lines.push_back({path.points[i - 1], path.points[i], path.seen});
  }
  out.low = {centre.u - radius_mm, centre.v - radius_mm};
  out.high = {centre.u + radius_mm, centre.v + radius_mm};
  return out;
}

}  // namespace sparewright::drawing
