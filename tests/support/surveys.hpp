// Readings as people type them, for tests.
#pragma once

#include <initializer_list>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/messages.hpp"
#include "core/quantity/typed.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::tests {

// A length in inches unless a unit is written.
inline quantity::Typed typed(std::string_view text, quantity::Kind kind = quantity::Kind::kLength) {
  auto number = quantity::read_number(text, kind, quantity::UnitSystem::kInch);
  if (!number) throw std::runtime_error(base::report(number.error()));
  return std::move(*number);
}

inline std::vector<quantity::Typed> typed_all(std::initializer_list<std::string_view> texts) {
  std::vector<quantity::Typed> all;
  for (const std::string_view text : texts)
    all.push_back(typed(text));
  return all;
}

inline survey::Instrument instrument(std::string name, std::string_view good_to, std::string_view reads) {
  survey::Instrument out;
  out.name = std::move(name);
  out.kind = "instrument of a test";
  out.good_to = typed(good_to);
  out.reads = typed(reads);
  return out;
}

inline survey::Reading reading(std::string name, survey::Way way, std::vector<std::string> of,
                               std::string with, std::initializer_list<std::string_view> repeats) {
  survey::Reading out;
  out.name = std::move(name);
  out.way = way;
  out.of = std::move(of);
  out.instrument = std::move(with);
  out.repeats = typed_all(repeats);
  return out;
}

inline survey::Reading expression(std::string name, std::string is, std::string with,
                                  std::initializer_list<std::string_view> repeats) {
  survey::Reading out = reading(std::move(name), survey::Way::kExpression, {}, std::move(with), repeats);
  out.is = std::move(is);
  return out;
}

inline survey::Reading in_condition(survey::Reading reading, survey::Condition condition) {
  reading.condition = condition;
  return reading;
}

// A lever of an invented machine: two pins and the distance between them, the pins by micrometer, the rest by
// caliper.
inline survey::Survey lever() {
  using quantity::Kind;
  using survey::Way;
  survey::Survey survey;
  survey.instruments = {instrument("micrometer 0-1", "0.0001", "0.0001"),
                        instrument("caliper 8", "0.001", "0.001")};
  survey.instruments[0].zero_found = typed("0.0000");
  survey.dimensions = {{"pivot_pin", Kind::kDiameter}, {"stud", Kind::kDiameter}, {"centres", Kind::kLength}};
  survey.readings = {
      reading("pivot pin", Way::kOutside, {"pivot_pin"}, "micrometer 0-1", {"0.7498", "0.7497", "0.7498"}),
      reading("stud", Way::kOutside, {"stud"}, "caliper 8", {"0.4985"}),
      reading("over both", Way::kOverPins, {"centres", "pivot_pin", "stud"}, "caliper 8", {"6.628", "6.627"}),
      reading("between both", Way::kBetweenPins, {"centres", "pivot_pin", "stud"}, "caliper 8", {"5.3775"})};
  return survey;
}

}  // namespace sparewright::tests
