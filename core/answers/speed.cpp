#include <optional>

#include <fmt/format.h>

#include "core/answers/groups.hpp"
#include "core/cutting/spindle.hpp"
#include "core/handbook/cutting_values.hpp"
#include "core/handbook/feeds.hpp"
#include "core/handbook/materials.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using handbook::Operation;
using handbook::ToolMaterial;
using quantity::Kind;
using quantity::UnitSystem;
namespace unit = quantity::unit;

constexpr handbook::Source kSpindle{"spindle speed = surface speed / (pi x diameter)", "",
                                    handbook::Basis::kDerived};

constexpr handbook::Source kOfThoseBelow{"the lowest, the middle and the highest of the sources below", "",
                                         handbook::Basis::kDerived};
constexpr handbook::Source kMachineSpeed{"the fastest speed of the machine that is not above it", "",
                                         handbook::Basis::kDerived};

struct Asked {
  handbook::SpeedAnswer speed;
  std::vector<std::string> assumed;
};

base::Result<Asked> asked_of(const std::string& words) {
  const handbook::CuttingWords read = handbook::cutting_words(words);
  if (!read.operation)
    return base::fail(base::Code::kNameUnknown, words,
                      fmt::format("material, operation and tool, such as '1018 turning hss'; operations: {}",
                                  handbook::operation_words()),
                      "question of speed");
  auto speed =
      handbook::speed_answer(read.rest, *read.operation, read.tool.value_or(ToolMaterial::kHighSpeedSteel));
  if (!speed) return tl::unexpected(speed.error());
  Asked asked{std::move(*speed), {}};
  if (!read.tool) asked.assumed.emplace_back("no tool was named: high-speed steel is taken");
  if (!asked.speed.assumed.empty()) asked.assumed.push_back(asked.speed.assumed);
  return asked;
}

Table speed_table(const handbook::Figures<quantity::Speed>& speed, UnitSystem system) {
  TableWriter writer("cutting speed", system);
  writer.number("start at", speed.low.base(), Kind::kSpeed, 0, handbook::kStartLow);
  writer.numbers("in print, all sources", speed.low.base(), speed.high.base(), Kind::kSpeed, 0,
                 kOfThoseBelow);
  writer.number("the middle one", speed.median.base(), Kind::kSpeed, 0, kOfThoseBelow);
  for (const auto& one : speed.printed)
    writer.numbers(std::string(one.material), one.low.base(), one.high.base(), Kind::kSpeed, 0, one.source,
                   std::string(one.note));
  return writer.take();
}

// The feed for what was asked, where it needs no more than is known.
std::optional<Table> feed_table(const Asked& asked, const std::optional<quantity::Typed>& diameter,
                                UnitSystem system) {
  const bool inch = system == UnitSystem::kInch;
  TableWriter writer("feed", system);
  const auto add = [&](const auto& feed, Kind kind, int places, std::string_view what) {
    writer.numbers(
        std::string(what), feed.low.base(), feed.high.base(), kind, places, feed.printed.front().source,
        feed.printed.size() > 1 ? fmt::format("and {} more sources", feed.printed.size() - 1) : "");
  };
  if (asked.speed.operation == Operation::kDrilling && diameter) {
    const auto feed = handbook::drill_feed(diameter->diameter());
    if (!feed) return std::nullopt;
    add(*feed, Kind::kFeedPerTurn, inch ? 4 : 3, "a turn");
  } else if (asked.speed.operation == Operation::kMilling && diameter) {
    const auto feed =
        handbook::end_mill_feed(work_of(asked.speed.material), asked.speed.tool, diameter->diameter());
    if (!feed) return std::nullopt;
    add(*feed, Kind::kLength, inch ? 4 : 3, "a tooth of an end mill");
  } else {
    const auto feed =
        handbook::turning_feed(work_of(asked.speed.material), asked.speed.operation, asked.speed.tool);
    if (!feed) return std::nullopt;
    add(*feed, Kind::kFeedPerTurn, inch ? 4 : 3, "a turn");
  }
  return writer.take();
}

// The spindle speed on that diameter, and what the machine asked for has; `says` becomes the speed to set.
base::Result<Table> spindle_table(const Question& question, const handbook::Figures<quantity::Speed>& speed,
                                  const quantity::Typed& diameter, std::string& says) {
  const double wanted = spindle_speed(speed.low, diameter.diameter()).in(unit::rpm);
  const double fastest = spindle_speed(speed.high, diameter.diameter()).in(unit::rpm);
  TableWriter writer("spindle", system_of(diameter));
  const auto add = [&](std::string what, double rpm, const handbook::Source& source, std::string note) {
    writer.number(std::move(what), unit::rpm.to_base(rpm), Kind::kRotationalSpeed, 0, source,
                  std::move(note));
  };
  add("start at", wanted, kSpindle, fmt::format("on {}", diameter.typed));
  add("highest in print", fastest, kSpindle, "");
  says = fmt::format("{:.0f} rpm", wanted);
  if (find_entry(question, "on") == nullptr) return writer.take();
  const auto machine = machine_entry(question);
  if (!machine) return tl::unexpected(machine.error());
  const cutting::SpindleChoice choice = cutting::choose_speed(wanted, (*machine)->speeds_rpm);
  add((*machine)->name, choice.rpm, kMachineSpeed, choice.too_fast ? "too fast: its slowest speed" : "");
  says = fmt::format("{:.0f} rpm{}", choice.rpm, choice.too_fast ? ", too fast" : "");
  return writer.take();
}

// Words: material, operation and tool in any order (1018 turning hss). Entries: diameter, on.
base::Result<Answer> speed(const Question& question) {
  const auto asked = asked_of(question.words);
  if (!asked) return tl::unexpected(asked.error());
  const auto diameter = maybe_size(question, "diameter");
  if (!diameter) return tl::unexpected(diameter.error());
  const handbook::Figures<quantity::Speed>& speed = asked->speed.speed;
  const UnitSystem system = *diameter ? system_of(**diameter) : question.system;
  Answer answer;
  answer.asked = fmt::format("{}, {}, {}", to_string(asked->speed.material), name_of(asked->speed.operation),
                             name_of(asked->speed.tool));
  answer.assumed = asked->assumed;
  answer.says = quantity::shown(speed.low.base(), Kind::kSpeed, system, 0);
  if (*diameter) {
    auto spindle = spindle_table(question, speed, **diameter, answer.says);
    if (!spindle) return tl::unexpected(spindle.error());
    answer.tables.push_back(std::move(*spindle));
  }
  answer.tables.push_back(speed_table(speed, system));
  if (auto feed = feed_table(*asked, *diameter, system)) answer.tables.push_back(std::move(*feed));
  return answer;
}

}  // namespace

std::vector<Subject> cutting_subjects() {
  return {{"speed",
           "cutting speed as every source prints it, spindle speed and feed",
           "material, operation and tool: 1018 turning hss",
           "\"1018 turning hss\" --diameter \"1.5 in\"",
           {{"diameter", "SIZE", "of the work in a lathe, of the cutter elsewhere: gives the spindle speed"},
            {"on", "MACHINE", "a machine of the shop text: the speed it has"}},
           speed}};
}

}  // namespace sparewright::answers
