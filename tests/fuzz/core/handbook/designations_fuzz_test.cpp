// Seeded mutators on every reader of designations: nothing crashes, every answer is a value or a failure with
// words, and what is read can be written and read again.
#include <array>
#include <cmath>
#include <iostream>
#include <random>
#include <string>

#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/clearance_holes.hpp"
#include "core/handbook/counterbores.hpp"
#include "core/handbook/drills.hpp"
#include "core/handbook/inch_fits.hpp"
#include "core/handbook/iso286.hpp"
#include "core/handbook/materials.hpp"
#include "core/handbook/metric_threads.hpp"
#include "core/handbook/screw_size.hpp"
#include "core/handbook/socket_head_screws.hpp"
#include "core/handbook/tapping.hpp"
#include "core/handbook/unified_threads.hpp"
#include "mutated_text.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
namespace unit = quantity::unit;

constexpr unsigned kSeed = 20240611;
constexpr int kTrials = 5000;

constexpr std::array kCorpus{"1/4-20 UNC-2B",
                             "#10-24",
                             "10-24",
                             "1-1/8-7 UNC-2A-LH",
                             ".250-28 UNF-3A",
                             "1-8",
                             "2-4-1/2 UNC",
                             "19/64-36 UNS",
                             "No. 8-32",
                             "M8x1.25-6g",
                             "M10×1.5",
                             "M8-LH",
                             "#7",
                             "letter F",
                             "27/64 in",
                             "6.8 mm",
                             "H7",
                             "js11",
                             "RC4",
                             "FN2",
                             "1018 cold drawn",
                             "aluminum 6061-T6",
                             "SAE 660",
                             "5/16",
                             "M24x3-4g6g"};
constexpr std::array kPieces{"#",     "-",   "/",   "x",    "×",
                             "M",     "UNC", "2B",  "LH",   ".",
                             " ",     "\t",  "0",   "9",    "99999999999999999999",
                             "1e308", "nan", "inf", "\xFF", "\xE2\x80\x93",
                             "H",     "zc",  "RC",  "in",   "mm",
                             "\"",    "",    "\n",  "cold", "steel",
                             "-1/2",  "64",  "00",  "+",    "\xC2"};

template <class Value>
bool is_told(const base::Result<Value>& result) {
  return result || !base::report(result.error()).empty();
}

void read_everything(const std::string& text) {
  const auto unified = read_unified_thread(text);
  ASSERT_TRUE(is_told(unified)) << text;
  if (unified) {
    const auto again = read_unified_thread(to_string(*unified));
    ASSERT_TRUE(again) << text << " -> " << to_string(*unified);
    EXPECT_EQ(to_string(*again), to_string(*unified)) << text;
    EXPECT_NEAR(again->major.base(), unified->major.base(), 0.002)
        << text;  // a decimal size keeps four places
    const InternalThreadLimits hole = hole_limits(*unified, hole_class(*unified).thread_class);
    EXPECT_TRUE(std::isfinite(hole.minor.low.base())) << text;
  }
  const auto metric = read_metric_thread(text);
  ASSERT_TRUE(is_told(metric)) << text;
  if (metric) {
    const auto again = read_metric_thread(to_string(*metric));
    ASSERT_TRUE(again) << text << " -> " << to_string(*metric);
    EXPECT_EQ(to_string(*again), to_string(*metric)) << text;
    EXPECT_TRUE(is_told(screw_limits_6g(*metric)));
  }
  const auto zone = read_iso286_zone(text);
  ASSERT_TRUE(is_told(zone)) << text;
  if (zone) {
    EXPECT_TRUE(is_told(iso286_deviations(*zone, Diameter::of(25, unit::millimetre))));
  }
  EXPECT_TRUE(is_told(find_drill(text)));
  EXPECT_TRUE(is_told(read_screw_size(text)));
  EXPECT_TRUE(is_told(inch_fit(text, Diameter::of(1, unit::inch))));
  EXPECT_TRUE(is_told(find_material(text)));
}

TEST(DesignationsFuzz, NothingCrashesAndWhatIsReadReadsAgain) {
  std::cout << "seed " << kSeed << ", " << kTrials << " texts\n";
  std::mt19937 random(kSeed);
  int unified = 0;
  int metric = 0;
  for (int trial = 0; trial < kTrials; ++trial) {
    const std::string text = tests::mutated_text(random, kCorpus, kPieces);
    ASSERT_NO_FATAL_FAILURE(read_everything(text));
    unified += read_unified_thread(text) ? 1 : 0;
    metric += read_metric_thread(text) ? 1 : 0;
  }
  EXPECT_GT(unified, 80) << "too few texts were threads";
  EXPECT_GT(metric, 20) << "too few texts were threads";
}

TEST(DesignationsFuzz, LookupsBySize) {
  std::mt19937 random(kSeed);
  for (int trial = 0; trial < kTrials / 2; ++trial) {
    const std::string text = tests::mutated_text(random, kCorpus, kPieces);
    EXPECT_TRUE(is_told(socket_head_screw(text)));
    EXPECT_TRUE(is_told(clearance_hole(text, ClearanceFit::kNormal)));
    EXPECT_TRUE(is_told(counterbores(text)));
    EXPECT_TRUE(is_told(charted_tap_drill(text, TapChartColumn::kNominal75)));
  }
}

}  // namespace
}  // namespace sparewright::handbook
