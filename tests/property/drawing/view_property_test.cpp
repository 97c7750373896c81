// Views of 100 invented parts against the kernel's polygonal hidden lines: each shows what the other shows. Where the two
// differ, the kernel's exact hidden lines are asked, and what they show counts too: triangles lose narrow faces and hide
// what lies in them.
#include <array>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "drawing/part_views.hpp"
#include "kernel_views.hpp"
#include "random_parts.hpp"
#include "solid/make_solid.hpp"

namespace sparewright::drawing {
namespace {

using shape::FlatPoint;
using tests::KernelView;
using tests::Polyline;

constexpr double kAgree_mm = 0.05;
constexpr double kChord_mm = 0.01;  // of the triangles: a fifth of what is allowed
constexpr double kSample_mm = 0.25;

double apart(const FlatPoint& a, const FlatPoint& b) {
  return std::hypot(a.u - b.u, a.v - b.v);
}

// Lines sorted into cells, so that "is one of them near?" looks at few.
class Near {
 public:
  void add(const std::vector<Polyline>& lines) {
    for (const Polyline& line : lines) {
      for (std::size_t i = 1; i < line.size(); ++i)
        add(line[i - 1], line[i]);
    }
  }
  [[nodiscard]] bool has(const FlatPoint& p) const {
    for (const std::size_t i : cells_[cell(p.u) + kCells * cell(p.v)]) {
      if (distance(pieces_[i], p) <= kAgree_mm) return true;
    }
    return false;
  }

 private:
  static constexpr std::size_t kCells = 128;
  static constexpr double kFrom_mm = -60.0;
  static constexpr double kCell_mm = 1.5;
  struct Piece {
    FlatPoint from;
    FlatPoint to;
  };

  static std::size_t cell(double x) {
    return static_cast<std::size_t>(
        std::clamp((x - kFrom_mm) / kCell_mm, 0.0, static_cast<double>(kCells - 1)));
  }
  void add(const FlatPoint& a, const FlatPoint& b) {
    pieces_.push_back({a, b});
    for (std::size_t u = cell(std::min(a.u, b.u) - kAgree_mm); u <= cell(std::max(a.u, b.u) + kAgree_mm);
         ++u) {
      for (std::size_t v = cell(std::min(a.v, b.v) - kAgree_mm); v <= cell(std::max(a.v, b.v) + kAgree_mm);
           ++v)
        cells_[u + kCells * v].push_back(pieces_.size() - 1);
    }
  }
  static double distance(const Piece& piece, const FlatPoint& p) {
    const double u = piece.to.u - piece.from.u;
    const double v = piece.to.v - piece.from.v;
    const double square = u * u + v * v;
    const double along = (p.u - piece.from.u) * u + (p.v - piece.from.v) * v;
    const double t = square > 0.0 ? std::clamp(along / square, 0.0, 1.0) : 0.0;
    return apart({piece.from.u + t * u, piece.from.v + t * v}, p);
  }

  std::vector<Piece> pieces_;
  std::vector<std::vector<std::size_t>> cells_ = std::vector<std::vector<std::size_t>>(kCells * kCells);
};

std::vector<Polyline> drawn(const View& view, Seen seen) {
  std::vector<Polyline> all;
  for (const ViewLine& line : view.lines) {
    if (line.seen == seen) all.push_back({line.from, line.to});
  }
  for (const ViewArc& arc : view.arcs) {
    if (arc.seen != seen) continue;
    constexpr int kPieces = 128;
    Polyline line;
    for (int i = 0; i <= kPieces; ++i) {
      const double angle = arc.from_rad + (arc.to_rad - arc.from_rad) * i / kPieces;
      line.push_back(
          {arc.centre.u + arc.radius_mm * std::cos(angle), arc.centre.v + arc.radius_mm * std::sin(angle)});
    }
    all.push_back(std::move(line));
  }
  for (const ViewPath& path : view.paths) {
    if (path.seen == seen) all.push_back(path.points);
  }
  return all;
}

// Places along lines, evenly, each standing for as much of the length.
struct Place {
  FlatPoint at;
  double length_mm = 0.0;
};
std::vector<Place> places_on(const std::vector<Polyline>& lines) {
  std::vector<Place> places;
  for (const Polyline& line : lines) {
    for (std::size_t i = 1; i < line.size(); ++i) {
      const double length = apart(line[i - 1], line[i]);
      const int count = static_cast<int>(std::ceil(length / kSample_mm));
      for (int k = 0; k < count; ++k) {
        const double t = (k + 0.5) / count;
        places.push_back({{line[i - 1].u + t * (line[i].u - line[i - 1].u),
                           line[i - 1].v + t * (line[i].v - line[i - 1].v)},
                          length / count});
      }
    }
  }
  return places;
}

// One side's lines, as places and as what the other's places are looked for in. What is hidden may lie under what is seen,
// where a drawing shows it once.
struct Side {
  std::vector<Place> visible;
  std::vector<Place> hidden;
  Near may_be_visible;
  Near may_be_hidden;
};
Side side_of(const View& view) {
  Side side{places_on(drawn(view, Seen::kVisible)), places_on(drawn(view, Seen::kHidden)), {}, {}};
  side.may_be_visible.add(drawn(view, Seen::kVisible));
  side.may_be_hidden.add(drawn(view, Seen::kVisible));
  side.may_be_hidden.add(drawn(view, Seen::kHidden));
  return side;
}
Side side_of(const KernelView& view) {
  Side side{places_on(view.visible), places_on(view.hidden), {}, {}};
  side.may_be_visible.add(view.visible);
  side.may_be_visible.add(view.smooth_visible);
  side.may_be_hidden.add(view.hidden);
  side.may_be_hidden.add(view.smooth_hidden);
  return side;
}

struct Tally {
  double visible_mm = 0.0;
  double hidden_mm = 0.0;
  double off_mm = 0.0;       // against the polygonal lines
  double disputed_mm = 0.0;  // of that, what the exact lines show as we do
  int exact_views = 0;

  [[nodiscard]] double all() const { return visible_mm + hidden_mm; }
};

struct Missing {
  std::vector<Place> ours_visible;  // we show it, the kernel does not
  std::vector<Place> ours_hidden;
  std::vector<Place> theirs_visible;  // the kernel shows it, we do not
  std::vector<Place> theirs_hidden;
};

std::vector<Place> not_in(const Near& near, const std::vector<Place>& places) {
  std::vector<Place> left;
  for (const Place& place : places) {
    if (!near.has(place.at)) left.push_back(place);
  }
  return left;
}

double length_of(const std::vector<Place>& places) {
  double sum = 0.0;
  for (const Place& place : places)
    sum += place.length_mm;
  return sum;
}

double length_of(const Missing& m) {
  return length_of(m.ours_visible) + length_of(m.ours_hidden) + length_of(m.theirs_visible) +
         length_of(m.theirs_hidden);
}

void tell(const char* what, const std::vector<Place>& places) {
  if (places.empty()) return;
  fmt::print("    {}: {:.2f} mm, at {:.2f}, {:.2f} to {:.2f}, {:.2f}\n", what, length_of(places),
             places.front().at.u, places.front().at.v, places.back().at.u, places.back().at.v);
}

// What the exact lines leave of it.
Missing still_missing(const Missing& m, const KernelView& exact) {
  const Side side = side_of(exact);
  const auto they_show = [](const Near& near, const std::vector<Place>& places) {
    std::vector<Place> kept;
    for (const Place& place : places) {
      if (near.has(place.at)) kept.push_back(place);
    }
    return kept;
  };
  return {not_in(side.may_be_visible, m.ours_visible), not_in(side.may_be_hidden, m.ours_hidden),
          they_show(side.may_be_visible, m.theirs_visible), they_show(side.may_be_hidden, m.theirs_hidden)};
}

Missing between(const Side& ours, const Side& theirs) {
  return {not_in(theirs.may_be_visible, ours.visible), not_in(theirs.may_be_hidden, ours.hidden),
          not_in(ours.may_be_visible, theirs.visible), not_in(ours.may_be_hidden, theirs.hidden)};
}

void compare(const std::string& name, const View& view, const solid::Solid& solid, const Sight& sight,
             Tally& tally) {
  constexpr double kWorthAsking_mm = 0.5;
  const Side ours = side_of(view);
  const Side theirs = side_of(tests::polygonal_view(solid, sight, kChord_mm));
  tally.visible_mm += length_of(ours.visible) + length_of(theirs.visible);
  tally.hidden_mm += length_of(ours.hidden) + length_of(theirs.hidden);
  const Missing missing = between(ours, theirs);
  const double off = length_of(missing);
  tally.off_mm += off;
  if (off < kWorthAsking_mm) return;
  ++tally.exact_views;
  const Missing still = still_missing(missing, tests::exact_view(solid, sight));
  tally.disputed_mm += off - length_of(still);
  if (length_of(still) < kWorthAsking_mm) return;
  fmt::print("  {}: {:.2f} mm differ, {:.2f} mm from the exact lines too\n", name, off, length_of(still));
  tell("seen by us alone", still.ours_visible);
  tell("hidden by us alone", still.ours_hidden);
  tell("seen by the kernel alone", still.theirs_visible);
  tell("hidden by the kernel alone", still.theirs_hidden);
}

const std::array kSights{sight_of(ViewOf::kFront), sight_of(ViewOf::kTop), sight_of(ViewOf::kEnd),
                         Sight{shape::direction({1.0, 1.0, 0.0}), shape::direction({-1.0, 1.0, 2.0}),
                               shape::direction({1.0, -1.0, 1.0})}};

struct Made {
  shape::Recipe recipe;
  solid::Solid solid;
  std::vector<solid::Edge> edges;
};

// Nothing where the cuts leave no metal, or none that the kernel can make.
std::optional<Made> made(tests::PartKind kind, int i) {
  tests::Random random(1000U * static_cast<unsigned>(kind) + static_cast<unsigned>(i) + 1U);
  const tests::InventedPart part = tests::invented_part(kind, random);
  auto recipe = shape::Recipe::make(part.blank, part.cutters);
  if (!recipe) return std::nullopt;
  auto solid = solid::make_solid(*recipe);
  if (!solid) return std::nullopt;
  auto edges = solid::edges_of(solid->solid);
  if (!edges) return std::nullopt;
  return Made{std::move(*recipe), std::move(solid->solid), std::move(*edges)};
}

TEST(ViewProperty, ShowsWhatTheKernelShows) {
  constexpr int kEachKind = 25;
  constexpr std::size_t kAtASlant = 3;
  Tally tally;
  int parts = 0;
  int seen_from = 0;
  for (const tests::PartKind kind : tests::kPartKinds) {
    for (int i = 0; i < kEachKind; ++i) {
      const auto part = made(kind, i);
      if (!part) continue;
      ++parts;
      std::vector<std::size_t> views{static_cast<std::size_t>(i) % kAtASlant};
      if (i % 2 == 0) views.push_back(kAtASlant);
      for (const std::size_t which : views) {
        ++seen_from;
        const Sight& sight = kSights.at(which);
        compare(fmt::format("kind {} part {} sight {}", static_cast<int>(kind), i, which),
                view_of(part->recipe.work(), part->edges, sight), part->solid, sight, tally);
      }
    }
  }
  const double polygonal = 1.0 - tally.off_mm / tally.all();
  const double with_exact = 1.0 - (tally.off_mm - tally.disputed_mm) / tally.all();
  fmt::print("{} parts in {} views, {:.0f} mm seen and {:.0f} mm hidden: {:.3f} % as the polygonal lines\n",
             parts, seen_from, tally.visible_mm, tally.hidden_mm, 100.0 * polygonal);
  fmt::print("{:.3f} % where the exact lines of {} views count too\n", 100.0 * with_exact, tally.exact_views);
  EXPECT_GE(polygonal, 0.995);
  EXPECT_GE(with_exact, 0.999);
  // Not for nothing: a hundred parts with much to see and much to hide.
  EXPECT_GE(parts, 98);
  EXPECT_GT(tally.visible_mm, 8e4);
  EXPECT_GT(tally.hidden_mm, 5e4);
}

// The comparison itself: a line left out, one too many, and one dashed that is seen are each found.
TEST(ViewProperty, AWrongLineIsFound) {
  const auto part = made(tests::PartKind::kStepped, 0);
  ASSERT_TRUE(part);
  const Sight& front = kSights.front();
  const View right = view_of(part->recipe.work(), part->edges, front);
  const Side theirs = side_of(tests::polygonal_view(part->solid, front, kChord_mm));
  ASSERT_LT(length_of(between(side_of(right), theirs)), 0.5);
  const auto longest = [&](Seen seen) {
    std::size_t best = right.lines.size();
    double most = 0.0;
    for (std::size_t i = 0; i < right.lines.size(); ++i) {
      const double length = apart(right.lines[i].from, right.lines[i].to);
      if (right.lines[i].seen != seen || length <= most) continue;
      most = length;
      best = i;
    }
    return best;
  };
  for (const Seen seen : {Seen::kVisible, Seen::kHidden}) {
    const std::size_t i = longest(seen);
    ASSERT_LT(i, right.lines.size());
    const double length = apart(right.lines[i].from, right.lines[i].to);
    View without = right;
    without.lines.erase(without.lines.begin() + static_cast<std::ptrdiff_t>(i));
    EXPECT_GT(length_of(between(side_of(without), theirs)), 0.9 * length);
    View other = right;
    other.lines[i].seen = seen == Seen::kVisible ? Seen::kHidden : Seen::kVisible;
    EXPECT_GT(length_of(between(side_of(other), theirs)), 0.9 * length);
  }
  View more = right;
  more.lines.push_back({{1.0, 1.0}, {9.0, 9.0}, Seen::kHidden});
  EXPECT_GT(length_of(between(side_of(more), theirs)), 8.0);
}

}  // namespace
}  // namespace sparewright::drawing
