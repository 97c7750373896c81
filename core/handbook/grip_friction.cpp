#include "core/handbook/grip_friction.hpp"

#include <algorithm>
#include <string>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Force;
namespace unit = quantity::unit;

struct JawRow {
  JawFace jaw;
  WorkFinish finish;
  double coefficient;
  Source source;
};
constexpr JawRow kJaws[] = {
#include "generated/core/handbook/jaw_friction.inc"
};

struct FactorRow {
  WorkGroup group;
  double factor;
  Source source;
};
constexpr FactorRow kFactors[] = {
#include "generated/core/handbook/grip_factors.inc"
};

constexpr GripPair kPairs[] = {
#include "generated/core/handbook/grip_friction.inc"
};
constexpr GripSafety kSafeties[] = {
#include "generated/core/handbook/grip_safety.inc"
};
constexpr ClampingForce kClampingForces[] = {
#include "generated/core/handbook/clamping_forces.inc"
};

bool is_steel(WorkGroup work) {
  switch (work) {
    case WorkGroup::kFreeMachiningSteel:
    case WorkGroup::kLowCarbonSteel:
    case WorkGroup::kMediumCarbonSteel:
    case WorkGroup::kAlloySteel:
    case WorkGroup::kToolSteel:
    case WorkGroup::kFreeMachiningStainless:
    case WorkGroup::kStainless:
      return true;
    default:
      return false;
  }
}

base::Result<void> check(Force clamping, int faces, FrictionRange friction, Force cutting, double safety) {
  struct Named {
    std::string_view name;
    double value;
  };
  for (const Named& one : {Named{"the clamping force", clamping.base()},
                           Named{"the number of faces", 1.0 * faces}, Named{"the friction", friction.low}}) {
    if (one.value > 0.0) continue;
    return base::fail(base::Code::kSizeNotPositive, fmt::format("{}", one.value), "more than zero", one.name);
  }
  if (friction.high >= friction.low && safety >= 1.0 && cutting >= Force()) return {};
  return base::fail(base::Code::kOutsideDomain,
                    fmt::format("a friction of {} to {}, a cutting force of {} N and a safety of {}",
                                friction.low, friction.high, cutting.in(unit::newton), safety),
                    "the low friction first, a cutting force not below zero, a safety of 1 or more",
                    "the grip");
}

}  // namespace

base::Result<JawFriction> jaw_friction(JawFace jaw, WorkFinish finish, WorkGroup work) {
  const auto* factor = std::find_if(std::begin(kFactors), std::end(kFactors),
                                    [&](const FactorRow& row) { return row.group == work; });
  const bool factored = factor != std::end(kFactors);
  if (!factored && !is_steel(work)) {
    return not_tabled("the friction of a chuck jaw", name_of(work), "steel, aluminium, brass or grey iron");
  }
  const auto* row = std::find_if(std::begin(kJaws), std::end(kJaws),
                                 [&](const JawRow& one) { return one.jaw == jaw && one.finish == finish; });
  return JawFriction{row->coefficient * (factored ? factor->factor : 1.0),
                     row->source};  // every pair has its row
}

std::span<const GripPair> grip_pairs() {
  return kPairs;
}

base::Result<GripPair> find_grip_pair(std::string_view text) {
  const std::string typed = folded(text);
  for (const GripPair& pair : kPairs) {
    if (folded(pair.pair) == typed) return pair;
  }
  return unknown(text, "pair of jaw and work",
                 names_of(kPairs, [](const GripPair& one) { return one.pair; }));
}

std::span<const GripSafety> grip_safeties() {
  return kSafeties;
}

std::span<const ClampingForce> clamping_forces() {
  return kClampingForces;
}

base::Result<GripCheck> check_grip(Force clamping, int faces, FrictionRange friction, Force cutting,
                                   double safety) {
  if (auto checked = check(clamping, faces, friction, cutting, safety); !checked)
    return tl::unexpected(checked.error());
  GripCheck grip{clamping * (faces * friction.low), clamping * (faces * friction.high), cutting * safety};
  grip.verdict = grip.holds_low < grip.needed ? GripVerdict::kNo : GripVerdict::kNotProven;
  return grip;
}

}  // namespace sparewright::handbook
