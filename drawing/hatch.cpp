#include "drawing/hatch.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sparewright::drawing {
namespace {

// One hatching line runs through the points (x, level - x) when it rises on paper, (x, level + x) when it falls.
struct Slanted {
  double level_mm = 0.0;
  double slope = -1.0;  // of y over x: -1 rises on paper, as y runs down

  [[nodiscard]] Point at(double x_mm) const { return {x_mm, level_mm + slope * x_mm}; }
};

struct Piece {
  double from_x_mm = 0.0;
  double to_x_mm = 0.0;
};

// The x over which the line runs inside the box; from > to where it does not.
Piece inside(const Slanted& line, const Box& box) {
  const double a = (box.top_mm - line.level_mm) / line.slope;
  const double b = (box.bottom_mm - line.level_mm) / line.slope;
  return {std::max(box.left_mm, std::min(a, b)), std::min(box.right_mm, std::max(a, b))};
}

Piece inside(const Slanted& line, const Disc& disc) {
  const double below_line = disc.centre.y_mm - line.at(disc.centre.x_mm).y_mm;
  const double nearest_x = disc.centre.x_mm + line.slope * below_line / 2.0;
  const double apart = std::abs(below_line) / std::numbers::sqrt2;
  if (apart >= disc.radius_mm) return {1.0, 0.0};
  const double half = std::sqrt(disc.radius_mm * disc.radius_mm - apart * apart) / std::numbers::sqrt2;
  return {nearest_x - half, nearest_x + half};
}

void cut_out(std::vector<Piece>& pieces, const Piece& gap) {
  if (gap.from_x_mm >= gap.to_x_mm) return;
  std::vector<Piece> left;
  for (const Piece& piece : pieces) {
    const Piece before{piece.from_x_mm, std::min(piece.to_x_mm, gap.from_x_mm)};
    const Piece after{std::max(piece.from_x_mm, gap.to_x_mm), piece.to_x_mm};
    if (before.from_x_mm < before.to_x_mm) left.push_back(before);
    if (after.from_x_mm < after.to_x_mm) left.push_back(after);
  }
  pieces = std::move(left);
}

}  // namespace

std::vector<Segment> hatch(const Box& area, const Hatching& hatching, const std::vector<Box>& boxes_left_out,
                           const std::vector<Disc>& discs_left_out) {
  const double slope = hatching.slant == Slant::kRising ? -1.0 : 1.0;
  const double step = hatching.apart_mm * std::numbers::sqrt2;  // between levels
  const double at_left = -slope * area.left_mm;
  const double at_right = -slope * area.right_mm;
  const double lowest = area.top_mm + std::min(at_left, at_right);
  const double highest = area.bottom_mm + std::max(at_left, at_right);
  std::vector<Segment> lines;
  for (double n = std::ceil(lowest / step); n * step < highest; n += 1.0) {
    const Slanted line{n * step, slope};
    std::vector<Piece> pieces{inside(line, area)};
    for (const Box& box : boxes_left_out)
      cut_out(pieces, inside(line, box));
    for (const Disc& disc : discs_left_out)
      cut_out(pieces, inside(line, disc));
    for (const Piece& piece : pieces) {
      if ((piece.to_x_mm - piece.from_x_mm) * std::numbers::sqrt2 < kShortestHatch_mm) continue;
      lines.push_back({line.at(piece.from_x_mm), line.at(piece.to_x_mm)});
    }
  }
  return lines;
}

}  // namespace sparewright::drawing
