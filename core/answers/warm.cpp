// Warm work and heated hubs: what heat does to a size.
#include <optional>

#include <fmt/format.h>

#include "core/answers/entry_reader.hpp"
#include "core/answers/quick.hpp"
#include "core/handbook/lame_formulas.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;
namespace unit = quantity::unit;

constexpr double kReferenceKelvin = 293.15;  // ISO 1: sizes hold at 20 degC
constexpr handbook::Source kAtTwenty{"sizes hold at 20 degC, ISO 1", "", handbook::Basis::kFromMemory};
// So much more room for a hub to slide on before it grips, for each unit of diameter.
constexpr double kSlipPerDiameter = 0.001;
constexpr handbook::Source kUsualSlip{"0.001 for each 1 of diameter to slide on", "",
                                      handbook::Basis::kCommonPractice};

// Expansion of a material for each kelvin; keeps a failure where it is not known.
double expansion_of(EntryReader& read, const handbook::FoundMaterial& found, std::string_view entry) {
  if (read.failed()) return 0.0;
  if (!found.material.expansion_per_million) {
    read.refuse(entry, "a material whose expansion is known");
    return 0.0;
  }
  return *found.material.expansion_per_million * 1e-6;
}

std::string per_million_words(double expansion, UnitSystem system) {
  if (system == UnitSystem::kInch)
    return fmt::format("{} millionths for 1 degF", quantity::fixed(expansion * 1e6 * 5.0 / 9.0, 1));
  return fmt::format("{} millionths for 1 degC", quantity::fixed(expansion * 1e6, 1));
}

void assume(Answer& answer, const handbook::FoundMaterial& found, std::string_view what, bool given) {
  if (!given) answer.assumed.push_back(fmt::format("{} of {}", what, to_string(found.material)));
  if (!found.assumed.empty()) answer.assumed.push_back(found.assumed);
}

}  // namespace

base::Result<Answer> warm(const Question& question) {
  EntryReader read(question);
  const Length size = read.size("size");
  const double at = read.number("at", Kind::kTemperature);
  const double gauge_at = read.maybe_number("gauge-at", Kind::kTemperature).value_or(kReferenceKelvin);
  const auto work = read.material("material", "steel 1018");
  const auto gauge = read.material("gauge", "steel 1018");
  const double work_expands = expansion_of(read, work, "material");
  const double gauge_expands = expansion_of(read, gauge, "gauge");
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const Length grown = size * (work_expands * (at - kReferenceKelvin));
  const Length gauge_grown = size * (gauge_expands * (gauge_at - kReferenceKelvin));
  const Length large = grown - gauge_grown;
  Answer answer;
  answer.asked =
      fmt::format("{} of {}, measured away from 20 degC", both_ways(size, system), to_string(work.material));
  answer.says = magnitude(large) < Length::of(0.5, unit::micrometre)
                    ? "no correction needed"
                    : fmt::format("reads {}", off_words(large, "large", "small", system));
  assume(answer, work, "work", read.has("material"));
  assume(answer, gauge, "gauge", read.has("gauge"));
  if (!read.has("gauge-at")) answer.assumed.emplace_back("the gauge stands at 20 degC");
  TableWriter writer("at 20 degC", system);
  writer.length("it reads large by", large, handbook::kThermalExpansion);
  writer.length("size at 20 degC", size - large, kAtTwenty);
  TableWriter parts("what grew", system);
  parts.length("the work", grown, handbook::kThermalExpansion, per_million_words(work_expands, system));
  parts.length("the gauge", gauge_grown, handbook::kThermalExpansion,
               per_million_words(gauge_expands, system));
  parts.words("the work expands", per_million_words(work_expands, system),
              source_of(work.material, handbook::MaterialProperty::kExpansion));
  answer.tables = {writer.take(), parts.take()};
  answer.cautions.emplace_back(
      "Work out of the cut is not of one temperature: let it lie on the plate beside the gauge before the "
      "last cuts.");
  return answer;
}

base::Result<Answer> heat(const Question& question) {
  EntryReader read(question);
  const Length size = read.size("size");
  const Length tight = read.size("interference");
  const auto found = read.material("material", "steel 1018");
  const double expands = expansion_of(read, found, "material");
  const std::optional<Length> given = read.maybe_size("slip");
  if (!read.failed())
    read.refuse_unless(tight < size / 10.0, "interference", "less than a tenth of the size");
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const Length slip = given.value_or(size * kSlipPerDiameter);
  const double to_touch = tight / (size * expands);
  const double to_slide = (tight + slip) / (size * expands);
  const Kind kind = Kind::kTemperatureDifference;
  Answer answer;
  answer.asked =
      fmt::format("heat a hub of {} that is {} tight", both_ways(size, system), both_ways(tight, system));
  answer.says = fmt::format("{} over the shaft, to slide on", quantity::shown(to_slide, kind, system, 0));
  assume(answer, found, "hub", read.has("material"));
  if (!given) answer.assumed.push_back(fmt::format("{} of room to slide on", both_ways(slip, system)));
  TableWriter writer("hotter than the shaft", system);
  writer.number("until it just goes", to_touch, kind, 0, handbook::kThermalExpansion);
  writer.number("with room to slide on", to_slide, kind, 0, given ? handbook::kThermalExpansion : kUsualSlip);
  TableWriter gauge("to know when", system);
  gauge.length("a gauge over the shaft by", slip, given ? handbook::kThermalExpansion : kUsualSlip,
               "set it before, try it in the hot bore: surer than a temperature");
  gauge.words("the hub expands", per_million_words(expands, system),
              source_of(found.material, handbook::MaterialProperty::kExpansion));
  answer.tables = {writer.take(), gauge.take()};
  answer.cautions = {
      "Key fitted, its top clearance measured and the stop in place before heating: it grips within "
      "seconds, and where it stands it stays.",
      "Heat evenly; over about 400 degF (200 degC) hardened parts begin to soften and aluminium loses its "
      "temper (common practice).",
      "Burns: gloves, tongs, nothing that burns under it. No flame near oil, magnesium or a closed hollow."};
  return answer;
}

}  // namespace sparewright::answers
