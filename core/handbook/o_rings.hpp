// O-rings of the AS568 sections and their glands, without back-up rings.
#pragma once

#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// Squeeze of a section in a gland, per cent of the section: 100 (S - depth)/S. Source: definition; the
// printed squeezes of the gland tables come out (o_ring_squeeze.csv of the tests).
template <class Scalar>
[[nodiscard]] Scalar o_ring_squeeze_percent(const Scalar& section_mm, const Scalar& depth_mm) {
  return 100.0 * (section_mm - depth_mm) / section_mm;
}

struct ORingSection {
  quantity::Length section;  // diameter of the cord
  quantity::Length plus_minus;
  int first_dash = 0;  // the dash numbers with this section: 102 to 178
  int last_dash = 0;
  Source source;
};
[[nodiscard]] std::span<const ORingSection> o_ring_sections();

// The section of a dash number (-214 or 214 as 214). Not every number between the first and last of a section
// is made. Fails with kNotTabled.
[[nodiscard]] base::Result<ORingSection> o_ring_section(int dash);

// A ring by its dash number, its inside diameter to 0.0005 in (from memory of AS568 as a rule: a nominal size
// less a constant). Known: 006 to 050, 108 to 150, 201 to 247, 309 to 349. Fails with kNotTabled.
struct ORing {
  int dash = 0;
  quantity::Diameter inside;
  ORingSection section;
  Source source;  // of the inside diameter
};
[[nodiscard]] base::Result<ORing> o_ring(int dash);

enum class SealDuty { kReciprocating, kStaticRadial, kStaticFace };
[[nodiscard]] std::string_view name_of(SealDuty duty);  // "reciprocating"

struct ORingGland {
  SealDuty duty = SealDuty::kReciprocating;
  quantity::Length section;
  quantity::Length depth_least;  // of the gland: sealed surface to the bottom of the groove
  quantity::Length depth_most;
  quantity::Length width;
  quantity::Length width_plus_minus;
  std::optional<quantity::Length> other_least;  // the same depth from another page: shown, not taken
  std::optional<quantity::Length> other_most;
  Source source;
};

// A gland with what it does to the ring over the tolerances of both.
struct ORingFit {
  ORingGland gland;
  double squeeze_least = 0.0;  // per cent
  double squeeze_most = 0.0;
  double fill_most = 0.0;  // per cent of the gland's section: thickest ring, smallest gland; heat needs room
};

// section to 0.001 in: 0.070, 0.103, 0.139, 0.210, 0.275 in. Fails with kNotTabled, naming them.
[[nodiscard]] base::Result<ORingFit> o_ring_gland(SealDuty duty, quantity::Length section);

// A groove in a piston that seals in a bore, or in a housing that seals on a rod.
enum class SealPlace { kPiston, kRod };

// A ring on its groove. Stretch of the inside diameter: on the bottom of a piston's groove, or on the rod.
struct FittedORing {
  ORing ring;
  quantity::Diameter groove;  // bottom of the groove, at the mean depth of the gland
  double stretch = 0.0;       // per cent
};

// Stretch of a ring in its place: not loose, and not over 5 per cent, which thins the section (from memory of
// seal design guides).
inline constexpr double kMostStretch = 5.0;

// Every ring of a section that suits a bore (of a piston seal) or a rod, least stretched first. Fails as
// o_ring_gland does, or with kNotTabled where no known ring suits.
[[nodiscard]] base::Result<std::vector<FittedORing>> o_rings_for(SealPlace place, quantity::Diameter diameter,
                                                                 SealDuty duty, quantity::Length section);

}  // namespace sparewright::handbook
