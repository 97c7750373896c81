// The extra views of a drawing in a row, each in its circle with its caption under it. Used inside this room only.
#pragma once

#include "drawing/display_list.hpp"
#include "drawing/extra_views.hpp"

namespace sparewright::drawing {

struct ExtraRow {
  DisplayList list;  // from (0, 0)
  double height_mm = 0.0;
};

// In the middle of the width; as high as nothing where there are none. A caption that is too wide is broken.
[[nodiscard]] ExtraRow extra_row(const std::vector<ExtraView>& views, double width_mm, const Ruler& ruler);

}  // namespace sparewright::drawing
