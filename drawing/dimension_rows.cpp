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

constexpr double kOutside_mm = 4.4;    // an arrow from outside
constexpr double kCrossing_mm = 30.0;  // a line crossed on the way to the words is as bad as so much way
constexpr double kHair_mm = 1e-6;

struct Extent {
  double from = 0.0;
  double to = 0.0;
};

// How many of the ends lie within.
int count_within(const std::vector<double>& ends, const Extent& extent) {
  return static_cast<int>(std::count_if(ends.begin(), ends.end(), [&](double e) {
    return e > extent.from + kHair_mm && e < extent.to - kHair_mm;
  }));
}

bool is_free(const std::vector<double>& ends, double middle, double text_mm) {
  const double half = text_mm / 2.0 + kFree_mm;
  return std::none_of(ends.begin(), ends.end(),
                      [&](double e) { return e > middle - half && e < middle + half; });
}

// The line, carried on to words that stand beside it; arrows that come from outside are part of it.
Extent line_of(const RowSpan& span, double text_middle) {
  const double half = span.text_mm / 2.0;
  const double beyond = span.to - span.from < kArrows_mm ? kOutside_mm : 0.0;
  return {std::min(span.from - beyond, text_middle + half), std::max(span.to + beyond, text_middle - half)};
}

// ends  of the extension lines of others.
// In the middle if that is free; else the free place nearest to it, between the arrows before beyond them. Beyond, the
// words stand clear of arrows that come from outside, and rather where the line to them crosses few.
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
  double best = above;
  double best_cost = std::numeric_limits<double>::infinity();
  for (const double place : places) {
    if (!is_free(ends, place, span.text_mm - 1e-9)) continue;
    constexpr double kBeyond_mm = 30.0;  // as bad as so much way
    const bool between = place >= least && place <= most;
    const double cost = std::abs(place - middle) + (between ? 0.0 : kBeyond_mm) +
                        kCrossing_mm * count_within(ends, line_of(span, place));
    if (cost < best_cost) {
      best_cost = cost;
      best = place;
    }
  }
  return best;
}

// Ends of those that `outside` says, in order, each once.
std::vector<double> ends_of(const std::vector<RowSpan>& spans, const std::vector<bool>& outside) {
  std::vector<double> ends;
  for (std::size_t i = 0; i < spans.size(); ++i) {
    if (!outside[i]) continue;
    ends.push_back(spans[i].from);
    ends.push_back(spans[i].to);
  }
  std::sort(ends.begin(), ends.end());
  ends.erase(std::unique(ends.begin(), ends.end(), [](double a, double b) { return b - a < kHair_mm; }),
             ends.end());
  return ends;
}

// A line among those that `outside` says: where its words stand, and how many extension lines it crosses.
struct Line {
  double text_middle = 0.0;
  int crossed = 0;
};
Line line_among(const std::vector<RowSpan>& spans, std::size_t one, const std::vector<bool>& outside) {
  std::vector<bool> others = outside;
  others[one] = false;
  const std::vector<double> ends = ends_of(spans, others);
  const double middle = text_place(spans[one], ends);
  return {middle, count_within(ends, line_of(spans[one], middle))};
}

// --- in which order, outwards ---------------------------------------------------------------------------------------
// Next the one that crosses least with all that is left outside it; of several the first.
std::vector<std::size_t> greedy_order(const std::vector<RowSpan>& spans, std::vector<std::size_t> left) {
  std::vector<std::size_t> order;
  std::vector<bool> outside(spans.size(), true);
  while (!left.empty()) {
    std::vector<int> crossed;
    for (const std::size_t i : left)
      crossed.push_back(line_among(spans, i, outside).crossed);
    const auto next = std::min_element(crossed.begin(), crossed.end()) - crossed.begin();
    order.push_back(left[static_cast<std::size_t>(next)]);
    outside[order.back()] = false;
    left.erase(left.begin() + next);
  }
  return order;
}

// The order with the fewest crossings of all: best[set] is the fewest with that set inside, one at a time added outside it.
std::vector<std::size_t> best_order(const std::vector<RowSpan>& spans, const std::vector<std::size_t>& by) {
  const std::size_t count = spans.size();
  const std::size_t sets = std::size_t{1} << count;
  const auto has = [](std::size_t set, std::size_t k) { return (set >> k & 1U) != 0; };
  std::vector<int> best(sets, std::numeric_limits<int>::max());
  std::vector<std::size_t> last(sets, 0);
  best[0] = 0;
  std::vector<bool> outside(count);
  for (std::size_t set = 0; set + 1 < sets; ++set) {
    for (std::size_t k = 0; k < count; ++k)
      outside[by[k]] = !has(set, k);
    for (std::size_t k = 0; k < count; ++k) {
      if (has(set, k)) continue;
      const std::size_t with = set | std::size_t{1} << k;
      const int sum = best[set] + line_among(spans, by[k], outside).crossed;
      if (sum >= best[with]) continue;
      best[with] = sum;
      last[with] = k;
    }
  }
  std::vector<std::size_t> order;
  for (std::size_t set = sets - 1; set != 0; set &= ~(std::size_t{1} << last[set]))
    order.push_back(by[last[set]]);
  std::reverse(order.begin(), order.end());
  return order;
}

// Puts them down one after the other.
class Rows {
 public:
  explicit Rows(const std::vector<RowSpan>& spans)
      : spans_(spans), places_(spans.size()), is_placed_(spans.size(), false) {}

  // In the row where it crosses least; of several the nearest to the view.
  void put(std::size_t i) {
    RowPlace best;
    int fewest = std::numeric_limits<int>::max();
    for (int row = 0; row <= static_cast<int>(rows_.size()); ++row) {
      is_placed_[i] = false;
      const RowPlace place{row, line_among(spans_, i, outside(row)).text_middle};
      places_[i] = place;
      is_placed_[i] = true;
      const int crossed = crossings();
      if (crossed >= fewest || !has_room(row, extent(i, place))) continue;
      fewest = crossed;
      best = place;
    }
    places_[i] = best;
    if (best.row == static_cast<int>(rows_.size())) rows_.emplace_back();
    rows_[static_cast<std::size_t>(best.row)].push_back(extent(i, best));
  }

  [[nodiscard]] std::vector<RowPlace> done() && { return std::move(places_); }

 private:
  // Whose extension lines run through a row, or may come to run: what stands in it or farther out, and what has no place yet.
  [[nodiscard]] std::vector<bool> outside(int row) const {
    std::vector<bool> all(spans_.size());
    for (std::size_t i = 0; i < spans_.size(); ++i)
      all[i] = !is_placed_[i] || places_[i].row >= row;
    return all;
  }

  // Of all that have a place, with what has none farther out.
  [[nodiscard]] int crossings() const {
    int sum = 0;
    for (std::size_t i = 0; i < spans_.size(); ++i) {
      if (is_placed_[i])
        sum += count_within(ends_of(spans_, outside(places_[i].row + 1)),
                            line_of(spans_[i], places_[i].text_middle));
    }
    return sum;
  }

  [[nodiscard]] Extent extent(std::size_t i, const RowPlace& place) const {
    const RowSpan& span = spans_[i];
    const double arrows = span.to - span.from < kArrows_mm ? kArrows_mm : 0.0;  // they come from outside
    return {std::min(span.from - arrows, place.text_middle - span.text_mm / 2.0),
            std::max(span.to + arrows, place.text_middle + span.text_mm / 2.0)};
  }

  [[nodiscard]] bool has_room(int row, const Extent& all) const {
    if (row == static_cast<int>(rows_.size())) return true;
    const auto& taken = rows_[static_cast<std::size_t>(row)];
    return std::none_of(taken.begin(), taken.end(), [&](const Extent& e) {
      return e.from < all.to + kApart_mm && all.from < e.to + kApart_mm;
    });
  }

  const std::vector<RowSpan>& spans_;
  std::vector<RowPlace> places_;
  std::vector<bool> is_placed_;
  std::vector<std::vector<Extent>> rows_;
};

}  // namespace

std::vector<RowPlace> rows_of(const std::vector<RowSpan>& spans) {
  constexpr std::size_t kFew = 8;  // for which every order can be looked at
  std::vector<std::size_t> by_length(spans.size());
  std::iota(by_length.begin(), by_length.end(), std::size_t{0});
  std::stable_sort(by_length.begin(), by_length.end(), [&](std::size_t a, std::size_t b) {
    return spans[a].to - spans[a].from < spans[b].to - spans[b].from;
  });
  Rows rows(spans);
  for (const std::size_t i :
       spans.size() <= kFew ? best_order(spans, by_length) : greedy_order(spans, by_length))
    rows.put(i);
  return std::move(rows).done();
}

}  // namespace sparewright::drawing
