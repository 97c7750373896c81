#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <optional>

#include <fmt/format.h>

#include "core/answers/quick.hpp"
#include "core/handbook/bolt_circle.hpp"

namespace sparewright::answers {
namespace {

using handbook::HolePosition;
using quantity::Coordinate;
using quantity::Length;
using quantity::UnitSystem;

constexpr int kMostHolesAsked = 360;

// One axis of a mill as the operator sees it.
struct Axis {
  std::string_view name;
  std::string_view more;
  std::string_view less;
  Coordinate HolePosition::*at;
  std::optional<Length> shop::Travel::*travel;
};
constexpr std::array kAxes{
    Axis{"x", "right", "left", &HolePosition::x, &shop::Travel::x},
    Axis{"y", "away from the operator", "towards the operator", &HolePosition::y, &shop::Travel::y},
};

base::Result<handbook::BoltCircle> circle_of(const Question& question) {
  const auto count = count_entry(question, "count", 1, kMostHolesAsked);
  if (!count) return tl::unexpected(count.error());
  const auto diameter = size_entry(question, "circle");
  if (!diameter) return tl::unexpected(diameter.error());
  const auto start = maybe_number(question, "start", quantity::Kind::kAngle);
  if (!start) return tl::unexpected(start.error());
  const auto x = place_entry(question, "x");
  if (!x) return tl::unexpected(x.error());
  const auto y = place_entry(question, "y");
  if (!y) return tl::unexpected(y.error());
  return handbook::BoltCircle{diameter->diameter(), *count, *start ? (*start)->angle() : quantity::Angle(),
                              Coordinate() + *x, Coordinate() + *y};
}

// A coordinate says in words which side of the zero it lies on.
Table coordinates(const std::vector<HolePosition>& positions, UnitSystem system) {
  TableWriter writer("coordinates from the zero", system);
  for (const HolePosition& hole : positions) {
    for (const Axis& axis : kAxes) {
      const Length at = hole.*axis.at - Coordinate();
      const bool on_zero = magnitude(at) < Length::of(1e-6, quantity::unit::millimetre);
      writer.length(fmt::format("hole {} {}", hole.number, axis.name), at, handbook::kBoltCircle,
                    on_zero ? "" : std::string(at > Length() ? axis.more : axis.less));
    }
  }
  return writer.take();
}

Table checks(const handbook::BoltCircle& circle, UnitSystem system) {
  TableWriter writer("to check by, centre to centre", system);
  writer.length("hole to the next", handbook::chord_between_holes(circle.diameter, circle.holes),
                handbook::kChord, "over pins one pin more, between them one pin less");
  writer.number("angle from hole to hole", 2.0 * std::numbers::pi / circle.holes, quantity::Kind::kAngle, 4,
                handbook::kBoltCircle, "a closed circle has as many gaps as holes");
  if (const int across = circle.holes / 2; across > 1)
    writer.length(fmt::format("hole 1 to hole {}", across + 1),
                  handbook::chord_between_holes(circle.diameter, circle.holes, across), handbook::kChord);
  return writer.take();
}

base::Result<double> step_of(const Question& question) {
  if (find_entry(question, "step") == nullptr) return 1.0;
  const auto step = number_entry(question, "step", quantity::Kind::kNumber);
  if (!step) return tl::unexpected(step.error());
  if (!(step->base >= 0.05 && step->base <= 10.0))
    return base::fail(base::Code::kValueNotAccepted, step->typed, "divisions from 0.05 to 10", "--step");
  return step->base;
}

base::Result<Table> dialled(const Question& question, const shop::Machine& machine,
                            const std::vector<HolePosition>& positions, UnitSystem system) {
  const auto step = step_of(question);
  if (!step) return tl::unexpected(step.error());
  TableWriter writer(fmt::format("dial on the {}", machine.name), system);
  Length worst;
  for (const HolePosition& hole : positions) {
    std::array<double, 2> off{};
    for (std::size_t i = 0; i < kAxes.size(); ++i) {
      const Axis& axis = kAxes.at(i);
      const auto reading = dial(machine, axis.name, hole.*axis.at - Coordinate(), *step);
      if (!reading) return tl::unexpected(reading.error());
      off.at(i) = reading->off.base();
      writer.words(fmt::format("hole {} {}", hole.number, axis.name), reading->says, kCollar,
                   fmt::format("{}; lands {}", reading->finish,
                               off_words(reading->off, fmt::format("too far {}", axis.more),
                                         fmt::format("too far {}", axis.less), system)));
    }
    worst = std::max(worst, Length::from_base(std::hypot(off[0], off[1])));
  }
  writer.length("a hole is out by, at most", worst, kCollar,
                "by the nearest division alone; setting and drilling come on top");
  return writer.take();
}

// What the table must go to reach every hole, where that is more than the machine has.
std::vector<std::string> out_of_reach(const shop::Machine& machine,
                                      const std::vector<HolePosition>& positions, UnitSystem system) {
  std::vector<std::string> cautions;
  if (!machine.out_of_use.empty())
    cautions.push_back(fmt::format("The {} is out of use: {}.", machine.name, machine.out_of_use));
  for (const Axis& axis : kAxes) {
    const auto& has = machine.travel.*axis.travel;
    if (!has) continue;
    const auto [least, most] = std::minmax_element(
        positions.begin(), positions.end(),
        [&](const HolePosition& a, const HolePosition& b) { return a.*axis.at < b.*axis.at; });
    const Length needs = std::max(*most.*axis.at, Coordinate()) - std::min(*least.*axis.at, Coordinate());
    if (needs > *has)
      cautions.push_back(fmt::format("{} needs {} with the zero; the {} has {}.", axis.name,
                                     both_ways(needs, system), machine.name, both_ways(*has, system)));
  }
  return cautions;
}

}  // namespace

base::Result<Answer> holes(const Question& question) {
  const auto circle = circle_of(question);
  if (!circle) return tl::unexpected(circle.error());
  const auto positions = handbook::bolt_circle(*circle);
  if (!positions) return tl::unexpected(positions.error());
  const UnitSystem system = system_of(*size_entry(question, "circle"));
  Answer answer;
  answer.asked = fmt::format("{} hole{} on a circle of {}", circle->holes, circle->holes == 1 ? "" : "s",
                             both_ways(across(circle->diameter), system));
  answer.assumed.emplace_back("x to the right and y away from the operator; holes follow counterclockwise");
  if (find_entry(question, "start") == nullptr)
    answer.assumed.emplace_back("hole 1 lies to the right of the centre");
  if (find_entry(question, "on") != nullptr) {
    const auto machine = machine_entry(question);
    if (!machine) return tl::unexpected(machine.error());
    auto table = dialled(question, **machine, *positions, system);
    if (!table) return tl::unexpected(table.error());
    answer.assumed.emplace_back(
        "collars at 0 with the spindle over the zero, come to the way they finish; turns back: go half a "
        "turn "
        "further back, then come up to the number");
    answer.cautions = out_of_reach(**machine, *positions, system);
    answer.tables.push_back(std::move(*table));
  }
  answer.tables.push_back(coordinates(*positions, system));
  if (circle->holes > 1) answer.tables.push_back(checks(*circle, system));
  return answer;
}

}  // namespace sparewright::answers
