// The estimate of a solid's memory against what the allocator says.
#include "solid/memory.hpp"

#include <cstdio>

#include <gtest/gtest.h>
#include <malloc.h>

#include "solid_samples.hpp"

#if defined(__SANITIZE_ADDRESS__)
extern "C" std::size_t __sanitizer_get_current_allocated_bytes();
#endif

namespace sparewright::solid {
namespace {

std::size_t allocated_bytes() {
#if defined(__SANITIZE_ADDRESS__)
  return __sanitizer_get_current_allocated_bytes();
#else
  return mallinfo2().uordblks;
#endif
}

void expect_estimate_within_half_and_twice(const char* what, const shape::Recipe& recipe) {
  constexpr std::size_t kCopies = 10;
  std::vector<Solid> held;
  held.reserve(kCopies + 1);
  held.push_back(tests::solid_of(recipe));  // what the kernel sets up once for itself
  const std::size_t before = allocated_bytes();
  for (std::size_t i = 0; i < kCopies; ++i)
    held.push_back(tests::solid_of(recipe));
  const double each = static_cast<double>(allocated_bytes() - before) / static_cast<double>(kCopies);
  const auto estimate = static_cast<double>(memory_bytes(held.front()));
  std::printf("%s: %.0f bytes, estimated %.0f\n", what, each, estimate);
  EXPECT_GT(estimate, each / 2.0);
  EXPECT_LT(estimate, each * 2.0);
}

TEST(Memory, IsWithinHalfAndTwiceWhatTheAllocatorSays) {
  expect_estimate_within_half_and_twice("plate", tests::plate({}));
  expect_estimate_within_half_and_twice("bracket", tests::bracket());
  // Cross holes in a round bar: edges that are splines.
  std::vector<shape::Cutter> cross;
  for (const double x : {15.0, 40.0, 65.0})
    cross.push_back(
        shape::through_hole("cross", {x, 0.0, 25.0}, tests::kDown, tests::dia(10.0), tests::mm(50.0)));
  expect_estimate_within_half_and_twice("bar", tests::round_bar(cross));
}

}  // namespace
}  // namespace sparewright::solid
