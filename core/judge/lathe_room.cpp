// Whether the work goes into the lathe: over its bed and its slide, between its centres, through its spindle; and whether
// its chuck may turn that fast.
#include <fmt/format.h>

#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using quantity::Kind;

struct Room {
  const Subject& subject;
  const route::Setup& setup;
  const route::OnLathe& on;
  route::Printing print;

  [[nodiscard]] std::string op() const { return route::setup_path(setup); }
  [[nodiscard]] const Figure& blank(Pen& pen, part::Axis axis) const {
    return pen.ask(part::blank_path(subject.route.part.blank, axis));
  }
};

void judge_size(Pen& pen, const Room& room, const char* check, const char* local, const Figure& size,
                quantity::Length most, const std::string& what, const char* todo) {
  pen.judge(
      {.check = check,
       .subject = room.op(),
       .figure = &size,
       .high = &limit(pen, local, most.base(), Origin::kChoice, "the shop's " + room.setup.machine.name),
       .reason = fmt::format("{} {} and the {} has {}", what,
                             route::or_not_known(size, room.print.plain(size.value)), room.setup.machine.name,
                             room.print.plain(most.base())),
       .source = "the shop",
       .todo = todo,
       .margin = std::string(local) + " margin"});
}

void judge_bed(Pen& pen, const Room& room) {
  const shop::LatheSizes& lathe = room.setup.machine.lathe;
  const Figure& across = room.blank(pen, part::Axis::kY);
  if (lathe.swing)
    judge_size(pen, room, "it swings over the bed", "swing", across, *lathe.swing, "the work swings",
               "use a larger lathe, or a faceplate in the mill");
  if (lathe.swing_over_slide)
    judge_size(pen, room, "it swings over the cross slide", "swing over slide", across,
               *lathe.swing_over_slide, "the work swings",
               "keep the carriage clear of it, or use a larger lathe");
  if (lathe.between_centres && room.on.tail != route::TailSupport::kNone)
    judge_size(pen, room, "it goes between the centres", "between centres", room.blank(pen, part::Axis::kX),
               *lathe.between_centres, "the work is long",
               "use a longer lathe, or pass it through the spindle");
}

// What neither stands out nor lies in the jaws is in the spindle.
void judge_spindle(Pen& pen, const Room& room) {
  if (!room.on.sticks_out || !room.on.gripped) return;
  const double shown_mm = room.on.sticks_out->base() + room.on.gripped->base();
  const Figure& behind = pen.work(
      "in the spindle", Kind::kLength, "length of the blank less what stands out and what is gripped",
      [shown_mm](auto l) { return l - shown_mm; }, room.blank(pen, part::Axis::kX));
  if (behind.known() && behind.value <= 0.0) return;
  const auto& bore = room.setup.machine.lathe.spindle_bore;
  if (!bore) {
    pen.state({.check = "it goes into the spindle",
               .subject = room.op(),
               .state = ledger::State::kNotKnown,
               .reason = fmt::format("{} of it lies behind the jaws and the bore of the spindle is not said",
                                     route::or_not_known(behind, room.print.plain(behind.value))),
               .source = "the shop",
               .todo = "give the lathe its spindle_bore",
               .missing = {"spindle_bore of the " + room.setup.machine.name}});
    return;
  }
  judge_size(pen, room, "it goes into the spindle", "spindle bore", room.blank(pen, part::Axis::kY), *bore,
             "the bar behind the jaws is", "saw it off first, or use another lathe");
}

void judge_speed(Pen& pen, const Room& room) {
  if (!room.on.holder.most_rpm) return;
  const double most = quantity::unit::rpm.to_base(*room.on.holder.most_rpm);
  const Figure* fastest = nullptr;
  for (const std::string& name : pen.names(room.op())) {
    if (!name.ends_with(" rpm")) continue;
    const Figure& chosen = pen.ask(name);
    if (chosen.known() && (fastest == nullptr || chosen.value > fastest->value)) fastest = &chosen;
  }
  if (fastest == nullptr) return;
  ledger::Root root;
  root.kind = Kind::kRotationalSpeed;
  root.value = most;
  root.origin = Origin::kChoice;
  root.source = "as engraved on the " + room.on.holder.name;
  const auto rpm = [](double base) { return quantity::fixed(quantity::unit::rpm.from_base(base), 0); };
  pen.judge({.check = "the chuck may turn that fast",
             .subject = room.op(),
             .figure = fastest,
             .high = &pen.root("most rpm", root),
             .reason = fmt::format("the fastest line runs at {} and the {} is good for {}",
                                   rpm(fastest->value), room.on.holder.name, rpm(most)),
             .source = "the shop; a speed engraved on a chuck is for full grip on short work",
             .todo = "take a slower speed, or another chuck",
             .margin = "speed margin"});
}

}  // namespace

void add_lathe_room_checks(const Shared& subject, Stages& stages) {
  for (const route::Setup& setup : subject->route.plan.setups) {
    const auto* on = std::get_if<route::OnLathe>(&setup.held);
    if (on == nullptr) continue;
    stages.push_back(
        check_stage(subject, "lathe room", route::setup_path(setup), [subject, setup, on = *on](Pen& pen) {
          const Room room{*subject, setup, on, route::Printing(subject->route.system)};
          judge_bed(pen, room);
          judge_spindle(pen, room);
          judge_speed(pen, room);
        }));
  }
}

}  // namespace sparewright::judge
