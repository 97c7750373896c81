// Change gears of a lathe: the train for a wanted pitch or lead, exact or nearest, and whether it can be
// mounted.
//
// drivers / drivens = wanted lead / lead of the screw (with inch threads: threads per inch of the screw /
// threads per inch wanted). Source: kChangeGears.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/banjo.hpp"
#include "core/handbook/gear_trains.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

inline constexpr Source kChangeGears{
    "drivers / drivens = threads per inch of the lead screw / threads per inch wanted, Turning and Boring "
    "(1914)",
    "https://bitlit.ru/page/en/franklin-day-jones/turning-and-boring-a-specialized-treatise-for-machinists-"
    "students-in-the-industrial-and-engineering-schools-and-apprentices-on-turning-and-boring-meth/93",
    Basis::kPublished};

// Of a lathe, as far as the choice of gears goes. screw_lead is the lead that equal gears cut: that of the lead
// screw where the gearing in the head is 1:1, else the lathe's screw constant, a gearbox as it is set included.
// Where it is not known, cut a thread with equal gears and measure it.
struct LatheGearing {
  quantity::Length screw_lead;
  std::vector<int> gears;      // every gear in the box, twice where there are two
  std::optional<Banjo> banjo;  // none: gears are chosen without looking whether they go on
};

struct ChangeGearWish {
  quantity::Length lead;       // of the thread: pitch times starts
  std::size_t most_gears = 4;  // 2, 4 or 6
  std::size_t most = 5;        // answers
};

struct ChangeGears {
  GearTrain train;        // in the order of mounting where there is a banjo
  quantity::Length lead;  // that is cut
  double error = 0.0;     // lead / wanted lead - 1; 0 where exact
  bool exact = false;
  std::optional<BanjoFit> fit;  // where the lathe has a banjo

  // What the thread is too long over a length of engagement.
  [[nodiscard]] quantity::Length error_over(quantity::Length length) const { return length * error; }
};

// What a train cuts.
[[nodiscard]] quantity::Length lead_of(quantity::Length screw_lead, const GearTrain& train);

// The nearest trains of 2, 4 ... most_gears gears, nearest first, of equal errors the one with fewer gears,
// then as in TrainFinder. With a banjo those alone that go on it, with an idler of the box where one is
// needed; none where nothing does. Leads are taken as the simplest fraction of a millimetre within a
// picometre: 1/13 in is 127/65 mm exactly; what is no fraction with a bottom up to a million, to the nearest
// nanometre. A worm's lead, module times pi, is never met exactly. Fails as TrainFinder::of and
// checked(banjo), and with kSizeNotPositive or kValueNotAccepted for a lead: from 0.01 to 500 mm.
[[nodiscard]] base::Result<std::vector<ChangeGears>> change_gears(const LatheGearing& lathe,
                                                                  const ChangeGearWish& wish);

// Lead of a worm of that module or diametral pitch and number of starts: pi m z, pi z / P.
[[nodiscard]] quantity::Length worm_lead(quantity::Length module, int starts);

}  // namespace sparewright::handbook
