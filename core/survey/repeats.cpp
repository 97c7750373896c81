#include "core/survey/repeats.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/quantity/display.hpp"
#include "core/survey/instrument_error.hpp"

namespace sparewright::survey {

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
  query.happens = "Their mean is no size of the part.";
  query.todo = "Measure it again.";
  query.serious = true;
  return query;
}

}  // namespace sparewright::survey
