#include "core/intent/pair.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "core/handbook/fit_found.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::intent {
namespace {

using handbook::FitDuty;
using handbook::FitStandard;
using quantity::Diameter;
using quantity::Length;

constexpr double kSame_mm = 1e-6;

NearFit near_fit(const handbook::FitForDuty& row, const Clearance& pair) {
  NearFit near;
  near.duty = row.recommended.duty;
  near.standard = row.recommended.standard;
  near.fit = row.recommended.fit;
  near.name = row.recommended.name;
  near.has = {row.fit.least_clearance().base(), row.fit.most_clearance().base()};
  near.out_mm =
      std::max(0.0, near.has.least_mm - pair.least_mm) + std::max(0.0, pair.most_mm - near.has.most_mm);
  if (near.out_mm < kSame_mm) near.out_mm = 0.0;
  near.source = handbook::cite(row.recommended.source);
  return near;
}

double middles_apart(const NearFit& near, const Clearance& pair) {
  return std::abs(near.has.least_mm + near.has.most_mm - pair.least_mm - pair.most_mm) / 2.0;
}

bool is_nearer(const NearFit& a, const NearFit& b, const Clearance& pair) {
  if (std::abs(a.out_mm - b.out_mm) > kSame_mm) return a.out_mm < b.out_mm;
  return middles_apart(a, pair) < middles_apart(b, pair) - kSame_mm;
}

std::string made_to_name(const handbook::Fit& fit) {
  const bool is_inch = fit.standard == FitStandard::kAnsiB41;
  return is_inch ? fmt::format("{} in {}", to_string(quantity::nearest_64th(quantity::across(fit.nominal))),
                               fit.name)
                 : fmt::format("{:g} mm {}", quantity::rounded(fit.nominal.base(), 3), fit.name);
}

}  // namespace

std::vector<NearFit> near_fits(double nominal_mm, const Clearance& clearance) {
  std::vector<NearFit> all;
  for (const FitDuty duty : {FitDuty::kSliding, FitDuty::kRunning, FitDuty::kLocating, FitDuty::kPress}) {
    const auto rows = handbook::fits_for_duty(duty, Diameter::from_base(nominal_mm));
    if (!rows) continue;
    for (const FitStandard standard : {FitStandard::kIso286, FitStandard::kAnsiB41}) {
      std::optional<NearFit> best;
      for (const handbook::FitForDuty& row : *rows) {
        if (row.recommended.standard != standard) continue;
        NearFit near = near_fit(row, clearance);
        if (!best || is_nearer(near, *best, clearance)) best = std::move(near);
      }
      if (best) all.push_back(std::move(*best));
    }
  }
  std::stable_sort(all.begin(), all.end(),
                   [&](const NearFit& a, const NearFit& b) { return is_nearer(a, b, clearance); });
  return all;
}

std::vector<MadeTo> may_be_made_to(double hole_mm, double hole_unknown_mm, double shaft_mm,
                                   double shaft_unknown_mm) {
  constexpr std::size_t kMost = 2;
  const auto found =
      handbook::fits_found({Diameter::from_base(hole_mm), Length::from_base(hole_unknown_mm)},
                           {Diameter::from_base(shaft_mm), Length::from_base(shaft_unknown_mm)}, kMost);
  std::vector<MadeTo> all;
  if (!found) return all;  // too far apart to be a pair
  for (const auto* list : {&found->ansi_b41, &found->iso286}) {
    for (const handbook::FoundFit& one : *list) {
      if (one.possible) all.push_back({made_to_name(one.fit), one.certain});
    }
  }
  return all;
}

base::Fingerprint fingerprint(const FitOfPair& fit) {
  base::Hasher h;
  h.add(fit.is_measured).add(fit.nominal_mm);
  for (const NearFit& near : fit.near)
    h.add(near.fit).add(near.out_mm).add(near.has.least_mm).add(near.has.most_mm);
  for (const MadeTo& one : fit.made_to)
    h.add(one.fit).add(one.certain);
  return h.done();
}

}  // namespace sparewright::intent
