// The lines that make one hole at a drill press or a bench, after its place is found.
#include <algorithm>
#include <cmath>
#include <numbers>

#include <fmt/format.h>

#include "core/handbook/drill_points.hpp"
#include "core/handbook/feeds.hpp"
#include "core/route/marks.hpp"

namespace sparewright::route {
namespace {

using handbook::Operation;
using ledger::Figure;
using quantity::Kind;
using shop::Tool;
using shop::ToolKind;

// A drill goes in three diameters before it is drawn out to clear, then one at a time. Common practice.
constexpr double kFirstPeck = 3.0;
constexpr double kLaterPecks = 1.0;
// The web of a twist drill at its point, about a sixth of its diameter; from 3/8 in on a small drill press wants a hole as
// wide as the web before it. Common practice.
constexpr double kWeb = 1.0 / 6.0;
constexpr double kWantsPilot_mm = 9.5;

struct Making {
  MarksBench& bench;
  const Work& work;
  const part::Hole& hole;
  const Figure& length;  // how far the drills go in metal

  [[nodiscard]] const std::string& feature() const { return work.feature; }
  [[nodiscard]] std::string name(const Tool& tool) const {
    return fmt::format("{}/{}", work.feature, tool.name);
  }
};

const Figure& drilled_length(MarksBench& bench, const std::string& feature, const part::Hole& hole) {
  if (hole.depth) return bench.feature_figure(feature, "depth");
  return bench.pen.work(
      feature + "/length", Kind::kLength, "from where it starts to the far side",
      [](auto a, auto b) {
        using std::abs;
        return abs(a - b);
      },
      bench.feature_figure(feature, "starts at"), bench.side(part::opposite(hole.into)));
}

std::string pecks(const Making& m, const Tool& tool, const Figure& length) {
  if (!tool.diameter || !length.known() || length.value <= kFirstPeck * tool.diameter->base) return "";
  const Figure& diameter = tool_diameter(m.bench, m.name(tool) + " pecking", tool);
  const auto times = [&](const char* local, double count, const char* words) -> const Figure& {
    return m.bench.pen.work(
        m.name(tool) + local, Kind::kLength, words, [count](auto d) { return count * d; }, diameter);
  };
  const Figure& first = times(" first peck", kFirstPeck, "three diameters (common practice)");
  const Figure& later = times(" peck", kLaterPecks, "one diameter (common practice)");
  return fmt::format("; out to clear at {}, then after every {} more", m.bench.print.plain(first.value),
                     m.bench.print.plain(later.value));
}

const Tool* next_drill(const Work& work, const Tool& tool) {
  bool after = false;
  for (const Tool& other : work.tools) {
    if (after && other.kind == ToolKind::kTwistDrill) return &other;
    after = after || other.name == tool.name;
  }
  return nullptr;
}

// A drill without a pilot lives by its web; a pilot wider than the web leaves the lips alone to be pulled in.
void say_pilot(const Making& m, const Tool& tool, bool is_first) {
  if (!is_first || !tool.diameter) return;
  const Tool* next = next_drill(m.work, tool);
  const Tool& large = next != nullptr ? *next : tool;
  if (!large.diameter || large.diameter->base < kWantsPilot_mm) return;
  const Figure& web = m.bench.pen.work(
      m.name(large) + " web", Kind::kLength, "about a sixth of the drill (common practice)",
      [](auto d) { return kWeb * d; }, tool_diameter(m.bench, m.name(large) + " over its web", large));
  const std::string wide = m.bench.print.plain(web.value);
  if (next == nullptr) {
    m.bench.sheet.items.emplace_back(Note{fmt::format(
        "{}: {} goes easier after a pilot no wider than its web, about {}.", m.feature(), tool.name, wide)});
  } else if (tool.diameter->base > web.value) {
    m.bench.sheet.items.emplace_back(
        Note{fmt::format("{}: {} is wider than the web of {}, about {}: its lips alone cut and pull it in. "
                         "Clamp well, hold the feed back.",
                         m.feature(), tool.name, large.name, wide)});
  }
}

// Without a dimple the point wanders before it bites: half its cone shows where it goes, and it can still be drawn over.
void say_start(const Making& m) {
  const bool is_spotted = tool_of_kind(m.work, ToolKind::kSpotDrill) != nullptr ||
                          tool_of_kind(m.work, ToolKind::kCentreDrill) != nullptr;
  if (is_spotted) return;
  m.bench.sheet.items.emplace_back(Note{fmt::format(
      "{}: half the point in, lift, look. Off the cross: cut a groove on the side it should go to, "
      "start again.",
      m.feature())});
}

// "hand, 0.10 a turn, oil": where the handbook starts.
std::string drill_feed_words(const Making& m, const Tool& tool) {
  if (m.bench.setup.machine.speeds_rpm.empty() || !tool.diameter) return "hand, oil";
  const auto feed = handbook::drill_feed(tool.diameter->diameter());
  if (!feed) return "hand, oil";
  ledger::Root root;
  root.kind = Kind::kLength;
  root.value = feed->start.in(quantity::unit::millimetre_per_turn);
  root.origin = ledger::Origin::kStandard;
  root.source = fmt::format("{}; the lowest in print", handbook::cite(feed->printed.front().source));
  const Figure& start = m.bench.pen.root(m.name(tool) + " feed per turn", root);
  return fmt::format("hand, about {} a turn, oil", m.bench.print.plain(start.value));
}

std::string touched(const Making& m) {
  return m.bench.setup.machine.collars.contains("quill") ? "quill collar to 0" : "depth stop to 0";
}

// A blind hole by the quill, from where the drill's point touches.
std::string blind_reads(const Making& m, const Tool& tool) {
  ledger::Root point;
  point.kind = Kind::kLength;
  point.origin = ledger::Origin::kStandard;
  point.source = "118 degree point, common practice";
  if (tool.diameter) point.value = handbook::point_length(tool.diameter->diameter()).base();
  const Figure& travel = m.bench.pen.work(
      m.name(tool) + " travel", Kind::kLength, "depth at full diameter and the point",
      [](auto depth, auto tip) { return depth + tip; }, m.bench.feature_figure(m.feature(), "depth"),
      m.bench.pen.root(m.name(tool) + " point", point));
  return quill_reads(m.bench, m.name(tool), travel);
}

// "12.00 deep" of a figure.
std::string deep(const Making& m, const Figure& depth) {
  return fmt::format("{} deep", or_not_known(depth, m.bench.print.plain(depth.value)));
}

// How far the point of a blind hole's largest drill comes past the far side.
void write_below(const Making& m) {
  if (!m.hole.depth) return;
  double widest_mm = 0.0;
  for (const Tool& tool : m.work.tools) {
    if (tool.kind == ToolKind::kTwistDrill && tool.diameter)
      widest_mm = std::max(widest_mm, tool.diameter->base);
  }
  if (widest_mm <= 0.0) return;
  ledger::Root point;
  point.kind = Kind::kLength;
  point.origin = ledger::Origin::kStandard;
  point.source = "point of the largest drill, 118 degrees, common practice";
  point.value = handbook::point_length(quantity::Diameter::from_base(widest_mm)).base();
  m.bench.pen.work(
      m.feature() + "/below", Kind::kLength, "depth and drill point, less the metal there is",
      [](auto depth, auto tip, auto start, auto far) {
        using std::abs;
        return depth + tip - abs(start - far);
      },
      m.bench.feature_figure(m.feature(), "depth"), m.bench.pen.root(m.feature() + "/past the depth", point),
      m.bench.feature_figure(m.feature(), "starts at"), m.bench.side(part::opposite(m.hole.into)));
}

void drill_line(const Making& m, const Tool& tool, bool is_first) {
  MarksBench& bench = m.bench;
  say_pilot(m, tool, is_first);
  if (is_first) say_start(m);
  std::string z;
  if (m.hole.depth) {
    z = blind_reads(m, tool);
    bench.sheet.items.emplace_back(
        Note{fmt::format("{}: {} just touching with its point, {}.", m.feature(), tool.name, touched(m))});
  }
  const std::string how = m.hole.depth ? deep(m, m.length) + " at full diameter" : "through";
  Line& line =
      bench.add_line(fmt::format("{}, {}: {}{}", m.feature(), tool.name, how, pecks(m, tool, m.length)));
  line.z_reads = z;
  line.rpm = turning(bench, m.name(tool), tool, Operation::kDrilling);
  line.feed = drill_feed_words(m, tool);
  const std::string leaves = drilled_expect(bench, m.name(tool), tool);
  line.expect =
      is_last_size(m.work, tool) ? limits_of(bench, m.feature(), m.hole.diameter, "diameter") : leaves;
}

void ream_line(const Making& m, const Tool& tool) {
  tool_diameter(m.bench, m.name(tool) + " diameter", tool);
  const std::string how = m.hole.depth ? deep(m, m.length) : std::string("through");
  Line& line =
      m.bench.add_line(fmt::format("{}, {}: {}, in one go, never turned back", m.feature(), tool.name, how));
  line.rpm = turning(m.bench, m.name(tool), tool, Operation::kReaming);
  line.feed = "hand, oil";
  line.expect = limits_of(m.bench, m.feature(), m.hole.diameter, "diameter");
  line.to_fill = true;
}

void counterbore_line(const Making& m, const Tool& tool) {
  if (!m.hole.counterbore) return;
  m.bench.sheet.items.emplace_back(
      Note{fmt::format("{}: {} just touching the face, {}.", m.feature(), tool.name, touched(m))});
  const Figure& depth = to_make(m.bench, m.feature(), "counterbore depth", m.hole.counterbore->depth);
  const std::string z = quill_reads(m.bench, m.name(tool), depth);
  Line& line = m.bench.add_line(fmt::format("{}, {}: {}", m.feature(), tool.name, deep(m, depth)));
  line.z_reads = z;
  line.rpm = turning(m.bench, m.name(tool), tool, Operation::kDrilling);
  line.feed = "hand, oil";
  line.expect = "depth " + limits_of(m.bench, m.feature(), m.hole.counterbore->depth, "counterbore depth");
  line.to_fill = true;
}

// As deep as its cone is as wide as asked, from where it touches the edge of the hole.
void countersink_line(const Making& m, const Tool& tool) {
  if (!m.hole.countersink) {
    Line& line = m.bench.add_line(fmt::format("{}, {}: break the edge", m.feature(), tool.name));
    line.rpm = turning(m.bench, m.name(tool), tool, Operation::kDrilling);
    line.feed = "hand";
    return;
  }
  const Figure& depth = m.bench.pen.work(
      m.name(tool) + " travel", Kind::kLength, "half of what it is wider than the hole, by its angle",
      [](auto wide, auto hole, auto angle) {
        using std::tan;
        return (wide - hole) / 2.0 / tan(angle / 2.0);
      },
      m.bench.feature_figure(m.feature(), "countersink diameter"),
      m.bench.feature_figure(m.feature(), "diameter"),
      m.bench.feature_figure(m.feature(), "countersink angle"));
  m.bench.sheet.items.emplace_back(Note{fmt::format("{}: {} touching the edge of the hole all round, {}.",
                                                    m.feature(), tool.name, touched(m))});
  const std::string z = quill_reads(m.bench, m.name(tool), depth);
  Line& line = m.bench.add_line(fmt::format("{}, {}: try the screw's head in it", m.feature(), tool.name));
  line.z_reads = z;
  line.rpm = turning(m.bench, m.name(tool), tool, Operation::kDrilling);
  line.feed = "hand, slow";
  line.expect = limits_of(m.bench, m.feature(), m.hole.countersink->diameter, "countersink diameter");
  line.to_fill = true;
}

void tap_line(const Making& m, const Tool& tool) {
  const std::string thread = m.hole.thread.empty() ? tool.thread : m.hole.thread;
  std::string depth;
  if (m.hole.depth) {
    const Figure& drilled = m.bench.feature_figure(m.feature(), "depth");
    depth = fmt::format("; blind: {} is all the drill left, stop short of it, clear the chips",
                        or_not_known(drilled, m.bench.print.plain(drilled.value)));
  }
  Line& line = m.bench.add_line(fmt::format(
      "{}, tap {}: start it square, a centre in the chuck behind it; half a turn on, a quarter back{}",
      m.feature(), thread, depth));
  line.rpm = "by hand";
  line.feed = "oil";
}

}  // namespace

std::string turning(MarksBench& bench, const std::string& name, const Tool& tool, Operation operation) {
  if (bench.setup.machine.speeds_rpm.empty()) return "by hand";
  return rpm_text(bench, name, tool, operation, tool.diameter ? tool.diameter->base : std::nan(""));
}

std::string quill_reads(MarksBench& bench, const std::string& name, const Figure& depth) {
  if (!depth.known()) return "NOT KNOWN";
  const auto found = bench.setup.machine.collars.find("quill");
  if (found == bench.setup.machine.collars.end()) return bench.print.plain(depth.value);
  const auto reading = shop::collar_reading(found->second, quantity::Length::from_base(depth.value),
                                            shop::feeds_in(found->second));
  bench.choice(name + " z turns", Kind::kNumber, static_cast<double>(reading.turns),
               "whole turns from the zero", {&depth});
  bench.choice(name + " z division", Kind::kNumber, reading.division, "nearest division of the collar",
               {&depth});
  return shop::printed(reading);
}

void write_drilled(MarksBench& bench, const Work& work, const part::Hole& hole) {
  const Making m{bench, work, hole, drilled_length(bench, work.feature, hole)};
  write_below(m);
  bool is_first = hole.placed_by != part::PlacedBy::kMate;  // it has a cone to start in
  for (const Tool& tool : work.tools) {
    if (tool.kind == ToolKind::kSpotDrill || tool.kind == ToolKind::kCentreDrill) continue;
    bench.take(tool);
    switch (tool.kind) {
      case ToolKind::kTwistDrill:
        drill_line(m, tool, is_first);
        is_first = false;
        break;
      case ToolKind::kReamer:
        ream_line(m, tool);
        break;
      case ToolKind::kCounterbore:
        counterbore_line(m, tool);
        break;
      case ToolKind::kCountersink:
        countersink_line(m, tool);
        break;
      case ToolKind::kTap:
        tap_line(m, tool);
        break;
      default:
        break;  // has nothing to do in a hole here
    }
  }
}

}  // namespace sparewright::route
