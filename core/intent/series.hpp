// The sizes of every series that may have been meant, near to a measured one, and how common each is. Used inside this room
// and by its tests.
//
// Which series there are is sourced row by row; how common each is in an inch and in a metric machine is a choice made here,
// without a source.
#pragma once

#include <string>
#include <vector>

#include "core/intent/made.hpp"
#include "core/intent/original.hpp"

namespace sparewright::intent {

// A share of an inch machine's sizes and of a metric one's.
struct Common {
  double inch = 0.0;
  double metric = 0.0;
};

// A size of one series. A size of no meaning lies anywhere, each as likely; `common` is how many times as often this very
// size is meant as a size of no meaning within a millimetre.
struct Nominal {
  std::string name;    // "3/4 in", "19 mm", "#7", "1/4-20 UNC"
  std::string series;  // "a whole inch", "bore of bearing 6204"
  double size_mm = 0.0;
  Common common;
  Made made;
  std::string source;
};

struct Nominals {
  std::vector<Nominal> all;  // by series; one size may stand in several
  Common none;               // of no series
};

// Every size that what was measured may have been made to. Fractions and decimals of an inch, millimetres and preferred
// numbers for all; drills for what is between metal; bearings, bar, tubes, pipes, pins, threads and tapers for what may be
// round; keys, flats and plates for what may not; threads per inch and pitches for a pitch, diametral pitches and modules for
// a module. None where the place is bent or broken.
[[nodiscard]] Nominals nominals_near(const MeasuredUp& measured);

}  // namespace sparewright::intent
