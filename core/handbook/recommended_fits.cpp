#include "core/handbook/recommended_fits.hpp"

#include <algorithm>
#include <array>
#include <cstddef>
#include <string>
#include <utility>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

namespace unit = quantity::unit;

constexpr RecommendedFit kRecommendedFits[] = {
#include "generated/core/handbook/recommended_fits.inc"
};

// Words for a duty. Source: common practice.
constexpr std::array<std::pair<std::string_view, FitDuty>, 9> kWords{{{"running", FitDuty::kRunning},
                                                                      {"sliding", FitDuty::kSliding},
                                                                      {"locating", FitDuty::kLocating},
                                                                      {"press", FitDuty::kPress},
                                                                      {"location", FitDuty::kLocating},
                                                                      {"force", FitDuty::kPress},
                                                                      {"drive", FitDuty::kPress},
                                                                      {"shrink", FitDuty::kPress},
                                                                      {"push", FitDuty::kLocating}}};

}  // namespace

std::string_view name_of(FitDuty duty) {
  constexpr std::array<std::string_view, 4> kNames{"running", "sliding", "locating", "press"};
  return kNames.at(static_cast<std::size_t>(duty));
}

std::span<const RecommendedFit> recommended_fits() {
  return kRecommendedFits;
}

base::Result<std::vector<RecommendedFit>> recommended_fits(std::string_view duty) {
  const std::string word = folded(duty);
  const auto* found =
      std::find_if(kWords.begin(), kWords.end(), [&](const auto& one) { return one.first == word; });
  if (found == kWords.end()) {
    return unknown(duty, "duty of a fit",
                   names_of(kWords, [](const auto& one) { return std::string(one.first); }));
  }
  std::vector<RecommendedFit> out;
  for (const RecommendedFit& row : kRecommendedFits) {
    if (row.duty == found->second) out.push_back(row);
  }
  return out;
}

base::Result<std::vector<FitForDuty>> fits_for_duty(FitDuty duty, quantity::Diameter nominal) {
  std::vector<FitForDuty> out;
  for (const RecommendedFit& row : kRecommendedFits) {
    if (row.duty != duty) continue;
    auto fit = fit_at(row.fit, nominal);
    if (fit) {
      out.push_back({row, *std::move(fit)});
    } else if (fit.error().code != base::Code::kNotTabled) {
      return tl::unexpected(fit.error());
    }
  }
  if (!out.empty()) return out;
  return not_tabled("a recommended fit", fmt::format("{} mm", nominal.in(unit::millimetre)),
                    "nominal sizes over 0 up to 500 mm");
}

}  // namespace sparewright::handbook
