// The first sheet of a job, as blocks.
#pragma once

#include <string>
#include <vector>

#include "sheets/packet.hpp"
#include "sheets/setting.hpp"

namespace sparewright::sheets {

// Without head and foot. The sheets that follow are so many with the drawing, and those of packet.before, setups and after.
[[nodiscard]] Flow front_flow(const Setting& setting, const Packet& packet, double width_mm,
                              int drawings = 0);

// "2 NO, 1 CLOSE, 14 OK": the worst first, what there is none of left out; "no checks" for none.
[[nodiscard]] std::string counted(const std::vector<Check>& checks);

}  // namespace sparewright::sheets
