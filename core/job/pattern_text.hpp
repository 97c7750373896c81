// Holes written once and made several times: rows, grids, bolt circles, round a bar. Each hole of one is a feature of its
// own, with its own numbers: "cover screws 1", "cover screws 2". Used inside this room only.
#pragma once

#include <string>
#include <vector>

#include "core/job/dimension_text.hpp"
#include "core/part/blank.hpp"
#include "core/text/shape.hpp"

namespace sparewright::job {

// The keys of a hole that say where it stands and how often. position: the shape of one.
[[nodiscard]] std::vector<text::Field> place_fields(const text::Shape& dimension,
                                                    const text::Shape& position);

// The features that a [[feature]] table stands for: its name, or so many names with a number after them.
[[nodiscard]] std::vector<std::string> names_made_by(const text::TableReader& feature);

// The places of all holes of the table, in the order of names_made_by; what the holes have in common is in `hole`.
[[nodiscard]] std::vector<part::Hole> placed_holes(const text::TableReader& in, const part::Hole& hole,
                                                   part::BlankShape blank, const Names& names);

}  // namespace sparewright::job
