// The centre line that holes are symmetric about, from the coordinates of their middles.
#include <algorithm>
#include <cmath>
#include <vector>

#include <fmt/format.h>

#include "core/answers/entry_reader.hpp"
#include "core/answers/quick.hpp"
#include "core/survey/hole_pattern.hpp"
#include "core/survey/mirror_pattern.hpp"
#include "core/survey/pattern_work.hpp"

namespace sparewright::answers {
namespace {

using quantity::Length;
using quantity::UnitSystem;
using survey::FollowingNumber;
using survey::MirrorPattern;

constexpr handbook::Source kMirror{
    "the line through the mean of the middles that mirrors them best, least squares", "",
    handbook::Basis::kDerived};

// Standard uncertainty of a number, each coordinate being known to u_mm on its own.
double doubt_of(const FollowingNumber& number, double u_mm) {
  double squares = 0.0;
  for (const double slope : number.slopes)
    squares += slope * slope;
  return u_mm * std::sqrt(squares);
}

Table line_table(const MirrorPattern& found, double u_mm, UnitSystem system) {
  TableWriter writer("the centre line", system);
  writer.length("through x", Length::from_base(found.x.value), kMirror);
  writer.length("through y", Length::from_base(found.y.value), kMirror);
  const double degree = quantity::unit::degree.to_base(1.0);
  writer.number(
      "angle from x, counterclockwise", found.angle.value, quantity::Kind::kAngle, 3, kMirror,
      fmt::format("known to {:.3f} deg, 19 times in 20", 2.0 * doubt_of(found.angle, u_mm) / degree));
  writer.number("lines that do as well", found.lines, quantity::Kind::kNumber, 0, kMirror,
                found.lines > 1 ? "the one nearest to x is told" : "");
  return writer.take();
}

// Each hole with its mate, once. True where one is off by more than the coordinates can be.
bool write_holes(const MirrorPattern& found, double u_mm, TableWriter& writer) {
  bool any_off = false;
  for (std::size_t i = 0; i < found.mate.size(); ++i) {
    const auto mate = static_cast<std::size_t>(found.mate[i]);
    if (mate < i) continue;
    const double off = std::hypot(found.along[i].value, found.across[i].value);
    const double tells = 2.0 * std::max(doubt_of(found.along[i], u_mm), doubt_of(found.across[i], u_mm));
    const bool is_off = off > tells;
    any_off = any_off || is_off;
    writer.length(mate == i ? fmt::format("hole {} off the line", i + 1)
                            : fmt::format("holes {} and {} off each other's image", i + 1, mate + 1),
                  Length::from_base(mate == i ? off : 2.0 * off), kMirror,
                  is_off ? "more than its doubt" : "within its doubt");
  }
  return any_off;
}

}  // namespace

base::Result<Answer> centre_line(const Question& question) {
  EntryReader read(question);
  const std::vector<Length> x = read.lengths("x", 3, survey::kMostPatternHoles);
  const std::vector<Length> y = read.lengths("y", 3, survey::kMostPatternHoles);
  const Length good_to = read.maybe_size("good-to").value_or(Length::of(1.0, quantity::unit::thou));
  if (!read.failed()) read.refuse_unless(x.size() == y.size(), "y", "as many as in --x");
  if (read.failed()) return read.failure();
  std::vector<survey::Point2> middles;
  for (std::size_t i = 0; i < x.size(); ++i)
    middles.push_back({x[i].base(), y[i].base()});
  const double u_mm = good_to.base() / std::sqrt(3.0);  // JCGM 100:2008, 4.3.7
  const auto found = survey::mirror_pattern(middles, std::hypot(u_mm, survey::kHolesMade_mm));
  if (!found) return tl::unexpected(found.error());
  const UnitSystem system = read.system();
  Answer answer;
  answer.asked = fmt::format("the centre line of {} holes", middles.size());
  TableWriter holes("hole by hole", system);
  const bool off = write_holes(*found, u_mm, holes);
  answer.says = off ? "symmetric as it was meant, but not as far as the coordinates tell"
                    : "symmetric, as far as the coordinates tell";
  answer.tables = {line_table(*found, u_mm, system), holes.take()};
  if (!read.has("good-to"))
    answer.assumed.push_back(
        fmt::format("each coordinate is good to {}, either way", both_ways(good_to, system)));
  answer.assumed.emplace_back("holes that lie within 0.020 in of an image were meant to be there");
  return answer;
}

}  // namespace sparewright::answers
