#include "core/judge/least_wall.hpp"

#include "core/judge/checks.hpp"

namespace sparewright::judge {

const ledger::Figure& least_wall_allowed(ledger::Pen& pen, const Subject& subject) {
  constexpr double kUsual_mm = 25.4 / 16.0;
  if (!subject.least_wall)
    return limit(pen, "least allowed", kUsual_mm, ledger::Origin::kDefault, "1/16 in, common practice");
  return limit(pen, "least allowed", subject.least_wall->base, ledger::Origin::kChoice,
               "the job's least wall", subject.least_wall->typed);
}

std::string least_wall_source(const Subject& subject) {
  return subject.least_wall ? "the job's least wall" : "common practice: 1/16 in";
}

}  // namespace sparewright::judge
