#include "core/handbook/thread_engagement.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"
#include "core/handbook/materials.hpp"
#include "core/handbook/stripping_formulas.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Area;
using quantity::Diameter;
using quantity::Length;
using quantity::Pressure;
namespace unit = quantity::unit;

constexpr EngagementRule kEngagementRules[] = {
#include "generated/core/handbook/engagement_rules.inc"
};

constexpr Length kOneMillimetre = Length::of(1, unit::millimetre);

base::Result<NamedStrength> strength_of_material(std::string_view text, std::vector<std::string>& assumed) {
  const auto found = find_material(text);
  if (!found) return tl::unexpected(found.error());
  const Material& material = found->material;
  if (!material.ultimate) return not_tabled("a tensile strength", to_string(material), "a material with one");
  if (!found->assumed.empty()) assumed.push_back(found->assumed);
  return NamedStrength{to_string(material), *material.ultimate,
                       source_of(material, MaterialProperty::kUltimate)};
}

// A grade; what is none may be a material.
base::Result<NamedStrength> strength_of_screw(std::string_view text, const ScrewThread& thread,
                                              std::vector<std::string>& assumed) {
  const auto grade = screw_grade(text, thread);
  if (grade)
    return NamedStrength{fmt::format("{}, {}", grade->standard, grade->grade), grade->tensile, grade->source};
  if (grade.error().code == base::Code::kNameUnknown) {
    if (auto material = strength_of_material(text, assumed)) return material;
  }
  return tl::unexpected(grade.error());
}

}  // namespace

base::Result<ShearAreas> shear_areas(const ScrewThread& thread, Length engagement,
                                     std::optional<Diameter> hole_minor) {
  if (engagement <= Length{}) {
    return base::fail(base::Code::kSizeNotPositive, fmt::format("{:g} mm", engagement.in(unit::millimetre)),
                      {}, "the length of engagement");
  }
  auto limits = mesh_limits(thread);
  if (!limits) return tl::unexpected(limits.error());
  if (hole_minor) limits->hole_minor_max = std::max(limits->hole_minor_max, *hole_minor);
  if (limits->hole_minor_max >= limits->screw_major_min) {
    return base::fail(base::Code::kOutsideDomain,
                      fmt::format("a hole of {:.3f} mm", limits->hole_minor_max.in(unit::millimetre)),
                      fmt::format("a hole under {:.3f} mm", limits->screw_major_min.in(unit::millimetre)),
                      "the strength of a " + thread.name + " thread");
  }
  const double pitch_mm = thread.pitch.in(unit::millimetre);
  const double length_mm = engagement.in(unit::millimetre);
  const Area screw =
      Area::of(screw_shear_area_mm2(length_mm, pitch_mm, limits->hole_minor_max.in(unit::millimetre),
                                    limits->screw_pitch_min.in(unit::millimetre)),
               unit::square_millimetre);
  const Area hole =
      Area::of(hole_shear_area_mm2(length_mm, pitch_mm, limits->screw_major_min.in(unit::millimetre),
                                   limits->hole_pitch_max.in(unit::millimetre)),
               unit::square_millimetre);
  return ShearAreas{screw, hole, *limits, kShearAreas};
}

std::string_view name_of(BreaksFirst part) {
  constexpr std::array<std::string_view, 3> kNames{"the screw breaks", "the screw's thread strips",
                                                   "the hole's thread strips"};
  return kNames.at(static_cast<std::size_t>(part));
}

base::Result<Stripping> stripping(const ScrewThread& thread, Length engagement, Pressure screw_tensile,
                                  Pressure hole_tensile, std::optional<Diameter> hole_minor) {
  const auto areas = shear_areas(thread, engagement, hole_minor);
  if (!areas) return tl::unexpected(areas.error());
  Stripping out{thread.stress_area * screw_tensile, areas->screw * screw_tensile * kShearPerTensile,
                areas->hole * hole_tensile * kShearPerTensile, BreaksFirst::kScrew, *areas};
  if (out.screw_thread < out.screw) out.first = BreaksFirst::kScrewThread;
  if (out.hole_thread < std::min(out.screw, out.screw_thread)) out.first = BreaksFirst::kHoleThread;
  return out;
}

std::span<const EngagementRule> engagement_rules() {
  return kEngagementRules;
}

base::Result<LeastEngagement> least_engagement(const ScrewThread& thread, Pressure screw_tensile,
                                               Pressure hole_tensile, std::optional<Diameter> hole_minor) {
  if (screw_tensile <= Pressure{} || hole_tensile <= Pressure{})
    return base::fail(base::Code::kSizeNotPositive, "zero or less", {}, "a tensile strength");
  const auto per_mm = shear_areas(thread, kOneMillimetre, hole_minor);
  if (!per_mm) return tl::unexpected(per_mm.error());
  const double stress_area = thread.stress_area / kShearPerTensile / per_mm->screw;
  const double hole_area =
      thread.stress_area / kShearPerTensile / per_mm->hole * (screw_tensile / hole_tensile);
  LeastEngagement out{kOneMillimetre * stress_area, kOneMillimetre * hole_area, {}, {}, *per_mm};
  out.least = std::max(out.for_screw_thread, out.for_hole_thread);
  out.for_strong_screw = std::max(out.for_screw_thread, out.for_hole_thread * kStrongestOverLeast);
  return out;
}

base::Result<NamedEngagement> least_engagement(std::string_view thread, std::string_view screw,
                                               std::string_view hole) {
  const auto read = read_screw_thread(thread);
  if (!read) return tl::unexpected(read.error());
  NamedEngagement out;
  out.thread = *read;
  out.assumed = read->assumed;
  const auto strength = strength_of_screw(screw, *read, out.assumed);
  if (!strength) return tl::unexpected(strength.error());
  out.screw = *strength;
  const auto material = strength_of_material(hole, out.assumed);
  if (!material) return tl::unexpected(material.error());
  out.hole = *material;
  const auto engagement = least_engagement(*read, out.screw.tensile, out.hole.tensile);
  if (!engagement) return tl::unexpected(engagement.error());
  out.engagement = *engagement;
  return out;
}

}  // namespace sparewright::handbook
