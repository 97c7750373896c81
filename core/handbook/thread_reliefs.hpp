// Thread relief: the groove at a shoulder in which a thread runs out.
#pragma once

#include "core/base/result.hpp"
#include "core/handbook/single_point_threads.hpp"

namespace sparewright::handbook {

struct ThreadRelief {
  quantity::Length width_least;  // straight bottom; the tool must be out of the thread on it
  quantity::Length width_most;   // with both slopes
  quantity::Diameter diameter;   // of the groove: under the screw's root, or over the hole's
  quantity::Length radius;       // at the shoulder, at least for a screw
  Source source;
};

// The usual relief of DIN 76-1 by pitch: about 2.1 to 3.5 pitches wide on a screw, 4 to 5 in a hole, whose
// tool cannot be seen. Pitches of 0.5 to 6 mm; between two of the table linearly (told as derived), so for
// inch threads. Where a form is deeper than the metric one (Whitworth, Acme) the groove goes 0.1 mm beyond
// its root. A relief may be wider on an old lathe: the carriage runs one lead a turn while the hand finds the
// lever. Source: from memory. Fails with kNotTabled.
[[nodiscard]] base::Result<ThreadRelief> thread_relief(const AnyThread& thread, ThreadSide side);

}  // namespace sparewright::handbook
