// Where the views of a drawing stand on paper, and their lengths in rows beside them. Used inside this room only.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "drawing/dimension_rows.hpp"
#include "drawing/part_drawing.hpp"

namespace sparewright::drawing {

// A view on paper.
struct Placed {
  const View* view = nullptr;
  ViewOf which = ViewOf::kFront;
  Box box;  // of the view itself
  double scale = 1.0;

  [[nodiscard]] Point on_paper(const shape::FlatPoint& p) const {
    return {box.left_mm + scale * (p.u - view->low.u), box.top_mm + scale * (view->high.v - p.v)};
  }
};

enum class Beside { kAbove, kBelow, kLeft, kRight };

// A length that stands beside a view.
struct PlacedLength {
  const LengthMark* mark = nullptr;
  shape::FlatPoint from;  // in the view
  shape::FlatPoint to;
  RowPlace place;
};

struct LengthRows {
  ViewOf view = ViewOf::kFront;
  Beside beside = Beside::kBelow;
  std::vector<PlacedLength> lengths;
  std::vector<double> depths_mm;  // of each row, outwards
  double start_mm = 0.0;          // from the view to the first row
  [[nodiscard]] double depth_mm() const;
};

struct Layout {
  std::vector<Placed> views;  // the slanted one last, if it found room: without lengths
  std::vector<LengthRows> rows;
  double scale = 1.0;
  double height_mm = 0.0;
  bool has_slant = false;

  [[nodiscard]] const Placed& placed(ViewOf view) const;
};

inline constexpr TextStyle kLengthStyle{3.2, Face::kRegular};

// What the words of a length take, a frame included.
struct WordsSize {
  double width_mm = 0.0;
  double height_mm = 0.0;
};
[[nodiscard]] WordsSize words_size(const LengthMark& mark, const Ruler& ruler);
inline constexpr double kRowFree_mm = 3.0;   // from the view to the words of its first row
inline constexpr double kRowPitch_mm = 3.2;  // beside the words of a row

// At that scale; nothing where it does not fit.
[[nodiscard]] std::optional<Layout> laid_out(const PartViews& views, const Marks& marks,
                                             Projection projection, const DrawingRoom& room, double scale,
                                             const Ruler& ruler);

}  // namespace sparewright::drawing
