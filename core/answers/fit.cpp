#include <fmt/format.h>

#include "core/answers/sizes.hpp"
#include "core/handbook/fits.hpp"
#include "core/handbook/lookup.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using handbook::Fit;
using handbook::FitStandard;
using quantity::Length;
using quantity::UnitSystem;

UnitSystem system_of_fit(const Fit& fit) {
  return fit.standard == FitStandard::kAnsiB41 ? UnitSystem::kInch : UnitSystem::kMetric;
}

// "0.007 mm (0.0003 in) clear", "... tight": a clearance with its sign in words.
std::string clear_words(Length clearance, UnitSystem system) {
  const bool tight = clearance.base() < 0.0;
  return fmt::format("{} {}", both_ways(tight ? -clearance : clearance, system), tight ? "tight" : "clear");
}

Table clearance_table(const Fit& fit, const handbook::Source& source, UnitSystem system) {
  TableWriter writer("together", system);
  const auto add = [&](Length clearance, std::string_view most) {
    const bool tight = clearance.base() < 0.0;
    writer.length(fmt::format("{} {}", most, tight ? "interference" : "clearance"),
                  tight ? -clearance : clearance, source);
  };
  if (fit.least_clearance().base() < 0.0 && fit.most_clearance().base() < 0.0) {
    add(fit.most_clearance(), "least");
    add(fit.least_clearance(), "most");
  } else {
    add(fit.least_clearance(), fit.least_clearance().base() < 0.0 ? "most" : "least");
    add(fit.most_clearance(), "most");
  }
  return writer.take();
}

base::Result<Answer> one_side(const Question& question, const base::Failure& as_a_fit) {
  const auto zone = handbook::read_zone_at_size(question.words);
  if (!zone) return tl::unexpected(as_a_fit);
  TableWriter writer(zone->zone.side == handbook::FitSide::kHole ? "hole" : "shaft", UnitSystem::kMetric);
  const handbook::Source& source = zone->sources.front();
  writer.limits("limits", zone->limits.lower, zone->limits.upper, source);
  writer.length("tolerance", zone->limits.width(), zone->sources.back());
  Answer answer;
  answer.asked =
      fmt::format("{} {}", both_ways(across(zone->nominal), UnitSystem::kMetric), to_string(zone->zone));
  if (!zone->assumed.empty()) answer.assumed.push_back(zone->assumed);
  answer.tables.push_back(writer.take());
  return answer;
}

}  // namespace

base::Result<Answer> fit(const Question& question) {
  const auto fit = handbook::read_fit(question.words);
  if (!fit) return one_side(question, fit.error());
  const UnitSystem system = system_of_fit(*fit);
  const handbook::Source& source = fit->sources.front();
  Answer answer;
  answer.asked = fmt::format("{} {}", both_ways(across(fit->nominal), system), fit->name);
  answer.says = fmt::format("{}, {} to {}", name_of(fit->kind()), clear_words(fit->least_clearance(), system),
                            clear_words(fit->most_clearance(), system));
  if (!fit->assumed.empty()) answer.assumed.push_back(fit->assumed);
  TableWriter hole("hole", system);
  hole.limits("limits", fit->hole.lower, fit->hole.upper, source);
  TableWriter shaft("shaft", system);
  shaft.limits("limits", fit->shaft.lower, fit->shaft.upper, fit->sources.back());
  answer.tables = {hole.take(), shaft.take(), clearance_table(*fit, source, system)};
  return answer;
}

}  // namespace sparewright::answers
