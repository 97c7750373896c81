// The lines of a slot, a keyseat or a pocket: down to depth, then out to its walls.
#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/cutting/passes.hpp"
#include "core/handbook/keyseat_formulas.hpp"
#include "core/route/opening.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;

// One opening being written: what every line of it says.
struct Writing {
  MillBench& bench;
  const Opening& o;
  const OpeningPlaces& places;
  std::string rpm;
  std::string feed;

  [[nodiscard]] std::string size(double mm, std::string_view of) const {
    return o.is_fine(of) ? bench.print.fine(mm) : bench.print.plain(mm);
  }
  [[nodiscard]] std::string limits(const std::string& of, bool fine) const {
    const Figure& least = bench.feature_figure(o.name, of + "/least");
    const Figure& most = bench.feature_figure(o.name, of + "/most");
    return or_not_known(least, bench.print.limits(least.value, most.value, fine));
  }
  void note(const std::string& says) const {
    bench.sheet.items.emplace_back(Note{fmt::format("{}: {}", o.name, says)});
  }
  Line& line(const std::string& says, const std::string& z_reads) const {
    Line& line = bench.add_line(fmt::format("{}: {}", o.name, says));
    line.z_reads = z_reads;
    line.rpm = rpm;
    line.feed = feed;
    line.to_fill = true;
    return line;
  }
};

// "X on to 8t + 20", or that it goes right across.
std::string way_along(const OpeningPlaces& places, bool rough) {
  if (!places.lengthwise) return "right across";
  const BetweenWalls& ends = *places.lengthwise;
  return fmt::format("{} on to {}", wheel_of(ends.axis), rough ? ends.rough_far : ends.far);
}

// For a wall, which is fed along one way or the other.
std::string between_ends(const OpeningPlaces& places, bool rough) {
  if (!places.lengthwise) return "right across";
  const BetweenWalls& ends = *places.lengthwise;
  return fmt::format("{} between {} and {}", wheel_of(ends.axis), rough ? ends.rough_near : ends.near,
                     rough ? ends.rough_far : ends.far);
}

void put_start(Line& line, const OpeningPlaces& places, bool rough) {
  if (!places.lengthwise) return;
  const BetweenWalls& ends = *places.lengthwise;
  put_reading(line, ends.axis, rough ? ends.rough_near : ends.near);
}

// --- how it is gone about -------------------------------------------------------------------------------------------
void say_touch(const Writing& w, bool over_bar) {
  w.note(fmt::format("touch the {} with the cutter, Z collar to 0.",
                     over_bar ? "crest of the bar" : std::string(part::name_of(w.o.formed.side))));
  if (!over_bar || w.o.formed.form != part::Form::kKeyseat) return;
  const Figure& bar = w.bench.pen.ask(fmt::format("{}/{}/bar there", w.bench.pen.stage(), w.o.name));
  const Figure& side = w.bench.pen.work(
      w.o.name + "/depth at the side", Kind::kLength, "depth from the crest less the arc over the keyseat",
      [](auto depth, auto d, auto width) { return depth - handbook::keyseat_arc_height_mm(d, width); },
      w.o.depth, bar, w.o.width);
  w.note(fmt::format(
      "its depth is from the crest: {}. At its side the same depth is {}: do not take one for the other.",
      w.bench.print.plain(w.o.depth.value), or_not_known(side, w.bench.print.plain(side.value))));
}

// A reground cutter is not its nominal.
void say_width(const Writing& w) {
  if (w.o.own_width) return w.note("the cutter makes its width.");
  const Figure& short_by = w.bench.pen.work(
      w.o.name + "/cutter short by", Kind::kLength, "nominal width less the cutter",
      [](auto width, auto d) { return width - d; }, w.bench.feature_figure(w.o.name, "width"), w.o.cutter);
  w.note(fmt::format("the cutter alone makes {}, {} less than {}: {}.", w.size(w.o.cutter.value, "width"),
                     w.bench.print.plain(short_by.value),
                     w.bench.print.nominal(w.bench.feature_figure(w.o.name, "width").value),
                     w.o.wide ? "cut it in rows, its walls last" : "it is widened at full depth"));
}

// Where its middle lies across, from where the edge finder touched.
void say_from_touch(const Writing& w) {
  const std::string axis(name_of(w.places.across.axis));
  const std::string op = w.bench.pen.stage();
  const std::string reading = w.o.own_width ? fmt::format("{}/{}/{}", op, w.o.name, axis)
                                            : fmt::format("{}/{}/{} middle", op, w.o.name, axis);
  const Figure& wanted = w.bench.pen.ask(reading + " wanted");
  const Figure& tip = w.bench.pen.ask(fmt::format("{}/pick up {} tip radius", op, axis));
  const Figure& from_touch = w.bench.pen.work(
      fmt::format("{}/{} from touch", w.o.name, axis), Kind::kLength,
      "the edge finder's radius and the place", [](auto at, auto r) { return at + r; }, wanted, tip);
  if (!from_touch.known()) return;
  w.note(fmt::format("its middle lies {} in: {} {} from where the edge finder touched.",
                     w.bench.print.plain(wanted.value), wheel_of(w.places.across.axis),
                     w.bench.print.plain(from_touch.value)));
}

void say_rows(const Writing& w) {
  const BetweenWalls& across = w.places.across;
  const std::string_view wheel = wheel_of(across.axis);
  if (across.rows.empty()) {
    const Figure& step =
        w.bench.choice(w.o.name + "/step over at most", Kind::kLength, kPassWidth * w.o.cutter.value,
                       "three quarters of the cutter", {&w.o.cutter});
    w.note(fmt::format("at each depth from {} {} to {}, in steps of {} at most.", wheel, across.rough_near,
                       across.rough_far, w.bench.print.plain(step.value)));
    return;
  }
  std::string rows;
  for (const std::string& reads : across.rows)
    rows += (rows.empty() ? "" : ", then ") + reads;
  w.note(fmt::format("at each depth {} {}. Up clear of the work before {} goes back.", wheel, rows, wheel));
}

// Two and three flutes are ground over the middle. Common practice.
bool cuts_to_its_middle(const shop::Tool& mill) {
  return mill.flutes == 2 || mill.flutes == 3;
}

void say_ends(const Writing& w) {
  if (!w.places.lengthwise) {
    w.note("each pass right across, the cutter clear of the work at both ends.");
    return;
  }
  w.note(
      std::string(cuts_to_its_middle(w.o.mill)
                      ? ""
                      : "a cutter that does not cut to its middle wants a hole drilled where it starts. ") +
      "up clear of the work before it goes back.");
  const bool slot_ends = w.o.wide && w.o.formed.form != part::Form::kPocket;
  if (slot_ends)
    w.note("its ends come out flat, with corners of half the cutter: the cutter is smaller than the width.");
}

// --- down to depth --------------------------------------------------------------------------------------------------
cutting::Passes depths(const Opening& o) {
  // Full width: no deeper than half the cutter (common practice).
  const double greatest = std::min(o.cuts.quiet_mm, o.cutter.value / 2.0);
  if (!o.is_through())
    return cutting::share_out(0.0, o.depth.value,
                              {greatest, o.cuts.like_mm, o.cuts.least_mm, o.cuts.step_mm});
  cutting::Passes passes;
  const int count = static_cast<int>(std::ceil(o.depth.value / greatest - 1e-9));
  for (int i = 1; i <= count; ++i)
    passes.sizes_mm.push_back(o.depth.value * i / count);
  return passes;
}

void stop_before_depth(const Writing& w, const std::optional<OverTheBack>& over, double before_mm) {
  Stop stop;
  const double aim_mm = w.o.depth.value;
  const Figure& left = w.bench.pen.work(
      w.o.name + "/left for the last pass", Kind::kLength, "the depth to make less the depth so far",
      [before_mm](auto depth) { return depth - before_mm; }, w.o.depth);
  if (over) {
    stop.says = fmt::format(
        "STOP. {}: wipe, measure over the back, from the floor to the far side of the bar, or down to what "
        "it sits on.",
        w.o.name);
    const Figure& now = w.bench.pen.work(
        w.o.name + "/over the back before the last pass", Kind::kLength, "the bar less the depth so far",
        [before_mm](auto bar) { return bar - before_mm; }, *over->whole);
    stop.readings.push_back({"found, should be", w.bench.print.plain(now.value)});
    stop.rule = fmt::format("Left to go = found less {}.", w.bench.print.plain(over->whole->value - aim_mm));
  } else {
    stop.says = fmt::format("STOP. {}: wipe, measure the depth.", w.o.name);
    stop.readings.push_back({"found, should be", w.bench.print.plain(before_mm)});
    stop.rule = fmt::format("Left to go = {} less found.", w.bench.print.plain(aim_mm));
  }
  stop.rule += fmt::format(
      " It should be about {}; if it is half or double, do NOT cut. Z goes on from where it stands by what "
      "is left to "
      "go.",
      w.bench.print.plain(left.value));
  w.bench.sheet.items.emplace_back(std::move(stop));
}

std::string depth_expect(const Writing& w, const std::optional<OverTheBack>& over) {
  if (w.o.is_through()) return "through";
  if (over)
    return "over the back " +
           or_not_known(*over->most, w.bench.print.limits(over->least->value, over->most->value, false));
  return "depth " + w.limits("depth", false);
}

// Returns the knee's reading at full depth.
std::string write_depths(const Writing& w, const std::optional<OverTheBack>& over) {
  const auto passes = depths(w.o);
  const std::string& across = w.o.wide ? w.places.across.rough_near : w.places.across.middle;
  std::string z;
  for (std::size_t i = 0; i < passes.sizes_mm.size(); ++i) {
    const bool last = i + 1 == passes.sizes_mm.size();
    const double depth_mm = passes.sizes_mm[i];
    if (last && passes.two_like_last) stop_before_depth(w, over, passes.sizes_mm[i - 1]);
    const Figure& depth =
        w.bench.choice(fmt::format("{}/depth {}", w.o.name, i + 1), Kind::kLength, depth_mm,
                       "metal shared out, two like cuts last (common practice)", {&w.o.depth});
    const std::string cut = fmt::format("{}/cut {}", w.o.name, i + 1);
    const DepthReading reading = depth_reading(w.bench, cut, depth);
    z = reading.reads;
    const std::string down = last && !w.o.is_through()
                                 ? fmt::format("to AIM {} deep", w.bench.print.plain(depth_mm))
                                 : fmt::format("{} down", w.bench.print.plain(reading.makes_mm));
    Line& line = w.line(fmt::format("mill {}, {}", down, way_along(w.places, w.o.wide)), z);
    put_start(line, w.places, w.o.wide);
    put_reading(line, w.places.across.axis, across);
    line.expect = last ? depth_expect(w, over) : "down " + w.bench.print.plain(reading.makes_mm);
    if (last && !w.o.is_through()) write_depth_made(w.bench, w.o.name, cut, reading);
  }
  return z;
}

// --- out to the walls -----------------------------------------------------------------------------------------------
// Each of a pair of walls: the far one first, so that the wheel goes on the way it finishes.
struct Widening {
  std::string what;  // "width"
  const Figure& wanted;
  const BetweenWalls& walls;
  double before_mm = 0.0;  // of it, when this begins
  bool is_ends = false;
};

void stop_as_cut(const Writing& w, const Widening& v, const Figure& left) {
  Stop stop;
  stop.says = fmt::format("STOP. {}: wipe, measure the {} as cut.", w.o.name, v.what);
  stop.readings.push_back({"found, should be", w.size(v.before_mm, v.what)});
  stop.rule = fmt::format(
      "Each side takes half of {} less found, about {}. If it was cut wider than the cutter, set both sides "
      "nearer to "
      "the middle by half of that.",
      w.size(v.wanted.value, v.what), w.size(left.value, v.what));
  w.bench.sheet.items.emplace_back(std::move(stop));
}

// What the last side takes.
const Figure& left_for_last(const Writing& w, const Widening& v) {
  const double before = v.before_mm;
  return w.bench.pen.work(
      fmt::format("{}/{} left for the last side", w.o.name, v.what), Kind::kLength,
      "half of what is left to widen", [before](auto wanted) { return (wanted - before) / 2.0; }, v.wanted);
}

void stop_before_last_wall(const Writing& w, const Widening& v, const Figure& now, const Figure& left) {
  Stop stop;
  stop.says = fmt::format("STOP. {}: wipe, measure the {}.", w.o.name, v.what);
  stop.readings.push_back({"found, should be", w.size(now.value, v.what)});
  stop.rule = fmt::format(
      "Left to go = {} less found. It should be about {}; if it is half or double, do NOT cut. The last side "
      "takes just "
      "what is left.",
      w.size(v.wanted.value, v.what), w.size(left.value, v.what));
  w.bench.sheet.items.emplace_back(std::move(stop));
}

Line& wall_line(const Writing& w, const Widening& v, const std::string& says, const std::string& z) {
  return w.line(
      fmt::format("{}, {}", says, v.is_ends ? "from side to side" : between_ends(w.places, w.o.wide)), z);
}

// Right-hand cutters turn clockwise seen from above. With the cut they pull the slide through its slack.
void say_feed(const Writing& w) {
  w.note(w.places.across.axis == MachineAxis::kY
             ? "feed against the cutter's turning: the wall away from you going right, the one near you "
               "going left."
             : "feed against the cutter's turning: the right wall towards you, the left one away from you.");
}

void write_walls(const Writing& w, const Widening& v, const std::string& z) {
  const std::string_view wheel = wheel_of(v.walls.axis);
  const std::string_view wall = v.is_ends ? "end" : "side";
  const Figure& left = left_for_last(w, v);
  const Figure& now = w.bench.pen.work(
      fmt::format("{}/{} before the last side", w.o.name, v.what), Kind::kLength,
      "to make, less what is left", [](auto wanted, auto l) { return wanted - l; }, v.wanted, left);
  if (!w.o.wide) stop_as_cut(w, v, left);
  Line& far = wall_line(w, v, fmt::format("widen, {} far {}", wheel, wall), z);
  put_reading(far, v.walls.axis, v.walls.far);
  far.expect = w.size(now.value, v.what);
  stop_before_last_wall(w, v, now, left);
  w.note(
      fmt::format("cutter up clear of the work before {} goes back: half a turn beyond, up to the line's "
                  "reading, then down to depth.",
                  wheel));
  Line& near = wall_line(
      w, v, fmt::format("widen to AIM {}, {} near {}", w.size(v.wanted.value, v.what), wheel, wall), z);
  put_reading(near, v.walls.axis, v.walls.near);
  near.expect = w.limits(v.what, w.o.is_fine(v.what));
}

void write_all_walls(const Writing& w, const std::string& z) {
  if (w.o.own_width) return;
  say_feed(w);
  const double leave = 2.0 * w.o.cuts.wall_leave_mm;
  write_walls(w, {"width", w.o.width, w.places.across, w.o.wide ? w.o.width.value - leave : w.o.cutter.value},
              z);
  if (w.o.wide && w.places.lengthwise)
    write_walls(w, {"length", *w.o.length, *w.places.lengthwise, w.o.length->value - leave, true}, z);
}

// What runs out over the jaws.
void write_above_jaws(MillBench& bench, const Opening& o) {
  if (bench.on.holding.vise() == nullptr) return;
  if (o.length != nullptr || machine_axis(bench, o.along) != MachineAxis::kY) return;
  const std::string hold = bench.pen.stage() + "/hold/";
  bench.pen.work(
      o.name + "/above jaws", Kind::kLength, "its floor above what it sits on, less what is gripped",
      [](auto from, auto sits, auto depth, auto gripped) {
        using std::abs;
        return abs(from - sits) - depth - gripped;
      },
      bench.feature_figure(o.name, "starts at"), bench.side(bench.on.holding.sits_on), o.depth,
      bench.pen.ask(hold + "gripped"));
}

// The nearer of the two parallels from what goes right through.
void write_to_parallel(MillBench& bench, const Opening& o) {
  if (!o.is_through() || bench.on.holding.vise() == nullptr) return;
  const bool across = machine_axis(bench, o.across) == MachineAxis::kY;
  const Figure* extent = across ? &o.width : o.length;
  if (extent == nullptr) return;
  const part::Axis y = along(bench.orientation, MachineAxis::kY).axis;
  const Figure& parallel = stated_length(bench, o.name + "/parallel", bench.on.holding.under.thickness.base(),
                                         "thickness of a parallel, hard against the jaw");
  if (sits_on_middle(bench)) {
    bench.pen.work(
        o.name + "/to parallel", Kind::kLength,
        "place to the middle, less half of its size and the pair of parallels",
        [](auto at, auto low, auto high, auto size, auto thick) {
          using std::abs;
          return abs(at - (low + high) / 2.0) - size / 2.0 - thick;
        },
        bench.feature_figure(o.name, fmt::format("at {}", part::name_of(y))),
        bench.side(part::face_at(y, false)), bench.side(part::face_at(y, true)), *extent, parallel);
    return;
  }
  bench.pen.work(
      o.name + "/to parallel", Kind::kLength, "the nearer jaw less half of its size and the parallel",
      [](auto at, auto low, auto high, auto size, auto thick) {
        using std::min;
        return min(at - low, high - at) - size / 2.0 - thick;
      },
      bench.feature_figure(o.name, fmt::format("at {}", part::name_of(y))),
      bench.side(part::face_at(y, false)), bench.side(part::face_at(y, true)), *extent, parallel);
}

}  // namespace

void write_opening(MillBench& bench, const Work& work, const part::Formed& formed) {
  const auto opening = opening_of(bench, work, formed);
  if (!opening) {
    bench.add_line(fmt::format("{}: mill", work.feature)).expect = "NOT KNOWN";
    return;
  }
  const Opening& o = *opening;
  const OpeningPlaces places = dial_opening(bench, o);
  const auto over = over_the_back(bench, o);
  write_above_jaws(bench, o);
  write_to_parallel(bench, o);
  const std::string name = fmt::format("{}/{}", o.name, o.mill.name);
  const std::string rpm = rpm_text(bench, name, o.mill, handbook::Operation::kMilling, o.cutter.value);
  const Writing w{bench, o, places, rpm, feed_text(bench, name, o.mill)};
  bench.take(o.mill);
  say_touch(w, over.has_value());
  say_width(w);
  if (over) say_from_touch(w);
  say_ends(w);
  if (o.wide) say_rows(w);
  const std::string z = write_depths(w, over);
  write_all_walls(w, z);
}

}  // namespace sparewright::route
