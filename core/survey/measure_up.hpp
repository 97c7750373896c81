// Sound readings first; worn, bent and broken places only where nothing else fixes a dimension.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/survey/adjust.hpp"

namespace sparewright::survey {

// A reading that was not used, because sound readings (or a tighter bound) fix all it is of.
struct SetAside {
  std::size_t reading = 0;  // in the network given
  std::string name;
  double fitted = 0.0;         // what it should read by the rest
  std::vector<double> slopes;  // of that, one for each unknown
};

struct MeasuredUp {
  std::vector<std::size_t> used;  // readings of the network given, in the order of adjustment.readings
  Adjustment adjustment;          // over those; its reading indices count in `used`
  std::vector<SetAside> set_aside;
};

// Adjusts the readings whose bound is kExact. Then, for what they leave open, takes in others one at a time,
// each only if it fixes something that is still open: bounded ones before those not bounded; of several with
// one equation the tightest bound first (the largest "at least", the smallest "at most"), since a place that
// wore less tells more. A reading taken in so is met exactly and moves nothing that was fixed before; the
// unknowns that hang on it carry its bound (ledger::Pen::linear does that through the slopes).
// Fails as adjust() does.
[[nodiscard]] base::Result<MeasuredUp> measure_up(const Network& network);

// Equal where the reports are, bit for bit.
[[nodiscard]] base::Fingerprint fingerprint(const MeasuredUp& measured);

}  // namespace sparewright::survey
