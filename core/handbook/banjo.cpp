#include "core/handbook/banjo.hpp"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

#include <fmt/format.h>

namespace sparewright::handbook {
namespace {

using quantity::Angle;
using quantity::Length;
namespace unit = quantity::unit;

constexpr double kSlackMm = 1e-6;  // a nanometre decides nothing
constexpr std::size_t kMostStuds = 2;

struct StudGears {
  int in = 0;
  int out = 0;
  bool idler = false;
};

// A train in one order, with what the studs carry from S to L.
struct Chain {
  const GearTrain* order = nullptr;
  std::array<StudGears, kMostStuds> studs;
  std::size_t count = 0;

  [[nodiscard]] int first() const { return order->drivers.front(); }
  [[nodiscard]] int last() const { return order->drivens.back(); }
};

struct Mounted {
  int teeth = 0;
  int plane = 0;  // counted from the first driver's
};

// An axis with its one or two gears. L stands at the origin, S on the x axis.
struct Axis {
  double x_mm = 0.0;
  double y_mm = 0.0;
  std::array<Mounted, 2> gears;
  std::size_t count = 0;
  double collar_radius_mm = 0.0;

  [[nodiscard]] const Mounted* in_plane(int plane) const {
    for (std::size_t i = 0; i < count; ++i) {
      if (gears.at(i).plane == plane) return &gears.at(i);
    }
    return nullptr;
  }
};

// Where the studs of a chain stand.
struct Places {
  std::array<std::size_t, kMostStuds> slot{};
  std::array<double, kMostStuds> along_mm{};
  double swing_rad = 0.0;
};

class Fitting {
 public:
  explicit Fitting(const Banjo& banjo)
      : banjo_(banjo),
        module_mm_(banjo.module.in(unit::millimetre)),
        centres_mm_(banjo.centres.in(unit::millimetre)) {}

  void try_order(const GearTrain& order) { place(chain_of(order)); }

  // An idler on a stud of its own: before each other stud, or before L.
  void try_order_with_idler(const GearTrain& order, int idler) {
    const Chain plain = chain_of(order);
    assert(plain.count < kMostStuds);
    for (std::size_t at = 0; at <= plain.count; ++at) {
      Chain chain = plain;
      for (std::size_t i = chain.count; i > at; --i)
        chain.studs.at(i) = chain.studs.at(i - 1);
      chain.studs.at(at) = {idler, idler, true};
      ++chain.count;
      place(chain);
    }
  }

  std::optional<BanjoFit> take() { return std::move(best_); }
  [[nodiscard]] bool found() const { return best_.has_value(); }

 private:
  static Chain chain_of(const GearTrain& order) {
    Chain chain;
    chain.order = &order;
    for (; chain.count + 1 < order.drivers.size(); ++chain.count)
      chain.studs.at(chain.count) = {order.drivens[chain.count], order.drivers[chain.count + 1], false};
    return chain;
  }

  [[nodiscard]] double apart_mm(int one, int other) const { return module_mm_ * (one + other) / 2.0; }
  [[nodiscard]] double outside_mm(int teeth) const { return module_mm_ * (teeth + 2) / 2.0; }

  [[nodiscard]] bool in_slot(std::size_t slot, double along_mm) const {
    return along_mm >= banjo_.slots[slot].nearest.base() - kSlackMm &&
           along_mm <= banjo_.slots[slot].farthest.base() + kSlackMm;
  }

  void place(const Chain& chain) {
    if (chain.count == 0) {
      const double extra_mm = centres_mm_ - apart_mm(chain.first(), chain.last());
      if (extra_mm >= -kSlackMm && extra_mm <= kMostExtraModules * module_mm_ + kSlackMm) keep({}, chain);
      return;
    }
    for (std::size_t slot = 0; slot < banjo_.slots.size(); ++slot) {
      if (chain.count == 1) {
        Places places;
        places.slot[0] = slot;
        places.along_mm[0] = apart_mm(chain.studs[0].out, chain.last());
        if (in_slot(slot, places.along_mm[0])) swing(places, chain);
      } else {
        for (std::size_t inner = 0; inner < banjo_.slots.size(); ++inner)
          place_two(slot, inner, chain);
      }
    }
  }

  // The stud next to L stands where its gears mesh; the other one where it is as far from that one as their
  // gears want: p1^2 - 2 p1 p2 cos(phi) + p2^2 = r^2.
  void place_two(std::size_t outer, std::size_t inner, const Chain& chain) {
    Places places;
    places.slot = {outer, inner};
    const double p2_mm = apart_mm(chain.studs[1].out, chain.last());
    if (!in_slot(inner, p2_mm)) return;
    const double phi = (banjo_.slots[inner].turned - banjo_.slots[outer].turned).base();
    const double across_mm = p2_mm * std::sin(phi);
    const double between_mm = apart_mm(chain.studs[0].out, chain.studs[1].in);
    const double half_chord_sq = between_mm * between_mm - across_mm * across_mm;
    if (half_chord_sq < 0.0) return;
    for (const double sign : {1.0, -1.0}) {
      places.along_mm = {p2_mm * std::cos(phi) + sign * std::sqrt(half_chord_sq), p2_mm};
      if (places.along_mm[0] > 0.0 && in_slot(outer, places.along_mm[0])) swing(places, chain);
    }
  }

  // Swings the banjo until the first stud's gear meshes with the one on S: a triangle of three known sides.
  void swing(Places places, const Chain& chain) {
    const double p1_mm = places.along_mm[0];
    const double reach_mm = apart_mm(chain.first(), chain.studs[0].in);
    const double cosine =
        (centres_mm_ * centres_mm_ + p1_mm * p1_mm - reach_mm * reach_mm) / (2.0 * centres_mm_ * p1_mm);
    if (std::abs(cosine) > 1.0) return;  // the gears do not reach, or reach past
    for (const double sign : {1.0, -1.0}) {
      places.swing_rad = std::remainder(sign * std::acos(cosine) - banjo_.slots[places.slot[0]].turned.base(),
                                        2.0 * std::numbers::pi);
      if (places.swing_rad < banjo_.least_swing.base() - kSlackMm) continue;
      if (places.swing_rad > banjo_.most_swing.base() + kSlackMm) continue;
      keep(places, chain);
    }
  }

  [[nodiscard]] std::array<Axis, kMostStuds + 2> axes_of(const Places& places, const Chain& chain) const {
    std::array<Axis, kMostStuds + 2> axes;
    axes[0] = {centres_mm_, 0.0, {Mounted{chain.first(), 0}, Mounted{}}, 1, banjo_.fixed_collar.base() / 2.0};
    int plane = 0;
    for (std::size_t i = 0; i < chain.count; ++i) {
      const StudGears& stud = chain.studs.at(i);
      const double angle = places.swing_rad + banjo_.slots[places.slot.at(i)].turned.base();
      Axis& axis = axes.at(i + 1);
      axis.x_mm = places.along_mm.at(i) * std::cos(angle);
      axis.y_mm = places.along_mm.at(i) * std::sin(angle);
      axis.collar_radius_mm = banjo_.stud_collar.base() / 2.0;
      axis.gears[axis.count++] = {stud.in, plane};
      if (!stud.idler) axis.gears[axis.count++] = {stud.out, ++plane};
    }
    axes.at(chain.count + 1) = {
        0.0, 0.0, {Mounted{chain.last(), plane}, Mounted{}}, 1, banjo_.screw_collar.base() / 2.0};
    return axes;
  }

  // The narrowest gap of the gears of one axis to the other: to its gear in the same plane unless they mesh,
  // to its collar in other planes.
  [[nodiscard]] double gap_mm(const Axis& one, const Axis& other, bool neighbours) const {
    const double apart = std::hypot(one.x_mm - other.x_mm, one.y_mm - other.y_mm);
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < one.count; ++i) {
      const Mounted& gear = one.gears.at(i);
      const Mounted* met = other.in_plane(gear.plane);
      if (met != nullptr && neighbours) continue;
      const double theirs = met != nullptr ? outside_mm(met->teeth) : other.collar_radius_mm;
      least = std::min(least, apart - outside_mm(gear.teeth) - theirs);
    }
    return least;
  }

  void keep(const Places& places, const Chain& chain) {
    const auto axes = axes_of(places, chain);
    double least_mm = centres_mm_;
    for (std::size_t i = 0; i < chain.count + 2; ++i) {
      for (std::size_t j = 0; j < chain.count + 2; ++j) {
        if (i != j) least_mm = std::min(least_mm, gap_mm(axes.at(i), axes.at(j), i + 1 == j || j + 1 == i));
      }
    }
    if (least_mm < banjo_.clearance.base() - kSlackMm) return;
    if (best_ && least_mm <= best_->least_gap.base() + kSlackMm) return;
    best_ = BanjoFit{*chain.order, {}, Angle::from_base(places.swing_rad), Length::from_base(least_mm)};
    for (std::size_t i = 0; i < chain.count; ++i) {
      const StudGears& stud = chain.studs.at(i);
      best_->studs.push_back(
          {stud.in, stud.out, stud.idler, places.slot.at(i), Length::from_base(places.along_mm.at(i))});
    }
  }

  const Banjo& banjo_;
  const double module_mm_;
  const double centres_mm_;
  std::optional<BanjoFit> best_;
};

// Every order of the drivers with every order of the drivens, the equal ones once.
template <class Try>
void for_every_order(GearTrain train, const Try& one) {
  std::sort(train.drivers.begin(), train.drivers.end());
  std::sort(train.drivens.begin(), train.drivens.end());
  do {
    do {
      one(std::as_const(train));
    } while (std::next_permutation(train.drivens.begin(), train.drivens.end()));
  } while (std::next_permutation(train.drivers.begin(), train.drivers.end()));
}

}  // namespace

base::Result<Banjo> checked(Banjo banjo) {
  const auto not_positive = [](std::string_view what, Length size) {
    return base::fail(base::Code::kSizeNotPositive, fmt::format("{:.6g} mm", size.in(unit::millimetre)),
                      "a length of more than 0 mm", what);
  };
  const auto refuse = [](std::string_view what, const std::string& found, std::string_view accepted) {
    return base::fail(base::Code::kValueNotAccepted, found, accepted, what);
  };
  if (!(banjo.module > Length())) return not_positive("the module of the change gears", banjo.module);
  constexpr Length kLongest = Length::of(10.0, unit::metre);
  if (banjo.module > kLongest || banjo.centres > kLongest)
    return refuse("the banjo", "longer than any lathe", "lengths up to 10 m");
  if (!(banjo.centres > Length()))
    return not_positive("the distance from the first driver to the lead screw", banjo.centres);
  if (banjo.slots.empty()) return refuse("the banjo", "no slot", "at least one slot for a stud");
  for (const BanjoSlot& slot : banjo.slots) {
    if (slot.nearest >= Length() && slot.farthest >= slot.nearest) continue;
    return refuse("a slot of the banjo",
                  fmt::format("{:.6g} to {:.6g} mm", slot.nearest.in(unit::millimetre),
                              slot.farthest.in(unit::millimetre)),
                  "the nearest place of a stud first, then the farthest");
  }
  const auto negative = [](Length size) { return !(size >= Length()); };
  if (negative(banjo.clearance) || negative(across(banjo.fixed_collar)) ||
      negative(across(banjo.screw_collar)) || negative(across(banjo.stud_collar)))
    return refuse("the banjo", "a negative collar or clearance", "0 mm or more");
  if (!(banjo.most_swing >= banjo.least_swing))
    return refuse("the swing of the banjo",
                  fmt::format("{:.6g} to {:.6g} deg", banjo.least_swing.in(unit::degree),
                              banjo.most_swing.in(unit::degree)),
                  "the least angle first, then the most");
  return banjo;
}

std::optional<BanjoFit> fit_on_banjo(const Banjo& banjo, const GearTrain& train,
                                     std::span<const int> idlers) {
  assert(!train.drivers.empty() && train.drivers.size() == train.drivens.size());
  assert(train.drivers.size() <= kMostStuds + 1);
  Fitting fitting(banjo);
  for_every_order(train, [&](const GearTrain& order) { fitting.try_order(order); });
  if (fitting.found() || train.drivers.size() > kMostStuds) return fitting.take();
  for_every_order(train, [&](const GearTrain& order) {
    for (const int idler : idlers)
      fitting.try_order_with_idler(order, idler);
  });
  return fitting.take();
}

}  // namespace sparewright::handbook
