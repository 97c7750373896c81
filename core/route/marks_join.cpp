// Putting pieces together at the bench: a bush into its hole, and a split part's pieces to each other.
#include <cmath>

#include <fmt/format.h>

#include "core/handbook/reaming.hpp"
#include "core/route/desk.hpp"
#include "core/route/joint_words.hpp"
#include "core/route/marks.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;
using shop::ToolKind;

std::string range(const MarksBench& bench, const Figure& least, const Figure& most) {
  if (!least.known() || !most.known()) return "NOT KNOWN";
  return fmt::format("{} to {}", bench.print.fine(std::abs(least.value)),
                     bench.print.fine(std::abs(most.value)));
}

// What a bush's bore may be at most before it is pressed in, so that the reamer has metal all round afterwards: pressing only
// closes it. Not known where it is not reamed, or the size is not tabled.
const Figure* bore_before(MarksBench& bench, const Work& work) {
  const Figure& finished = bench.feature_figure(work.feature, "bore/least");
  if (tool_of_kind(work, ToolKind::kReamer) == nullptr || !finished.known()) return nullptr;
  const auto stock = handbook::reaming_stock(quantity::Diameter::from_base(finished.value));
  if (!stock) return nullptr;
  ledger::Root leave;
  leave.kind = Kind::kLength;
  leave.value = stock->low.base();
  leave.origin = ledger::Origin::kStandard;
  leave.source = handbook::cite(stock->source);
  return &bench.pen.work(
      work.feature + "/bore before pressing", Kind::kDiameter,
      "the finished bore at its least less what is reamed", [](auto bore, auto left) { return bore - left; },
      finished, bench.pen.root(work.feature + "/left to ream", std::move(leave)));
}

// Before it goes in both can still be put right.
void prove_bush(MarksBench& bench, const Work& work, const part::Formed& bush) {
  const std::string& feature = work.feature;
  const part::Feature* hole = part::find_feature(bench.route.part, bush.of);
  Stop stop;
  stop.says = fmt::format("STOP. {} and {}: cold, clean, two ways, both ends.", feature, bush.of);
  if (hole != nullptr)
    stop.readings.push_back(
        {bush.of, limits_of(bench, bush.of, std::get<part::Hole>(hole->shape).diameter, "diameter")});
  const Figure& least = bench.feature_figure(feature, "diameter/least");
  const Figure& most = bench.feature_figure(feature, "diameter/most");
  stop.readings.push_back({fmt::format("{}, outside", feature),
                           or_not_known(least, bench.print.limits(least.value, most.value, true))});
  if (const Figure* bore = bore_before(bench, work))
    stop.readings.push_back(
        {fmt::format("{}, bore, at most, to be reamed later", feature), bench.print.fine(bore->value)});
  const Figure& tight_least = bench.feature_figure(feature, "interference/least");
  const Figure& tight_most = bench.feature_figure(feature, "interference/most");
  stop.rule = bush.is_bonded
                  ? fmt::format("Hole less bush must be {}. Tight: do NOT push it in.",
                                range(bench, tight_most, tight_least))
                  : fmt::format("Bush less hole must be {}. Loose: do NOT press, it will not stay.",
                                range(bench, tight_least, tight_most));
  bench.sheet.items.emplace_back(std::move(stop));
}

void write_pressing(MarksBench& bench, const std::string& feature, const part::Formed& bush) {
  bench.add_line(fmt::format("{}: a lead-in on its end and on the edge of {}", feature, bush.of)).expect =
      "no burr";
  if (bush.is_bonded) {
    bench
        .add_line(fmt::format("degrease {} and {}, wet both with retaining compound, turn it as it goes in",
                              feature, bush.of))
        .expect = "flush";
    bench.add_line("leave it as long as the maker of the compound says").expect = "hard";
    return;
  }
  bench.add_line(fmt::format("stand the work on a ring right under {}, wider than the bush", bush.of))
      .expect = "does not rock";
  Line& line =
      bench.add_line(fmt::format("oil {}, start it square, prove it with a square, press it home", feature));
  line.feed = "press";
  line.expect = "flush";
  bench.sheet.items.emplace_back(
      Note{fmt::format("{}: {}. If it stops short or goes askew: back out, measure again.", feature,
                       press_force_words(bench.pen, bench.print.system(), feature))});
}

void finish_bore(MarksBench& bench, const Work& work, const part::Formed& bush) {
  const std::string& feature = work.feature;
  const part::Dimension& bore = bush.sizes.at("bore");
  const shop::Tool* reamer = tool_of_kind(work, ToolKind::kReamer);
  if (reamer == nullptr) {
    Line& line = bench.add_line(fmt::format("{}: measure its bore, it may have closed", feature));
    line.expect = limits_of(bench, feature, bore, "bore");
    line.to_fill = true;
    return;
  }
  bench.take(*reamer);
  tool_diameter(bench, fmt::format("{}/{} diameter", feature, reamer->name), *reamer);
  Line& line = bench.add_line(
      fmt::format("{}, {}: through its bore, in one go, never turned back", feature, reamer->name));
  line.rpm = "by hand";
  line.feed = "oil";
  line.expect = limits_of(bench, feature, bore, "bore");
  line.to_fill = true;
}

// The screws stand across the joint.
std::vector<std::string> screws_across(const MarksBench& bench, const part::Formed& split) {
  std::vector<std::string> names;
  for (const part::Feature& feature : bench.route.part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    const bool is_across =
        hole != nullptr && !hole->lean && part::axis_of(hole->into) == part::axis_of(split.side);
    if (is_across && (hole->screw || !hole->thread.empty() || !hole->depth)) names.push_back(feature.name);
  }
  return names;
}

void say_closes(MarksBench& bench, const std::string& feature, const part::Formed& split) {
  const Figure& width = bench.feature_figure(feature, "width");
  if (!split.sizes.contains("shim")) {
    bench.pen.work(
        feature + "/closes by", Kind::kLength, "the width of the split", [](auto w) { return w; }, width);
  } else {
    bench.pen.work(
        feature + "/closes by", Kind::kLength, "the width of the split less the shim",
        [](auto w, auto s) { return w - s; }, width, bench.feature_figure(feature, "shim"));
  }
  const Figure& closes = bench.pen.ask(fmt::format("{}/{}/closes by", bench.pen.stage(), feature));
  if (!closes.known() || closes.value <= 0.0) return;
  bench.sheet.items.emplace_back(
      Note{fmt::format("{}: joined, it is {} shorter across the joint than before it was sawn.", feature,
                       bench.print.plain(closes.value))});
}

}  // namespace

void write_bush(MarksBench& bench, const Work& work, const part::Formed& bush) {
  const Figure& length = bench.feature_figure(work.feature, "length");
  bench.sheet.items.emplace_back(
      Note{fmt::format("{} is a piece of its own, {} long: it has to be there.", work.feature,
                       or_not_known(length, bench.print.plain(length.value)))});
  prove_bush(bench, work, bush);
  write_pressing(bench, work.feature, bush);
  finish_bore(bench, work, bush);
}

void write_join(MarksBench& bench, const Work& work, const part::Formed& split) {
  const std::string& feature = work.feature;
  bench.add_line(fmt::format("{}: burrs off both faces of the joint, wipe, match-marks together", feature))
      .expect = "faces clean";
  if (split.sizes.contains("shim")) {
    const Figure& shim = bench.feature_figure(feature, "shim");
    bench
        .add_line(fmt::format("{}: shims of {} between, all alike, clear of what is bored later", feature,
                              or_not_known(shim, bench.print.plain(shim.value))))
        .expect = "flat";
  }
  const std::vector<std::string> screws = screws_across(bench, split);
  bench
      .add_line(
          screws.empty()
              ? fmt::format("{}: no hole for a screw crosses the joint: clamp the pieces", feature)
              : fmt::format("screws into {}: all in by fingers first, then evenly, across", listed(screws)))
      .expect = "no gap";
  const std::string torque = torque_words(bench.pen, bench.print.system(), screws);
  bench.sheet.items.emplace_back(
      Note{torque.empty()
               ? fmt::format(
                     "{}: how hard the screws are tightened is NOT KNOWN here. The same each time, marked.",
                     feature)
               : fmt::format("{}: the screws {}. The same each time, marked.", feature, torque)});
  say_closes(bench, feature, split);
  Stop stop;
  stop.says =
      fmt::format("STOP. {}: the thinnest feeler must not go into the joint, nor beside a shim.", feature);
  stop.rule =
      "It goes in: apart again, burrs and chips off. Nothing is cut through the joint before it is tight.";
  bench.sheet.items.emplace_back(std::move(stop));
}

}  // namespace sparewright::route
