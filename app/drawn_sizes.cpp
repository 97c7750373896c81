// The sizes by draws of the readings' errors, as rows.
#include <cmath>

#include <fmt/format.h>

#include "app/measuring.hpp"
#include "core/quantity/display.hpp"
#include "core/survey/measure_up.hpp"
#include "core/survey/monte_carlo.hpp"

namespace sparewright::app {
namespace {

// Any will do; a fixed one gives the same answer every time.
constexpr std::uint64_t kSeed = 20'231'115;

// By how much of the expanded uncertainty two ways of coming by an interval may differ at its ends: a choice made here, in
// whatever unit (JCGM 101:2008, 8.1, from memory, goes by the figures that are printed).
constexpr double kHolds = 0.1;

DrawnRow row_of(const survey::DrawnSize& size, const ledger::Figure& figure, quantity::UnitSystem system) {
  const quantity::Unit unit = quantity::display_unit(figure.kind, system);
  const int places = quantity::usual_places(figure.kind, system) + 1;
  DrawnRow row;
  row.name = size.name;
  row.unit = unit.symbol;
  row.mean = unit.from_base(size.spread.mean);
  row.deviation = unit.from_base(size.spread.deviation) - unit.from_base(0.0);
  row.low = unit.from_base(size.spread.low);
  row.high = unit.from_base(size.spread.high);
  row.shown = fmt::format("{} {}, 19 times in 20 between {} and {}", quantity::fixed(row.mean, places),
                          row.unit, quantity::fixed(row.low, places), quantity::fixed(row.high, places));
  const double off = std::max(std::abs(figure.value - figure.expanded() - size.spread.low),
                              std::abs(figure.value + figure.expanded() - size.spread.high));
  row.holds = off <= kHolds * figure.expanded();
  return row;
}

}  // namespace

base::Result<Drawn> drawn_of(const job::Job& job, ledger::Ledger& ledger, std::size_t draws) {
  const auto network = ledger.value<survey::Network>("survey/network");
  const auto causes = ledger.value<std::vector<ledger::Shares>>("survey/causes");
  const auto report = ledger.value<survey::MeasuredUp>("survey/report");
  if (!network || !causes || !report)
    return base::fail(base::Code::kReadingsDisagree, "no sizes came of the readings", "", "any size");
  const survey::Network used = survey::part_of(*network, report->used);
  survey::Drawing drawing{&used, &report->adjustment, {}};
  for (const std::size_t i : report->used)
    drawing.causes.push_back((*causes)[i]);
  const auto made = survey::monte_carlo(drawing, draws, kSeed);
  if (!made) return base::fail(made.error());
  Drawn drawn;
  drawn.draws = made->draws;
  drawn.unsettled = made->unsettled;
  for (const survey::DrawnSize& size : made->sizes)
    drawn.sizes.push_back(row_of(size, ledger.get("survey/" + size.name), job.system));
  return drawn;
}

}  // namespace sparewright::app
