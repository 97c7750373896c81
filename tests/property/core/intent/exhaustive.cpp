#include "exhaustive.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace sparewright::tests {
namespace {

using intent::Common;
using intent::Spread;

constexpr double kNone_mm = -1.0;

// One way to say what the sizes of one group are.
struct Saying {
  double weight = 0.0;
  std::vector<std::pair<std::size_t, double>> sizes_mm;  // which, and its nominal; kNone_mm for no series
};
using Sayings = std::vector<Saying>;

Sayings alone(const Spread& spread, std::size_t which, double Common::*system) {
  Sayings all{{spread.none.*system, {{which, kNone_mm}}}};
  for (const intent::Option& option : spread.options)
    all.push_back({option.common.*system * (option.like.*system), {{which, option.size_mm}}});
  double most = 0.0;
  for (const Saying& saying : all)
    most = std::max(most, saying.weight);
  std::erase_if(all, [&](const Saying& saying) { return saying.weight < kPassedOver * most; });
  return all;
}

// How common a size is of a spread, and how likely the reading is of it.
std::pair<double, double> at(const Spread& spread, double size_mm, double Common::*system) {
  for (const intent::Option& option : spread.options) {
    if (std::abs(option.size_mm - size_mm) < 1e-6) return {option.common.*system, option.like.*system};
  }
  return {0.0, intent::likelihood(intent::usually_made(size_mm, spread.measured), size_mm, spread.measured)};
}

Sayings pair_of(const Spread& a, std::size_t which_a, const Spread& b, std::size_t which_b,
                double Common::*system) {
  Sayings all;
  for (const Saying& one : alone(a, which_a, system)) {
    for (const Saying& other : alone(b, which_b, system)) {
      all.push_back({(1.0 - intent::kShareNominal) * one.weight * other.weight,
                     {one.sizes_mm.front(), other.sizes_mm.front()}});
    }
  }
  std::vector<double> sizes;
  for (const Spread* spread : {&a, &b}) {
    for (const intent::Option& option : spread->options) {
      const bool again = std::any_of(sizes.begin(), sizes.end(),
                                     [&](double size) { return std::abs(size - option.size_mm) < 1e-6; });
      if (!again) sizes.push_back(option.size_mm);
    }
  }
  for (const double size : sizes) {
    const auto [common_a, like_a] = at(a, size, system);
    const auto [common_b, like_b] = at(b, size, system);
    all.push_back({intent::kShareNominal * (common_a + common_b) / 2.0 * like_a * like_b *
                       intent::kNominalsWithin * size,
                   {{which_a, size}, {which_b, size}}});
  }
  return all;
}

class Search {
 public:
  Search(std::vector<Sayings> groups, double prior, std::vector<std::map<long, Weighed>>& sums)
      : groups_(std::move(groups)), prior_(prior), sums_(sums) {
    for (Sayings& group : groups_) {
      std::stable_sort(group.begin(), group.end(),
                       [](const Saying& a, const Saying& b) { return a.weight > b.weight; });
      below_.emplace_back(group.size(), 0.0);
    }
  }

  void go() {
    best_ = prior_;
    for (const Sayings& group : groups_)
      best_ *= group.front().weight;
    if (best_ > 0.0) descend(0, prior_, best_);
    for (std::size_t g = 0; g < groups_.size(); ++g) {
      for (std::size_t i = 0; i < groups_[g].size(); ++i)
        add(groups_[g][i], below_[g][i]);
    }
  }

 private:
  void add(const Saying& saying, double weight) {
    for (const auto& [which, size] : saying.sizes_mm) {
      Weighed& sum = sums_[which][std::lround(size * 1e5)];
      sum.size_mm = size;
      sum.chance += weight;
    }
  }

  // The weights of all combinations that begin as said so far, one by one. bound: of the best that the rest can still come to.
  double descend(std::size_t depth, double weight, double bound) {
    if (depth == groups_.size()) return weight;
    const Sayings& group = groups_[depth];
    std::vector<double>& below = below_[depth];
    const double to_first = bound / group.front().weight;
    double sum = 0.0;
    for (std::size_t i = 0; i < group.size(); ++i) {
      const double reach = to_first * group[i].weight;
      if (reach < kPassedOver * best_) break;
      const double under = descend(depth + 1, weight * group[i].weight, reach);
      below[i] += under;
      sum += under;
    }
    return sum;
  }

  std::vector<Sayings> groups_;
  std::vector<std::vector<double>> below_;  // of each saying, the weights of all combinations it is in
  double prior_;
  std::vector<std::map<long, Weighed>>& sums_;
  double best_ = 0.0;
};

std::vector<Sayings> sayings(const std::vector<intent::Sized>& sizes, const std::vector<Spread>& spreads,
                             double Common::*system) {
  std::vector<Sayings> groups;
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    std::size_t with = i;
    for (std::size_t j = 0; j < sizes.size(); ++j) {
      if (j != i && sizes[j].goes_with == sizes[i].goes_with) with = j;
    }
    if (with < i) continue;  // was taken with its mate
    groups.push_back(with == i ? alone(spreads[i], i, system)
                               : pair_of(spreads[i], i, spreads[with], with, system));
  }
  return groups;
}

}  // namespace

std::vector<Spread> spreads_of(const std::vector<intent::Sized>& sizes) {
  std::vector<Spread> spreads;
  for (const intent::Sized& one : sizes)
    spreads.push_back(intent::spread_of(one.measured));
  return spreads;
}

std::vector<std::vector<Weighed>> by_exhaustion(const std::vector<intent::Sized>& sizes,
                                                const std::vector<Spread>& spreads, double chance_of_inch) {
  std::vector<std::map<long, Weighed>> sums(sizes.size());
  Search(sayings(sizes, spreads, &Common::inch), chance_of_inch, sums).go();
  Search(sayings(sizes, spreads, &Common::metric), 1.0 - chance_of_inch, sums).go();
  std::vector<std::vector<Weighed>> all;
  for (const auto& sum : sums) {
    std::vector<Weighed> one;
    double total = 0.0;
    for (const auto& [key, weighed] : sum)
      total += weighed.chance;
    for (const auto& [key, weighed] : sum) {
      if (weighed.size_mm > 0.0) one.push_back({weighed.size_mm, weighed.chance / total});
    }
    std::stable_sort(one.begin(), one.end(),
                     [](const Weighed& a, const Weighed& b) { return a.chance > b.chance; });
    all.push_back(std::move(one));
  }
  return all;
}

}  // namespace sparewright::tests
