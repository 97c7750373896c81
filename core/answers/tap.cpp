#include <array>
#include <cmath>

#include <fmt/format.h>

#include "core/answers/threads.hpp"
#include "core/handbook/tap_holes.hpp"
#include "core/handbook/thread_designation.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using handbook::DrillSeries;
using handbook::TapDrillPercent;
using quantity::Kind;
using quantity::UnitSystem;

constexpr std::array kAllSeries{DrillSeries::kNumber, DrillSeries::kLetter, DrillSeries::kFraction,
                                DrillSeries::kMetric};
constexpr double kUsualPercent = 65.0;

UnitSystem system_of(const handbook::ThreadShape& shape) {
  return shape.form == handbook::ThreadForm::kMetric ? UnitSystem::kMetric : UnitSystem::kInch;
}

std::string really_words(const TapDrillPercent& one) {
  std::string words = fmt::format("{:.0f} % of thread", one.percent);
  if (one.really_least && one.really_most)
    words += fmt::format("; really {:.0f} to {:.0f} %, as drills cut oversize", *one.really_least,
                         *one.really_most);
  return words;
}

void add_drill(TableWriter& writer, const TapDrillPercent& one) {
  writer.length(std::string(one.drill.name), one.drill.diameter, one.drill.source, really_words(one));
}

const TapDrillPercent* nearest_to(double percent, const std::vector<TapDrillPercent>& all) {
  const TapDrillPercent* best = nullptr;
  for (const TapDrillPercent& one : all) {
    if (best == nullptr || std::abs(one.percent - percent) < std::abs(best->percent - percent)) best = &one;
  }
  return best;
}

base::Result<Table> blind_table(const Question& question, const handbook::ThreadShape& shape,
                                const handbook::Drill& drill) {
  const auto wanted = size_entry(question, "full-thread");
  if (!wanted) return tl::unexpected(wanted.error());
  TableWriter writer("blind hole", system_of(shape));
  for (const auto chamfer :
       {handbook::TapChamfer::kTaper, handbook::TapChamfer::kPlug, handbook::TapChamfer::kBottoming}) {
    const auto hole = handbook::blind_hole(shape, wanted->length(), chamfer, drill.diameter);
    if (!hole) return tl::unexpected(hole.error());
    writer.length(fmt::format("{} tap: depth at full diameter", name_of(chamfer)), hole->full_diameter,
                  hole->tap.source,
                  fmt::format("the drill's point ends {} deep", both_ways(hole->deepest, system_of(shape))));
  }
  return writer.take();
}

}  // namespace

base::Result<Answer> tap(const Question& question) {
  const auto read = handbook::read_thread(question.words);
  if (!read) return tl::unexpected(read.error());
  const handbook::ThreadShape shape = shape_of(*read);
  const auto percent = maybe_number(question, "percent", Kind::kNumber);
  if (!percent) return tl::unexpected(percent.error());
  const double wanted = *percent ? (*percent)->base : kUsualPercent;
  const auto hole = handbook::hole_for_percent(shape, wanted, kAllSeries);
  if (!hole) return tl::unexpected(hole.error());

  Answer answer;
  answer.asked = fmt::format("{} at {:g} % of thread", to_string(*read), wanted);
  answer.assumed = assumed_of(*read);
  if (!*percent)
    answer.assumed.emplace_back(
        "no percentage was asked for: 65 % is taken, which holds what the screw does in steel");
  TableWriter writer("hole and drills", system_of(shape));
  writer.length("the hole itself", hole->hole, hole->source);
  for (const TapDrillPercent& one : hole->nearest)
    add_drill(writer, one);
  answer.tables.push_back(writer.take());
  const TapDrillPercent* best = nearest_to(wanted, hole->nearest);
  if (best != nullptr) answer.says = fmt::format("drill {}, {:.0f} %", best->drill.name, best->percent);

  if (find_entry(question, "drill") != nullptr) {
    const auto drill = handbook::find_drill(*find_entry(question, "drill"));
    if (!drill) return tl::unexpected(drill.error());
    const auto gives = handbook::percent_of_drill(shape, *drill);
    if (!gives) return tl::unexpected(gives.error());
    TableWriter asked("the drill asked about", system_of(shape));
    add_drill(asked, *gives);
    answer.tables.push_back(asked.take());
    answer.says = fmt::format("drill {} gives {:.0f} %", drill->name, gives->percent);
  }
  if (const auto form = handbook::form_tap_hole(shape, handbook::kUsualFormTapPercent, kAllSeries)) {
    TableWriter forming("form tap, which moves the metal", system_of(shape));
    forming.length("hole", form->hole, form->source);
    if (const auto* drill = nearest_to(handbook::kUsualFormTapPercent, form->nearest))
      forming.length(std::string(drill->drill.name), drill->drill.diameter, drill->drill.source);
    answer.tables.push_back(forming.take());
  }
  if (find_entry(question, "full-thread") != nullptr && best != nullptr) {
    auto blind = blind_table(question, shape, best->drill);
    if (!blind) return tl::unexpected(blind.error());
    answer.tables.push_back(std::move(*blind));
  }
  return answer;
}

}  // namespace sparewright::answers
