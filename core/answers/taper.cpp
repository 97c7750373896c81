#include <fmt/format.h>

#include "core/answers/machines.hpp"
#include "core/handbook/rotary_table.hpp"
#include "core/handbook/taper_formulas.hpp"
#include "core/handbook/tapers.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using handbook::Taper;
using quantity::Kind;
using quantity::UnitSystem;

void add_angle(TableWriter& writer, std::string what, quantity::Angle angle, std::string note) {
  writer.number(std::move(what), angle.base(), Kind::kAngle, 4, handbook::kTaperRule,
                fmt::format("{}{}{}", to_string(handbook::in_degrees_minutes_seconds(angle)),
                            note.empty() ? "" : ", ", note));
}

Table taper_table(const Taper& taper, UnitSystem system) {
  TableWriter writer("taper", system);
  const std::string per_foot = quantity::fixed(taper.taper_per_foot.in(quantity::unit::inch), 5);
  if (system == UnitSystem::kInch) {
    writer.number("taper per foot", taper.taper_per_foot.base(), Kind::kLength, 5, taper.source,
                  fmt::format("on the diameter: {:.6f} for 1 of length", taper.ratio()));
  } else {
    writer.number("taper, 1 in", 1.0 / taper.ratio(), Kind::kNumber, 3, taper.source,
                  fmt::format("on the diameter: {} in per foot", per_foot));
  }
  add_angle(writer, "half angle", taper.included_angle() / 2.0, "what a compound slide is swung to");
  add_angle(writer, "included angle", taper.included_angle(), "");
  if (taper.large_end)
    writer.length("large end", *taper.large_end, taper.source, "at the gauge line, the end of the socket");
  if (taper.small_end) writer.length("small end", *taper.small_end, taper.source);
  if (taper.length)
    writer.length("length", *taper.length, taper.source, "from the gauge line to the small end");
  if (!taper.other.empty())
    writer.words("also in print", std::string(taper.other), taper.source, "measure before cutting");
  return writer.take();
}

base::Result<Table> rollers_table(const Question& question, const Taper& taper) {
  const auto roller = size_entry(question, "roller");
  if (!roller) return tl::unexpected(roller.error());
  const auto blocks = size_entry(question, "blocks");
  if (!blocks) return tl::unexpected(blocks.error());
  const auto check = handbook::check_plug(taper, roller->diameter(), blocks->length());
  if (!check) return tl::unexpected(check.error());
  TableWriter writer("plug on its small end, over two rollers", system_of(*roller));
  writer.length("rollers on the plate", check->on_plate, check->source,
                fmt::format("rollers of {}", roller->typed));
  writer.length("rollers on the blocks", check->on_blocks, check->source,
                fmt::format("blocks of {} under both", blocks->typed));
  writer.length("difference", check->on_blocks - check->on_plate, check->source, "the taper alone");
  return writer.take();
}

}  // namespace

base::Result<Answer> taper(const Question& question) {
  const auto taper = handbook::find_taper(question.words);
  if (!taper) return tl::unexpected(taper.error());
  const bool checks = find_entry(question, "roller") != nullptr || find_entry(question, "blocks") != nullptr;
  Answer answer;
  answer.asked = to_string(*taper);
  answer.says = fmt::format("{} in per foot, half angle {:.4f} deg",
                            quantity::fixed(taper->taper_per_foot.in(quantity::unit::inch), 5),
                            taper->included_angle().in(quantity::unit::degree) / 2.0);
  answer.tables.push_back(taper_table(*taper, question.system));
  if (!taper->other.empty())
    answer.cautions.emplace_back("sizes of this number disagree in print: measure the part it must fit");
  if (!checks) return answer;
  auto rollers = rollers_table(question, *taper);
  if (!rollers) return tl::unexpected(rollers.error());
  answer.tables.push_back(std::move(*rollers));
  return answer;
}

}  // namespace sparewright::answers
