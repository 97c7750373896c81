#include "core/job/instrument_text.hpp"

#include <string>

#include <fmt/format.h>

#include "core/handbook/instrument_errors.hpp"
#include "core/handbook/materials.hpp"
#include "core/job/vocabulary.hpp"
#include "core/quantity/display.hpp"
#include "core/quantity/typed_system.hpp"

namespace sparewright::job {
namespace {

using quantity::Kind;
using quantity::Length;
using quantity::Typed;
using quantity::UnitSystem;
using text::TableReader;

// How far a tabled expansion may be off, for each kelvin, either way: JCGM 100:2008, H.1.3 takes as much for the difference of
// two steels. A choice made here: the tables do not say.
constexpr double kExpansionWithin = 1e-6;
constexpr const char* kUsualScale = "steel 1018";

survey::Expansion expansion_of(const handbook::Material& material) {
  survey::Expansion out;
  out.material = to_string(material);
  out.per_kelvin = material.expansion_per_million.value_or(0.0) * 1e-6;
  out.within_per_kelvin = kExpansionWithin;
  out.source = cite(source_of(material, handbook::MaterialProperty::kExpansion));
  return out;
}

// An error of a table as if it had been typed, in the unit of the instrument.
Typed typed_error(Length error, UnitSystem system) {
  Typed out;
  out.base = error.base();
  out.kind = Kind::kLength;
  out.unit = system == UnitSystem::kInch ? static_cast<quantity::Unit>(quantity::unit::inch)
                                         : static_cast<quantity::Unit>(quantity::unit::millimetre);
  out.places = system == UnitSystem::kInch ? 5 : 4;
  out.typed = quantity::shown(out.base, Kind::kLength, system, out.places);
  out.unit_given = true;
  return out;
}

void add_row(survey::Instrument& instrument, const handbook::UsualError& row, UnitSystem system) {
  const auto add = [&](survey::Jaws jaws, Length error) {
    survey::AllowedError allowed;
    allowed.jaws = jaws;
    if (row.up_to) allowed.up_to = row.up_to->base();
    allowed.error = typed_error(error, system);
    allowed.source = cite(row.source);
    instrument.allowed.push_back(std::move(allowed));
  };
  add(survey::Jaws::kOutside, row.outside);
  add(survey::Jaws::kInside, row.inside);
  add(survey::Jaws::kDepth, row.depth);
}

// Which kind of thing it reads: common usage of the name.
Kind kind_of(const std::string& words) {
  const bool is_protractor =
      words.find("protractor") != std::string::npos || words.find("Protractor") != std::string::npos;
  return is_protractor ? Kind::kAngle : Kind::kLength;
}

void take_usual_angle(survey::Instrument& instrument) {
  survey::AllowedError allowed;
  allowed.error.base = handbook::kProtractorError.base();
  allowed.error.kind = Kind::kAngle;
  allowed.error.unit = quantity::unit::arc_minute;
  allowed.error.typed = "5 arcmin";
  allowed.error.unit_given = true;
  allowed.source = cite(handbook::kProtractorSource);
  instrument.good_to = allowed.error;
  instrument.allowed = {allowed};
}

void take_usual(const TableReader& in, survey::Instrument& instrument) {
  if (instrument.reads.base <= 0.0) return;  // told by what is asked of instruments
  if (instrument.reads.kind == Kind::kAngle) return take_usual_angle(instrument);
  const UnitSystem system = quantity::system_of(instrument.reads);
  handbook::AskedInstrument asked;
  asked.kind = instrument.kind;
  asked.reads = instrument.reads.length();
  asked.in_inches = system == UnitSystem::kInch;
  if (instrument.to) asked.range = instrument.to->length();
  const auto rows = handbook::usual_errors(asked);
  if (!rows) {
    in.problems().add(text::failure_at(
        in.node(), base::Code::kKeyMissing, "good_to",
        fmt::format("its error at most, either way: nothing is tabled for a {}", instrument.kind)));
    instrument.good_to = instrument.reads;
    return;
  }
  for (const handbook::UsualError& row : *rows)
    add_row(instrument, row, system);
  const survey::Jaws first = survey::faces_of(instrument).front();
  for (const survey::AllowedError& row : instrument.allowed) {
    if (row.jaws != first) continue;
    instrument.good_to = row.error;
    return;
  }
}

}  // namespace

std::optional<survey::Warmth> read_warmth(const TableReader& in) {
  const auto at = in.number("temperature", Kind::kTemperature);
  const auto within = in.number("temperature_within", Kind::kTemperatureDifference);
  const auto written = in.node().find("temperature");
  const auto written_within = in.node().find("temperature_within");
  if (written.has_value() != written_within.has_value()) {
    in.problems().add(text::failure_at(
        written ? *written : *written_within, base::Code::kKeyMissing,
        written ? "temperature_within" : "temperature",
        written ? "how far off it may be, either way: 2 degC" : "what it is: 24 degC, 75 degF"));
  }
  if (within && within->base < 0.0)
    in.problems().add(
        text::failure_at(*written_within, base::Code::kValueNotAccepted, within->typed, "0 or more"));
  if (!at || !within) return std::nullopt;
  return survey::Warmth{*at, *within};
}

std::optional<survey::Expansion> read_expansion(const TableReader& in, std::string_view key) {
  const auto words = in.text(key);
  if (!words) return std::nullopt;
  const auto found = handbook::find_material(*words);
  if (!found) {
    in.problems().add(text::located(found.error(), *in.node().find(key)));
    return std::nullopt;
  }
  if (!found->material.expansion_per_million) {
    in.problems().add(text::failure_at(*in.node().find(key), base::Code::kNotTabled, *words,
                                       "a material whose expansion the handbook has"));
    return std::nullopt;
  }
  return expansion_of(found->material);
}

survey::Instrument read_instrument(const TableReader& in, const std::optional<survey::Warmth>& shop) {
  survey::Instrument instrument;
  instrument.name = in.text("name").value_or("");
  instrument.kind = in.text("kind").value_or("");
  const Kind kind = kind_of(instrument.kind);
  instrument.reads = in.number("reads", kind).value_or(Typed{});
  instrument.zero_found = in.number("zero", kind);
  instrument.zero_checked = instrument.zero_found.has_value();
  instrument.turn = in.number("turn", Kind::kLength);
  instrument.zero_within = in.number("zero_within", kind);
  instrument.comes_back = in.number("repeats", kind);
  instrument.from = in.number("from", Kind::kLength);
  instrument.to = in.number("to", Kind::kLength);
  instrument.shows = in.word("shows", kShows).value_or(survey::Shows::kTheSize);
  for (const survey::Jaws jaws :
       in.values("jaws", [](const text::Node& node) { return text::read_word(node, kJaws); })) {
    instrument.jaw_pairs.push_back({jaws, std::nullopt, std::nullopt});
  }
  instrument.at = shop;
  instrument.expands = read_expansion(in, "material");
  if (shop && !in.node().find("material"))
    instrument.expands = expansion_of(handbook::find_material(kUsualScale)->material);
  if (const auto good_to = in.number("good_to", kind))
    instrument.good_to = *good_to;
  else if (!in.node().find("good_to"))
    take_usual(in, instrument);
  return instrument;
}

}  // namespace sparewright::job
