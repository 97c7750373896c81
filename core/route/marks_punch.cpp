// The places of holes at a drill press or a bench: scribed, punched, spotted, and proved before a drill goes in.
#include <algorithm>
#include <cmath>
#include <set>

#include <fmt/format.h>

#include "core/route/marks.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;
using shop::ToolKind;

const shop::Tool* spot_of(const Work& work) {
  const shop::Tool* spot = tool_of_kind(work, ToolKind::kSpotDrill);
  return spot != nullptr ? spot : tool_of_kind(work, ToolKind::kCentreDrill);
}

std::string punched_words(const MarkedHole& one) {
  if (one.marks.size() > 1)
    return fmt::format("mark and punch {}: {}", one.work->feature, from_words(one.marks));
  return fmt::format("mark and punch {}: {}; across, on the crest, with a centre square", one.work->feature,
                     one.marks.empty() ? "" : from_words(one.marks));
}

// Dividers step round a bolt circle; the chords are a check on the lines.
void say_circles(MarksBench& bench, const std::vector<MarkedHole>& holes) {
  std::set<std::string> said;
  for (const MarkedHole& one : holes) {
    if (!one.hole->by_angle || !said.insert(one.hole->by_angle->from).second) continue;
    const part::ByAngle& by = *one.hole->by_angle;
    const Figure& circle = bench.feature_figure(one.work->feature, by.is_diameter ? "bolt circle" : "radius");
    const double across = by.is_diameter ? 2.0 : 1.0;
    const Figure& dividers = bench.pen.work(
        one.work->feature + "/dividers", Kind::kLength, "from the middle of the circle to a place on it",
        [across](auto size) { return size / across; }, circle);
    const std::string from = or_not_known(dividers, bench.print.plain(dividers.value));
    bench.sheet.items.emplace_back(
        Note{is_on_end(one)
                 ? fmt::format(
                       "Dividers at {} from a plug in {}: scribe the circle. Step round it before punching: "
                       "the last step comes back to the first place.",
                       from, by.from)
                 : fmt::format(
                       "Dividers at {} from a plug in {}: scribe the circle over the lines. Where line and "
                       "circle do not cross in one point, look again before punching.",
                       from, by.from)});
  }
}

void write_marks(MarksBench& bench, const std::vector<MarkedHole>& holes) {
  say_circles(bench, holes);
  for (std::size_t i = 0; i < holes.size(); ++i) {
    const MarkedHole& one = holes[i];
    write_place_good_to(bench, one.work->feature);
    const std::string words =
        is_on_end(one) ? end_words(bench, one, i > 0 ? &holes[i - 1] : nullptr) : punched_words(one);
    Line& line = put(bench, bench.add_line(words), one.marks);
    line.feed = "prick, look, punch";
    line.expect = is_on_end(one) && one.hole->by_angle ? "on the circle" : "on the cross";
  }
}

void write_spot(MarksBench& bench, const MarkedHole& one, const shop::Tool& spot) {
  const std::string& feature = one.work->feature;
  const Figure& dimple = bench.choice(feature + "/dimple", Kind::kDiameter,
                                      bench.print.system() == quantity::UnitSystem::kInch ? 2.54 : 2.5,
                                      "wide enough to measure over (a choice made here, without a source)");
  bench.take(spot);
  Line& line =
      bench.add_line(fmt::format("spot {}, dimple {} across", feature, bench.print.nominal(dimple.value)));
  line.rpm = turning(bench, fmt::format("{}/{}", feature, spot.name), spot, handbook::Operation::kDrilling);
  line.feed = "hand";
  line.expect = "on the cross";
}

void add_distance(MarksBench& bench, Stop& stop, const MarkedHole& a, const MarkedHole& b) {
  const bool in_a_plane = (a.marks.size() > 1 && b.marks.size() > 1) || (is_on_end(a) && is_on_end(b));
  if (!in_a_plane || a.hole->into != b.hole->into) return;
  const std::string name = fmt::format("{} to {}", a.work->feature, b.work->feature);
  const Figure& distance = apart(bench, name, a, b);
  stop.readings.push_back({name, or_not_known(distance, bench.print.plain(distance.value))});
}

// The least room of any place of these holes: half its tolerance.
const Figure* room_of_marks(MarksBench& bench, const std::vector<MarkedHole>& holes, int group) {
  const Figure* least = nullptr;
  for (const MarkedHole& one : holes) {
    for (const auto& [axis, position] : one.hole->at) {
      const std::string local(part::name_of(axis));
      const Figure& room = bench.pen.work(
          fmt::format("{}/{} room", one.work->feature, local), Kind::kLength, "half the tolerance",
          [](auto a, auto b) { return (b - a) / 2.0; },
          bench.feature_figure(one.work->feature, local + "/least"),
          bench.feature_figure(one.work->feature, local + "/most"));
      if (room.known() && (least == nullptr || room.value < least->value)) least = &room;
    }
  }
  if (least == nullptr) return nullptr;
  return &bench.pen.work(
      fmt::format("marks {}/room", group), Kind::kLength, "the least room of any place",
      [](auto x) { return x; }, *least);
}

// Nothing is drilled yet: a mark can still be moved.
void write_proof(MarksBench& bench, const std::vector<MarkedHole>& holes, int group, bool spotted) {
  Stop stop;
  stop.says = spotted ? "STOP. Caliper, same-side edges of the dimples; from a side, both edges and halve."
                      : "STOP. Rule or dividers, punch mark to punch mark, before a drill touches them.";
  const MarkedHole& first = holes.front();
  for (const Mark& mark : first.marks)
    stop.readings.push_back({fmt::format("{} to {}", part::name_of(mark.from), first.work->feature),
                             or_not_known(*mark.height, bench.print.plain(mark.height->value))});
  for (std::size_t i = 1; i < holes.size(); ++i) {
    const std::size_t first_other = holes.size() > 3 ? i - 1 : 0;  // all pairs of three, else a chain
    for (std::size_t j = first_other; j < i; ++j)
      add_distance(bench, stop, holes[j], holes[i]);
  }
  const bool goes_round = holes.size() > 3 && holes.front().hole->by_angle.has_value();
  if (goes_round) add_distance(bench, stop, holes.front(), holes.back());
  const Figure* room = room_of_marks(bench, holes, group);
  const Figure& good =
      bench.pen.ask(fmt::format("{}/{}/place good to/least", bench.pen.stage(), first.work->feature));
  stop.rule = fmt::format(
      "More than {} out: do NOT drill. Lean the punch and draw the mark over, or file it off and punch "
      "again.",
      bench.print.plain(room != nullptr ? room->value : good.value));
  bench.sheet.items.emplace_back(std::move(stop));
}

void say_good_to(MarksBench& bench, const std::string& feature) {
  const auto of = [&](const char* which) -> const Figure& {
    return bench.pen.ask(fmt::format("{}/{}/place good to/{}", bench.pen.stage(), feature, which));
  };
  bench.sheet.items.emplace_back(
      Note{fmt::format("A place punched and drilled by hand comes out within {} to {}, not better.",
                       bench.print.plain(of("least").value), bench.print.plain(of("most").value))});
}

}  // namespace

void write_punched(MarksBench& bench, const std::vector<MarkedHole>& holes, int group) {
  write_marks(bench, holes);
  say_good_to(bench, holes.front().work->feature);
  bool spotted = false;
  for (const MarkedHole& one : holes) {
    if (const shop::Tool* spot = spot_of(*one.work)) {
      write_spot(bench, one, *spot);
      spotted = true;
    }
  }
  write_proof(bench, holes, group, spotted);
}

}  // namespace sparewright::route
