// Starting speeds and feeds from the handbook, and the speeds this machine has.
#include <algorithm>
#include <vector>

#include <fmt/format.h>

#include "core/cutting/spindle.hpp"
#include "core/handbook/cutting_speeds.hpp"
#include "core/handbook/feeds.hpp"
#include "core/route/bench.hpp"

namespace sparewright::route {
namespace {

using quantity::Kind;

std::string speed_source(const handbook::CuttingSpeed& speed) {
  const auto lowest = std::min_element(speed.printed.begin(), speed.printed.end(),
                                       [](const auto& a, const auto& b) { return a.low < b.low; });
  return fmt::format("{}; of {} printed rows the lowest", handbook::cite(lowest->source),
                     speed.printed.size());
}

// Those the chuck may be run at; the slowest where it may at none.
std::vector<double> speeds_here(const Setup& setup) {
  std::vector<double> speeds = setup.machine.speeds_rpm;
  const auto* on = std::get_if<OnLathe>(&setup.held);
  if (on == nullptr || !on->holder.most_rpm) return speeds;
  while (speeds.size() > 1 && speeds.back() > *on->holder.most_rpm)
    speeds.pop_back();
  return speeds;
}

}  // namespace

std::string rpm_text(Bench& bench, const std::string& name, const shop::Tool& tool,
                     handbook::Operation operation, double diameter_mm, double share) {
  ledger::Root start;
  start.kind = Kind::kSpeed;
  start.origin = ledger::Origin::kStandard;
  if (bench.route.work) {
    const auto speed = handbook::cutting_speed(*bench.route.work, operation, tool.material);
    if (speed) {
      start.value = share * speed->start.base();
      start.source = speed_source(*speed);
      if (share < 1.0) start.source += fmt::format("; {} of it (common practice)", quantity::fixed(share, 2));
    }
  }
  const ledger::Figure& cutting_speed = bench.pen.root(name + " cutting speed", start);
  ledger::Root size;
  size.kind = Kind::kDiameter;
  size.origin = ledger::Origin::kChoice;
  size.source = fmt::format("diameter at the cut, {}", tool.name);
  if (diameter_mm > 0.0) size.value = diameter_mm;
  const ledger::Figure& diameter = bench.pen.root(name + " diameter at the cut", size);
  const ledger::Figure& wanted = bench.pen.work(
      name + " rpm wanted", Kind::kRotationalSpeed, "cutting speed over half the diameter",
      [](auto v, auto d) { return v / (d / 2.0); }, cutting_speed, diameter);
  if (!wanted.known() || bench.setup.machine.speeds_rpm.empty()) return "NOT KNOWN";
  const auto choice =
      cutting::choose_speed(wanted.value / quantity::unit::rpm.to_base(1.0), speeds_here(bench.setup));
  bench.choice(name + " rpm", Kind::kRotationalSpeed, quantity::unit::rpm.to_base(choice.rpm),
               "the fastest speed of the machine that is not above the one wanted", {&wanted});
  return choice.too_fast ? fmt::format("{} too fast", quantity::fixed(choice.rpm, 0))
                         : quantity::fixed(choice.rpm, 0);
}

}  // namespace sparewright::route
