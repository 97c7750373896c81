#include "core/handbook/tightening.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

namespace sparewright::handbook {
namespace {

using quantity::Force;
using quantity::Torque;
namespace unit = quantity::unit;

constexpr NutFactor kNutFactors[] = {
#include "generated/core/handbook/nut_factors.inc"
};

}  // namespace

std::string_view name_of(ThreadState state) {
  constexpr std::array<std::string_view, 6> kNames{"as received",  "machine oil", "molybdenum paste",
                                                   "copper paste", "zinc plated", "cadmium plated"};
  return kNames.at(static_cast<std::size_t>(state));
}

NutFactors nut_factors(ThreadState state) {
  NutFactors out;
  for (const NutFactor& factor : kNutFactors) {
    if (factor.state != state) continue;
    const bool first = out.printed.empty();
    out.low = first ? factor.low : std::min(out.low, factor.low);
    out.high = first ? factor.high : std::max(out.high, factor.high);
    if (first) out.mean = factor.mean;
    out.printed.push_back(factor);
  }
  return out;
}

base::Result<Tightening> tightening(const ScrewThread& thread, const ScrewGrade& grade, ThreadState state,
                                    double share) {
  if (!(share > 0.0 && share <= 1.0)) {
    return base::fail(base::Code::kValueNotAccepted, fmt::format("{:g}", share),
                      "more than 0 and up to 1 of the proof load", "preload");
  }
  const double diameter_mm = thread.major.in(unit::millimetre);
  const auto torque_at = [&](double factor, Force preload) {
    return Torque::of(tightening_torque_nmm(factor, preload.in(unit::newton), diameter_mm) / 1000.0,
                      unit::newton_metre);
  };
  Tightening out;
  out.state = state;
  out.loads = screw_loads(thread, grade);
  out.factors = nut_factors(state);
  out.preload = out.loads.proof * share;
  out.torque = torque_at(out.factors.mean, out.preload);
  out.preload_low = out.preload * (out.factors.mean / out.factors.high);
  out.preload_high = out.preload * (out.factors.mean / out.factors.low);
  out.most = torque_at(out.factors.low, out.loads.proof);
  out.may_pass_proof = out.preload_high > out.loads.proof;
  return out;
}

}  // namespace sparewright::handbook
