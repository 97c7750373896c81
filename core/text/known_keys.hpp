// Every key a text may have, for help and reference pages.
#pragma once

#include <string>
#include <vector>

#include "core/text/shape.hpp"

namespace sparewright::text {

struct KnownKey {
  std::string path;  // feature[].diameter.size; <...> stands for a key of free choice: original.<dimension>
  std::string only_with;  // kind "hole": the word it comes with, empty where it always may stand
  std::string accepted;
  std::string says;
  bool is_required = false;
};

// In the order of the declaration, what is inside a value right after it.
[[nodiscard]] std::vector<KnownKey> known_keys(const Shape& shape);

}  // namespace sparewright::text
