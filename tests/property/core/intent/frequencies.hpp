// How often each nominal size comes among generated parts.
#pragma once

#include <cstdint>
#include <map>
#include <utility>

#include "generated_parts.hpp"

namespace sparewright::tests {

// How often each nominal size comes among the sizes of such parts, counted over many of them.
class Frequencies {
 public:
  Frequencies(std::uint64_t seed, int parts);

  // Of sizes over metal, between metal or neither in inch or metric parts: the share that has this nominal size, and the share
  // that has no standard one.
  [[nodiscard]] double of(bool is_inch, intent::Role role, double nominal_mm) const;
  [[nodiscard]] double none(bool is_inch, intent::Role role) const;

 private:
  struct Counts {
    std::map<long, int> of;
    int none = 0;
    int all = 0;
  };
  std::map<std::pair<bool, intent::Role>, Counts> counts_;
};

}  // namespace sparewright::tests
