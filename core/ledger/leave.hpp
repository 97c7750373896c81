// How a stage ends early when what it needs is not known. Thrown by Pen, caught by Ledger, seen by nobody
// else.
#pragma once

#include <string>
#include <vector>

namespace sparewright::ledger {

struct Leave {
  std::vector<std::string> missing;
  std::vector<std::string>
      circle;  // the stages that wait for one another; empty where that is not the reason
};

}  // namespace sparewright::ledger
