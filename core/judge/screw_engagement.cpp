// How much thread a screw has in this part: enough that neither thread strips, no more than is of use, and room for its
// point and its shank.
#include <algorithm>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"
#include "core/handbook/materials.hpp"
#include "core/handbook/stock_lengths.hpp"
#include "core/handbook/stripping_formulas.hpp"
#include "core/handbook/thread_engagement.hpp"
#include "core/handbook/thread_lengths.hpp"
#include "core/judge/least_wall.hpp"
#include "core/judge/screw_joint.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using ledger::State;
using quantity::Kind;
using quantity::Length;

// Past it a screw in steel is no stronger. Machinists' rule, printed for cast iron and steel (engagement_rules()).
constexpr double kUsefulDiameters = 1.5;

// What the threads have to hold: all the screw can (then it breaks first), and what it may be tightened to.
struct Needed {
  Length to_break;
  Length to_proof;
};

std::optional<Needed> needed(const Subject& subject, const ScrewJoint& joint, quantity::Diameter drilled) {
  const auto material = handbook::find_material(subject.route.part.blank.material);
  if (!material || !material->material.ultimate) return std::nullopt;
  const auto least = [&](quantity::Pressure load) {
    return handbook::least_engagement(joint.thread, load, *material->material.ultimate, drilled);
  };
  const auto to_break = least(joint.grade.tensile);
  const auto hole_to_proof = least(joint.grade.proof);
  if (!to_break || !hole_to_proof) return std::nullopt;
  // The screw's own thread has the strength of the screw, whatever the load.
  const double share = joint.grade.proof / joint.grade.tensile;
  return Needed{to_break->least,
                std::max(to_break->for_screw_thread * share, hole_to_proof->for_hole_thread)};
}

void judge_stripping(Pen& pen, const Subject& subject, const part::Feature& feature, const ScrewJoint& joint,
                     const Figure& engaged, const std::optional<Needed>& least) {
  const route::Printing print(subject.route.system);
  const std::string& material = subject.route.part.blank.material;
  if (!least) {
    return pen.state({.check = "thread does not strip",
                      .subject = feature.name,
                      .state = State::kNotKnown,
                      .figure = engaged.name,
                      .reason = "how strong the tapped metal is, is not known",
                      .source = handbook::cite(handbook::kShearAreas),
                      .todo = "name a material with a tensile strength in the handbook",
                      .missing = {fmt::format("tensile strength of {}", material)}});
  }
  const std::string source =
      fmt::format("{}; {} screw", handbook::cite(handbook::kShearAreas), joint.grade_words());
  // The first thread of a screw's point is none: its chamfer. Common practice.
  const double pitch = joint.thread.pitch.base();
  const Figure& full = pen.work(
      "full thread", Kind::kLength, "thread engaged less one pitch for the point of the screw",
      [pitch](auto e) { return e - pitch; }, engaged);
  const Figure& to_break =
      limit(pen, "screw breaks first", least->to_break.base(), Origin::kStandard, source);
  const Figure& to_proof =
      limit(pen, "holds the proof load", least->to_proof.base(), Origin::kStandard, source);
  const bool breaks_first = full.known() && full.value >= to_break.value;
  pen.judge(
      {.check = "thread does not strip",
       .subject = feature.name,
       .figure = &full,
       .low = breaks_first ? &to_break : &to_proof,
       .reason = fmt::format("{} of full thread in {}; so that the {} screw breaks first {} are needed, to "
                             "hold its proof load {}",
                             route::or_not_known(full, print.plain(full.value)), material,
                             joint.grade_words(), print.plain(to_break.value), print.plain(to_proof.value)),
       .source = source,
       .todo = fmt::format("a longer screw or a deeper thread: {} or more of full thread",
                           print.plain(to_break.value)),
       .close_at_best = !breaks_first});
}

// The shortest stock length that uses the thread there is to good purpose; none where none fits.
std::optional<Length> length_to_buy(Pen& pen, const part::Feature& feature, const ScrewJoint& joint,
                                    double wanted_mm) {
  const auto& hole = std::get<part::Hole>(feature.shape);
  const Figure& grip = pen.need(screw_joint_path(feature.name, "grip"));
  const Figure& gap = pen.need(screw_joint_path(feature.name, "gap"));
  const Figure& there = pen.need(screw_joint_path(feature.name, "there"));
  const auto system = joint.thread.is_metric() ? quantity::UnitSystem::kMetric : quantity::UnitSystem::kInch;
  const auto length = handbook::screw_length(
      system, Length::from_base(grip.value + gap.value), Length::from_base(std::min(wanted_mm, there.value)),
      hole.depth ? std::optional(Length::from_base(there.value)) : std::nullopt);
  return length ? std::optional(length->length) : std::nullopt;
}

void judge_useful(Pen& pen, const Subject& subject, const part::Feature& feature, const ScrewJoint& joint,
                  const Figure& engaged, const std::optional<Needed>& least) {
  const route::Printing print(subject.route.system);
  const double major = joint.thread.major.base();
  const double useful_mm = std::max(kUsefulDiameters * major, least ? least->to_break.base() : 0.0);
  const std::string source =
      "published rule for steel and cast iron: 1-1/2 diameters; or what the screw's whole strength needs, "
      "where "
      "that is more";
  const Figure& useful = limit(pen, "of use", useful_mm, Origin::kStandard, source);
  const auto stock = length_to_buy(pen, feature, joint, useful_mm);
  if (stock)
    pen.decide(
        "length to buy",
        {Kind::kLength, stock->base(), "the shortest that uses the thread there is", {&useful}, {}, {}});
  const auto unit = joint.thread.is_metric() ? quantity::UnitSystem::kMetric : quantity::UnitSystem::kInch;
  const std::string buy =
      stock ? fmt::format("{} {} long", joint.thread.name, route::Printing(unit).nominal(stock->base())) : "";
  if (!engaged.known()) {
    return pen.state({.check = "screw has the right length",
                      .subject = feature.name,
                      .state = State::kNotKnown,
                      .reason = "the length of the screw is not given",
                      .source = handbook::cite(handbook::kStockLengths),
                      .todo = buy.empty() ? "write its length behind its size" : "take a screw " + buy,
                      .missing = engaged.missing});
  }
  // The next length sold may put a little more in than is of use.
  const auto& screw = *std::get<part::Hole>(feature.shape).screw;
  const bool is_shortest = stock && *screw.length_mm <= stock->base() + handbook::kSizeSlackMm;
  const bool is_more = engaged.value > useful_mm && !is_shortest;
  pen.state(
      {.check = "no more thread than is of use",
       .subject = feature.name,
       .state = is_more ? State::kClose : State::kOk,
       .figure = engaged.name,
       .high = useful.name,
       .reason = fmt::format("{} of thread engaged, {:.1f} diameters; past {} it is no stronger",
                             print.plain(engaged.value), engaged.value / major, print.plain(useful_mm)),
       .source = source,
       .todo = !is_more || buy.empty() ? "" : fmt::format("a screw {} does it, with less to tap", buy)});
}

// Whether a screw of that length is sold at all.
void judge_sold(Pen& pen, const part::Feature& feature, const ScrewJoint& joint, double length_mm) {
  const auto system = joint.thread.is_metric() ? quantity::UnitSystem::kMetric : quantity::UnitSystem::kInch;
  const route::Printing print(system);
  const auto lengths = handbook::stock_lengths(system);
  const auto at_or_above = std::find_if(lengths.begin(), lengths.end(), [&](Length one) {
    return one.base() >= length_mm - handbook::kSizeSlackMm;
  });
  const bool longer_is_sold = at_or_above != lengths.end();
  const bool is_sold = longer_is_sold && at_or_above->base() <= length_mm + handbook::kSizeSlackMm;
  pen.state(
      {.check = "screw is sold in that length",
       .subject = feature.name,
       .state = is_sold ? State::kOk : State::kClose,
       .figure = screw_joint_path(feature.name, "screw length"),
       .reason = fmt::format("{} {} a usual length", print.nominal(length_mm), is_sold ? "is" : "is not"),
       .source = handbook::cite(handbook::kStockLengths),
       .todo = is_sold ? ""
               : longer_is_sold
                   ? fmt::format("cut a screw of {} to length", print.nominal(at_or_above->base()))
                   : "cut it from threaded rod, or look for another way"});
}

// It has to go in until its head sits, its point off the bottom.
void judge_bottom(Pen& pen, const Subject& subject, const part::Feature& feature, const Figure& reaches) {
  const route::Printing print(subject.route.system);
  const Figure& there = pen.ask(screw_joint_path(feature.name, "there"));
  pen.judge(
      {.check = "screw does not bottom",
       .subject = feature.name,
       .figure = &reaches,
       .high = &there,
       .reason = fmt::format("its point reaches {} into a hole with {} of full thread",
                             route::or_not_known(reaches, print.plain(reaches.value)),
                             route::or_not_known(there, print.plain(there.value))),
       .source =
           "plain geometry; plug tap's lead of 5 threads (ASME B94.9, from memory), one pitch for chips",
       .todo = "a shorter screw, a deeper hole, or follow with a bottoming tap",
       .margin = "bottom margin"});
}

// The part of the screw without a thread must not come to the tapped part before its head sits.
void judge_shank(Pen& pen, const Subject& subject, const part::Feature& feature, const part::Hole& hole,
                 const ScrewJoint& joint) {
  if (!hole.screw->length_mm) return;
  const auto threaded =
      handbook::socket_thread_length(joint.thread, Length::from_base(*hole.screw->length_mm));
  if (!threaded) return;
  const route::Printing print(subject.route.system);
  const std::string source = handbook::cite(threaded->source);
  const Figure& shank = limit(pen, "shank", threaded->shank.base(), Origin::kStandard, source);
  const Figure& grip = pen.need(screw_joint_path(feature.name, "grip"));
  const Figure& gap = pen.need(screw_joint_path(feature.name, "gap"));
  const Figure& way = pen.work(
      "way to the thread", Kind::kLength, "what lies under the head, and the slit or split as it stands open",
      [](auto g, auto s) { return g + s; }, grip, gap);
  // Where the slit closes right up the way is the grip alone.
  pen.judge(
      {.check = "screw is threaded far enough",
       .subject = feature.name,
       .figure = &way,
       .low = &shank,
       .reason = fmt::format("{} of its shank have no thread, and the tapped part starts {} under the head",
                             print.plain(shank.value), print.plain(way.value)),
       .source = source,
       .todo = "a screw threaded up to its head, or a shorter one",
       .margin = "shank margin",
       .close_at_best = shank.value > grip.value});
}

// A head pulls through what is too thin under it.
void judge_under_head(Pen& pen, const Subject& subject, const part::Feature& feature) {
  const route::Printing print(subject.route.system);
  const Figure& grip = pen.ask(screw_joint_path(feature.name, "grip"));
  pen.judge({.check = "metal under the head",
             .subject = feature.name,
             .figure = &grip,
             .low = &least_wall_allowed(pen, subject),
             .reason = fmt::format("{} of metal between the head and the slit or split",
                                   route::or_not_known(grip, print.plain(grip.value))),
             .source = least_wall_source(subject),
             .todo = "a shallower counterbore or a thicker near part",
             .margin = "head margin"});
}

void judge_joint(Pen& pen, const Subject& subject, const part::Feature& feature, const part::Hole& hole,
                 const ScrewJoint& joint) {
  const Figure& engaged = pen.ask(screw_joint_path(feature.name, "engaged"));
  const std::string drill =
      part::feature_path(feature.name) + (hole.beyond ? "/tap drill" : "/diameter") + "/most";
  const auto least = needed(subject, joint, quantity::Diameter::from_base(pen.need(drill).value));
  if (hole.beyond) judge_under_head(pen, subject, feature);
  judge_useful(pen, subject, feature, joint, engaged, least);
  if (!hole.screw->length_mm) return;
  judge_sold(pen, feature, joint, *hole.screw->length_mm);
  judge_stripping(pen, subject, feature, joint, engaged, least);
  if (hole.depth) judge_bottom(pen, subject, feature, pen.ask(screw_joint_path(feature.name, "reaches")));
  judge_shank(pen, subject, feature, hole, joint);
}

}  // namespace

void add_screw_engagement_checks(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    const auto joint = hole == nullptr ? std::nullopt : screw_joint(*hole);
    if (!joint || !is_tapped_here(*hole)) continue;
    stages.push_back(
        check_stage(subject, "screw engagement", feature.name, [subject, feature, joint = *joint](Pen& pen) {
          judge_joint(pen, *subject, feature, std::get<part::Hole>(feature.shape), joint);
        }));
  }
}

}  // namespace sparewright::judge
