// Whether the work goes between the centres of the lathe, and whether its chuck may turn as fast as the lines say.
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
};

// A chuck takes at least so much of the way between the centres, its back plate included. From memory, of small ones.
constexpr double kChuck_mm = 60.0;

// Without the tail the end that stands out has to find room before the end of the bed.
void judge_bed_without_tail(Pen& pen, const Room& room, const quantity::Length& between) {
  const Figure& out = pen.ask(room.op() + "/hold/showing");
  const double most_mm = between.base() - kChuck_mm;
  pen.judge({.check = "the bed is long enough",
             .subject = room.op(),
             .figure = &out,
             .high = &limit(pen, "bed before the chuck", most_mm, Origin::kDefault,
                            "the shop's way between centres, less 60 mm for the chuck (from memory)"),
             .reason = fmt::format("{} stands out and the {} has about {} before its chuck",
                                   route::or_not_known(out, room.print.plain(out.value)),
                                   room.setup.machine.name, room.print.plain(most_mm)),
             .source = "the shop; what a chuck takes is from memory",
             .todo = "use a longer lathe, let more of it into the spindle, or cut the blank shorter",
             .margin = "bed margin"});
}

void judge_bed(Pen& pen, const Room& room) {
  const auto& most = room.setup.machine.lathe.between_centres;
  if (!most) return;
  if (room.on.tail == route::TailSupport::kNone) return judge_bed_without_tail(pen, room, *most);
  const Figure& length = pen.ask(part::blank_path(room.subject.route.part.blank, part::Axis::kX));
  pen.judge({.check = "goes between the centres",
             .subject = room.op(),
             .figure = &length,
             .high = &limit(pen, "between centres", most->base(), Origin::kChoice,
                            "the shop's " + room.setup.machine.name),
             .reason = fmt::format("the work is {} long and the {} takes {} between its centres",
                                   route::or_not_known(length, room.print.plain(length.value)),
                                   room.setup.machine.name, room.print.plain(most->base())),
             .source = "the shop",
             .todo = "use a longer lathe",
             .margin = "length margin"});
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
          judge_speed(pen, room);
        }));
  }
}

}  // namespace sparewright::judge
