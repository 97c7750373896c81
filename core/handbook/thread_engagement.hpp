// How long a thread must be engaged so that the screw breaks before either thread strips.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/screw_grades.hpp"
#include "core/handbook/screw_thread.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// Shear strength is taken as half the tensile strength: what 2 At in the formula of FED-STD-H28 means.
inline constexpr double kShearPerTensile = 0.5;

// A screw is commonly stronger than the least its class allows: the hardness range of ISO 898-1 class 8.8
// spans 1.28 (from memory).
inline constexpr double kStrongestOverLeast = 1.3;

struct ShearAreas {
  quantity::Area screw;
  quantity::Area hole;
  MeshLimits limits;  // what they were worked out from
  Source source;
};

// Areas that shear over a length of full thread in mesh (no lead, no chamfer). hole_minor: of a hole measured
// or drilled larger than its class allows; smaller ones do not count. Fails as mesh_limits does, with
// kSizeNotPositive for an engagement that is not more than zero, and with kOutsideDomain where such a hole
// leaves no thread.
[[nodiscard]] base::Result<ShearAreas> shear_areas(const ScrewThread& thread, quantity::Length engagement,
                                                   std::optional<quantity::Diameter> hole_minor = {});

enum class BreaksFirst { kScrew, kScrewThread, kHoleThread };
[[nodiscard]] std::string_view name_of(BreaksFirst part);  // "the screw breaks"

// The loads at which each of the three gives way, the least of them first to happen.
struct Stripping {
  quantity::Force screw;         // At times its tensile strength
  quantity::Force screw_thread;  // shear area times half the tensile strength
  quantity::Force hole_thread;
  BreaksFirst first = BreaksFirst::kScrew;
  ShearAreas areas;
};
[[nodiscard]] base::Result<Stripping> stripping(const ScrewThread& thread, quantity::Length engagement,
                                                quantity::Pressure screw_tensile,
                                                quantity::Pressure hole_tensile,
                                                std::optional<quantity::Diameter> hole_minor = {});

// The published rules of thumb for the same question: so many diameters, and more.
struct EngagementRule {
  std::string_view hole;  // "cast iron or steel"
  double diameters = 0.0;
  quantity::Length more;
  Source source;

  [[nodiscard]] quantity::Length of(quantity::Diameter major) const {
    return across(major) * diameters + more;
  }
};
[[nodiscard]] std::span<const EngagementRule> engagement_rules();

// Full thread in mesh so that the screw breaks first.
struct LeastEngagement {
  quantity::Length for_screw_thread;  // so that the screw's own thread holds: its material does not matter
  quantity::Length for_hole_thread;   // so that the hole's thread holds
  quantity::Length least;             // the longer of the two, for a screw as strong as was said
  quantity::Length for_strong_screw;  // for one kStrongestOverLeast times as strong: what to cut
  ShearAreas areas_per_mm;            // for each mm of engagement
};
[[nodiscard]] base::Result<LeastEngagement> least_engagement(
    const ScrewThread& thread, quantity::Pressure screw_tensile, quantity::Pressure hole_tensile,
    std::optional<quantity::Diameter> hole_minor = {});

// The same by names, for any pair: least_engagement("M10", "8.8", "aluminium 6061"), or a screw made of a
// material: ("1/4-20", "brass C360", "acetal"). `screw` is read as a grade, else as a material. A material's
// strength is the low end in print; grey iron stands more in shear than the half of it taken here. Fails as
// read_screw_thread, screw_grade and find_material do, or with kNotTabled for a material without a tensile
// strength.
struct NamedStrength {
  std::string name;  // "SAE J429, grade 5", "brass C360, half hard bar"
  quantity::Pressure tensile;
  Source source;
};
struct NamedEngagement {
  ScrewThread thread;
  NamedStrength screw;
  NamedStrength hole;
  LeastEngagement engagement;
  std::vector<std::string> assumed;
};
[[nodiscard]] base::Result<NamedEngagement> least_engagement(std::string_view thread, std::string_view screw,
                                                             std::string_view hole);

}  // namespace sparewright::handbook
