// Whether a lathe can hold the work as the job says: what is gripped, how far the rest stands out, what holds its end up.
#include <algorithm>
#include <optional>

#include <fmt/format.h>

#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using quantity::Kind;

// Jaws hold by at least this length. Common practice: a quarter of an inch.
constexpr double kLeastGrip_mm = 0.25 * 25.4;

// How many diameters of bar may stand out. Common practice of turners: three from the jaws alone, four with light cuts;
// eight with a centre, twelve with light cuts; more with a steady.
struct Overhang {
  double easy = 3.0;
  double most = 4.0;
};
Overhang overhang_of(route::TailSupport tail) {
  if (tail == route::TailSupport::kNone) return {3.0, 4.0};
  if (tail == route::TailSupport::kSteady) return {16.0, 24.0};
  return {8.0, 12.0};
}

// One setup on a lathe. Valid as long as the subject.
struct Turning {
  const Subject& subject;
  const route::Setup& setup;
  const route::OnLathe& on;
  route::Printing print;

  [[nodiscard]] std::string op() const { return route::setup_path(setup); }
  // What is gripped is as thick as the blank, or as the feature it is gripped on.
  [[nodiscard]] const Figure& gripped_diameter(Pen& pen) const {
    if (!on.on.empty()) return pen.ask(part::feature_path(on.on) + "/diameter");
    return pen.ask(part::blank_path(subject.route.part.blank, part::Axis::kY));
  }
  [[nodiscard]] bool by_jaws() const {
    return on.holder.kind != shop::HolderKind::kCentres && on.holder.kind != shop::HolderKind::kMandrel;
  }
};

void judge_range(Pen& pen, const Turning& t) {
  const Figure& diameter = t.gripped_diameter(pen);
  const auto typed = [&](const std::optional<quantity::Length>& size, const char* local) -> const Figure* {
    if (!size) return nullptr;
    return &limit(pen, local, size->base(), Origin::kChoice, "the shop's " + t.on.holder.name);
  };
  const Figure* least = typed(t.on.holder.grips_from, "grips from");
  const Figure* most = typed(t.on.holder.grips_to, "grips to");
  if (least == nullptr && most == nullptr) return;
  pen.judge(
      {.check = "the chuck takes it",
       .subject = t.op(),
       .figure = &diameter,
       .low = least,
       .high = most,
       .reason = fmt::format("the work is {} where it is gripped and the {} takes {} to {}",
                             route::or_not_known(diameter, t.print.plain(diameter.value)), t.on.holder.name,
                             least != nullptr ? t.print.plain(least->value) : std::string("0"),
                             most != nullptr ? t.print.plain(most->value) : std::string("any size")),
       .source = "the shop",
       .todo = "turn the jaws round, take another chuck, or grip it elsewhere",
       .margin = "range margin"});
}

void judge_grip(Pen& pen, const Turning& t) {
  if (!t.by_jaws()) return;
  if (!t.on.gripped) {
    pen.state({.check = "grip",
               .subject = t.op(),
               .state = ledger::State::kNotKnown,
               .reason = "how much of the work lies in the jaws is not said",
               .source = "the job's order of work",
               .todo = "say gripped = \"...\"",
               .missing = {"gripped, in the setup's hold"}});
    return;
  }
  const Figure& gripped =
      limit(pen, "gripped", t.on.gripped->base(), Origin::kChoice, "the job's order of work");
  pen.judge({.check = "grip",
             .subject = t.op(),
             .figure = &gripped,
             .low = &limit(pen, "least grip", kLeastGrip_mm, Origin::kDefault, "common practice"),
             .reason = fmt::format("{} of the work lies in the jaws; at least {} is wanted",
                                   route::or_not_known(gripped, t.print.plain(gripped.value)),
                                   t.print.plain(kLeastGrip_mm)),
             .source = "common practice; friction is not worked out",
             .todo = "grip more of it",
             .margin = "grip margin"});
}

void judge_overhang(Pen& pen, const Turning& t) {
  if (t.on.holder.kind == shop::HolderKind::kFaceplate) return;
  const Figure& length = pen.ask(part::blank_path(t.subject.route.part.blank, part::Axis::kX));
  const Figure& diameter = pen.ask(part::blank_path(t.subject.route.part.blank, part::Axis::kY));
  const double held = t.on.gripped ? t.on.gripped->base() : 0.0;
  const Figure& out =
      t.on.sticks_out
          ? limit(pen, "stands out", t.on.sticks_out->base(), Origin::kChoice, "the job's order of work")
          : pen.work(
                "stands out", Kind::kLength, "length of the blank less what is gripped",
                [held](auto l) { return l - held; }, length);
  const Figure& diameters = pen.work(
      "stands out in diameters", Kind::kNumber, "over the blank's diameter",
      [](auto l, auto d) { return l / d; }, out, diameter);
  const Overhang overhang = overhang_of(t.on.tail);
  ledger::Root most;
  most.kind = Kind::kNumber;
  most.value = overhang.most;
  most.origin = Origin::kDefault;
  most.source = "common practice";
  const std::string held_by =
      t.on.tail == route::TailSupport::kNone ? "nothing" : "a " + std::string(route::name_of(t.on.tail));
  pen.judge(
      {.check = "it stands out no further than it bears",
       .subject = t.op(),
       .figure = &diameters,
       .high = &pen.root("most diameters", most),
       .reason = fmt::format("{} stands out, {} diameters, with {} at its end; over {} it springs and "
                             "chatters, over {} it may jump out",
                             route::or_not_known(out, t.print.plain(out.value)),
                             route::or_not_known(diameters, quantity::fixed(diameters.value, 1)), held_by,
                             quantity::fixed(overhang.easy, 0), quantity::fixed(overhang.most, 0)),
       .source = "common practice",
       .todo = t.on.tail == route::TailSupport::kNone ? "hold its end up with a centre, or let less stand out"
                                                      : "use a steady, or let less stand out",
       .margin = "overhang margin",
       .close_at_best = diameters.known() && diameters.value > overhang.easy});
}

// Whether a feature is there when this setup begins, or is made in it before anything else.
bool is_there(const Subject& subject, const route::Setup& setup, const std::string& feature, bool or_here) {
  const auto makes = [&](const route::Setup& s) {
    return std::any_of(s.works.begin(), s.works.end(),
                       [&](const route::Work& w) { return w.feature == feature && !w.joins; });
  };
  for (const route::Setup& s : subject.route.plan.setups) {
    if (s.op == setup.op) return or_here && makes(s);
    if (makes(s)) return true;
  }
  return false;
}

bool centre_is_there(const Turning& t, part::Face end, bool or_here) {
  const auto& features = t.subject.route.part.features;
  return std::any_of(features.begin(), features.end(), [&](const part::Feature& feature) {
    const auto* formed = std::get_if<part::Formed>(&feature.shape);
    return formed != nullptr && formed->form == part::Form::kCentreHole && formed->side == end &&
           is_there(t.subject, t.setup, feature.name, or_here);
  });
}

void refuse_centre(Pen& pen, const Turning& t, part::Face end) {
  pen.state({.check = "a centre finds its hole",
             .subject = fmt::format("{}, {}", t.op(), part::name_of(end)),
             .state = ledger::State::kNo,
             .reason = fmt::format("the {} has no centre hole when {} begins", part::name_of(end), t.op()),
             .source = "the job's order of work",
             .todo = "drill a centre there first, in this setup before the centre goes in or in one before"});
}

void judge_centres(Pen& pen, const Turning& t) {
  const bool tail_is_centre =
      t.on.tail == route::TailSupport::kLiveCentre || t.on.tail == route::TailSupport::kDeadCentre;
  const bool between = t.on.holder.kind == shop::HolderKind::kCentres;
  if (between && !centre_is_there(t, part::opposite(t.on.free_end), false))
    refuse_centre(pen, t, part::opposite(t.on.free_end));
  if ((between || tail_is_centre) && !centre_is_there(t, t.on.free_end, !between))
    refuse_centre(pen, t, t.on.free_end);
  if (between && !tail_is_centre)
    pen.state({.check = "between centres",
               .subject = t.op(),
               .state = ledger::State::kNo,
               .reason = "work between centres has a centre in the tailstock and none is named",
               .source = "the job's order of work",
               .todo = "say tail = \"live centre\" or \"dead centre\""});
}

void judge_gripped_on(Pen& pen, const Turning& t) {
  if (t.on.on.empty()) {
    if (t.on.holder.kind != shop::HolderKind::kMandrel) return;
    pen.state({.check = "it is gripped on what is there",
               .subject = t.op(),
               .state = ledger::State::kNotKnown,
               .reason = "a mandrel goes into a bore and none is named",
               .source = "the job's order of work",
               .todo = "name the bore: on = \"...\"",
               .missing = {"on, in the setup's hold"}});
    return;
  }
  if (is_there(t.subject, t.setup, t.on.on, false)) return;
  pen.state({.check = "it is gripped on what is there",
             .subject = t.op(),
             .state = ledger::State::kNo,
             .reason = fmt::format("it is gripped on {}, which is not made when {} begins", t.on.on, t.op()),
             .source = "the job's order of work",
             .todo = fmt::format("make {} in a setup before, or grip it elsewhere", t.on.on)});
}

}  // namespace

void add_lathe_holding_checks(const Shared& subject, Stages& stages) {
  for (const route::Setup& setup : subject->route.plan.setups) {
    const auto* on = std::get_if<route::OnLathe>(&setup.held);
    if (on == nullptr) continue;
    stages.push_back(
        check_stage(subject, "turning", route::setup_path(setup), [subject, setup, on = *on](Pen& pen) {
          const Turning turning{*subject, setup, on, route::Printing(subject->route.system)};
          judge_range(pen, turning);
          judge_grip(pen, turning);
          judge_overhang(pen, turning);
          judge_centres(pen, turning);
          judge_gripped_on(pen, turning);
        }));
  }
}

}  // namespace sparewright::judge
