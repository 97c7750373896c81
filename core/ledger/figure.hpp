// A number of the ledger: what it is, how well it is known, and where it comes from.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/hash.hpp"
#include "core/base/name.hpp"
#include "core/ledger/share.hpp"
#include "core/quantity/kind.hpp"

namespace sparewright::ledger {

// Where a figure comes from. All but kWorked are roots: the trail ends there.
enum class Origin { kReading, kStandard, kChoice, kDefault, kWorked };

// What a value says about the truth. A worn pin reads "at least": the truth is that much or more.
enum class Bound { kExact, kAtLeast, kAtMost, kNeither };

[[nodiscard]] std::string_view name_of(Origin origin);
[[nodiscard]] std::string_view name_of(Bound bound);

// The bound of slope * x where x has the bound given. A slope of 0 holds at the value only (the greater of
// two sizes is flat in the smaller one), so of a bounded x nothing is then known.
[[nodiscard]] Bound scaled(Bound bound, double slope);
// The bound of a sum of two bounded terms.
[[nodiscard]] Bound joined(Bound a, Bound b);

struct Figure {
  base::Name name;  // a path, unique: "feature/pivot bore/diameter"
  quantity::Kind kind = quantity::Kind::kNumber;
  double value = 0.0;  // in the base unit of its kind (mm, kg, s, K, rad); not a number where not known
  Shares shares;
  Bound bound = Bound::kExact;
  Origin origin = Origin::kWorked;
  std::string formula;             // in words: "bore less pin"
  std::vector<base::Name> inputs;  // names of the figures that went in, in the order of the formula
  std::string source;  // standard and clause, book and table; or the reading's instrument and place
  std::string typed;   // as the user wrote it
  std::vector<std::string> missing;   // roots that are not known; empty where the figure is known
  std::optional<double> flips_after;  // a choice: how many standard uncertainties would turn it

  [[nodiscard]] bool known() const { return missing.empty(); }
  [[nodiscard]] double u() const { return standard_uncertainty(shares); }
  [[nodiscard]] double expanded() const { return expanded_uncertainty(shares); }
  [[nodiscard]] double k() const { return coverage_factor(shares); }
};

// Everything but the name as in a new one; the room that its texts and lists took stays theirs.
void make_empty(Figure& figure);

// Equal fingerprints: equal in everything a stage or a reader can see.
[[nodiscard]] base::Fingerprint fingerprint(const Figure& figure);

}  // namespace sparewright::ledger
