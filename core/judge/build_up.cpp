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

}  // namespace

void add_build_up_checks(const Shared& subject, Stages& stages) {
  for (const Made& made : all_made(*subject)) {
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
