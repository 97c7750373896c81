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

// The tolerances are worked out for a length of engagement.
Inches inches_of(const UnifiedThread& thread, Length engagement) {
  Inches t{};
  t.major = rounded(thread.major.in(unit::inch), kPlaces);
  t.threads_per_inch = thread.threads_per_inch;
  t.pitch = rounded(1.0 / thread.threads_per_inch, 8);
  t.pitch_line = rounded(kPitchLinePerPitch * t.pitch, 6);
  t.td2 = rounded(0.0015 * std::cbrt(t.major) + 0.0015 * std::sqrt(engagement.in(unit::inch)) +
                      0.015 * std::cbrt(t.pitch * t.pitch),
                  6);
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

// What one class makes of the tolerances of class 2A.
struct ClassRule {
  UnifiedClass thread_class;
  std::string_view name;
  UnifiedClass partner;
  double of_pitch_tolerance;  // factor on the pitch tolerance of 2A
  double major_coefficient;   // of P^(2/3); screws
  bool has_allowance;         // screws
};
constexpr std::array kClasses{
    ClassRule{UnifiedClass::k1A, "1A", UnifiedClass::k1B, 1.50, 0.090, true},
    ClassRule{UnifiedClass::k2A, "2A", UnifiedClass::k2B, 1.00, 0.060, true},
    ClassRule{UnifiedClass::k3A, "3A", UnifiedClass::k3B, 0.75, 0.060, false},
    ClassRule{UnifiedClass::k1B, "1B", UnifiedClass::k1A, 1.95, 0.0, false},
    ClassRule{UnifiedClass::k2B, "2B", UnifiedClass::k2A, 1.30, 0.0, false},
    ClassRule{UnifiedClass::k3B, "3B", UnifiedClass::k3A, 0.975, 0.0, false},
};

const ClassRule& rule_of(UnifiedClass thread_class) {
  return kClasses.at(static_cast<std::size_t>(thread_class));
}

ChosenClass choose(const UnifiedThread& thread, bool screw) {
  const UnifiedClass usual = screw ? UnifiedClass::k2A : UnifiedClass::k2B;
  if (!thread.thread_class)
    return {usual, "no class written: " + std::string(name_of(usual)) + ", the usual one"};
  if (is_screw_class(*thread.thread_class) == screw) return {*thread.thread_class, {}};
  return {rule_of(*thread.thread_class).partner, {}};
}

std::optional<base::Failure> no_length(Length engagement) {
  if (engagement > Length()) return std::nullopt;
  return base::fail(base::Code::kSizeNotPositive, quantity::fixed(engagement.in(unit::inch), 4) + " in",
                    "a length of thread in mesh, usually about the diameter", "the length of engagement")
      .value();
}

}  // namespace

std::string_view name_of(UnifiedSeries series) {
  constexpr std::array<std::string_view, 5> kNames{"UNC", "UNF", "UNEF", "UN", "UNS"};
  return kNames.at(static_cast<std::size_t>(series));
}

std::string_view name_of(UnifiedClass thread_class) {
  return rule_of(thread_class).name;
}

bool is_screw_class(UnifiedClass thread_class) {
  return thread_class < UnifiedClass::k1B;
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

EngagementRange usual_engagement(const UnifiedThread& thread) {
  constexpr Source kLengths{"ASME B1.1, lengths of engagement the tolerances are for", "",
                            Basis::kFromMemory};
  const bool coarse_constant = thread.series == UnifiedSeries::kUn && thread.threads_per_inch <= 8.0;
  if (thread.series == UnifiedSeries::kUnc || thread.series == UnifiedSeries::kUnf || coarse_constant)
    return {across(thread.major), Length(), 1.5 * across(thread.major), kLengths};
  return {9.0 * thread.pitch(), 5.0 * thread.pitch(), 15.0 * thread.pitch(), kLengths};
}

namespace {

ExternalThreadLimits screw_limits_at(const Inches& t, UnifiedClass thread_class) {
  assert(is_screw_class(thread_class));
  const ClassRule& rule = rule_of(thread_class);
  const double allowance = rule.has_allowance ? rounded(0.300 * t.td2, kPlaces) : 0.0;
  const double major_tolerance = rounded(rule.major_coefficient * std::cbrt(t.pitch * t.pitch), 6);
  const double pitch_tolerance = rounded(rule.of_pitch_tolerance * t.td2, kPlaces);
  const double major = t.major - allowance;
  const double pitch = rounded(major - t.pitch_line, kPlaces);

  ExternalThreadLimits limits;
  limits.thread_class = rule.name;
  limits.allowance = Length::of(allowance, unit::inch);
  limits.major = inch_range(major - major_tolerance, major);
  limits.pitch = inch_range(pitch - pitch_tolerance, pitch);
  limits.flat_root_max =
      inch_diameter(rounded(major - rounded(kInternalMinorPerPitch * t.pitch, 6), kPlaces));
  limits.round_root_max = inch_diameter(rounded(major - rounded(kRoundRootPerPitch * t.pitch, 6), kPlaces));
  limits.source = kB11;
  return limits;
}

InternalThreadLimits hole_limits_at(const Inches& t, UnifiedClass thread_class) {
  assert(!is_screw_class(thread_class));
  constexpr double kSmallest3PlaceMajor = 0.138;  // #6; #4 and #5 are printed with four places
  const ClassRule& rule = rule_of(thread_class);
  const double pitch_tolerance = rounded(rule.of_pitch_tolerance * t.td2, kPlaces);
  const double pitch = rounded(t.major - t.pitch_line, kPlaces);
  const double minor = rounded(t.major - rounded(kInternalMinorPerPitch * t.pitch, 6), kPlaces);
  const double minor_max = minor + rounded(minor_tolerance(t, thread_class), kPlaces);
  const int places = t.major < kSmallest3PlaceMajor - 1e-9 ? kPlaces : 3;

  InternalThreadLimits limits;
  limits.thread_class = rule.name;
  limits.major_min = inch_diameter(t.major);
  limits.pitch = inch_range(pitch, pitch + pitch_tolerance);
  limits.minor = inch_range(minor, minor_max, places, thread_class == UnifiedClass::k3B ? kPlaces : places);
  limits.source = kB11;
  return limits;
}

}  // namespace

ExternalThreadLimits screw_limits(const UnifiedThread& thread, UnifiedClass thread_class) {
  return screw_limits_at(inches_of(thread, usual_engagement(thread).usual), thread_class);
}

InternalThreadLimits hole_limits(const UnifiedThread& thread, UnifiedClass thread_class) {
  return hole_limits_at(inches_of(thread, usual_engagement(thread).usual), thread_class);
}

base::Result<ExternalThreadLimits> screw_limits(const UnifiedThread& thread, UnifiedClass thread_class,
                                                Length engagement) {
  if (const auto failure = no_length(engagement)) return base::fail(*failure);
  return screw_limits_at(inches_of(thread, engagement), thread_class);
}

base::Result<InternalThreadLimits> hole_limits(const UnifiedThread& thread, UnifiedClass thread_class,
                                               Length engagement) {
  if (const auto failure = no_length(engagement)) return base::fail(*failure);
  return hole_limits_at(inches_of(thread, engagement), thread_class);
}

quantity::Area tensile_stress_area(const UnifiedThread& thread) {
  return quantity::Area::of(
      unified_stress_area_mm2(thread.major.in(unit::millimetre), thread.pitch().in(unit::millimetre)),
      unit::square_millimetre);
}

}  // namespace sparewright::handbook
