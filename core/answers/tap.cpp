#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "core/answers/quick.hpp"
#include "core/answers/threads.hpp"
#include "core/handbook/tap_holes.hpp"
#include "core/handbook/thread_designation.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using handbook::Drill;
using handbook::DrillSeries;
using handbook::TapDrillPercent;
using handbook::ThreadShape;
using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;

// What is aimed at where nothing is said: a thread that is strong enough and a tap that lives (common practice).
constexpr double kUsualPercent = 65.0;
// What charts on the wall print, in which a tap has to work harder (common practice).
constexpr double kChartPercent = 75.0;
// Drills outside are not offered (the range of tap_drills).
constexpr handbook::ThreadPercent kOffered{};
// Of the standard drills, those within so much of what is aimed at; of the reader's own system first.
constexpr double kNearEnough = 15.0;
// From here on taps break (common practice).
constexpr double kBreaksTaps = 80.0;

constexpr handbook::Source kTapDepth{"full thread, the tap's lead and room for chips", "",
                                     handbook::Basis::kCommonPractice};

struct Asked {
  ThreadShape thread;
  std::vector<std::string> assumed;
  double percent = kUsualPercent;
  bool is_percent_assumed = true;
  UnitSystem system = UnitSystem::kInch;
};

base::Result<Asked> asked_of(const Question& question) {
  const auto thread = handbook::read_thread(question.words);
  if (!thread) return tl::unexpected(thread.error());
  Asked asked;
  asked.thread = handbook::shape_of(*thread);
  asked.assumed = handbook::assumed_of(*thread);
  const bool metric = std::holds_alternative<handbook::MetricThread>(*thread) ||
                      std::holds_alternative<handbook::TrapezoidalThread>(*thread);
  asked.system = metric ? UnitSystem::kMetric : UnitSystem::kInch;
  const auto percent = maybe_number(question, "percent", Kind::kNumber);
  if (!percent) return tl::unexpected(percent.error());
  asked.is_percent_assumed = !*percent;
  if (*percent) asked.percent = (*percent)->base;
  if (!*percent)
    asked.assumed.push_back(fmt::format("{:.0f} % of thread is aimed at (common practice)", kUsualPercent));
  return asked;
}

// A drill that can be used: one of the shop by its own name and measured size, or a standard one.
struct Choice {
  std::string name;
  TapDrillPercent found;
  std::string note;
};

std::string really(const TapDrillPercent& found) {
  if (!found.really) return "";
  return fmt::format("as drills cut in steel or iron: {:.0f} %", *found.really);
}

void put_nearest_first(std::vector<Choice>& choices, double percent) {
  std::stable_sort(choices.begin(), choices.end(), [&](const Choice& a, const Choice& b) {
    return std::abs(a.found.percent - percent) < std::abs(b.found.percent - percent);
  });
}

base::Result<std::vector<Choice>> shop_drills(const shop::Shop& shop, const ThreadShape& thread) {
  std::vector<Choice> choices;
  for (const shop::Tool& tool : shop.tools) {
    if (tool.kind != shop::ToolKind::kTwistDrill || !tool.diameter) continue;
    const Drill drill{DrillSeries::kFraction, tool.name, tool.diameter->diameter(), kShopText};
    const auto found = handbook::percent_of_drill(thread, drill);
    if (!found) return tl::unexpected(found.error());
    if (found->percent >= kOffered.least && found->percent <= kOffered.most)
      choices.push_back({tool.name, *found, really(*found)});
  }
  return choices;
}

// The drill of a chart on the wall beside those that are there, said to be that.
base::Result<void> add_chart_drill(const Asked& asked, std::span<const DrillSeries> series,
                                   std::vector<Choice>& choices) {
  const auto hole = handbook::hole_for_percent(asked.thread, kChartPercent, series);
  if (!hole) return tl::unexpected(hole.error());
  const TapDrillPercent* nearest = nullptr;
  for (const TapDrillPercent& one : hole->nearest) {
    const bool own = (one.drill.series == DrillSeries::kMetric) == (asked.system == UnitSystem::kMetric);
    if (own && (nearest == nullptr ||
                std::abs(one.percent - kChartPercent) < std::abs(nearest->percent - kChartPercent)))
      nearest = &one;
  }
  if (nearest == nullptr) return {};
  const auto there = std::find_if(choices.begin(), choices.end(),
                                  [&](const Choice& one) { return one.name == nearest->drill.name; });
  const std::string note = fmt::format("what charts print, about {:.0f} %", kChartPercent);
  if (there != choices.end())
    there->note += (there->note.empty() ? "" : "; ") + note;
  else
    choices.push_back({std::string(nearest->drill.name), *nearest,
                       really(*nearest).empty() ? note : really(*nearest) + "; " + note});
  return {};
}

base::Result<std::vector<Choice>> standard_drills(const Asked& asked) {
  constexpr std::array kAll{DrillSeries::kNumber, DrillSeries::kLetter, DrillSeries::kFraction,
                            DrillSeries::kMetric};
  const auto hole = handbook::hole_for_percent(asked.thread, asked.percent, kAll);
  if (!hole) return tl::unexpected(hole.error());
  std::vector<Choice> choices;
  for (const TapDrillPercent& one : hole->nearest) {
    if (std::abs(one.percent - asked.percent) <= kNearEnough)
      choices.push_back({std::string(one.drill.name), one, really(one)});
  }
  put_nearest_first(choices, asked.percent);
  std::stable_partition(choices.begin(), choices.end(), [&](const Choice& one) {
    return (one.found.drill.series == DrillSeries::kMetric) == (asked.system == UnitSystem::kMetric);
  });
  if (asked.is_percent_assumed) {
    if (auto added = add_chart_drill(asked, kAll, choices); !added) return tl::unexpected(added.error());
  }
  return choices;
}

Table drills_table(std::string heading, const std::vector<Choice>& choices, const Asked& asked,
                   const handbook::Source& source) {
  TableWriter writer(std::move(heading), asked.system);
  for (const Choice& one : choices)
    writer.percent(one.name, one.found.percent, source,
                   fmt::format("{}{}{}", both_ways(across(one.found.drill.diameter), asked.system),
                               one.note.empty() ? "" : "; ", one.note));
  return writer.take();
}

// Whether a tap of the shop cuts that thread: the same diameter, pitch and form.
bool cuts(const shop::Tool& tool, const ThreadShape& thread) {
  if (tool.kind != shop::ToolKind::kTap) return false;
  const auto read = handbook::read_thread(tool.thread);
  if (!read) return false;
  const ThreadShape own = handbook::shape_of(*read);
  constexpr double kSame_mm = 1e-6;
  return own.form == thread.form && own.left_hand == thread.left_hand &&
         std::abs(own.major.base() - thread.major.base()) < kSame_mm &&
         std::abs(own.pitch.base() - thread.pitch.base()) < kSame_mm;
}

Table taps_table(const shop::Shop& shop, const Asked& asked) {
  TableWriter writer("taps you have", asked.system);
  bool any = false;
  for (const shop::Tool& tool : shop.tools) {
    if (!cuts(tool, asked.thread)) continue;
    writer.words(tool.name, tool.thread, kShopText);
    any = true;
  }
  if (!any) writer.words(asked.thread.name, "none in the shop text", kShopText);
  return writer.take();
}

base::Result<handbook::TapChamfer> chamfer_of(const Question& question) {
  const std::string* word = find_entry(question, "tap");
  if (word == nullptr || *word == "plug") return handbook::TapChamfer::kPlug;
  if (*word == "taper") return handbook::TapChamfer::kTaper;
  if (*word == "bottoming") return handbook::TapChamfer::kBottoming;
  return base::fail(base::Code::kValueNotAccepted, *word, "taper, plug or bottoming", "--tap");
}

base::Result<Table> blind_table(const Question& question, const Asked& asked, const Choice& choice) {
  const auto full = size_entry(question, "blind");
  if (!full) return tl::unexpected(full.error());
  const auto chamfer = chamfer_of(question);
  if (!chamfer) return tl::unexpected(chamfer.error());
  const auto hole = handbook::blind_hole(asked.thread, full->length(), *chamfer, choice.found.drill.diameter);
  if (!hole) return tl::unexpected(hole.error());
  TableWriter writer(fmt::format("blind hole, {} tap", name_of(*chamfer)), asked.system);
  writer.length("full thread", hole->full_thread, kTapDepth);
  writer.length("drill at full diameter", hole->full_diameter, kTapDepth,
                "a tap with a pointed end wants more");
  writer.length("deepest, drill point", hole->deepest, handbook::kPointLength, "must not break through");
  writer.length("lead of the tap, longest", hole->lead, hole->tap.source);
  return writer.take();
}

// The hole itself; the drill asked about; the hole for a form tap, where the thread can be formed.
base::Result<void> add_holes(const Question& question, const Asked& asked, Answer& answer) {
  const auto hole = handbook::hole_for_percent(asked.thread, asked.percent, {});
  if (!hole) return tl::unexpected(hole.error());
  TableWriter writer("holes", asked.system);
  writer.length(fmt::format("for {:g} % of thread", asked.percent), hole->hole, hole->source);
  if (const auto form = handbook::form_tap_hole(asked.thread, handbook::kUsualFormTapPercent, {}))
    writer.length(fmt::format("for a form tap, {:g} %", handbook::kUsualFormTapPercent), form->hole,
                  form->source, "it moves the metal: for metals that give");
  answer.tables.push_back(writer.take());
  const std::string* name = find_entry(question, "drill");
  if (name == nullptr) return {};
  const auto drill = handbook::find_drill(*name);
  if (!drill) return tl::unexpected(drill.error());
  const auto gives = handbook::percent_of_drill(asked.thread, *drill);
  if (!gives) return tl::unexpected(gives.error());
  answer.tables.push_back(drills_table(
      "the drill asked about", {{std::string(drill->name), *gives, really(*gives)}}, asked, hole->source));
  return {};
}

// The drill to take, from the shop where it has one.
base::Result<std::optional<Choice>> add_drills(const Question& question, const Asked& asked, Answer& answer) {
  std::optional<Choice> best;
  auto standard = standard_drills(asked);
  if (!standard) return tl::unexpected(standard.error());
  if (!standard->empty()) best = standard->front();
  const handbook::Source source = handbook::hole_for_percent(asked.thread, asked.percent, {})->source;
  if (question.shop != nullptr) {
    auto own = shop_drills(*question.shop, asked.thread);
    if (!own) return tl::unexpected(own.error());
    put_nearest_first(*own, asked.percent);
    if (own->empty())
      answer.assumed.push_back(
          fmt::format("none of your drills leaves {:.0f} to {:.0f} %: a standard one is named",
                      kOffered.least, kOffered.most));
    else {
      best = own->front();
      answer.tables.push_back(
          drills_table("drills you have, and the thread they leave", *own, asked, source));
    }
    answer.tables.push_back(taps_table(*question.shop, asked));
  }
  answer.tables.push_back(
      drills_table("standard drills, and the thread they leave", *standard, asked, source));
  return best;
}

}  // namespace

std::vector<Entry> tap_entries() {
  return {{"percent", "PERCENT", "of thread that is aimed at; 65 where left out"},
          {"drill", "DRILL", "a drill: the thread it leaves"},
          {"blind", "LENGTH", "of full thread in a blind hole: how deep to drill"},
          {"tap", "TAP", "taper, plug or bottoming; plug where left out"}};
}

base::Result<Answer> tap(const Question& question) {
  const auto asked = asked_of(question);
  if (!asked) return tl::unexpected(asked.error());
  Answer answer;
  answer.asked = fmt::format("hole to tap {}, {:g} % of thread", asked->thread.name, asked->percent);
  answer.assumed = asked->assumed;
  const auto best = add_drills(question, *asked, answer);
  if (!best) return tl::unexpected(best.error());
  if (!*best)
    return base::fail(base::Code::kNotTabled, asked->thread.name,
                      "a thread whose hole a standard drill cuts: bore it", "a drill for this thread");
  const Choice& choice = **best;
  answer.says = fmt::format("{}, {:.0f} %", choice.name, choice.found.percent);
  if (auto holes = add_holes(question, *asked, answer); !holes) return tl::unexpected(holes.error());
  if (find_entry(question, "blind") != nullptr) {
    auto blind = blind_table(question, *asked, choice);
    if (!blind) return tl::unexpected(blind.error());
    answer.tables.push_back(std::move(*blind));
  }
  if (choice.found.percent > kBreaksTaps)
    answer.cautions.push_back(fmt::format("Over {:.0f} % breaks taps (common practice).", kBreaksTaps));
  return answer;
}

}  // namespace sparewright::answers
