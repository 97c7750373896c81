#include "core/handbook/feeds.hpp"

#include <algorithm>
#include <optional>
#include <string>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::FeedPerTurn;
using quantity::Length;
namespace unit = quantity::unit;

struct DrillFeedRow {
  Diameter over;
  std::optional<Diameter> up_to;
  FeedPerTurn low;
  FeedPerTurn high;
  Source source;
};
constexpr DrillFeedRow kDrillFeeds[] = {
#include "generated/core/handbook/drill_feeds.inc"
};

struct EndMillFeedRow {
  WorkGroup group;
  ToolMaterial tool;
  std::string_view material;
  std::optional<double> brinell_low;
  std::optional<double> brinell_high;
  Diameter diameter;
  Length feed;
  std::string_view note;
  Source source;
};
constexpr EndMillFeedRow kEndMillFeeds[] = {
#include "generated/core/handbook/end_mill_feeds.inc"
};

struct TurningFeedRow {
  PrintedOperation operation;
  ToolMaterial tool;
  std::optional<WorkGroup> group;  // none: any metal
  Scope scope;
  std::string_view material;
  std::optional<double> brinell_low;
  std::optional<double> brinell_high;
  FeedPerTurn low;
  FeedPerTurn high;
  std::string_view note;
  Source source;
};
constexpr TurningFeedRow kTurningFeeds[] = {
#include "generated/core/handbook/turning_feeds.inc"
};

tl::unexpected<base::Failure> not_positive(std::string_view subject, Diameter diameter) {
  return base::fail(base::Code::kSizeNotPositive, fmt::format("{} mm", diameter.in(unit::millimetre)),
                    "a diameter over 0", subject);
}

// One curve: what one source prints for one material, rows of growing diameter next to each other in the
// table.
bool is_one_curve(const EndMillFeedRow& a, const EndMillFeedRow& b) {
  return a.group == b.group && a.tool == b.tool && a.material == b.material && a.source.text == b.source.text;
}

// The feed on the curve first..last (last one past the end); none below its smallest diameter.
std::optional<Printed<Length>> on_curve(const EndMillFeedRow* first, const EndMillFeedRow* last,
                                        Diameter cutter) {
  if (cutter.base() < first->diameter.base() - kSizeSlackMm) return std::nullopt;
  const auto* above =
      std::find_if(first, last, [&](const EndMillFeedRow& row) { return row.diameter > cutter; });
  if (above == first)
    return Printed<Length>{first->feed, first->feed, first->material, first->note, first->source};
  const auto* below = above - 1;
  Source source = below->source;
  Length feed = below->feed;
  if (above != last && below->diameter != cutter) {
    const double share = (cutter - below->diameter) / (above->diameter - below->diameter);
    feed = below->feed + (above->feed - below->feed) * share;
    source.basis = Basis::kDerived;
  }
  return Printed<Length>{feed, feed, below->material, below->note, source};
}

std::vector<Printed<FeedPerTurn>> turning_feeds_in_print(const Work& work, Operation operation,
                                                         ToolMaterial tool, Scope scope) {
  std::vector<Printed<FeedPerTurn>> out;
  for (const TurningFeedRow& row : kTurningFeeds) {
    if (row.tool != tool || row.scope != scope || !covers(row.operation, operation)) continue;
    const bool any_metal = !row.group && work.group != WorkGroup::kPlastic;
    if (!any_metal && row.group != work.group) continue;
    if (!meets(work, row.brinell_low, row.brinell_high)) continue;
    out.push_back({row.low, row.high, row.material, row.note, row.source});
  }
  return out;
}

}  // namespace

base::Result<Feed> drill_feed(Diameter drill) {
  if (drill <= Diameter()) return not_positive("the drill's diameter", drill);
  std::vector<Printed<FeedPerTurn>> printed;
  for (const DrillFeedRow& row : kDrillFeeds) {
    if (!in_range(drill, {row.over}, row.up_to)) continue;
    printed.push_back({row.low, row.high, "any metal; low end for hard or tough", {}, row.source});
  }
  return spread_of(std::move(printed));  // one source at least goes on without end
}

base::Result<FeedPerTooth> end_mill_feed(const Work& work, ToolMaterial tool, Diameter cutter) {
  if (cutter <= Diameter()) return not_positive("the cutter's diameter", cutter);
  std::vector<Printed<Length>> printed;
  const auto* end = std::end(kEndMillFeeds);
  for (const auto* first = std::begin(kEndMillFeeds); first != end;) {
    const auto* last =
        std::find_if(first, end, [&](const EndMillFeedRow& row) { return !is_one_curve(*first, row); });
    if (first->group == work.group && first->tool == tool &&
        meets(work, first->brinell_low, first->brinell_high)) {
      if (auto one = on_curve(first, last, cutter)) printed.push_back(*one);
    }
    first = last;
  }
  if (!printed.empty()) return spread_of(std::move(printed));
  return not_tabled(
      "the feed per tooth",
      fmt::format("a {:.4f} in {} end mill in {}", cutter.in(unit::inch), name_of(tool), name_of(work.group)),
      "a larger cutter, another tool, or a feed written in the job");
}

base::Result<Feed> turning_feed(const Work& work, Operation operation, ToolMaterial tool) {
  for (const Scope scope : {Scope::kOwn, Scope::kGeneral}) {
    auto printed = turning_feeds_in_print(work, operation, tool, scope);
    if (!printed.empty()) return spread_of(std::move(printed));
  }
  return not_tabled(
      "the feed per turn",
      fmt::format("{} {} with a {} tool", name_of(operation), name_of(work.group), name_of(tool)),
      "another tool or operation, or a feed written in the job");
}

}  // namespace sparewright::handbook
