// An order of work. The job's text gives one; a search may propose others of the same type.
#pragma once

#include <string>
#include <vector>

#include "core/base/hash.hpp"
#include "core/part/face.hpp"
#include "core/shop/shop.hpp"

namespace sparewright::route {

// A vise with parallels, the fixed jaw away from the operator. The machine's x runs to the operator's right, y away,
// z up.
struct Holding {
  shop::Vise vise;
  part::Face sits_on = part::Face::kUnderside;  // the side of the part that lies on the parallels
  part::Face fixed_jaw = part::Face::kBack;     // the side against the fixed jaw
  shop::Parallel parallels;                     // a pair, hard against the jaws
};

// How the zero of x or y is found: an edge finder on a side of the work.
struct EdgePickUp {
  part::Face side = part::Face::kLeftEnd;
  shop::Tool edge_finder;
};

// One feature made in this setup, with the tools in the order they are used.
struct Work {
  std::string feature;
  std::vector<shop::Tool> tools;
};

struct Setup {
  int op = 10;
  std::string name;
  shop::Machine machine;
  Holding holding;
  EdgePickUp x;
  EdgePickUp y;
  std::vector<Work> works;
  std::string done_before;  // "ends square", for the head of the sheet
};

struct Plan {
  std::vector<Setup> setups;
};

[[nodiscard]] base::Fingerprint fingerprint(const Setup& setup);

// "op 20"
[[nodiscard]] std::string setup_path(const Setup& setup);

}  // namespace sparewright::route
