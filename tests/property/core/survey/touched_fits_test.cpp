// Moving, turning and mirroring touches moves, turns and mirrors what is found with them.
#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "core/survey/circle_fit.hpp"
#include "core/survey/flat_fit.hpp"
#include "property.hpp"
#include "touches.hpp"

namespace sparewright::survey {
namespace {

using tests::holds;
using tests::random_arc;
using tests::random_face;

std::uint64_t any_seed() {
  return *rc::gen::inRange<std::uint64_t>(1, 1U << 30U);
}

// A turn by an angle, then a move; a mirror first where that is wanted.
struct Move {
  double angle = 0.0;
  double dx = 0.0;
  double dy = 0.0;
  bool mirror = false;

  [[nodiscard]] Point2 operator()(Point2 p) const {
    if (mirror) p.x = -p.x;
    return {std::cos(angle) * p.x - std::sin(angle) * p.y + dx,
            std::sin(angle) * p.x + std::cos(angle) * p.y + dy};
  }
};
Move any_move(std::uint64_t seed) {
  tests::SplitMix random(seed + 77);
  return {random.between(-3.0, 3.0), random.between(-300.0, 300.0), random.between(-300.0, 300.0),
          random.one_in(2)};
}

TEST(TouchedFitsProperty, ACircleMovesWithItsTouches) {
  EXPECT_TRUE(holds("moving a circle", [] {
    const std::uint64_t seed = any_seed();
    const auto arc = random_arc(seed);
    const Move move = any_move(seed);
    std::vector<Point2> moved;
    for (const Point2& p : arc.touches)
      moved.push_back(move(p));
    const auto one = fit_circle(arc.touches);
    const auto other = fit_circle(moved);
    RC_ASSERT(one.has_value() && other.has_value());
    const Point2 middle = move({one->x, one->y});
    const double most = kFitError * 1000.0;  // touches lie within 1000 mm of the zero
    RC_ASSERT(std::abs(other->x - middle.x) <= most);
    RC_ASSERT(std::abs(other->y - middle.y) <= most);
    RC_ASSERT(std::abs(other->radius - one->radius) <= most);
    RC_ASSERT(std::abs(other->form_error() - one->form_error()) <= most);
    RC_ASSERT(std::abs(other->arc_rad - one->arc_rad) <= 1e-9);
    // The doubt of the radius does not turn; that of the middle does, its two parts together do not change.
    const auto c = one->covariance();
    const auto d = other->covariance();
    RC_ASSERT(std::abs(d.at(2, 2) / c.at(2, 2) - 1.0) <= 1e-7);
    RC_ASSERT(std::abs((d.at(0, 0) + d.at(1, 1)) / (c.at(0, 0) + c.at(1, 1)) - 1.0) <= 1e-7);
  }));
}

TEST(TouchedFitsProperty, TheCircleLiesNearestAndReorderingChangesNothing) {
  EXPECT_TRUE(holds("nearest circle", [] {
    const auto arc = random_arc(any_seed());
    const auto fit = fit_circle(arc.touches);
    RC_ASSERT(fit.has_value());
    const auto squares = [&](double x, double y, double r) {
      double sum = 0.0;
      for (const Point2& p : arc.touches)
        sum += std::pow(std::hypot(p.x - x, p.y - y) - r, 2);
      return sum;
    };
    const double here = squares(fit->x, fit->y, fit->radius);
    for (const double by : {-1e-3, 1e-3}) {
      const double step = by * fit->radius;
      RC_ASSERT(here <= squares(fit->x + step, fit->y, fit->radius));
      RC_ASSERT(here <= squares(fit->x, fit->y + step, fit->radius));
      RC_ASSERT(here <= squares(fit->x, fit->y, fit->radius + step));
      RC_ASSERT(here <= squares(fit->x + step, fit->y + step, fit->radius - step));
    }
    RC_ASSERT(here < squares(arc.x, arc.y, arc.radius) + 1e-15);
    std::vector<Point2> back(arc.touches.rbegin(), arc.touches.rend());
    const auto other = fit_circle(back);
    RC_ASSERT(std::abs(other->x - fit->x) <= kFitError * 1000.0);
    RC_ASSERT(std::abs(other->radius - fit->radius) <= kFitError * 1000.0);
  }));
}

TEST(TouchedFitsProperty, TouchesMoveTheCircleAsItsSlopesSay) {
  EXPECT_TRUE(holds("slopes of a circle", [] {
    const std::uint64_t seed = any_seed();
    auto arc = random_arc(seed);
    // Touches that lie on their circle: there the slopes are exact.
    const auto first = fit_circle(arc.touches);
    RC_ASSERT(first.has_value());
    for (std::size_t i = 0; i < arc.touches.size(); ++i) {
      arc.touches[i].x -= first->off[i] * first->normals[i].x;
      arc.touches[i].y -= first->off[i] * first->normals[i].y;
    }
    const auto fit = fit_circle(arc.touches);
    const std::size_t which = seed % arc.touches.size();
    const double by = 1e-6 * fit->radius;
    arc.touches[which].x += by * fit->normals[which].x;
    arc.touches[which].y += by * fit->normals[which].y;
    const auto moved = fit_circle(arc.touches);
    const double most = 1e-4 * by * (1.0 + std::abs(fit->slopes.at(2, which)));
    RC_ASSERT(std::abs(moved->x - fit->x - by * fit->slopes.at(0, which)) <= most);
    RC_ASSERT(std::abs(moved->y - fit->y - by * fit->slopes.at(1, which)) <= most);
    RC_ASSERT(std::abs(moved->radius - fit->radius - by * fit->slopes.at(2, which)) <= most);
  }));
}

TEST(TouchedFitsProperty, ALineTurnsWithItsTouches) {
  EXPECT_TRUE(holds("turning a line", [] {
    const std::uint64_t seed = any_seed();
    const auto touches = random_face(seed, 2);
    const auto one = fit_flat(touches, 1);
    RC_ASSERT(one.has_value());
    tests::SplitMix random(seed);
    const Move move{random.between(-0.2, 0.2), random.between(-300.0, 300.0), random.between(-300.0, 300.0),
                    false};
    std::vector<std::vector<double>> moved;
    for (const auto& touch : touches) {
      const Point2 p = move({touch[0], touch[1]});
      moved.push_back({p.x, p.y});
    }
    const auto other = fit_flat(moved, 1);
    RC_ASSERT(other.has_value());
    RC_ASSERT(std::abs(std::atan(other->rises[0]) - std::atan(one->rises[0]) - move.angle) <= 1e-9);
    const Point2 middle = move({one->middles[0], one->at});
    RC_ASSERT(std::abs(other->at - middle.y) <= kFitError * 1000.0);
    RC_ASSERT(std::abs(other->middles[0] - middle.x) <= kFitError * 1000.0);
    RC_ASSERT(std::abs(other->form_error() - one->form_error()) <= kFitError * 1000.0);
  }));
}

TEST(TouchedFitsProperty, APlaneMovesWithItsTouchesWhicheverAxisItIsSquareTo) {
  EXPECT_TRUE(holds("moving a plane", [] {
    const std::uint64_t seed = any_seed();
    const auto touches = random_face(seed, 3);
    const auto one = fit_flat(touches, 2);
    RC_ASSERT(one.has_value());
    tests::SplitMix random(seed);
    const double by = random.between(-300.0, 300.0);
    std::vector<std::vector<double>> turned;  // z, x, y for x, y, z
    for (const auto& touch : touches)
      turned.push_back({touch[2] + by, touch[0], touch[1]});
    const auto other = fit_flat(turned, 0);
    RC_ASSERT(other.has_value());
    RC_ASSERT(std::abs(other->at - one->at - by) <= kFitError * 1000.0);
    RC_ASSERT(std::abs(other->rises[0] - one->rises[0]) <= 1e-10);
    RC_ASSERT(std::abs(other->rises[1] - one->rises[1]) <= 1e-10);
    RC_ASSERT(std::abs(other->normal[0] - one->normal[2]) <= 1e-10);
  }));
}

}  // namespace
}  // namespace sparewright::survey
