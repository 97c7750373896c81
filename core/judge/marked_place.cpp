// A located place that is punched and drilled by hand: how far it comes out, against its tolerance.
#include <fmt/format.h>

#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Pen;

void judge_marked(Pen& pen, const Subject& subject, const route::Setup& setup, const std::string& feature,
                  part::Axis axis) {
  const route::Printing print(subject.route.system);
  const std::string name(part::name_of(axis));
  const std::string path = fmt::format("{}/{}", part::feature_path(feature), name);
  const std::string good = fmt::format("{}/{}/place good to", route::setup_path(setup), feature);
  const Figure& off = pen.ask(good);
  const Figure& room = pen.work(
      name + " room", quantity::Kind::kLength, "half the tolerance",
      [](auto least, auto most) { return (most - least) / 2.0; }, pen.ask(path + "/least"),
      pen.ask(path + "/most"));
  pen.judge({.check = fmt::format("marks hold its place in {}", name),
             .subject = feature,
             .figure = &off,
             .high = &room,
             .reason = fmt::format(
                 "punched and drilled by hand it comes out within {} to {}; it may be {} off",
                 print.plain(pen.ask(good + "/least").value), print.plain(pen.ask(good + "/most").value),
                 route::or_not_known(room, print.plain(room.value))),
             .source = "common practice",
             .todo = "drill it on a mill by its collars, through a drill guide, or through the mate",
             .margin = name + " margin"});
}

// A place that only has to keep the general tolerance: it is said where not even a careful hand keeps it.
void judge_roughly_marked(Pen& pen, const Subject& subject, const route::Setup& setup,
                          const std::string& feature, part::Axis axis) {
  const route::Printing print(subject.route.system);
  const std::string path = fmt::format("{}/{}", part::feature_path(feature), part::name_of(axis));
  const std::string good = fmt::format("{}/{}/place good to", route::setup_path(setup), feature);
  const Figure& careful = pen.ask(good + "/least");
  const Figure& least = pen.ask(path + "/least");
  const Figure& most = pen.ask(path + "/most");
  if (!careful.known() || !least.known() || !most.known()) return;
  const double room_mm = (most.value - least.value) / 2.0;
  if (careful.value <= room_mm) return;
  ledger::Verdict verdict;
  verdict.check = fmt::format("marks hold its place in {}", part::name_of(axis));
  verdict.subject = feature;
  verdict.state = ledger::State::kClose;
  verdict.reason = fmt::format("punched and drilled by hand it comes out within {} to {}; it may be {} off",
                               print.plain(careful.value), print.plain(pen.ask(good + "/most").value),
                               print.plain(room_mm));
  verdict.source = "common practice";
  verdict.todo = "give the place the tolerance it needs, or drill it by collars, a guide or the mate";
  pen.state(std::move(verdict));
}

}  // namespace

void add_marked_place_checks(const Shared& subject, Stages& stages) {
  for (const Made& made : all_made(*subject)) {
    const part::Hole* hole = made.by_marks() ? made.drilled() : nullptr;
    if (hole == nullptr || hole->placed_by != part::PlacedBy::kCoordinates) continue;
    for (const auto& [axis, position] : hole->at) {
      const auto judge = position.distance.duty == part::Duty::kLocates ? judge_marked : judge_roughly_marked;
      stages.push_back(check_stage(subject, "marked place in " + std::string(part::name_of(axis)),
                                   made.work.feature,
                                   [subject, &setup = made.setup, work = made.work, axis = axis,
                                    judge](Pen& pen) { judge(pen, *subject, setup, work.feature, axis); }));
    }
  }
}

}  // namespace sparewright::judge
