#include "core/handbook/o_rings.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <string>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Length;
namespace unit = quantity::unit;

constexpr ORingSection kORingSections[] = {
#include "generated/core/handbook/o_ring_sections.inc"
};
constexpr ORingGland kORingGlands[] = {
#include "generated/core/handbook/o_ring_glands.inc"
};

struct ORingSizes {
  int first = 0;
  int last = 0;
  Length nominal;  // of the first
  Length step;
  Length below;
  Source source;
};
constexpr ORingSizes kORingSizes[] = {
#include "generated/core/handbook/o_ring_sizes.inc"
};

constexpr Length kSameSection = Length::of(1, unit::thou);

std::string shown(Length section) {
  return fmt::format("{:.3f} in", section.in(unit::inch));
}

// Areas of cord and gland in section, as a percentage.
double fill_percent(Length section, Length depth, Length width) {
  return 100.0 * (std::numbers::pi / 4.0 * (section * section)) / (depth * width);
}

}  // namespace

std::span<const ORingSection> o_ring_sections() {
  return kORingSections;
}

base::Result<ORingSection> o_ring_section(int dash) {
  std::string accepted;
  for (const ORingSection& section : kORingSections) {
    if (dash >= section.first_dash && dash <= section.last_dash) return section;
    accepted += fmt::format("{}-{:03} to -{:03}", accepted.empty() ? "" : ", ", section.first_dash,
                            section.last_dash);
  }
  return not_tabled("the section of an AS568 O-ring", fmt::format("-{:03}", dash), accepted);
}

base::Result<ORing> o_ring(int dash) {
  std::string accepted;
  for (const ORingSizes& row : kORingSizes) {
    accepted += fmt::format("{}{:03} to {:03}", accepted.empty() ? "" : ", ", row.first, row.last);
    if (dash < row.first || dash > row.last) continue;
    const auto section = o_ring_section(dash);
    if (!section) return tl::unexpected(section.error());
    return ORing{dash, as_diameter(row.nominal + row.step * (dash - row.first) - row.below), *section,
                 row.source};
  }
  return not_tabled("the inside diameter of an AS568 O-ring", fmt::format("-{:03}", dash), accepted);
}

std::string_view name_of(SealDuty duty) {
  constexpr std::array<std::string_view, 3> kNames{"reciprocating", "static, radial", "static, face"};
  return kNames.at(static_cast<std::size_t>(duty));
}

base::Result<ORingFit> o_ring_gland(SealDuty duty, Length section) {
  const ORingSection* cord = nullptr;
  for (const ORingSection& one : kORingSections) {
    if (std::abs((one.section - section).base()) <= kSameSection.base()) cord = &one;
  }
  for (const ORingGland& gland : kORingGlands) {
    if (cord == nullptr || gland.duty != duty || gland.section != cord->section) continue;
    const Length thinnest = cord->section - cord->plus_minus;
    const Length thickest = cord->section + cord->plus_minus;
    return ORingFit{gland, o_ring_squeeze_percent(thinnest.base(), gland.depth_most.base()),
                    o_ring_squeeze_percent(thickest.base(), gland.depth_least.base()),
                    fill_percent(thickest, gland.depth_least, gland.width - gland.width_plus_minus)};
  }
  std::string accepted;
  for (const ORingSection& one : kORingSections)
    accepted += (accepted.empty() ? "" : ", ") + shown(one.section);
  return not_tabled(fmt::format("the {} gland", name_of(duty)), shown(section), accepted);
}

base::Result<std::vector<FittedORing>> o_rings_for(SealPlace place, quantity::Diameter diameter,
                                                   SealDuty duty, Length section) {
  const auto fit = o_ring_gland(duty, section);
  if (!fit) return tl::unexpected(fit.error());
  const Length twice_depth = fit->gland.depth_least + fit->gland.depth_most;  // the mean depth on both sides
  const bool piston = place == SealPlace::kPiston;
  const auto groove = as_diameter(piston ? across(diameter) - twice_depth : across(diameter) + twice_depth);
  const double on_mm = (piston ? groove : diameter).in(unit::millimetre);
  std::vector<FittedORing> out;
  for (const ORingSizes& row : kORingSizes) {
    for (int dash = row.first; dash <= row.last; ++dash) {
      const auto ring = o_ring(dash);
      if (!ring || ring->section.section != fit->gland.section) continue;
      const double stretch = 100.0 * (on_mm / ring->inside.in(unit::millimetre)-1.0);
      if (stretch >= 0.0 && stretch <= kMostStretch) out.push_back({*ring, groove, stretch});
    }
  }
  std::stable_sort(out.begin(), out.end(),
                   [](const FittedORing& a, const FittedORing& b) { return a.stretch < b.stretch; });
  if (!out.empty()) return out;
  return not_tabled(
      fmt::format("an O-ring of {} section", shown(section)),
      fmt::format("{} {:.4f} in", piston ? "a bore of" : "a rod of", diameter.in(unit::inch)),
      fmt::format("a size that a known ring of the section suits stretched up to {:g} %", kMostStretch));
}

}  // namespace sparewright::handbook
