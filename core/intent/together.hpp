// The sizes of a whole part weighed together: what each was made to goes by how common the sizes of its series are, how well
// they explain what was measured, and by the other sizes, since a machine is inch or metric as a whole and what goes together
// usually has one nominal size. Used inside this room and by its tests.
//
// The sum over both systems, over one size or several for what goes together, and over every size of every series is exact.
// Readings are taken to err independently of each other.
//
// Source: Bayes' rule; how often mates share their nominal size is a choice made here, without a source.
#pragma once

#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/intent/original.hpp"
#include "core/intent/series.hpp"

namespace sparewright::intent {

// A size that may have been meant, of all the series it stands in.
struct Option {
  double size_mm = 0.0;
  Common common;  // of all its series together; 0 where a mate alone has it
  Common like;    // how likely the reading is of it, per mm: the mean over its series
  std::shared_ptr<const std::vector<Nominal>> of;  // each series it stands in; none of a size that is of none
};

struct Spread {
  MeasuredUp measured;
  std::vector<Option> options;  // by size, none twice
  Common none;                  // of no series: as likely as anything per mm
  bool is_accepted = false;     // nothing else than its one option can be
};
[[nodiscard]] Spread spread_of(const MeasuredUp& measured);

struct Sized {
  MeasuredUp measured;
  std::optional<double>
      accepted_mm;            // as the original size: it says what the others may be, not what it is itself
  std::size_t goes_with = 0;  // the same number: they go together
};

// Mates have one nominal size so often; where not, each lies anywhere within this share of it of the other.
inline constexpr double kShareNominal = 0.85;
inline constexpr double kNominalsWithin = 0.2;

struct Chance {
  Option option;
  double chance = 0.0;
};
struct Chances {
  std::vector<Chance> all;  // the likeliest first, equal ones by size
  double none = 0.0;        // of no series
};

class Together {
 public:
  // chance_of_inch: before any size is looked at.
  Together(const std::vector<Sized>& sizes, double chance_of_inch);

  // With all that was measured and accepted.
  [[nodiscard]] double chance_of_inch() const;
  // Of one size, whatever was accepted for it.
  [[nodiscard]] Chances chances(std::size_t size) const;
  // The same if it were measured otherwise, or if it were known that the machine is inch or metric.
  [[nodiscard]] Chances chances_if_measured(std::size_t size, const MeasuredUp& measured) const;
  [[nodiscard]] Chances chances_if(std::size_t size, bool is_inch) const;

 private:
  struct Group {
    std::vector<std::size_t> sizes;
    Common log_evidence;
  };
  [[nodiscard]] std::vector<Spread> members(const Group& group, std::optional<std::size_t> lifted,
                                            const Spread* instead) const;
  [[nodiscard]] Chances weigh(std::size_t size, const Spread& spread, double prior_inch) const;

  std::vector<Sized> sizes_;
  std::vector<Spread> spreads_;  // as measured
  std::vector<Group> groups_;
  std::vector<std::size_t> group_of_;
  double prior_inch_ = 0.5;
};

}  // namespace sparewright::intent
