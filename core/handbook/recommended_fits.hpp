// Which fit for which duty: sliding, running, locating, press.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/fits.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

enum class FitDuty {
  kRunning,   // turns with oil between
  kSliding,   // moves by hand, without play that matters
  kLocating,  // stands still and holds place; taken apart again
  kPress,     // stands still and holds by its tightness
};
[[nodiscard]] std::string_view name_of(FitDuty duty);  // "running"

struct RecommendedFit {
  FitDuty duty = FitDuty::kRunning;
  FitStandard standard = FitStandard::kIso286;
  std::string_view fit;   // "H7/g6", "RC4"
  std::string_view name;  // "close running"
  std::string_view use;   // what the standard says it is for
  Source source;
};

// All of them: the loosest of a duty and standard first; of ISO fits that of the hole basis before its twin
// of the shaft basis.
[[nodiscard]] std::span<const RecommendedFit> recommended_fits();

// Those of a duty by a word: sliding, running, locating (or location, push), press (or force,
// drive, shrink).
// Fails with kNameUnknown.
[[nodiscard]] base::Result<std::vector<RecommendedFit>> recommended_fits(std::string_view duty);

// Those of a duty with their limits at a nominal size. A fit that is not tabled at the size is left out; with
// none left it fails with kNotTabled.
struct FitForDuty {
  RecommendedFit recommended;
  Fit fit;
};
[[nodiscard]] base::Result<std::vector<FitForDuty>> fits_for_duty(FitDuty duty, quantity::Diameter nominal);

}  // namespace sparewright::handbook
