#include "core/job/place_text.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace sparewright::job {

void need_key(const text::TableReader& in, std::string_view key) {
  base::Failure failure;
  failure.code = base::Code::kKeyMissing;
  failure.subject = in.node().label();
  failure.found = key;
  failure.place = in.node().place();
  in.problems().add(std::move(failure));
}

std::map<part::Axis, part::Position> read_places(const text::TableReader& in, const Names& names,
                                                 part::Face side, PlaceAxes wanted) {
  std::map<part::Axis, part::Position> places;
  const auto at = in.table("at");
  if (!at) return places;
  std::vector<part::Axis> axes;
  for (const part::Axis axis : part::axes_in(side)) {
    if (wanted != PlaceAxes::kAlongBarAlone || axis == part::Axis::kX) axes.push_back(axis);
  }
  for (const part::Axis axis : axes) {
    auto position = read_position(*at, part::name_of(axis), axis, names);
    if (position) {
      places[axis] = std::move(*position);
    } else if (!at->node().find(part::name_of(axis)) &&
               (wanted != PlaceAxes::kAcrossBarIfSaid || axis == part::Axis::kX)) {
      need_key(*at, part::name_of(axis));
    }
  }
  for (const part::Axis axis : part::kAxes) {
    const auto extra = at->node().find(part::name_of(axis));
    if (!extra || std::find(axes.begin(), axes.end(), axis) != axes.end()) continue;
    std::vector<std::string_view> known;
    for (const part::Axis one : axes)
      known.push_back(part::name_of(one));
    in.problems().add(text::failure_at(
        *extra, base::Code::kValueNotAccepted, extra->key(),
        fmt::format("places {} have {}",
                    wanted == PlaceAxes::kAlongBarAlone ? "round the bar"
                                                        : fmt::format("in the {}", part::name_of(side)),
                    fmt::join(known, " and "))));
  }
  return places;
}

}  // namespace sparewright::job
