#include "core/handbook/differential_indexing.hpp"

#include <algorithm>
#include <cassert>
#include <functional>
#include <map>

#include "core/handbook/source.hpp"

namespace sparewright::handbook {
namespace {

struct GearRow {
  int teeth;
  Source source;
};
constexpr GearRow kGears[] = {
#include "generated/core/handbook/dividing_head_gears.inc"
};

struct Circle {
  int holes = 0;
  std::string plate;
};

// Every move of the crank whose x lies in the range, each on the circle with most holes.
std::map<Ratio, Circle> moves_of(const DividingHead& head, int divisions) {
  std::map<Ratio, Circle> moves;
  const Ratio least = Ratio::of(head.worm - kMostPlateTurns, divisions);
  const Ratio most = Ratio::of(head.worm + kMostPlateTurns, divisions);
  for (const IndexPlate& plate : head.plates) {
    for (const int circle : plate.circles) {
      std::int64_t holes = std::max<std::int64_t>(1, -(-(least * Ratio::of(circle))).floor());
      for (; Ratio::of(holes, circle) <= most; ++holes) {
        Circle& at = moves[Ratio::of(holes, circle)];
        if (circle > at.holes) at = {circle, plate.name};
      }
    }
  }
  moves.erase(Ratio::of(head.worm, divisions));  // plain indexing
  return moves;
}

DifferentialIndexing setting(const DividingHead& head, const Ratio& part, const Ratio& crank,
                             const Circle& circle, const GearTrain& gears) {
  DifferentialIndexing out;
  const std::int64_t holes = (crank * Ratio::of(circle.holes)).floor();
  out.turns = static_cast<int>(holes / circle.holes);
  out.holes = static_cast<int>(holes % circle.holes);
  out.circle = circle.holes;
  out.plate = circle.plate;
  out.crank = crank;
  out.plate_turns = Ratio::of(head.worm) - crank / part;
  out.gears = gears;
  out.idlers = (gears.gears() == 2 ? 1 : 0) + (out.with_crank() ? 0 : 1);
  out.moved = differential_move(head.worm, crank, out.with_crank() ? gears.ratio() : -gears.ratio());
  out.error = index_error(out.moved, part);
  return out;
}

// Simple and compound, the nearest ratio not over and the nearest not under |x|: what the spindle moves grows
// or falls with the ratio, but not in proportion. Gears that would run the plate as fast as the worm are left
// out: the spindle would not turn.
std::vector<GearTrain> nearest_gears(const TrainFinder& finder, int worm, const Ratio& plate_turns) {
  const Ratio wanted = magnitude(plate_turns);
  std::vector<GearTrain> out;
  for (const std::size_t count : {std::size_t{2}, std::size_t{4}}) {
    for (const bool over : {false, true}) {
      const auto fits = [&](const GearTrain& train) {
        const Ratio ratio = train.ratio();
        const bool turns_the_spindle = plate_turns < Ratio() || ratio < Ratio::of(worm);
        return turns_the_spindle && (over ? ratio > wanted : ratio <= wanted);
      };
      for (const FoundTrain& found : finder.nearest(wanted, count, 1, fits))
        out.push_back(found.train);
    }
  }
  return out;
}

}  // namespace

std::vector<int> dividing_head_gears() {
  std::vector<int> out;
  for (const GearRow& row : kGears)
    out.push_back(row.teeth);
  return out;
}

Ratio differential_move(int worm, const Ratio& crank, const Ratio& plate_turns) {
  assert(plate_turns != Ratio::of(worm));
  return crank / (Ratio::of(worm) - plate_turns);
}

base::Result<std::vector<DifferentialIndexing>> differential_indexing(const DividingHead& head, int divisions,
                                                                      std::span<const int> gears,
                                                                      std::size_t most) {
  const auto part = part_for_divisions(divisions);
  if (!part) return tl::unexpected(part.error());
  if (const auto good = checked(head); !good) return tl::unexpected(good.error());
  const auto finder = TrainFinder::of(gears, 4);
  if (!finder) return tl::unexpected(finder.error());
  std::vector<DifferentialIndexing> all;
  for (const auto& [crank, circle] : moves_of(head, divisions)) {
    for (const GearTrain& train : nearest_gears(*finder, head.worm, Ratio::of(head.worm) - crank / *part))
      all.push_back(setting(head, *part, crank, circle, train));
  }
  std::stable_sort(all.begin(), all.end(), [&](const DifferentialIndexing& a, const DifferentialIndexing& b) {
    const Ratio off_a = magnitude(a.moved - *part);
    const Ratio off_b = magnitude(b.moved - *part);
    if (off_a != off_b) return off_a < off_b;
    if (a.gears.gears() != b.gears.gears()) return a.gears.gears() < b.gears.gears();
    return magnitude(a.plate_turns) < magnitude(b.plate_turns);
  });
  if (all.size() > most) all.resize(most);
  return all;
}

}  // namespace sparewright::handbook
