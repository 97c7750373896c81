#include "core/survey/at_temperature.hpp"

#include <numbers>
#include <utility>

#include <fmt/format.h>

#include "core/formula/dual.hpp"

namespace sparewright::survey {
namespace {

// The least that is known of each: what it is, and how far off it may be.
struct GoodTo {
  double value = 0.0;
  double within = 0.0;
};

GoodTo theta_of(const std::optional<Warmth>& warmth) {
  if (!warmth) return {};
  return {warmth->at.base - kReferenceKelvin, warmth->within.base};
}

GoodTo expansion_of(const std::optional<Expansion>& expands) {
  if (!expands) return {};
  return {expands->per_kelvin, expands->within_per_kelvin};
}

ledger::Share cause(const std::string& name, double slope, double within) {
  return {name, slope * within * std::numbers::inv_sqrt3};
}

}  // namespace

std::optional<AtTwenty> at_temperature(double value, const Reading& reading, const Instrument& instrument) {
  const std::optional<Warmth>& work_at = reading.work_at ? reading.work_at : instrument.at;
  const bool is_length = quantity::is_length_like(reading.repeats.front().kind);
  if (!reading.work || !work_at || !is_length) return std::nullopt;
  const GoodTo scale = expansion_of(instrument.expands);
  const GoodTo scale_at = theta_of(instrument.at);
  const GoodTo work = expansion_of(reading.work);
  const GoodTo at = theta_of(work_at);
  const auto y = formula::with_slopes([](auto shown, auto a, auto theta_a, auto b,
                                         auto theta_b) { return at_twenty(shown, a, theta_a, b, theta_b); },
                                      value, scale.value, scale_at.value, work.value, at.value);
  AtTwenty out;
  out.value = y.value;
  const std::string scale_name = instrument.expands ? instrument.expands->material : std::string("nothing");
  const std::string work_cause =
      reading.work_at ? "temperature/work at " + reading.work_at->at.typed : std::string("temperature/shop");
  out.shares = {cause("expansion/scale of " + scale_name, y.slopes[1], scale.within),
                cause("temperature/shop", y.slopes[2], scale_at.within),
                cause("expansion/" + reading.work->material, y.slopes[3], work.within),
                cause(work_cause, y.slopes[4], at.within)};
  out.words = fmt::format("; reduced to 20 degC from {}, {}", work_at->at.typed, reading.work->material);
  return out;
}

}  // namespace sparewright::survey
