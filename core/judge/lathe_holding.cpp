// Work held on a lathe: whether the chuck takes it, cuts stay off the jaws, it swings clear, and how far it stands out.
#include <algorithm>

#include <fmt/format.h>

#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using ledger::State;

// Common practice: without the tail no more than three diameters stand out, with light cuts up to five; with it twelve,
// and past that a steady.
constexpr double kStandsOut = 3.0;
constexpr double kStandsOutLightly = 5.0;
constexpr double kWithTail = 12.0;
// A cut stays this far off the jaws. Common practice.
constexpr double kKeepOff_mm = 0.020 * 25.4;

struct OnLathe {
  const Subject& subject;
  const route::Setup& setup;
  const route::OnLathe& on;
  route::Printing print;

  [[nodiscard]] std::string op() const { return route::setup_path(setup); }
  [[nodiscard]] const Figure& hold(Pen& pen, std::string_view local) const {
    return pen.ask(fmt::format("{}/hold/{}", op(), local));
  }
};

void judge_grips(Pen& pen, const OnLathe& o) {
  if (!o.on.holder.grips_to) return;
  const Figure& on = o.hold(pen, "on");
  const double from = o.on.holder.grips_from ? o.on.holder.grips_from->base() : 0.0;
  pen.judge({.check = "the chuck takes it",
             .subject = o.op(),
             .figure = &on,
             .low = &limit(pen, "grips from", from, Origin::kChoice, "the shop's " + o.on.holder.name),
             .high = &limit(pen, "grips to", o.on.holder.grips_to->base(), Origin::kChoice,
                            "the shop's " + o.on.holder.name),
             .reason = fmt::format("it is held on {} and the {} takes {} to {}",
                                   route::or_not_known(on, o.print.plain(on.value)), o.on.holder.name,
                                   o.print.plain(from), o.print.plain(o.on.holder.grips_to->base())),
             .source = "the shop",
             .todo = "hold it in another chuck or on another place",
             .margin = "grips margin"});
}

void judge_room_to_jaws(Pen& pen, const OnLathe& o) {
  const Figure& room = o.hold(pen, "room to the jaws");
  if (!room.known() && room.missing.empty()) return;
  if (o.on.holder.kind == shop::HolderKind::kCentres || o.on.holder.kind == shop::HolderKind::kMandrel ||
      o.on.holder.kind == shop::HolderKind::kFaceplate)
    return;
  pen.judge({.check = "cuts stay off the jaws",
             .subject = o.op(),
             .figure = &room,
             .low = &limit(pen, "keep off", kKeepOff_mm, Origin::kDefault, "common practice"),
             .reason = fmt::format("the outside is cut to {} from the jaws",
                                   route::or_not_known(room, o.print.plain(room.value))),
             .source = "the job's order of work, as it is held",
             .todo = "let more stand out, or turn it round for the rest",
             .margin = "jaws margin"});
}

void judge_stands_out(Pen& pen, const OnLathe& o) {
  const Figure& out = o.hold(pen, "diameters standing out");
  if (!out.known()) return;
  const bool tail = o.on.tail != route::TailSupport::kNone;
  const double most = tail ? kWithTail : kStandsOut;
  const double past = tail ? kWithTail : kStandsOutLightly;
  if (out.value <= most) return;
  pen.state(
      {.check = "stands out of the chuck",
       .subject = o.op(),
       .state = out.value <= past || tail ? State::kClose : State::kNo,
       .figure = out.name,
       .reason = fmt::format("{:.1f} times its diameter stands out; {:.0f} is usual{}", out.value, most,
                             tail ? " with a centre" : ""),
       .source = "common practice",
       .todo = tail ? "put a steady in the middle, light cuts" : "put a centre in the tail, or grip more"});
}

// A size of the work that the lathe has room for up to a most.
struct RoomFor {
  std::string check;
  std::string_view local;  // below "op 20/hold"
  std::optional<quantity::Length> most;
  std::string what;
};

void judge_fits(Pen& pen, const OnLathe& o, const RoomFor& room) {
  if (!room.most) return;
  const Figure& size = o.hold(pen, room.local);
  pen.judge({.check = room.check,
             .subject = o.op(),
             .figure = &size,
             .high = &limit(pen, room.what, room.most->base(), Origin::kChoice,
                            "the shop's " + o.setup.machine.name),
             .reason = fmt::format("the work is {} across and the {} {}",
                                   route::or_not_known(size, o.print.plain(size.value)), room.what,
                                   o.print.plain(room.most->base())),
             .source = "the shop",
             .todo = "use a larger lathe",
             .margin = room.what + " margin"});
}

// What is longer than the jaws lies in the spindle.
void judge_spindle_bore(Pen& pen, const OnLathe& o) {
  const auto& jaws = o.on.holder.jaws;
  if (!o.on.gripped || !jaws || *o.on.gripped <= *jaws) return;
  judge_fits(pen, o,
             {.check = "goes into the spindle",
              .local = "on",
              .most = o.setup.machine.lathe.spindle_bore,
              .what = "spindle bore"});
}

}  // namespace

void add_lathe_holding_checks(const Shared& subject, Stages& stages) {
  for (const route::Setup& setup : subject->route.plan.setups) {
    const auto* on = std::get_if<route::OnLathe>(&setup.held);
    if (on == nullptr) continue;
    stages.push_back(
        check_stage(subject, "holding", route::setup_path(setup), [subject, &setup, on](Pen& pen) {
          const OnLathe o{*subject, setup, *on, route::Printing(subject->route.system)};
          judge_grips(pen, o);
          judge_room_to_jaws(pen, o);
          judge_stands_out(pen, o);
          judge_fits(pen, o,
                     {.check = "swings over the bed",
                      .local = "largest",
                      .most = setup.machine.lathe.swing,
                      .what = "swing"});
          judge_fits(pen, o,
                     {.check = "swings over the cross slide",
                      .local = "largest",
                      .most = setup.machine.lathe.swing_over_slide,
                      .what = "swing over the slide"});
          judge_spindle_bore(pen, o);
        }));
  }
}

}  // namespace sparewright::judge
