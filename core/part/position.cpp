#include "core/part/position.hpp"

namespace sparewright::part {

void add_to(base::Hasher& hasher, const Position& position) {
  hasher.add(fingerprint(position.distance)).add(static_cast<std::uint64_t>(position.from.index()));
  if (const auto* face = std::get_if<Face>(&position.from)) {
    hasher.add(static_cast<int>(*face));
  } else {
    hasher.add(std::get<std::string>(position.from));
  }
  hasher.add(position.towards_smaller);
}

}  // namespace sparewright::part
