// Seeded mutators on the readers of fasteners by name: nothing crashes, every answer is a value or a failure
// with words.
#include <array>
#include <iostream>
#include <random>
#include <string>

#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/parallel_keys.hpp"
#include "core/handbook/pins.hpp"
#include "core/handbook/screw_card.hpp"
#include "core/handbook/thread_engagement.hpp"
#include "core/handbook/woodruff_keys.hpp"
#include "mutated_text.hpp"

namespace sparewright::handbook {
namespace {

constexpr unsigned kSeed = 20251129;
constexpr int kTrials = 3000;

constexpr std::array kCorpus{"5/16-18 socket head",
                             "#10 SHCS",
                             "M8 button head",
                             "1/4-20 UNC-2A flat head machine screw",
                             "1/2 hex",
                             "M6x1 set screw",
                             "1 socket head",
                             "30 mm",
                             "1-1/4 in",
                             "606",
                             "grade 5",
                             "class 8.8",
                             "6 mm"};
constexpr std::array kPieces{"#",     "-",           "/",   "x",    "M",        "UNC", " ",  "\t",
                             "0",     "99999999999", "nan", "\xFF", "\xC2\xA0", "in",  "mm", "head",
                             "screw", "socket",      "hex", "flat", "",         "\n",  "LH", "\xC2"};

template <class Value>
bool is_told(const base::Result<Value>& result) {
  return result || !base::report(result.error()).empty();
}

TEST(FastenersFuzz, NothingCrashes) {
  std::cout << "seed " << kSeed << ", " << kTrials << " texts\n";
  std::mt19937 random(kSeed);
  const ScrewThread half = read_screw_thread("1/2-13").value();
  int cards = 0;
  int shafts = 0;
  for (int trial = 0; trial < kTrials; ++trial) {
    const std::string text = tests::mutated_text(random, kCorpus, kPieces);
    const auto card = screw_card(text);
    EXPECT_TRUE(is_told(card)) << text;
    cards += card ? 1 : 0;
    const auto keys = keyseats_for_shaft(text);
    EXPECT_TRUE(is_told(keys)) << text;
    shafts += keys ? 1 : 0;
    EXPECT_TRUE(is_told(woodruff_key(text))) << text;
    EXPECT_TRUE(is_told(dowel_pin(text))) << text;
    EXPECT_TRUE(is_told(spring_pin(text))) << text;
    EXPECT_TRUE(is_told(screw_grade(text, half))) << text;
    EXPECT_TRUE(is_told(least_engagement(text, "grade 8", "brass C360"))) << text;
  }
  EXPECT_GT(cards, 200) << "too few texts were screws";
  EXPECT_GT(shafts, 75) << "too few texts were shafts";
}

}  // namespace
}  // namespace sparewright::handbook
