// Recipes nobody would write, made in a child process: whatever comes out is a result, never a crash.
#include <cstdio>

#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include "random_shapes.hpp"
#include "solid/make_solid.hpp"
#include "solid/step.hpp"

namespace sparewright::solid {
namespace {

constexpr int kSeed = 71;
constexpr int kRecipes = 100;

// Mostly plain, sometimes as small or as large as is let through, sometimes not let through at all.
double mutated(testing::Random& random, double size) {
  switch (random.whole(0, 11)) {
    case 0:
      return shape::kShortestSide_mm;
    case 1:
      return 1e-3;
    case 2:
      return 500.0;
    case 3:
      return 0.0;
    case 4:
      return std::round(size);
    default:
      return size;
  }
}

void mutate(testing::Random& random, shape::Primitive& p) {
  std::visit(
      [&](auto& body) {
        using Body = std::decay_t<decltype(body)>;
        if constexpr (std::is_same_v<Body, shape::Box>) body.size.x = mutated(random, body.size.x);
        if constexpr (std::is_same_v<Body, shape::Cylinder>) body.radius_mm = mutated(random, body.radius_mm);
        if constexpr (std::is_same_v<Body, shape::Cone>)
          body.end_radius_mm = mutated(random, body.end_radius_mm);
        if constexpr (std::is_same_v<Body, shape::DrilledHole>)
          body.depth_mm = mutated(random, body.depth_mm);
        if constexpr (std::is_same_v<Body, shape::Prism>) body.height_mm = mutated(random, body.height_mm);
        if (random.one_in(4)) body.frame.origin = shape::snapped(body.frame.origin);
        if (random.one_in(4)) body.frame.origin = {std::round(body.frame.origin.x), 0.0, 0.0};
      },
      p);
}

std::vector<shape::Cutter> mutated_cutters(testing::Random& random) {
  std::vector<shape::Cutter> cutters;
  for (int i = random.whole(1, 6); i > 0; --i) {
    shape::Primitive body = testing::random_primitive(random, 30.0, 0.5, 40.0);
    if (random.one_in(12)) body = shape::HalfSpace{testing::random_frame(random, 30.0)};
    mutate(random, body);
    cutters.push_back({"cut " + std::to_string(i), body, static_cast<shape::Open>(random.whole(0, 63))});
    if (random.one_in(5)) cutters.push_back(cutters.back());  // the very same again
  }
  return cutters;
}

// What the child does. Counts by exit status would lose the numbers, so it prints them.
void make_all() {
  testing::Random random(kSeed);
  int solids = 0;
  int refused = 0;
  int flagged = 0;
  for (int i = 0; i < kRecipes; ++i) {
    shape::Primitive blank = testing::random_primitive(random, 5.0, 5.0, 60.0);
    const auto recipe = shape::Recipe::make({"blank", blank}, mutated_cutters(random));
    if (!recipe) {
      ++refused;
      continue;
    }
    const auto made = make_solid(*recipe);
    if (!made) {
      ++flagged;
      continue;
    }
    ++solids;
    if (i % 10 == 0 && !write_step(made->solid, "mutant")) std::_Exit(3);
  }
  std::printf("seed %d: %d solids, %d recipes refused, %d flagged\n", kSeed, solids, refused, flagged);
  std::fflush(stdout);
  std::_Exit(solids > kRecipes / 3 && refused > 0 ? 0 : 4);
}

TEST(RecipeMutator, NothingCrashesTheChild) {
  std::fflush(stdout);
  const pid_t child = fork();
  ASSERT_GE(child, 0);
  if (child == 0) make_all();
  int status = 0;
  ASSERT_EQ(waitpid(child, &status, 0), child);
  ASSERT_FALSE(WIFSIGNALED(status)) << "signal " << WTERMSIG(status);
  EXPECT_EQ(WEXITSTATUS(status), 0);
}

}  // namespace
}  // namespace sparewright::solid
