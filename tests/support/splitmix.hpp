// Random numbers that are the same everywhere.
#pragma once

#include <cstddef>
#include <cstdint>

namespace sparewright::tests {

// Source, named from memory: G. L. Steele, D. Lea, C. H. Flood, Fast splittable pseudorandom number generators, OOPSLA 2014.
class SplitMix {
 public:
  explicit SplitMix(std::uint64_t seed) : state_(seed) {}

  std::uint64_t next() {
    state_ += 0x9E3779B97F4A7C15U;
    std::uint64_t z = state_;
    z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9U;
    z = (z ^ (z >> 27U)) * 0x94D049BB133111EBU;
    return z ^ (z >> 31U);
  }
  std::size_t below(std::size_t n) { return static_cast<std::size_t>(next() % n); }
  bool one_in(std::size_t n) { return below(n) == 0; }
  double unit() { return static_cast<double>(next() >> 11U) * 0x1p-53; }  // in [0, 1)
  double between(double low, double high) { return low + (high - low) * unit(); }

 private:
  std::uint64_t state_;
};

}  // namespace sparewright::tests
