// A fit as it is written, "25 mm H7/g6" or "1.0000 in RC4", to the limits of hole and shaft.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/iso286.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

enum class FitStandard { kIso286, kAnsiB41 };
[[nodiscard]] std::string_view name_of(FitStandard standard);  // "ISO 286", "ANSI B4.1"

// What the limits say of any hole and any shaft within them.
enum class FitKind {
  kClearance,     // every pair goes together by hand, h with H at worst size on size
  kTransition,    // some pairs have clearance, some interference
  kInterference,  // every pair has to be pressed or shrunk
};
[[nodiscard]] std::string_view name_of(FitKind kind);  // "clearance"

// lower < upper.
struct SizeLimits {
  quantity::Diameter lower;
  quantity::Diameter upper;

  [[nodiscard]] quantity::Length width() const { return upper - lower; }
};

struct Fit {
  FitStandard standard = FitStandard::kIso286;
  std::string name;  // "H7/g6", "RC4"
  quantity::Diameter nominal;
  SizeLimits hole;
  SizeLimits shaft;
  std::vector<Source> sources;  // of the limits; none twice
  std::string assumed;          // what the text left open and was assumed, a sentence; empty where nothing

  // Negative is interference.
  [[nodiscard]] quantity::Length least_clearance() const { return hole.lower - shaft.upper; }
  [[nodiscard]] quantity::Length most_clearance() const { return hole.upper - shaft.lower; }
  [[nodiscard]] FitKind kind() const;
};

// A fit by its name at a nominal size: H7/g6 (or H7-g6, the hole first) of ISO 286, RC4 (or RC 4) of ANSI
// B4.1; either at a size of either system. Fails with kSizeNotPositive, kNameUnknown, or kNotTabled naming
// the range.
[[nodiscard]] base::Result<Fit> fit_at(std::string_view name, quantity::Diameter nominal);

// A size and a fit: "25 mm H7/g6", "Ø25 H7/g6", "1.0000 in RC4", "1-3/8 LC2". A number without a unit is
// millimetres before an ISO fit and inches before one of ANSI B4.1, and `assumed` says so. Fails as
// read_number, and as fit_at.
[[nodiscard]] base::Result<Fit> read_fit(std::string_view text);

// One side alone: "25 mm H7", "25 g6".
struct ZoneAtSize {
  Iso286Zone zone;
  quantity::Diameter nominal;
  SizeLimits limits;
  std::vector<Source> sources;
  std::string assumed;
};
[[nodiscard]] base::Result<ZoneAtSize> read_zone_at_size(std::string_view text);

}  // namespace sparewright::handbook
