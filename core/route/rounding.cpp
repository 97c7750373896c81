// What setting to whole divisions costs: worst where a collar is of the other system of units than the job.
#include <cmath>

#include <fmt/format.h>

#include "core/route/bench.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;

// More than this of the tolerance is said on the sheet. A choice made here, without a source.
constexpr double kWorthSaying = 0.25;

struct Cost {
  std::string feature;
  std::string local;  // "x", "width"
  const Figure* made = nullptr;
  double cost_mm = 0.0;
  double tolerance_mm = 0.0;

  [[nodiscard]] double share() const { return cost_mm / tolerance_mm; }
};

// What the readings make of a size, against what was wanted of it.
std::optional<Cost> cost_of(MillBench& bench, const std::string& feature, const std::string& local,
                            const part::Dimension& dimension) {
  if (!part::has_aim(dimension)) return std::nullopt;
  const Figure& made = bench.pen.ask(fmt::format("{}/{}/{} made", bench.pen.stage(), feature, local));
  const Figure& aim = bench.feature_figure(feature, local + "/aim");
  const Figure& least = bench.feature_figure(feature, local + "/least");
  const Figure& most = bench.feature_figure(feature, local + "/most");
  if (!made.known() || !aim.known() || !most.known() || !(most.value > least.value)) return std::nullopt;
  return Cost{feature, local, &made, std::abs(made.value - aim.value), most.value - least.value};
}

}  // namespace

void write_rounding(MillBench& bench) {
  std::optional<Cost> worst;
  for (const Work& work : bench.setup.works) {
    const part::Feature* feature = part::find_feature(bench.route.part, work.feature);
    if (feature == nullptr || work.joins || !cuts_are_worked_out(bench.setup, *feature)) continue;
    for (const part::NamedDimension& d : part::dimensions_of(*feature)) {
      const auto cost = cost_of(bench, work.feature, d.local, *d.dimension);
      if (cost && (!worst || cost->share() > worst->share())) worst = cost;
    }
  }
  if (!worst || worst->share() <= kWorthSaying) return;
  bench.choice("rounding at most", Kind::kLength, worst->cost_mm,
               "what the readings make of a size, less what was wanted", {worst->made});
  bench.sheet.machine.push_back(fmt::format(
      "Whole divisions cost {} at {}, {}: it may be off by {} in all. Set between the lines there.",
      bench.print.fine(worst->cost_mm), worst->feature, worst->local, bench.print.fine(worst->tolerance_mm)));
}

}  // namespace sparewright::route
