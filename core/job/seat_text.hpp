// What sits on the part in a job text: [[seat]].
#pragma once

#include <vector>

#include "core/judge/seat.hpp"
#include "core/part/part.hpp"
#include "core/text/reading.hpp"
#include "core/text/shape.hpp"

namespace sparewright::job {

[[nodiscard]] text::Shape seat_shape();

// Tells seats on features that are not there or cannot take what is said, and bearings the handbook does not have.
[[nodiscard]] std::vector<judge::Seat> read_seats(const text::TableReader& job, const part::Part& part);

}  // namespace sparewright::job
