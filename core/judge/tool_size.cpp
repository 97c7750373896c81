// Whether the tools named for a hole make it the size it is to be.
#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/handbook/metric_threads.hpp"
#include "core/handbook/reaming.hpp"
#include "core/handbook/unified_threads.hpp"
#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using shop::Tool;
using shop::ToolKind;

// One hole made in one setup.
struct Making {
  const Subject& subject;
  const route::Setup& setup;
  const route::Work& work;
  const part::Hole& hole;
  route::Printing print;

  [[nodiscard]] const Figure& diameter_of(Pen& pen, const Tool& tool) const {
    return pen.ask(fmt::format("{}/{}/{} diameter", route::setup_path(setup), work.feature, tool.name));
  }
  [[nodiscard]] const Figure& limit_of(Pen& pen, std::string_view which) const {
    return pen.ask(fmt::format("{}/diameter/{}", part::feature_path(work.feature), which));
  }
};

const Tool* last_of(const route::Work& work, ToolKind kind) {
  const auto found =
      std::find_if(work.tools.rbegin(), work.tools.rend(), [&](const Tool& t) { return t.kind == kind; });
  return found == work.tools.rend() ? nullptr : &*found;
}

// The drill that has the hole when the tool comes.
const Tool* drill_before(const route::Work& work, const Tool& tool) {
  const Tool* drill = nullptr;
  for (const Tool& one : work.tools) {
    if (one.name == tool.name) break;
    if (one.kind == ToolKind::kTwistDrill && (drill == nullptr || !drill->diameter ||
                                              (one.diameter && one.diameter->base > drill->diameter->base)))
      drill = &one;
  }
  return drill;
}

void judge_size(Pen& pen, const Making& m, const Tool& tool, const std::string& what) {
  const Figure& size = m.diameter_of(pen, tool);
  const Figure& least = m.limit_of(pen, "least");
  const Figure& most = m.limit_of(pen, "most");
  pen.judge({.check = fmt::format("the {} has the size", what),
             .subject = m.work.feature,
             .figure = &size,
             .low = &least,
             .high = &most,
             .reason = fmt::format("{} is {} and the hole {}", tool.name,
                                   route::or_not_known(size, m.print.fine(size.value)),
                                   route::or_not_known(least, m.print.limits(least.value, most.value, true))),
             .source = "the shop, the tool as it is",
             .todo = fmt::format("take a {} of the hole's size", what),
             .margin = what + " margin"});
}

void judge_left_for_reamer(Pen& pen, const Making& m, const Tool& reamer) {
  const Tool* drill = drill_before(m.work, reamer);
  if (drill == nullptr || !reamer.diameter) return;
  const auto stock = handbook::reaming_stock(quantity::Diameter::from_base(reamer.diameter->base));
  if (!stock) return;
  const Figure& left = pen.work(
      "left for the reamer", quantity::Kind::kLength, "reamer less drill, on the diameter",
      [](auto wide, auto narrow) { return wide - narrow; }, m.diameter_of(pen, reamer),
      m.diameter_of(pen, *drill));
  // The table is of what is best. That half the least still cuts and twice the most still comes out is a choice made here;
  // no source was found.
  constexpr double kStillCuts = 0.5;
  constexpr double kStillComesOut = 2.0;
  const std::string source =
      handbook::cite(stock->source) + "; half and twice of it allowed, a choice without a source";
  pen.judge({.check = "metal left for the reamer",
             .subject = m.work.feature,
             .figure = &left,
             .low = &limit(pen, "least left", kStillCuts * stock->low.base(), Origin::kDefault, source),
             .high = &limit(pen, "most left", kStillComesOut * stock->high.base(), Origin::kDefault, source),
             .reason = fmt::format("{} leaves {} on the diameter; {} to {} is best", drill->name,
                                   route::or_not_known(left, m.print.plain(left.value)),
                                   m.print.plain(stock->low.base()), m.print.plain(stock->high.base())),
             .source = source,
             .todo = "take another drill, or bore first",
             .margin = "left margin"});
}

struct Thread {
  double major_mm = 0.0;
  double pitch_mm = 0.0;
  bool left_hand = false;
};

std::optional<Thread> read_thread(std::string_view text) {
  if (const auto inch = handbook::read_unified_thread(text))
    return Thread{inch->major.base(), inch->pitch().base(), inch->left_hand};
  if (const auto metric = handbook::read_metric_thread(text))
    return Thread{metric->major.base(), metric->pitch.base(), metric->left_hand};
  return std::nullopt;
}

void judge_tap(Pen& pen, const Making& m, const Tool& tap) {
  const auto wanted = read_thread(m.hole.thread);
  const auto cut = read_thread(tap.thread);
  if (!wanted) return;  // refused when the text was read
  constexpr double kSame_mm = 1e-6;
  if (cut && std::abs(cut->major_mm - wanted->major_mm) < kSame_mm &&
      std::abs(cut->pitch_mm - wanted->pitch_mm) < kSame_mm && cut->left_hand == wanted->left_hand) {
    return;
  }
  ledger::Verdict verdict;
  verdict.check = "the tap has the thread";
  verdict.subject = m.work.feature;
  verdict.state = cut ? ledger::State::kNo : ledger::State::kNotKnown;
  verdict.reason = cut ? fmt::format("the thread is {} and {} cuts {}", m.hole.thread, tap.name, tap.thread)
                       : fmt::format("what thread {} cuts is not said", tap.name);
  verdict.source = "the shop";
  verdict.todo = cut ? fmt::format("take a tap {}", m.hole.thread) : "say its thread in the shop text";
  if (!cut) verdict.missing = {fmt::format("thread of {}", tap.name)};
  pen.state(std::move(verdict));
}

void judge_bar(Pen& pen, const Making& m, const Tool& head) {
  const Tool* drill = drill_before(m.work, head);
  if (!head.least_bore || drill == nullptr) return;
  const Figure& entry = m.diameter_of(pen, *drill);
  pen.judge(
      {.check = "the boring bar goes in",
       .subject = m.work.feature,
       .figure = &entry,
       .low = &limit(pen, "least bore of the bar", head.least_bore->base(), Origin::kChoice, "the shop"),
       .reason = fmt::format("{} drills {} and the bar wants {}", drill->name,
                             route::or_not_known(entry, m.print.plain(entry.value)),
                             m.print.plain(head.least_bore->base())),
       .source = "the shop",
       .todo = "drill larger first, or use a thinner bar",
       .margin = "bar margin"});
}

// What a drill takes before the boring head is gone; what it takes before a tap is the thread.
void judge_drill_leaves(Pen& pen, const Making& m, const Tool& drill) {
  const bool bored = m.hole.make == part::HoleMake::kBored;
  const auto thread = read_thread(m.hole.thread);
  if (!bored && !thread) return;
  const Figure& size = m.diameter_of(pen, drill);
  const Figure& most = bored ? m.limit_of(pen, "least")
                             : limit(pen, "outside of the thread", thread->major_mm, Origin::kStandard,
                                     "basic major diameter, " + m.hole.thread);
  pen.judge({.check = bored ? "the drill leaves metal for the bore" : "the drill leaves metal for the thread",
             .subject = m.work.feature,
             .figure = &size,
             .high = &most,
             .reason = fmt::format("{} is {} and the {} {}", drill.name,
                                   route::or_not_known(size, m.print.plain(size.value)),
                                   bored ? "bore at its least" : "outside of the thread",
                                   route::or_not_known(most, m.print.fine(most.value))),
             .source = "the shop, the tool as it is",
             .todo = "take a smaller drill",
             .margin = "metal margin"});
}

// A counterbore cannot be set: it is what the tool is. An end mill as counterbore alike.
void judge_counterbore(Pen& pen, const Making& m) {
  const Tool* tool = last_of(m.work, ToolKind::kCounterbore);
  if (tool == nullptr) tool = last_of(m.work, ToolKind::kEndMill);
  if (tool == nullptr || !tool->diameter) return;
  const std::string path = fmt::format("{}/counterbore diameter/", part::feature_path(m.work.feature));
  const Figure& size = m.diameter_of(pen, *tool);
  const Figure& least = pen.ask(path + "least");
  const Figure& most = pen.ask(path + "most");
  pen.judge({.check = "the counterbore has the size",
             .subject = m.work.feature,
             .figure = &size,
             .low = &least,
             .high = &most,
             .reason = fmt::format("{} is {} and the counterbore {}", tool->name,
                                   route::or_not_known(size, m.print.fine(size.value)),
                                   route::or_not_known(least, m.print.limits(least.value, most.value, true))),
             .source = "the shop, the tool as it is",
             .todo = "take a counterbore of that size",
             .margin = "counterbore margin"});
}

void judge_hole(Pen& pen, const Making& m) {
  const bool drill_makes_it =
      m.hole.make == part::HoleMake::kDrilled || m.hole.make == part::HoleMake::kTapped ||
      m.hole.make == part::HoleMake::kCounterbored || m.hole.make == part::HoleMake::kSpotfaced ||
      m.hole.make == part::HoleMake::kCountersunk;
  const Tool* drill = last_of(m.work, ToolKind::kTwistDrill);
  if (drill_makes_it && drill != nullptr) judge_size(pen, m, *drill, "drill");
  if (drill != nullptr) judge_drill_leaves(pen, m, *drill);
  if (m.hole.counterbore) judge_counterbore(pen, m);
  if (const Tool* reamer = last_of(m.work, ToolKind::kReamer); reamer != nullptr) {
    judge_size(pen, m, *reamer, "reamer");
    judge_left_for_reamer(pen, m, *reamer);
  }
  if (const Tool* tap = last_of(m.work, ToolKind::kTap);
      tap != nullptr && m.hole.make == part::HoleMake::kTapped)
    judge_tap(pen, m, *tap);
  for (const ToolKind bar : {ToolKind::kBoringHead, ToolKind::kBoringBar}) {
    if (const Tool* head = last_of(m.work, bar)) judge_bar(pen, m, *head);
  }
}

}  // namespace

void add_tool_size_checks(const Shared& subject, Stages& stages) {
  for (const Made& made : all_made(*subject)) {
    const part::Hole* hole = made.drilled() != nullptr ? made.drilled() : made.hole_on_lathe();
    if (hole == nullptr) continue;
    stages.push_back(
        check_stage(subject, "tool sizes in " + route::setup_path(made.setup), made.work.feature,
                    [subject, &setup = made.setup, work = made.work, hole = *hole](Pen& pen) {
                      judge_hole(pen, {*subject, setup, work, hole, route::Printing(subject->route.system)});
                    }));
  }
}

}  // namespace sparewright::judge
