// The lines that bring one diameter to its size: roughing cuts, two alike, a STOP, the last one.
#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/cutting/passes.hpp"
#include "core/cutting/whole_divisions.hpp"
#include "core/handbook/feeds.hpp"
#include "core/route/lathe_bench.hpp"

namespace sparewright::route {
namespace {

using handbook::Operation;
using ledger::Figure;
using quantity::Kind;
using quantity::UnitSystem;

// Cuts on diameter. Common practice on a small lathe: 0.040 in deep at most where the shop says nothing, two like cuts of
// 0.010 in on diameter to finish, nothing under 0.002 in. Of a boring bar half as deep.
constexpr double kUsualDepth_mm = 1.0;
constexpr double kLike_mm = 0.25;
constexpr double kLeast_mm = 0.05;
constexpr double kInch_mm = 25.4;
// Closer limits than these are not cut to without measuring before the last cut. A choice made here, without a source.
constexpr double kClose_mm = 0.2;
// More roughing cuts than these stand on one line.
constexpr std::size_t kOwnLines = 3;
constexpr long kFewCuts = 4;

struct Cuts {
  std::vector<double> sizes_mm;  // after each cut from the cross slide
  bool two_like_last = false;
  bool fine_last = false;  // one more, by the compound
};

struct Speeds {
  std::string rough_rpm;
  std::string rough_feed;
  std::string last_rpm;
  std::string last_feed;
};

cutting::PassLimits pass_limits(const LatheBench& bench, const Diameter& d, double step_mm) {
  const bool inch = bench.print.system() == UnitSystem::kInch;
  const auto& quiet = bench.setup.machine.quiet_cut;
  const double depth = (quiet  ? quiet->base()
                        : inch ? 0.040 * kInch_mm
                               : kUsualDepth_mm) /
                       (d.inside ? 2.0 : 1.0);
  double like = inch ? 0.010 * kInch_mm : kLike_mm;
  if (step_mm > 0.0 && like > step_mm) like = std::floor(like / step_mm + 1e-6) * step_mm;
  return {std::max(2.0 * depth, like), like, inch ? 0.002 * kInch_mm : kLeast_mm, step_mm};
}

// Nothing to hit closely: as few cuts as the greatest allows. A few are as even as whole divisions allow; of many all but
// the first are alike.
std::vector<double> alike_cuts(double from_mm, double aim_mm, const cutting::PassLimits& limits) {
  const double way = aim_mm < from_mm ? -1.0 : 1.0;
  const double metal = std::abs(aim_mm - from_mm);
  constexpr double kSame = 1e-6;
  const auto cuts_of = [&](double each) {
    return std::max(1L, std::lround(std::ceil(metal / each - kSame)));
  };
  double each = limits.greatest_mm;
  const bool whole = limits.step_mm > 0.0 && limits.step_mm < each;
  if (whole) each = std::floor(each / limits.step_mm + kSame) * limits.step_mm;
  const long least = cuts_of(each);
  long count = least;
  for (const double most = each; least <= kFewCuts; ++count) {
    each = metal / static_cast<double>(count);
    if (whole) each = std::max(1.0, std::floor(each / limits.step_mm + 0.5)) * limits.step_mm;
    const double first = metal - each * static_cast<double>(count - 1);
    if (std::max(first, each) <= most + kSame || count > least) break;
  }
  std::vector<double> sizes;
  for (long i = 1; i <= count; ++i)
    sizes.push_back(aim_mm - way * each * static_cast<double>(count - i));
  return sizes;
}

Cuts cuts_of(LatheBench& bench, const Diameter& d, const Figure& aim, const Figure& least,
             const Figure& most) {
  const shop::Collar* collar = lathe_collar(bench, kCrossSlide);
  const double step = collar != nullptr ? on_diameter_mm(*collar) : 0.0;
  const cutting::PassLimits limits = pass_limits(bench, d, step);
  const bool close = is_close(*d.dimension, least, most);
  if (close && !d.inside && has_fine_feed(bench) && step > most.value - least.value) {
    const auto shared = cutting::whole_divisions(d.from->value, aim.value, limits);
    return {shared.sizes_mm, shared.two_like_last, true};
  }
  if (close) {
    const auto shared = cutting::share_out(d.from->value, aim.value, limits);
    return {shared.sizes_mm, shared.two_like_last, false};
  }
  return {alike_cuts(d.from->value, aim.value, limits), false, false};
}

Speeds speeds_of(LatheBench& bench, const Diameter& d, const Figure& aim, bool two_speeds) {
  const std::string name = fmt::format("{}/{}", d.feature, d.tool->name);
  const Operation rough = d.inside ? Operation::kBoring : Operation::kTurningRough;
  const Operation last = d.inside ? Operation::kBoring : Operation::kTurningFinish;
  const double larger = std::max(d.from->value, aim.value);
  Speeds s{rpm_text(bench, name, *d.tool, rough, larger), feed_a_turn(bench, name, *d.tool, rough), "", ""};
  s.last_rpm = s.rough_rpm;
  s.last_feed = s.rough_feed;
  if (!two_speeds || d.inside) return s;
  s.last_rpm = rpm_text(bench, name + " last", *d.tool, last, larger);
  s.last_feed = feed_a_turn(bench, name + " last", *d.tool, last);
  return s;
}

// The head of each line: "seat: turn".
std::string head_of(const Diameter& d) {
  return fmt::format("{}: {}", d.feature, d.what);
}

std::string size_text(const LatheBench& bench, double mm, bool fine) {
  return fine ? bench.print.fine(mm) : bench.print.plain(mm);
}

enum class GoesOnBy { kCross, kCrossFromZeroHere, kCompound };

void stop_before_last(LatheBench& bench, const Diameter& d, const Figure& aim, const Figure& before,
                      GoesOnBy how) {
  Stop stop;
  stop.says = fmt::format(
      "STOP. {}: let it cool, wipe. Measure at both ends of it, two ways.{}", d.feature,
      how == GoesOnBy::kCrossFromZeroHere ? " Leave the cross where it stands, its collar to 0." : "");
  stop.readings.push_back({"found, should be", bench.print.fine(before.value)});
  const double left =
      bench
          .choice(d.feature + "/left, about", Kind::kLength, std::abs(before.value - aim.value),
                  "what the cut before should leave", {&before, &aim})
          .value;
  stop.rule = fmt::format(
      "Left to go = {}. It should be about {}; if it is half or double, do NOT cut.",
      d.inside ? bench.print.fine(aim.value) + " less found" : "found less " + bench.print.fine(aim.value),
      bench.print.fine(left));
  const shop::Collar* collar = lathe_collar(bench, kCrossSlide);
  const bool travel = collar != nullptr && collar->reads == shop::CollarReads::kTravel;
  if (how != GoesOnBy::kCompound)
    stop.rule += fmt::format(" From where it stands the cross goes on by {}.",
                             travel ? "HALF of what is left" : "what is left");
  if (d.work->found) stop.rule += fmt::format(" Found {}.", bench.print.fine(d.work->found->base));
  bench.sheet.items.emplace_back(std::move(stop));
}

// A bore as drilled has no known size: what the first cut makes is measured, and counts from then on.
void stop_after_first(LatheBench& bench, const Diameter& d, const Figure& after) {
  Stop stop;
  stop.says = fmt::format(
      "STOP. {}: wipe, measure what the first cut made. Leave the cross where it stands, its "
      "collar to 0.",
      d.feature);
  stop.readings.push_back({"found, no more than", bench.print.fine(after.value)});
  stop.rule = "The readings below are for that size: smaller, and each is more by the difference.";
  bench.sheet.items.emplace_back(std::move(stop));
  bench.touched_by = d.tool->name;
  bench.touched_at = &after;
}

struct Cut {
  std::size_t number = 0;
  bool first = false;
  bool last = false;
  bool to_shoulder = false;
  bool finishes = false;  // one of the like cuts, or the last: speed and feed are theirs
};

Line& cut_line(LatheBench& bench, const Diameter& d, const Cut& cut, const Figure& after,
               const Speeds& speeds, double keeps_mm, bool fine) {
  const bool skim = cut.first && d.inside && !cut.last;
  const std::string name = fmt::format("{}/cut {}", d.feature, cut.number);
  CrossReading reading;
  if (!skim) reading = cross_reads(bench, name, after, keeps_mm);
  const std::string where = cut.to_shoulder ? d.to_where : "";
  Line& line = bench.add_line(
      skim       ? fmt::format("{}, first cut: out until it cuts all round, no larger than {}", head_of(d),
                               bench.print.fine(after.value))
      : cut.last ? fmt::format("{} to AIM {}{}", head_of(d), size_text(bench, after.value, fine), where)
                 : fmt::format("{}{}", head_of(d), where));
  line.x_reads = skim ? "" : reading.reads;
  line.z_reads = cut.to_shoulder ? d.last_along : d.rough_along;
  line.rpm = cut.finishes ? speeds.last_rpm : speeds.rough_rpm;
  line.feed = cut.finishes ? speeds.last_feed : speeds.rough_feed;
  line.expect =
      cut.last
          ? limits_of(bench, d.feature, d.local, fine)
          : fmt::format(
                "{}{}", skim ? "up to " : "",
                size_text(bench, skim || reading.lands == nullptr ? after.value : reading.makes_mm, fine));
  line.to_fill = fine;
  return line;
}

// Many roughing cuts on one line: the first, and how far the cross goes on for each of the others.
void rough_line(LatheBench& bench, const Diameter& d, const std::vector<const Figure*>& sizes,
                const Speeds& speeds) {
  const CrossReading first = cross_reads(bench, d.feature + "/cut 1", *sizes.front(), std::nan(""));
  CrossReading last = first;
  for (std::size_t i = 1; i < sizes.size(); ++i)
    last = cross_reads(bench, fmt::format("{}/cut {}", d.feature, i + 1), *sizes[i], std::nan(""));
  const shop::Collar* collar = lathe_collar(bench, kCrossSlide);
  const double each = std::abs(sizes[1]->value - sizes[0]->value);
  Line& line = bench.add_line(
      collar == nullptr
          ? fmt::format("{}, {} cuts", head_of(d), sizes.size())
          : fmt::format("{}, {} cuts: cross at {}, then {} divisions on for each, to what it reads here",
                        head_of(d), sizes.size(), first.reads, std::lround(each / on_diameter_mm(*collar))));
  line.x_reads = last.reads;
  line.z_reads = d.rough_along;
  line.rpm = speeds.rough_rpm;
  line.feed = speeds.rough_feed;
  line.expect = bench.print.plain(last.lands == nullptr ? sizes.back()->value : last.makes_mm);
}

// What was found there moves the zero: the tool at its reading made that.
void count_from_found(LatheBench& bench, const Diameter& d, const Figure& before) {
  if (!d.work->found || bench.touched_at == nullptr) return;
  bench.touched_at = &bench.pen.work(
      d.feature + "/touched as found", Kind::kDiameter,
      "the diameter touched, by what was found instead of expected",
      [](auto touched, auto found, auto expected) { return touched + found - expected; }, *bench.touched_at,
      found_at_stop(bench, d, before), before);
}

// All that the lines of one diameter are written from.
struct Writing {
  LatheBench& bench;
  const Diameter& d;
  const Figure& aim;
  double limit_mm = 0.0;  // on the side where metal comes off
  bool close = false;
  const Cuts& cuts;
  const Speeds& speeds;
  std::vector<const Figure*> sizes;
};

std::vector<const Figure*> written_sizes(LatheBench& bench, const Diameter& d, const Figure& aim,
                                         const Cuts& cuts) {
  std::vector<const Figure*> sizes;
  for (std::size_t i = 0; i < cuts.sizes_mm.size(); ++i)
    sizes.push_back(
        &bench.choice(fmt::format("{}/cut {}", d.feature, i + 1), Kind::kDiameter, cuts.sizes_mm[i],
                      cuts.two_like_last ? "metal shared out, two like cuts last (common practice)"
                                         : "metal shared out, cuts alike",
                      {d.from, &aim}));
  return sizes;
}

// The diameter the reading makes, where it has been worked out.
const Figure& made_by(const Writing& w, std::size_t cut) {
  const Figure& lands =
      w.bench.pen.ask(fmt::format("{}/{}/cut {} lands", w.bench.pen.stage(), w.d.feature, cut + 1));
  return lands.known() ? lands : *w.sizes[cut];
}

// What has to be measured after a cut in a bore, before the next one.
void after_first_in_bore(const Writing& w, bool stops_anyway) {
  if (!stops_anyway) return stop_after_first(w.bench, w.d, *w.sizes[0]);
  w.bench.touched_by = w.d.tool->name;
  w.bench.touched_at = w.sizes[0];
}

void take_into_bore(LatheBench& bench, const shop::Tool& tool) {
  const shop::Collar* cross = lathe_collar(bench, kCrossSlide);
  if (cross == nullptr) return bench.take(tool);
  say_with_tool(bench, tool,
                fmt::format("the cross goes out, every move ending {}.",
                            shop::name_of(shop::opposite(shop::feeds_in(*cross)))));
}

void write_cuts(const Writing& w) {
  const std::size_t count = w.sizes.size();
  const std::size_t finishing = w.cuts.two_like_last ? 2 : 1;
  const std::size_t roughing = count > finishing ? count - finishing : 0;
  std::size_t i = 0;
  if (roughing > kOwnLines && !w.d.inside) {
    rough_line(w.bench, w.d, {w.sizes.begin(), w.sizes.begin() + static_cast<std::ptrdiff_t>(roughing)},
               w.speeds);
    i = roughing;
  }
  const Figure* before = i > 0 ? &made_by(w, i - 1) : w.d.from;
  for (; i < count; ++i) {
    const bool last = i + 1 == count && !w.cuts.fine_last;
    if (last && w.cuts.two_like_last) {
      stop_before_last(w.bench, w.d, w.aim, *before,
                       w.d.inside && i == 1 ? GoesOnBy::kCrossFromZeroHere : GoesOnBy::kCross);
      count_from_found(w.bench, w.d, *before);
    }
    const Cut cut{i + 1, i == 0, last, i + 1 == count, i >= roughing};
    cut_line(w.bench, w.d, cut, *w.sizes[i], w.speeds, last ? w.limit_mm : std::nan(""), w.close);
    before = &made_by(w, i);
    if (i == 0 && w.d.inside && !last) after_first_in_bore(w, w.cuts.two_like_last && count == 2);
  }
  if (!w.cuts.fine_last) return;
  stop_before_last(w.bench, w.d, w.aim, *before, GoesOnBy::kCompound);
  write_fine_last(w.bench, w.d, found_at_stop(w.bench, w.d, *before), w.speeds.last_rpm, w.speeds.last_feed);
}

}  // namespace

bool is_close(const part::Dimension& dimension, const Figure& least, const Figure& most) {
  return part::has_aim(dimension) || (least.known() && most.known() && most.value - least.value < kClose_mm);
}

std::string limits_of(LatheBench& bench, const std::string& feature, const std::string& local, bool fine) {
  const Figure& least = bench.feature_figure(feature, local + "/least");
  const Figure& most = bench.feature_figure(feature, local + "/most");
  return or_not_known(least, bench.print.limits(least.value, most.value, fine));
}

const Figure& found_at_stop(LatheBench& bench, const Diameter& d, const Figure& before) {
  if (!d.work->found) return before;
  ledger::Root root;
  root.kind = Kind::kDiameter;
  root.value = d.work->found->base;
  root.typed = d.work->found->typed;
  root.origin = ledger::Origin::kReading;
  root.source = "measured at the STOP before the last cut";
  const std::string local = d.feature + "/found";
  const Figure& written = bench.pen.ask(fmt::format("{}/{}", bench.pen.stage(), local));
  return written.known() ? written : bench.pen.root(local, root);
}

std::string feed_a_turn(LatheBench& bench, const std::string& name, const shop::Tool& tool,
                        Operation operation) {
  if (!bench.route.work) return "hand, steady";
  const auto feed = handbook::turning_feed(*bench.route.work, operation, tool.material);
  if (!feed) return "hand, steady";
  ledger::Root root;
  root.kind = Kind::kFeedPerTurn;
  root.value = feed->start.base();
  root.origin = ledger::Origin::kStandard;
  root.source = handbook::cite(feed->printed.front().source);
  const Figure& per_turn = bench.pen.root(name + " feed", root);
  const bool inch = bench.print.system() == UnitSystem::kInch;
  const double printed = inch ? quantity::unit::inch_per_turn.from_base(per_turn.value)
                              : quantity::unit::millimetre_per_turn.from_base(per_turn.value);
  return quantity::fixed(printed, inch ? 3 : 2) + " a turn";
}

void write_diameter(LatheBench& bench, const Diameter& d) {
  const Figure& aim = size_to_make(bench, d.feature, d.local, *d.dimension);
  const Figure& least = bench.feature_figure(d.feature, d.local + "/least");
  const Figure& most = bench.feature_figure(d.feature, d.local + "/most");
  if (!aim.known() || d.from == nullptr || !d.from->known() || d.tool == nullptr) {
    bench.add_line(head_of(d)).expect = "NOT KNOWN";
    return;
  }
  bench.pen.work(
      d.feature + "/metal", Kind::kLength, "what is to come off, on diameter",
      [inside = d.inside](auto from, auto to) { return inside ? to - from : from - to; }, *d.from, aim);
  const bool close = is_close(*d.dimension, least, most);
  const bool none = d.inside ? aim.value <= d.from->value : aim.value >= d.from->value;
  if (none) {
    Line& line = bench.add_line(fmt::format("{}: no metal to come off: measure it", d.feature));
    line.expect = limits_of(bench, d.feature, d.local, close);
    line.to_fill = true;
    return;
  }
  const Cuts cuts = cuts_of(bench, d, aim, least, most);
  if (d.inside && cuts.sizes_mm.size() > 1) {
    take_into_bore(bench, *d.tool);  // what the first cut makes is measured instead of a touch
  } else {
    touch(bench, *d.tool, *d.from, d.inside);
  }
  const Speeds speeds = speeds_of(bench, d, aim, close);
  write_cuts({bench, d, aim, d.inside ? most.value : least.value, close, cuts, speeds,
              written_sizes(bench, d, aim, cuts)});
  if (d.length != nullptr) write_headstock_taper(bench, d.feature, *d.length);
  if (close || d.inside) forget_touch(bench);
}

}  // namespace sparewright::route
