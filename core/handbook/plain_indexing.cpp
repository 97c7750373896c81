#include "core/handbook/plain_indexing.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace sparewright::handbook {
namespace {

using quantity::Angle;
namespace unit = quantity::unit;

// Angles in turns below 1 as doubles are good to 1e-16; fractions with bottoms up to 1 296 000 lie 6e-13
// apart.
constexpr double kTurnTolerance = 1e-13;
constexpr std::int64_t kMostBottom = 1'296'000'000;  // a thousandth of an arc second

PlainIndexing setting(const DividingHead& head, const Ratio& part, const IndexPlate& plate, int circle) {
  const std::int64_t holes = (part * Ratio::of(head.worm) * Ratio::of(circle)).nearest_whole();
  PlainIndexing out;
  out.turns = static_cast<int>(holes / circle);
  out.holes = static_cast<int>(holes % circle);
  out.circle = circle;
  out.plate = plate.name;
  out.moved = Ratio::of(holes, std::int64_t{circle} * head.worm);
  out.error = index_error(out.moved, part);
  return out;
}

}  // namespace

base::Result<Ratio> part_for_divisions(int divisions) {
  if (divisions < 2 || divisions > kMostDivisions) {
    return base::fail(base::Code::kValueNotAccepted, std::to_string(divisions),
                      fmt::format("2 to {}", kMostDivisions), "the number of divisions");
  }
  return Ratio::of(1, divisions);
}

base::Result<Ratio> part_for_angle(Angle angle) {
  const double turns = angle.in(unit::turn);
  const Ratio part =
      turns > 0.0 && turns <= 1.0 + kTurnTolerance ? ratio_near(turns, kTurnTolerance) : Ratio();
  if (part == Ratio()) {
    return base::fail(base::Code::kValueNotAccepted, fmt::format("{:.6g} deg", angle.in(unit::degree)),
                      "more than 0 up to 360 deg", "the angle to index");
  }
  return part;
}

Angle index_error(const Ratio& moved, const Ratio& wanted) {
  return moved == wanted ? Angle() : Angle::of(moved.value() - wanted.value(), unit::turn);
}

base::Result<std::vector<PlainIndexing>> plain_indexing(const DividingHead& head, const Ratio& part,
                                                        std::size_t most) {
  assert(part > Ratio() && part <= Ratio::of(1));
  if (const auto good = checked(head); !good) return tl::unexpected(good.error());
  const Ratio crank = part * Ratio::of(head.worm);
  if (crank.is_whole()) return std::vector{PlainIndexing{static_cast<int>(crank.top()), 0, 0, "", part, {}}};
  std::vector<PlainIndexing> all;
  for (const IndexPlate& plate : head.plates) {
    for (const int circle : plate.circles) {
      const PlainIndexing one = setting(head, part, plate, circle);
      if (one.moved != Ratio()) all.push_back(one);
    }
  }
  std::stable_sort(all.begin(), all.end(), [&](const PlainIndexing& a, const PlainIndexing& b) {
    const Ratio off_a = magnitude(a.moved - part);
    const Ratio off_b = magnitude(b.moved - part);
    return off_a != off_b ? off_a < off_b : a.circle > b.circle;
  });
  const auto inexact =
      std::find_if(all.begin(), all.end(), [](const PlainIndexing& one) { return !one.exact(); });
  const auto exact = static_cast<std::size_t>(inexact - all.begin());
  all.resize(exact > 0 ? exact : std::min(most, all.size()));
  return all;
}

base::Result<std::vector<IndexPosition>> nearest_hole_positions(const DividingHead& head, int divisions,
                                                                int circle) {
  const auto part = part_for_divisions(divisions);
  if (!part) return tl::unexpected(part.error());
  if (const auto good = checked(head); !good) return tl::unexpected(good.error());
  std::vector<int> circles;
  for (const IndexPlate& plate : head.plates)
    circles.insert(circles.end(), plate.circles.begin(), plate.circles.end());
  if (std::find(circles.begin(), circles.end(), circle) == circles.end()) {
    return base::fail(base::Code::kValueNotAccepted, fmt::format("{} holes", circle),
                      fmt::format("{}", fmt::join(circles, ", ")), "the circle");
  }
  std::vector<IndexPosition> out;
  for (int number = 1; number <= divisions; ++number) {
    const Ratio wanted = Ratio::of(number - 1) * *part;
    const std::int64_t holes = (wanted * Ratio::of(std::int64_t{head.worm} * circle)).nearest_whole();
    const Ratio moved = Ratio::of(holes, std::int64_t{circle} * head.worm);
    out.push_back({number, static_cast<int>(holes / circle), static_cast<int>(holes % circle),
                   index_error(moved, wanted)});
  }
  return out;
}

}  // namespace sparewright::handbook
