#include "core/intent/machine.hpp"

namespace sparewright::intent {

double chance_of_inch(const Machine& machine, quantity::UnitSystem units) {
  const bool is_inch = units == quantity::UnitSystem::kInch;
  if (!machine.made_in) return is_inch ? 0.7 : 0.3;
  constexpr int kChangeBegins = 1968;
  constexpr int kChangeEnds = 1978;
  constexpr int kFirstMetricHere = 1980;
  switch (*machine.made_in) {
    case Country::kAmerica:
      return machine.made_about.value_or(0) < kFirstMetricHere ? 0.98 : 0.90;
    case Country::kBritain:
      if (!machine.made_about) return is_inch ? 0.9 : 0.6;
      if (*machine.made_about < kChangeBegins) return 0.98;
      return *machine.made_about < kChangeEnds ? 0.7 : 0.15;
    case Country::kContinent:
      return 0.03;
    case Country::kAsia:
      break;
  }
  return is_inch ? 0.3 : 0.08;
}

base::Fingerprint fingerprint(const Machine& machine) {
  return base::Hasher()
      .add(machine.made_in ? static_cast<int>(*machine.made_in) : -1)
      .add(machine.made_about.value_or(-1))
      .done();
}

}  // namespace sparewright::intent
