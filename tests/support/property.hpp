// Properties that repeat: RapidCheck with a fixed seed. RC_PARAMS in the environment sets another; what was
// used is printed.
#pragma once

#include <cstdlib>
#include <string>
#include <utility>

#include <rapidcheck.h>

namespace sparewright::tests {

// Whether the property held in every trial; what broke it is printed, shrunk. At most one description a
// property, so that its inputs do not change when another is added before it.
template <typename Testable>
[[nodiscard]] bool holds(const std::string& description, Testable&& testable) {
  static const int kSet = setenv("RC_PARAMS", "seed=1959 max_success=400", 0);
  return kSet == 0 && rc::check(description, std::forward<Testable>(testable));
}

}  // namespace sparewright::tests
