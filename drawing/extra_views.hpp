// Views beside the usual three: what is too small there, larger; and holes that lean, seen along themselves. Used inside
// this room only.
#pragma once

#include <string>
#include <vector>

#include "drawing/part_marks.hpp"
#include "drawing/part_views.hpp"

namespace sparewright::drawing {

// Partial: what lies in a circle, with a letter in the view it belongs to (ISO 128-3, from memory).
struct ExtraView {
  std::string letter;
  std::vector<std::string>
      caption;  // "A  5:1", and what it shows: the letter may have no room in the drawing
  View view;
  double scale = 1.0;
  ViewOf of = ViewOf::kFront;  // where its letter stands
  shape::FlatPoint centre;     // there
  double radius_mm = 0.0;      // of the circle there; 0: the letter points to the centre
};
inline constexpr double kExtraRadius_mm = 14.0;  // on paper
inline constexpr std::size_t kMostExtraViews = 4;

// The views of leaning holes, then one for each place where something is less than 1.6 mm across at that scale, the smallest
// first; places near each other share one. kMostExtraViews at most.
[[nodiscard]] std::vector<ExtraView> extra_views(const PartViews& views, const Marks& marks, double scale);

}  // namespace sparewright::drawing
