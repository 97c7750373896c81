// What a size was before it wore: the standard sizes a measured one may have been made to.
//
// A size of no meaning lies anywhere between two sizes of a series. How often it would come as near to one of them as this
// one does says how striking that is: 6.0025 in comes within 0.0025 of a whole inch once in 200, within 0.0025 of a
// multiple of 0.005 every time. What is more striking is proposed first. Nearer than the readings are good to counts as
// that near.
//
// Source: the share of a length within a distance of equally spaced marks; the order of proposals by it is a choice made
// here, without a source.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/hash.hpp"
#include "core/ledger/figure.hpp"
#include "core/quantity/kind.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::intent {

// What was measured: by its readings a hole (between metal), a shaft (over metal), or neither for certain.
enum class Role { kHole, kShaft, kOther };

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
  std::string name;  // "6 in", "3/4 in", "19 mm", "#7"
  double size_mm = 0.0;
  double off_mm = 0.0;              // measured less this
  double once_in = 1.0;             // a size of no meaning comes as near to its series once in so many
  bool may_be_it = false;           // off by no more than the readings leave open
  bool as_mate = false;             // its mate's own size
  std::vector<std::string> series;  // every series it stands in, the most striking first: "a whole inch"
  std::string source;

  friend bool operator==(const Candidate&, const Candidate&) = default;
};

inline constexpr std::size_t kMostCandidates = 3;

// The most striking first, at most kMostCandidates; none where nothing is striking (more often than every second size) or
// the place is bent or broken. mates_size_mm: of what goes in it or on it; where that can be its size too it comes first.
// Of a worn place only sizes that wear can have led from; of a sound one none further off than it can have been made (grade
// 11 of ISO 286: a choice made here, without a source).
[[nodiscard]] std::vector<Candidate> candidates(const MeasuredUp& measured,
                                                std::optional<double> mates_size_mm = std::nullopt);

[[nodiscard]] base::Fingerprint fingerprint(const std::vector<Candidate>& candidates);

// "a whole inch, tens of millimetres; so near once in 200; 0.0025 over, 2.1 times what the readings leave open"
[[nodiscard]] std::string reason_of(const Candidate& candidate, const MeasuredUp& measured,
                                    quantity::UnitSystem system);

}  // namespace sparewright::intent
