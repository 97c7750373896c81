#include "drawing/extra_views.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "drawing/clip.hpp"
#include "drawing/scale.hpp"

namespace sparewright::drawing {
namespace {

using shape::FlatPoint;

constexpr double kTooSmall_mm = 1.6;  // on paper; a choice made here, by eye
constexpr double kLargeEnough_mm = 4.0;
constexpr double kRoundHole = 2.2;  // of its diameter is shown round a leaning hole

// The smallest that is at least so large; the largest there is, else.
const Scale& scale_for(double factor) {
  const Scale* best = kScales.data();
  for (const Scale& scale : kScales) {
    if (scale.factor >= factor) best = &scale;
  }
  return *best;
}

std::string next_letter(const std::vector<ExtraView>& all) {
  return std::string(1, static_cast<char>('A' + all.size()));
}

void add_leaning(const PartViews& views, double scale, std::vector<ExtraView>& all) {
  for (const LeaningHole& hole : views.leaning) {
    if (all.size() == kMostExtraViews) return;
    const double radius = kRoundHole * hole.diameter_mm;
    if (!(radius > 0.0)) continue;
    const Scale& at = scale_for(std::max(scale, kLargeEnough_mm / hole.diameter_mm));
    const double shown = std::min(radius, kExtraRadius_mm / at.factor);
    ExtraView extra;
    extra.letter = next_letter(all);
    extra.caption = {fmt::format("{}  {}", extra.letter, at.says), "along " + hole.name};
    extra.view = within(hole.view, hole.mouth, shown);
    extra.scale = at.factor;
    extra.of = view_of_side(views, hole.into);
    extra.centre = views.shown(extra.of, hole.at);
    all.push_back(std::move(extra));
  }
}

// The views show hatching too; in a detail it is a thin line like others.
View with_hatching(const PartViews& views, ViewOf of) {
  View view = views.view(of);
  if (of == ViewOf::kFront)
    view.thin_lines.insert(view.thin_lines.end(), views.hatched.begin(), views.hatched.end());
  return view;
}

// A view along a hole shows its place; a detail what lies well inside it.
bool shows(const ExtraView& extra, ViewOf of, const FlatPoint& at) {
  constexpr double kWellInside = 0.6;
  const double reach = std::max(kWellInside * extra.radius_mm, shape::kShortestSide_mm);
  return extra.of == of && std::hypot(extra.centre.u - at.u, extra.centre.v - at.v) < reach;
}

void add_details(const PartViews& views, const Marks& marks, double scale, std::vector<ExtraView>& all) {
  std::vector<const NoteMark*> small;
  for (const NoteMark& note : marks.notes) {
    if (note.across_mm > 0.0 && scale * note.across_mm < kTooSmall_mm) small.push_back(&note);
  }
  std::stable_sort(small.begin(), small.end(),
                   [](const NoteMark* a, const NoteMark* b) { return a->across_mm < b->across_mm; });
  for (const NoteMark* note : small) {
    if (all.size() == kMostExtraViews) return;
    const ViewOf of = view_of_side(views, note->seen_from);
    const FlatPoint at = views.shown(of, note->at);
    if (std::any_of(all.begin(), all.end(), [&](const ExtraView& extra) { return shows(extra, of, at); }))
      continue;
    const Scale& larger = scale_for(kLargeEnough_mm / note->across_mm);
    if (larger.factor <= scale) continue;
    ExtraView extra;
    extra.letter = next_letter(all);
    const std::string& title = note->lines.front();
    extra.caption = {fmt::format("{}  {}", extra.letter, larger.says), title.substr(0, title.find(':'))};
    extra.radius_mm = kExtraRadius_mm / larger.factor;
    extra.view = within(with_hatching(views, of), at, extra.radius_mm);
    if (extra.view.lines.empty() && extra.view.arcs.empty() && extra.view.paths.empty())
      continue;  // its place lies in the air, as a slit's may
    extra.scale = larger.factor;
    extra.of = of;
    extra.centre = at;
    all.push_back(std::move(extra));
  }
}

}  // namespace

std::vector<ExtraView> extra_views(const PartViews& views, const Marks& marks, double scale) {
  std::vector<ExtraView> all;
  add_leaning(views, scale, all);
  add_details(views, marks, scale, all);
  return all;
}

}  // namespace sparewright::drawing
