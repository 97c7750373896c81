// Invariants of the handbook: inverses, order, widths, round trips.
#include <array>
#include <cmath>
#include <string>

#include <gtest/gtest.h>

#include "core/handbook/drills.hpp"
#include "core/handbook/iso286.hpp"
#include "core/handbook/metric_threads.hpp"
#include "core/handbook/tapping.hpp"
#include "core/handbook/thread_formulas.hpp"
#include "core/handbook/unified_threads.hpp"
#include "property.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using tests::holds;
namespace unit = quantity::unit;

TEST(HandbookProperty, PercentAndHoleAreInverse) {
  EXPECT_TRUE(holds("the hole for a percentage leaves that percentage", [] {
    const double major = *rc::gen::inRange(10, 6000) / 100.0;
    const double pitch = major * *rc::gen::inRange(2, 40) / 100.0;
    const double percent = *rc::gen::inRange(1, 100);
    const double hole = hole_for_percent_mm(major, percent, pitch);
    RC_ASSERT(std::abs(percent_of_thread(major, hole, pitch) - percent) < 1e-6);
  }));
}

TEST(HandbookProperty, DrillsAroundEncloseTheSize) {
  int both = 0;
  EXPECT_TRUE(holds("the nearest drills stand on either side with none between", [&] {
    const auto series = *rc::gen::element(DrillSeries::kNumber, DrillSeries::kLetter, DrillSeries::kFraction,
                                          DrillSeries::kMetric);
    const Diameter size = Diameter::of(*rc::gen::inRange(1, 300000) / 10000.0, unit::millimetre);
    const DrillsAround around = drills_around(size, series);
    if (around.at_or_below) RC_ASSERT(around.at_or_below->diameter.base() <= size.base() + 1e-6);
    if (around.at_or_above) RC_ASSERT(around.at_or_above->diameter.base() >= size.base() - 1e-6);
    if (!around.at_or_below || !around.at_or_above) return;
    ++both;
    for (const Drill& drill : drills(series)) {
      RC_ASSERT(drill.diameter <= around.at_or_below->diameter ||
                drill.diameter >= around.at_or_above->diameter);
    }
  }));
  EXPECT_GT(both, 100);
}

TEST(HandbookProperty, ZonesAreAsWideAsTheirGrade) {
  int tabled = 0;
  EXPECT_TRUE(holds("upper less lower is the grade, holes mirror shafts of the same letter", [&] {
    constexpr std::array kLetters{"a", "b", "c", "d", "e", "f", "g", "h", "js",
                                  "k", "m", "n", "p", "r", "s", "t", "u"};
    const std::string shaft = *rc::gen::elementOf(kLetters);
    const int grade = *rc::gen::inRange(1, 15);
    const Diameter nominal = Diameter::of(*rc::gen::inRange(1, 50000) / 100.0, unit::millimetre);
    const auto deviations = iso286_deviations(Iso286Zone{FitSide::kShaft, shaft, grade}, nominal);
    if (!deviations) return;
    ++tabled;
    const auto width = iso286_tolerance(grade, nominal);
    RC_ASSERT(width.has_value());
    RC_ASSERT(std::abs((deviations->upper - deviations->lower).base() - width->width.base()) < 1e-9);
    std::string letter;
    for (const char c : shaft)
      letter += static_cast<char>(c - 'a' + 'A');
    if (letter > "H") return;
    const auto hole = iso286_deviations(Iso286Zone{FitSide::kHole, letter, grade}, nominal);
    RC_ASSERT(hole.has_value());
    RC_ASSERT(std::abs((hole->lower + deviations->upper).base()) < 1e-9);  // EI = -es
  }));
  EXPECT_GT(tabled, 200);
}

TEST(HandbookProperty, DesignationsReadBackAsTheyAreWritten) {
  EXPECT_TRUE(holds("a thread written out is read as itself, with nothing assumed", [] {
    const auto all = standard_unified_threads();
    const StandardThread& standard = all[*rc::gen::inRange<std::size_t>(0, all.size())];
    UnifiedThread thread;
    thread.size = standard.size;
    thread.threads_per_inch = standard.threads_per_inch;
    thread.series = standard.series;
    thread.left_hand = *rc::gen::arbitrary<bool>();
    if (*rc::gen::arbitrary<bool>())
      thread.thread_class = *rc::gen::element(UnifiedClass::k2A, UnifiedClass::k3B);
    const auto again = read_unified_thread(to_string(thread));
    RC_ASSERT(again.has_value());
    RC_ASSERT(to_string(*again) == to_string(thread));
    for (const std::string& sentence : again->assumed) {
      RC_ASSERT(sentence.find("not as a numbered size") != std::string::npos);  // 1-8 UNC and the like
    }
  }));
}

TEST(HandbookProperty, LimitsStandInOrder) {
  EXPECT_TRUE(
      holds("a screw's limits lie below the hole's and low below high, for every standard thread", [] {
        const auto all = standard_unified_threads();
        const StandardThread& standard = all[*rc::gen::inRange<std::size_t>(0, all.size())];
        UnifiedThread thread =
            read_unified_thread(std::string(standard.size) + "-" + std::to_string(standard.threads_per_inch) +
                                " " + std::string(name_of(standard.series)))
                .value();
        const bool loose = *rc::gen::arbitrary<bool>();
        const ExternalThreadLimits screw =
            screw_limits(thread, loose ? UnifiedClass::k2A : UnifiedClass::k3A);
        const InternalThreadLimits hole = hole_limits(thread, loose ? UnifiedClass::k2B : UnifiedClass::k3B);
        RC_ASSERT(screw.major.low < screw.major.high && screw.pitch.low < screw.pitch.high);
        RC_ASSERT(hole.pitch.low < hole.pitch.high && hole.minor.low < hole.minor.high);
        RC_ASSERT(screw.pitch.high.base() <= hole.pitch.low.base() + 1e-9);
        RC_ASSERT(screw.major.high.base() <= hole.major_min.base() + 1e-9);
        RC_ASSERT(screw.flat_root_max.base() <=
                  hole.minor.low.base() + 0.02);  // the hole's is rounded to 0.001 in
      }));
}

TEST(HandbookProperty, TapDrillsKeepToTheRange) {
  EXPECT_TRUE(
      holds("every drill offered leaves a percentage in the range, and none that would is missing", [] {
        const double major_mm = *rc::gen::inRange(200, 2400) / 100.0;
        const double pitch_mm = major_mm * *rc::gen::inRange(5, 25) / 100.0;
        const Diameter major = Diameter::of(major_mm, unit::millimetre);
        const auto pitch = quantity::Length::of(pitch_mm, unit::millimetre);
        constexpr std::array kSeries{DrillSeries::kNumber, DrillSeries::kMetric};
        const auto offered = tap_drills(major, pitch, kSeries, {55, 75});
        std::size_t would = 0;
        for (const DrillSeries series : kSeries) {
          for (const Drill& drill : drills(series)) {
            const double percent = percent_of_thread(major_mm, drill.diameter.base(), pitch_mm);
            would += percent >= 55 && percent <= 75 ? 1 : 0;
          }
        }
        RC_ASSERT(offered.size() >= would);  // a drill within a nanometre of the end may be offered too
        for (const TapDrill& one : offered)
          RC_ASSERT(one.percent > 54.99 && one.percent < 75.01);
      }));
}

}  // namespace
}  // namespace sparewright::handbook
