// At the machine: surface speed, pulleys, edge finding on a round, a dial that only has whole steps, a tapered gib.
#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include <fmt/format.h>

#include "core/answers/entry_reader.hpp"
#include "core/answers/quick.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;
namespace unit = quantity::unit;

constexpr handbook::Source kSurface{"surface speed = pi x diameter x turns", "", handbook::Basis::kDerived};
constexpr handbook::Source kPulleys{"turns go as diameters or teeth the other way round", "",
                                    handbook::Basis::kDerived};
constexpr handbook::Source kToothedPulley{"pitch diameter = teeth x pitch / pi", "",
                                          handbook::Basis::kDerived};
constexpr handbook::Source kTouchOff{
    "touched off the widest place a round is short by R - sqrt(R^2 - off^2), R to the finder's centre", "",
    handbook::Basis::kDerived};
constexpr handbook::Source kWholeSteps{"each place to the nearest step, none carried on", "",
                                       handbook::Basis::kDerived};
constexpr handbook::Source kGib{"thickness over length of the gib", "", handbook::Basis::kDerived};

}  // namespace

base::Result<Answer> surface_speed(const Question& question) {
  EntryReader read(question);
  const Length diameter = read.size("diameter");
  const double turns = read.positive("rpm", Kind::kNumber);
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const double speed = diameter.base() * unit::rpm.to_base(turns) / 2.0;
  Answer answer;
  answer.asked = fmt::format("{} at {:g} rpm", both_ways(diameter, system), turns);
  answer.says = quantity::shown(speed, Kind::kSpeed, system, 0);
  TableWriter writer("surface speed", system);
  writer.number("at the diameter", speed, Kind::kSpeed, 0, kSurface);
  TableWriter other("the same", system == UnitSystem::kInch ? UnitSystem::kMetric : UnitSystem::kInch);
  other.number("at the diameter, other units", speed, Kind::kSpeed, 0, kSurface);
  answer.tables = {writer.take(), other.take()};
  answer.assumed.emplace_back("`handbook speed` tells what a metal and a tool stand");
  return answer;
}

base::Result<Answer> pulley(const Question& question) {
  constexpr int kMostTeeth = 1000;
  EntryReader read(question);
  const bool teeth = read.has("driver-teeth") || read.has("driven-teeth");
  const double driver = teeth ? read.count("driver-teeth", 1, kMostTeeth) : read.size("driver").base();
  const double driven = teeth ? read.count("driven-teeth", 1, kMostTeeth) : read.size("driven").base();
  const auto turns = read.maybe_positive("rpm", Kind::kNumber);
  const auto pitch = read.maybe_size("pitch");
  const auto was =
      read.has("driver-was") ? std::optional(read.count("driver-was", 1, kMostTeeth)) : std::nullopt;
  if (!read.failed()) read.refuse_unless(!was || teeth, "driver-was", "together with --driver-teeth");
  if (read.failed()) return read.failure();
  const double ratio = driver / driven;
  Answer answer;
  answer.asked = teeth ? fmt::format("pulley of {:g} teeth drives one of {:g}", driver, driven)
                       : fmt::format("pulley of {} drives one of {}",
                                     both_ways(Length::from_base(driver), read.system()),
                                     both_ways(Length::from_base(driven), read.system()));
  answer.says = fmt::format("1 turn makes {:.4g}", ratio);
  TableWriter writer("turns", read.system());
  writer.number("driven for 1 of the driver", ratio, Kind::kNumber, 4, kPulleys);
  if (turns)
    writer.number("driven pulley", unit::rpm.to_base(*turns * ratio), Kind::kRotationalSpeed, 0, kPulleys,
                  teeth ? "" : "less what the belt slips");
  if (was)
    writer.number("faster than before, per cent", (driver / *was - 1.0) * 100.0, Kind::kNumber, 1, kPulleys,
                  fmt::format("with {} teeth before; under zero it is slower", *was));
  answer.tables.push_back(writer.take());
  if (teeth && pitch) {
    TableWriter toothed("toothed belt, along its pitch line", read.system());
    toothed.length("driver, pitch diameter", *pitch * (driver / std::numbers::pi), kToothedPulley);
    toothed.length("driven, pitch diameter", *pitch * (driven / std::numbers::pi), kToothedPulley);
    if (was)
      toothed.length("the belt comes round shorter by", *pitch * ((driver - *was) / 2.0), kToothedPulley,
                     "half the teeth added: is there room to move the axis?");
    answer.tables.push_back(toothed.take());
    answer.assumed.emplace_back(
        "the outside of a toothed pulley is less than its pitch diameter, by twice what the belt's cords lie "
        "over its teeth");
  }
  return answer;
}

base::Result<Answer> edge_find(const Question& question) {
  EntryReader read(question);
  const Length diameter = read.size("diameter");
  const Length finder = read.size("finder");
  const Length off = read.size("off");
  if (!read.failed()) read.refuse_unless(off * 2.0 < diameter, "off", "less than half the diameter");
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const Length reach = (diameter + finder) / 2.0;
  const auto short_by = [&](Length aside) {
    return reach - Length::from_base(std::sqrt(std::pow(reach.base(), 2) - std::pow(aside.base(), 2)));
  };
  const Length first = short_by(off);
  // The y touch is made that much off in x, the second x touch as much off in y as that left.
  const Length second = short_by(first);
  const Length third = short_by(second);
  Answer answer;
  answer.asked = fmt::format("centre of a round of {} by touching it, {} off the middle at first",
                             both_ways(diameter, system), both_ways(off, system));
  answer.says = fmt::format("after each touch move {}", both_ways(reach, system));
  TableWriter writer("move after touching", system);
  writer.length("to the centre", reach, kTouchOff, "half the work and half the finder's tip");
  TableWriter error("so far off it then is", system);
  error.length("x, after the first touch", first, kTouchOff);
  error.length("y, after the second", second, kTouchOff);
  error.length("x, after the third", third, kTouchOff, "two rounds are enough");
  answer.tables = {writer.take(), error.take()};
  answer.assumed.emplace_back("x first, then y, then both once more, each come to from one side");
  answer.cautions.emplace_back(
      "Spindle stopped, or slow with a kicking finder; nothing else turns in reach.");
  return answer;
}

base::Result<Answer> steps(const Question& question) {
  constexpr int kMost = 400;
  EntryReader read(question);
  const int divisions = read.count("divisions", 2, kMost);
  const double step = read.positive("step", Kind::kAngle);
  const auto radius = read.maybe_size("radius");
  if (read.failed()) return read.failure();
  const double turn = 2.0 * std::numbers::pi;
  const double wanted = turn / divisions;
  if (!(step <= wanted))
    return base::fail(base::Code::kValueNotAccepted,
                      fmt::format("{:g} deg", step / unit::degree.to_base(1.0)), "less than one division",
                      "--step");
  double worst = 0.0;
  TableWriter places("set it to", read.system());
  for (int i = 0; i < divisions; ++i) {
    const double at = std::round(wanted * i / step) * step;
    worst = std::max(worst, std::abs(at - wanted * i));
    places.number(fmt::format("place {}", i + 1), at, Kind::kAngle, 2, kWholeSteps);
  }
  const double carried = std::abs(std::round(wanted / step) * step - wanted) * divisions;
  Answer answer;
  answer.asked = fmt::format("{} places on steps of {:g} deg", divisions, step / unit::degree.to_base(1.0));
  answer.says =
      worst < 1e-9 ? "exact" : fmt::format("{:.3f} deg off, at worst", worst / unit::degree.to_base(1.0));
  TableWriter writer("how good it is", read.system());
  writer.number("one division", wanted, Kind::kAngle, 4, kWholeSteps);
  writer.number("a place is off by, at most", worst, Kind::kAngle, 3, kWholeSteps);
  if (radius) writer.length("at that radius", *radius * worst, kWholeSteps, "along the circle");
  writer.number("stepped on instead, the last is off by", carried, Kind::kAngle, 2, kWholeSteps,
                "round each place, never the step");
  answer.tables = {writer.take(), places.take()};
  answer.assumed.emplace_back("a closed circle has as many gaps as places");
  return answer;
}

base::Result<Answer> gib(const Question& question) {
  EntryReader read(question);
  const Length thick = read.size("thick");
  const Length thin = read.size("thin");
  const Length length = read.size("length");
  const auto allowance = read.maybe_size("allowance");
  const auto longer = read.maybe_size("longer");
  if (!read.failed()) read.refuse_unless(thin < thick, "thin", "less than the thick end");
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const double taper = (thick - thin) / length;
  Answer answer;
  answer.asked = fmt::format("gib from {} to {} over {}", both_ways(thick, system), both_ways(thin, system),
                             both_ways(length, system));
  answer.says = fmt::format("{:.5f} for 1 of length", taper);
  TableWriter writer("the taper", system);
  writer.number("for 1 of length", taper, Kind::kNumber, 5, kGib);
  const Length scraped =
      system == UnitSystem::kInch ? Length::of(1.0, unit::thou) : Length::of(0.02, unit::millimetre);
  writer.length(fmt::format("{} scraped off moves it in by", both_ways(scraped, system)), scraped / taper,
                kGib);
  answer.tables.push_back(writer.take());
  if (allowance || longer) {
    TableWriter blank("what is left on for fitting", system);
    if (allowance)
      blank.length("the thickness left on lasts for", *allowance / taper, kGib, "of travel along");
    if (longer) blank.length("the length left on is worth", *longer * taper, kGib, "of thickness");
    blank.length("blank, thick end", thick + allowance.value_or(Length()) + longer.value_or(Length()) * taper,
                 kGib, longer ? "longer at its thick end" : "");
    blank.length("blank, length", length + longer.value_or(Length()), kGib);
    answer.tables.push_back(blank.take());
  }
  answer.cautions.emplace_back(
      "Thin strip bends as it is cut: turn it over often, take the same off both sides.");
  return answer;
}

}  // namespace sparewright::answers
