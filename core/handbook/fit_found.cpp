#include "core/handbook/fit_found.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"
#include "core/handbook/recommended_fits.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

// A nominal size that may have been meant, and the step of the series it belongs to.
struct Nominal {
  Diameter size;
  double step_mm;
};

constexpr std::array kMetricStepsMm{1.0, 0.5};
constexpr std::array kInchStepsMm{25.4 / 8, 25.4 / 16, 25.4 / 32, 25.4 / 64};

// The multiples of the steps next to either part, each with the widest step it belongs to.
template <std::size_t N>
std::vector<Nominal> nominals(const std::array<double, N>& steps_mm, Diameter hole, Diameter shaft) {
  std::vector<Nominal> out;
  for (const double step : steps_mm) {
    for (const double size : {hole.base(), shaft.base()}) {
      for (const double count : {std::floor(size / step), std::floor(size / step) + 1.0}) {
        const double mm = count * step;
        const bool known = std::any_of(out.begin(), out.end(), [&](const Nominal& one) {
          return std::abs(one.size.base() - mm) < kSizeSlackMm;
        });
        if (mm > 0.0 && !known) out.push_back({Diameter::of(mm, unit::millimetre), step});
      }
    }
  }
  return out;
}

Length off(const MeasuredSize& measured, const SizeLimits& limits) {
  if (measured.size > limits.upper) return measured.size - limits.upper;
  if (measured.size < limits.lower) return measured.size - limits.lower;
  return {};
}

bool is_within(Length off, const MeasuredSize& measured) {
  return std::abs(off.base()) <= measured.uncertainty.base() + kSizeSlackMm;
}

bool is_certain(const MeasuredSize& measured, const SizeLimits& limits) {
  return measured.size.base() - measured.uncertainty.base() >= limits.lower.base() - kSizeSlackMm &&
         measured.size.base() + measured.uncertainty.base() <= limits.upper.base() + kSizeSlackMm;
}

// The share of the uncertainty band within the limits, over their width: the likelihood of the measured size
// if sizes are spread evenly over the limits and errors over the band. A band of no width counts as a
// nanometre.
double likelihood(const MeasuredSize& measured, const SizeLimits& limits) {
  const double band = std::max(measured.uncertainty.base(), kSizeSlackMm);
  const double low = std::max(measured.size.base() - band, limits.lower.base());
  const double high = std::min(measured.size.base() + band, limits.upper.base());
  return std::max(high - low, 0.0) / (2.0 * band) / limits.width().base();
}

double excess(Length off, const MeasuredSize& measured) {
  return std::max(std::abs(off.base()) - measured.uncertainty.base(), 0.0);
}

void keep_nearest(std::vector<FoundFit>& found, const MeasuredSize& hole, const MeasuredSize& shaft,
                  std::size_t most) {
  const auto excess_of = [&](const FoundFit& one) {
    return excess(one.hole_off, hole) + excess(one.shaft_off, shaft);
  };
  std::stable_sort(found.begin(), found.end(), [&](const FoundFit& a, const FoundFit& b) {
    if (a.possible != b.possible) return a.possible;
    return a.possible ? a.likelihood > b.likelihood : excess_of(a) < excess_of(b);
  });
  if (found.size() > most) found.resize(most);
}

base::Result<void> check(const MeasuredSize& hole, const MeasuredSize& shaft) {
  for (const auto& [part, name] : {std::pair(hole, "the hole"), std::pair(shaft, "the shaft")}) {
    if (part.size > Diameter() && part.uncertainty >= Length()) continue;
    return base::fail(base::Code::kSizeNotPositive,
                      fmt::format("{} mm within {} mm", part.size.in(unit::millimetre),
                                  part.uncertainty.in(unit::millimetre)),
                      "a size over zero and an uncertainty of zero or more", name);
  }
  constexpr double kMostApart = 0.05;
  constexpr double kMostApartMm = 2.0;
  const double apart_mm = std::abs((hole.size - shaft.size).base());
  if (apart_mm <= std::max(kMostApart * hole.size.base(), kMostApartMm)) return {};
  return base::fail(
      base::Code::kOutsideDomain,
      fmt::format("a hole of {:.3f} mm and a shaft of {:.3f} mm", hole.size.base(), shaft.size.base()),
      "sizes that make a pair: no more than 2 mm, or 5 %, apart", "a fit");
}

}  // namespace

base::Result<FitsFound> fits_found(const MeasuredSize& hole, const MeasuredSize& shaft, std::size_t most) {
  if (auto checked = check(hole, shaft); !checked) return tl::unexpected(checked.error());
  FitsFound found{hole.size - shaft.size, hole.uncertainty + shaft.uncertainty, {}, {}};
  const std::vector<Nominal> metric = nominals(kMetricStepsMm, hole.size, shaft.size);
  const std::vector<Nominal> inch = nominals(kInchStepsMm, hole.size, shaft.size);
  for (const RecommendedFit& row : recommended_fits()) {
    const bool iso = row.standard == FitStandard::kIso286;
    for (const Nominal& nominal : iso ? metric : inch) {
      auto fit = fit_at(row.fit, nominal.size);
      if (!fit) continue;  // not tabled at this size
      FoundFit one{*std::move(fit), {}, {}};
      one.hole_off = off(hole, one.fit.hole);
      one.shaft_off = off(shaft, one.fit.shaft);
      one.possible = is_within(one.hole_off, hole) && is_within(one.shaft_off, shaft);
      one.certain = is_certain(hole, one.fit.hole) && is_certain(shaft, one.fit.shaft);
      one.likelihood = likelihood(hole, one.fit.hole) * likelihood(shaft, one.fit.shaft) * nominal.step_mm;
      (iso ? found.iso286 : found.ansi_b41).push_back(std::move(one));
    }
  }
  keep_nearest(found.iso286, hole, shaft, most);
  keep_nearest(found.ansi_b41, hole, shaft, most);
  return found;
}

}  // namespace sparewright::handbook
