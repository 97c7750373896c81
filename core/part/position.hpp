// Where something lies along one axis: a distance from a face (inwards) or from another feature.
#pragma once

#include <string>
#include <variant>

#include "core/base/hash.hpp"
#include "core/part/dimension.hpp"
#include "core/part/face.hpp"

namespace sparewright::part {

struct Position {
  Dimension distance;
  std::variant<Face, std::string> from = Face::kLeftEnd;  // a face, or a feature's name
  bool towards_smaller = false;  // from a feature: towards the left end, the front or the underside
};

void add_to(base::Hasher& hasher, const Position& position);

}  // namespace sparewright::part
