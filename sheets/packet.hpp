// All sheets of one job: the first sheet, then one for every setup, in the order of work.
#pragma once

#include <string>
#include <vector>

#include "core/route/sheet.hpp"
#include "sheets/first_sheet.hpp"

namespace sparewright::sheets {

struct Packet {
  std::string title;     // as typed
  std::string revision;  // "C"; empty where there is none
  FirstSheet first;
  std::vector<route::SetupSheet> setups;
};

}  // namespace sparewright::sheets
