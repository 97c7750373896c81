#include "core/handbook/thread_wires.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Angle;
using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr Diameter wire(double inches) {
  return Diameter::of(inches, unit::inch);
}
constexpr std::array kUsualWires{wire(0.018), wire(0.024), wire(0.029), wire(0.032), wire(0.040), wire(0.045),
                                 wire(0.055), wire(0.063), wire(0.081), wire(0.092), wire(0.108), wire(0.120),
                                 wire(0.127), wire(0.143), wire(0.150), wire(0.185)};

constexpr Source kRange{"wires that touch the flanks and stand out over the crest, geometry", "",
                        Basis::kDerived};

double half_angle(const ThreadShape& thread) {
  return profile_of(thread.form).flank_angle.base() / 2.0;
}

// The flanks are straight from the pitch line out to the crest (at most its rounding) and in to the root's
// rounding. A wire touches W/2 sin A nearer to the axis than its centre lies; its centre lies W/2 csc A - P/4
// cot A out of the pitch line.
WireRange range_of(const ThreadShape& thread, const ThreadGroove& groove) {
  const double a = half_angle(thread);
  const double pitch = thread.pitch.base();
  const double sine = std::sin(a);
  const double cosine = std::cos(a);
  const double to_point = pitch / 4.0 * cosine / sine;
  const double rounding =
      groove.root_radius * (1.0 - sine) * pitch;  // height of a rounding up to where it touches
  const double crest = groove.addendum * pitch;
  const double root = (groove.depth - groove.addendum) * pitch;
  // Out of the pitch line a wire touches at W (csc A - sin A) / 2 - to_point = W cos^2 A / (2 sin A) -
  // to_point.
  const double per_wire = cosine * cosine / (2.0 * sine);
  const double crest_rounding = profile_of(thread.form).screw.root_radius > 0.0 &&
                                        thread.form != ThreadForm::kUnified &&
                                        thread.form != ThreadForm::kMetric
                                    ? rounding
                                    : 0.0;
  const double most = (crest - crest_rounding + to_point) / per_wire;
  const double touches = (rounding - root + to_point) / per_wire;
  const double stands_out = (crest + to_point) / (0.5 / sine + 0.5);  // its back level with the crest
  return {Diameter::from_base(std::max(touches, stands_out)), Diameter::from_base(best_wire_mm(pitch, a)),
          Diameter::from_base(most), kRange};
}

std::string in_both(Diameter size) {
  return fmt::format("{:.4f} in ({:.3f} mm)", size.in(unit::inch), size.in(unit::millimetre));
}

std::optional<base::Failure> not_usable(const ThreadShape& thread, Diameter size, const WireRange& range) {
  if (in_range<Diameter>(size, Diameter::from_base(range.least.base() - 2.0 * kSizeSlackMm), range.most))
    return std::nullopt;
  return not_tabled("measuring " + thread.name, "wires of " + in_both(size),
                    fmt::format("wires of {} to {}, best {}", in_both(range.least), in_both(range.most),
                                in_both(range.best)))
      .value();
}

std::optional<base::Failure> no_size(std::string_view what, Length size) {
  if (size > Length()) return std::nullopt;
  return base::fail(base::Code::kSizeNotPositive, quantity::three_ways(size), "a measured size", what)
      .value();
}

std::optional<base::Failure> refused(const ThreadShape& thread, Length size, Diameter wire_size,
                                     const WireRange& range) {
  if (auto failure = no_size("the measurement", size)) return failure;
  if (thread.tapered)
    return not_tabled("measuring over wires", thread.name, "parallel threads; a taper one is gauged").value();
  return not_usable(thread, wire_size, range);
}

OverWires three(const ThreadShape& thread, Diameter pitch_diameter, Diameter wire_size) {
  const auto over = [&](double lead) {
    return over_three_wires_mm(pitch_diameter.base(), thread.pitch.base(), lead, half_angle(thread),
                               wire_size.base());
  };
  const double corrected = over(thread.lead().base());
  const double slope = tangent_of_lead(thread.lead().base(), pitch_diameter.base());
  return {wire_size, Length::from_base(corrected), Length::from_base(corrected - over(0.0)),
          Angle::from_base(std::atan(slope)), kOverWires};
}

// The lead term is a few micrometres, so each round is a thousand times nearer.
base::Result<Diameter> solved(const ThreadShape& thread, Length over, Diameter wire_size) {
  constexpr int kRounds = 50;
  constexpr double kStillMm = 1e-9;
  double pitch_diameter = thread.pitch_diameter.base();
  for (int round = 0; round < kRounds; ++round) {
    const double off =
        over.base() - three(thread, Diameter::from_base(pitch_diameter), wire_size).over.base();
    pitch_diameter += off;
    if (!(pitch_diameter > thread.pitch.base() * 0.25)) break;
    if (std::abs(off) < kStillMm) return Diameter::from_base(pitch_diameter);
  }
  return base::fail(base::Code::kReadingsDisagree, quantity::three_ways(over) + " over these wires",
                    "about " + quantity::three_ways(three(thread, thread.pitch_diameter, wire_size).over),
                    "the pitch diameter of " + thread.name);
}

}  // namespace

WireRange wires_for(const ThreadShape& thread) {
  return range_of(thread, profile_of(thread.form).screw);
}

WireRange balls_for(const ThreadShape& thread) {
  return range_of(thread, profile_of(thread.form).hole);
}

base::Result<OverWires> over_three_wires(const ThreadShape& thread, Diameter pitch_diameter,
                                         Diameter wire_size) {
  if (const auto failure = refused(thread, across(pitch_diameter), wire_size, wires_for(thread)))
    return base::fail(*failure);
  return three(thread, pitch_diameter, wire_size);
}

base::Result<OverWires> over_one_wire(const ThreadShape& thread, Diameter pitch_diameter, Diameter wire_size,
                                      Diameter measured_major) {
  auto out = over_three_wires(thread, pitch_diameter, wire_size);
  if (!out) return out;
  if (const auto failure = no_size("the major diameter", across(measured_major))) return base::fail(*failure);
  out->over = (out->over + measured_major) / 2.0;
  out->lead_correction = out->lead_correction / 2.0;
  return out;
}

base::Result<OverWires> between_balls(const ThreadShape& thread, Diameter pitch_diameter, Diameter ball) {
  if (const auto failure = refused(thread, across(pitch_diameter), ball, balls_for(thread)))
    return base::fail(*failure);
  const double between =
      between_balls_mm(pitch_diameter.base(), thread.pitch.base(), half_angle(thread), ball.base());
  const double slope = tangent_of_lead(thread.lead().base(), pitch_diameter.base());
  return OverWires{ball, Length::from_base(between), Length(), Angle::from_base(std::atan(slope)),
                   kOverWires};
}

base::Result<Diameter> pitch_diameter_from_three_wires(const ThreadShape& thread, Length over,
                                                       Diameter wire_size) {
  if (const auto failure = refused(thread, over, wire_size, wires_for(thread))) return base::fail(*failure);
  return solved(thread, over, wire_size);
}

base::Result<Diameter> pitch_diameter_from_one_wire(const ThreadShape& thread, Length over,
                                                    Diameter wire_size, Diameter measured_major) {
  if (const auto failure = refused(thread, over, wire_size, wires_for(thread))) return base::fail(*failure);
  if (const auto failure = no_size("the major diameter", across(measured_major))) return base::fail(*failure);
  return solved(thread, 2.0 * over - measured_major, wire_size);
}

base::Result<Diameter> pitch_diameter_from_balls(const ThreadShape& thread, Length between, Diameter ball) {
  if (const auto failure = refused(thread, between, ball, balls_for(thread))) return base::fail(*failure);
  const double at_zero = between_balls_mm(0.0, thread.pitch.base(), half_angle(thread), ball.base());
  return Diameter::from_base(between.base() - at_zero);
}

base::Result<Diameter> choose_wire(const ThreadShape& thread, std::span<const Diameter> set) {
  const WireRange range = wires_for(thread);
  std::optional<Diameter> chosen;
  for (const Diameter one : set) {
    if (not_usable(thread, one, range)) continue;
    const auto off = [&](Diameter size) { return std::abs((size - range.best).base()); };
    if (!chosen || off(one) < off(*chosen)) chosen = one;
  }
  if (chosen) return *chosen;
  return not_tabled("measuring " + thread.name, "the wires of this set",
                    fmt::format("wires of {} to {}, best {}", in_both(range.least), in_both(range.most),
                                in_both(range.best)));
}

std::span<const Diameter> usual_wires() {
  return kUsualWires;
}

}  // namespace sparewright::handbook
