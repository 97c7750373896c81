// Random draws of errors, the same for the same seed on every machine, and what many draws say.
//
// Sources: JCGM 101:2008, 6.4 (which distribution stands for which knowledge), 7.6 and 7.7 (estimate, standard uncertainty
// and coverage interval from the draws); the clauses are named from memory.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace sparewright::survey {

// Each with the middle 0. All but Student's t with the standard deviation 1; that one as its table has it, its scale 1.
enum class Distribution {
  kNormal,
  kRectangular,  // between two limits, nothing known within (6.4.2)
  kTriangular,   // the sum of two equal rectangles (6.4.5)
  kArcsine,      // what swings to and fro between two limits (6.4.6)
  kStudent,      // the mean of a few repeats: JCGM 101:2008, 6.4.9
};

// xoshiro256** by D. Blackman and S. Vigna, seeded by SplitMix64 (ACM Transactions on Mathematical Software 47 (2021) no.
// 36; from memory).
class Draws {
 public:
  explicit Draws(std::uint64_t seed);

  // degrees_of_freedom: of kStudent, more than 0; without limit it is normal. Heeded for no other.
  void fill(std::span<double> out, Distribution distribution, double degrees_of_freedom = 0.0);
  // What makes normal numbers, all by the same, numbers of Student's t: the root of the degrees of freedom over a chi-square.
  void fill_stretches(std::span<double> out, double degrees_of_freedom);

 private:
  double unit();  // 0 < u < 1
  double normal();
  double gamma(double shape);
  double student(double degrees_of_freedom);

  std::array<std::uint64_t, 4> state_{};
  double spare_ = 0.0;  // the second of a pair of normal numbers
  bool has_spare_ = false;
};

// What many draws of one size say.
struct Spread {
  double mean = 0.0;
  double deviation = 0.0;  // standard; of heavy tails (few repeats) it says little
  double low = 0.0;        // as many below as above
  double high = 0.0;
  double shortest_low = 0.0;  // the shortest that holds as many
  double shortest_high = 0.0;
};

// probability: within the intervals, 0 < p < 1. The draws come out sorted. At least 2, all finite.
[[nodiscard]] Spread spread_of(std::vector<double>& draws, double probability = 0.95);

}  // namespace sparewright::survey
