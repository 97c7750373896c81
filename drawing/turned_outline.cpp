#include "drawing/turned_outline.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sparewright::drawing {
namespace {

constexpr double kNothing_mm = 1e-6;

double radius_at(const TurnedPiece& piece, double at_mm) {
  const double length = piece.to_mm - piece.from_mm;
  const double share = length > 0.0 ? (at_mm - piece.from_mm) / length : 0.0;
  return piece.from_radius_mm + share * (piece.to_radius_mm - piece.from_radius_mm);
}

TurnedPiece part_of(const TurnedPiece& piece, double from_mm, double to_mm) {
  return {from_mm, to_mm, radius_at(piece, from_mm), radius_at(piece, to_mm), piece.cut_here};
}

bool is_known(const route::TurnedView::Step& step) {
  return std::isfinite(step.from_mm) && std::isfinite(step.to_mm) && std::isfinite(step.from_diameter_mm) &&
         std::isfinite(step.to_diameter_mm);
}

}  // namespace

std::vector<TurnedPiece> turned_outline(const route::TurnedView& view) {
  std::vector<TurnedPiece> pieces;
  for (const route::TurnedView::Step& step : view.steps) {
    if (step.is_bore || !is_known(step)) continue;
    const TurnedPiece whole{step.from_mm, step.to_mm, step.from_diameter_mm / 2.0, step.to_diameter_mm / 2.0,
                            step.cut_here};
    const double low = std::max(step.from_mm, view.work_from_mm);
    const double high = std::min(step.to_mm, view.work_to_mm);
    if (high - low <= kNothing_mm) continue;
    const TurnedPiece cut = part_of(whole, low, high);
    if (pieces.empty()) {
      pieces.push_back(cut);
      continue;
    }
    std::vector<TurnedPiece> next;
    const auto add = [&](const TurnedPiece& from, double a, double b) {
      if (b - a > kNothing_mm) next.push_back(part_of(from, a, b));
    };
    for (const TurnedPiece& piece : pieces) {
      const double a = std::max(piece.from_mm, cut.from_mm);
      const double b = std::min(piece.to_mm, cut.to_mm);
      if (b - a <= kNothing_mm) {
        next.push_back(piece);
        continue;
      }
      const double middle = (a + b) / 2.0;
      const bool takes = radius_at(cut, middle) < radius_at(piece, middle) + kNothing_mm;
      add(piece, piece.from_mm, a);
      add(takes ? cut : piece, a, b);
      add(piece, b, piece.to_mm);
    }
    pieces = std::move(next);
  }
  return pieces;
}

}  // namespace sparewright::drawing
