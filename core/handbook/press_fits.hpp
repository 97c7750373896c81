// Press and shrink fits: pressure, stresses, what it holds and takes to assemble, as ranges.
//
// What is calculated here may say NO (it slips, it yields), never OK: friction is known to a factor of two at
// best, and a keyway, a stepped hub, speed, heat or bending are not in it.
#pragma once

#include <optional>
#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/fits.hpp"
#include "core/handbook/lame_formulas.hpp"
#include "core/handbook/materials.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// What an elastic part needs to be known by.
struct ElasticPart {
  quantity::Pressure modulus;
  double poisson = 0.29;
  std::optional<double> expansion_per_million;  // 1e-6 per kelvin
  std::optional<quantity::Pressure> yield;
};

// Poisson's ratio of a kind of metal: nominal, from memory. Fails with kNotTabled for plastics.
struct PoissonRatio {
  double ratio = 0.0;
  Source source;
};
[[nodiscard]] base::Result<PoissonRatio> poisson_ratio(WorkGroup group);

// A part of a tabled material. Fails with kNotTabled where it has no modulus or Poisson's ratio here.
[[nodiscard]] base::Result<ElasticPart> elastic_part(const Material& material);

enum class PressAssembly {
  kPressed,  // pushed in cold, oiled
  kShrunk,   // hub heated or shaft cooled, clean and dry
};

// Coefficients of friction of a steel shaft in a hub of a metal. Wide on purpose.
enum class HubMetal { kSteel, kIron, kAluminium, kCopperAlloy };
struct PressFriction {
  HubMetal hub = HubMetal::kSteel;
  PressAssembly assembly = PressAssembly::kPressed;
  double low = 0.0;
  double high = 0.0;
  Source source;
};
// Fails with kNotTabled for magnesium, titanium and plastics.
[[nodiscard]] base::Result<PressFriction> press_friction(WorkGroup hub, PressAssembly assembly);

struct PressFit {
  quantity::Diameter joint;
  quantity::Diameter shaft_bore;   // zero where the shaft is solid
  quantity::Diameter hub_outside;  // of the weakest section that carries
  quantity::Length length;         // engaged
  quantity::Length
      least_interference;  // on the diameter, of the parts before assembly; zero or less: may slip
  quantity::Length most_interference;  // > 0
  quantity::Length smoothed;  // what pressing flattens off both surfaces, on the diameter; taken off both
                              // interferences. 0.8 (Rz of shaft + Rz of hub), DIN 7190 (from memory);
                              // nothing where shrunk without sliding is assumed
  quantity::Length assembly_clearance;  // wanted while assembling hot
  ElasticPart hub;
  ElasticPart shaft;
  double friction_low = 0.0;   // > 0
  double friction_high = 0.0;  // >= friction_low
};

// least: from the least interference and the low friction; most: from the most interference and the high.
struct PressFitAnswer {
  quantity::Pressure least_pressure;
  quantity::Pressure most_pressure;
  quantity::Pressure hub_hoop;          // at its bore, at most; tension
  quantity::Pressure hub_equivalent;    // von Mises, at most
  quantity::Pressure shaft_equivalent;  // the same of the shaft, wherever in it that is largest
  std::optional<bool> hub_yields;    // none where the yield strength is not known. Beyond yield the pressure
  std::optional<bool> shaft_yields;  // and all that follows from it are less than said here
  quantity::Force holds_at_least;    // along the shaft; zero where the least interference is none
  quantity::Force pressing_at_most;  // to press it in cold, or out again
  quantity::Torque turns_at_least;   // what torque may already turn it
  std::optional<quantity::TemperatureDifference>
      heat_hub_by;  // over the shaft, for most interference and clearance
  std::optional<quantity::TemperatureDifference> cool_shaft_by;
  Source pressure_source = kLamePressure;
  Source stress_source = kLameStress;
  Source heat_source = kThermalExpansion;
};

// Fails with kSizeNotPositive for a size, modulus or friction that must be more than zero, and with
// kOutsideDomain where the order shaft bore < joint < hub outside does not hold, the friction range is upside
// down, or even the most interference is none.
[[nodiscard]] base::Result<PressFitAnswer> press_fit(const PressFit& fit);

// Interference of a fit: shaft less hole.
[[nodiscard]] inline quantity::Length least_interference(const Fit& fit) {
  return -fit.most_clearance();
}
[[nodiscard]] inline quantity::Length most_interference(const Fit& fit) {
  return -fit.least_clearance();
}

}  // namespace sparewright::handbook
