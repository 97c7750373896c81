// All sheets of one job: the first sheet, the drawing, what to lay out and to mark out, then one for every setup, in the
// order of work, and what comes after.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/route/list_sheet.hpp"
#include "core/route/sheet.hpp"
#include "drawing/held_views.hpp"
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
  std::vector<route::ListSheet> before;  // the first setup
  std::vector<route::ListSheet> after;   // the last
  // The work in each setup, where it can be made; may be shorter.
  std::vector<std::optional<drawing::HeldViews>> held;
};

}  // namespace sparewright::sheets
