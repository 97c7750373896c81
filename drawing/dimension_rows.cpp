#include "drawing/dimension_rows.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace sparewright::drawing {
namespace {

constexpr double kFree_mm = 1.0;    // between words and an extension line
constexpr double kApart_mm = 2.0;   // between two dimensions of a row
constexpr double kArrows_mm = 6.0;  // beside words between two arrowheads

struct Extent {
  double from = 0.0;
  double to = 0.0;
};

// Ends of all dimensions, where extension lines run.
std::vector<double> ends_of(const std::vector<RowSpan>& spans) {
  std::vector<double> ends;
  for (const RowSpan& span : spans) {
    ends.push_back(span.from);
    ends.push_back(span.to);
  }
  std::sort(ends.begin(), ends.end());
  return ends;
}

bool is_free(const std::vector<double>& ends, double middle, double text_mm) {
  const double low = middle - text_mm / 2.0 - kFree_mm;
  const double high = middle + text_mm / 2.0 + kFree_mm;
  return std::none_of(ends.begin(), ends.end(), [&](double e) { return e > low && e < high; });
}

// In the middle if that is free; else the free place nearest to it, between the arrows before beyond them. Beyond, the
// words stand clear of arrows that come from outside.
double text_place(const RowSpan& span, const std::vector<double>& ends) {
  const double middle = (span.from + span.to) / 2.0;
  const double half = span.text_mm / 2.0;
  const double least = span.from + half + kArrows_mm / 2.0;  // between the arrows
  const double most = span.to - half - kArrows_mm / 2.0;
  if (least <= most && is_free(ends, middle, span.text_mm)) return middle;
  const double below = span.from - half - kArrows_mm;  // beyond them
  const double above = span.to + half + kArrows_mm;
  std::vector<double> places{below, above};
  for (const double end : ends) {
    for (const double place : {end - half - kFree_mm, end + half + kFree_mm}) {
      if ((place >= least && place <= most) || place <= below || place >= above) places.push_back(place);
    }
  }
  double best = std::max(above, ends.back() + half + kFree_mm);  // past everything
  double best_cost = std::numeric_limits<double>::infinity();
  for (const double place : places) {
    if (!is_free(ends, place, span.text_mm - 1e-9)) continue;
    constexpr double kBeyond_mm = 30.0;  // as bad as so much way
    const bool between = place >= least && place <= most;
    const double cost = std::abs(place - middle) + (between ? 0.0 : kBeyond_mm);
    if (cost < best_cost) {
      best_cost = cost;
      best = place;
    }
  }
  return best;
}

}  // namespace

std::vector<RowPlace> rows_of(const std::vector<RowSpan>& spans) {
  if (spans.empty()) return {};
  const std::vector<double> ends = ends_of(spans);
  std::vector<std::size_t> order(spans.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return spans[a].to - spans[a].from < spans[b].to - spans[b].from;
  });
  std::vector<RowPlace> places(spans.size());
  std::vector<std::vector<Extent>> rows;
  for (const std::size_t i : order) {
    const RowSpan& span = spans[i];
    places[i].text_middle = text_place(span, ends);
    const double arrows = span.to - span.from < kArrows_mm ? kArrows_mm : 0.0;  // they come from outside
    const Extent all{std::min(span.from - arrows, places[i].text_middle - span.text_mm / 2.0),
                     std::max(span.to + arrows, places[i].text_middle + span.text_mm / 2.0)};
    const auto meets = [&](const Extent& e) {
      return e.from < all.to + kApart_mm && all.from < e.to + kApart_mm;
    };
    const auto row = std::find_if(rows.begin(), rows.end(), [&](const std::vector<Extent>& taken) {
      return std::none_of(taken.begin(), taken.end(), meets);
    });
    places[i].row = static_cast<int>(row - rows.begin());
    if (row == rows.end()) rows.emplace_back();
    rows[static_cast<std::size_t>(places[i].row)].push_back(all);
  }
  return places;
}

}  // namespace sparewright::drawing
