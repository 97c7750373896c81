// Recipes nobody would write, made in a child process: whatever comes out is a failure that names a feature, or a solid
// that rays agree with; never a crash, never a wait without end.
//
// SPAREWRIGHT_MUTANTS and SPAREWRIGHT_FIRST_MUTANT in the environment set how many, and the first seed; tools/mutants.sh
// does so.
#include <algorithm>
#include <array>
#include <chrono>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <stdexcept>

#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include "core/base/messages.hpp"
#include "core/shape/volume.hpp"
#include "recipe_mutants.hpp"
#include "solid/kernel_shape.hpp"
#include "solid/make_solid.hpp"

namespace sparewright::solid {
namespace {

constexpr unsigned kMostSeconds = 120;  // for one recipe, under sanitizers and beside others

int from_environment(const char* name, int otherwise) {
  const char* set = std::getenv(name);
  return set == nullptr ? otherwise : std::atoi(set);
}

// What became of one recipe. The child sends one before it starts (kBegun) and one when it is done.
enum class Outcome : int { kBegun, kSolid, kRefused, kFlagged, kNameless, kWrong };
struct Message {
  int seed = 0;
  Outcome outcome = Outcome::kBegun;
};

bool names_a_feature(const base::Failure& failure, const tests::Mutant& mutant) {
  const auto named = [&](const std::string& name) { return failure.subject.find(name) != std::string::npos; };
  return named("block") || std::any_of(mutant.cutters.begin(), mutant.cutters.end(),
                                       [&](const auto& cutter) { return named(cutter.feature); });
}

// What is cut off, added up by rays cutter by cutter from the last to the first: another order than the kernel's, and rays
// close together over each cutter, however large the blank. Asked as precisely as is needed to tell; the rays' error is
// exceeded once in a hundred, so at their most careful three times it is let pass.
bool agrees_with_rays(double made_mm3, const tests::Mutant& mutant) {
  constexpr double kRounding = 1e-12;
  std::vector<shape::Cutter> backwards(mutant.cutters.rbegin(), mutant.cutters.rend());
  const auto recipe = shape::Recipe::make({"block", mutant.blank}, backwards);
  const double blank_mm3 = volume_mm3(recipe.value().blank().body);
  const auto off = [&](shape::Effort effort, double errors) {
    double off_mm3 = made_mm3 - blank_mm3;
    double allowed_mm3 = kRounding * blank_mm3;
    for (std::size_t i = 0; i < recipe->cuts().size(); ++i) {
      const shape::RayVolume bite = metal_within(recipe->work_after(i), recipe->cuts()[i].body, effort);
      off_mm3 += bite.volume_mm3;
      allowed_mm3 += errors * bite.error_mm3 + kAgreeShare * bite.volume_mm3 + 1e-3;
    }
    return std::abs(off_mm3) > allowed_mm3;
  };
  return !off(shape::Effort::kUsual, 1.0) || !off(shape::Effort::kCareful, 1.0) ||
         !off(shape::Effort::kPainstaking, 3.0);
}

Outcome outcome_of(int seed) {
  const tests::Mutant mutant = tests::Mutator(static_cast<std::uint64_t>(seed)).mutant();
  const auto recipe = shape::Recipe::make({"block", mutant.blank}, mutant.cutters);
  if (!recipe) return names_a_feature(recipe.error(), mutant) ? Outcome::kRefused : Outcome::kNameless;
  const auto made = make_solid(*recipe);
  if (!made) {
    if (base::report(made.error()).empty()) return Outcome::kNameless;
    return names_a_feature(made.error(), mutant) ? Outcome::kFlagged : Outcome::kNameless;
  }
  return agrees_with_rays(kernel_volume_closely_mm3(to_kernel(made->solid)), mutant) ? Outcome::kSolid
                                                                                     : Outcome::kWrong;
}

void send(int pipe, const Message& message) {
  if (::write(pipe, &message, sizeof message) != sizeof message) std::_Exit(3);
}

[[noreturn]] void child(int pipe, int first, int last) {
  for (int seed = first; seed < last; ++seed) {
    send(pipe, {seed, Outcome::kBegun});
    ::alarm(kMostSeconds);  // kills the child, and the parent tells whose fault it was
    send(pipe, {seed, outcome_of(seed)});
  }
  std::_Exit(0);
}

struct Tally {
  std::array<int, 6> outcomes{};
  int crashed = 0;
  int hung = 0;
  double slowest_s = 0.0;
  int slowest = 0;

  [[nodiscard]] int count(Outcome outcome) const { return outcomes.at(static_cast<std::size_t>(outcome)); }
};

// Runs seeds in one child until it is done or dies; the seed to go on with.
int run_child(int first, int last, Tally& tally) {
  std::array<int, 2> ends{};
  if (::pipe(ends.data()) != 0) throw std::runtime_error("no pipe");
  std::fflush(stdout);
  const pid_t pid = ::fork();
  if (pid < 0) throw std::runtime_error("no process can be started");
  if (pid == 0) child(ends[1], first, last);
  ::close(ends[1]);
  Message message{first, Outcome::kBegun};
  auto begun = std::chrono::steady_clock::now();
  while (::read(ends[0], &message, sizeof message) == sizeof message) {
    const auto now = std::chrono::steady_clock::now();
    const double took_s = std::chrono::duration<double>(now - begun).count();
    begun = now;
    if (message.outcome == Outcome::kBegun) continue;
    ++tally.outcomes.at(static_cast<std::size_t>(message.outcome));
    if (took_s > tally.slowest_s) {
      tally.slowest_s = took_s;
      tally.slowest = message.seed;
    }
    if (message.outcome == Outcome::kNameless)
      std::printf("  seed %d: a failure that names no feature\n", message.seed);
    if (message.outcome == Outcome::kWrong)
      std::printf("  seed %d: a solid the rays do not agree with\n", message.seed);
    std::fflush(stdout);  // told at once, even where the run is broken off
  }
  ::close(ends[0]);
  int status = 0;
  ::waitpid(pid, &status, 0);
  if (WIFEXITED(status) && WEXITSTATUS(status) == 0) return last;
  const bool in_time = !(WIFSIGNALED(status) && WTERMSIG(status) == SIGALRM);
  ++(in_time ? tally.crashed : tally.hung);
  std::printf("  seed %d: %s\n", message.seed, in_time ? "crashed" : "takes too long");
  return message.seed + 1;
}

TEST(RecipeMutator, EndsInASolidThatIsRightOrAFailureThatNamesAFeature) {
  const int first = from_environment("SPAREWRIGHT_FIRST_MUTANT", 1);
  const int last = first + from_environment("SPAREWRIGHT_MUTANTS", 300);
  Tally tally;
  for (int next = first; next < last;)
    next = run_child(next, last, tally);
  std::printf(
      "seeds %d to %d: %d solids, %d recipes refused, %d flagged; %d wrong, %d nameless, %d crashed, %d too "
      "long; slowest %.1f s, seed %d\n",
      first, last - 1, tally.count(Outcome::kSolid), tally.count(Outcome::kRefused),
      tally.count(Outcome::kFlagged), tally.count(Outcome::kWrong), tally.count(Outcome::kNameless),
      tally.crashed, tally.hung, tally.slowest_s, tally.slowest);
  EXPECT_EQ(tally.crashed, 0);
  EXPECT_EQ(tally.hung, 0);
  EXPECT_EQ(tally.count(Outcome::kWrong), 0);
  EXPECT_EQ(tally.count(Outcome::kNameless), 0);
  // Not vacuous: both ends are reached.
  EXPECT_GT(tally.count(Outcome::kSolid), (last - first) / 4);
  EXPECT_GT(tally.count(Outcome::kRefused), (last - first) / 20);
}

}  // namespace
}  // namespace sparewright::solid
