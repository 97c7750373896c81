// Fillets between straights and arcs: each touches both its edges, whatever they are.
#include "core/shape/fillet.hpp"

#include <array>
#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "splitmix.hpp"

namespace sparewright::shape {
namespace {

constexpr double kPi = std::numbers::pi;

double apart(const FlatPoint& a, const FlatPoint& b) {
  return std::hypot(a.u - b.u, a.v - b.v);
}

// From the end of one edge to the start of the next, the way along does not turn.
double kink_rad(const Contour& contour, std::size_t corner) {
  const auto way = [](const ContourEdge& e, bool at_end) {
    const double chord = std::atan2(e.to.v - e.from.v, e.to.u - e.from.u);
    const double half_turn = 2.0 * std::atan(e.bow);
    return chord + (at_end ? half_turn : -half_turn);
  };
  const std::size_t n = contour.size();
  const ContourEdge in = edge(contour, (corner + n - 1) % n);
  const ContourEdge out = edge(contour, corner);
  return std::abs(std::remainder(way(out, false) - way(in, true), 2.0 * kPi));
}

TEST(Fillet, BetweenStraightsIsThatOfARoundedContour) {
  const std::array filleted{FilletedCorner{{0, 0}, 0, 3}, FilletedCorner{{40, 0}, 0, 2},
                            FilletedCorner{{30, 25}, 0, 4},
                            FilletedCorner{{12, 12}, 0, 5}};  // the last one bends inwards
  const std::array rounded{RoundedCorner{{0, 0}, 3}, RoundedCorner{{40, 0}, 2}, RoundedCorner{{30, 25}, 4},
                           RoundedCorner{{12, 12}, 5}};
  const Contour one = filleted_contour(filleted);
  const Contour other = rounded_contour(rounded);
  ASSERT_EQ(one.size(), other.size());
  for (std::size_t i = 0; i < one.size(); ++i) {
    EXPECT_LT(apart(one[i].at, other[i].at), 1e-9);
    EXPECT_NEAR(one[i].bow, other[i].bow, 1e-12);
  }
}

// Half a disc of radius 20 with a fillet of 4 where the arc meets the straight: the fillet's middle lies 4 from the
// straight and 16 from the middle of the disc, so it touches the straight at sqrt(16^2 - 4^2).
TEST(Fillet, BetweenAStraightAndAnArc) {
  const std::array corners{FilletedCorner{{-20, 0}, 0, 4}, FilletedCorner{{20, 0}, 1.0, 4}};
  const Contour contour = filleted_contour(corners);
  ASSERT_EQ(contour.size(), 4U);
  EXPECT_EQ(fault_of(contour, 1e-5), "");
  const double touch = std::sqrt(256.0 - 16.0);
  EXPECT_NEAR(contour[1].at.u, -touch, 1e-12);
  EXPECT_NEAR(contour[2].at.u, touch, 1e-12);
  for (std::size_t i = 0; i < 4; ++i)
    EXPECT_LT(kink_rad(contour, i), 1e-9) << i;
}

// Corners on a wobbly ring, arcs in and out, fillets small enough to find room: no kink at any fillet, and only the
// corners change.
TEST(Fillet, HasNoKinks) {
  tests::SplitMix random(20251128);
  int filleted = 0;
  for (int part = 0; part < 300; ++part) {
    std::vector<FilletedCorner> corners;
    const int n = 3 + static_cast<int>(random.below(5));
    for (int i = 0; i < n; ++i) {
      const double angle = 2.0 * kPi * i / n;
      const double r = 30.0 + 12.0 * random.unit();
      const double bow = random.below(2) == 0 ? 0.0 : 0.5 * random.unit() - 0.2;
      corners.push_back({{r * std::cos(angle), r * std::sin(angle)},
                         bow,
                         random.below(3) == 0 ? 0.0 : 0.5 + random.unit()});
    }
    const Contour contour = filleted_contour(corners);
    if (!fault_of(contour, 1e-5).empty()) continue;
    std::size_t at = 0;
    for (const FilletedCorner& corner : corners) {
      if (corner.radius_mm > 0.0) {
        EXPECT_LT(kink_rad(contour, at), 1e-7) << part;
        EXPECT_LT(kink_rad(contour, at + 1), 1e-7) << part;
        EXPECT_NEAR(edge(contour, at).radius_mm, corner.radius_mm, 1e-7) << part;
        ++filleted;
        ++at;
      }
      ++at;
    }
  }
  EXPECT_GT(filleted, 500);
}

TEST(Fillet, ThatFindsNoRoomIsNoContour) {
  const std::array corners{FilletedCorner{{0, 0}, 0, 30}, FilletedCorner{{40, 0}, 0, 0},
                           FilletedCorner{{0, 25}, 0, 0}};
  EXPECT_NE(fault_of(filleted_contour(corners), 1e-5), "");
  const std::array bowed{FilletedCorner{{-20, 0}, 0, 15}, FilletedCorner{{20, 0}, 1.0, 0}};
  EXPECT_NE(fault_of(filleted_contour(bowed), 1e-5), "");
}

}  // namespace
}  // namespace sparewright::shape
