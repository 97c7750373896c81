// The views a drawing of the part has.
#pragma once

#include <optional>
#include <vector>

#include "core/part/part.hpp"
#include "drawing/section.hpp"
#include "drawing/view.hpp"

namespace sparewright::drawing {

enum class ViewOf { kFront, kTop, kEnd };

// Front always; from above and from the right end where something lies there that they show true, or where a shape of two
// views would leave a question. The picture at a slant shows what is seen only.
struct PartViews {
  View front;
  std::vector<ViewLine> hatched;       // over the metal the section cuts, where front is one
  std::optional<double> section_y_mm;  // where front is a section
  std::optional<View> top;
  std::optional<View> end;
  View slant;
};

// The front is a section where section_wanted() says so. Fails as edges_of does.
[[nodiscard]] base::Result<PartViews> views_of(const part::Part& part, const ledger::Snapshot& figures,
                                               const shape::Recipe& recipe, const EdgesOf& edges_of);

// Takes the hidden lines away.
void keep_seen(View& view);

// Which of the views shows a side: its own, or that of the side opposite.
[[nodiscard]] ViewOf view_of_side(const PartViews& views, part::Face side);
[[nodiscard]] Sight sight_of(ViewOf view);

}  // namespace sparewright::drawing
