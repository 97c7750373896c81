// Sizes and dimensions as a text would have given them.
#pragma once

#include <fmt/format.h>

#include "core/part/dimension.hpp"

namespace sparewright::tests {

// base: mm or rad, typed as that number.
inline quantity::Typed typed(quantity::Kind kind, double base) {
  quantity::Typed size;
  size.kind = kind;
  size.base = base;
  size.typed = fmt::format("{}", base);
  return size;
}

// Without a tolerance of its own.
inline part::Dimension sized(quantity::Kind kind, double base) {
  part::Dimension d;
  d.kind = kind;
  d.size = typed(kind, base);
  d.typed = fmt::format("{}", base);
  return d;
}

}  // namespace sparewright::tests
