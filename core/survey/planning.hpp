// Planning the measuring: which instrument reaches a tolerance, and which doubt to make smaller.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/ledger/share.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::survey {

// Whether an instrument reaches a tolerance.
//   kYes         it takes no more than half of it: four times what one reading does not know, 19 times in 20, go into it
//   kBarely      two times do: some of the tolerance is left to aim at
//   kTooCoarse   not even that
//   kDoesNotGo   its faces or its range do not go there
enum class Reaches { kYes, kBarely, kTooCoarse, kDoesNotGo };

// What is to be measured. Lengths in the base unit.
struct Wanted {
  std::optional<Jaws> jaws;  // none: whichever the instrument has
  std::optional<double>
      size;  // none: not known yet, so no range is judged and an error allowed is that of the smallest
  std::optional<double> tolerance;  // from limit to limit; none: not said, so nothing is too coarse
  quantity::Kind kind = quantity::Kind::kLength;
};

struct Reach {
  std::string instrument;
  Jaws jaws = Jaws::kOutside;
  Reaches reaches = Reaches::kDoesNotGo;
  double unknown = 0.0;      // half-width that holds the truth of one reading, 19 times in 20
  bool range_known = false;  // the shop says what it measures, and the size is known
  std::string why;           // where it does not go: "measures 0 in to 1 in"
};

// One for each instrument that reads that kind of quantity, the best first: those that reach it by what they do not know, the
// finer before the coarser, then those that barely do, then the others. Source of the limits of half and whole: the rules of
// the check `instrument proves` (ISO 14253-1, named from memory; half is common practice).
[[nodiscard]] std::vector<Reach> reaches(const std::vector<Instrument>& instruments, const Wanted& wanted);

// Shares that one remedy makes smaller: all that is a reading's own; the zero of one pair of jaws; a temperature; an expansion.
struct Doubt {
  std::string of;            // "reading/bore", "instrument/caliper 6/inside jaws/zero", "temperature/shop"
  std::string largest;       // the largest cause in it: "reading/bore/scatter"
  double largest_now = 0.0;  // standard uncertainty that one puts into the figure
  double now = 0.0;          // and all of it together
  double part = 0.0;         // of the figure's variance
  // How much smaller it has to become, 0 to 1 of now, so that all that is not known is no more than wanted; 1 where it need
  // not; none where the others alone are too much.
  std::optional<double> keep;
};

// The largest first. wanted: half-width, 19 times in 20, that the figure may be uncertain by; more than 0.
[[nodiscard]] std::vector<Doubt> doubts(const ledger::Shares& shares, double wanted);

}  // namespace sparewright::survey
