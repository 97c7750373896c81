// What was touched at table coordinates, in a job text: [[touched]], [[between]], [[hole_pattern]].
#pragma once

#include <vector>

#include "core/shop/shop.hpp"
#include "core/survey/reading.hpp"
#include "core/text/reading.hpp"
#include "core/text/shape.hpp"

namespace sparewright::job {

[[nodiscard]] text::Shape touched_shape();
[[nodiscard]] text::Shape between_shape();
[[nodiscard]] text::Shape hole_pattern_shape();

// Reads all three into the survey. A tip is a size, or an edge finder of the shop by its name.
void read_touched(const text::TableReader& job, const std::vector<shop::Tool>& tools, survey::Survey& survey);

// All that they give to dimensions, in the order of the text.
[[nodiscard]] std::vector<survey::Gives> given_by(const survey::Survey& survey);

}  // namespace sparewright::job
