#include <fmt/format.h>

#include "core/judge/checks.hpp"
#include "core/route/orientation.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;

// A drill is kept this far from parallels, and its point this far from what is under the work. Common practice.
constexpr double kKeepOff_mm = 0.020 * 25.4;

bool is_in_vise(const route::Setup& setup) {
  return std::get<route::OnMill>(setup.held).holding.vise() != nullptr;
}

void judge_beside_parallel(Pen& pen, const route::Printing& print, const std::string& op,
                           const std::string& feature) {
  const Figure& beside = pen.ask(fmt::format("{}/{}/to parallel", op, feature));
  const Figure& keep_off = limit(pen, "keep off", kKeepOff_mm, Origin::kDefault, "common practice");
  pen.judge({.check = "drill clears the parallels",
             .subject = feature,
             .figure = &beside,
             .low = &keep_off,
             .reason = beside.value < 0
                           ? fmt::format("the hole runs {} into a parallel", print.plain(-beside.value))
                           : fmt::format("the hole passes a parallel by {}", print.plain(beside.value)),
             .source = "plain geometry; 0.020 in kept off by common practice",
             .todo = "use thinner parallels, or set them where the hole is not",
             .margin = "parallel margin"});
}

void judge_through(Pen& pen, const Subject& subject, const route::Setup& setup, const std::string& feature) {
  const route::Printing print(subject.route.system);
  const std::string op = route::setup_path(setup);
  if (is_in_vise(setup)) judge_beside_parallel(pen, print, op, feature);
  const Figure& below = pen.ask(fmt::format("{}/{}/below", op, feature));
  const Figure& under = pen.ask(op + "/hold/under the work");
  pen.judge({.check = "drill point clears what is under the work",
             .subject = feature,
             .figure = &below,
             .high = &under,
             .reason = fmt::format("the point goes {} past the work and there is {} under it",
                                   route::or_not_known(below, print.plain(below.value)),
                                   route::or_not_known(under, print.plain(under.value))),
             .source = "drill point: (D/2)/tan 59 degrees; 1.5 mm run through by common practice",
             .todo = is_in_vise(setup) ? "use higher parallels" : "set it on higher packing",
             .margin = "under margin"});
}

void judge_blind(Pen& pen, const Subject& subject, const route::Setup& setup, const std::string& feature) {
  const route::Printing print(subject.route.system);
  const Figure& below = pen.ask(fmt::format("{}/{}/below", route::setup_path(setup), feature));
  pen.judge({.check = "drill point stays in the metal",
             .subject = feature,
             .figure = &below,
             .high = &limit(pen, "far side", 0.0, Origin::kStandard, "the far side of the work"),
             .reason = below.value > 0
                           ? fmt::format("the point comes {} out of the far side", print.plain(below.value))
                           : fmt::format("{} is left under the point", print.plain(-below.value)),
             .source = "drill point: (D/2)/tan 59 degrees",
             .todo = "drill less deep, or through"});
}

// A slot or a pocket that goes right through, against the parallels and what is below.
void judge_opening_beside(Pen& pen, const route::Printing& print, const std::string& op,
                          const std::string& feature) {
  const Figure& beside = pen.ask(fmt::format("{}/{}/to parallel", op, feature));
  pen.judge({.check = "cutter clears the parallels",
             .subject = feature,
             .figure = &beside,
             .low = &limit(pen, "keep off", kKeepOff_mm, Origin::kDefault, "common practice"),
             .reason = beside.value < 0
                           ? fmt::format("it runs {} into a parallel", print.plain(-beside.value))
                           : fmt::format("it passes a parallel by {}",
                                         route::or_not_known(beside, print.plain(beside.value))),
             .source = "plain geometry; 0.020 in kept off by common practice",
             .todo = "use thinner parallels, or hold it the other way round",
             .margin = "parallel margin"});
}

void judge_opening(Pen& pen, const Subject& subject, const route::Setup& setup, const std::string& feature) {
  const route::Printing print(subject.route.system);
  const std::string op = route::setup_path(setup);
  if (is_in_vise(setup)) judge_opening_beside(pen, print, op, feature);
  const Figure& below = pen.ask(fmt::format("{}/{}/below", op, feature));
  const Figure& under = pen.ask(op + "/hold/under the work");
  pen.judge({.check = "cutter clears what is under the work",
             .subject = feature,
             .figure = &below,
             .high = &under,
             .reason = fmt::format("it goes {} past the work and there is {} under it",
                                   route::or_not_known(below, print.plain(below.value)),
                                   route::or_not_known(under, print.plain(under.value))),
             .source = "1 mm run through by common practice",
             .todo = is_in_vise(setup) ? "use higher parallels" : "set it on higher packing",
             .margin = "under margin"});
}

// Closed at both ends: what is open is judged against the jaws.
bool goes_through(const Made& made) {
  const auto* formed = std::get_if<part::Formed>(&made.feature.shape);
  const bool opening =
      formed != nullptr && (formed->form == part::Form::kSlot || formed->form == part::Form::kPocket);
  return opening && formed->sizes.contains("length") && !formed->sizes.contains("depth") && made.on_mill() &&
         route::cuts_are_worked_out(made.setup, made.feature);
}

}  // namespace

void add_drill_room_checks(const Shared& subject, Stages& stages) {
  for (const Made& made : all_made(*subject)) {
    if (goes_through(made))
      stages.push_back(check_stage(subject, "cutter room", made.work.feature,
                                   [subject, &setup = made.setup, work = made.work](Pen& pen) {
                                     judge_opening(pen, *subject, setup, work.feature);
                                   }));
    const part::Hole* hole = made.drilled();
    if (hole == nullptr) continue;
    const bool blind = hole->depth.has_value();
    if (!blind && !made.on_mill()) continue;  // a hole in the table, or wood under the work
    stages.push_back(check_stage(subject, "drill room", made.work.feature,
                                 [subject, &setup = made.setup, work = made.work, blind](Pen& pen) {
                                   blind ? judge_blind(pen, *subject, setup, work.feature)
                                         : judge_through(pen, *subject, setup, work.feature);
                                 }));
  }
}

}  // namespace sparewright::judge
