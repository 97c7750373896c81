// The room there is for the part on its machine, as the job gives it.
#pragma once

#include <optional>

#include "core/base/hash.hpp"
#include "core/quantity/typed.hpp"

namespace sparewright::judge {

// A box for the finished part to stand in: its length along x, width along y and height along z of the part.
struct Envelope {
  quantity::Typed length;
  quantity::Typed width;
  quantity::Typed height;
  bool any_way = false;  // it may be turned by quarters to fit
};

// What it has to be passed through, end first or sideways, square to it. Either a diameter or both of the others.
struct Opening {
  std::optional<quantity::Typed> width;
  std::optional<quantity::Typed> height;
  std::optional<quantity::Typed> diameter;
};

struct Space {
  std::optional<Envelope> envelope;
  std::optional<Opening> opening;
};

void add_to(base::Hasher& hasher, const Space& space);

}  // namespace sparewright::judge
