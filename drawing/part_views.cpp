#include "drawing/part_views.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "drawing/conventions.hpp"
#include "drawing/leaning_holes.hpp"

namespace sparewright::drawing {
namespace {

using part::Axis;
using part::Face;
using shape::FlatPoint;

// The side whose view shows a feature as it is.
Face shown_from(const part::Feature& feature) {
  if (const auto* hole = std::get_if<part::Hole>(&feature.shape)) return hole->into;
  if (const auto* flat = std::get_if<part::Flat>(&feature.shape)) {
    const bool along_y = flat->region && flat->region->along == Axis::kY;
    return along_y ? Face::kRightEnd : part::axis_of(flat->side) == Axis::kY ? Face::kTop : Face::kFront;
  }
  const auto& formed = std::get<part::Formed>(feature.shape);
  const part::FormRow& row = part::row_of(formed.form);
  if (row.round_work) return formed.form == part::Form::kEccentric ? formed.side : Face::kFront;
  if (row.in_hole) return formed.of_into;
  if (!formed.edge) return formed.form == part::Form::kSplit ? Face::kFront : formed.side;
  // An edge is seen true along itself.
  for (const Axis axis : part::kAxes) {
    if (axis != part::axis_of(formed.side) && axis != part::axis_of(*formed.edge))
      return part::face_at(axis, true);
  }
  return formed.side;
}

bool anything_along(const part::Part& part, Axis axis) {
  return std::any_of(part.features.begin(), part.features.end(), [&](const part::Feature& feature) {
    return part::axis_of(shown_from(feature)) == axis;
  });
}

// A round bar that is turned all over is round, as its notes say; what else is cut shows at its end.
bool wants_end(const part::Part& part) {
  const bool is_round =
      part.blank.shape == part::BlankShape::kRoundBar || part.blank.shape == part::BlankShape::kTube;
  if (!is_round) return part::is_bar(part.blank.shape) || anything_along(part, Axis::kX);
  return std::any_of(part.features.begin(), part.features.end(), [](const part::Feature& feature) {
    const auto* formed = std::get_if<part::Formed>(&feature.shape);
    const bool is_rim = formed != nullptr && part::row_of(formed->form).edge && !formed->edge;
    return formed == nullptr || formed->form == part::Form::kEccentric ||
           !(part::row_of(formed->form).round_work || is_rim);
  });
}

Sight slanted() {
  const double s2 = std::numbers::sqrt2;
  const double s3 = std::numbers::sqrt3;
  const double s6 = s2 * s3;
  return {{1 / s2, 1 / s2, 0}, {-1 / s6, 1 / s6, 2 / s6}, {1 / s3, -1 / s3, 1 / s3}};
}

}  // namespace

void keep_seen(View& view) {
  const auto is_hidden = [](const auto& one) { return one.seen == Seen::kHidden; };
  std::erase_if(view.lines, is_hidden);
  std::erase_if(view.arcs, is_hidden);
  std::erase_if(view.paths, is_hidden);
}

Sight sight_of(ViewOf view) {
  switch (view) {
    case ViewOf::kTop:
      return {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    case ViewOf::kEnd:
      return {{0, 1, 0}, {0, 0, 1}, {1, 0, 0}};
    case ViewOf::kFront:
      break;
  }
  return {{1, 0, 0}, {0, 0, 1}, {0, -1, 0}};
}

double value_or_nan(const ledger::Snapshot& figures, const std::string& name) {
  const ledger::Figure* figure = figures.find(name);
  return figure != nullptr && figure->known() ? figure->value : std::nan("");
}

const View& PartViews::view(ViewOf which) const {
  if (which == ViewOf::kTop) return *top;
  return which == ViewOf::kEnd ? *end : front;
}

FlatPoint PartViews::shown(ViewOf view, const shape::Point& at) const {
  const FlatPoint whole = sight_of(view).seen(at);
  return broken && view != ViewOf::kEnd ? broken->shown(whole) : whole;
}

ViewOf view_of_side(const PartViews& views, Face side) {
  if (part::axis_of(side) == Axis::kZ && views.top) return ViewOf::kTop;
  if (part::axis_of(side) == Axis::kX && views.end) return ViewOf::kEnd;
  return ViewOf::kFront;
}

base::Result<PartViews> views_of(const part::Part& part, const ledger::Snapshot& figures,
                                 const shape::Recipe& recipe, const EdgesOf& edges_of) {
  const auto edges = edges_of(recipe);
  if (!edges) return tl::unexpected(edges.error());
  const shape::Work work = recipe.work();
  const auto from = [&](ViewOf which) { return view_of(work, *edges, sight_of(which)); };
  PartViews views;
  views.front = from(ViewOf::kFront);
  if (const auto y_mm = section_wanted(part, figures)) {
    // About eight lines over the height; the paper's own measure is not known yet.
    const double apart = (views.front.high.v - views.front.low.v) / 8.0;
    auto section = section_at(recipe, *y_mm, apart, edges_of);
    if (!section) return tl::unexpected(section.error());
    views.front = std::move(section->view);
    views.hatched = std::move(section->hatched);
    views.section_y_mm = *y_mm;
  }
  const bool is_bar = part::is_bar(part.blank.shape);
  if (!is_bar || anything_along(part, Axis::kZ)) views.top = from(ViewOf::kTop);
  if (wants_end(part)) views.end = from(ViewOf::kEnd);
  views.slant = view_of(work, *edges, slanted());
  keep_seen(views.slant);
  views.leaning = leaning_holes(part, figures, work, *edges);
  add_conventions(part, figures, views);
  return views;
}

}  // namespace sparewright::drawing
