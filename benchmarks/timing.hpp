// What the benchmarks share: how long something takes, and the middle of many such times.
#pragma once

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <cstdio>
#include <ctime>
#include <exception>
#include <vector>

namespace sparewright::benchmarks {

template <typename Work>
[[nodiscard]] double seconds_of(const Work& work) {
  const auto begin = std::chrono::steady_clock::now();
  work();
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

// The same in seconds of this process's work: what else runs on the machine does not count.
template <typename Work>
[[nodiscard]] double seconds_of_work(const Work& work) {
  const auto now = [] { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; };
  const double begin = now();
  work();
  return now() - begin;
}

// Precondition: there is one. Of an even number the upper one of the two in the middle.
[[nodiscard]] inline double median(std::vector<double> values) {
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  return *middle;
}

// What main() gives back: the run's own status, or 2 with the message of what went wrong.
template <typename Run>
[[nodiscard]] int status_of(const Run& run) {
  try {
    return run();
  } catch (const std::exception& error) {
    std::fprintf(stderr, "%s\n", error.what());
    return 2;
  }
}

}  // namespace sparewright::benchmarks
