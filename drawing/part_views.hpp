// The views a drawing of the part has.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/part/part.hpp"
#include "drawing/section.hpp"
#include "drawing/view.hpp"

namespace sparewright::drawing {

enum class ViewOf { kFront, kTop, kEnd };

// Of a long bar: what lies between two x of the part is left out of the front and the top view, gap_mm shown for it.
struct LongBreak {
  double from_mm = 0.0;
  double to_mm = 0.0;
  double gap_mm = 0.0;

  // Where a place of the whole view is shown.
  [[nodiscard]] shape::FlatPoint shown(const shape::FlatPoint& p) const {
    return p.u > from_mm ? shape::FlatPoint{p.u - (to_mm - from_mm) + gap_mm, p.v} : p;
  }
};

// A hole that is not square to its side, seen along itself: there alone it is round.
struct LeaningHole {
  std::string name;
  part::Face into = part::Face::kTop;
  shape::Point at;  // the middle of its mouth
  double diameter_mm = 0.0;
  View view;
  shape::FlatPoint mouth;  // in that view
};

// Front always; from above and from the right end where something lies there that they show true, or where a shape of two
// views would leave a question. The picture at a slant shows what is seen only.
struct PartViews {
  View front;
  std::vector<ViewLine> hatched;       // over the metal the section cuts, where front is one
  std::optional<double> section_y_mm;  // where front is a section
  std::optional<View> top;
  std::optional<View> end;
  View slant;
  std::vector<LeaningHole> leaning;
  std::optional<LongBreak> broken;

  // Precondition: it is there.
  [[nodiscard]] const View& view(ViewOf which) const;
  // Where one of the three views shows a place of the part.
  [[nodiscard]] shape::FlatPoint shown(ViewOf view, const shape::Point& at) const;
};

// The front is a section where section_wanted() says so. Fails as edges_of does.
[[nodiscard]] base::Result<PartViews> views_of(const part::Part& part, const ledger::Snapshot& figures,
                                               const shape::Recipe& recipe, const EdgesOf& edges_of);

// The figure's value in its base unit; NaN where it is not known or not there.
[[nodiscard]] double value_or_nan(const ledger::Snapshot& figures, const std::string& name);

// Takes the hidden lines away.
void keep_seen(View& view);

// Which of the views shows a side: its own, or that of the side opposite.
[[nodiscard]] ViewOf view_of_side(const PartViews& views, part::Face side);
[[nodiscard]] Sight sight_of(ViewOf view);

}  // namespace sparewright::drawing
