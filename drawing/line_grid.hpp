// Many lines on paper, found by where they are. Used inside this room only.
#pragma once

#include <cstddef>
#include <vector>

#include "drawing/geometry.hpp"

namespace sparewright::drawing {

// The same answers as asking every line in turn. Lines may lie outside the area; they are then kept at its edge.
class LineGrid {
 public:
  LineGrid(const Box& area, const std::vector<Segment>& lines);

  [[nodiscard]] bool any_crosses(const Box& box) const;
  [[nodiscard]] std::size_t crossed_by(const Segment& segment) const;

 private:
  struct Cells {
    std::size_t left = 0;
    std::size_t top = 0;
    std::size_t right = 0;
    std::size_t bottom = 0;
  };
  [[nodiscard]] Cells cells_of(const Box& box) const;
  [[nodiscard]] const std::vector<std::size_t>& cell(std::size_t column, std::size_t row) const {
    return cells_[row * columns_ + column];
  }

  Box area_;
  std::vector<Segment> lines_;
  std::size_t columns_ = 1;
  std::size_t rows_ = 1;
  std::vector<std::vector<std::size_t>> cells_;
};

}  // namespace sparewright::drawing
