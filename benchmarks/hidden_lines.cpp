// A view with its hidden lines beside the kernel's polygonal and its exact hidden lines, over invented parts of four kinds;
// in one run and in turn. Times are to be read; no ratio is asked for.   hidden_lines [--smoke]
#include <cstdint>
#include <cstdio>
#include <stdexcept>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "core/shape/recipe.hpp"
#include "drawing/part_views.hpp"
#include "drawing/view.hpp"
#include "kernel_views.hpp"
#include "random_parts.hpp"
#include "solid/edges.hpp"
#include "solid/make_solid.hpp"
#include "timing.hpp"

namespace {

using namespace sparewright;
using benchmarks::median;
using benchmarks::seconds_of;

constexpr double kChord_mm = 0.02;  // of the polygonal lines' triangles
constexpr std::uint64_t kSeed = 7;

struct Sample {
  shape::Recipe recipe;
  solid::Solid solid;
};

std::vector<Sample> samples(int count) {
  tests::Random random(kSeed);
  std::vector<Sample> all;
  while (all.size() < static_cast<std::size_t>(count)) {
    const tests::PartKind kind = tests::kPartKinds[all.size() % tests::kPartKinds.size()];
    const tests::InventedPart part = tests::invented_part(kind, random);
    const auto recipe = shape::Recipe::make(part.blank, part.cutters);
    if (!recipe) continue;
    const auto made = solid::make_solid(*recipe);
    if (made) all.push_back({*recipe, made->solid});
  }
  return all;
}

int run(bool smoke) {
  const drawing::Sight sight;
  std::vector<double> ours;
  std::vector<double> polygonal;
  std::vector<double> exact;
  std::size_t lines = 0;
  for (const Sample& one : samples(smoke ? 2 : 20)) {
    ours.push_back(seconds_of([&] {
      const auto edges = solid::edges_of(one.solid);
      if (!edges) throw std::runtime_error("the solid has no edges");
      const drawing::View view = drawing::view_of(one.recipe.work(), *edges, sight);
      lines += view.lines.size() + view.arcs.size() + view.paths.size();
    }));
    polygonal.push_back(seconds_of([&] { (void)tests::polygonal_view(one.solid, sight, kChord_mm); }));
    exact.push_back(seconds_of([&] { (void)tests::exact_view(one.solid, sight); }));
  }
  fmt::print(
      "a view with hidden lines, middle of {} parts ({} lines in all): {:.2f} ms; the kernel's polygonal "
      "lines {:.2f} ms, "
      "exact lines {:.2f} ms\n",
      ours.size(), lines, median(ours) * 1e3, median(polygonal) * 1e3, median(exact) * 1e3);
  return 0;
}

}  // namespace

int main(int argc, char** argv) {
  return sparewright::benchmarks::status_of(
      [&] { return run(argc > 1 && std::string(argv[1]) == "--smoke"); });
}
