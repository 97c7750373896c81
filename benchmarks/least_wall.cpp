// The least wall beside each of 20 features of a plate, with a witness in metal, against the kernel's distances of all
// pairs of their bodies; in one run and in turn. And what a ray through 20 cutters takes.   least_wall [--smoke]
// Times are printed to be read; only the ratio decides the exit status.
#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <limits>
#include <stdexcept>
#include <string>
#include <vector>

#include <BRepExtrema_DistShapeShape.hxx>
#include <TopoDS_Shape.hxx>
#include <fmt/format.h>

#include "core/base/messages.hpp"
#include "core/shape/cutters.hpp"
#include "core/shape/material.hpp"
#include "core/shape/near_cuts.hpp"
#include "solid/kernel_shape.hpp"
#include "timing.hpp"

namespace {

using sparewright::benchmarks::median;
using sparewright::benchmarks::seconds_of;
using namespace sparewright;
using quantity::Diameter;
using quantity::Length;
using shape::Cutter;
using shape::Open;
using shape::Recipe;
namespace unit = quantity::unit;

constexpr double kTimesFaster = 20.0;
constexpr std::size_t kFeatures = 20;

Length mm(double count) {
  return Length::of(count, unit::millimetre);
}
Diameter dia(double count) {
  return Diameter::of(count, unit::millimetre);
}

// 160 x 100 x 30 mm: six screw holes, four blind ones, four pockets, two cross holes, two countersinks, two dowels.
Recipe plate() {
  const shape::Vector down{0.0, 0.0, -1.0};
  std::vector<Cutter> all;
  const auto top = [](double x, double y) { return shape::Point{x, y, 30.0}; };
  for (const double x : {15.0, 80.0, 145.0}) {
    for (const double y : {12.0, 88.0})
      all.push_back(shape::through_hole("screw", top(x, y), down, dia(9.0), mm(30.0)));
  }
  for (const double x : {35.0, 60.0, 100.0, 125.0})
    all.push_back(shape::drilled_hole("blind", top(x, 12.0), down, dia(6.8), mm(18.0)));
  for (const double x : {20.0, 55.0, 90.0, 125.0}) {
    all.push_back(shape::milled_box("pocket", {}, {x, 35.0, 18.0}, {x + 22.0, 65.0, 30.0}, Open::kZHigh));
  }
  for (const double z : {6.0, 12.0})
    all.push_back(shape::through_hole("cross", {0.0, 80.0, z}, {1.0, 0.0, 0.0}, dia(3.0), mm(160.0)));
  for (const double x : {48.0, 112.0}) {
    all.push_back(
        shape::countersink("sink", top(x, 88.0), down, dia(14.0), quantity::Angle::of(90.0, unit::degree)));
    all.push_back(shape::flat_bottomed_hole("dowel", top(x, 74.0), down, dia(6.0), mm(10.0)));
  }
  for (std::size_t i = 0; i < all.size(); ++i)
    all[i].feature += fmt::format(" {}", i + 1);  // each a feature of its own
  const auto made = Recipe::make({"plate", shape::Box{{}, {160.0, 100.0, 30.0}}}, all);
  if (!made) throw std::runtime_error(base::report(made.error()));
  if (made->cuts().size() != kFeatures) throw std::runtime_error("the plate has lost a feature");
  return *made;
}

bool is_wall(const shape::Wall& wall) {
  return wall.kind == shape::WallKind::kMetal || wall.kind == shape::WallKind::kTangent;
}

// The report: the least wall beside each feature, to another one or to a face of the blank, asked as the checks ask it.
std::vector<double> by_walls(const Recipe& recipe) {
  const shape::NearCuts near(recipe.work());
  std::vector<double> all_mm;
  for (std::size_t i = 0; i < recipe.cuts().size(); ++i) {
    double least_mm = std::numeric_limits<double>::infinity();
    const auto take = [&](const shape::Wall& wall) {
      if (is_wall(wall)) least_mm = std::min(least_mm, wall.least_mm);
    };
    for (const auto& [other, gap_mm] : near.within(i, least_mm)) {
      if (gap_mm >= least_mm) break;
      take(near.wall_between(i, other, least_mm));
    }
    for (const shape::FaceWall& outside : near.walls_to_outside(i, least_mm))
      take(outside.wall);
    if (std::isfinite(least_mm)) all_mm.push_back(least_mm);
  }
  return all_mm;
}

// The least distance from each feature to another one: no faces of the blank, and nothing said about metal.
std::vector<double> by_the_kernel(const std::vector<TopoDS_Shape>& bodies) {
  std::vector<double> least_mm(bodies.size(), std::numeric_limits<double>::infinity());
  for (std::size_t i = 0; i < bodies.size(); ++i) {
    for (std::size_t k = i + 1; k < bodies.size(); ++k) {
      const BRepExtrema_DistShapeShape found(bodies[i], bodies[k]);
      if (!found.IsDone()) throw std::runtime_error("the kernel finds no distance");
      least_mm[i] = std::min(least_mm[i], found.Value());
      least_mm[k] = std::min(least_mm[k], found.Value());
    }
  }
  return least_mm;
}

// Along x and slantwise through the whole plate.
double ns_a_ray(const Recipe& recipe, int rays) {
  const std::vector<const shape::Primitive*> air = shape::bodies(recipe.cuts());
  std::vector<shape::Interval> metal;
  double sum_mm = 0.0;
  const double seconds = seconds_of([&] {
    for (int i = 0; i < rays; ++i) {
      const double s = (i % 1000 + 0.5) / 1000;
      const shape::Ray ray =
          shape::ray_through({-1.0, 100.0 * s, 30.0 * s}, {161.0, 100.0 * (1.0 - s), 15.0});
      metal_along(recipe.blank().body, air, ray, metal);
      for (const shape::Interval& one : metal)
        sum_mm += one.length_mm();
    }
  });
  if (sum_mm <= 0.0) throw std::runtime_error("the rays meet no metal");
  return seconds * 1e9 / rays;
}

int run(bool smoke) {
  const Recipe recipe = plate();
  std::vector<TopoDS_Shape> bodies;
  double seam_rad = 0.6;
  for (const shape::Cut& cut : recipe.cuts())
    bodies.push_back(solid::kernel_body(cut.body, seam_rad += 2.4, recipe.blank().body));
  std::vector<double> walls;
  std::vector<double> kernel;
  std::vector<double> rays_ns;
  std::vector<double> ours;
  for (int i = 0; i < (smoke ? 1 : 15); ++i) {
    walls.push_back(seconds_of([&] { ours = by_walls(recipe); }));
    kernel.push_back(seconds_of([&] { (void)by_the_kernel(bodies); }));
    rays_ns.push_back(ns_a_ray(recipe, smoke ? 1000 : 100000));
  }
  const double faster = median(kernel) / median(walls);
  if (ours.size() != kFeatures) throw std::runtime_error("a feature has no wall");
  fmt::print(
      "least walls of {} features, thinnest {:.3f} mm: {:.2f} ms; the kernel's distances of all pairs {:.1f} "
      "ms: {:.0f} "
      "times as fast; a ray through {} cutters {:.0f} ns\n",
      kFeatures, *std::min_element(ours.begin(), ours.end()), median(walls) * 1e3, median(kernel) * 1e3,
      faster, kFeatures, median(rays_ns));
  if (smoke || faster >= kTimesFaster) return 0;
  fmt::print("less than {} times as fast\n", kTimesFaster);
  return 1;
}

}  // namespace

int main(int argc, char** argv) {
  return sparewright::benchmarks::status_of(
      [&] { return run(argc > 1 && std::string(argv[1]) == "--smoke"); });
}
