#include "core/handbook/gauge_blocks.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <numeric>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Length;
namespace unit = quantity::unit;

struct SeriesRow {
  std::string_view set;
  Length from;
  Length to;
  std::optional<Length> step;  // none: one block
  int pieces;
  Source source;
};
constexpr SeriesRow kSeries[] = {
#include "generated/core/handbook/gauge_blocks.inc"
};

using Nanometres = std::int64_t;

Nanometres nanometres(Length length) {
  return std::llround(length.in(unit::millimetre)*1e6);
}

Length from_nanometres(Nanometres nm) {
  return Length::of(static_cast<double>(nm) / 1e6, unit::millimetre);
}

// How fine a block is: the largest of these steps it is a multiple of. Inch and metric steps in nanometres, each a
// multiple of the one before it in its own system.
constexpr Nanometres kSteps[] = {
    127'000'000, 25'400'000, 12'700'000, 2'540'000, 1'270'000, 254'000, 25'400, 2'540, 1'270, 100'000'000,
    50'000'000,  25'000'000, 5'000'000,  1'000'000, 500'000,   100'000, 10'000, 1'000, 500};

Nanometres fineness(Nanometres block) {
  Nanometres best = 1;
  for (const Nanometres step : kSteps) {
    if (block % step == 0) best = std::max(best, step);
  }
  return best;
}

// The blocks of a set, finest first, and what is known of those from each place on.
class Search {
 public:
  explicit Search(std::vector<Nanometres> blocks) : blocks_(std::move(blocks)), rests_(blocks_.size() + 1) {
    std::sort(blocks_.begin(), blocks_.end(), [](Nanometres a, Nanometres b) {
      const Nanometres fine_a = fineness(a);
      const Nanometres fine_b = fineness(b);
      return fine_a != fine_b ? fine_a < fine_b : a < b;
    });
    for (std::size_t i = blocks_.size(); i-- > 0;) {
      Rest& rest = rests_[i];
      rest.shared = std::gcd(rests_[i + 1].shared, blocks_[i]);
      rest.blocks = rests_[i + 1].blocks;
      rest.blocks.insert(std::upper_bound(rest.blocks.begin(), rest.blocks.end(), blocks_[i]), blocks_[i]);
      for (std::size_t count = 1; count <= std::min(kMostStackBlocks, rest.blocks.size()); ++count) {
        rest.least[count] = rest.least[count - 1] + rest.blocks[count - 1];
        rest.most[count] = rest.most[count - 1] + rest.blocks[rest.blocks.size() - count];
      }
    }
  }

  [[nodiscard]] Nanometres step() const { return rests_[0].shared; }

  // All choices of that many blocks with that sum, each once.
  std::vector<std::vector<Nanometres>> with(std::size_t count, Nanometres sum) {
    found_.clear();
    chosen_.clear();
    choose(0, count, sum);
    return std::move(found_);
  }

 private:
  struct Rest {
    Nanometres shared = 0;                                 // greatest common factor
    std::vector<Nanometres> blocks;                        // thinnest first
    std::array<Nanometres, kMostStackBlocks + 1> least{};  // of that many blocks together
    std::array<Nanometres, kMostStackBlocks + 1> most{};
  };

  // Whether `count` of the blocks from `at` on could have that sum: no possible one is denied, and what is denied
  // from one place on is denied from all later ones.
  [[nodiscard]] bool may_be(std::size_t at, std::size_t count, Nanometres sum) const {
    const Rest& rest = rests_[at];
    return rest.blocks.size() >= count && sum >= rest.least.at(count) && sum <= rest.most.at(count) &&
           (rest.shared == 0 || sum % rest.shared == 0);
  }

  void choose(std::size_t at, std::size_t count, Nanometres sum) {
    if (count == 1) return choose_one(at, sum);
    if (count == 2) return choose_two(at, sum);
    for (std::size_t i = at; may_be(i, count, sum); ++i) {
      if (i > at && blocks_[i] == blocks_[i - 1]) continue;  // of equal blocks the first goes first
      if (!may_be(i + 1, count - 1, sum - blocks_[i])) continue;
      chosen_.push_back(blocks_[i]);
      choose(i + 1, count - 1, sum - blocks_[i]);
      chosen_.pop_back();
    }
  }

  void choose_one(std::size_t at, Nanometres block) {
    const std::vector<Nanometres>& rest = rests_[at].blocks;
    if (std::binary_search(rest.begin(), rest.end(), block)) take({block});
  }

  // From both ends towards the middle.
  void choose_two(std::size_t at, Nanometres sum) {
    const std::vector<Nanometres>& rest = rests_[at].blocks;
    if (rest.empty()) return;
    for (std::size_t low = 0, high = rest.size() - 1; low < high;) {
      const Nanometres both = rest[low] + rest[high];
      if (both == sum && (low == 0 || rest[low] != rest[low - 1])) take({rest[low], rest[high]});
      if (both <= sum) ++low;
      if (both > sum) --high;
    }
  }

  void take(std::initializer_list<Nanometres> last) {
    found_.push_back(chosen_);
    found_.back().insert(found_.back().end(), last);
  }

  std::vector<Nanometres> blocks_;
  std::vector<Rest> rests_;  // the blocks from each place on; the last has none
  std::vector<Nanometres> chosen_;
  std::vector<std::vector<Nanometres>> found_;
};

// The stacks with the fewest blocks, thickest first in each and thickest stacks of blocks first; none where six are
// not enough.
std::vector<std::vector<Nanometres>> fewest(Search& search, Nanometres sum) {
  for (std::size_t count = 1; count <= kMostStackBlocks; ++count) {
    auto all = search.with(count, sum);
    if (all.empty()) continue;
    for (auto& blocks : all)
      std::sort(blocks.rbegin(), blocks.rend());
    std::sort(all.rbegin(), all.rend());
    return all;
  }
  return {};
}

std::optional<base::Failure> bad_set(const GaugeBlockSet& set, std::optional<Length> wear) {
  if (set.blocks.empty() || set.blocks.size() > kMostBlocksInSet) {
    return base::fail(base::Code::kValueNotAccepted, fmt::format("{} blocks", set.blocks.size()),
                      fmt::format("1 to {} blocks", kMostBlocksInSet), "the set of gauge blocks")
        .value();
  }
  const auto bad = [](Length block) { return !std::isfinite(block.base()) || nanometres(block) <= 0; };
  for (const Length block : set.blocks) {
    if (!bad(block)) continue;
    return base::fail(base::Code::kSizeNotPositive, fmt::format("{:.6g} mm", block.in(unit::millimetre)),
                      "a length of more than 0 mm", "a gauge block")
        .value();
  }
  if (wear && bad(*wear)) {
    return base::fail(base::Code::kSizeNotPositive, fmt::format("{:.6g} mm", wear->in(unit::millimetre)),
                      "a length of more than 0 mm", "a wear block")
        .value();
  }
  return std::nullopt;
}

GaugeStack stack_of(const std::vector<Nanometres>& blocks, std::optional<Length> wear, Length wanted) {
  GaugeStack stack;
  stack.wear = wear;
  Nanometres sum = wear ? 2 * nanometres(*wear) : 0;
  for (const Nanometres block : blocks) {
    stack.blocks.push_back(from_nanometres(block));
    sum += block;
  }
  stack.length = from_nanometres(sum);
  if (sum != nanometres(wanted)) stack.error = stack.length - wanted;
  return stack;
}

}  // namespace

std::vector<GaugeBlockSet> gauge_block_sets() {
  std::vector<GaugeBlockSet> sets;
  for (const SeriesRow& row : kSeries) {
    if (sets.empty() || sets.back().name != row.set) sets.push_back({std::string(row.set), {}, row.source});
    for (int i = 0; i < row.pieces; ++i)
      sets.back().blocks.push_back(row.from + (row.step ? *row.step * i : Length()));
  }
  return sets;
}

base::Result<GaugeBlockSet> find_gauge_blocks(std::string_view name) {
  const std::string wanted = folded(name);
  for (GaugeBlockSet& set : gauge_block_sets()) {
    if (folded(set.name) == wanted) return std::move(set);
  }
  return unknown(name, "set of gauge blocks",
                 names_of(kSeries, [](const SeriesRow& row) { return row.set; }));
}

base::Result<std::vector<GaugeStack>> gauge_stacks(const GaugeBlockSet& set, Length length,
                                                   std::optional<Length> wear, std::size_t most) {
  if (const auto bad = bad_set(set, wear)) return tl::unexpected(*bad);
  std::vector<Nanometres> blocks;
  for (const Length block : set.blocks)
    blocks.push_back(nanometres(block));
  const Nanometres ends = wear ? 2 * nanometres(*wear) : 0;
  const auto refuse = [&] {
    std::sort(blocks.rbegin(), blocks.rend());
    const auto n = static_cast<std::ptrdiff_t>(std::min(kMostStackBlocks, blocks.size()));
    const Nanometres longest = std::accumulate(blocks.begin(), blocks.begin() + n, ends);
    return base::fail(
        base::Code::kValueNotAccepted, fmt::format("{:.6g} mm", length.in(unit::millimetre)),
        fmt::format("what up to {} blocks make: {:g} to {:g} mm, with gaps", kMostStackBlocks,
                    static_cast<double>(blocks.back() + ends) / 1e6, static_cast<double>(longest) / 1e6),
        "the length of the stack");
  };
  constexpr double kLongestMm = 10000.0;
  if (!(length > Length() && length.in(unit::millimetre) < kLongestMm)) return refuse();
  Search search(blocks);
  const Nanometres wanted = nanometres(length) - ends;
  const Nanometres below = wanted >= 0 ? wanted / search.step() * search.step() : 0;
  std::vector<Nanometres> tries{below, below + search.step()};
  if (wanted - below > below + search.step() - wanted) std::swap(tries[0], tries[1]);
  if (below == wanted) tries = {wanted, wanted - search.step(), wanted + search.step()};
  for (const Nanometres sum : tries) {
    const auto all = sum > 0 ? fewest(search, sum) : std::vector<std::vector<Nanometres>>();
    if (all.empty()) continue;
    std::vector<GaugeStack> out;
    for (std::size_t i = 0; i < std::min(most, all.size()); ++i)
      out.push_back(stack_of(all[i], wear, length));
    return out;
  }
  return refuse();
}

}  // namespace sparewright::handbook
