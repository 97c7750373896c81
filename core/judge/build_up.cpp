#include <fmt/format.h>

#include "core/judge/checks.hpp"
#include "core/route/orientation.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Pen;

void judge_place(Pen& pen, const Subject& subject, const route::Setup& setup, const std::string& feature,
                 part::Axis axis) {
  const route::Printing print(subject.route.system);
  const std::string name(part::name_of(axis));
  const std::string path = fmt::format("{}/{}", part::feature_path(feature), name);
  const Figure& made = pen.ask(fmt::format("{}/{}/{} made", route::setup_path(setup), feature, name));
  pen.judge(
      {.check = fmt::format("build-up in {}", name),
       .subject = feature,
       .figure = &made,
       .low = &pen.ask(path + "/least"),
       .high = &pen.ask(path + "/most"),
       .reason = fmt::format("the collar makes it {}, good to {}",
                             route::or_not_known(made, print.plain(made.value)),
                             route::or_not_known(made, print.fine(made.expanded()))),
       .source = "pick-up, half a division, how well the slide comes back; JCGM 100:2008",
       .todo = "measure the dimples before drilling, as the sheet says; bore to place rather than drill",
       .margin = name + " margin"});
}

// A width, a length or a depth that readings make.
void judge_made_size(Pen& pen, const Subject& subject, const route::Setup& setup, const std::string& feature,
                     const std::string& what) {
  const route::Printing print(subject.route.system);
  const std::string path = fmt::format("{}/{}", part::feature_path(feature), what);
  const Figure& made = pen.ask(fmt::format("{}/{}/{} made", route::setup_path(setup), feature, what));
  pen.judge(
      {.check = fmt::format("build-up in {}", what),
       .subject = feature,
       .figure = &made,
       .low = &pen.ask(path + "/least"),
       .high = &pen.ask(path + "/most"),
       .reason = fmt::format("cutter and collar make it {}, good to {}",
                             route::or_not_known(made, print.fine(made.value)),
                             route::or_not_known(made, print.fine(made.expanded()))),
       .source = "the cutter as measured, half a division, how well the slide comes back; JCGM 100:2008",
       .todo = "measure at the STOP before the last cut and take what is left to go",
       .margin = what + " margin"});
}

void add_form_checks(const Shared& subject, const Made& made, const part::Formed& formed, Stages& stages) {
  for (const auto& [axis, position] : formed.at) {
    if (position.distance.duty != part::Duty::kLocates) continue;
    stages.push_back(check_stage(subject, "build-up in " + std::string(part::name_of(axis)),
                                 made.work.feature,
                                 [subject, &setup = made.setup, work = made.work, axis = axis](Pen& pen) {
                                   judge_place(pen, *subject, setup, work.feature, axis);
                                 }));
  }
  using part::Form;
  if (formed.form != Form::kSlot && formed.form != Form::kPocket && formed.form != Form::kKeyseat) return;
  for (const char* what : {"width", "length", "depth"}) {
    const auto size = formed.sizes.find(what);
    if (size == formed.sizes.end() || !part::has_aim(size->second)) continue;
    stages.push_back(
        check_stage(subject, fmt::format("build-up in {}", what), made.work.feature,
                    [subject, &setup = made.setup, work = made.work, local = std::string(what)](Pen& pen) {
                      judge_made_size(pen, *subject, setup, work.feature, local);
                    }));
  }
}

}  // namespace

void add_build_up_checks(const Shared& subject, Stages& stages) {
  for (const Made& made : all_made(*subject)) {
    const auto* formed = std::get_if<part::Formed>(&made.feature.shape);
    if (formed != nullptr && made.on_mill() && route::cuts_are_worked_out(made.setup, made.feature))
      add_form_checks(subject, made, *formed, stages);
    const part::Hole* hole = made.hole();
    if (hole == nullptr) continue;
    for (const auto& [axis, position] : hole->at) {
      if (position.distance.duty != part::Duty::kLocates) continue;
      stages.push_back(check_stage(subject, "build-up in " + std::string(part::name_of(axis)),
                                   made.work.feature,
                                   [subject, &setup = made.setup, work = made.work, axis = axis](Pen& pen) {
                                     judge_place(pen, *subject, setup, work.feature, axis);
                                   }));
    }
  }
}

}  // namespace sparewright::judge
