#include <array>
#include <charconv>

#include <fmt/format.h>

#include "core/answers/fasteners.hpp"
#include "core/handbook/o_rings.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::answers {
namespace {

using handbook::ORingFit;
using handbook::ORingGland;
using handbook::SealDuty;
using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;

constexpr std::array kDuties{SealDuty::kReciprocating, SealDuty::kStaticRadial, SealDuty::kStaticFace};
constexpr handbook::Source kSqueeze{"squeeze and fill over the tolerances of ring and gland", "",
                                    handbook::Basis::kDerived};

// What was asked for: a section, and the dash number where that was given.
struct Asked {
  Length section;
  std::optional<int> dash;
  UnitSystem system = UnitSystem::kInch;
};

std::optional<int> dash_number(std::string_view words) {
  std::string_view text = quantity::trimmed(words);
  text.remove_prefix(quantity::minus_at(text));
  int dash = 0;
  const auto [stopped, error] = std::from_chars(text.data(), text.data() + text.size(), dash);
  if (error != std::errc{} || stopped != text.data() + text.size()) return std::nullopt;
  return dash;
}

base::Result<Asked> read(const std::string& words) {
  if (const auto dash = dash_number(words)) {
    const auto section = handbook::o_ring_section(*dash);
    if (!section) return tl::unexpected(section.error());
    return Asked{section->section, dash, UnitSystem::kInch};
  }
  const auto size = quantity::read_number(words, Kind::kLength, std::nullopt);
  if (!size) return tl::unexpected(size.error());
  return Asked{size->length(), std::nullopt, system_of(*size)};
}

Table ring_table(Length section, UnitSystem system) {
  TableWriter writer("ring", system);
  for (const handbook::ORingSection& one : handbook::o_ring_sections()) {
    if (one.section != section) continue;
    writer.range("section", one.section - one.plus_minus, one.section + one.plus_minus, one.source);
    writer.words("dash numbers", fmt::format("-{} to -{}", one.first_dash, one.last_dash), one.source,
                 "not every number between is made");
  }
  return writer.take();
}

// The page that prints the other depth is that of the sections.
handbook::Source section_source(Length section) {
  for (const handbook::ORingSection& one : handbook::o_ring_sections()) {
    if (one.section == section) return one.source;
  }
  return {};
}

Table gland_table(const ORingFit& fit, UnitSystem system) {
  const ORingGland& gland = fit.gland;
  TableWriter writer(fmt::format("gland, {}", name_of(gland.duty)), system);
  writer.limits("depth", gland.depth_least, gland.depth_most, gland.source,
                "sealed surface to the bottom of the groove, clearance included");
  if (gland.other_least && gland.other_most)
    writer.limits("depth, another page", *gland.other_least, *gland.other_most, section_source(gland.section),
                  "shown, not taken");
  writer.limits("groove width", gland.width - gland.width_plus_minus, gland.width + gland.width_plus_minus,
                gland.source, "no back-up ring");
  writer.numbers("squeeze, %", fit.squeeze_least, fit.squeeze_most, Kind::kNumber, 0, kSqueeze);
  writer.number("fills at most, %", fit.fill_most, Kind::kNumber, 0, kSqueeze, "heat needs room");
  return writer.take();
}

}  // namespace

base::Result<Answer> o_ring(const Question& question) {
  const auto asked = read(question.words);
  if (!asked) return tl::unexpected(asked.error());
  Answer answer;
  for (const SealDuty duty : kDuties) {
    const auto fit = handbook::o_ring_gland(duty, asked->section);
    if (!fit) return tl::unexpected(fit.error());
    if (answer.tables.empty()) answer.tables.push_back(ring_table(fit->gland.section, asked->system));
    answer.tables.push_back(gland_table(*fit, asked->system));
  }
  answer.asked =
      fmt::format("{}section {}", asked->dash ? fmt::format("O-ring -{}, ", *asked->dash) : "O-ring, ",
                  both_ways(asked->section, asked->system));
  return answer;
}

}  // namespace sparewright::answers
