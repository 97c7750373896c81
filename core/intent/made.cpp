#include "core/intent/made.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace sparewright::intent {
namespace {

// Distances of the shaft letters, ISO 286-1 (from memory), in mm.
double f_mm(double d) {
  return 0.0055 * std::pow(d, 0.41);
}
double e_mm(double d) {
  return 0.011 * std::pow(d, 0.41);
}
double d_mm(double d) {
  return 0.016 * std::pow(d, 0.44);
}

double below(double x) {  // of the normal distribution
  return 0.5 * std::erfc(-x / std::numbers::sqrt2);
}

// The share of (error + exponential wear) that lies below x: the exponentially modified normal distribution.
double below_with_wear(double x, double u, double mean) {
  constexpr double kDrowned = 5.0;  // the error hides the wear
  if (u > kDrowned * mean) return below((x - mean) / u);
  const double moved = std::exp(std::min(u * u / (2.0 * mean * mean) - x / mean, 600.0));
  return std::clamp(below(x / u) - moved * below(x / u - u / mean), 0.0, 1.0);
}

constexpr std::array kWear_mm{0.04, 0.25};

// The share of readings that come out no more than x over the size as made.
double share_below(double x, const MeasuredUp& measured) {
  const double u = standard_uncertainty_mm(measured);
  if (measured.bound == ledger::Bound::kExact) return below(x / u);
  double sum = 0.0;
  for (const double mean : kWear_mm) {
    sum += measured.bound == ledger::Bound::kAtMost ? below_with_wear(x, u, mean)
                                                    : 1.0 - below_with_wear(-x, u, mean);
  }
  return sum / static_cast<double>(kWear_mm.size());
}

double likelihood_of(const Zone& zone, double nominal_mm, const MeasuredUp& measured) {
  const double off = measured.size_mm - nominal_mm;
  const double share = share_below(off - zone.low_mm, measured) - share_below(off - zone.high_mm, measured);
  return zone.weight * std::max(share, 0.0) / (zone.high_mm - zone.low_mm);
}

void add(Made& made, double part, const Made& more) {
  for (Zone zone : more) {
    zone.weight *= part;
    made.push_back(zone);
  }
}

}  // namespace

double grade_mm(int grade, double nominal_mm) {
  constexpr int kFirst = 6;
  constexpr std::array kUnits{10.0, 16.0, 25.0, 40.0, 64.0, 100.0, 160.0, 250.0};
  const double unit_mm = (0.45 * std::cbrt(nominal_mm) + 0.001 * nominal_mm) / 1000.0;
  return kUnits.at(static_cast<std::size_t>(grade - kFirst)) * unit_mm;
}

Made made_as_shaft(double n) {
  const double it7 = grade_mm(7, n);
  const double it8 = grade_mm(8, n);
  const double it9 = grade_mm(9, n);
  return {{0.26, -it7, 0.0, "as what slides or locates is made"},
          {0.24, -f_mm(n) - it8, -f_mm(n), "as what runs is made"},
          {0.06, -e_mm(n) - it9, -e_mm(n), "as what runs freely is made"},
          {0.04, -d_mm(n) - it9, -d_mm(n), "as what runs loosely is made"},
          {0.18, -it9, 0.0, "as bar is drawn"},
          {0.07, 0.0, it7, "as what is driven in is made"},
          {0.04, it7, 2.0 * it7 + it8, "as what is pressed in is made"},
          {0.08, -grade_mm(11, n), 0.0, "as rough work is made"},
          {0.03, -grade_mm(13, n), grade_mm(11, n) / 2.0, "as rough work is made"}};
}

Made made_as_hole(double n) {
  const double it7 = grade_mm(7, n);
  return {{0.38, 0.0, it7, "as a hole is reamed or bored"},
          {0.20, 0.0, grade_mm(9, n), "as a hole is bored"},
          {0.16, 0.0, grade_mm(11, n), "as a hole is drilled"},
          {0.09, f_mm(n), f_mm(n) + grade_mm(8, n), "as a hole is bored to run on a shaft of that size"},
          {0.07, -it7, 0.0, "as a hole is bored to press"},
          {0.04, -it7 / 2.0, it7 / 2.0, "as a hole is bored"},
          {0.06, -grade_mm(11, n) / 2.0, grade_mm(13, n), "as rough work is made"}};
}

Made made_as_length(double n, Role role) {
  const double it11 = grade_mm(11, n);
  const double low = role == Role::kHole ? 0.0 : -it11;
  const double high = role == Role::kShaft ? 0.0 : it11;
  return {{0.34, -grade_mm(9, n), grade_mm(9, n), "as a length is cut"},
          {0.30, -it11, it11, "as a length is cut"},
          {0.20, low, high, "as a width is cut"},
          {0.16, -grade_mm(13, n), grade_mm(13, n), "as rough work is made"}};
}

Made usually_made(double n, const MeasuredUp& measured) {
  constexpr double kRound = 0.5;  // a choice made here, without a source
  if (measured.role != Role::kHole && measured.role != Role::kShaft) {
    if (measured.kind != quantity::Kind::kDiameter) return made_as_length(n, measured.role);
    Made either;
    add(either, kRound, made_as_shaft(n));
    add(either, 1.0 - kRound, made_as_hole(n));
    return either;
  }
  Made round = measured.role == Role::kHole ? made_as_hole(n) : made_as_shaft(n);
  if (measured.kind == quantity::Kind::kDiameter) return round;
  Made either;
  add(either, kRound, round);
  add(either, 1.0 - kRound, made_as_length(n, measured.role));
  return either;
}

Made made_within(double low_mm, double high_mm, std::string_view words) {
  return {{1.0, low_mm, high_mm, words}};
}

double standard_uncertainty_mm(const MeasuredUp& measured) {
  constexpr double kNineteenInTwenty = 1.96;
  return std::max(measured.unknown_mm / kNineteenInTwenty, kFinestReading_mm);
}

double likelihood(const Made& made, double nominal_mm, const MeasuredUp& measured) {
  if (measured.bound == ledger::Bound::kNeither) return 0.0;
  double sum = 0.0;
  for (const Zone& zone : made)
    sum += likelihood_of(zone, nominal_mm, measured);
  return sum;
}

const Zone& likeliest_zone(const Made& made, double nominal_mm, const MeasuredUp& measured) {
  return *std::max_element(made.begin(), made.end(), [&](const Zone& a, const Zone& b) {
    return likelihood_of(a, nominal_mm, measured) < likelihood_of(b, nominal_mm, measured);
  });
}

}  // namespace sparewright::intent
