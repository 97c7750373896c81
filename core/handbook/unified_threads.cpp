#include "core/handbook/unified_threads.hpp"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

#include "core/handbook/thread_formulas.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
using quantity::rounded;
namespace unit = quantity::unit;

constexpr Source kB11{"ASME B1.1, limits of size by formula; coefficients", "", Basis::kFromMemory};
constexpr int kPlaces = 4;  // of a limit in inches

// A thread in inches, each number carried to the places of the worked tables (pp. 2010-2017: 19/64 is
// 0.2969).
struct Inches {
  double major;
  double pitch;
  double threads_per_inch;
  double pitch_line;  // D less the pitch diameter
  double td2;         // pitch diameter tolerance of class 2A, six places
};

Inches inches_of(const UnifiedThread& thread) {
  Inches t{};
  t.major = rounded(thread.major.in(unit::inch), kPlaces);
  t.threads_per_inch = thread.threads_per_inch;
  t.pitch = rounded(1.0 / thread.threads_per_inch, 8);
  t.pitch_line = rounded(kPitchLinePerPitch * t.pitch, 6);
  const bool own_length = thread.series == UnifiedSeries::kUnc || thread.series == UnifiedSeries::kUnf;
  const double engagement = own_length ? t.major : 9.0 * t.pitch;
  t.td2 = rounded(
      0.0015 * std::cbrt(t.major) + 0.0015 * std::sqrt(engagement) + 0.015 * std::cbrt(t.pitch * t.pitch), 6);
  return t;
}

// Tolerance of the minor diameter of a hole.
double minor_tolerance(const Inches& t, UnifiedClass thread_class) {
  const double p = t.pitch;
  const double small = 0.05 * std::cbrt(p * p) + 0.03 * p / t.major - 0.002;
  const double most = std::min(small, 0.394 * p);
  if (thread_class == UnifiedClass::k3B) {
    return std::max(most, t.threads_per_inch >= 13 ? 0.23 * p - 1.5 * p * p : 0.120 * p);
  }
  const double large = 0.25 * p - 0.40 * p * p;
  return t.major >= 0.25 ? large : std::max(most, large);
}

Diameter inch_diameter(double inches) {
  return Diameter::of(inches, unit::inch);
}

DiameterRange inch_range(double low, double high, int places_low = kPlaces, int places_high = kPlaces) {
  return {inch_diameter(rounded(low, places_low)), inch_diameter(rounded(high, places_high))};
}

UnifiedClass partner(UnifiedClass thread_class) {
  switch (thread_class) {
    case UnifiedClass::k2A:
      return UnifiedClass::k2B;
    case UnifiedClass::k3A:
      return UnifiedClass::k3B;
    case UnifiedClass::k2B:
      return UnifiedClass::k2A;
    case UnifiedClass::k3B:
      return UnifiedClass::k3A;
  }
  return thread_class;
}

bool is_screw(UnifiedClass thread_class) {
  return thread_class == UnifiedClass::k2A || thread_class == UnifiedClass::k3A;
}

ChosenClass choose(const UnifiedThread& thread, bool screw) {
  const UnifiedClass usual = screw ? UnifiedClass::k2A : UnifiedClass::k2B;
  if (!thread.thread_class)
    return {usual, "no class written: " + std::string(name_of(usual)) + ", the usual one"};
  if (is_screw(*thread.thread_class) == screw) return {*thread.thread_class, {}};
  return {partner(*thread.thread_class), {}};
}

}  // namespace

std::string_view name_of(UnifiedSeries series) {
  constexpr std::array<std::string_view, 5> kNames{"UNC", "UNF", "UNEF", "UN", "UNS"};
  return kNames.at(static_cast<std::size_t>(series));
}

std::string_view name_of(UnifiedClass thread_class) {
  constexpr std::array<std::string_view, 4> kNames{"2A", "3A", "2B", "3B"};
  return kNames.at(static_cast<std::size_t>(thread_class));
}

Length UnifiedThread::pitch() const {
  return Length::of(1.0 / threads_per_inch, unit::inch);
}

ChosenClass screw_class(const UnifiedThread& thread) {
  return choose(thread, true);
}
ChosenClass hole_class(const UnifiedThread& thread) {
  return choose(thread, false);
}

BasicThread basic_sizes(const UnifiedThread& thread) {
  const double major_mm = thread.major.in(unit::millimetre);
  const double pitch_mm = thread.pitch().in(unit::millimetre);
  return {thread.major, Diameter::of(pitch_diameter_mm(major_mm, pitch_mm), unit::millimetre),
          Diameter::of(internal_minor_mm(major_mm, pitch_mm), unit::millimetre), kThreadProfile};
}

ExternalThreadLimits screw_limits(const UnifiedThread& thread, UnifiedClass thread_class) {
  assert(is_screw(thread_class));
  const Inches t = inches_of(thread);
  const bool loose = thread_class == UnifiedClass::k2A;
  const double allowance = loose ? rounded(0.300 * t.td2, kPlaces) : 0.0;
  const double major_tolerance = rounded(0.060 * std::cbrt(t.pitch * t.pitch), 6);
  const double pitch_tolerance = rounded(loose ? t.td2 : 0.75 * t.td2, kPlaces);
  const double major = t.major - allowance;
  const double pitch = rounded(major - t.pitch_line, kPlaces);

  ExternalThreadLimits limits;
  limits.thread_class = name_of(thread_class);
  limits.allowance = Length::of(allowance, unit::inch);
  limits.major = inch_range(major - major_tolerance, major);
  limits.pitch = inch_range(pitch - pitch_tolerance, pitch);
  limits.flat_root_max =
      inch_diameter(rounded(major - rounded(kInternalMinorPerPitch * t.pitch, 6), kPlaces));
  limits.round_root_max = inch_diameter(rounded(major - rounded(kRoundRootPerPitch * t.pitch, 6), kPlaces));
  limits.source = kB11;
  return limits;
}

InternalThreadLimits hole_limits(const UnifiedThread& thread, UnifiedClass thread_class) {
  assert(!is_screw(thread_class));
  constexpr double kSmallest3PlaceMajor = 0.138;  // #6; #4 and #5 are printed with four places
  const Inches t = inches_of(thread);
  const bool loose = thread_class == UnifiedClass::k2B;
  const double pitch_tolerance = rounded((loose ? 1.30 : 0.975) * t.td2, kPlaces);
  const double pitch = rounded(t.major - t.pitch_line, kPlaces);
  const double minor = rounded(t.major - rounded(kInternalMinorPerPitch * t.pitch, 6), kPlaces);
  const double minor_max = minor + rounded(minor_tolerance(t, thread_class), kPlaces);
  const int places = t.major < kSmallest3PlaceMajor - 1e-9 ? kPlaces : 3;

  InternalThreadLimits limits;
  limits.thread_class = name_of(thread_class);
  limits.major_min = inch_diameter(t.major);
  limits.pitch = inch_range(pitch, pitch + pitch_tolerance);
  limits.minor = inch_range(minor, minor_max, places, loose ? places : kPlaces);
  limits.source = kB11;
  return limits;
}

quantity::Area tensile_stress_area(const UnifiedThread& thread) {
  return quantity::Area::of(
      unified_stress_area_mm2(thread.major.in(unit::millimetre), thread.pitch().in(unit::millimetre)),
      unit::square_millimetre);
}

}  // namespace sparewright::handbook
