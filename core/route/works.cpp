// The works of a setup in their order: holes that stand next to each other in the list are spotted together first.
#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/route/bench.hpp"
#include "core/route/deburr.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;
using shop::ToolKind;

const shop::Tool* tool_of(const Work& work, ToolKind kind) {
  const auto found =
      std::find_if(work.tools.begin(), work.tools.end(), [&](const shop::Tool& t) { return t.kind == kind; });
  return found == work.tools.end() ? nullptr : &*found;
}

// The least room any located position of these holes has: half its tolerance, less what the instrument does not know.
const Figure* room_for_error(MillBench& bench, const std::vector<HoleWork>& holes, const std::string& name) {
  const Figure* least = nullptr;
  for (const HoleWork& w : holes) {
    for (const auto& [axis, position] : w.places()) {
      if (position.distance.duty != part::Duty::kLocates) continue;
      const std::string local = fmt::format("{}/{} room", w.work->feature, part::name_of(axis));
      const Figure& room = bench.pen.work(
          local, Kind::kLength, "half the tolerance, less what the instrument does not know",
          [](auto a, auto b, auto u) { return (b - a) / 2.0 - u; },
          bench.feature_figure(w.work->feature, fmt::format("{}/least", part::name_of(axis))),
          bench.feature_figure(w.work->feature, fmt::format("{}/most", part::name_of(axis))),
          bench.feature_figure(w.work->feature, fmt::format("{}/unknown", part::name_of(axis))));
      if (least == nullptr || !room.known() || room.value < least->value) least = &room;
    }
  }
  if (least == nullptr) return nullptr;
  return &bench.pen.work(
      name, Kind::kLength, "the least room of any position", [](auto x) { return x; }, *least);
}

void add_distance(MillBench& bench, Stop& stop, const HoleWork& a, const HoleWork& b) {
  const auto hypotenuse = [](auto ax, auto ay, auto bx, auto by) {
    using std::sqrt;
    return sqrt((ax - bx) * (ax - bx) + (ay - by) * (ay - by));
  };
  const Figure& apart =
      bench.pen.work(fmt::format("{} to {}", a.work->feature, b.work->feature), Kind::kLength,
                     "centre to centre", hypotenuse, *a.x.wanted, *a.y.wanted, *b.x.wanted, *b.y.wanted);
  stop.readings.push_back({fmt::format("{} to {}", a.work->feature, b.work->feature),
                           or_not_known(apart, bench.print.plain(apart.value))});
}

// The dimples can still be moved; a drilled hole cannot.
void add_proof(MillBench& bench, const std::vector<HoleWork>& holes, int group) {
  const Figure* room = room_for_error(bench, holes, fmt::format("spots {}/room", group));
  if (room == nullptr) return;
  Stop stop;
  stop.says =
      "STOP. Caliper, same-side edges of the dimples; from a side, both edges of the dimple and halve.";
  const HoleWork& first = holes.front();
  for (const MachineAxis axis : {MachineAxis::kX, MachineAxis::kY}) {
    const Dialled& dialled = axis == MachineAxis::kX ? first.x : first.y;
    stop.readings.push_back(
        {fmt::format("{} to {}", part::name_of(pick_up_of(bench.on, axis).side), first.work->feature),
         or_not_known(*dialled.wanted, bench.print.plain(std::abs(dialled.wanted->value)))});
  }
  for (std::size_t i = 1; i < holes.size(); ++i) {
    const std::size_t first_other = holes.size() > 3 ? i - 1 : 0;  // all pairs of three, else a chain
    for (std::size_t j = first_other; j < i; ++j)
      add_distance(bench, stop, holes[j], holes[i]);
  }
  if (!room->known()) {
    stop.rule = "How far out means stop is NOT KNOWN: " + room->missing.front();
  } else if (room->value <= 0.0) {
    stop.rule = "The instrument cannot prove these places: ask for a better one before drilling.";
  } else {
    stop.rule = fmt::format(
        "More than {} out: do NOT drill. Dial the place again, spot over it wider until the old dimple is "
        "gone, "
        "and measure again.",
        bench.print.plain(room->value));
  }
  bench.sheet.items.emplace_back(std::move(stop));
}

void write_group(MillBench& bench, const std::vector<HoleWork>& holes, int group) {
  write_spots(bench, holes);
  add_proof(bench, holes, group);
  for (const HoleWork& w : holes)
    w.hole != nullptr ? write_hole(bench, w) : write_pin_hole(bench, w);
}

bool is_pin_hole(const part::Feature& feature) {
  const auto* formed = std::get_if<part::Formed>(&feature.shape);
  return formed != nullptr &&
         (formed->form == part::Form::kTaperPinHole || formed->form == part::Form::kSpringPinHole);
}

HoleWork hole_work(MillBench& bench, const Work& work, const part::Feature& feature) {
  HoleWork one;
  one.work = &work;
  one.hole = std::get_if<part::Hole>(&feature.shape);
  one.formed = std::get_if<part::Formed>(&feature.shape);
  one.x = dial_place(bench, MachineAxis::kX, work.feature, one.places());
  one.y = dial_place(bench, MachineAxis::kY, work.feature, one.places());
  return one;
}

// What is no hole and no flat.
void write_form(MillBench& bench, const Work& work, const part::Formed& formed) {
  switch (formed.form) {
    case part::Form::kChamfer:
      return write_chamfer(bench, work, formed);
    case part::Form::kSlit:
    case part::Form::kSplit:
      return write_sawn(bench, work, formed);
    case part::Form::kDimple:
      return write_dimple(bench, work, formed);
    default:
      return write_opening(bench, work, formed);
  }
}

}  // namespace

void write_spots(MillBench& bench, const std::vector<HoleWork>& holes) {
  for (const HoleWork& w : holes) {
    const shop::Tool* spot = tool_of(*w.work, ToolKind::kSpotDrill);
    if (spot == nullptr) continue;
    const Figure& dimple = bench.choice(w.work->feature + "/dimple", Kind::kDiameter,
                                        bench.print.system() == quantity::UnitSystem::kInch ? 2.54 : 2.5,
                                        "wide enough to measure over (a choice made here, without a source)");
    bench.take(*spot);
    Line& line = bench.add_line(
        fmt::format("spot {}, dimple {} across", w.work->feature, bench.print.nominal(dimple.value)));
    line.x_reads = w.x.reads;
    line.y_reads = w.y.reads;
    line.rpm = rpm_text(bench, fmt::format("{}/{}", w.work->feature, spot->name), *spot,
                        handbook::Operation::kDrilling, spot->diameter ? spot->diameter->base : 0.0);
    line.feed = "hand";
    line.expect = "on the cross";
  }
}

Dialled dial_place(MillBench& bench, MachineAxis axis, const std::string& feature,
                   const std::map<part::Axis, part::Position>& places) {
  const part::Axis along_part = along(bench.orientation, axis).axis;
  const std::string name = fmt::format("{}/{}", feature, name_of(axis));
  const Figure& at = bench.feature_figure(feature, fmt::format("at {}", part::name_of(along_part)));
  Dialled dialled = dial(bench, axis, name, at);
  if (const auto position = places.find(along_part); position != places.end())
    write_made(bench, axis, feature, position->second, *dialled.lands);
  return dialled;
}

void write_works(MillBench& bench) {
  std::vector<HoleWork> group;
  int groups = 0;
  const auto finish_group = [&] {
    if (!group.empty()) write_group(bench, group, ++groups);
    group.clear();
  };
  for (std::size_t i = 0; i < bench.setup.works.size(); ++i) {
    const Work& work = bench.setup.works[i];
    const part::Feature* feature = part::find_feature(bench.route.part, work.feature);
    if (feature == nullptr) continue;  // refused when the text was read
    if (deburrs_before(bench.setup, i)) finish_group();
    write_deburring(bench, i);
    const bool worked_out = cuts_are_worked_out(bench.setup, *feature);
    if (worked_out && (std::holds_alternative<part::Hole>(feature->shape) || is_pin_hole(*feature))) {
      group.push_back(hole_work(bench, work, *feature));
      continue;
    }
    finish_group();
    if (!worked_out)
      write_not_worked_out(bench, *feature);
    else if (const auto* flat = std::get_if<part::Flat>(&feature->shape))
      write_flat(bench, work, *flat);
    else
      write_form(bench, work, std::get<part::Formed>(feature->shape));
  }
  finish_group();
  write_deburring(bench, bench.setup.works.size());
}

}  // namespace sparewright::route
