#include "core/handbook/identify_threads.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include <fmt/format.h>

#include "core/quantity/display.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

// A thread as it is looked up: its nominal size and what a good screw of it has.
struct Entry {
  AnyThread thread;
  ThreadShape shape;
  Diameter major;
  DiameterRange made;
};

// Without limits a screw is taken to be up to 0.15 of the pitch under its nominal size.
DiameterRange usually_made(Diameter major, Length pitch) {
  constexpr double kUnder = 0.15;
  return {as_diameter(across(major) - kUnder * pitch), major};
}

// From the least major diameter of the usual class up to the nominal one: finer classes have no allowance.
DiameterRange made(const UnifiedThread& thread, const ThreadShape& shape) {
  return {screw_limits(thread, UnifiedClass::k2A).major.low, shape.major};
}
DiameterRange made(const MetricThread& thread, const ThreadShape& shape) {
  const auto limits = screw_limits_6g(thread);
  return limits ? DiameterRange{limits->major.low, shape.major} : usually_made(shape.major, shape.pitch);
}
// A taper thread is measured anywhere between its small end and the pipe.
DiameterRange made(const PipeThread& thread, const ThreadShape& shape) {
  if (thread.system == PipeSystem::kG) return g_screw_limits(thread).major;
  if (thread.is_american()) {
    const NptSizes sizes = npt_sizes(thread);
    return {as_diameter(across(sizes.pitch_at_end) + sizes.height), sizes.outside};
  }
  const Length gauge = bsp_sizes(thread).gauge_length.value_or(Length());
  return {as_diameter(across(shape.major) - kPipeTaper * gauge),
          as_diameter(across(shape.major) + kPipeTaper * gauge)};
}
DiameterRange made(const AcmeThread& thread, const ThreadShape& /*shape*/) {
  return screw_limits(thread).major;
}
DiameterRange made(const TrapezoidalThread& thread, const ThreadShape& shape) {
  const auto limits = screw_limits(thread);
  return limits ? limits->major : usually_made(shape.major, shape.pitch);
}
DiameterRange made(const WhitworthThread& /*thread*/, const ThreadShape& shape) {
  return usually_made(shape.major, shape.pitch);
}
DiameterRange made(const AssociationThread& /*thread*/, const ThreadShape& shape) {
  return usually_made(shape.major, shape.pitch);
}

Diameter nominal_major(const AnyThread& thread, const ThreadShape& shape) {
  const auto* pipe = std::get_if<PipeThread>(&thread);
  return pipe != nullptr && pipe->is_american() ? npt_sizes(*pipe).outside : shape.major;
}

Entry entry(AnyThread thread) {
  Entry out{std::move(thread), {}, {}, {}};
  out.shape = shape_of(out.thread);
  out.major = nominal_major(out.thread, out.shape);
  out.made = std::visit([&](const auto& one) { return made(one, out.shape); }, out.thread);
  return out;
}

// What the tables name can be read.
AnyThread named(const std::string& designation) {
  const auto thread = read_thread(designation);
  assert(thread);
  return *thread;
}

void add_screws(std::vector<Entry>& out) {
  for (const StandardThread& row : standard_unified_threads())
    out.push_back(entry(named(fmt::format("{}-{} {}", row.size, row.threads_per_inch, name_of(row.series)))));
  for (const auto rows : {coarse_metric_threads(), fine_metric_threads()}) {
    for (const StandardMetricThread& row : rows)
      out.push_back(entry(MetricThread{row.nominal, row.pitch, {}, false, {}}));
  }
  for (const StandardWhitworthThread& row : standard_whitworth_threads())
    out.push_back(entry(named(fmt::format("{}-{} {}", row.size, row.threads_per_inch, name_of(row.series)))));
  constexpr int kSmallestUsual = 16;
  for (int number = 0; number <= kSmallestUsual; ++number)
    out.push_back(entry(AssociationThread{number, false, {}}));
}

void add_pipes_and_power_screws(std::vector<Entry>& out) {
  for (const PipeSystem system : {PipeSystem::kNpt, PipeSystem::kG, PipeSystem::kR}) {
    for (PipeThread& thread : pipe_threads(system))
      out.push_back(entry(std::move(thread)));
  }
  for (const StandardAcmeThread& row : standard_acme_threads())
    out.push_back(entry(named(fmt::format("{}-{} ACME-2G", row.size, row.threads_per_inch))));
  for (const StandardTrapezoidalThread& row : standard_trapezoidal_threads())
    out.push_back(entry(TrapezoidalThread{row.nominal, row.pitch, 1, {}, false, {}}));
}

const std::vector<Entry>& all_threads() {
  static const std::vector<Entry> kAll = [] {
    std::vector<Entry> out;
    add_screws(out);
    add_pipes_and_power_screws(out);
    return out;
  }();
  return kAll;
}

ToldApart apart(const Entry& first, const Entry& second) {
  const auto differ = [](Length off) { return std::abs(off.base()) >= kToldApart.base() - 1e-9; };
  return {differ(second.major - first.major), differ(10.0 * (second.shape.pitch - first.shape.pitch)),
          profile_of(first.shape.form).flank_angle != profile_of(second.shape.form).flank_angle,
          first.shape.tapered != second.shape.tapered};
}

double misfit_of(const MeasuredThread& measured, const Entry& one) {
  const Length outside = std::max({one.made.low - measured.major, measured.major - one.made.high, Length()});
  const double major = outside / measured.major_good_to;
  const double pitch = (measured.pitch - one.shape.pitch) / measured.pitch_good_to;
  const double flanks =
      measured.flank_angle
          ? (*measured.flank_angle - profile_of(one.shape.form).flank_angle) / measured.angle_good_to
          : 0.0;
  constexpr double kSeenOtherwise = 3.0;  // hardly
  double seen = 0.0;
  if (measured.tapered && *measured.tapered != one.shape.tapered) seen += kSeenOtherwise * kSeenOtherwise;
  if (measured.rounded && *measured.rounded != has_rounded_crests(one.shape.form))
    seen += kSeenOtherwise * kSeenOtherwise;
  return std::sqrt(major * major + pitch * pitch + flanks * flanks + seen);
}

ThreadCandidate candidate(const MeasuredThread& measured, const Entry& one) {
  const Length pitch_off = measured.pitch - one.shape.pitch;
  return {one.thread, one.major,        one.shape.pitch,          one.made, measured.major - one.major,
          pitch_off,  10.0 * pitch_off, misfit_of(measured, one), {}};
}

std::optional<base::Failure> not_positive(const MeasuredThread& measured) {
  for (const auto& [what, size] :
       {std::pair{"the major diameter", across(measured.major)}, std::pair{"the pitch", measured.pitch},
        std::pair{"what the diameter is good to", measured.major_good_to},
        std::pair{"what the pitch is good to", measured.pitch_good_to}}) {
    if (!(size > Length()))
      return base::fail(base::Code::kSizeNotPositive, quantity::three_ways(size), "a measured size", what)
          .value();
  }
  if (!(measured.angle_good_to.base() > 0.0))
    return base::fail(base::Code::kSizeNotPositive, "0", "an angle", "what the flank angle is good to")
        .value();
  return std::nullopt;
}

}  // namespace

std::string to_string(const ToldApart& told) {
  std::string out;
  const auto add = [&](bool does, std::string_view what) {
    if (does) out += (out.empty() ? "" : " + ") + std::string(what);
  };
  add(told.by_major, "major diameter");
  add(told.by_pitch, "pitch over 10 threads");
  add(told.by_flanks, "flank angle");
  add(told.by_taper, "taper");
  return out.empty() ? "nothing" : out;
}

base::Result<std::vector<ThreadCandidate>> identify_thread(const MeasuredThread& measured, std::size_t most) {
  if (auto failure = not_positive(measured)) return base::fail(std::move(*failure));
  std::vector<std::pair<double, const Entry*>> ranked;
  for (const Entry& one : all_threads())
    ranked.emplace_back(misfit_of(measured, one), &one);
  std::stable_sort(ranked.begin(), ranked.end(), [&](const auto& a, const auto& b) {
    if (a.first != b.first) return a.first < b.first;
    return std::abs((measured.major - a.second->major).base()) <
           std::abs((measured.major - b.second->major).base());
  });
  ranked.resize(std::min(most, ranked.size()));
  std::vector<ThreadCandidate> out;
  for (const auto& [misfit, one] : ranked) {
    out.push_back(candidate(measured, *one));
    out.back().from_first = apart(*ranked.front().second, *one);
  }
  return out;
}

ToldApart tell_apart(const AnyThread& first, const AnyThread& second) {
  return apart(entry(first), entry(second));
}

}  // namespace sparewright::handbook
