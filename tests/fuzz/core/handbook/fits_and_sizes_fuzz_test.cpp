// Seeded mutators on the readers of fits, bearings, tapers, sizes and duties: nothing crashes, every answer
// is a value or a failure with words, and what is read holds what its header promises.
#include <array>
#include <cmath>
#include <iostream>
#include <random>
#include <string>

#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/bearings.hpp"
#include "core/handbook/cutting_values.hpp"
#include "core/handbook/fits.hpp"
#include "core/handbook/recommended_fits.hpp"
#include "core/handbook/size_conversion.hpp"
#include "core/handbook/tapers.hpp"
#include "mutated_text.hpp"

namespace sparewright::handbook {
namespace {

namespace unit = quantity::unit;

constexpr unsigned kSeed = 20261129;
constexpr int kTrials = 2500;

constexpr std::array kCorpus{"25 mm H7/g6",
                             "\u00D825 H7/g6",
                             "1.0000 in RC4",
                             "1-3/8 LC2",
                             "2 ft 3-1/2 in",
                             "34 mm H11/c11",
                             "300 mm JS7/h6",
                             "0.05 in FN1",
                             "25 mm H7-p6",
                             "6204-2RS",
                             "62042RS C3",
                             "608ZZ",
                             "MT2",
                             "2MT",
                             "Jacobs 2 short",
                             "B&S 9",
                             "Morse taper No. 3",
                             "R8",
                             "#4",
                             "2/0",
                             "1-27/32 in",
                             "46.83125 mm",
                             "letter F",
                             "#7",
                             "sliding",
                             "finish turning",
                             "high-speed steel",
                             "soft jaw on steel",
                             "0.001 mm t5/T5",
                             "24 mm T7/h6"};
constexpr std::array kPieces{
    "#",     "-",   "/",   ".",    " ",    "\t",     "0",  "9",     "99999999999999999999",
    "1e308", "nan", "inf", "\xFF", "\xC3", "\u00D8", "H",  "zc",    "RC",
    "in",    "mm",  "\"",  "",     "\n",   "mt",     "jt", "2rs",   "-1/2",
    "64",    "00",  "+",   "js",   "IT",   "g6",     "H7", "\u2013"};

// A failure says something a person can act on; a value is true.
template <class Result>
bool has_value_or_words(const Result& result) {
  if (result) return true;
  EXPECT_FALSE(base::report(result.error()).empty());
  EXPECT_FALSE(base::sentence(result.error()).empty());
  return false;
}

void expect_sound(const Fit& fit, const std::string& text) {
  EXPECT_LT(fit.hole.lower, fit.hole.upper) << text;
  EXPECT_LT(fit.shaft.lower, fit.shaft.upper) << text;
  EXPECT_GT(fit.nominal, quantity::Diameter()) << text;
  EXPECT_LT(fit.least_clearance(), fit.most_clearance()) << text;
  const auto again = fit_at(fit.name, fit.nominal);
  ASSERT_TRUE(again) << text;
  EXPECT_EQ(again->hole.upper, fit.hole.upper) << text;
}

TEST(FuzzFitsAndSizes, EveryTextIsAValueOrAFailureWithWords) {
  std::cout << "seed " << kSeed << ", " << kTrials << " texts\n";
  std::mt19937 random(kSeed);
  int read = 0;
  for (int i = 0; i < kTrials; ++i) {
    const std::string text = tests::mutated_text(random, kCorpus, kPieces);
    if (const auto fit = read_fit(text); has_value_or_words(fit)) {
      expect_sound(*fit, text);
      ++read;
    }
    if (const auto zone = read_zone_at_size(text); has_value_or_words(zone)) {
      EXPECT_GT(zone->limits.width(), quantity::Length()) << text;
    }
    if (const auto bearing = find_bearing(text); has_value_or_words(bearing)) {
      EXPECT_LT(bearing->bearing.bore, bearing->bearing.outside) << text;
      ++read;
    }
    if (const auto taper = find_taper(text); has_value_or_words(taper)) {
      EXPECT_EQ(to_string(*find_taper(to_string(*taper))), to_string(*taper)) << text;
      ++read;
    }
    if (const auto size = convert_size(text); has_value_or_words(size)) {
      EXPECT_LE(std::abs(size->nearest_64th.error.in(unit::inch)), 1.0 / 128 + 1e-7) << text;
      EXPECT_LE(std::abs(size->thou_off.in(unit::thou)), 0.5 + 1e-5) << text;
      ++read;
    }
    has_value_or_words(find_taper_pin(text));
    has_value_or_words(recommended_fits(text));
    has_value_or_words(find_operation(text));
    has_value_or_words(find_tool_material(text));
  }
  EXPECT_GT(read, kTrials / 20) << "the mutator hardly ever makes a text that can be read";
}

}  // namespace
}  // namespace sparewright::handbook
