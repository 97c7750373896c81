#include "core/handbook/reaming.hpp"

#include <string>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::FeedPerTurn;
using quantity::Length;
namespace unit = quantity::unit;

constexpr ReamingStock kReamingStock[] = {
#include "generated/core/handbook/reaming_stock.inc"
};

// Inches per flute and turn.
struct FluteFeed {
  double low;
  double high;
  Source source;
};
constexpr FluteFeed kFluteFeeds[] = {
    {0.002,
     0.003,
     {"cutter maker's drilling and reaming tables (rule: 0.0025 in a flute)", "", Basis::kPublished}},
    {0.0015, 0.004, {"usual range of machinists' texts", "", Basis::kFromMemory}},
};

}  // namespace

base::Result<ReamingStock> reaming_stock(Diameter hole) {
  // Ranges are printed 0.090 to 0.170, 0.171 to 0.280: a hole between two takes the lower one.
  const ReamingStock* found = nullptr;
  for (const ReamingStock& row : kReamingStock) {
    if (hole.base() >= row.from.base() - kSizeSlackMm) found = &row;
  }
  const auto* last = std::end(kReamingStock) - 1;
  if (found != nullptr && hole.base() <= last->up_to.base() + kSizeSlackMm) return *found;
  return not_tabled("the stock to leave for reaming", fmt::format("{:.4f} in", hole.in(unit::inch)),
                    "holes of 0.09 to 2.5 in");
}

base::Result<Feed> reaming_feed(int flutes) {
  if (flutes < 1) {
    return base::fail(base::Code::kSizeNotPositive, std::to_string(flutes), "1 or more",
                      "the number of flutes");
  }
  std::vector<Printed<FeedPerTurn>> printed;
  for (const FluteFeed& feed : kFluteFeeds) {
    printed.push_back({FeedPerTurn::of(feed.low * flutes, unit::inch_per_turn),
                       FeedPerTurn::of(feed.high * flutes, unit::inch_per_turn),
                       "any metal",
                       {},
                       feed.source});
  }
  return spread_of(std::move(printed));
}

}  // namespace sparewright::handbook
