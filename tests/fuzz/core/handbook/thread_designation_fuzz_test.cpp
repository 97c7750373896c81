// Seeded mutators on the reader of every thread: nothing crashes, every answer is a thread or a failure with
// words, and what is read can be written and read again.
#include <array>
#include <cmath>
#include <iostream>
#include <random>
#include <string>

#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/thread_designation.hpp"
#include "mutated_text.hpp"

namespace sparewright::handbook {
namespace {

constexpr unsigned kSeed = 20240903;
constexpr int kTrials = 20000;

constexpr std::array kCorpus{"3/8-16 UNC-2A",
                             "#10-32",
                             "M8x1.25-6g",
                             "M10×1.5-4g6g LH",
                             "8x1.25",
                             "1/2-14 NPT",
                             "1-1/4-11.5 NPTF",
                             "G1/2A",
                             "G 1-1/2 B LH",
                             "R 1/2",
                             "Rc1/8",
                             "Rp 3/4",
                             "1/2 BSPP",
                             "1 BSPT",
                             "1-5 ACME",
                             "1-10 ACME-3G 2 START-LH",
                             "1.5-0.25P-0.5L-ACME-2G",
                             "Tr 20x4",
                             "Tr20x8P4-7e",
                             "Tr 40 x 14 (P7) LH",
                             "1/4-20 BSW",
                             "1/4x26 BSF",
                             "W 3/8-24",
                             "7/16-20 CEI",
                             "2 BA",
                             "No. 0 BA",
                             "1/4-20 UNC-1B",
                             "1-8",
                             "2-4-1/2 UNC"};
constexpr std::array kPieces{"G",
                             "R",
                             "Tr",
                             "M",
                             "BA",
                             "ACME",
                             "NPT",
                             "BSW",
                             "START",
                             "P",
                             "L",
                             "-",
                             "/",
                             "x",
                             "×",
                             "(",
                             ")",
                             "#",
                             "No. ",
                             " ",
                             "\t",
                             "0",
                             "9",
                             "1e308",
                             "nan",
                             "inf",
                             "0.",
                             ".",
                             "\xFF",
                             "\xC2",
                             "\xE2\x80\x93",
                             "999999999999999999999999",
                             "LH",
                             "2G",
                             "",
                             "tpi",
                             "\"",
                             "in",
                             "mm",
                             ",",
                             "\n",
                             "-1/2"};

void expect_sound(const AnyThread& thread, const std::string& text) {
  const std::string written = to_string(thread);
  const auto again = read_thread(written);
  ASSERT_TRUE(again) << text << " -> " << written;
  EXPECT_EQ(to_string(*again), written) << text;
  EXPECT_EQ(again->index(), thread.index()) << text << " -> " << written;
  const ThreadShape shape = shape_of(thread);
  for (const double size :
       {shape.major.base(), shape.pitch_diameter.base(), shape.minor.base(), shape.pitch.base()}) {
    EXPECT_TRUE(std::isfinite(size) && size > 0.0) << text << " -> " << written;
  }
  EXPECT_GT(shape.major, shape.minor) << text;
  EXPECT_GE(shape.starts, 1) << text;
}

TEST(ThreadDesignationFuzz, NothingCrashesAndWhatIsReadReadsAgain) {
  std::cout << "seed " << kSeed << ", " << kTrials << " texts\n";
  std::mt19937 random(kSeed);
  std::array<int, std::variant_size_v<AnyThread>> read{};
  for (int trial = 0; trial < kTrials; ++trial) {
    const std::string text = tests::mutated_text(random, kCorpus, kPieces);
    const auto thread = read_thread(text);
    if (!thread) {
      EXPECT_FALSE(base::report(thread.error()).empty()) << text;
      continue;
    }
    ++read.at(thread->index());
    ASSERT_NO_FATAL_FAILURE(expect_sound(*thread, text));
  }
  for (const int count : read)
    EXPECT_GT(count, 100) << "too few texts of a family were threads";
}

TEST(ThreadDesignationFuzz, AnyBytesAreAThreadOrAFailure) {
  std::mt19937 random(kSeed);
  for (int trial = 0; trial < kTrials / 4; ++trial) {
    std::string text(random() % 24, ' ');
    for (char& c : text)
      c = static_cast<char>(random() % 256);
    const auto thread = read_thread(text);
    EXPECT_TRUE(thread || !base::report(thread.error()).empty());
  }
}

}  // namespace
}  // namespace sparewright::handbook
