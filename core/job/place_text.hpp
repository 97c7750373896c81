// The place of a feature on a side of the work. Used inside this room only.
#pragma once

#include <map>

#include "core/job/dimension_text.hpp"

namespace sparewright::job {

// Of the two axes that lie in a side, those a place has to say.
enum class PlaceAxes { kBoth, kAlongBarAlone, kAcrossBarIfSaid };

// at = { x = ..., y = ... }: what is left out and has to be there is told.
[[nodiscard]] std::map<part::Axis, part::Position> read_places(const text::TableReader& in,
                                                               const Names& names, part::Face side,
                                                               PlaceAxes wanted = PlaceAxes::kBoth);

// A key that has to be there and is not.
void need_key(const text::TableReader& in, std::string_view key);

}  // namespace sparewright::job
