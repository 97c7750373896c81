#include "drawing/line_grid.hpp"

#include <algorithm>
#include <cmath>

namespace sparewright::drawing {
namespace {

constexpr double kCell_mm = 6.0;
constexpr double kMostCells = 400.0;  // each way

std::size_t count(double length_mm) {
  return static_cast<std::size_t>(std::clamp(std::ceil(length_mm / kCell_mm), 1.0, kMostCells));
}

Box box_of(const Segment& s) {
  return {std::min(s.from.x_mm, s.to.x_mm), std::min(s.from.y_mm, s.to.y_mm),
          std::max(s.from.x_mm, s.to.x_mm), std::max(s.from.y_mm, s.to.y_mm)};
}

std::size_t place(double at, double low, double high, std::size_t cells) {
  const double share = high > low ? (at - low) / (high - low) : 0.0;
  return static_cast<std::size_t>(
      std::clamp(std::floor(share * static_cast<double>(cells)), 0.0, static_cast<double>(cells - 1)));
}

}  // namespace

LineGrid::LineGrid(const Box& area, const std::vector<Segment>& lines)
    : area_(area),
      lines_(lines),
      columns_(count(area.width())),
      rows_(count(area.height())),
      cells_(columns_ * rows_) {
  for (std::size_t i = 0; i < lines_.size(); ++i) {
    const Cells over = cells_of(box_of(lines_[i]));
    for (std::size_t row = over.top; row <= over.bottom; ++row) {
      for (std::size_t column = over.left; column <= over.right; ++column)
        cells_[row * columns_ + column].push_back(i);
    }
  }
}

LineGrid::Cells LineGrid::cells_of(const Box& box) const {
  return {place(box.left_mm, area_.left_mm, area_.right_mm, columns_),
          place(box.top_mm, area_.top_mm, area_.bottom_mm, rows_),
          place(box.right_mm, area_.left_mm, area_.right_mm, columns_),
          place(box.bottom_mm, area_.top_mm, area_.bottom_mm, rows_)};
}

bool LineGrid::any_crosses(const Box& box) const {
  const Cells over = cells_of(box);
  for (std::size_t row = over.top; row <= over.bottom; ++row) {
    for (std::size_t column = over.left; column <= over.right; ++column) {
      for (const std::size_t line : cell(column, row)) {
        if (crosses(lines_[line], box)) return true;
      }
    }
  }
  return false;
}

std::size_t LineGrid::crossed_by(const Segment& segment) const {
  const Cells over = cells_of(box_of(segment));
  std::vector<std::size_t> found;
  for (std::size_t row = over.top; row <= over.bottom; ++row) {
    for (std::size_t column = over.left; column <= over.right; ++column) {
      for (const std::size_t line : cell(column, row)) {
        if (cross(lines_[line], segment)) found.push_back(line);
      }
    }
  }
  std::sort(found.begin(), found.end());
  return static_cast<std::size_t>(std::unique(found.begin(), found.end()) - found.begin());
}

}  // namespace sparewright::drawing
