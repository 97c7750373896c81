#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/answers/blocks.hpp"
#include "core/handbook/gauge_blocks.hpp"
#include "core/handbook/rotary_table.hpp"
#include "core/handbook/sine_bar.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using handbook::GaugeBlockSet;
using handbook::GaugeStack;
using quantity::Angle;
using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;
namespace unit = quantity::unit;

// The set named, or the usual one of the system, which `assumed` then says.
base::Result<GaugeBlockSet> set_of(const Question& question, UnitSystem system,
                                   std::vector<std::string>& assumed) {
  if (const std::string* named = find_entry(question, "set")) return handbook::find_gauge_blocks(*named);
  const std::string_view usual = system == UnitSystem::kInch ? "81-piece inch" : "87-piece metric";
  if (question.shop != nullptr && !question.shop->gauge_blocks.empty())
    return handbook::find_gauge_blocks(question.shop->gauge_blocks);
  assumed.push_back(fmt::format("--set was not given: the {} set is taken", usual));
  return handbook::find_gauge_blocks(usual);
}

base::Result<std::optional<Length>> wear_of(const Question& question) {
  const auto wear = maybe_size(question, "wear");
  if (!wear) return tl::unexpected(wear.error());
  if (!*wear) return std::optional<Length>();
  return std::optional<Length>((*wear)->length());
}

// Blocks are marked to 0.0001 in or 0.0005 mm.
std::string block_words(Length block, UnitSystem system) {
  return system == UnitSystem::kInch ? quantity::fixed(block.in(unit::inch), 4)
                                     : quantity::fixed(block.in(unit::millimetre), 4);
}

std::string stack_words(const GaugeStack& stack, UnitSystem system) {
  std::vector<std::string> blocks;
  for (const Length block : stack.blocks)
    blocks.push_back(block_words(block, system));
  if (stack.wear) blocks.push_back(fmt::format("2 x {} wear", block_words(*stack.wear, system)));
  return fmt::format("{}", fmt::join(blocks, " + "));
}

std::string off_words(const GaugeStack& stack) {
  if (stack.exact()) return "exact";
  const double off_um = stack.error.in(unit::micrometre);
  const double off_uin = stack.error.in(unit::microinch);
  return fmt::format("off by {} um ({} uin)", quantity::signed_fixed(off_um, 2),
                     quantity::signed_fixed(off_uin, 1));
}

Table stacks_table(const GaugeBlockSet& set, const std::vector<GaugeStack>& stacks, UnitSystem system) {
  TableWriter writer(fmt::format("stacks of the {} set", set.name), system);
  for (const GaugeStack& stack : stacks)
    writer.length(stack_words(stack, system), stack.length, set.source, off_words(stack));
  return writer.take();
}

UnitSystem system_of(const GaugeBlockSet& set) {
  return set.name.ends_with("inch") ? UnitSystem::kInch : UnitSystem::kMetric;
}

}  // namespace

base::Result<Answer> stack(const Question& question) {
  const auto length = quantity::read_number(question.words, Kind::kLength, std::nullopt);
  if (!length) return tl::unexpected(length.error());
  Answer answer;
  const auto set = set_of(question, system_of(*length), answer.assumed);
  if (!set) return tl::unexpected(set.error());
  const auto wear = wear_of(question);
  if (!wear) return tl::unexpected(wear.error());
  const auto stacks = handbook::gauge_stacks(*set, length->length(), *wear);
  if (!stacks) return tl::unexpected(stacks.error());
  const GaugeStack& first = stacks->front();
  answer.asked = fmt::format("a stack of {}", length->typed);
  answer.says = stack_words(first, system_of(*set));
  if (!first.exact()) answer.says += ", " + off_words(first);
  answer.tables.push_back(stacks_table(*set, *stacks, system_of(*set)));
  return answer;
}

base::Result<Answer> sine_bar(const Question& question) {
  const auto angle = quantity::read_number(question.words, Kind::kAngle, std::nullopt);
  if (!angle) return tl::unexpected(angle.error());
  const auto bar = size_entry(question, "length");
  if (!bar) return tl::unexpected(bar.error());
  Answer answer;
  const auto set = set_of(question, system_of(*bar), answer.assumed);
  if (!set) return tl::unexpected(set.error());
  const auto wear = wear_of(question);
  if (!wear) return tl::unexpected(wear.error());
  const auto setting = handbook::sine_bar_setting(bar->length(), angle->angle(), *set, *wear);
  if (!setting) return tl::unexpected(setting.error());
  const UnitSystem system = system_of(*bar);
  TableWriter writer("sine bar", system);
  writer.number("stack that would be exact", setting->stack.base(), Kind::kLength,
                system == UnitSystem::kInch ? 6 : 5, handbook::kSineBar);
  writer.length(stack_words(setting->blocks, system_of(*set)), setting->blocks.length, set->source,
                off_words(setting->blocks));
  writer.number("the bar stands at", setting->angle.base(), Kind::kAngle, 4, handbook::kSineBar,
                fmt::format("off by {} sec", quantity::signed_fixed(setting->error.in(unit::arc_second), 1)));
  answer.asked = fmt::format("{} on a sine bar of {}",
                             to_string(handbook::in_degrees_minutes_seconds(angle->angle())), bar->typed);
  answer.says = fmt::format("stack {}", both_ways(setting->stack, system));
  answer.assumed.push_back(fmt::format("{} is from centre to centre of the rolls", bar->typed));
  answer.tables.push_back(writer.take());
  return answer;
}

}  // namespace sparewright::answers
