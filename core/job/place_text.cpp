#include "core/job/place_text.hpp"

#include <fmt/format.h>

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
                                                 part::Face side) {
  std::map<part::Axis, part::Position> places;
  const auto at = in.table("at");
  if (!at) return places;
  for (const part::Axis axis : part::axes_in(side)) {
    auto position = read_position(*at, part::name_of(axis), axis, names);
    if (position) {
      places[axis] = std::move(*position);
    } else if (!at->node().find(part::name_of(axis))) {
      need_key(*at, part::name_of(axis));
    }
  }
  if (const auto extra = at->node().find(part::name_of(part::axis_of(side)))) {
    in.problems().add(text::failure_at(
        *extra, base::Code::kValueNotAccepted, extra->key(),
        fmt::format("places in the {} have {} and {}", part::name_of(side),
                    part::name_of(part::axes_in(side)[0]), part::name_of(part::axes_in(side)[1]))));
  }
  return places;
}

}  // namespace sparewright::job
