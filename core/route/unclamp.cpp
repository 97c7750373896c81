// What must be measured while the work is still held, what matters, and what to do if a size is lost.
#include <algorithm>
#include <cmath>
#include <limits>

#include <fmt/format.h>

#include "core/route/bench.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using part::Duty;
using quantity::Kind;

std::string what_of(const part::Feature& feature, const part::NamedDimension& d) {
  if (d.local == "diameter") return feature.name;
  if (d.from.empty()) return fmt::format("{}, {}", feature.name, d.local);
  if (d.local == "x" || d.local == "y" || d.local == "z") {
    return fmt::format("{} to {}, along {}:", d.from, feature.name, d.local);
  }
  return fmt::format("{}, {}", feature.name, d.local);
}

void add_size_that_matters(Bench& bench, const part::Feature& feature, const part::NamedDimension& d) {
  const Figure& nominal = bench.feature_figure(feature.name, d.local);
  const Figure& least = bench.feature_figure(feature.name, d.local + "/least");
  const Figure& most = bench.feature_figure(feature.name, d.local + "/most");
  const bool fits = d.dimension->duty == Duty::kFits;
  const std::string text = fits ? bench.print.limits(least.value, most.value, true)
                                : bench.print.size_with_room(nominal.value, least.value, most.value);
  bench.sheet.sizes_that_matter.push_back(
      fmt::format("{} {}", what_of(feature, d), or_not_known(nominal, text)));
}

// The diameter an instrument touches from the side the hole starts on: the counterbore hides the hole.
const Figure& touched(Bench& bench, const std::string& feature) {
  const part::Feature* found = part::find_feature(bench.route.part, feature);
  const auto* hole = found == nullptr ? nullptr : std::get_if<part::Hole>(&found->shape);
  if (hole != nullptr && hole->counterbore) return bench.feature_figure(feature, "counterbore diameter");
  const bool aims =
      hole != nullptr && (hole->diameter.duty == Duty::kFits || hole->diameter.duty == Duty::kLocates);
  return bench.feature_figure(feature, aims ? "diameter/aim" : "diameter");
}

// Two holes as an instrument can touch them: their nearest edges, once for the pair.
void add_holes_apart(Bench& bench, const part::Feature& feature, const std::string& other) {
  const auto apart = [](auto ax, auto ay, auto bx, auto by, auto da, auto db) {
    using std::sqrt;
    return sqrt((ax - bx) * (ax - bx) + (ay - by) * (ay - by)) - da / 2.0 - db / 2.0;
  };
  const std::string name = fmt::format("{}/edge to {}", feature.name, other);
  if (!bench.pairs_measured.insert(name).second) return;
  const auto& hole = std::get<part::Hole>(feature.shape);
  const auto axes = part::axes_in(hole.into);
  const auto at = [&](const std::string& of, part::Axis axis) -> const Figure& {
    return bench.feature_figure(of, fmt::format("at {}", part::name_of(axis)));
  };
  const Figure& gap = bench.pen.work(name, Kind::kLength, "centre distance less half of each hole", apart,
                                     at(feature.name, axes[0]), at(feature.name, axes[1]), at(other, axes[0]),
                                     at(other, axes[1]), touched(bench, feature.name), touched(bench, other));
  double room = std::numeric_limits<double>::infinity();  // the least of the two positions
  for (const auto& [axis, position] : hole.at) {
    const std::string local(part::name_of(axis));
    room = std::min(room, (bench.feature_figure(feature.name, local + "/most").value -
                           bench.feature_figure(feature.name, local + "/least").value) /
                              2.0);
  }
  bench.sheet.before_unclamp.push_back(fmt::format(
      "nearest edges, {} and {} {}", other, feature.name,
      or_not_known(gap, bench.print.size_with_room(gap.value, gap.value - room, gap.value + room))));
}

// A position as an instrument can touch it: from the side to the near edge of the hole at its aim.
void add_edge_reading(Bench& bench, const part::Feature& feature, const part::Hole& hole,
                      const part::NamedDimension& d, part::Axis axis) {
  const auto& position = hole.at.at(axis);
  if (const auto* other = std::get_if<std::string>(&position.from))
    return add_holes_apart(bench, feature, *other);
  const Figure& diameter = touched(bench, feature.name);
  const auto near_edge = [](auto place, auto size) { return place - size / 2.0; };
  const auto edge = [&](const char* which) -> const Figure& {
    return bench.pen.work(fmt::format("{}/{} near edge{}", feature.name, d.local, which), Kind::kLength,
                          "distance less half the hole", near_edge,
                          bench.feature_figure(feature.name, d.local + which), diameter);
  };
  const Figure& nominal = edge("");
  const Figure& least = edge("/least");
  const Figure& most = edge("/most");
  bench.sheet.before_unclamp.push_back(
      fmt::format("{} to near edge of {} (at {}) {}", d.from, feature.name,
                  or_not_known(diameter, bench.print.fine(diameter.value)),
                  or_not_known(nominal, bench.print.size_with_room(nominal.value, least.value, most.value))));
}

void add_reading(Bench& bench, const part::Feature& feature, const part::NamedDimension& d) {
  const auto* hole = std::get_if<part::Hole>(&feature.shape);
  if (hole != nullptr) {
    for (const part::Axis axis : part::kAxes) {
      if (d.local == part::name_of(axis)) return add_edge_reading(bench, feature, *hole, d, axis);
    }
  }
  const Figure& least = bench.feature_figure(feature.name, d.local + "/least");
  const Figure& most = bench.feature_figure(feature.name, d.local + "/most");
  bench.sheet.before_unclamp.push_back(fmt::format(
      "{} {}{}", what_of(feature, d),
      or_not_known(least, bench.print.limits(least.value, most.value, d.dimension->duty == Duty::kFits)),
      d.local == "diameter" ? ", top and bottom, two ways" : ""));
}

void add_if_wrong(Bench& bench, const part::Feature& feature, const part::NamedDimension& d) {
  if (d.dimension->duty != Duty::kFits) return;
  const Figure& least = bench.feature_figure(feature.name, d.local + "/least");
  const Figure& most = bench.feature_figure(feature.name, d.local + "/most");
  if (!most.known()) return;
  const bool grows = std::holds_alternative<part::Hole>(feature.shape);
  bench.sheet.if_wrong.push_back(
      grows
          ? fmt::format(
                "{} over {}: stop, leave it clamped, write down the size found. A sleeve, or a mate made to "
                "it, may still save the part.",
                feature.name, bench.print.most(most.value, true))
          : fmt::format("{} under {}: stop, leave it clamped, write down the size found.", feature.name,
                        bench.print.least(least.value, true)));
}

}  // namespace

void write_before_unclamp(Bench& bench) {
  for (const Work& work : bench.setup.works) {
    const part::Feature* feature = part::find_feature(bench.route.part, work.feature);
    if (feature == nullptr) continue;
    for (const part::NamedDimension& d : part::dimensions_of(*feature)) {
      if (d.dimension->duty != Duty::kFits && d.dimension->duty != Duty::kLocates) continue;
      add_size_that_matters(bench, *feature, d);
      add_reading(bench, *feature, d);
      add_if_wrong(bench, *feature, d);
    }
  }
  bench.sheet.before_unclamp.emplace_back("nothing else wants this holding");
  bench.sheet.if_wrong.emplace_back(
      "A place more than its limit out: do not drill, do not tap, do not unclamp.");
  const auto& general = bench.route.part.surroundings.general;
  bench.sheet.the_rest = fmt::format("all others: two places and fractions {}, three places {}",
                                     general.two_places.typed, general.three_places.typed);
}

}  // namespace sparewright::route
