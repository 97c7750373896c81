#include "core/handbook/metric_threads.hpp"

#include <array>
#include <cassert>
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"
#include "core/handbook/thread_formulas.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

enum class MetricTolerance { kAllowanceG, kMajorExternal, kMinorInternal, kPitchExternal, kPitchInternal };

// Grade 6 and position g as a page printed them.
struct MetricToleranceRow {
  MetricTolerance quantity;
  Length pitch;
  std::optional<Diameter> over;
  std::optional<Diameter> up_to;
  Length tolerance;
  Source source;
};
constexpr MetricToleranceRow kPrinted[] = {
#include "generated/core/handbook/metric_thread_tolerances.inc"
};

// All grades, from memory.
struct MetricGradesRow {
  MetricTolerance quantity;
  Length pitch;
  std::optional<Diameter> over;
  std::optional<Diameter> up_to;
  std::optional<Length> grade3, grade4, grade5, grade6, grade7, grade8, grade9;
  Source source;

  [[nodiscard]] std::optional<Length> grade(int number) const {
    constexpr int kFirst = 3;
    const std::array all{grade3, grade4, grade5, grade6, grade7, grade8, grade9};
    const auto at = static_cast<std::size_t>(number - kFirst);
    return at < all.size() ? all.at(at) : std::nullopt;
  }
};
constexpr MetricGradesRow kGrades[] = {
#include "generated/core/handbook/metric_thread_grades.inc"
};

struct MetricPositionsRow {
  Length pitch;
  std::optional<Length> e;
  std::optional<Length> f;
  Length g;
  Source source;
};
constexpr MetricPositionsRow kPositions[] = {
#include "generated/core/handbook/metric_thread_positions.inc"
};

bool same(Length a, Length b) {
  return std::abs((a - b).base()) < kSizeSlackMm;
}

struct Value {
  double mm = 0.0;
  Source source;
};

template <class Row>
bool is_for(const Row& row, MetricTolerance quantity, const MetricThread& thread) {
  return row.quantity == quantity && same(row.pitch, thread.pitch) &&
         in_range(thread.major, row.over, row.up_to);
}

std::optional<Value> printed(MetricTolerance quantity, const MetricThread& thread) {
  for (const MetricToleranceRow& row : kPrinted) {
    if (is_for(row, quantity, thread)) return Value{row.tolerance.in(unit::millimetre), row.source};
  }
  return std::nullopt;
}

// "pitches 0.75, 1, 1.25, 1.5 mm on M8", or what the whole grid has.
std::string pitches_at(Diameter major) {
  std::string out;
  for (const MetricGradesRow& row : kGrades) {
    if (row.quantity != MetricTolerance::kPitchExternal || !in_range(major, row.over, row.up_to)) continue;
    out += fmt::format("{}{}", out.empty() ? "pitches " : ", ", row.pitch.in(unit::millimetre));
  }
  if (out.empty()) return "metric threads over 0.99 up to 300 mm";
  return out + fmt::format(" mm on M{}", major.in(unit::millimetre));
}

std::string grades_of(const MetricGradesRow& row) {
  std::string out;
  for (int grade = 3; grade <= 9; ++grade) {
    if (row.grade(grade)) out += fmt::format("{}{}", out.empty() ? "grades " : ", ", grade);
  }
  return out;
}

base::Result<Value> tolerance(MetricTolerance quantity, int grade, const MetricThread& thread) {
  if (grade == 6) {
    if (const auto value = printed(quantity, thread)) return *value;
  }
  const std::string subject = fmt::format("the tolerance of grade {}", grade);
  for (const MetricGradesRow& row : kGrades) {
    if (!is_for(row, quantity, thread)) continue;
    if (const auto value = row.grade(grade)) return Value{value->in(unit::millimetre), row.source};
    return not_tabled(subject, to_string(thread), grades_of(row));
  }
  return not_tabled(subject, to_string(thread), pitches_at(thread.major));
}

// How far a position lies from the basic profile, into the metal.
base::Result<Value> fundamental_deviation(char position, const MetricThread& thread) {
  if (position == 'h' || position == 'H') return Value{0.0, kThreadProfile};
  if (position == 'g' || position == 'G') {
    if (const auto value = printed(MetricTolerance::kAllowanceG, thread)) return *value;
  }
  for (const MetricPositionsRow& row : kPositions) {
    if (!same(row.pitch, thread.pitch)) continue;
    const std::optional<Length> value = position == 'e' ? row.e : position == 'f' ? row.f : row.g;
    if (value) return Value{value->in(unit::millimetre), row.source};
    return not_tabled(fmt::format("position {}", position), to_string(thread),
                      row.f ? "positions f, g and h at this pitch" : "positions g and h at this pitch");
  }
  return not_tabled(fmt::format("position {}", position), to_string(thread), pitches_at(thread.major));
}

// Keeps the source of the last value that is not published; where all are, of the first.
class Sources {
 public:
  double take(const Value& value) {
    const bool zero = value.mm == 0.0;
    if (!zero && (source_.text.empty() || value.source.basis != Basis::kPublished)) source_ = value.source;
    return value.mm;
  }
  [[nodiscard]] const Source& source() const { return source_; }

 private:
  Source source_;
};

Diameter mm_diameter(double mm) {
  constexpr int kPlaces = 3;
  return Diameter::of(quantity::rounded(mm, kPlaces), unit::millimetre);
}

DiameterRange mm_range(double low, double high) {
  return {mm_diameter(low), mm_diameter(high)};
}

// The four numbers a class asks the grid for.
struct Asked {
  Value pitch_deviation, crest_deviation, pitch_tolerance, crest_tolerance;
};

base::Result<Asked> ask(const MetricThread& thread, const MetricClass& thread_class) {
  const bool screw = thread_class.is_screw();
  const auto crest_deviation = fundamental_deviation(thread_class.crest.position, thread);
  const auto crest_tolerance =
      tolerance(screw ? MetricTolerance::kMajorExternal : MetricTolerance::kMinorInternal,
                thread_class.crest.grade, thread);
  const auto pitch_deviation = fundamental_deviation(thread_class.pitch.position, thread);
  const auto pitch_tolerance =
      tolerance(screw ? MetricTolerance::kPitchExternal : MetricTolerance::kPitchInternal,
                thread_class.pitch.grade, thread);
  for (const auto* one : {&pitch_tolerance, &crest_tolerance, &pitch_deviation, &crest_deviation}) {
    if (!*one) return tl::unexpected(one->error());
  }
  return Asked{*pitch_deviation, *crest_deviation, *pitch_tolerance, *crest_tolerance};
}

}  // namespace

BasicThread basic_sizes(const MetricThread& thread) {
  const double major_mm = thread.major.in(unit::millimetre);
  const double pitch_mm = thread.pitch.in(unit::millimetre);
  return {thread.major, Diameter::of(pitch_diameter_mm(major_mm, pitch_mm), unit::millimetre),
          Diameter::of(internal_minor_mm(major_mm, pitch_mm), unit::millimetre), kThreadProfile};
}

base::Result<ExternalThreadLimits> screw_limits(const MetricThread& thread, const MetricClass& thread_class) {
  assert(thread_class.is_screw());
  const auto asked = ask(thread, thread_class);
  if (!asked) return tl::unexpected(asked.error());
  Sources from;
  const double major = thread.major.in(unit::millimetre)-from.take(asked->crest_deviation);
  const double allowance = from.take(asked->pitch_deviation);
  const double pitch = basic_sizes(thread).pitch.in(unit::millimetre)-allowance;

  ExternalThreadLimits limits;
  limits.thread_class = to_string(thread_class);
  limits.allowance = Length::of(allowance, unit::millimetre);
  limits.major = mm_range(major - from.take(asked->crest_tolerance), major);
  limits.pitch = mm_range(pitch - from.take(asked->pitch_tolerance), pitch);
  limits.flat_root_max = mm_diameter(thread.major.in(unit::millimetre)-allowance -
                                     kInternalMinorPerPitch * thread.pitch.in(unit::millimetre));
  limits.source = from.source();
  return limits;
}

base::Result<InternalThreadLimits> hole_limits(const MetricThread& thread, const MetricClass& thread_class) {
  assert(!thread_class.is_screw());
  const auto asked = ask(thread, thread_class);
  if (!asked) return tl::unexpected(asked.error());
  const BasicThread basic = basic_sizes(thread);
  Sources from;
  const double allowance = from.take(asked->pitch_deviation);
  const double pitch = basic.pitch.in(unit::millimetre) + allowance;
  const double minor = basic.minor.in(unit::millimetre) + from.take(asked->crest_deviation);

  InternalThreadLimits limits;
  limits.thread_class = to_string(thread_class);
  limits.major_min = mm_diameter(thread.major.in(unit::millimetre) + allowance);
  limits.pitch = mm_range(pitch, pitch + from.take(asked->pitch_tolerance));
  limits.minor = mm_range(minor, minor + from.take(asked->crest_tolerance));
  limits.source = from.source();
  return limits;
}

base::Result<ExternalThreadLimits> screw_limits_6g(const MetricThread& thread) {
  return screw_limits(thread, kClass6g);
}
base::Result<InternalThreadLimits> hole_limits_6h(const MetricThread& thread) {
  return hole_limits(thread, kClass6h);
}

base::Result<NormalEngagement> normal_engagement(const MetricThread& thread) {
  constexpr Source kLengths{"ISO 965-1, groups of lengths of engagement by formula", "", Basis::kFromMemory};
  for (const MetricGradesRow& row : kGrades) {
    if (!row.over || !in_range(thread.major, row.over, row.up_to)) continue;
    const double fifth_root = std::pow(row.over->in(unit::millimetre), 0.2);
    return NormalEngagement{2.24 * fifth_root * thread.pitch, 6.7 * fifth_root * thread.pitch, kLengths};
  }
  return not_tabled("the length of engagement", to_string(thread), "metric threads over 0.99 up to 300 mm");
}

quantity::Area tensile_stress_area(const MetricThread& thread) {
  return quantity::Area::of(
      metric_stress_area_mm2(thread.major.in(unit::millimetre), thread.pitch.in(unit::millimetre)),
      unit::square_millimetre);
}

}  // namespace sparewright::handbook
