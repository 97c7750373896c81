// Any thread as people write it, read into the family it belongs to.
#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/acme_threads.hpp"
#include "core/handbook/metric_threads.hpp"
#include "core/handbook/pipe_threads.hpp"
#include "core/handbook/thread_shape.hpp"
#include "core/handbook/trapezoidal_threads.hpp"
#include "core/handbook/unified_threads.hpp"
#include "core/handbook/whitworth_threads.hpp"

namespace sparewright::handbook {

using AnyThread = std::variant<UnifiedThread, MetricThread, PipeThread, AcmeThread, TrapezoidalThread,
                               WhitworthThread, AssociationThread>;

// Reads what read_unified_thread, read_metric_thread, read_pipe_thread, read_acme_thread,
// read_trapezoidal_thread, read_whitworth_thread and read_association_thread read, in capitals or not. The
// words in it decide the family: M or Tr in front, NPT, G, R, BSPP, ACME, BSW, BA and so on; 8x1.25 is taken
// as M8x1.25, and what names no family as Unified. What was not written is told in `assumed` of the thread,
// also that an inch thread written without its series may be a Whitworth one. The failure is that of the
// family: 3/4-11 UNC names the Unified threads of 3/4 in.
[[nodiscard]] base::Result<AnyThread> read_thread(std::string_view text);

[[nodiscard]] std::string to_string(const AnyThread& thread);

// What was not written and how it was taken, a sentence each.
[[nodiscard]] const std::vector<std::string>& assumed_of(const AnyThread& thread);

[[nodiscard]] ThreadShape shape_of(const UnifiedThread& thread);
[[nodiscard]] ThreadShape shape_of(const MetricThread& thread);
[[nodiscard]] ThreadShape shape_of(const AnyThread& thread);

}  // namespace sparewright::handbook
