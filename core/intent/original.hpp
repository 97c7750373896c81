// What a size was before it wore: the standard sizes a measured one may have been made to, and how likely each is.
//
// How likely goes by how common the size is in an inch and in a metric machine, by how what was measured lies to it as such
// sizes are made and wear, and by all the other sizes of the part (together.hpp). A size is settled where it is as good as
// certain, 19 times in 20; else it is NOT KNOWN, and the reading that would decide is named.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/hash.hpp"
#include "core/intent/machine.hpp"
#include "core/ledger/figure.hpp"
#include "core/quantity/kind.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::intent {

// What was measured: by its readings a hole (between metal), a shaft (over metal), or neither for certain; the pitch of a
// thread, the module of a gear.
enum class Role { kHole, kShaft, kOther, kPitch, kModule };

// A size as measuring up gives it, in mm.
struct MeasuredUp {
  double size_mm = 0.0;                           // more than 0
  double unknown_mm = 0.0;                        // what is left open, 19 times in 20
  ledger::Bound bound = ledger::Bound::kExact;    // a worn place: the original is at least or at most that
  quantity::Kind kind = quantity::Kind::kLength;  // a length or a diameter
  Role role = Role::kOther;
};

// A size it may have been made to.
struct Candidate {
  std::string name;  // "6 in", "3/4 in", "19 mm", "#7", "1/4-20 UNC"
  double size_mm = 0.0;
  double off_mm = 0.0;              // measured less this
  double chance = 0.0;              // how likely it is, 0 to 1
  bool may_be_it = false;           // off by no more than the readings leave open
  bool as_mate = false;             // the likeliest size of what goes with it too
  std::vector<std::string> series;  // the series it stands in, what explains it best first: "a whole inch"
  std::string made;                 // how it would have come out so: "as what runs is made"
  std::string source;

  friend bool operator==(const Candidate&, const Candidate&) = default;
};

// What would decide where the readings cannot tell.
enum class Decider {
  kNothing,       // no reading of it is thought of: the drawing, or a part that is not used up
  kFinerReading,  // the same reading, good to `good_to_mm`
  kUnwornPlace,   // a place that is not worn
  kOtherPlace,    // read across a break, or bent: on the machine it goes back into
  kInchOrMetric,  // whether the machine is inch or metric
  kMate,          // what goes with it, measured: it may decide
};

struct Proposals {
  MeasuredUp measured;
  std::vector<Candidate> candidates;  // the likeliest first, at most kMostCandidates
  double none = 1.0;                  // how likely it was made to no standard size
  double chance_of_inch = 0.5;        // of the whole part
  bool is_settled = false;            // the first is right 19 times in 20
  Decider decider = Decider::kNothing;
  double good_to_mm = 0.0;  // of kFinerReading
};

inline constexpr std::size_t kMostCandidates = 3;
inline constexpr double kSettled = 0.95;       // 19 times in 20
inline constexpr double kWorthNaming = 0.002;  // once in 500: less is not proposed

// A measured size of the part, and what is known beside it.
struct ToPropose {
  MeasuredUp measured;
  std::optional<double> accepted_mm;  // as the original one: it weighs for the others
  std::optional<std::size_t> mate;    // its place among those asked for
};

// What each of them was made to. Guarantees: chances of one size, with none, add up to 1 over all that may be meant; of a
// place that is bent or broken nothing is proposed.
[[nodiscard]] std::vector<Proposals> proposals(const std::vector<ToPropose>& sizes, double chance_of_inch);

[[nodiscard]] base::Fingerprint fingerprint(const Proposals& proposals);

// "a whole inch, round bar, inch; 0.0025 over, as a length is cut; within what the readings leave open"
[[nodiscard]] std::string reason_of(const Candidate& candidate, const MeasuredUp& measured,
                                    quantity::UnitSystem system);
// "19 to 1 on", "even", "4 to 1 against"; past 1000 to 1 "more than 1000 to 1 on"
[[nodiscard]] std::string odds_of(double chance);
// What would decide, a sentence; empty where the first is settled.
[[nodiscard]] std::string decider_of(const Proposals& proposals, quantity::UnitSystem system);

}  // namespace sparewright::intent
