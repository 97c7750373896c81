// The nearest train of four gears and of six out of a box of 24, for many wanted ratios, against plain nested
// loops over every choice of gears; in one run and in turn. The search starts from the bare box each time.
//   gear_trains [--smoke]
// Times are printed to be read; only the ratio for six gears decides the exit status.
#include "core/handbook/gear_trains.hpp"

#include <array>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <limits>
#include <stdexcept>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "core/base/messages.hpp"
#include "timing.hpp"

namespace {

using sparewright::benchmarks::median;
using sparewright::benchmarks::seconds_of;
using namespace sparewright;
using handbook::Ratio;

constexpr double kTimesFaster = 8.0;
constexpr std::size_t kGears = 24;
constexpr std::array<int, kGears> kBox{20, 21, 22, 24, 25, 28, 30, 32, 35, 36, 38, 40,
                                       42, 44, 45, 48, 50, 55, 57, 60, 63, 65, 80, 127};

struct Nearest {
  double off = std::numeric_limits<double>::infinity();  // of the ratio
  std::int64_t trains = 0;                               // looked at
};

// The peer: each choice of drivers and drivens once, the products carried down the loops.
Nearest four_by_loops(double wanted) {
  Nearest best;
  for (std::size_t a = 0; a < kGears; ++a) {
    for (std::size_t b = a + 1; b < kGears; ++b) {
      const int drivers = kBox[a] * kBox[b];
      for (std::size_t c = 0; c < kGears; ++c) {
        if (c == a || c == b) continue;
        for (std::size_t d = c + 1; d < kGears; ++d) {
          if (d == a || d == b) continue;
          ++best.trains;
          const double off = std::abs(static_cast<double>(drivers) / (kBox[c] * kBox[d]) - wanted);
          if (off < best.off) best.off = off;
        }
      }
    }
  }
  return best;
}

void six_below(std::uint32_t used, int drivers, double wanted, Nearest& best) {
  for (std::size_t d = 0; d < kGears; ++d) {
    if ((used >> d & 1U) != 0) continue;
    for (std::size_t e = d + 1; e < kGears; ++e) {
      if ((used >> e & 1U) != 0) continue;
      const int two = kBox[d] * kBox[e];
      for (std::size_t f = e + 1; f < kGears; ++f) {
        if ((used >> f & 1U) != 0) continue;
        ++best.trains;
        const double off = std::abs(static_cast<double>(drivers) / (two * kBox[f]) - wanted);
        if (off < best.off) best.off = off;
      }
    }
  }
}

Nearest six_by_loops(double wanted) {
  Nearest best;
  for (std::size_t a = 0; a < kGears; ++a) {
    for (std::size_t b = a + 1; b < kGears; ++b) {
      for (std::size_t c = b + 1; c < kGears; ++c)
        six_below(1U << a | 1U << b | 1U << c, kBox[a] * kBox[b] * kBox[c], wanted, best);
    }
  }
  return best;
}

double by_search(const Ratio& wanted, std::size_t gears) {
  const auto finder = handbook::TrainFinder::of(kBox, gears);
  if (!finder) throw std::runtime_error(base::report(finder.error()));
  return std::abs(finder->nearest(wanted, gears, 1).at(0).ratio.value() - wanted.value());
}

// How many times as fast the search is, over ratios that are met exactly, nearly and badly.
double faster(std::size_t gears, Nearest (*loops)(double), int rounds) {
  std::vector<double> search_seconds;
  std::vector<double> loop_seconds;
  std::int64_t trains = 0;
  for (int i = 0; i < rounds; ++i) {
    const Ratio wanted = Ratio::of(1 + i * 37 % 97, 11 + i * 53 % 101);
    double found = 0.0;
    Nearest peer;
    search_seconds.push_back(seconds_of([&] { found = by_search(wanted, gears); }));
    loop_seconds.push_back(seconds_of([&] { peer = loops(wanted.value()); }));
    if (found != peer.off) throw std::runtime_error(fmt::format("{} gears: the answers differ", gears));
    trains = peer.trains;
  }
  const double times = median(loop_seconds) / median(search_seconds);
  fmt::print("the nearest of {} trains of {} gears: {:.4f} ms; plain loops {:.4f} ms: {:.1f} times as fast\n",
             trains, gears, median(search_seconds) * 1e3, median(loop_seconds) * 1e3, times);
  return times;
}

int run(bool smoke) {
  (void)faster(4, four_by_loops, smoke ? 3 : 200);
  const double six = faster(6, six_by_loops, smoke ? 3 : 60);
  if (smoke || six >= kTimesFaster) return 0;
  fmt::print("less than {} times as fast\n", kTimesFaster);
  return 1;
}

}  // namespace

int main(int argc, char** argv) {
  return sparewright::benchmarks::status_of(
      [&] { return run(argc > 1 && std::string(argv[1]) == "--smoke"); });
}
