#include "core/handbook/gear_trains.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstddef>
#include <tuple>

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace sparewright::handbook {
namespace {

double relative_error(std::uint32_t drivers, std::uint32_t drivens, double wanted) {
  return static_cast<double>(drivers) / static_cast<double>(drivens) / wanted - 1.0;
}

std::int64_t product(const std::vector<int>& teeth) {
  std::int64_t out = 1;
  for (const int count : teeth)
    out *= count;
  return out;
}

int smallest_gear(const GearTrain& train) {
  int least = kMostTeeth;
  for (const auto* side : {&train.drivers, &train.drivens})
    least = std::min(least, *std::min_element(side->begin(), side->end()));
  return least;
}

}  // namespace

Ratio GearTrain::ratio() const {
  return Ratio::of(product(drivers), product(drivens));
}

std::string to_string(const GearTrain& train) {
  return fmt::format("{} : {}", fmt::join(train.drivers, " x "), fmt::join(train.drivens, " x "));
}

base::Result<TrainFinder> TrainFinder::of(std::span<const int> teeth, std::size_t most_gears) {
  assert(most_gears == 2 || most_gears == 4 || most_gears == 6);
  const std::string accepted =
      fmt::format("2 to {} gears of {} to {} teeth", kMostGears, kLeastTeeth, kMostTeeth);
  const auto refuse = [&](const std::string& found) {
    return base::fail(base::Code::kValueNotAccepted, found, accepted, "the set of gears");
  };
  if (teeth.size() < 2)
    return refuse(teeth.empty() ? "no gears" : fmt::format("one gear of {} teeth", teeth[0]));
  if (teeth.size() > kMostGears) return refuse(fmt::format("{} gears", teeth.size()));
  for (const int count : teeth) {
    if (count < kLeastTeeth || count > kMostTeeth) return refuse(fmt::format("a gear of {} teeth", count));
  }
  std::vector<int> ascending(teeth.begin(), teeth.end());
  std::sort(ascending.begin(), ascending.end());
  return TrainFinder(std::move(ascending), most_gears);
}

TrainFinder::TrainFinder(std::vector<int> ascending, std::size_t most_gears) : teeth_(std::move(ascending)) {
  for (std::size_t gears = 1; gears <= most_gears / 2; ++gears)
    sides_.push_back(sides_of(gears));
}

TrainFinder::Sides TrainFinder::sides_of(std::size_t gears) const {
  const std::size_t n = teeth_.size();
  std::uint64_t like_the_one_before = 0;
  for (std::size_t i = 1; i < n; ++i) {
    if (teeth_[i] == teeth_[i - 1]) like_the_one_before |= std::uint64_t{1} << i;
  }
  Sides sides;
  const auto add = [&](Side side) {
    const std::uint64_t left_out = ~side.mask;
    const bool takes_the_first = ((side.mask & like_the_one_before) >> 1 & left_out) == 0;
    const bool takes_the_last = (side.mask << 1 & like_the_one_before & left_out) == 0;
    if (takes_the_first) sides.drivers.push_back(side);
    if (takes_the_last) sides.drivens.push_back(side);
  };
  const auto grow = [&](const auto& self, Side side, std::size_t from, std::size_t left) -> void {
    if (left == 0) return add(side);
    for (std::size_t i = from; i + left <= n; ++i) {
      const Side next{side.product * static_cast<std::uint32_t>(teeth_[i]),
                      side.mask | std::uint64_t{1} << i};
      self(self, next, i + 1, left - 1);
    }
  };
  grow(grow, Side{1, 0}, 0, gears);
  const auto before = [](const Side& a, const Side& b) {
    return a.product != b.product ? a.product < b.product : a.mask < b.mask;
  };
  std::sort(sides.drivers.begin(), sides.drivers.end(), before);
  if (like_the_one_before == 0) {
    sides.drivens = sides.drivers;
  } else {
    std::sort(sides.drivens.begin(), sides.drivens.end(), before);
  }
  return sides;
}

std::vector<int> TrainFinder::gears_in(std::uint64_t mask) const {
  std::vector<int> out;
  for (std::size_t i = 0; i < teeth_.size(); ++i) {
    if ((mask >> i & 1U) != 0) out.push_back(teeth_[i]);
  }
  return out;
}

// One question: keeps the best found so far, and with that the error beyond which nothing is of interest.
class TrainFinder::Search {
 public:
  Search(const TrainFinder& finder, const Ratio& wanted, std::size_t most, const Accept& accept,
         double beyond)
      : finder_(finder),
        wanted_(wanted),
        target_(wanted.value()),
        most_(most),
        accept_(accept),
        beyond_(beyond) {}

  std::vector<FoundTrain> run(const Sides& sides) {
    const std::vector<Side>& drivers = sides.drivers;
    std::size_t place = 0;  // the first drivers that are not too slow for these drivens
    for (const Side& drivens : sides.drivens) {
      while (place < drivers.size() && error(drivers[place], drivens) < 0.0)
        ++place;
      for (std::size_t i = place; i < drivers.size() && look(drivers[i], drivens); ++i) {
      }
      for (std::size_t i = place; i > 0 && look(drivers[i - 1], drivens); --i) {
      }
    }
    return std::move(best_);
  }

 private:
  [[nodiscard]] double error(const Side& drivers, const Side& drivens) const {
    return relative_error(drivers.product, drivens.product, target_);
  }

  // False where this and all beyond it are out of interest.
  bool look(const Side& drivers, const Side& drivens) {
    const double off = error(drivers, drivens);
    if (std::abs(off) > beyond_) return false;
    if ((drivers.mask & drivens.mask) == 0) keep(drivers, drivens, off);
    return true;
  }

  void keep(const Side& drivers, const Side& drivens, double off) {
    FoundTrain found{{finder_.gears_in(drivers.mask), finder_.gears_in(drivens.mask)}, {}, off, false};
    const auto at = std::upper_bound(best_.begin(), best_.end(), found, before);
    if (at == best_.end() && best_.size() == most_) return;
    if (accept_ && !accept_(found.train)) return;
    found.ratio = found.train.ratio();
    found.exact = found.ratio == wanted_;
    if (found.exact) found.error = 0.0;
    best_.insert(at, std::move(found));
    if (best_.size() > most_) best_.pop_back();
    if (best_.size() == most_) beyond_ = std::abs(best_.back().error);
  }

  static bool before(const FoundTrain& a, const FoundTrain& b) {
    const double off_a = std::abs(a.error);
    const double off_b = std::abs(b.error);
    if (off_a != off_b) return off_a < off_b;
    if (const int least_a = smallest_gear(a.train), least_b = smallest_gear(b.train); least_a != least_b)
      return least_a > least_b;
    return std::tie(a.train.drivers, a.train.drivens) < std::tie(b.train.drivers, b.train.drivens);
  }

  const TrainFinder& finder_;
  const Ratio wanted_;
  const double target_;
  const std::size_t most_;
  const Accept& accept_;
  std::vector<FoundTrain> best_;
  double beyond_;
};

std::vector<FoundTrain> TrainFinder::nearest(const Ratio& wanted, std::size_t gears, std::size_t most,
                                             const Accept& accept, double beyond) const {
  assert(wanted > Ratio() && gears >= 2 && gears % 2 == 0 && gears / 2 <= sides_.size());
  if (most == 0) return {};
  return Search(*this, wanted, most, accept, beyond).run(sides_[gears / 2 - 1]);
}

}  // namespace sparewright::handbook
