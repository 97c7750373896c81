// How much of a screw is threaded, from its point up.
#pragma once

#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/screw_thread.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

inline constexpr Source kSocketThreadLength{
    "basic thread length of socket head cap screws: 2 D + 1/2 in from 1/4 in up, 0.75 in for #4 and #5, 0.88 "
    "in "
    "for #6 to #10 (ASME B18.3); 2 d + 12 mm (ISO 4762)",
    "", Basis::kFromMemory};
inline constexpr Source kHexThreadLength{
    "thread length of hex screws: 2 D + 1/4 in, 2 D + 1/2 in over 6 in long (ASME B18.2.1); 2 d + 6 mm, 2 d "
    "+ 12 "
    "mm over 125 mm (ISO 4014)",
    "", Basis::kFromMemory};

struct ThreadLength {
  quantity::Length thread;  // never more than the screw
  quantity::Length shank;   // unthreaded under the head; zero where the screw is threaded to the head
  Source source;
};

// length: of the screw under its head, more than zero. Fails with kSizeNotPositive, or with kNotTabled for an
// inch size under #4 or hex screw under 1/4 in.
[[nodiscard]] base::Result<ThreadLength> socket_thread_length(const ScrewThread& thread,
                                                              quantity::Length length);
[[nodiscard]] base::Result<ThreadLength> hex_thread_length(const ScrewThread& thread,
                                                           quantity::Length length);

}  // namespace sparewright::handbook
