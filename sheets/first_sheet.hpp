// What the first sheet of a job says: what the part is and whether it will do. Sizes are printed
// already, in the job's unit; trade words that differ between British and American stand in square brackets.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/ledger/verdict.hpp"

namespace sparewright::sheets {

// A part it must fit, as it was measured.
struct Mate {
  std::string name;
  std::string measured;  // "0.7498"
  std::string good_to;   // "0.0002, 19 times in 20"; empty where it is not known
  std::string how;       // "micrometer 0-1, sound, inboard of the worn band"
};

// One check on one subject, or what comes of it on several where all are OK.
struct Check {
  std::string check;    // "head seats below the face"
  std::string subject;  // "clamp screw"
  ledger::State state = ledger::State::kNotKnown;
  std::string margin;  // "short by 0.016"
  std::string reason;  // one sentence
  std::string todo;    // the smallest change that mends it; empty where nothing is to be done
  int count = 1;       // how many subjects it stands for
};

// A number that may not be true.
struct Query {
  std::string says;       // the number
  std::string happens;    // what it would do to the metal
  std::string todo;       // the one thing to do
  bool serious = false;   // the step cannot be put back
  std::string overruled;  // the reason given; empty while it is open
};

inline constexpr std::size_t kMostQueries = 3;

struct FirstSheet {
  std::string hand;      // "right, seen from the idler side; cannot be turned over"
  std::string material;  // "1018 cold drawn"
  std::string blank;     // "flat bar 1 x 2-1/2 x 8-1/4"
  std::string sizes_in;  // "inches"
  std::vector<Mate> mates;
  std::vector<std::string> sizes_that_matter;
  std::string the_rest;        // the general tolerance, in full
  std::vector<Check> checks;   // printed NO first, then NOT KNOWN, CLOSE, OK; among like ones in this order
  std::vector<Query> queries;  // at most kMostQueries
  std::vector<std::string> cautions;
};

}  // namespace sparewright::sheets
