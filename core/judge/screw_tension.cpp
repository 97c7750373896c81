// What tightening leaves in a screw: the preload at its torque, against the load it may carry without a lasting stretch.
#include <fmt/format.h>

#include "core/handbook/tightening.hpp"
#include "core/judge/screw_joint.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using quantity::Kind;

constexpr auto kState = handbook::ThreadState::kAsReceived;

const Figure& root(Pen& pen, std::string_view local, Kind kind, double base, Origin origin,
                   const std::string& source) {
  ledger::Root one;
  one.kind = kind;
  one.value = base;
  one.origin = origin;
  one.source = source;
  return pen.root(local, one);
}

// The torque the job asks for, or the handbook's for three quarters of the proof load.
const Figure& write_torque(Pen& pen, const part::ScrewHead& screw, const handbook::Tightening& usual) {
  if (screw.torque)
    return root(pen, "torque", Kind::kTorque, screw.torque->base(), Origin::kChoice, "the job asks for it");
  return root(pen, "torque", Kind::kTorque, usual.torque.base(), Origin::kDefault,
              fmt::format("{:.0f} % of the proof load, threads {}, at the mean nut factor {:.3g}",
                          100.0 * handbook::kPreloadReused, handbook::name_of(kState), usual.factors.mean));
}

void judge_tension(Pen& pen, const Subject& subject, const part::Feature& feature,
                   const part::ScrewHead& screw, const ScrewJoint& joint) {
  const auto usual = handbook::tightening(joint.thread, joint.grade, kState);
  if (!usual) return;
  const std::string source =
      fmt::format("{}; proof load by {}", handbook::cite(usual->factors.printed.front().source),
                  handbook::cite(joint.grade.source));
  const auto shown = [&](double base, Kind kind) {
    return quantity::shown(base, kind, subject.route.system, kind == Kind::kTorque ? 1 : 0);
  };
  const double major = joint.thread.major.base();
  const auto preload = [&](std::string_view local, double factor) -> const Figure& {
    return pen.work(
        local, Kind::kForce, fmt::format("torque over nut factor {:.3g} and the screw's diameter", factor),
        [factor, major](auto t) { return t / (factor * major); }, pen.ask(pen.stage() + "/torque"));
  };
  const Figure& torque = write_torque(pen, screw, *usual);
  const Figure& least = preload("preload at least", usual->factors.high);
  const Figure& most = preload("preload at most", usual->factors.low);
  const Figure& proof =
      root(pen, "proof load", Kind::kForce, usual->loads.proof.base(), Origin::kStandard, source);
  const double area = joint.thread.stress_area.base();
  const Figure& stress = pen.work(
      "stress at most", Kind::kPressure, "preload at most over the stress area",
      [area](auto f) { return f / area; }, most);
  pen.judge({.check = "screw stands its tightening",
             .subject = feature.name,
             .figure = &most,
             .high = &proof,
             .reason = fmt::format("{} leaves {} to {}, up to {} of stress; {} stretches for good past {}",
                                   shown(torque.value, Kind::kTorque), shown(least.value, Kind::kForce),
                                   shown(most.value, Kind::kForce), shown(stress.value, Kind::kPressure),
                                   joint.grade_words(), shown(proof.value, Kind::kForce)),
             .source = source,
             .todo = fmt::format("tighten to no more than {}", shown(usual->most.base(), Kind::kTorque))});
}

}  // namespace

void add_screw_tension_checks(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    const auto joint = hole == nullptr ? std::nullopt : screw_joint(*hole);
    // Of a screw into something else it is not known what it goes into, unless the job says what it is tightened to.
    if (!joint || (!is_tapped_here(*hole) && !hole->screw->torque)) continue;
    stages.push_back(check_stage(subject, "screw tension", feature.name,
                                 [subject, feature, screw = *hole->screw, joint = *joint](Pen& pen) {
                                   judge_tension(pen, *subject, feature, screw, joint);
                                 }));
  }
}

}  // namespace sparewright::judge
