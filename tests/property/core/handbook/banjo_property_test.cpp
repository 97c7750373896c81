// What is said to go on a banjo is mounted again here from what the answer says alone, and measured; what is
// said not to go is tried in fine steps.
#include <cmath>
#include <numbers>
#include <optional>

#include <gtest/gtest.h>

#include "core/handbook/banjo.hpp"
#include "property.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Angle;
using quantity::Diameter;
using quantity::Length;
using tests::holds;
namespace unit = quantity::unit;

struct Gear {
  double x = 0.0;
  double y = 0.0;
  int teeth = 0;
  int plane = 0;
  int axis = 0;
};

Banjo random_banjo() {
  Banjo banjo;
  const auto mm = [](double size) { return Length::of(size, unit::millimetre); };
  banjo.module = mm(*rc::gen::element(1.0, 1.25, 1.5));
  banjo.centres = mm(*rc::gen::inRange(90, 160));
  banjo.slots = {{mm(*rc::gen::inRange(30, 50)), mm(*rc::gen::inRange(80, 160)), {}}};
  if (*rc::gen::arbitrary<bool>()) {
    banjo.slots.push_back({mm(40.0), mm(140.0), Angle::of(*rc::gen::inRange(-60, 60), unit::degree)});
  }
  banjo.fixed_collar = Diameter::of(*rc::gen::inRange(10, 30), unit::millimetre);
  banjo.screw_collar = Diameter::of(20.0, unit::millimetre);
  banjo.stud_collar = Diameter::of(*rc::gen::inRange(10, 30), unit::millimetre);
  return banjo;
}

std::vector<Gear> mounted(const Banjo& banjo, const BanjoFit& fit) {
  std::vector<Gear> gears{{banjo.centres.base(), 0.0, fit.train.drivers.front(), 0, 0}};
  int plane = 0;
  int axis = 1;
  for (const BanjoStud& stud : fit.studs) {
    const double angle = fit.swing.base() + banjo.slots[stud.slot].turned.base();
    const double x = stud.along.base() * std::cos(angle);
    const double y = stud.along.base() * std::sin(angle);
    gears.push_back({x, y, stud.in, plane, axis});
    if (!stud.idler) gears.push_back({x, y, stud.out, ++plane, axis});
    ++axis;
  }
  gears.push_back({0.0, 0.0, fit.train.drivens.back(), plane, axis});
  return gears;
}

double collar_radius(const Banjo& banjo, int axis, int last) {
  const Diameter collar = axis == 0      ? banjo.fixed_collar
                          : axis == last ? banjo.screw_collar
                                         : banjo.stud_collar;
  return collar.base() / 2.0;
}

// Meshing pairs are as far apart as they want, everything else keeps the clearance.
void expect_mounts(const Banjo& banjo, const BanjoFit& fit) {
  const std::vector<Gear> gears = mounted(banjo, fit);
  const int last = gears.back().axis;
  const double module = banjo.module.base();
  int meshes = 0;
  for (const Gear& one : gears) {
    for (const Gear& other : gears) {
      if (one.axis == other.axis) continue;
      const double apart = std::hypot(one.x - other.x, one.y - other.y);
      if (one.plane == other.plane && std::abs(one.axis - other.axis) == 1) {
        ++meshes;
        RC_ASSERT(std::abs(apart - module * (one.teeth + other.teeth) / 2.0) <
                  1e-6 + (last == 1 ? 0.1 * module : 0.0));
        continue;
      }
      const double outside = module * (one.teeth + 2) / 2.0;
      if (one.plane == other.plane)
        RC_ASSERT(apart - outside - module * (other.teeth + 2) / 2.0 > banjo.clearance.base() - 1e-5);
      bool gear_there = false;
      for (const Gear& third : gears)
        gear_there = gear_there || (third.axis == other.axis && third.plane == one.plane);
      if (!gear_there)
        RC_ASSERT(apart - outside - collar_radius(banjo, other.axis, last) > banjo.clearance.base() - 1e-5);
    }
  }
  RC_ASSERT(meshes == 2 * last);
  for (const BanjoStud& stud : fit.studs) {
    RC_ASSERT(stud.along.base() >= banjo.slots[stud.slot].nearest.base() - 1e-6);
    RC_ASSERT(stud.along.base() <= banjo.slots[stud.slot].farthest.base() + 1e-6);
  }
}

std::vector<int> random_teeth(std::size_t count) {
  return *rc::gen::container<std::vector<int>>(
      count, rc::gen::element(20, 24, 28, 32, 36, 40, 45, 50, 55, 60, 65, 70, 75, 80, 90, 100, 120, 127));
}

TEST(BanjoProperty, WhatFitsCanBeMounted) {
  int fits = 0;
  int idlers = 0;
  int two_studs = 0;
  int second_slot = 0;
  EXPECT_TRUE(holds("a fit mounts with every mesh closed and everything clear", [&] {
    const Banjo banjo = random_banjo();
    const auto pairs = *rc::gen::inRange<std::size_t>(1, 4);
    const GearTrain train{random_teeth(pairs), random_teeth(pairs)};
    const auto fit = fit_on_banjo(banjo, train, random_teeth(3));
    if (!fit) return;
    ++fits;
    RC_ASSERT(fit->train.ratio() == train.ratio());
    for (const BanjoStud& stud : fit->studs) {
      idlers += stud.idler ? 1 : 0;
      second_slot += stud.slot == 1 ? 1 : 0;
    }
    two_studs += fit->studs.size() == 2 ? 1 : 0;
    expect_mounts(banjo, *fit);
  }));
  EXPECT_GT(fits, 80);
  EXPECT_GT(idlers, 20);
  EXPECT_GT(two_studs, 20);
  EXPECT_GT(second_slot, 10);
}

// A compound train on one slot, tried by swinging the banjo in steps: where S's gear comes within a step of
// meshing and all is clear by more than a step could spoil, there must be a fit.
TEST(BanjoProperty, WhatDoesNotFitCannotBeMounted) {
  int mountable = 0;
  EXPECT_TRUE(holds("no mounting is missed", [&] {
    Banjo banjo = random_banjo();
    banjo.slots.resize(1);
    const std::vector<int> t = random_teeth(4);
    const double module = banjo.module.base();
    const double along = module * (t[1] + t[3]) / 2.0;  // t0 drives t2 beside t1, t1 drives t3
    if (along < banjo.slots[0].nearest.base() || along > banjo.slots[0].farthest.base()) return;
    constexpr double kStep = 0.001;
    const double margin = kStep * along + banjo.clearance.base();
    const auto outside = [&](int teeth) { return module * (teeth + 2) / 2.0; };
    const double centres = banjo.centres.base();
    bool found = false;
    for (double swing = 0.0; swing < std::numbers::pi; swing += kStep) {
      const double to_s = std::hypot(along * std::cos(swing) - centres, along * std::sin(swing));
      if (std::abs(to_s - module * (t[0] + t[2]) / 2.0) > kStep * along / 2.0) continue;
      const bool second_driver_clears_s = to_s - outside(t[1]) - banjo.fixed_collar.base() / 2.0 > margin;
      const bool first_driven_clears_l = along - outside(t[2]) - banjo.screw_collar.base() / 2.0 > margin;
      const bool first_clears_l = centres - outside(t[0]) - banjo.screw_collar.base() / 2.0 > margin;
      const bool last_clears_s = centres - outside(t[3]) - banjo.fixed_collar.base() / 2.0 > margin;
      // the gears of S and L lie in planes in which the stud has gears of its own
      found = found || (second_driver_clears_s && first_driven_clears_l && first_clears_l && last_clears_s);
    }
    if (!found) return;
    ++mountable;
    RC_ASSERT(fit_on_banjo(banjo, {{t[0], t[1]}, {t[2], t[3]}}, {}).has_value());
  }));
  EXPECT_GT(mountable, 15);
}

}  // namespace
}  // namespace sparewright::handbook
