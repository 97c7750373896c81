#include "core/handbook/friction.hpp"

#include <string>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Force;
namespace unit = quantity::unit;

struct JawFriction {
  JawFace face = JawFace::kSmoothJaw;
  GrippedSurface surface = GrippedSurface::kSmooth;
  double low = 0.0;
  double high = 0.0;
  Source source;
};
constexpr JawFriction kJawFrictions[] = {
#include "generated/core/handbook/jaw_friction.inc"
};

struct JawFrictionWork {
  WorkGroup work = WorkGroup::kAluminium;
  double factor = 1.0;
  Source source;
};
constexpr JawFrictionWork kJawFrictionWorks[] = {
#include "generated/core/handbook/jaw_friction_work.inc"
};

constexpr ClampFriction kClampFrictions[] = {
#include "generated/core/handbook/clamp_friction.inc"
};

constexpr ClampingForce kClampingForces[] = {
#include "generated/core/handbook/clamping_forces.inc"
};

bool is_steel(WorkGroup work) {
  return work <= WorkGroup::kStainless;
}

}  // namespace

base::Result<FrictionRange> jaw_friction(JawFace face, GrippedSurface surface, WorkGroup work) {
  double factor = is_steel(work) ? 1.0 : 0.0;
  for (const JawFrictionWork& row : kJawFrictionWorks) {
    if (row.work == work) factor = row.factor;
  }
  if (factor <= 0.0) {
    return not_tabled("the friction of chuck jaws", name_of(work), "steel, aluminium, brass and grey iron");
  }
  for (const JawFriction& row : kJawFrictions) {
    if (row.face == face && row.surface == surface)
      return FrictionRange{row.low * factor, row.high * factor, row.source};
  }
  return not_tabled("the friction of chuck jaws", "this face", "the faces of the table");
}

std::span<const ClampFriction> clamp_frictions() {
  return kClampFrictions;
}

base::Result<FrictionRange> clamp_friction(std::string_view pair) {
  const std::string wanted = folded(pair);
  for (const ClampFriction& row : kClampFrictions) {
    if (row.pair == wanted) return FrictionRange{row.low, row.high, row.source};
  }
  return unknown(pair, "pair of clamp and work",
                 names_of(kClampFrictions, [](const ClampFriction& row) { return row.pair; }));
}

std::span<const ClampingForce> clamping_forces() {
  return kClampingForces;
}

base::Result<FrictionHold> friction_hold(Force press_low, Force press_high, int faces,
                                         const FrictionRange& friction, Force needed, double margin) {
  const auto too_small = [](std::string_view found, std::string_view subject) {
    return base::fail(base::Code::kSizeNotPositive, found, {}, subject);
  };
  if (faces < 1) return too_small(fmt::format("{}", faces), "the number of faces that hold");
  if (press_low <= Force{} || press_high < press_low)
    return too_small(fmt::format("{:g} N", press_low.in(unit::newton)), "the clamping force");
  if (needed <= Force{})
    return too_small(fmt::format("{:g} N", needed.in(unit::newton)), "the force to hold");
  if (!(margin >= 1.0))
    return base::fail(base::Code::kOutsideDomain, fmt::format("{:g}", margin), "1 or more",
                      "a margin of grip");
  FrictionHold out{press_low * (friction.low * faces), press_high * (friction.high * faces),
                   FrictionAnswer::kNotShown};
  if (out.low < needed * margin) out.answer = FrictionAnswer::kMaySlip;
  if (out.high < needed) out.answer = FrictionAnswer::kSlips;
  return out;
}

ClampTorque clamp_torque(const FrictionRange& friction, Force tension, quantity::Diameter shaft) {
  const quantity::Torque whole = tension * across(shaft);
  return {whole * (friction.low / 2.0), whole * (friction.high * std::numbers::pi / 2.0)};
}

}  // namespace sparewright::handbook
