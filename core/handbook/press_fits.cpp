#include "core/handbook/press_fits.hpp"

#include <algorithm>
#include <array>
#include <string>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Force;
using quantity::Length;
using quantity::Pressure;
using quantity::TemperatureDifference;
namespace unit = quantity::unit;

constexpr PressFriction kPressFrictions[] = {
#include "generated/core/handbook/press_friction.inc"
};

constexpr Source kPoissonSource{"nominal Poisson's ratio of the kind of metal", "", Basis::kFromMemory};

std::optional<HubMetal> hub_metal(WorkGroup group) {
  switch (group) {
    case WorkGroup::kFreeMachiningSteel:
    case WorkGroup::kLowCarbonSteel:
    case WorkGroup::kMediumCarbonSteel:
    case WorkGroup::kAlloySteel:
    case WorkGroup::kToolSteel:
    case WorkGroup::kFreeMachiningStainless:
    case WorkGroup::kStainless:
      return HubMetal::kSteel;
    case WorkGroup::kGreyIron:
    case WorkGroup::kMalleableIron:
    case WorkGroup::kDuctileIron:
      return HubMetal::kIron;
    case WorkGroup::kAluminium:
      return HubMetal::kAluminium;
    case WorkGroup::kBrass:
    case WorkGroup::kBronze:
    case WorkGroup::kCopper:
      return HubMetal::kCopperAlloy;
    case WorkGroup::kMagnesium:
    case WorkGroup::kTitanium:
    case WorkGroup::kPlastic:
      break;
  }
  return std::nullopt;
}

// Nominal ratios, in the order of WorkGroup; 0 where there is none. Source: kPoissonSource.
constexpr std::array<double, 17> kPoisson{0.29, 0.29, 0.29, 0.29, 0.29, 0.30, 0.30, 0.25, 0.27,
                                          0.28, 0.33, 0.35, 0.34, 0.34, 0.34, 0.34, 0.0};

base::Result<void> check_positive(const PressFit& fit) {
  struct Named {
    std::string_view name;
    double value;
  };
  for (const Named& one :
       {Named{"the joint's diameter", fit.joint.base()}, Named{"the length engaged", fit.length.base()},
        Named{"the hub's modulus", fit.hub.modulus.base()},
        Named{"the shaft's modulus", fit.shaft.modulus.base()}, Named{"the friction", fit.friction_low}}) {
    if (one.value > 0.0) continue;
    return base::fail(base::Code::kSizeNotPositive, fmt::format("{}", one.value), "more than zero", one.name);
  }
  return {};
}

base::Result<void> check(const PressFit& fit) {
  if (auto positive = check_positive(fit); !positive) return positive;
  const auto refuse = [](const std::string& found, std::string_view accepted) {
    return base::fail(base::Code::kOutsideDomain, found, accepted, "a press fit");
  };
  if (fit.shaft_bore.base() < 0.0 || fit.shaft_bore >= fit.joint || fit.hub_outside <= fit.joint) {
    return refuse(fmt::format("a shaft bored {} mm, a joint of {} mm and a hub of {} mm",
                              fit.shaft_bore.base(), fit.joint.base(), fit.hub_outside.base()),
                  "a shaft's bore (0 where solid) below the joint, and a hub above it");
  }
  if (fit.friction_high < fit.friction_low) {
    return refuse(fmt::format("a friction of {} to {}", fit.friction_low, fit.friction_high),
                  "the low coefficient first");
  }
  if (fit.most_interference - fit.smoothed <= Length() || fit.most_interference < fit.least_interference) {
    return refuse(
        fmt::format("an interference of {} to {} mm, {} mm of it smoothed", fit.least_interference.base(),
                    fit.most_interference.base(), fit.smoothed.base()),
        "a most interference above zero, and not below the least");
  }
  return {};
}

std::optional<TemperatureDifference> change_for(const PressFit& fit, const ElasticPart& part) {
  if (!part.expansion_per_million || *part.expansion_per_million <= 0.0) return std::nullopt;
  const Length change = fit.most_interference + fit.assembly_clearance;
  return TemperatureDifference::of(
      temperature_change_k(change.base(), fit.joint.base(), *part.expansion_per_million * 1e-6),
      unit::kelvin);
}

std::optional<bool> yields(Pressure stress, const ElasticPart& part) {
  if (!part.yield) return std::nullopt;
  return stress > *part.yield;
}

}  // namespace

base::Result<PoissonRatio> poisson_ratio(WorkGroup group) {
  const double ratio = kPoisson.at(static_cast<std::size_t>(group));
  if (ratio > 0.0) return PoissonRatio{ratio, kPoissonSource};
  return not_tabled("Poisson's ratio", name_of(group),
                    "steels, irons, aluminium, magnesium, copper alloys, titanium");
}

base::Result<ElasticPart> elastic_part(const Material& material) {
  const auto poisson = poisson_ratio(material.group);
  if (!poisson) return tl::unexpected(poisson.error());
  if (!material.modulus) {
    return not_tabled("the modulus of elasticity", to_string(material),
                      "a material whose modulus is in the table");
  }
  return ElasticPart{*material.modulus, poisson->ratio, material.expansion_per_million, material.yield};
}

base::Result<PressFriction> press_friction(WorkGroup hub, PressAssembly assembly) {
  const auto metal = hub_metal(hub);
  const auto* row =
      std::find_if(std::begin(kPressFrictions), std::end(kPressFrictions),
                   [&](const PressFriction& one) { return one.hub == metal && one.assembly == assembly; });
  if (row != std::end(kPressFrictions)) return *row;
  return not_tabled("the friction of a press fit", name_of(hub),
                    "a hub of steel, iron, aluminium or a copper alloy");
}

base::Result<PressFitAnswer> press_fit(const PressFit& fit) {
  if (auto checked = check(fit); !checked) return tl::unexpected(checked.error());
  const double joint = fit.joint.base();
  const double outside = fit.hub_outside.base();
  const double bore = fit.shaft_bore.base();
  const double opening = hub_opening(joint, outside, fit.hub.poisson) / fit.hub.modulus.base();
  const double shrinking = shaft_shrinking(joint, bore, fit.shaft.poisson) / fit.shaft.modulus.base();
  const auto pressure = [&](Length interference) {
    const double left = std::max((interference - fit.smoothed).base(), 0.0);
    return press_pressure(left, joint, opening, shrinking);
  };
  const double least = pressure(fit.least_interference);
  const double most = pressure(fit.most_interference);
  const double hoop = hub_hoop_stress(most, joint, outside);
  PressFitAnswer answer;
  answer.least_pressure = Pressure::from_base(least);
  answer.most_pressure = Pressure::from_base(most);
  answer.hub_hoop = Pressure::from_base(hoop);
  answer.hub_equivalent = Pressure::from_base(hub_equivalent_stress(hoop, most));
  answer.shaft_equivalent = Pressure::from_base(shaft_equivalent_stress(most, joint, bore));
  answer.hub_yields = yields(answer.hub_equivalent, fit.hub);
  answer.shaft_yields = yields(answer.shaft_equivalent, fit.shaft);
  answer.holds_at_least = Force::from_base(sliding_force(fit.friction_low, joint, fit.length.base(), least));
  answer.pressing_at_most =
      Force::from_base(sliding_force(fit.friction_high, joint, fit.length.base(), most));
  answer.turns_at_least = answer.holds_at_least * quantity::reach(quantity::half(fit.joint));
  answer.heat_hub_by = change_for(fit, fit.hub);
  answer.cool_shaft_by = change_for(fit, fit.shaft);
  return answer;
}

}  // namespace sparewright::handbook
