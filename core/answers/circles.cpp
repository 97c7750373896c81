// Circles found from what can be measured: three touches, or a chord and its height.
#include <array>
#include <cmath>

#include <fmt/format.h>

#include "core/answers/quick.hpp"
#include "core/handbook/arcs.hpp"

namespace sparewright::answers {
namespace {

using quantity::Coordinate;
using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;

constexpr handbook::Source kThreeTouches{"the circle through three touches, geometry", "",
                                         handbook::Basis::kDerived};

base::Result<Coordinate> coordinate_entry(const Question& question, std::string_view name) {
  const auto read = number_entry(question, name, Kind::kLength);
  if (!read) return tl::unexpected(read.error());
  return Coordinate() + read->length();
}

base::Result<std::array<handbook::Touch, 3>> touches_of(const Question& question) {
  std::array<handbook::Touch, 3> touches;
  for (std::size_t i = 0; i < touches.size(); ++i) {
    const auto x = coordinate_entry(question, fmt::format("x{}", i + 1));
    if (!x) return tl::unexpected(x.error());
    const auto y = coordinate_entry(question, fmt::format("y{}", i + 1));
    if (!y) return tl::unexpected(y.error());
    touches.at(i) = {*x, *y};
  }
  return touches;
}

}  // namespace

base::Result<Answer> hole_centre(const Question& question) {
  const auto touches = touches_of(question);
  if (!touches) return tl::unexpected(touches.error());
  const auto tip = size_entry(question, "tip");
  if (!tip) return tl::unexpected(tip.error());
  const std::string* word = find_entry(question, "side");
  const std::string side = word == nullptr ? "hole" : *word;
  if (side != "hole" && side != "boss")
    return base::fail(base::Code::kValueNotAccepted, side, "hole or boss", "--side");
  const auto found = handbook::circle_from_touches(
      *touches, tip->diameter(),
      side == "boss" ? handbook::TouchedSide::kBoss : handbook::TouchedSide::kHole);
  if (!found) return tl::unexpected(found.error());
  const UnitSystem system = system_of(*tip);
  const Length x = found->x - Coordinate();
  const Length y = found->y - Coordinate();
  Answer answer;
  answer.asked = fmt::format("centre of a {} from three touches", side);
  answer.says = fmt::format("x {}, y {}", both_ways(x, system), both_ways(y, system));
  answer.assumed.emplace_back(
      "x and y are where the tip's centre stands as it touches, in one system of numbers");
  if (word == nullptr) answer.assumed.emplace_back("touched inside a hole");
  TableWriter writer("the circle", system);
  writer.length("centre x", x, kThreeTouches);
  writer.length("centre y", y, kThreeTouches);
  writer.length("diameter", found->diameter, kThreeTouches);
  const Length thou = Length::of(1.0, quantity::unit::thou);
  TableWriter doubt("if every touch may be 0.001 in out", system);
  doubt.length("the centre, at most", thou * found->centre_per_touch, kThreeTouches);
  doubt.length("the diameter, at most", thou * found->diameter_per_touch, kThreeTouches);
  answer.tables = {writer.take(), doubt.take()};
  return answer;
}

base::Result<Answer> chord(const Question& question) {
  const auto chord = size_entry(question, "chord");
  if (!chord) return tl::unexpected(chord.error());
  const auto height = size_entry(question, "height");
  if (!height) return tl::unexpected(height.error());
  if (height->base > chord->base / 2.0)
    return base::fail(
        base::Code::kValueNotAccepted, height->typed,
        fmt::format("up to half the chord, {}", both_ways(chord->length() / 2.0, system_of(*chord))),
        "--height");
  const UnitSystem system = system_of(*chord);
  const double radius = handbook::radius_from_chord_mm(chord->base, height->base);
  const double thou = Length::of(1.0, quantity::unit::thou).base();
  Answer answer;
  answer.asked = fmt::format("arc {} high over a chord of {}", both_ways(height->length(), system),
                             both_ways(chord->length(), system));
  answer.says = fmt::format("radius {}", both_ways(Length::from_base(radius), system));
  TableWriter writer("the arc", system);
  writer.length("radius", Length::from_base(radius), handbook::kRadiusFromChord);
  writer.length("diameter", Length::from_base(2.0 * radius), handbook::kRadiusFromChord);
  writer.length(
      "0.001 in more of height changes the radius",
      Length::from_base(std::abs(handbook::radius_from_chord_mm(chord->base, height->base + thou) - radius)),
      handbook::kRadiusFromChord, "a shallow arc tells little: measure over the longest chord there is");
  answer.tables.push_back(writer.take());
  return answer;
}

}  // namespace sparewright::answers
