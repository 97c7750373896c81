// All sheets of one job: the first sheet, the drawing, then one for every setup, in the order of work.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/route/sheet.hpp"
#include "drawing/part_drawing.hpp"
#include "sheets/first_sheet.hpp"

namespace sparewright::sheets {

struct Packet {
  std::string title;     // as typed
  std::string revision;  // "C"; empty where there is none
  FirstSheet first;
  std::optional<drawing::PartContent> drawing;
  std::string no_drawing;  // why there is none; empty where none is wanted
  std::vector<route::SetupSheet> setups;
};

}  // namespace sparewright::sheets
