// What holds the work on a lathe is there when the setup begins: enough of it in the jaws, centres in its ends, the place
// or the bore it is gripped on.
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

// One setup on a lathe. Valid as long as the subject.
struct Turning {
  const Subject& subject;
  const route::Setup& setup;
  const route::OnLathe& on;
  route::Printing print;

  [[nodiscard]] std::string op() const { return route::setup_path(setup); }
  [[nodiscard]] bool by_jaws() const {
    return on.holder.kind != shop::HolderKind::kCentres && on.holder.kind != shop::HolderKind::kMandrel;
  }
};

void judge_grip(Pen& pen, const Turning& t) {
  if (!t.by_jaws()) return;
  const Figure& gripped = pen.ask(t.op() + "/hold/gripped");
  pen.judge({.check = "grip",
             .subject = t.op(),
             .figure = &gripped,
             .low = &limit(pen, "least grip", kLeastGrip_mm, Origin::kDefault, "common practice"),
             .reason = fmt::format("{} of the work lies in the jaws; at least {} is wanted",
                                   route::or_not_known(gripped, t.print.plain(gripped.value)),
                                   t.print.plain(kLeastGrip_mm)),
             .source = "common practice; friction is not worked out",
             .todo = "grip more of it, or say how much lies in the jaws",
             .margin = "grip margin"});
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

void add_lathe_support_checks(const Shared& subject, Stages& stages) {
  for (const route::Setup& setup : subject->route.plan.setups) {
    const auto* on = std::get_if<route::OnLathe>(&setup.held);
    if (on == nullptr) continue;
    stages.push_back(
        check_stage(subject, "support", route::setup_path(setup), [subject, setup, on = *on](Pen& pen) {
          const Turning turning{*subject, setup, on, route::Printing(subject->route.system)};
          judge_grip(pen, turning);
          judge_centres(pen, turning);
          judge_gripped_on(pen, turning);
        }));
  }
}

}  // namespace sparewright::judge
