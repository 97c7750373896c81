#include "core/handbook/stock_sizes.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <utility>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

struct SizeRun {
  StockKind kind;
  Length from;
  Length up_to;
  Length step;
  std::string_view note;
  Source source;
};
constexpr SizeRun kRuns[] = {
#include "generated/core/handbook/stock_sizes.inc"
};
constexpr StockTap kTaps[] = {
#include "generated/core/handbook/stock_taps.inc"
};
constexpr Pipe kPipes[] = {
#include "generated/core/handbook/pipes.inc"
};

bool is_metric(StockKind kind) {
  return name_of(kind).starts_with("metric");
}

std::string name_of_size(StockKind kind, Length size) {
  if (is_metric(kind)) return fmt::format("{:.4g} mm", size.in(unit::millimetre));
  const quantity::InchFraction fraction = quantity::nearest_64th(size);
  if (std::abs(fraction.error.base()) < kSizeSlackMm) return to_string(fraction) + " in";
  return quantity::fixed(size.in(unit::inch), 4) + " in";
}

}  // namespace

std::string_view name_of(StockKind kind) {
  constexpr std::array<std::string_view, static_cast<std::size_t>(StockKind::kLast)> kNames{
      "inch reamer",         "dowel reamer",         "metric reamer",         "inch end mill",
      "metric end mill",     "inch round steel",     "inch hexagon steel",    "inch square steel",
      "inch flat thickness", "inch flat width",      "inch round aluminium",  "metric round steel",
      "metric square steel", "metric hexagon steel", "metric flat thickness", "metric flat width",
      "inch plate",          "metric plate",         "inch tube outside",     "inch tube wall"};
  return kNames.at(static_cast<std::size_t>(kind));
}

std::vector<StockSize> stock_sizes(StockKind kind) {
  std::vector<StockSize> out;
  for (const SizeRun& run : kRuns) {
    if (run.kind != kind) continue;
    const auto steps = static_cast<int>(std::lround((run.up_to - run.from) / run.step));
    for (int i = 0; i <= steps; ++i) {
      const Length size = run.from + run.step * i;
      out.push_back({kind, name_of_size(kind, size), size, run.note, run.source});
    }
  }
  std::stable_sort(out.begin(), out.end(),
                   [](const StockSize& a, const StockSize& b) { return a.size < b.size; });
  const auto same = [](const StockSize& a, const StockSize& b) {
    return std::abs((a.size - b.size).base()) < kSizeSlackMm;
  };
  out.erase(std::unique(out.begin(), out.end(), same), out.end());
  return out;
}

StockAround stock_around(StockKind kind, Length wanted) {
  StockAround around;
  for (const StockSize& one : stock_sizes(kind)) {
    const double over_mm = (one.size - wanted).base();
    if (over_mm <= kSizeSlackMm) around.at_or_below = one;
    if (over_mm >= -kSizeSlackMm && !around.at_or_above) around.at_or_above = one;
  }
  return around;
}

std::span<const StockTap> stock_taps() {
  return kTaps;
}

std::optional<StockTap> stock_tap(Diameter major, Length pitch) {
  constexpr double kMajorMm = 0.01;
  constexpr double kPitch = 0.001;
  for (const StockTap& tap : kTaps) {
    if (std::abs((tap.major - major).base()) <= kMajorMm &&
        std::abs((tap.pitch - pitch).base()) <= kPitch * tap.pitch.base()) {
      return tap;
    }
  }
  return std::nullopt;
}

std::vector<StockTap> nearest_stock_taps(Diameter major, Length pitch, std::size_t most) {
  std::vector<StockTap> out(std::begin(kTaps), std::end(kTaps));
  const auto off = [&](const StockTap& tap) {
    return std::pair(std::abs((tap.major - major).base()), std::abs((tap.pitch - pitch).base()));
  };
  std::stable_sort(out.begin(), out.end(),
                   [&](const StockTap& a, const StockTap& b) { return off(a) < off(b); });
  if (out.size() > most) out.resize(most, out.front());
  return out;
}

std::span<const Pipe> pipes() {
  return kPipes;
}

}  // namespace sparewright::handbook
