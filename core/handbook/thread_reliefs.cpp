#include "core/handbook/thread_reliefs.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

struct Row {
  Length pitch;
  Length width_least;
  Length width_most;
  Length under;  // major diameter less that of the groove
  Length radius;
  Length hole_width_least;
  Length hole_width_most;
  Length hole_over;  // diameter of the groove less the major
  Source source;
};
constexpr Row kRows[] = {
#include "generated/core/handbook/thread_reliefs.inc"
};

// The row of a pitch, or the one between its neighbours.
std::optional<Row> row_at(Length pitch) {
  for (const Row* above = std::begin(kRows); above != std::end(kRows); ++above) {
    if (std::abs((above->pitch - pitch).base()) < kSizeSlackMm) return *above;
    if (above->pitch < pitch || above == std::begin(kRows)) continue;
    const Row& below = *(above - 1);
    if (below.pitch > pitch) return std::nullopt;
    const double share = (pitch - below.pitch) / (above->pitch - below.pitch);
    const auto between = [&](Length Row::*column) {
      return below.*column + share * (above->*column - below.*column);
    };
    Row out = below;
    for (Length Row::*column : {&Row::pitch, &Row::width_least, &Row::width_most, &Row::under, &Row::radius,
                                &Row::hole_width_least, &Row::hole_width_most, &Row::hole_over}) {
      out.*column = between(column);
    }
    out.source = {"between two pitches of DIN 76-1, itself from memory", "", Basis::kDerived};
    return out;
  }
  return std::nullopt;
}

}  // namespace

base::Result<ThreadRelief> thread_relief(const AnyThread& thread, ThreadSide side) {
  const ThreadShape shape = shape_of(thread);
  const auto row = row_at(shape.pitch);
  if (!row || shape.tapered)
    return not_tabled("the thread relief", shape.name,
                      "parallel threads with pitches of 0.5 to 6 mm, 51 to 4.25 per inch");
  const Length beyond = Length::of(0.1, unit::millimetre);
  const Length root = thread_depth(thread, side).depth + beyond;
  if (side == ThreadSide::kScrew) {
    const Length under = std::max(row->under, 2.0 * root);
    return ThreadRelief{row->width_least, row->width_most, as_diameter(across(shape.major) - under),
                        row->radius, row->source};
  }
  const Length bottom = across(shape.minor) + 2.0 * root;
  return ThreadRelief{row->hole_width_least, row->hole_width_most,
                      as_diameter(std::max(across(shape.major) + row->hole_over, bottom)), row->radius,
                      row->source};
}

}  // namespace sparewright::handbook
