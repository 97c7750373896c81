#include "core/survey/repeats.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include <fmt/format.h>

#include "core/quantity/display.hpp"
#include "core/quantity/typed_system.hpp"
#include "core/survey/instrument_error.hpp"
#include "core/survey/slips.hpp"

namespace sparewright::survey {
namespace {

constexpr std::array kCounts{"one", "two", "three"};  // "a few" turns: a choice made here

// "two turns of the thimble (0.025 in each)"
std::string turns_words(const Turn& turn, std::size_t count) {
  std::string of = turn.of;
  if (count > 1) of.insert(of.find(' '), "s");
  return fmt::format("{} {} ({}{})", kCounts.at(count - 1), of, turn.size, count > 1 ? " each" : "");
}

// "; agrees to 0.0005 in with one turn of the thimble (0.025 in)"; empty where no whole turns come to it. explained: what
// the instrument explains; a turn that this covers half of, either way, would be met by chance.
std::string agrees_with_turns(const Reading& reading, const Instrument& instrument, double apart,
                              double explained, quantity::UnitSystem system) {
  const quantity::Typed& one = reading.repeats.front();
  if (one.kind == quantity::Kind::kAngle) return "";
  const auto turn = instrument.turn ? std::optional(instrument.turn->base) : std::nullopt;
  const bool is_metric = quantity::system_of(one) == quantity::UnitSystem::kMetric;
  std::string words;
  double least = explained;
  for (const Turn& each : usual_turns(instrument.kind, turn, is_metric)) {
    const double count = std::round(apart / each.by);
    const double rest = std::abs(apart - count * each.by);
    const bool is_few = count >= 1.0 && count <= static_cast<double>(kCounts.size());
    if (!is_few || rest >= least || explained >= each.by / 4.0) continue;
    least = rest;
    words = fmt::format("; agrees to {} with {}",
                        quantity::shown(rest, one.kind, system, quantity::usual_places(one.kind, system)),
                        turns_words(each, static_cast<std::size_t>(count)));
  }
  return words;
}

}  // namespace

std::optional<ledger::Query> repeats_apart(const Reading& reading, const Instrument& instrument,
                                           quantity::UnitSystem system) {
  if (reading.condition != Condition::kSound) return std::nullopt;
  const auto [least, most] =
      std::minmax_element(reading.repeats.begin(), reading.repeats.end(),
                          [](const auto& a, const auto& b) { return a.base < b.base; });
  // Each of the two out by twice the permissible error, and a step of the scale. A choice made here, without a source: what
  // is within the error has to be silent, and a digit misread lies far outside it.
  const double explained =
      4.0 * error_limit(instrument, jaws_of(reading), least->base).half_width + instrument.reads.base;
  const double apart = most->base - least->base;
  if (apart <= explained) return std::nullopt;
  ledger::Query query;
  query.id = "repeats apart/" + reading.name;
  query.about = "reading/" + reading.name;
  query.says =
      fmt::format("misread? '{}' was read {} and {}, {} apart", reading.name, least->typed, most->typed,
                  quantity::shown(apart, least->kind, system, quantity::usual_places(least->kind, system)));
  query.says += agrees_with_turns(reading, instrument, apart, explained, system);
  query.happens = "Their mean is no size of the part.";
  query.todo = "Measure it again.";
  query.serious = true;
  return query;
}

}  // namespace sparewright::survey
