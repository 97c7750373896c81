// Threads by their major diameter and their pitch, and modules of gears.
#include <array>
#include <cmath>

#include <fmt/format.h>

#include "core/handbook/gear_pitches.hpp"
#include "core/handbook/metric_threads.hpp"
#include "core/handbook/unified_threads.hpp"
#include "core/handbook/whitworth_threads.hpp"
#include "core/intent/collecting.hpp"

namespace sparewright::intent {
namespace {

constexpr double kInch_mm = 25.4;
constexpr const char* kAsCut = "as a screw is cut";
constexpr const char* kMajor = "outside of a thread";

// From the least of the usual class up to the nominal size: finer classes have no allowance.
Row unified_row(const handbook::StandardThread& standard) {
  const auto thread =
      handbook::read_unified_thread(fmt::format("{}-{}", standard.size, standard.threads_per_inch));
  if (!thread) return {};  // every row of the table can be read: a test sees to it
  const double size = thread->major.base();
  const auto limits = handbook::screw_limits(*thread, handbook::UnifiedClass::k2A);
  Made made{{0.85, limits.major.low.base() - size, limits.major.high.base() - size, kAsCut},
            {0.15, limits.major.low.base() - size, 0.0, kAsCut}};
  return {to_string(*thread), kMajor, size, std::move(made), handbook::cite(standard.source)};
}

Row metric_row(const handbook::StandardMetricThread& standard) {
  const handbook::MetricThread thread{standard.nominal, standard.pitch, {}, false, {}};
  const double size = standard.nominal.base();
  const auto limits = handbook::screw_limits_6g(thread);
  constexpr double kUnder = 0.15;  // of the pitch, where no limits are tabled (common practice)
  const double low = limits ? limits->major.low.base() - size : -kUnder * standard.pitch.base();
  const double high = limits ? limits->major.high.base() - size : 0.0;
  Made made =
      high < 0.0 ? Made{{0.85, low, high, kAsCut}, {0.15, low, 0.0, kAsCut}} : Made{{1.0, low, 0.0, kAsCut}};
  return {to_string(thread), kMajor, size, std::move(made),
          limits ? handbook::cite(limits->source) : "ISO 261 sizes (common practice)"};
}

// No limits are tabled: up to 0.15 of the pitch under (common practice).
Row british_row(std::string name, double size, double pitch, std::string source) {
  constexpr double kUnder = 0.15;
  return {std::move(name), kMajor, size, made_within(-kUnder * pitch, 0.0, kAsCut), std::move(source)};
}

Table unified() {
  std::vector<Row> rows;
  for (const handbook::StandardThread& standard : handbook::standard_unified_threads()) {
    if (Row row = unified_row(standard); row.size_mm > 0.0) rows.push_back(std::move(row));
  }
  return Table(std::move(rows));
}

Table metric() {
  std::vector<Row> rows;
  for (const auto standards : {handbook::coarse_metric_threads(), handbook::fine_metric_threads()}) {
    for (const handbook::StandardMetricThread& standard : standards)
      rows.push_back(metric_row(standard));
  }
  return Table(std::move(rows));
}

Table whitworth() {
  std::vector<Row> rows;
  for (const handbook::StandardWhitworthThread& row : handbook::standard_whitworth_threads()) {
    const auto thread = handbook::read_whitworth_thread(
        fmt::format("{}-{} {}", row.size, row.threads_per_inch, name_of(row.series)));
    if (!thread) continue;
    rows.push_back(british_row(to_string(*thread), thread->major.base(), thread->pitch().base(),
                               handbook::cite(row.source)));
  }
  return Table(std::move(rows));
}

Table association() {
  std::vector<Row> rows;
  constexpr int kSmallestUsual = 10;
  for (int number = 0; number <= kSmallestUsual; ++number) {
    const handbook::AssociationThread thread{number, false, {}};
    rows.push_back(british_row(fmt::format("{} BA", number), thread.major().base(), thread.pitch().base(),
                               "BS 93 (rule from memory)"));
  }
  return Table(std::move(rows));
}

// A pitch over some threads: cut as true as it can be read.
Made made_as_pitch() {
  constexpr double kLead_mm = 0.002;  // of one pitch (a choice made here)
  return made_within(-kLead_mm, kLead_mm, "as a thread is cut");
}

// Unified, Whitworth and pipe threads, and leadscrews (from memory).
Table per_inch() {
  constexpr std::array kPerInch{80.0, 72.0, 64.0, 56.0, 48.0, 44.0, 40.0, 36.0, 32.0, 28.0, 27.0,
                                26.0, 24.0, 22.0, 20.0, 19.0, 18.0, 16.0, 14.0, 13.0, 12.0, 11.5,
                                11.0, 10.0, 9.0,  8.0,  7.0,  6.0,  5.0,  4.5,  4.0,  3.0,  2.0};
  std::vector<Row> rows;
  for (const double n : kPerInch) {
    rows.push_back({fmt::format("{:g} threads per inch", n), "threads per inch", kInch_mm / n,
                    made_as_pitch(), "ASME B1.1, BS 84 (from memory)"});
  }
  return Table(std::move(rows));
}

Table pitches() {
  constexpr std::array kPitches_mm{0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6, 0.7, 0.75, 0.8, 1.0, 1.25,
                                   1.5, 1.75, 2.0, 2.5,  3.0, 3.5,  4.0, 4.5, 5.0, 5.5,  6.0, 8.0, 10.0};
  std::vector<Row> rows;
  for (const double pitch : kPitches_mm)
    rows.push_back(
        {metric_name(pitch), "metric pitch", pitch, made_as_pitch(), "ISO 261, ISO 2904 (from memory)"});
  return Table(std::move(rows));
}

// The outside is turned a little under, 1 part in 100 at the most (a choice made here).
Table modules(handbook::GearPitchSystem system, int preference) {
  const bool is_inch = system == handbook::GearPitchSystem::kDiametralPitch;
  std::vector<Row> rows;
  for (const handbook::GearPitch& pitch : handbook::gear_pitches()) {
    if (pitch.system != system || pitch.preference != preference) continue;
    const double module = pitch.module().base();
    rows.push_back({to_string(pitch), is_inch ? "diametral pitch" : "module", module,
                    made_within(-0.01 * module, 0.002 * module, "as a gear is turned outside"),
                    handbook::cite(pitch.source)});
  }
  return Table(std::move(rows));
}

}  // namespace

void collect_threads(Collector& found) {
  const MeasuredUp& measured = found.measured();
  const bool may_be = measured.role == Role::kShaft ||
                      (measured.role == Role::kOther && measured.kind == quantity::Kind::kDiameter);
  if (!may_be) return;
  static const Table kUnified = unified();
  static const Table kMetric = metric();
  static const Table kWhitworth = whitworth();
  static const Table kAssociation = association();
  found.add_table(kUnified, {0.06, 0.002});
  found.add_table(kMetric, {0.002, 0.06});
  found.add_table(kWhitworth, {0.008, 0.0005});
  found.add_table(kAssociation, {0.004, 0.0005});
}

void collect_pitches(Collector& found) {
  static const Table kPerInch = per_inch();
  static const Table kPitches = pitches();
  found.add_table(kPerInch, {0.9, 0.03});
  found.add_table(kPitches, {0.03, 0.9});
}

void collect_modules(Collector& found) {
  using handbook::GearPitchSystem;
  static const Table kInch = modules(GearPitchSystem::kDiametralPitch, 1);
  static const Table kOtherInch = modules(GearPitchSystem::kDiametralPitch, 2);
  static const Table kMetric = modules(GearPitchSystem::kModule, 1);
  static const Table kOtherMetric = modules(GearPitchSystem::kModule, 2);
  found.add_table(kInch, {0.7, 0.03});
  found.add_table(kOtherInch, {0.2, 0.01});
  found.add_table(kMetric, {0.03, 0.7});
  found.add_table(kOtherMetric, {0.01, 0.2});
}

}  // namespace sparewright::intent
