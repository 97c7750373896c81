// The place of a feature on a side of the work. Used inside this room only.
#pragma once

#include <map>

#include "core/job/dimension_text.hpp"

namespace sparewright::job {

// at = { x = ..., y = ... }: the two axes that lie in the side, both or it is told. only: where one axis says it all.
[[nodiscard]] std::map<part::Axis, part::Position> read_places(const text::TableReader& in,
                                                               const Names& names, part::Face side,
                                                               std::optional<part::Axis> only = {});

// A key that has to be there and is not.
void need_key(const text::TableReader& in, std::string_view key);

}  // namespace sparewright::job
