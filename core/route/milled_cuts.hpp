// What lines of milling share: how metal is taken with an end mill, its feed, its size. Used inside this room only.
#pragma once

#include <string>

#include "core/route/bench.hpp"

namespace sparewright::route {

// How metal is shared out in milling: at most the machine's quiet cut (else 0.030 in), two like cuts of 0.010 in to
// finish, nothing under 0.003 in; a wall keeps 0.010 in until the last cut. Common practice. In a job in millimetres the
// like of them in round numbers.
struct MillCuts {
  double quiet_mm = 0.0;
  double like_mm = 0.0;
  double least_mm = 0.0;
  double wall_leave_mm = 0.0;
  double step_mm = 0.0;  // one division of the knee's collar; 0 where it has none
};
[[nodiscard]] MillCuts mill_cuts(const MillBench& bench);

// A pass is at most this much of the cutter wide. Common practice.
inline constexpr double kPassWidth = 0.75;
// More passes side by side than this are not listed one by one.
inline constexpr int kMostPassesListed = 12;

// The first tool of the kind that the list names; nullptr where there is none.
[[nodiscard]] const shop::Tool* first_tool(const Work& work, shop::ToolKind kind);

// Inches or millimetres a minute at the speed chosen, which rpm_text wrote under the same name.
[[nodiscard]] std::string feed_text(MillBench& bench, const std::string& name, const shop::Tool& mill);

// A length that is chosen here or follows from the shop.
const ledger::Figure& stated_length(Bench& bench, const std::string& local, double mm, std::string source);

// The diameter of a cutter, known to half of the last place it was measured to; as marked an end mill may be 0.002 in off
// (common practice).
const ledger::Figure& cutter_diameter(Bench& bench, const std::string& local, const shop::Tool& tool);

// The machine's axis that runs along an axis of the part; the part lies level.
[[nodiscard]] MachineAxis machine_axis(const MillBench& bench, part::Axis along_part);
[[nodiscard]] std::string_view wheel_of(MachineAxis axis);  // "X"

// The reading of one wheel on a line.
void put_reading(Line& line, MachineAxis axis, const std::string& reads);

}  // namespace sparewright::route
