// Rows of dimensions against every order there is, up to eight of them: nothing overlaps, and lines cross at most once more
// than in the best order.
#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <set>
#include <vector>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "drawing/dimension_rows.hpp"
#include "splitmix.hpp"

namespace sparewright::drawing {
namespace {

using tests::SplitMix;

constexpr double kHair_mm = 1e-6;

// From one side, in a chain, about a middle, or anyhow: as parts are dimensioned. Ends on whole half millimetres meet.
std::vector<RowSpan> random_spans(SplitMix& random) {
  const std::size_t count = 2 + random.below(7);
  const std::size_t how = random.below(4);
  const auto place = [&] { return 0.5 * static_cast<double>(random.below(241)); };
  std::vector<RowSpan> spans;
  double last = 0.0;
  while (spans.size() < count) {
    double a = how == 0 ? 0.0 : how == 1 ? last : place();
    double b = how == 1 ? last + 1.0 + place() / 8.0 : how == 2 ? 120.0 - a : place();
    if (random.one_in(8)) a = 0.0;
    if (a > b) std::swap(a, b);
    if (b - a < 0.5) continue;
    last = b;
    spans.push_back({a, b, random.between(5.0, 16.0)});
  }
  return spans;
}

struct Reach {
  double from = 0.0;
  double to = 0.0;
};

// What is drawn along the row: the line between its ends, carried on to words that stand beside, and arrows from outside where
// there is no room for them between.
Reach drawn(const RowSpan& span, const RowPlace& place) {
  constexpr double kArrow_mm = 2.2;
  const double half = span.text_mm / 2.0;
  const double beyond = span.to - span.from > 2.5 * kArrow_mm ? 0.0 : 2.0 * kArrow_mm;
  return {std::min(span.from - beyond, place.text_middle + half),
          std::max(span.to + beyond, place.text_middle - half)};
}

// How many extension lines run through a stretch of a row, those that fall on one another counted once.
int crossed(const Reach& reach, const std::vector<RowSpan>& outside) {
  std::set<double> ends;
  for (const RowSpan& span : outside) {
    for (const double end : {span.from, span.to}) {
      if (end > reach.from + kHair_mm && end < reach.to - kHair_mm) ends.insert(end);
    }
  }
  return static_cast<int>(ends.size());
}

int crossings(const std::vector<RowSpan>& spans, const std::vector<RowPlace>& places) {
  int sum = 0;
  for (std::size_t i = 0; i < spans.size(); ++i) {
    std::vector<RowSpan> outside;
    for (std::size_t j = 0; j < spans.size(); ++j) {
      if (places[j].row > places[i].row) outside.push_back(spans[j]);
    }
    sum += crossed(drawn(spans[i], places[i]), outside);
  }
  return sum;
}

// The fewest crossings of the line of one dimension whose words may stand anywhere by the rules: 1 mm clear of extension lines,
// in the middle part with 3 mm for each arrow, or 6 mm beyond an end.
int fewest_of(const RowSpan& span, const std::vector<RowSpan>& outside) {
  constexpr double kClear_mm = 1.0;
  constexpr double kArrow_mm = 3.0;
  constexpr double kBeyond_mm = 6.0;
  const double half = span.text_mm / 2.0;
  std::vector<double> ends{span.from, span.to};
  for (const RowSpan& other : outside) {
    ends.push_back(other.from);
    ends.push_back(other.to);
  }
  std::vector<double> places{(span.from + span.to) / 2.0, span.from + half + kArrow_mm,
                             span.to - half - kArrow_mm, span.from - half - kBeyond_mm,
                             span.to + half + kBeyond_mm};
  for (const double end : ends) {
    places.push_back(end - half - kClear_mm);
    places.push_back(end + half + kClear_mm);
  }
  int best = 1000;
  for (const double middle : places) {
    const bool between =
        middle - half - kArrow_mm >= span.from - kHair_mm && middle + half + kArrow_mm <= span.to + kHair_mm;
    const bool beyond = middle + half + kBeyond_mm <= span.from + kHair_mm ||
                        middle - half - kBeyond_mm >= span.to - kHair_mm;
    const bool is_clear = std::none_of(ends.begin(), ends.end(), [&](double end) {
      return std::abs(end - middle) < half + kClear_mm - kHair_mm;
    });
    if ((between || beyond) && is_clear) best = std::min(best, crossed(drawn(span, {0, middle}), outside));
  }
  return best;
}

// The fewest crossings of any order outwards, each dimension in a row of its own and its words where they cross least.
int fewest(const std::vector<RowSpan>& spans) {
  const std::size_t count = spans.size();
  const std::size_t sets = std::size_t{1} << count;
  std::vector<int> cost(count * sets, 0);  // of one, with that set outside it
  for (std::size_t i = 0; i < count; ++i) {
    for (std::size_t set = 0; set < sets; ++set) {
      if ((set >> i & 1U) != 0) continue;
      std::vector<RowSpan> outside;
      for (std::size_t j = 0; j < count; ++j) {
        if ((set >> j & 1U) != 0) outside.push_back(spans[j]);
      }
      cost[i * sets + set] = fewest_of(spans[i], outside);
    }
  }
  std::vector<std::size_t> order(count);
  std::iota(order.begin(), order.end(), std::size_t{0});
  int best = 1000;
  do {
    std::size_t outside = sets - 1;
    int sum = 0;
    for (const std::size_t i : order) {
      outside &= ~(std::size_t{1} << i);
      sum += cost[i * sets + outside];
    }
    best = std::min(best, sum);
  } while (std::next_permutation(order.begin(), order.end()));
  return best;
}

int overlaps(const std::vector<RowSpan>& spans, const std::vector<RowPlace>& places) {
  int count = 0;
  for (std::size_t i = 0; i < spans.size(); ++i) {
    const double half = spans[i].text_mm / 2.0;
    const double low = places[i].text_middle - half;
    const double high = places[i].text_middle + half;
    for (std::size_t j = 0; j < spans.size(); ++j) {
      for (const double end : {spans[j].from, spans[j].to})
        if (places[j].row >= places[i].row)
          count += end > low + kHair_mm && end < high - kHair_mm ? 1 : 0;  // words on an extension line
      if (i == j || places[i].row != places[j].row) continue;
      const Reach a = drawn(spans[i], places[i]);
      const Reach b = drawn(spans[j], places[j]);
      const bool lines_meet = a.from < b.to - kHair_mm && b.from < a.to - kHair_mm;
      const bool words_meet = low < b.to - kHair_mm && b.from < high - kHair_mm;
      count += lines_meet || words_meet ? 1 : 0;
    }
  }
  return count;
}

TEST(DimensionRows, CrossHardlyMoreThanInTheBestOrder) {
  constexpr int kCases = 400;
  std::array<int, 8> more{};  // cases by how many crossings there are too many
  int all = 0;
  int best = 0;
  int most_rows = 0;
  for (int i = 0; i < kCases; ++i) {
    SplitMix random(static_cast<std::uint64_t>(i) + 1);
    const std::vector<RowSpan> spans = random_spans(random);
    const std::vector<RowPlace> places = rows_of(spans);
    ASSERT_EQ(places.size(), spans.size());
    EXPECT_EQ(overlaps(spans, places), 0) << i;
    const int ours = crossings(spans, places);
    const int least = fewest(spans);
    EXPECT_LE(ours, least + 1) << i;
    ++more.at(static_cast<std::size_t>(std::clamp(ours - least, 0, 7)));
    all += ours;
    best += least;
    for (const RowPlace& place : places)
      most_rows = std::max(most_rows, place.row + 1);
  }
  fmt::print(
      "{} cases, {} crossings, {} in the best orders; as few {} times, one more {}, two {}, three or more "
      "{}; {} rows at most\n",
      kCases, all, best, more[0], more[1], more[2], more[3] + more[4] + more[5] + more[6] + more[7],
      most_rows);
  EXPECT_GT(best, kCases / 2);
}

}  // namespace
}  // namespace sparewright::drawing
