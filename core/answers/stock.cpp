// What is bought and what is cut with what: a bar as a seat, a hole for a reamer or a drill.
#include <optional>

#include <fmt/format.h>

#include "core/answers/entry_reader.hpp"
#include "core/answers/quick.hpp"
#include "core/base/messages.hpp"
#include "core/handbook/bar_stock.hpp"
#include "core/handbook/drilled_holes.hpp"
#include "core/handbook/reaming.hpp"

namespace sparewright::answers {
namespace {

using handbook::BarForm;
using handbook::BarStandard;
using quantity::Length;
using quantity::UnitSystem;

constexpr handbook::Source kHoleLessBar{"hole less bar", "", handbook::Basis::kDerived};

BarForm form_of(const std::string& word) {
  if (word == "hexagon") return BarForm::kHexagon;
  return word == "square" ? BarForm::kSquare : BarForm::kRound;
}

// The standard a bar of the material is sold to; none where none is held.
std::optional<BarStandard> standard_of(const handbook::Material& material, UnitSystem system, bool turned) {
  using handbook::WorkGroup;
  const bool inch = system == UnitSystem::kInch;
  // The alloys of EN 755 group 2 that the materials here have.
  const bool is_hard_to_press = material.name.find("2024") != std::string_view::npos ||
                                material.name.find("7075") != std::string_view::npos;
  if (material.group == WorkGroup::kAluminium)
    return inch               ? BarStandard::kColdFinishedAluminium
           : is_hard_to_press ? BarStandard::kEn755Group2
                              : BarStandard::kEn755Group1;
  if (!material.inch_bar) return std::nullopt;
  if (inch) return material.inch_bar;
  return turned ? BarStandard::kEn10278Turned : BarStandard::kEn10278Drawn;
}

// Whether all of one band lies in the other, some of it, or none.
std::string as_it_is(const Band& bar, const Band& seat) {
  if (bar.low >= seat.low && bar.high <= seat.high) return "OK: it is a seat as it is sold";
  if (bar.high < seat.low || bar.low > seat.high) return "NO: it never is a seat as it is sold";
  return "NOT KNOWN: some bars are, some are not; measure it, or turn the next larger bar";
}

}  // namespace

base::Result<Answer> bar(const Question& question) {
  EntryReader read(question);
  const Length size = read.size("size");
  const auto found = read.material("material", "steel 1018 cold drawn");
  const BarForm form = form_of(read.word("form", {"round", "hexagon", "square"}));
  const bool turned = read.word("finish", {"drawn", "turned"}) == "turned";
  const auto seat = read.has("seat") ? std::optional(read.band("seat")) : std::nullopt;
  const auto hole = read.has("hole") ? std::optional(read.band("hole")) : std::nullopt;
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const auto standard = standard_of(found.material, system, turned);
  if (!standard)
    return base::fail(base::Code::kNotTabled, to_string(found.material),
                      "a cold-drawn steel such as 1018 or 1045, or aluminium", "tolerances of its bars");
  const auto tolerance = handbook::bar_tolerance(*standard, form, size);
  if (!tolerance) return tl::unexpected(tolerance.error());
  const Band sold{size - tolerance->minus, size + tolerance->plus};
  Answer answer;
  answer.asked = fmt::format("{} bar of {}, {}", name_of(form), both_ways(size, system), name_of(*standard));
  answer.says = fmt::format("{} to {}", both_ways(sold.low, system), both_ways(sold.high, system));
  if (!read.has("material")) answer.assumed.push_back(to_string(found.material));
  if (!found.assumed.empty()) answer.assumed.push_back(found.assumed);
  TableWriter writer("as it is sold", system);
  writer.range("it may measure", sold.low, sold.high, tolerance->source, std::string(tolerance->note));
  if (seat) {
    writer.limits("the seat wanted", seat->low, seat->high, kHoleLessBar);
    answer.says = as_it_is(sold, *seat);
  }
  if (hole)
    writer.range("clearance in the hole", hole->low - sold.high, hole->high - sold.low, kHoleLessBar,
                 "under zero it is tight");
  answer.tables.push_back(writer.take());
  answer.cautions.emplace_back(
      "Drawn and centreless ground bar may have three lobes no micrometer shows, and springs as it is cut: "
      "`quick lobes`.");
  return answer;
}

base::Result<Answer> ream(const Question& question) {
  EntryReader read(question);
  const Length size = read.size("size");
  const auto tolerance = read.maybe_size("tolerance");
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const auto stock = handbook::reaming_stock(as_diameter(size));
  if (!stock) return tl::unexpected(stock.error());
  Answer answer;
  answer.asked = fmt::format("hole of {} to ream", both_ways(size, system));
  TableWriter writer("before the reamer", system);
  const Band before{size - stock->high, size - stock->low};
  writer.limits("hole", before.low, before.high, stock->source);
  writer.range("left on the diameter", stock->low, stock->high, stock->source);
  answer.says = fmt::format("{} to {} before the reamer", both_ways(before.low, system),
                            both_ways(before.high, system));
  answer.tables.push_back(writer.take());
  TableWriter drilled("drilled to size instead", system);
  if (const auto limits = handbook::drilled_hole_limits(as_diameter(size))) {
    const Length spread = limits->upper - limits->lower;
    drilled.range("a drill of that size leaves", size + limits->lower, size + limits->upper, limits->source);
    drilled.length("from least to greatest", spread, limits->source);
    if (tolerance) {
      drilled.length("tolerance wanted", *tolerance, limits->source,
                     *tolerance < spread ? "finer than a drill keeps: ream or bore it" : "");
      answer.says =
          fmt::format("{}; {}", *tolerance < spread ? "NO, not by a drill" : "a drill keeps it", answer.says);
    }
  } else {
    drilled.words("a drill of that size leaves", "NOT KNOWN", stock->source, base::sentence(limits.error()));
  }
  answer.tables.push_back(drilled.take());
  answer.cautions.emplace_back(
      "A reamer follows its hole: it makes it round and to size, never straight or in its place.");
  return answer;
}

}  // namespace sparewright::answers
