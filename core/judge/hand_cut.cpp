// What is sawn or filed to a line: how far it comes out against its limits, and the saw's cut against a split or a slit.
#include <fmt/format.h>

#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Pen;

// A flat that is sawn or filed to a line.
void judge_to_line(Pen& pen, const Subject& subject, const Made& made, bool sawn) {
  const route::Printing print(subject.route.system);
  const std::string& feature = made.feature.name;
  const std::string path = part::feature_path(feature) + "/leaves";
  const Figure& off = pen.ask(
      fmt::format("{}/{}/{} good to", route::setup_path(made.setup), feature, sawn ? "sawn" : "filed"));
  const Figure& room = pen.work(
      "room", quantity::Kind::kLength, "half the tolerance",
      [](auto least, auto most) { return (most - least) / 2.0; }, pen.ask(path + "/least"),
      pen.ask(path + "/most"));
  pen.judge({.check = sawn ? "the saw holds it" : "the file holds it",
             .subject = feature,
             .figure = &off,
             .high = &room,
             .reason = fmt::format("{} to a line it comes out within about {}; it may be {} off",
                                   sawn ? "sawn" : "filed", route::or_not_known(off, print.plain(off.value)),
                                   route::or_not_known(room, print.plain(room.value))),
             .source = "from memory",
             .todo = sawn ? "saw it longer and face it, or give it the room"
                          : "mill it, or file it by micrometer and bluing and give it the time"});
}

// A split is as wide as the saw's cut and what is faced off; a slit is the saw's cut and no more.
void judge_kerf(Pen& pen, const Subject& subject, const Made& made, const part::Formed& form) {
  const route::Printing print(subject.route.system);
  const std::string& feature = made.feature.name;
  const bool slit = form.form == part::Form::kSlit;
  const Figure& cut = pen.ask(fmt::format("{}/{}/saw's cut", route::setup_path(made.setup), feature));
  const Figure& width = pen.ask(part::feature_path(feature) + "/width");
  const Figure& most = pen.ask(part::feature_path(feature) + "/width/most");
  const Figure& least = pen.ask(part::feature_path(feature) + "/width/least");
  pen.judge({.check = "the saw's cut fits it",
             .subject = feature,
             .figure = &cut,
             .low = slit ? &least : nullptr,
             .high = &most,
             .reason = fmt::format("the saw takes {} and it is {} wide",
                                   route::or_not_known(cut, print.plain(cut.value)),
                                   route::or_not_known(width, print.plain(width.value))),
             .source = "the shop",
             .todo = slit ? "use a saw of its width, or give it the saw's"
                          : "use a thinner saw, or make it wider"});
}

}  // namespace

void add_hand_cut_checks(const Shared& subject, Stages& stages) {
  for (const Made& made : all_made(*subject)) {
    if (!made.by_marks() || !route::cuts_are_worked_out(made.setup, made.feature)) continue;
    if (std::holds_alternative<part::Flat>(made.feature.shape)) {
      const bool sawn = made.setup.machine.kind == shop::MachineKind::kSaw;
      stages.push_back(check_stage(subject, "hand cut", made.work.feature, [subject, made, sawn](Pen& pen) {
        judge_to_line(pen, *subject, made, sawn);
      }));
    }
    const auto* form = std::get_if<part::Formed>(&made.feature.shape);
    if (form == nullptr || (form->form != part::Form::kSplit && form->form != part::Form::kSlit)) continue;
    stages.push_back(check_stage(subject, "hand cut", made.work.feature, [subject, made, form](Pen& pen) {
      judge_kerf(pen, *subject, made, *form);
    }));
  }
}

}  // namespace sparewright::judge
