// The screw of a hole in a job text: "1/4-20 socket head", "5/16-18 x 2 socket head", "M8 x 30 socket head".
#pragma once

#include <optional>
#include <string>

#include "core/part/feature.hpp"
#include "core/quantity/quantity.hpp"
#include "core/text/reading.hpp"

namespace sparewright::job {

// Size and length of the screw as written; a bare length of a metric screw is in mm, of any other in inches. Nothing where
// there is no screw or it cannot be read, which is told.
struct WrittenScrew {
  std::string size;                        // "5/16-18"
  std::optional<quantity::Length> length;  // under the head
};
[[nodiscard]] std::optional<WrittenScrew> read_written_screw(const text::TableReader& in);

// The screw with the handbook's sizes of its head, how it is to stand, its grade and the torque it is tightened to. What
// the handbook does not have is told.
[[nodiscard]] std::optional<part::ScrewHead> read_screw(const text::TableReader& in);

}  // namespace sparewright::job
