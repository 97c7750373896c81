// A slit boss and the screw that closes it.
#include <algorithm>
#include <numbers>

#include <fmt/format.h>

#include "core/handbook/materials.hpp"
#include "core/handbook/tightening.hpp"
#include "core/judge/round_hole.hpp"
#include "core/judge/screw_joint.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using ledger::State;
using quantity::Kind;

constexpr const char* kRound =
    "geometry: what a slit closes by comes off the way round, and 1/pi of it off the bore";
// A ring cut open and pulled together at the cut by a force P: it closes by 3 pi P R3/(E I), and opposite the cut bends
// with 2 P R, so that the stress there is E h closing / (3 pi R2). R middle radius, h wall, E modulus, I of the wall's
// section. Uniform thin ring, by Castigliano's theorem.
constexpr const char* kRing =
    "a thin ring cut open and pulled together at the cut, bending by Castigliano (derived)";
// Half of yield and nothing is thought of it. A choice made here, without a source: a real boss is no thin ring.
constexpr double kEasyShare = 0.5;

// What stands in and round a slit hole.
struct Clamp {
  const part::Feature& slit;
  const part::Formed& formed;
  const part::Feature& hole_feature;
  const part::Hole& hole;
  const part::Feature* bush = nullptr;   // in the hole
  const part::Feature* screw = nullptr;  // across the slit
};

std::optional<Clamp> clamp_of(const part::Part& part, const part::Feature& slit) {
  const auto* formed = std::get_if<part::Formed>(&slit.shape);
  if (formed == nullptr || formed->form != part::Form::kSlit) return std::nullopt;
  const part::Feature* hole = part::find_feature(part, formed->of);
  if (hole == nullptr) return std::nullopt;
  Clamp clamp{slit, *formed, *hole, std::get<part::Hole>(hole->shape)};
  for (const part::Feature& feature : part.features) {
    const auto* other = std::get_if<part::Formed>(&feature.shape);
    if (other != nullptr && other->form == part::Form::kBush && other->of == formed->of)
      clamp.bush = &feature;
    const auto* screw = std::get_if<part::Hole>(&feature.shape);
    if (screw != nullptr && screw->beyond && screw->beyond->gap == slit.name) clamp.screw = &feature;
  }
  return clamp;
}

// What is free between the hole and what it holds, at the loose end; none where nothing is known to go in.
const Figure* write_loose(Pen& pen, const Subject& subject, const Clamp& clamp) {
  if (clamp.bush != nullptr)
    return &pen.work(
        "loose by", Kind::kLength, "the largest hole less the least bush", [](auto i) { return -i; },
        pen.need(part::feature_path(clamp.bush->name) + "/interference/least"));
  const std::string mate = part::mate_of(clamp.hole);
  if (mate.empty()) return nullptr;
  const auto& named = subject.route.part.surroundings.dimension_figures;
  const auto path = named.find(mate);
  return &pen.work(
      "loose by", Kind::kLength, "the largest hole less the mate as measured",
      [](auto hole, auto size) { return hole - size; },
      pen.need(part::feature_path(clamp.hole_feature.name) + "/diameter/most"),
      pen.need(path == named.end() ? mate : path->second));
}

// How far the slit is pulled together: as the job says, or until the hole holds what is in it.
const Figure* write_closing(Pen& pen, const Subject& subject, const Clamp& clamp) {
  const Figure* loose = write_loose(pen, subject, clamp);
  const Figure* to_hold = nullptr;
  if (loose != nullptr)
    to_hold = &pen.work(
        "closing to hold", Kind::kLength, "pi times what is free",
        [](auto free) { return free > 0.0 ? std::numbers::pi * free : 0.0 * free; }, *loose);
  // What is tight as it is, a pressed bush, needs no closing to hold it.
  if (!clamp.formed.sizes.contains("closes by"))
    return to_hold != nullptr && to_hold->known() && to_hold->value > 0.0 ? to_hold : nullptr;
  return &pen.need(part::feature_path(clamp.slit.name) + "/closes by");
}

void judge_wide_enough(Pen& pen, const Subject& subject, const Clamp& clamp, const Figure& closing) {
  const route::Printing print(subject.route.system);
  const Figure& width = pen.need(part::feature_path(clamp.slit.name) + "/width/least");
  pen.judge({.check = "slit leaves room to close",
             .subject = clamp.slit.name,
             .figure = &closing,
             .high = &width,
             .reason = fmt::format("it closes by {} and is {} wide", print.fine(closing.value),
                                   print.plain(width.value)),
             .source = kRound,
             .todo = "saw it wider, or bring hole and mate closer together",
             .margin = "width margin"});
}

// A clamp with nothing between hole and mate has to come down on it.
void judge_holds(Pen& pen, const Subject& subject, const Clamp& clamp, const Figure& closing) {
  if (clamp.bush != nullptr || !clamp.formed.sizes.contains("closes by")) return;
  const Figure& to_hold = pen.ask(pen.stage() + "/closing to hold");
  if (!to_hold.known()) return;
  const route::Printing print(subject.route.system);
  pen.judge({.check = "clamp comes down on its mate",
             .subject = clamp.slit.name,
             .figure = &closing,
             .low = &to_hold,
             .reason = fmt::format("closing by {} takes {} off {}; {} of closing are needed to hold",
                                   print.fine(closing.value), print.fine(closing.value / std::numbers::pi),
                                   clamp.hole_feature.name, print.fine(to_hold.value)),
             .source = kRound,
             .todo = "close it further, or bring hole and mate closer together",
             .margin = "hold margin"});
}

// What runs in the bush must still run when the screw is pulled up.
void judge_bore(Pen& pen, const Subject& subject, const Clamp& clamp, const Figure& closing) {
  const auto* bush = clamp.bush == nullptr ? nullptr : std::get_if<part::Formed>(&clamp.bush->shape);
  if (bush == nullptr || bush->mate.empty()) return;
  const route::Printing print(subject.route.system);
  const auto& named = subject.route.part.surroundings.dimension_figures;
  const auto path = named.find(bush->mate);
  const Figure& mate = pen.need(path == named.end() ? bush->mate : path->second);
  const Figure& bore = pen.need(part::feature_path(clamp.bush->name) + "/bore/least");
  const bool clamped = clamp.formed.is_finished_clamped;
  const Figure& off = pen.work(
      "taken off the bore", Kind::kLength, "closing over pi", [](auto c) { return c / std::numbers::pi; },
      closing);
  const Figure& left = pen.work(
      "clearance clamped", Kind::kLength, "least bore less the mate, and less what closing takes off it",
      [clamped](auto b, auto m, auto o) { return b - m - (clamped ? 0.0 : 1.0) * o; }, bore, mate, off);
  const std::string taken =
      fmt::format("closing by {} takes {} off the bore", print.fine(closing.value), print.fine(off.value));
  const bool seizes = left.value < 0.0;
  pen.judge({.check = "mate still runs when it is clamped",
             .subject = clamp.bush->name,
             .figure = &left,
             .low = &limit(pen, "no clearance", 0.0, Origin::kStandard, "bore and mate of one size"),
             .reason = clamped  ? fmt::format("{}, but it is finished clamped: {} of clearance stay", taken,
                                              print.fine(left.value))
                       : seizes ? fmt::format("{}: finished before that, it is {} tight on {} and seizes",
                                              taken, print.fine(-left.value), bush->mate)
                                : fmt::format("{}: {} of clearance stay on {}", taken, print.fine(left.value),
                                              bush->mate),
             .source = kRound,
             .todo = "finish the bore with the screw pulled up as it will be",
             .margin = "running margin"});
}

// The point goes on into its thread as the slit closes.
void judge_bottoms(Pen& pen, const Subject& subject, const Clamp& clamp, const Figure& closing) {
  if (clamp.screw == nullptr) return;
  const auto& screw = std::get<part::Hole>(clamp.screw->shape);
  if (!screw.depth || !screw.screw || !screw.screw->length_mm) return;
  const route::Printing print(subject.route.system);
  const Figure& room = pen.work(
      "room at the point", Kind::kLength, "full thread there less what the point reaches into it",
      [](auto t, auto r) { return t - r; }, pen.ask(screw_joint_path(clamp.screw->name, "there")),
      pen.ask(screw_joint_path(clamp.screw->name, "reaches")));
  pen.judge(
      {.check = "slit closes before the screw bottoms",
       .subject = clamp.slit.name,
       .figure = &room,
       .low = &closing,
       .reason = fmt::format("the point of {} has {} to go and the slit closes by {}", clamp.screw->name,
                             route::or_not_known(room, print.plain(room.value)), print.fine(closing.value)),
       .source = "plain geometry",
       .todo = "a shorter screw or a deeper hole",
       .margin = "bottom margin"});
}

const Figure& write_wall(Pen& pen, double wall_mm) {
  return limit(pen, "thinnest wall", wall_mm, Origin::kStandard,
               "by rays round the hole halfway along it, the half round the slit left out");
}

void judge_hinge(Pen& pen, const Subject& subject, const Clamp& clamp, const Figure& closing,
                 const handbook::Material& material, double wall_mm) {
  if (!material.modulus || !material.yield) return;
  const double e = material.modulus->base();
  const Figure& wall = write_wall(pen, wall_mm);
  const Figure& stress = pen.work(
      "hinge stress", Kind::kPressure, "modulus, wall and closing over 3 pi and the middle radius squared",
      [e](auto c, auto h, auto d) {
        const auto r = (d + h) / 2.0;
        return e * c * h / (3.0 * std::numbers::pi * r * r);
      },
      closing, wall, pen.need(part::feature_path(clamp.hole_feature.name) + "/diameter"));
  ledger::Root yield;
  yield.kind = Kind::kPressure;
  yield.value = material.yield->base();
  yield.origin = Origin::kStandard;
  yield.source = handbook::cite(handbook::source_of(material, handbook::MaterialProperty::kYield));
  const Figure& most = pen.root("yield", yield);
  const auto shown = [&](double base) {
    return quantity::shown(base, Kind::kPressure, subject.route.system, 0);
  };
  pen.judge({.check = "slit bends its hinge and springs back",
             .subject = clamp.slit.name,
             .figure = &stress,
             .high = &most,
             .reason = fmt::format("closing by {} bends the thinnest wall to about {}; {} yields at {}",
                                   route::Printing(subject.route.system).fine(closing.value),
                                   shown(stress.value), handbook::to_string(material), shown(most.value)),
             .source = kRing,
             .todo = "bring hole and mate closer together, or thin the wall opposite the slit",
             .margin = "hinge margin",
             .close_at_best = stress.value > kEasyShare * most.value});
}

// Never NO: a screw further out than the ring's middle pulls with a lever.
void judge_pull(Pen& pen, const Subject& subject, const Clamp& clamp, const Figure& closing,
                const handbook::Material& material, double wall_mm) {
  if (clamp.screw == nullptr || !material.modulus) return;
  const Figure& preload = pen.ask(fmt::format("check/screw tension/{}/preload at least", clamp.screw->name));
  if (!preload.known()) return;
  const double e = material.modulus->base();
  const double start = pen.need(part::feature_path(clamp.hole_feature.name) + "/starts at").value;
  const double end = pen.need(part::side_path(subject.route.part, part::opposite(clamp.hole.into))).value;
  const double width = std::abs(start - end);
  const Figure& pull = pen.work(
      "pull to close", Kind::kForce,
      "closing, modulus and wall cubed, over 36 pi and the middle radius cubed",
      [=](auto c, auto d) {
        const auto r = (d + wall_mm) / 2.0;
        return c * e * width * wall_mm * wall_mm * wall_mm / (36.0 * std::numbers::pi * r * r * r);
      },
      closing, pen.need(part::feature_path(clamp.hole_feature.name) + "/diameter"));
  const auto shown = [&](double base) {
    return quantity::shown(base, Kind::kForce, subject.route.system, 0);
  };
  const bool closes = preload.value >= pull.value;
  pen.state(
      {.check = "screw can close the slit",
       .subject = clamp.slit.name,
       .state = closes ? State::kOk : State::kClose,
       .figure = pull.name,
       .high = preload.name,
       .reason = fmt::format("it takes about {} to close it by {}, and the screw pulls {} at the least",
                             shown(pull.value), route::Printing(subject.route.system).fine(closing.value),
                             shown(preload.value)),
       .source = kRing,
       .todo = closes
                   ? ""
                   : "thin the wall opposite the slit, bring hole and mate closer, or take a larger screw"});
}

void judge_clamp(Pen& pen, const Subject& subject, const Clamp& clamp) {
  const Figure* closing = write_closing(pen, subject, clamp);
  if (closing == nullptr || !closing->known()) return;  // nothing is known to go in
  judge_wide_enough(pen, subject, clamp, *closing);
  judge_holds(pen, subject, clamp, *closing);
  judge_bore(pen, subject, clamp, *closing);
  judge_bottoms(pen, subject, clamp, *closing);
  const auto material = handbook::find_material(subject.route.part.blank.material);
  constexpr double kHalfRound_deg = 85.0;  // the ray square to the slit counts
  const auto wall = metal_round_mm(pen, subject.route.part, clamp.hole_feature, clamp.hole, clamp.formed.side,
                                   kHalfRound_deg);
  if (!material || !wall) return;
  judge_hinge(pen, subject, clamp, *closing, material->material, *wall);
  judge_pull(pen, subject, clamp, *closing, material->material, *wall);
}

}  // namespace

void add_clamp_checks(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    if (!clamp_of(subject->route.part, feature)) continue;
    stages.push_back(check_stage(subject, "clamp", feature.name, [subject, &feature](Pen& pen) {
      judge_clamp(pen, *subject, *clamp_of(subject->route.part, feature));
    }));
  }
}

}  // namespace sparewright::judge
