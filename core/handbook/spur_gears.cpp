#include "core/handbook/spur_gears.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

namespace sparewright::handbook {
namespace {

using quantity::Angle;
using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr double kDepthWeight = 0.2;

Length mm(double length) {
  return Length::of(length, unit::millimetre);
}

bool is_for(const ToothForm& form, const GearPitch& pitch) {
  return form.system == pitch.system && pitch.number >= form.finest && pitch.number <= form.coarsest;
}

std::optional<base::Failure> bad_teeth(int teeth, std::string_view what) {
  if (teeth >= kLeastGearTeeth && teeth <= kMostGearTeeth) return std::nullopt;
  return base::fail(base::Code::kValueNotAccepted, std::to_string(teeth),
                    fmt::format("{} to {} teeth", kLeastGearTeeth, kMostGearTeeth), what)
      .value();
}

Length whole_depth(Length module, const ToothForm& form) {
  return module * (form.addendum + form.dedendum) + form.extra_dedendum;
}

// Adds up the relative differences of what was measured from what a candidate would show.
class Comparison {
 public:
  std::optional<Length> with(std::optional<Length> measured, Length nominal, double weight = 1.0) {
    if (!measured) return std::nullopt;
    const Length off = *measured - nominal;
    sum_ += weight * (off / nominal) * (off / nominal) * weight;
    ++count_;
    return off;
  }
  [[nodiscard]] double misfit() const { return std::sqrt(sum_ / count_); }

 private:
  double sum_ = 0.0;
  int count_ = 0;
};

GearCandidate compared(const OldGear& gear, const GearPitch& pitch, const ToothForm& form) {
  GearCandidate out{pitch, form, 0.0, {}, {}, {}, {}};
  const double module_mm = pitch.module().in(unit::millimetre);
  Comparison comparison;
  std::optional<Length> outside;
  if (gear.outside) outside = across(*gear.outside);
  out.outside_off = comparison.with(outside, mm(outside_diameter_mm(module_mm, gear.teeth, form.addendum)));
  if (gear.mate_teeth) {
    out.centres_off = comparison.with(gear.centres, mm(module_mm * (gear.teeth + *gear.mate_teeth) / 2.0));
  }
  out.depth_off = comparison.with(gear.whole_depth, whole_depth(pitch.module(), form), kDepthWeight);
  std::optional<Length> base_pitch;
  if (gear.span && gear.span_one_more) base_pitch = *gear.span_one_more - *gear.span;
  out.base_pitch_off = comparison.with(base_pitch, mm(base_pitch_mm(module_mm, form.pressure_angle.base())));
  out.misfit = comparison.misfit();
  return out;
}

std::optional<base::Failure> bad_reading(const OldGear& gear) {
  if (auto bad = bad_teeth(gear.teeth, "the number of teeth")) return bad;
  if (gear.mate_teeth) {
    if (auto bad = bad_teeth(*gear.mate_teeth, "the number of the mate's teeth")) return bad;
  }
  std::optional<Length> outside;
  if (gear.outside) outside = across(*gear.outside);
  const std::array<std::pair<std::string_view, std::optional<Length>>, 5> sizes{
      {{"the outside diameter", outside},
       {"the centre distance", gear.centres},
       {"the depth of the teeth", gear.whole_depth},
       {"the span", gear.span},
       {"the span over one tooth more", gear.span_one_more}}};
  for (const auto& [name, size] : sizes) {
    if (!size || (*size > Length() && std::isfinite(size->base()))) continue;
    return base::fail(base::Code::kSizeNotPositive, fmt::format("{:.6g} mm", size->in(unit::millimetre)),
                      "a length of more than 0 mm", name)
        .value();
  }
  const bool by_centres = gear.centres && gear.mate_teeth;
  const bool by_spans = gear.span && gear.span_one_more;
  if (gear.outside || by_centres || by_spans) return std::nullopt;
  return base::fail(base::Code::kReadingsTooFew, "",
                    "the outside diameter, or the centre distance and the teeth of the mate, or two spans",
                    "the pitch of the gear")
      .value();
}

}  // namespace

int spanned_teeth(int teeth, Angle pressure_angle) {
  constexpr double kSlack = 1e-9;  // 18 teeth of 20 degrees are just 2.5: three teeth
  return std::max(
      2, static_cast<int>(std::floor(teeth * pressure_angle.in(unit::degree) / 180.0 + 1.0 + kSlack)));
}

base::Result<SpurGear> spur_gear(int teeth, const GearPitch& pitch, const ToothForm& form) {
  if (const auto bad = bad_teeth(teeth, "the number of teeth")) return tl::unexpected(*bad);
  if (!is_for(form, pitch)) {
    const std::string_view of = form.system == GearPitchSystem::kModule ? "modules" : "diametral pitches";
    return base::fail(base::Code::kValueNotAccepted, to_string(pitch),
                      fmt::format("{} from {:g} to {:g}", of, form.finest, form.coarsest),
                      fmt::format("the pitch of {} teeth", form.name));
  }
  const double module_mm = pitch.module().in(unit::millimetre);
  const double alpha = form.pressure_angle.base();
  SpurGear gear;
  gear.teeth = teeth;
  gear.pitch = pitch;
  gear.form = form;
  gear.pitch_diameter = as_diameter(mm(module_mm * teeth));
  gear.blank = as_diameter(mm(outside_diameter_mm(module_mm, teeth, form.addendum)));
  gear.addendum = pitch.module() * form.addendum;
  gear.whole_depth = whole_depth(pitch.module(), form);
  gear.root = as_diameter(across(gear.blank) - gear.whole_depth * 2.0);
  gear.base_circle = as_diameter(mm(module_mm * teeth * std::cos(alpha)));
  gear.circular_pitch = mm(std::numbers::pi * module_mm);
  gear.chordal_thickness = mm(chordal_thickness_mm(module_mm, teeth));
  gear.chordal_addendum = mm(chordal_addendum_mm(module_mm, teeth, form.addendum));
  gear.spanned = spanned_teeth(teeth, form.pressure_angle);
  gear.span = mm(span_mm(module_mm, teeth, gear.spanned, alpha));
  if (const auto cutter = gear_cutter(teeth)) gear.cutter = *cutter;
  const double sine = std::sin(alpha);
  gear.least_teeth_not_undercut = static_cast<int>(std::ceil(2.0 * form.addendum / (sine * sine)));
  return gear;
}

base::Result<std::vector<GearCandidate>> identify_spur_gear(const OldGear& gear) {
  if (const auto bad = bad_reading(gear)) return tl::unexpected(*bad);
  std::vector<GearCandidate> all;
  for (const GearPitch& pitch : gear_pitches()) {
    for (const ToothForm& form : tooth_forms()) {
      if (!is_for(form, pitch)) continue;
      GearCandidate one = compared(gear, pitch, form);
      if (one.misfit < kMostMisfit) all.push_back(std::move(one));
    }
  }
  std::stable_sort(all.begin(), all.end(), [](const GearCandidate& a, const GearCandidate& b) {
    return a.misfit != b.misfit ? a.misfit < b.misfit : a.pitch.preference < b.pitch.preference;
  });
  return all;
}

base::Result<PressureAngleHint> pressure_angle_hint(Length module, Length span, Length span_one_more) {
  const Length base_pitch = span_one_more - span;
  const double cosine = base_pitch / (module * std::numbers::pi);
  constexpr Angle kMost = Angle::of(35.0, unit::degree);
  if (!(cosine <= 1.0 && cosine >= std::cos(kMost.base()))) {
    return base::fail(
        base::Code::kReadingsDisagree,
        fmt::format("the spans differ by {:.3f} mm", base_pitch.in(unit::millimetre)),
        fmt::format("{:.3f} to {:.3f} mm for module {:.4g}",
                    base_pitch_mm(module.in(unit::millimetre), kMost.base()),
                    base_pitch_mm(module.in(unit::millimetre), 0.0), module.in(unit::millimetre)),
        "the pressure angle");
  }
  PressureAngleHint hint{Angle::from_base(std::acos(cosine)), {}};
  double nearest = 100.0;
  for (const double degrees : {14.5, 20.0, 25.0}) {
    const double off = std::abs(hint.measured.in(unit::degree)-degrees);
    if (off >= nearest) continue;
    nearest = off;
    hint.nearest = Angle::of(degrees, unit::degree);
  }
  return hint;
}

}  // namespace sparewright::handbook
