// The lathe as it stands, how the work is held in it, and where its zeros are.
#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/cutting/compound.hpp"
#include "core/route/lathe_bench.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;

std::string collar_sentence(const Bench& bench, const std::string& wheel, const shop::Collar& collar) {
  std::string name = wheel;
  name.front() = static_cast<char>(name.front() - 'a' + 'A');
  if (wheel == kCompound || wheel == kCarriage) name = "[" + name + "]";
  return fmt::format("{} collar {} a turn, {} divisions, reads {}, slack {}; feed in {}.", name,
                     bench.print.nominal(collar.per_turn.base()), collar.divisions,
                     collar.reads == shop::CollarReads::kDiameter ? "DIAMETER" : "TRAVEL",
                     bench.print.plain(collar.slack.base()), shop::name_of(shop::feeds_in(collar)));
}

const Figure& stated(LatheBench& bench, const std::string& local, std::optional<double> base,
                     std::string source) {
  ledger::Root root;
  root.kind = Kind::kLength;
  root.value = base;
  root.origin = ledger::Origin::kChoice;
  root.source = std::move(source);
  return bench.pen.root(local, root);
}

bool grips_by_jaws(const LatheBench& bench) {
  return bench.on.holder.kind != shop::HolderKind::kCentres &&
         bench.on.holder.kind != shop::HolderKind::kMandrel &&
         bench.on.holder.kind != shop::HolderKind::kFaceplate;
}

const Figure& gripped(LatheBench& bench) {
  if (bench.on.gripped)
    return stated(bench, "hold/gripped", bench.on.gripped->base(), "the job's order of work");
  if (!grips_by_jaws(bench)) return stated(bench, "hold/gripped", 0.0, "nothing lies in jaws");
  const auto& jaws = bench.on.holder.jaws;
  return stated(bench, "hold/gripped", jaws ? std::optional(jaws->base()) : std::nullopt,
                "the jaws as the shop has them: the work goes to their back");
}

// What the work is held on: a feature's size, else its outside there.
const Figure* held_on(LatheBench& bench, const Figure& in_jaws) {
  if (!bench.on.on.empty()) return &bench.feature_figure(bench.on.on, "diameter");
  if (!in_jaws.known()) return nullptr;
  return bench.outside.largest(bench.far_end->value,
                               bench.far_end->value - bench.way() * std::max(in_jaws.value, 1.0));
}

void say_how_it_is_held(LatheBench& bench, const Figure& in_jaws, const Figure& showing) {
  std::string held = bench.on.holder.name;
  if (!bench.on.on.empty()) held += " on " + bench.on.on;
  const bool right = bench.on.free_end == part::Face::kRightEnd;
  bench.sheet.hold.push_back(
      fmt::format("{}. {} end towards the tailstock.", held, right ? "Right" : "Left"));
  if (grips_by_jaws(bench))
    bench.sheet.hold.push_back(fmt::format("{} gripped, {} standing out.",
                                           or_not_known(in_jaws, bench.print.plain(in_jaws.value)),
                                           or_not_known(showing, bench.print.plain(showing.value))));
  if (bench.on.tail == TailSupport::kDeadCentre)
    bench.sheet.hold.emplace_back("Dead [center]: greased, just free to turn; look again as it warms.");
  else if (bench.on.tail == TailSupport::kLiveCentre)
    bench.sheet.hold.emplace_back("Live [center] in the tail, its quill short and locked.");
  else if (bench.on.tail == TailSupport::kSteady)
    bench.sheet.hold.emplace_back("Steady on a place that runs true, its fingers oiled.");
}

void say_checks(LatheBench& bench) {
  const shop::Holder& holder = bench.on.holder;
  if (holder.kind == shop::HolderKind::kFourJawChuck)
    bench.sheet.check.emplace_back("indicator on the work, jaws moved until it stands still");
  else if (holder.runs_out)
    bench.sheet.check.push_back(fmt::format(
        "indicator on the work: swings {} most",
        bench.print.fine(
            stated(bench, "hold/runs out", holder.runs_out->base(), "the shop's " + holder.name).value)));
  const shop::LatheSizes& lathe = bench.setup.machine.lathe;
  if (lathe.tapers && lathe.tapers_over)
    bench.sheet.check.push_back(fmt::format("turns {} larger at the headstock over {}",
                                            bench.print.fine(lathe.tapers->base()),
                                            bench.print.nominal(lathe.tapers_over->base())));
}

void say_zero_along(LatheBench& bench) {
  switch (bench.along_by) {
    case AlongBy::kCarriage:
      bench.sheet.pick_up.emplace_back(
          "Along: tool touching the faced end, [carriage] collar to 0; feed to the headstock.");
      break;
    case AlongBy::kCompound:
      bench.sheet.pick_up.emplace_back(
          "Along: [compound] parallel to the axis; tool touching the faced end, [compound] collar to 0. "
          "ALONG "
          "readings are fed by it, [carriage] locked; the rest by the [carriage].");
      break;
    case AlongBy::kStop:
      if (bench.farthest_mm <= 0.0) break;
      bench.pen.decide(
          "zero/spacer",
          {Kind::kLength, bench.farthest_mm, "the longest length cut in this setup", {bench.end}, {}, {}});
      bench.sheet.pick_up.push_back(fmt::format(
          "Along: tool touching the faced end, a {} spacer between [carriage] and bed stop, lock the "
          "stop. The lines say which spacer goes in instead.",
          bench.print.plain(bench.farthest_mm)));
      break;
  }
}

void say_fine_feed(LatheBench& bench) {
  if (!has_fine_feed(bench)) return;
  const Figure& division = fine_division(bench, "zero/compound");
  bench.sheet.pick_up.push_back(
      fmt::format("[Compound] at {:.2f} degrees to the axis, end of its swing to the headstock: one division "
                  "is then {} on "
                  "diameter. Slack taken up, collar to 0 at each touch.",
                  bench.on.compound->in(quantity::unit::degree), bench.print.fine(division.value)));
}

}  // namespace

void write_lathe_machine(LatheBench& bench) {
  const shop::Machine& machine = bench.setup.machine;
  bench.sheet.machine.push_back(fmt::format("{}, no readout. Sizes in {}.", machine.name,
                                            bench.print.unit_name() == "in" ? "inches" : "mm"));
  for (const auto& [wheel, collar] : machine.collars)
    bench.sheet.machine.push_back(collar_sentence(bench, wheel, collar));
  bench.sheet.machine.emplace_back(
      "On a line: whole turns (t) from 0, then on to the number. Past it: half a turn back, come in again.");
}

void write_lathe_hold(LatheBench& bench) {
  const Figure& in_jaws = gripped(bench);
  const Figure& end = bench.side(bench.on.free_end);
  const double way = bench.way();
  const Figure& showing = bench.pen.work(
      "hold/showing", Kind::kLength, "from the faced end to the far end, less what is gripped",
      [way](auto free, auto far, auto grip) { return way * (far - free) - grip; }, end, *bench.far_end,
      in_jaws);
  if (const Figure* on = held_on(bench, in_jaws); on != nullptr && on->known())
    bench.pen.work(
        "hold/on", Kind::kDiameter, "the diameter it is held on", [](auto d) { return d; }, *on);
  if (const Figure* largest = bench.outside.largest(bench.outside.low_mm(), bench.outside.high_mm()))
    bench.pen.work(
        "hold/largest", Kind::kDiameter, "the largest diameter of the work", [](auto d) { return d; },
        *largest);
  if (const Figure* slim = bench.outside.largest(bench.end->value, bench.end->value + way))
    bench.pen.work(
        "hold/diameters standing out", Kind::kNumber, "what stands out over its diameter",
        [](auto l, auto d) { return l / d; }, showing, *slim);
  if (grips_by_jaws(bench)) {
    const Figure& to = bench.choice("hold/cut to", Kind::kLength, bench.cut_to_mm,
                                    "how far from the free end the outside is cut", {&end});
    bench.pen.work(
        "hold/room to the jaws", Kind::kLength, "what stands out less how far it is cut",
        [](auto out, auto cut) { return out - cut; }, showing, to);
  }
  say_how_it_is_held(bench, in_jaws, showing);
  say_checks(bench);
}

void write_lathe_zeros(LatheBench& bench) {
  say_zero_along(bench);
  bench.sheet.pick_up.emplace_back(
      "Across: each tool touches a known diameter, feeding in, cross collar to 0; from a STOP on the size "
      "found "
      "counts.");
  say_fine_feed(bench);
}

void write_headstock_taper(LatheBench& bench, const std::string& feature, const Figure& length) {
  const shop::LatheSizes& lathe = bench.setup.machine.lathe;
  if (!lathe.tapers || !lathe.tapers_over || lathe.tapers_over->base() <= 0.0) return;
  const Figure& by = stated(bench, feature + "/headstock tapers", lathe.tapers->base(), "the shop");
  const Figure& over =
      stated(bench, feature + "/headstock tapers over", lathe.tapers_over->base(), "the shop");
  bench.pen.work(
      feature + "/headstock taper", Kind::kLength,
      "larger at the headstock end by, on diameter, over its length",
      [](auto b, auto o, auto l) { return b / o * l; }, by, over, length);
}

}  // namespace sparewright::route
