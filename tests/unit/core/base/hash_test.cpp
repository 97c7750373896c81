#include "core/base/hash.hpp"

#include <bit>
#include <cmath>
#include <cstdint>
#include <limits>
#include <set>
#include <string>
#include <vector>

#include <gtest/gtest.h>

namespace sparewright::base {
namespace {

TEST(Canonical, MakesOneZeroAndOneNaN) {
  const auto bits = [](double x) { return std::bit_cast<std::uint64_t>(x); };
  EXPECT_EQ(bits(canonical(-0.0)), bits(0.0));
  EXPECT_EQ(bits(canonical(-std::nan("7"))), bits(canonical(std::numeric_limits<double>::signaling_NaN())));
  EXPECT_TRUE(std::isnan(canonical(std::nan(""))));
  for (const double kept : {1.375, -1.375, std::numeric_limits<double>::infinity(), 5e-324}) {
    EXPECT_EQ(bits(canonical(kept)), bits(kept));
  }
}

// Worked out once with a second program written from the steps in the header: they are the same on every
// machine and in every build.
TEST(Hasher, KeepsItsValuesForGood) {
  EXPECT_EQ(to_hex(Hasher().done()), "63f1068e19056a76c9161866ef33bada");
  EXPECT_EQ(to_hex(Hasher().add("pivot bore").add(22.225).add(30).add(true).done()),
            "4fbbeacb0098340627dc394b37c8e527");
}

TEST(Hasher, WritesThirtyTwoDigits) {
  EXPECT_EQ(to_hex(Fingerprint{1, 0xAB}), "000000000000000100000000000000ab");
}

TEST(Hasher, EqualInputsGiveEqualFingerprints) {
  EXPECT_EQ(Hasher().add("bore").add(22.225).done(), Hasher().add(std::string("bore")).add(22.225).done());
  EXPECT_EQ(Hasher().add(-0.0).done(), Hasher().add(0.0).done());
  EXPECT_EQ(Hasher().add(std::nan("1")).done(), Hasher().add(std::nan("2")).done());
}

TEST(Hasher, DifferentInputsGiveDifferentFingerprints) {
  const Fingerprint inner = Hasher().add(1).done();
  const std::vector<Fingerprint> all{
      Hasher().done(),
      Hasher().add(0).done(),
      Hasher().add(1).done(),
      Hasher().add(-1).done(),
      Hasher().add(0).add(0).done(),
      Hasher().add("ab").add("c").done(),
      Hasher().add("a").add("bc").done(),
      Hasher().add("abc").done(),
      Hasher().add(std::string_view("a\0", 2)).done(),
      Hasher().add("a").done(),
      Hasher().add("12345678").done(),
      Hasher().add("123456789").done(),
      Hasher().add(1.0).done(),
      Hasher().add(std::nextafter(1.0, 2.0)).done(),
      Hasher().add(1.0).add(2.0).done(),
      Hasher().add(2.0).add(1.0).done(),
      Hasher().add(inner).done(),
      Hasher().add(inner).add(inner).done(),
  };
  EXPECT_EQ(std::set<Fingerprint>(all.begin(), all.end()).size(), all.size());
}

// One flipped bit of the input flips half the bits of the fingerprint, give or take. 64 inputs of 128 bits
// each have a mean of 64 flips with a standard error of sqrt(128)/2/8 = 0.71; five of those are allowed.
TEST(Hasher, SpreadsEveryBit) {
  const Fingerprint plain = Hasher().add(std::uint64_t{0}).done();
  int flips = 0;
  for (unsigned bit = 0; bit < 64; ++bit) {
    const Fingerprint other = Hasher().add(std::uint64_t{1} << bit).done();
    flips += std::popcount(plain.high ^ other.high) + std::popcount(plain.low ^ other.low);
  }
  EXPECT_NEAR(flips / 64.0, 64.0, 5 * 0.71);
}

TEST(Fingerprint, IsOrdered) {
  EXPECT_LT((Fingerprint{0, 9}), (Fingerprint{1, 0}));
  EXPECT_LT((Fingerprint{1, 0}), (Fingerprint{1, 1}));
}

}  // namespace
}  // namespace sparewright::base
