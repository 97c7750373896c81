// Places on the end of round work, which has no side to measure from: by its middle, and round a circle by dividers.
#include <cmath>

#include <fmt/format.h>

#include "core/route/marks.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using part::Axis;
using part::Face;
using quantity::Kind;

const Figure& place_of(MarksBench& bench, const MarkedHole& one, Axis axis) {
  return bench.feature_figure(one.work->feature, fmt::format("at {}", part::name_of(axis)));
}

// How far from the middle of the end, towards greater places.
const Figure& from_middle(MarksBench& bench, const MarkedHole& one, Axis axis) {
  return bench.pen.work(
      fmt::format("{}/{} from the middle", one.work->feature, part::name_of(axis)), Kind::kLength,
      "its place less the middle of the work",
      [](auto at, auto low, auto high) { return at - (low + high) / 2.0; }, place_of(bench, one, axis),
      bench.side(part::face_at(axis, false)), bench.side(part::face_at(axis, true)));
}

bool steps_on(const MarkedHole& one, const MarkedHole* before) {
  return before != nullptr && one.hole->by_angle && before->hole->by_angle && is_on_end(*before) &&
         one.hole->by_angle->from == before->hole->by_angle->from && one.hole->into == before->hole->into;
}

// "23.75 towards the back and 41.14 towards the top of the middle": what is nothing is left out.
std::string places_words(MarksBench& bench, const MarkedHole& one) {
  constexpr double kNothing_mm = 0.005;
  std::string words;
  for (const Axis axis : {Axis::kY, Axis::kZ}) {
    const Figure& off = from_middle(bench, one, axis);
    if (off.known() && std::abs(off.value) < kNothing_mm) continue;
    words += fmt::format("{}{} towards the {}", words.empty() ? "" : " and ",
                         or_not_known(off, bench.print.plain(std::abs(off.value))),
                         part::name_of(part::face_at(axis, off.value > 0.0)));
  }
  return words.empty() ? "in the middle" : words + " of the middle";
}

}  // namespace

bool is_on_end(const MarkedHole& one) {
  return one.on_round && part::axis_of(one.hole->into) == Axis::kX;
}

const Figure& apart(MarksBench& bench, const std::string& local, const MarkedHole& a, const MarkedHole& b) {
  const Axis first = part::axis_of(a.hole->into) == Axis::kX ? Axis::kY : Axis::kX;
  const Axis second = part::axis_of(a.hole->into) == Axis::kZ ? Axis::kY : Axis::kZ;
  return bench.pen.work(
      local, Kind::kLength, "centre to centre",
      [](auto ax, auto ay, auto bx, auto by) {
        using std::sqrt;
        return sqrt((ax - bx) * (ax - bx) + (ay - by) * (ay - by));
      },
      place_of(bench, a, first), place_of(bench, a, second), place_of(bench, b, first),
      place_of(bench, b, second));
}

std::string end_words(MarksBench& bench, const MarkedHole& one, const MarkedHole* before) {
  if (!steps_on(one, before))
    return fmt::format("mark and punch {}: {}{}", one.work->feature,
                       one.hole->by_angle ? "on the circle, " : "", places_words(bench, one));
  const Figure& chord = apart(bench, one.work->feature + "/step", *before, one);
  return fmt::format("mark and punch {}: on the circle, dividers at {} from {}", one.work->feature,
                     or_not_known(chord, bench.print.plain(chord.value)), before->work->feature);
}

}  // namespace sparewright::route
