// Trains of gears out of a box of them: the nearest to a wanted ratio, complete and fast.
//
// A train has as many drivers as drivens; its ratio is the product of the drivers' teeth over that of the
// drivens', which is turns of the last shaft for one of the first. Every gear is used once; of a tooth count
// the box holds twice, both can be used.
//
// Method: the products of all drivers (one, two or three gears) are sorted once. For every set of drivens, in
// the order of their product, the best drivers stand at one place of that list, which only moves upwards;
// from there the search goes outwards until the error is beyond what has been found. For three and three that
// is C(n,3) steps of a few instead of C(n,3) C(n-3,3).
#pragma once

#include <cstdint>
#include <functional>
#include <limits>
#include <span>
#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/ratio.hpp"

namespace sparewright::handbook {

struct GearTrain {
  std::vector<int> drivers;  // teeth; the i-th driver meshes with the i-th driven where the order matters
  std::vector<int> drivens;

  [[nodiscard]] Ratio ratio() const;
  [[nodiscard]] std::size_t gears() const { return drivers.size() + drivens.size(); }
  friend bool operator==(const GearTrain&, const GearTrain&) = default;
};
[[nodiscard]] std::string to_string(const GearTrain& train);  // "30 x 63 : 80 x 75", drivers first

struct FoundTrain {
  GearTrain train;  // drivers and drivens ascending
  Ratio ratio;
  double error = 0.0;  // ratio / wanted - 1; exactly 0 where exact
  bool exact = false;
};

inline constexpr int kLeastTeeth = 8;
inline constexpr int kMostTeeth = 400;
inline constexpr std::size_t kMostGears = 64;  // in the box

class TrainFinder {
 public:
  // The box of gears, in any order, a tooth count as often as there are gears of it; trains of up to
  // most_gears (2, 4 or 6) will be asked for. Fails with kValueNotAccepted: fewer than two gears, more than
  // 64, a gear under 8 or over 400 teeth.
  [[nodiscard]] static base::Result<TrainFinder> of(std::span<const int> teeth, std::size_t most_gears = 6);

  // Whether a train will do, beside its ratio. Asked only of trains that would otherwise be in the answer.
  using Accept = std::function<bool(const GearTrain&)>;

  // The `most` trains of that many gears (2, 4 or 6, not more than was said) nearest to the ratio, nearest
  // first; of equal errors first the one whose smallest gear is the largest, then by drivers and drivens. No
  // train that accept lets through has a smaller error than one that is left out. Trains more than `beyond`
  // off (relative) are not looked at. wanted must be more than zero.
  [[nodiscard]] std::vector<FoundTrain> nearest(
      const Ratio& wanted, std::size_t gears, std::size_t most, const Accept& accept = {},
      double beyond = std::numeric_limits<double>::infinity()) const;

  [[nodiscard]] const std::vector<int>& teeth() const { return teeth_; }  // ascending

 private:
  TrainFinder(std::vector<int> ascending, std::size_t most_gears);

  // One, two or three gears. Of equal gears a set of drivers takes the first ones and a set of drivens the
  // last ones, so that two sets share a gear exactly where their masks do.
  struct Side {
    std::uint32_t product = 0;
    std::uint64_t mask = 0;
  };
  struct Sides {
    std::vector<Side> drivers;  // by product, then mask
    std::vector<Side> drivens;
  };
  [[nodiscard]] Sides sides_of(std::size_t gears) const;
  [[nodiscard]] std::vector<int> gears_in(std::uint64_t mask) const;
  class Search;

  std::vector<int> teeth_;
  std::vector<Sides> sides_;  // of one gear, two, three
};

}  // namespace sparewright::handbook
