// The checks of what sits on the part, one file a kind, and what they share. Used inside this room only.
#pragma once

#include "core/judge/checks.hpp"

namespace sparewright::judge {

void judge_bearing_seat(ledger::Pen& pen, const Subject& subject, const Seat& seat);
void judge_key_seat(ledger::Pen& pen, const Subject& subject, const Seat& seat);
void judge_ring_seat(ledger::Pen& pen, const Subject& subject, const Seat& seat);
void judge_o_ring_seat(ledger::Pen& pen, const Subject& subject, const Seat& seat);

// "feature/journal/diameter", or "blank/diameter" of the bar as it is; below it stand /least and /most.
[[nodiscard]] std::string diameter_path(const std::string& on);

// Both limits of a size of a feature against what the handbook gives it: one verdict, of the limit that is worse.
struct Asked {
  std::string check;   // "keyseat has the width"
  std::string figure;  // "feature/keyseat/width"
  std::optional<double> low_mm;
  std::optional<double> high_mm;
  std::string source;
  std::string why;  // "8 P9 for a tight key": what the limits are
};
void judge_limits(ledger::Pen& pen, const Subject& subject, const Seat& seat, const Asked& asked);

}  // namespace sparewright::judge
