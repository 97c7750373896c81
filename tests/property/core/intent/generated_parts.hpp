// Whole parts made of published sizes, worn or sound, and measured with instruments as a shop has them.
//
// Kinds of parts as accounts of repairs have them: a pivot in its bracket, a shaft with bearing seats, key and thread, a bush,
// a keyed hub, a bracket, a bearing housing, a gear. How often each comes, how wear is spread (0.0005 to 0.012 in, as such
// accounts tell: journals 0.007 down, a countershaft 0.010) and what each instrument is good to (calipers DIN 862, micrometers
// DIN 863, and what hands add) are choices of this test, and not those of the product.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/intent/original.hpp"
#include "splitmix.hpp"

namespace sparewright::tests {

// What a size is, for the matrix of what was taken for what.
enum class Meant {
  kFraction,
  kDecimal,
  kMillimetre,
  kDrill,
  kBearing,
  kKey,
  kThread,
  kPitch,
  kModule,
  kBar,
  kToSuit,  // no standard size
  kLast,
};
[[nodiscard]] std::string name_of(Meant meant);

struct PartSize {
  Meant meant = Meant::kToSuit;
  double nominal_mm = 0.0;  // the truth
  intent::MeasuredUp measured;
  std::optional<std::size_t> mate;
  bool is_worn = false;
};

struct GeneratedPart {
  bool is_inch = true;
  std::optional<intent::Country> made_in;
  quantity::UnitSystem units = quantity::UnitSystem::kInch;  // of the job: not always the machine's
  std::vector<PartSize> sizes;
};

[[nodiscard]] GeneratedPart generate_part(SplitMix& random);

}  // namespace sparewright::tests
