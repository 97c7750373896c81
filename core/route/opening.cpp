#include "core/route/opening.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;

// How far a cutter is run out of the far side. Common practice.
constexpr double kRunThrough_mm = 1.0;

const Figure& distance_between(MillBench& bench, const std::string& local, std::string_view words,
                               const Figure& one, const Figure& other) {
  return bench.pen.work(
      local, Kind::kLength, words,
      [](auto a, auto b) {
        using std::abs;
        return abs(a - b);
      },
      one, other);
}

const Figure& depth_to_make(MillBench& bench, const std::string& name, const part::Formed& formed) {
  if (const auto depth = formed.sizes.find("depth"); depth != formed.sizes.end())
    return to_make(bench, name, "depth", depth->second);
  const Figure& metal =
      distance_between(bench, name + "/length", "from where it starts to the far side",
                       bench.feature_figure(name, "starts at"), bench.side(part::opposite(formed.side)));
  const Figure& below =
      stated_length(bench, name + "/below", kRunThrough_mm, "run through, 1 mm (common practice)");
  return bench.pen.work(
      name + "/through", Kind::kLength, "all there is, and the run through",
      [](auto m, auto b) { return m + b; }, metal, below);
}

// Readings with an offset on either side of the middle.
struct Pair {
  Dialled near;
  Dialled far;
};

Pair dial_pair(MillBench& bench, MachineAxis axis, const std::string& name, const std::string& prefix,
               const Figure& at, const Figure& half) {
  const Figure& back = bench.pen.work(
      fmt::format("{}{} near offset", name, prefix), Kind::kLength, "towards the zero",
      [](auto h) { return -h; }, half);
  return {dial(bench, axis, fmt::format("{}{} near", name, prefix), at, &back),
          dial(bench, axis, fmt::format("{}{} far", name, prefix), at, &half)};
}

void write_place(MillBench& bench, const Opening& o, part::Axis part_axis, MachineAxis axis,
                 const Figure& lands) {
  const auto position = o.formed.at.find(part_axis);
  if (position != o.formed.at.end()) write_made(bench, axis, o.name, position->second, lands);
}

// The cutter makes the size by itself: one reading.
void dial_own_width(MillBench& bench, const Opening& o, const std::string& name, const Figure& at,
                    BetweenWalls& walls) {
  const Dialled middle = dial(bench, walls.axis, name, at);
  walls.middle = middle.reads;
  bench.pen.work(
      o.name + "/width made", Kind::kLength, "the cutter", [](auto d) { return d; }, o.cutter);
  write_place(bench, o, o.across, walls.axis, *middle.lands);
}

// Rough passes from one wall to the other, each no more than a part of the cutter wide.
void dial_rows(MillBench& bench, const Opening& o, const std::string& name, const Figure& at,
               const Figure& rough_half, BetweenWalls& walls) {
  const double reach = rough_half.value;
  const int steps =
      std::max(1, static_cast<int>(std::ceil(2.0 * reach / (kPassWidth * o.cutter.value) - 1e-9)));
  if (steps >= kMostPassesListed) return;
  for (int i = 0; i <= steps; ++i) {
    const double share = 2.0 * i / steps - 1.0;
    const std::string row = fmt::format("{} row {}", name, i + 1);
    const Figure& offset = bench.pen.work(
        row + " offset", Kind::kLength, "rows at equal steps between the walls",
        [share](auto h) { return share * h; }, rough_half);
    walls.rows.push_back(dial(bench, walls.axis, row, at, &offset).reads);
  }
}

void dial_rough(MillBench& bench, const Opening& o, const std::string& name, const Figure& at, bool rows,
                BetweenWalls& walls) {
  const double leave = o.cuts.wall_leave_mm;
  const Figure& rough_half = bench.pen.work(
      name + " rough half", Kind::kLength, "short of the wall by what its last cut takes",
      [leave](auto h) {
        using std::max;
        return max(h - leave, 0.0 * h);
      },
      *walls.half);
  const Pair rough = dial_pair(bench, walls.axis, name, " rough", at, rough_half);
  walls.rough_near = rough.near.reads;
  walls.rough_far = rough.far.reads;
  if (rows) dial_rows(bench, o, name, at, rough_half, walls);
}

BetweenWalls dial_walls(MillBench& bench, const Opening& o, part::Axis part_axis, const Figure& size,
                        const std::string& what) {
  BetweenWalls walls;
  walls.axis = machine_axis(bench, part_axis);
  const std::string name = fmt::format("{}/{}", o.name, name_of(walls.axis));
  const Figure& at = bench.feature_figure(o.name, fmt::format("at {}", part::name_of(part_axis)));
  walls.half = &bench.pen.work(
      fmt::format("{}/half {} less cutter", o.name, what), Kind::kLength,
      fmt::format("half of the {} less the cutter", what), [](auto s, auto d) { return (s - d) / 2.0; }, size,
      o.cutter);
  const bool is_width = part_axis == o.across;
  if (is_width && o.own_width) {
    dial_own_width(bench, o, name, at, walls);
    return walls;
  }
  const Pair pair = dial_pair(bench, walls.axis, name, "", at, *walls.half);
  walls.near = pair.near.reads;
  walls.far = pair.far.reads;
  const Figure& lands = bench.pen.work(
      name + " lands", Kind::kCoordinate, "the middle of both walls",
      [](auto a, auto b) { return (a + b) / 2.0; }, *pair.near.lands, *pair.far.lands);
  bench.pen.work(
      fmt::format("{}/{} made", o.name, what), Kind::kLength, "the cutter, and the way between two readings",
      [](auto d, auto a, auto b) { return d + b - a; }, o.cutter, *pair.near.lands, *pair.far.lands);
  write_place(bench, o, part_axis, walls.axis, lands);
  if (o.wide)
    dial_rough(bench, o, name, at, is_width, walls);
  else if (is_width)
    walls.middle = dial(bench, walls.axis, name + " middle", at).reads;
  return walls;
}

}  // namespace

const part::Dimension* Opening::size(std::string_view local) const {
  const auto found = formed.sizes.find(local);
  return found == formed.sizes.end() ? nullptr : &found->second;
}

bool Opening::is_fine(std::string_view local) const {
  const part::Dimension* dimension = size(local);
  return dimension != nullptr && dimension->duty == part::Duty::kFits;
}

std::optional<Opening> opening_of(MillBench& bench, const Work& work, const part::Formed& formed) {
  const std::string& name = work.feature;
  const shop::Tool* mill = first_tool(work, shop::ToolKind::kEndMill);
  if (mill == nullptr) return std::nullopt;
  const auto axes = part::axes_in(formed.side);
  const part::Axis along = formed.along.value_or(axes[0]);
  const auto length = formed.sizes.find("length");
  Opening o{
      .name = name,
      .formed = formed,
      .mill = *mill,
      .cutter = cutter_diameter(bench, fmt::format("{}/{} diameter", name, mill->name), *mill),
      .width = to_make(bench, name, "width", formed.sizes.at("width")),
      .length = length == formed.sizes.end() ? nullptr : &to_make(bench, name, "length", length->second),
      .depth = depth_to_make(bench, name, formed),
      .cuts = mill_cuts(bench),
      .along = along,
      .across = along == axes[0] ? axes[1] : axes[0]};
  const Figure& least = bench.feature_figure(name, "width/least");
  const Figure& most = bench.feature_figure(name, "width/most");
  const bool all_known = o.cutter.known() && o.width.known() && o.depth.known() && most.known() &&
                         (o.length == nullptr || o.length->known());
  if (!all_known || o.cutter.value > most.value) return std::nullopt;
  if (o.length != nullptr && o.cutter.value > o.length->value) return std::nullopt;
  o.own_width = o.cutter.value >= least.value;
  o.wide = !o.own_width && (o.width.value - o.cutter.value) / 2.0 > o.cuts.wall_leave_mm + 1e-9;
  return o;
}

OpeningPlaces dial_opening(MillBench& bench, const Opening& opening) {
  OpeningPlaces places;
  places.across = dial_walls(bench, opening, opening.across, opening.width, "width");
  if (opening.length != nullptr)
    places.lengthwise = dial_walls(bench, opening, opening.along, *opening.length, "length");
  return places;
}

std::optional<OverTheBack> over_the_back(MillBench& bench, const Opening& o) {
  const bool across_bar =
      part::is_bar(bench.route.part.blank.shape) && part::axis_of(o.formed.side) != part::Axis::kX;
  if (!across_bar || o.is_through()) return std::nullopt;
  const part::Axis axis = part::axis_of(o.formed.side);
  const auto blank = [&](bool greater) -> const Figure& {
    return bench.pen.ask(fmt::format("blank/{}", part::name_of(part::face_at(axis, greater))));
  };
  OverTheBack over;
  over.whole = &bench.pen.work(
      o.name + "/bar there", Kind::kLength, "twice from the crest to the middle of the bar",
      [](auto crest, auto low, auto high) {
        using std::abs;
        return abs(2.0 * crest - low - high);
      },
      bench.feature_figure(o.name, "starts at"), blank(false), blank(true));
  const auto less = [](auto bar, auto depth) { return bar - depth; };
  bench.pen.work(o.name + "/over the back", Kind::kLength, "the bar less the depth from its crest", less,
                 *over.whole, o.depth);
  over.least = &bench.pen.work(o.name + "/over the back/least", Kind::kLength, "the bar less the most depth",
                               less, *over.whole, bench.feature_figure(o.name, "depth/most"));
  over.most = &bench.pen.work(o.name + "/over the back/most", Kind::kLength, "the bar less the least depth",
                              less, *over.whole, bench.feature_figure(o.name, "depth/least"));
  return over;
}

}  // namespace sparewright::route
