// The machine, how the work is held in it, and how the zero is picked up.
#include <cmath>

#include <fmt/format.h>

#include "core/route/bench.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;

const Figure& stated(MillBench& bench, const std::string& local, double base, std::string typed,
                     std::string source) {
  ledger::Root root;
  root.kind = Kind::kLength;
  root.value = base;
  root.origin = ledger::Origin::kChoice;
  root.typed = std::move(typed);
  root.source = std::move(source);
  return bench.pen.root(local, root);
}

// How square work on the table is set to the slide, by indicator. Common practice.
constexpr double kSquare_mm = 0.001 * 25.4;

// An edge finder is good to this unless the shop says otherwise. Common practice.
constexpr double kEdgeFinderHalfWidth_mm = 0.0005 * 25.4;

void pick_up_axis(MillBench& bench, MachineAxis axis) {
  const EdgePickUp& pick_up = pick_up_of(bench.on, axis);
  const shop::Tool& finder = pick_up.edge_finder;
  const double half_width = finder.good_to ? finder.good_to->base() : kEdgeFinderHalfWidth_mm;
  bench.error_root(
      fmt::format("pick up {}", name_of(axis)), from_half_width(half_width),
      finder.good_to ? "edge finder, as the shop states it" : "edge finder, 0.0005 in (common practice)");
  const double tip = finder.diameter ? finder.diameter->base : std::nan("");
  const Figure& radius =
      stated(bench, fmt::format("pick up {} tip radius", name_of(axis)), tip / 2.0,
             finder.diameter ? finder.diameter->typed : "", "half of the edge finder's tip");
  const std::string go_on = or_not_known(radius, bench.print.fine(radius.value));
  const auto collar = bench.setup.machine.collars.find(std::string(name_of(axis)));
  const std::string finish = collar == bench.setup.machine.collars.end()
                                 ? "the finishing way"
                                 : std::string(shop::name_of(finishing(bench, axis, collar->second)));
  bench.sheet.pick_up.push_back(fmt::format(
      "{} Touch {}, lift, go on {} toward the work (edge finder {}), ending {}. {} collar to 0.",
      axis == MachineAxis::kX ? "X" : "Y", part::name_of(pick_up.side), go_on,
      finder.diameter ? finder.diameter->typed : "?", finish, axis == MachineAxis::kX ? "X" : "Y"));
  const bool round_side = sits_on_middle(bench) && part::axis_of(pick_up.side) != part::Axis::kX;
  if (round_side)
    bench.sheet.pick_up.push_back(
        fmt::format("The {} of a bar is its outermost line: touch it where the bar stands out of the jaws, "
                    "or the face of the jaw "
                    "that it lies against.",
                    part::name_of(pick_up.side)));
}

std::string collar_sentence(const MillBench& bench, const std::string& axis, const shop::Collar& collar) {
  return fmt::format(
      "{} collar {} a turn, {} divisions, slack {}; finish every move {}.",
      axis == "x"   ? "X"
      : axis == "y" ? "Y"
                    : "Z",
      bench.print.plain(collar.per_turn.base()), collar.divisions, bench.print.plain(collar.slack.base()),
      shop::name_of(axis == "z" ? shop::deepens(collar)
                                : finishing(bench, axis == "x" ? MachineAxis::kX : MachineAxis::kY, collar)));
}

}  // namespace

bool sits_on_middle(const MillBench& bench) {
  return part::is_round(bench.route.part.blank.shape) &&
         part::axis_of(bench.on.holding.sits_on) != part::Axis::kX;
}

void write_machine(MillBench& bench) {
  const shop::Machine& machine = bench.setup.machine;
  bench.sheet.machine.push_back(fmt::format("{}, no readout. Sizes in {}.", machine.name,
                                            bench.print.unit_name() == "in" ? "inches" : "mm"));
  for (const auto& [axis, collar] : machine.collars) {
    bench.sheet.machine.push_back(collar_sentence(bench, axis, collar));
  }
  bench.sheet.machine.push_back(
      "5t + 62 on a line: five whole turns from 0, then on to 62. Going back, or past it: half a turn "
      "beyond, then come "
      "up again.");
  if (machine.head_tram) {
    bench.sheet.check.push_back(fmt::format(
        "head, {} sweep: {} most",
        machine.tram_sweep ? bench.print.nominal(machine.tram_sweep->base()) : std::string("full"),
        bench.print.plain(machine.head_tram->base())));
  }
  if (machine.jaw_lift && bench.on.holding.vise() != nullptr) {
    bench.sheet.check.push_back(
        fmt::format("work on the parallels: jaw lift {} most", bench.print.plain(machine.jaw_lift->base())));
  }
}

namespace {

const Figure& write_height_of_work(MillBench& bench) {
  const part::Face up = bench.orientation.up;
  return bench.pen.work(
      "hold/height of work", Kind::kLength, "top of the work less what it sits on",
      [](auto a, auto b) {
        using std::abs;
        return abs(a - b);
      },
      bench.pen.ask(fmt::format("blank/{}", part::name_of(up))), bench.side(bench.on.holding.sits_on));
}

void write_in_vise(MillBench& bench, const shop::Vise& vise) {
  const Holding& holding = bench.on.holding;
  const Figure& jaw = stated(bench, "hold/jaw depth", vise.jaw_depth.base(), "", "the shop's " + vise.name);
  const Figure& height = stated(bench, "hold/under the work", holding.under.height.base(),
                                holding.under.typed, "height of the parallels");
  const Figure& tall = write_height_of_work(bench);
  const Figure& gripped = bench.pen.work(
      "hold/gripped", Kind::kLength, "jaw depth less the parallels, at most the work",
      [](auto j, auto p, auto t) {
        using std::min;
        return min(j - p, t);
      },
      jaw, height, tall);
  const Figure& showing = bench.pen.work(
      "hold/showing", Kind::kLength, "height of the work less what is gripped",
      [](auto t, auto g) { return t - g; }, tall, gripped);
  bench.sheet.hold.push_back(fmt::format("{}. {} to the FIXED jaw, {} to the moving jaw.", vise.name,
                                         part::name_of(holding.away),
                                         part::name_of(part::opposite(holding.away))));
  bench.sheet.hold.push_back(fmt::format(
      "{} parallels {}; {} down on them.", holding.under.typed,
      sits_on_middle(bench) ? "side by side under the middle of the bar" : "hard against the jaws",
      part::name_of(holding.sits_on)));
  bench.sheet.hold.push_back(fmt::format("{} gripped, {} showing. Tap down: neither parallel moves.",
                                         or_not_known(gripped, bench.print.plain(gripped.value)),
                                         or_not_known(showing, bench.print.plain(showing.value))));
}

// Straps, bolts and packing as every workshop book has them (common practice).
void write_on_table(MillBench& bench) {
  const Holding& holding = bench.on.holding;
  const bool is_packed = holding.under.height.base() > 0.0;
  stated(bench, "hold/under the work", holding.under.height.base(), holding.under.typed,
         is_packed ? "height of the packing" : "it lies on the table itself");
  write_height_of_work(bench);
  bench.sheet.hold.push_back(fmt::format(
      "{}. {} down on {}, {} away from you.", holding.name(), part::name_of(holding.sits_on),
      is_packed ? holding.under.typed + " packing" : "the clean table", part::name_of(holding.away)));
  if (is_packed)
    bench.sheet.hold.emplace_back(
        "Packing of one height under every clamp, clear of what goes through. Work and packing do not rock.");
  bench.sheet.hold.push_back(
      fmt::format("Indicator along the {}: turn the work until it stays within {} over its length.",
                  part::name_of(holding.away), bench.print.plain(kSquare_mm)));
  bench.sheet.hold.emplace_back(
      "Clamps level or a little lower on the work, bolts nearer the work than the heel. Two at least.");
  bench.sheet.hold.emplace_back(
      "Before the spindle turns: wheel the tool by hand over every place. Nothing meets a clamp or a bolt.");
}

}  // namespace

void write_hold(MillBench& bench) {
  if (const shop::Vise* vise = bench.on.holding.vise())
    write_in_vise(bench, *vise);
  else
    write_on_table(bench);
}

void write_pick_up(MillBench& bench) {
  pick_up_axis(bench, MachineAxis::kX);
  pick_up_axis(bench, MachineAxis::kY);
  bench.sheet.pick_up.emplace_back("Then leave both collars alone.");
}

}  // namespace sparewright::route
