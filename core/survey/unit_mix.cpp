#include "core/survey/unit_mix.hpp"

#include <algorithm>
#include <string>

#include <fmt/format.h>

#include "core/quantity/typed_system.hpp"

namespace sparewright::survey {

std::optional<ledger::Query> unit_asked(const Reading& reading, const Instrument& instrument) {
  if (!quantity::is_length_like(instrument.reads.kind)) return std::nullopt;
  const auto scale = quantity::system_of(instrument.reads);
  const auto bare =
      std::find_if(reading.repeats.begin(), reading.repeats.end(), [&](const quantity::Typed& repeat) {
        return !repeat.unit_given && quantity::is_length_like(repeat.kind) &&
               quantity::system_of(repeat) != scale;
      });
  if (bare == reading.repeats.end()) return std::nullopt;
  const bool is_metric = scale == quantity::UnitSystem::kMetric;
  ledger::Query query;
  query.id = "unit/" + reading.name;
  query.about = "reading/" + reading.name;
  query.says = fmt::format("{} or {}? '{}' was read {} with {}, which is graduated in {}",
                           is_metric ? "mm" : "in", is_metric ? "in" : "mm", reading.name, bare->typed,
                           instrument.name, is_metric ? "millimetres" : "inches");
  query.happens = fmt::format("It is taken as {}: in the other unit the part is 25.4 times out.",
                              is_metric ? "inches" : "millimetres");
  query.todo = "Write the unit behind the number.";
  query.serious = true;
  return query;
}

}  // namespace sparewright::survey
