#include "core/handbook/single_point_threads.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/quantity/display.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Angle;
using quantity::Area;
using quantity::Length;
namespace unit = quantity::unit;

constexpr int kMostPasses = 200;
constexpr int kMostSpringPasses = 10;

Length clearance_of(const AnyThread& thread) {
  if (const auto* acme = std::get_if<AcmeThread>(&thread)) return root_clearance(*acme);
  if (const auto* trapezoidal = std::get_if<TrapezoidalThread>(&thread)) return root_clearance(*trapezoidal);
  return {};
}

std::string in_both(Length length) {
  return fmt::format("{:.4f} in ({:.3f} mm)", length.in(unit::inch), length.in(unit::millimetre));
}

double half_tangent(const ThreadDepth& depth) {
  return std::tan(depth.flank_angle.base() / 2.0);
}

// The groove at a depth is a trapezoid on the tool's nose.
double area_mm2(const ThreadDepth& depth, double deep_mm) {
  return depth.nose.base() * deep_mm + half_tangent(depth) * deep_mm * deep_mm;
}

// The depth at which the groove has that area: the positive root, written so that it holds for any nose and a
// small area.
double depth_of_area_mm(const ThreadDepth& depth, double area) {
  const double nose = depth.nose.base();
  return 2.0 * area / (nose + std::sqrt(nose * nose + 4.0 * half_tangent(depth) * area));
}

base::Failure not_accepted(std::string_view what, const std::string& found, std::string_view accepted) {
  return base::fail(base::Code::kValueNotAccepted, found, accepted, what).value();
}

std::optional<base::Failure> wrong(const ThreadDepth& depth, const PassOptions& options) {
  if (!(options.most_first > Length()))
    return not_accepted("first infeed", in_both(options.most_first),
                        "more than zero; 0.005 to 0.015 in is usual");
  if (!(options.least_infeed > Length()))
    return not_accepted("least infeed", in_both(options.least_infeed),
                        "more than zero; about 0.001 in is usual");
  if (options.spring_passes < 0 || options.spring_passes > kMostSpringPasses)
    return not_accepted("spring passes", fmt::format("{}", options.spring_passes), "0 to 10");
  const double degrees = options.compound_angle.in(unit::degree);
  const double half = depth.flank_angle.in(unit::degree) / 2.0;
  if (!(degrees >= 0.0 && degrees <= half))
    return not_accepted("compound angle", fmt::format("{} degrees from square", degrees),
                        fmt::format("0 (straight in) to {} degrees; {} is usual", half, half - 0.5));
  if (!(depth.depth > Length()))
    return not_accepted("depth of thread", in_both(depth.depth), "more than zero");
  return std::nullopt;
}

// Depths after each pass, in mm; the last is the whole. note says where equal areas ended.
std::vector<double> depths(const ThreadDepth& depth, const PassOptions& options, std::string& note) {
  constexpr double kRestShare = 0.5;  // a rest of less than half the least infeed goes with the pass before
  const double whole = depth.depth.base();
  const double least = options.least_infeed.base();
  const double area = area_mm2(depth, whole);
  const double needed = std::ceil(area / area_mm2(depth, std::min(options.most_first.base(), whole)) - 1e-9);
  std::vector<double> out;
  double deep = 0.0;
  for (int pass = 1; deep < whole && pass <= kMostPasses + 1; ++pass) {
    const double equal = pass < needed ? depth_of_area_mm(depth, pass / needed * area) : whole;
    const bool rubs = equal - deep < least && equal < whole;
    if (rubs && note.empty()) {
      note = fmt::format("from pass {} on the infeed is {}: passes of equal area would be thinner and rub",
                         pass, in_both(options.least_infeed));
    }
    deep = rubs ? deep + least : equal;
    if (whole - deep < kRestShare * least) deep = whole;
    out.push_back(deep);
  }
  return out;
}

}  // namespace

ThreadDepth thread_depth(const ThreadShape& thread, ThreadSide side, Length root_clearance) {
  const ThreadProfile& profile = profile_of(thread.form);
  const ThreadGroove& groove = side == ThreadSide::kScrew ? profile.screw : profile.hole;
  ThreadDepth out;
  out.depth = groove.depth * thread.pitch + root_clearance;
  out.flank_angle = profile.flank_angle;
  out.addendum = groove.addendum * thread.pitch;
  out.mating_addendum = (side == ThreadSide::kScrew ? profile.hole : profile.screw).addendum * thread.pitch;
  out.pitch = thread.pitch;
  const double nose =
      groove_width_mm(out.depth.base(), out.addendum.base(), out.pitch.base(), profile.flank_angle.base());
  out.nose = Length::from_base(std::max(nose, 0.0));  // a sharp V ends in a point, to the last bit
  if (groove.root_radius > 0.0) out.nose_radius = groove.root_radius * thread.pitch;
  out.source = profile.source;
  return out;
}

ThreadDepth thread_depth(const AnyThread& thread, ThreadSide side) {
  return thread_depth(shape_of(thread), side, clearance_of(thread));
}

base::Result<ThreadDepth> depth_for_tool(const ThreadDepth& wanted, Length nose) {
  // As deep as the mating crest reaches no flat may be wider than the groove.
  const double widest =
      groove_width_mm(wanted.mating_addendum.base(), 0.0, wanted.pitch.base(), wanted.flank_angle.base());
  if (!(nose.base() >= 0.0 && nose.base() <= widest + 1e-9))
    return base::fail(
        not_accepted("flat of the tool", in_both(nose),
                     "0 to " + in_both(Length::from_base(widest)) + "; a wider one spoils the flanks"));
  ThreadDepth out = wanted;
  out.nose = nose;
  out.nose_radius.reset();
  out.depth = Length::from_base(
      depth_for_nose_mm(nose.base(), wanted.addendum.base(), wanted.pitch.base(), wanted.flank_angle.base()));
  return out;
}

Angle usual_compound_angle(const ThreadDepth& depth) {
  return depth.flank_angle / 2.0 - Angle::of(0.5, unit::degree);
}

base::Result<PassPlan> plan_passes(const ThreadDepth& depth, const PassOptions& options) {
  if (auto failure = wrong(depth, options)) return base::fail(std::move(*failure));
  PassPlan plan;
  plan.depth = depth;
  plan.compound_angle = options.compound_angle;
  const std::vector<double> reached = depths(depth, options, plan.note);
  if (reached.size() > static_cast<std::size_t>(kMostPasses))
    return base::fail(base::Code::kTooMany, "more than 200 passes", "a larger first infeed", "passes");
  const double angle = options.compound_angle.base();
  double before = 0.0;
  const auto add = [&](double deep) {
    plan.passes.push_back({static_cast<int>(plan.passes.size()) + 1, Length::from_base(deep - before),
                           Length::from_base(deep), Length::from_base(slide_travel_mm(deep - before, angle)),
                           Length::from_base(slide_travel_mm(deep, angle)),
                           Area::from_base(area_mm2(depth, deep) - area_mm2(depth, before)), deep <= before});
    before = deep;
  };
  for (const double deep : reached)
    add(deep);
  for (int spring = 0; spring < options.spring_passes; ++spring)
    add(before);
  return plan;
}

}  // namespace sparewright::handbook
