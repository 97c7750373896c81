// What people are told where readings do not agree: which is misread, and by which slip.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/ledger/verdict.hpp"
#include "core/quantity/unit.hpp"
#include "core/survey/adjust.hpp"
#include "core/survey/slips.hpp"

namespace sparewright::survey {

// The readings used, with what came of them.
struct Adjusted {
  const Network& network;
  const Adjustment& adjustment;
  std::vector<AsRead> read;  // one for each reading of the network
  quantity::UnitSystem system = quantity::UnitSystem::kInch;
};

// "'stud'", or "'stud' or 'pin'" where nothing tells them apart. Wants some reading to be checked.
[[nodiscard]] std::string most_at_odds(const Adjustment& adjustment);

// The query, where a reading is out or the readings disagree: a misreading with the slip that explains it, two at once, a zero
// that is out, or the readings that may be the one. stage: of the figure agreement/total.
[[nodiscard]] std::optional<ledger::Query> misread_query(const Adjusted& adjusted, const std::string& stage);

}  // namespace sparewright::survey
