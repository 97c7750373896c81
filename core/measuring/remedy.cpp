#include "core/measuring/remedy.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/route/printing.hpp"
#include "core/survey/corrected.hpp"
#include "core/survey/instrument_error.hpp"

namespace sparewright::measuring {
namespace {

constexpr std::string_view kReading = "reading/";
constexpr std::string_view kOneWith = "one with ";  // a reading still to be taken (survey/good_to.hpp)
constexpr std::string_view kInstrument = "instrument/";

struct Parts {
  std::string
      kind;  // "reading", "to be taken", "zero", "temperature", "expansion"; the last three where they stand alone
  std::string name;  // the reading, the instrument and jaws, what is warm
};

Parts parts_of(const std::string& of) {
  if (of.starts_with(kReading)) {
    const std::string name = of.substr(kReading.size());
    if (name.starts_with(kOneWith)) return {"to be taken", name.substr(kOneWith.size())};
    return {"reading", name};
  }
  if (of.starts_with(kInstrument)) {
    std::string name = of.substr(kInstrument.size());
    name = name.substr(0, name.rfind('/'));
    if (const auto slash = name.find('/'); slash != std::string::npos) name.replace(slash, 1, ", ");
    return {"zero", name};
  }
  const auto slash = of.find('/');
  return {of.substr(0, slash), slash == std::string::npos ? of : of.substr(slash + 1)};
}

std::string what_it_is(const Parts& parts) {
  if (parts.kind == "reading") return fmt::format("the reading '{}'", parts.name);
  if (parts.kind == "to be taken") return fmt::format("what is to be measured with {}", parts.name);
  if (parts.kind == "zero") return fmt::format("the zero of {}", parts.name);
  if (parts.kind == "temperature") return fmt::format("the temperature of the {}", parts.name);
  if (parts.kind == "expansion") return fmt::format("the expansion of {}", parts.name);
  return parts.name;
}

const survey::Reading* find_reading(const Subject& subject, const std::string& name) {
  const auto& readings = subject.survey.readings;
  const auto found = std::find_if(readings.begin(), readings.end(),
                                  [&](const auto& reading) { return reading.name == name; });
  return found == readings.end() ? nullptr : &*found;
}

const survey::Instrument* find_instrument(const Subject& subject, const std::string& name) {
  const auto& all = subject.survey.instruments;
  const auto found =
      std::find_if(all.begin(), all.end(), [&](const auto& each) { return each.name == name; });
  return found == all.end() ? nullptr : &*found;
}

// The instrument behind the doubt and the jaws it touches with.
struct Behind {
  const survey::Instrument* instrument = nullptr;
  survey::Jaws jaws = survey::Jaws::kOutside;
  double size = 0.0;
};

Behind behind(const Parts& parts, const Subject& subject) {
  if (const survey::Reading* reading = find_reading(subject, parts.name))
    return {find_instrument(subject, reading->instrument), survey::jaws_of(*reading),
            reading->repeats.front().base};
  const auto comma = parts.name.rfind(", ");
  if (comma == std::string::npos) return {};
  Behind out{find_instrument(subject, parts.name.substr(0, comma)), survey::Jaws::kOutside, 0.0};
  for (const survey::Jaws jaws : {survey::Jaws::kOutside, survey::Jaws::kInside, survey::Jaws::kDepth}) {
    if (parts.name.substr(comma + 2) == survey::name_of(jaws)) out.jaws = jaws;
  }
  return out;
}

// Down to two figures, so that it is never too much.
std::string good_to(double mm, const Subject& subject) {
  const auto system = subject.survey.system;
  const double unit = system == quantity::UnitSystem::kInch ? quantity::unit::inch.to_base(1.0) : 1.0;
  const double value = mm / unit;
  if (!(value > 0.0)) return "nothing at all";
  const int places = std::clamp(1 - static_cast<int>(std::floor(std::log10(value))), 0, 7);
  const double scale = std::pow(10.0, places);
  return quantity::shown(std::floor(value * scale) / scale * unit, quantity::Kind::kLength, system, places);
}

// The rest of the reading's causes stays: repeats make its scatter alone smaller.
std::string repeats(const Parts& parts, const survey::Doubt& doubt, const Subject& subject) {
  const survey::Reading* reading = find_reading(subject, parts.name);
  const double now = reading == nullptr ? 1.0 : static_cast<double>(reading->repeats.size());
  const double scatter = doubt.largest_now * doubt.largest_now;
  const double rest = doubt.now * doubt.now - scatter;
  const double left = *doubt.keep * *doubt.keep * doubt.now * doubt.now - rest;
  constexpr double kPatience = 20.0;  // a choice made here: nobody reads a place more often
  if (left <= 0.0 || now * scatter > kPatience * left) return "use an instrument that comes back better";
  return fmt::format("read it {:.0f} times in all", std::ceil(now * scatter / left));
}

std::string finer(const Parts& parts, double keep, const Subject& subject) {
  const Behind of = behind(parts, subject);
  if (of.instrument == nullptr) return "measure it with something finer";
  const double allowed = survey::error_limit(*of.instrument, of.jaws, of.size).half_width;
  const double own =
      std::hypot(allowed, of.instrument->reads.base / 2.0);  // its error and its steps, both rectangular
  return fmt::format(
      "measure it with an instrument whose error and step come to {} together, where {} has {}",
      good_to(own * keep, subject), of.instrument->name, good_to(own, subject));
}

std::string proved_zero(const Parts& parts, double keep, const Subject& subject) {
  const Behind of = behind(parts, subject);
  if (of.instrument == nullptr) return "prove its zero";
  const double within = survey::zero_error_of(*of.instrument, of.jaws).within;
  return fmt::format("prove it to {}, on a gauge block or a standard, where it is now {}",
                     good_to(within * keep, subject), good_to(within, subject));
}

std::string remedy(const Parts& parts, const survey::Doubt& doubt, const Subject& subject) {
  const double keep = *doubt.keep;
  const bool scatters = doubt.largest.ends_with("/scatter") || doubt.largest.ends_with("/comes back");
  if (parts.kind == "reading" && scatters) return repeats(parts, doubt, subject);
  if (doubt.largest.ends_with("/transfer"))
    return fmt::format("set the gauge {:.1f} times as well, or measure without one",
                       1.0 / std::max(keep, 0.01));
  if (parts.kind == "reading" || parts.kind == "to be taken") return finer(parts, keep, subject);
  if (parts.kind == "zero") return proved_zero(parts, keep, subject);
  if (parts.kind == "temperature")
    return "let work and instrument lie together until they are one, or take its temperature better";
  return "compare it with a piece of the same metal";
}

}  // namespace

Remedy remedy_for(const survey::Doubt& doubt, const Subject& subject) {
  Remedy out;
  out.doubt = doubt;
  const Parts parts = parts_of(doubt.of);
  out.of = what_it_is(parts);
  if (doubt.keep && *doubt.keep < 1.0) out.todo = remedy(parts, doubt, subject);
  return out;
}

}  // namespace sparewright::measuring
