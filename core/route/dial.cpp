// From a place on the part to what the collar shows, and back to where that puts the feature.
#include <cmath>

#include <fmt/format.h>

#include "core/route/bench.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;
using quantity::Length;

const shop::Collar* collar_of(const Setup& setup, std::string_view axis) {
  const auto found = setup.machine.collars.find(std::string(axis));
  return found == setup.machine.collars.end() ? nullptr : &found->second;
}

// A line set to a mark is half a division out at most; the slide comes back within `repeats` when every move ends the
// same way (the shop's word, else one division: common practice).
const Figure& setting_error(const MillBench& bench, const shop::Collar& collar, const std::string& name) {
  const double set = from_half_width(collar.division().base() / 2.0);
  const double back = from_half_width(collar.repeats.base());
  return bench.error_root(
      name + " setting", std::hypot(set, back),
      collar.repeats_given
          ? "half a division, and how well the slide comes back as the shop states it"
          : "half a division, and one division for how well the slide comes back (common practice)");
}

void write_reading(MillBench& bench, const std::string& name, const shop::CollarReading& reading,
                   const Figure& wanted) {
  bench.choice(name + " turns", Kind::kNumber, static_cast<double>(reading.turns),
               "whole turns from the zero", {&wanted});
  bench.choice(name + " division", Kind::kNumber, reading.division, "nearest division of the collar",
               {&wanted});
}

}  // namespace

std::string_view name_of(MachineAxis axis) {
  return axis == MachineAxis::kX ? "x" : "y";
}

const EdgePickUp& pick_up_of(const OnMill& on, MachineAxis axis) {
  return axis == MachineAxis::kX ? on.x : on.y;
}

Along along(const Orientation& orientation, MachineAxis axis) {
  return axis == MachineAxis::kX ? orientation.along_x() : orientation.along_y();
}

double inwards(const OnMill& on, MachineAxis axis) {
  return part::at_greater_end(pick_up_of(on, axis).side) ? -1.0 : 1.0;
}

bool rises_right_or_away(const MillBench& bench, MachineAxis axis) {
  return along(bench.orientation, axis).same_way == (inwards(bench.on, axis) > 0.0);
}

shop::Turning finishing(const MillBench& bench, MachineAxis axis, const shop::Collar& collar) {
  const shop::Turning turning = shop::increases_coordinate(collar);
  return rises_right_or_away(bench, axis) ? turning : shop::opposite(turning);
}

Dialled dial(MillBench& bench, MachineAxis axis, const std::string& name, const Figure& at,
             const Figure* offset) {
  Dialled dialled;
  const Figure& zero = bench.side(pick_up_of(bench.on, axis).side);
  const double way = inwards(bench.on, axis);
  std::vector<ledger::Term> terms{{&at, way}, {&zero, -way}};
  double wanted = way * (at.value - zero.value);
  if (offset != nullptr) {
    terms.push_back({offset, 1.0});
    wanted += offset->value;
  }
  dialled.wanted = &bench.pen.linear(name + " wanted", Kind::kCoordinate,
                                     "from the picked-up side into the work", wanted, terms);
  const shop::Collar* collar = collar_of(bench.setup, name_of(axis));
  if (collar == nullptr || !dialled.wanted->known()) {
    dialled.reads = "NOT KNOWN";
    dialled.lands = dialled.wanted;
    return dialled;
  }
  const auto reading = shop::collar_reading(*collar, Length::from_base(dialled.wanted->value),
                                            finishing(bench, axis, *collar));
  write_reading(bench, name, reading, *dialled.wanted);
  bench.choice(name + " rounding", Kind::kLength, reading.rounding.base(), "what the nearest division costs",
               {dialled.wanted});
  // A number on paper: what was not known about the sizes it was worked out from is no doubt of where it leads to.
  const Figure& set =
      bench.choice(name + " set", Kind::kCoordinate, dialled.wanted->value + reading.rounding.base(),
                   "wanted, to the nearest division", {dialled.wanted});
  const Figure& pick_up = bench.pen.ask(fmt::format("{}/pick up {}", bench.pen.stage(), name_of(axis)));
  dialled.lands = &bench.pen.work(
      name + " lands", Kind::kCoordinate, "as set, with pick-up and setting errors",
      [](auto at_division, auto p, auto s) { return at_division + p + s; }, set, pick_up,
      setting_error(bench, *collar, name));
  dialled.reads = shop::printed(reading);
  return dialled;
}

DepthReading depth_reading(MillBench& bench, const std::string& name, const Figure& depth) {
  const shop::Collar* collar = collar_of(bench.setup, "z");
  if (collar == nullptr || !depth.known()) return {"NOT KNOWN", depth.value};
  const auto reading = shop::collar_reading(*collar, Length::from_base(depth.value), shop::deepens(*collar));
  write_reading(bench, name + " z", reading, depth);
  const Figure& set = bench.choice(name + " z set", Kind::kLength, depth.value + reading.rounding.base(),
                                   "the depth, to the nearest division", {&depth});
  return {shop::printed(reading), set.value};
}

void write_depth_made(MillBench& bench, const std::string& feature, const std::string& cut,
                      const DepthReading& reading) {
  // A cutter that just marks the work stands within this of it. Common practice.
  constexpr double kTouch_mm = 0.001 * 25.4;
  const shop::Collar* collar = collar_of(bench.setup, "z");
  if (collar == nullptr || reading.reads == "NOT KNOWN") return;
  const Figure& set = bench.pen.ask(fmt::format("{}/{} z set", bench.pen.stage(), cut));
  const Figure& touch = bench.error_root(feature + "/touch", from_half_width(kTouch_mm),
                                         "the cutter just touching, 0.001 in (common practice)");
  bench.pen.work(
      feature + "/depth made", Kind::kLength, "as set, with the errors of touch and setting",
      [](auto s, auto t, auto e) { return s + t + e; }, set, touch,
      setting_error(bench, *collar, cut + " z"));
}

void write_made(MillBench& bench, MachineAxis axis, const std::string& feature,
                const part::Position& position, const Figure& lands) {
  const double way = inwards(bench.on, axis);
  const Figure& zero = bench.side(pick_up_of(bench.on, axis).side);
  const std::string name =
      fmt::format("{}/{} made", feature, part::name_of(along(bench.orientation, axis).axis));

  // Where it lies in the part frame is zero + way * lands; its distance is measured from `start`, to one side.
  std::vector<ledger::Term> terms{{&zero, 1.0}, {&lands, way}};
  double place = zero.value + way * lands.value;
  const auto* face = std::get_if<part::Face>(&position.from);
  if (face != nullptr) {
    const Figure& start = bench.side(*face);
    terms.push_back({&start, -1.0});
    place -= start.value;
  } else {
    const auto& from = std::get<std::string>(position.from);
    const Figure& other =
        bench.pen.ask(fmt::format("{}/{}/{} lands", bench.pen.stage(), from, name_of(axis)));
    if (other.known()) {  // made in this setup: the zero and its pick-up are common to both
      terms = {{&lands, way}, {&other, -way}};
      place = way * (lands.value - other.value);
    } else {
      const Figure& nominal = bench.feature_figure(
          from, fmt::format("at {}", part::name_of(along(bench.orientation, axis).axis)));
      terms.push_back({&nominal, -1.0});
      place -= nominal.value;
    }
  }
  const bool backwards = face != nullptr ? part::at_greater_end(*face) : position.towards_smaller;
  if (backwards) {
    for (ledger::Term& term : terms)
      term.slope = -term.slope;
    place = -place;
  }
  bench.pen.linear(name, Kind::kLength, "as these collar readings make it", place, terms);
}

}  // namespace sparewright::route
