// Where the kernel's exceptions stop.
#pragma once

#include <string_view>
#include <utility>

#include "core/base/result.hpp"

namespace sparewright::solid {

// To be called in a handler: turns the exception in flight into a kKernel failure about the subject if the kernel threw
// it; lets everything else through (running out of memory among them).
[[nodiscard]] base::Failure kernel_failure(std::string_view subject);

// Takes the kernel's printers away, once for the process: it writes to standard output.
void silence_kernel();

// Runs something that calls the kernel. Nothing of the kernel's comes out but what it returns.
template <typename Function>
[[nodiscard]] auto guarded(std::string_view subject, Function&& function)
    -> base::Result<decltype(function())> {
  silence_kernel();
  try {
    return std::forward<Function>(function)();
  } catch (...) {
    return base::fail(kernel_failure(subject));
  }
}

}  // namespace sparewright::solid
