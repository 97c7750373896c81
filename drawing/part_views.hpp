// The views a drawing of the part has.
#pragma once

#include <optional>
#include <vector>

#include "core/part/part.hpp"
#include "drawing/view.hpp"

namespace sparewright::drawing {

// Front always; from above and from the right end where something lies there that they show true, or where a shape of two
// views would leave a question. The picture at a slant shows what is seen only.
struct PartViews {
  View front;
  std::optional<View> top;
  std::optional<View> end;
  View slant;
};

[[nodiscard]] PartViews views_of(const part::Part& part, const shape::Work& work,
                                 const std::vector<solid::Edge>& edges);

// Which of the views shows a side: its own, or that of the side opposite.
enum class ViewOf { kFront, kTop, kEnd };
[[nodiscard]] ViewOf view_of_side(const PartViews& views, part::Face side);
[[nodiscard]] Sight sight_of(ViewOf view);

}  // namespace sparewright::drawing
