#include <array>
#include <vector>

#include <fmt/format.h>

#include "core/answers/sizes.hpp"
#include "core/handbook/drilled_holes.hpp"
#include "core/handbook/drills.hpp"
#include "core/handbook/thread_formulas.hpp"
#include "core/handbook/unified_threads.hpp"

namespace sparewright::answers {
namespace {

using handbook::Drill;
using handbook::DrillSeries;
using quantity::UnitSystem;

constexpr std::array kSeries{DrillSeries::kNumber, DrillSeries::kLetter, DrillSeries::kFraction,
                             DrillSeries::kMetric};
constexpr std::array<std::string_view, 4> kSeriesNames{"number", "letter", "fraction", "metric"};

// The percentages a tap lives with (common practice).
constexpr double kLeastPercent = 60.0;
constexpr double kMostPercent = 80.0;

Table size_table(const Drill& drill, UnitSystem system) {
  TableWriter writer("size", system);
  writer.length("diameter", drill.diameter, drill.source);
  if (const auto cuts = handbook::drill_oversize(drill.diameter))
    writer.range("the hole comes out", across(drill.diameter) + cuts->least,
                 across(drill.diameter) + cuts->most, cuts->source, "in steel or cast iron");
  return writer.take();
}

Table neighbours(const Drill& drill, UnitSystem system) {
  TableWriter writer("nearest of each series", system);
  for (std::size_t i = 0; i < kSeries.size(); ++i) {
    const handbook::DrillsAround around = handbook::drills_around(drill.diameter, kSeries[i]);
    for (const auto& one : {around.at_or_below, around.at_or_above}) {
      if (!one || one->name == drill.name) continue;
      if (around.at_or_below == around.at_or_above && &one == &around.at_or_above) continue;
      const double off_mm = (one->diameter - drill.diameter).in(quantity::unit::millimetre);
      writer.length(std::string(one->name), one->diameter, one->source,
                    off_mm == 0.0 ? "the same"
                                  : fmt::format("{}, {}", kSeriesNames[i], off_mm < 0.0 ? "under" : "over"));
    }
  }
  return writer.take();
}

Table taps(const Drill& drill, UnitSystem system) {
  TableWriter writer("standard threads it drills for, and the thread it leaves", system);
  for (const handbook::StandardThread& standard : handbook::standard_unified_threads()) {
    const auto thread = handbook::read_unified_thread(
        fmt::format("{}-{:g} {}", standard.size, standard.threads_per_inch, name_of(standard.series)));
    if (!thread) continue;
    const double percent =
        handbook::percent_of_thread(thread->major.base(), drill.diameter.base(), thread->pitch().base());
    if (percent >= kLeastPercent && percent <= kMostPercent)
      writer.percent(to_string(*thread), percent, handbook::kPercentOfThread);
  }
  return writer.take();
}

}  // namespace

base::Result<Answer> drill(const Question& question) {
  const auto found = handbook::find_drill(question.words);
  if (!found) return tl::unexpected(found.error());
  const UnitSystem system = found->series == DrillSeries::kMetric ? UnitSystem::kMetric : UnitSystem::kInch;
  Answer answer;
  answer.asked = fmt::format("drill {}", found->name);
  answer.says = both_ways(across(found->diameter), system);
  answer.tables = {size_table(*found, system), neighbours(*found, system)};
  if (Table threads = taps(*found, system); !threads.rows.empty())
    answer.tables.push_back(std::move(threads));
  return answer;
}

}  // namespace sparewright::answers
