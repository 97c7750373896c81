#include "core/handbook/change_gears.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

#include <fmt/format.h>

namespace sparewright::handbook {
namespace {

using quantity::Length;
namespace unit = quantity::unit;

constexpr double kLeadToleranceMm = 1e-9;            // a picometre
constexpr std::int64_t kMostLeadBottom = 1'000'000;  // else a nanometre decides nothing
constexpr double kLeastLeadMm = 0.01;
constexpr double kMostLeadMm = 500.0;

base::Result<Ratio> lead_mm(Length lead, std::string_view what) {
  const double mm = lead.in(unit::millimetre);
  if (!(mm > 0.0)) {
    return base::fail(base::Code::kSizeNotPositive, fmt::format("{:.6g} mm", mm), "a lead of more than 0 mm",
                      what);
  }
  if (mm < kLeastLeadMm || mm > kMostLeadMm) {
    return base::fail(base::Code::kValueNotAccepted, fmt::format("{:.6g} mm", mm),
                      fmt::format("{} to {} mm", kLeastLeadMm, kMostLeadMm), what);
  }
  const Ratio simple = ratio_near(mm, kLeadToleranceMm);
  return simple.bottom() <= kMostLeadBottom ? simple
                                            : Ratio::of(std::llround(mm * kMostLeadBottom), kMostLeadBottom);
}

// What is in the box beside the train.
std::vector<int> left_over(std::vector<int> gears, const GearTrain& train) {
  for (const auto* side : {&train.drivers, &train.drivens}) {
    for (const int teeth : *side)
      gears.erase(std::find(gears.begin(), gears.end(), teeth));
  }
  gears.erase(std::unique(gears.begin(), gears.end()), gears.end());
  return gears;
}

}  // namespace

Length lead_of(Length screw_lead, const GearTrain& train) {
  return screw_lead * train.ratio().value();
}

Length worm_lead(Length module, int starts) {
  return module * (std::numbers::pi * starts);
}

base::Result<std::vector<ChangeGears>> change_gears(const LatheGearing& lathe, const ChangeGearWish& wish) {
  assert(wish.most_gears == 2 || wish.most_gears == 4 || wish.most_gears == 6);
  const auto screw = lead_mm(lathe.screw_lead, "the lead of the screw");
  if (!screw) return tl::unexpected(screw.error());
  const auto wanted = lead_mm(wish.lead, "the lead of the thread");
  if (!wanted) return tl::unexpected(wanted.error());
  const auto finder = TrainFinder::of(lathe.gears, wish.most_gears);
  if (!finder) return tl::unexpected(finder.error());
  if (lathe.banjo) {
    if (const auto good = checked(*lathe.banjo); !good) return tl::unexpected(good.error());
  }
  const auto fit_of = [&](const GearTrain& train) {
    return fit_on_banjo(*lathe.banjo, train, left_over(finder->teeth(), train));
  };
  TrainFinder::Accept accept;
  if (lathe.banjo) accept = [&](const GearTrain& train) { return fit_of(train).has_value(); };
  std::vector<ChangeGears> all;
  for (std::size_t gears = 2; gears <= wish.most_gears; gears += 2) {
    // A longer train must be better than what shorter ones do.
    const double beyond =
        all.size() < wish.most ? std::numeric_limits<double>::infinity() : std::abs(all.back().error);
    if (beyond == 0.0) break;
    for (const FoundTrain& found : finder->nearest(*wanted / *screw, gears, wish.most, accept, beyond)) {
      ChangeGears one{found.train, lead_of(lathe.screw_lead, found.train), found.error, found.exact, {}};
      if (lathe.banjo) {
        one.fit = fit_of(found.train);
        one.train = one.fit->train;
      }
      all.push_back(std::move(one));
    }
    std::stable_sort(all.begin(), all.end(), [](const ChangeGears& a, const ChangeGears& b) {
      return std::abs(a.error) < std::abs(b.error);
    });
    if (all.size() > wish.most) all.resize(wish.most);
  }
  return all;
}

}  // namespace sparewright::handbook
