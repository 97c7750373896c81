// The sizes of a part by draws of its readings' errors: ours against a batched Gauss-Newton in NumPy on the same network, in
// one run.   monte_carlo SCRIPT [--smoke]
// Nine holes of a plate, the distance between every two of them and four of those once more: 40 readings of 15 places, all
// bent, with a zero that all share. Times are printed to be read; only the ratio decides the exit status.
#include "core/survey/monte_carlo.hpp"

#include <cmath>
#include <cstdio>
#include <memory>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include "core/base/messages.hpp"
#include "core/formula/expression.hpp"
#include "timing.hpp"

namespace {

using namespace sparewright;

constexpr double kTimesFaster = 3.0;
constexpr std::size_t kHoles = 9;
constexpr double kOwn_mm = 0.02;
constexpr double kShared_mm = 0.03;

struct Plate {
  survey::Network network;
  std::vector<ledger::Shares> causes;
};

double x_of(std::size_t hole) {
  return 40.0 * static_cast<double>(hole % 3) + 3.0 * static_cast<double>(hole / 3);
}
double y_of(std::size_t hole) {
  return 35.0 * static_cast<double>(hole / 3) + 2.0 * static_cast<double>(hole % 3) - (hole == 1 ? 2.0 : 0.0);
}

// The first hole is the origin and the second lies on the axis, so they have fewer places.
std::string x_name(std::size_t hole) {
  return hole == 0 ? "0 mm" : fmt::format("x{}", hole);
}
std::string y_name(std::size_t hole) {
  return hole < 2 ? "0 mm" : fmt::format("y{}", hole);
}

void add_distance(Plate& plate, std::size_t a, std::size_t b) {
  const std::string text =
      fmt::format("sqrt(({} - {})^2 + ({} - {})^2)", x_name(b), x_name(a), y_name(b), y_name(a));
  const auto typed = formula::Expression::read(text);
  if (!typed) throw std::runtime_error(base::report(typed.error()));
  auto bound = typed->bind([](std::string_view) { return std::optional(quantity::Kind::kLength); },
                           quantity::Kind::kLength, quantity::UnitSystem::kMetric);
  if (!bound) throw std::runtime_error(base::report(bound.error()));
  const std::string name = fmt::format("reading {}", plate.causes.size());
  const double error = 0.01 * std::sin(static_cast<double>(7 * a + 3 * b + plate.causes.size()));
  plate.network.readings.push_back(
      {name, std::hypot(x_of(b) - x_of(a), y_of(b) - y_of(a)) + error, std::move(*bound)});
  plate.causes.push_back({{"reading/" + name + "/own", kOwn_mm}, {"zero", kShared_mm}});
}

Plate plate() {
  Plate plate;
  for (std::size_t hole = 1; hole < kHoles; ++hole) {
    plate.network.unknowns.push_back({x_name(hole), quantity::Kind::kLength});
    if (hole > 1) plate.network.unknowns.push_back({y_name(hole), quantity::Kind::kLength});
  }
  for (std::size_t a = 0; a < kHoles; ++a) {
    for (std::size_t b = a + 1; b < kHoles; ++b)
      add_distance(plate, a, b);
  }
  for (std::size_t a = 0; a < 4; ++a)
    add_distance(plate, a, a + 5);
  const std::size_t n = plate.causes.size();
  plate.network.covariance = survey::Matrix(n, n);
  for (std::size_t a = 0; a < n; ++a) {
    for (std::size_t b = 0; b < n; ++b)
      plate.network.covariance.at(a, b) = ledger::covariance(plate.causes[a], plate.causes[b]);
  }
  return plate;
}

struct Timed {
  double seconds = 0.0;
  double mean = 0.0;  // of the last place
  double deviation = 0.0;
};

Timed time_numpy(const std::string& script, const Plate& plate, std::size_t draws) {
  std::string readings;
  for (const survey::Observation& reading : plate.network.readings)
    readings += fmt::format(" {:.17g}", reading.value);
  const std::string command = fmt::format("/usr/bin/python3 '{}' {} {} {} {}{}", script, draws, kHoles,
                                          kOwn_mm, kShared_mm, readings);
  const auto close = [](std::FILE* pipe) { return ::pclose(pipe); };
  const std::unique_ptr<std::FILE, decltype(close)> pipe(::popen(command.c_str(), "r"), close);
  Timed timed;
  if (!pipe || std::fscanf(pipe.get(), "%lf %lf %lf", &timed.seconds, &timed.mean, &timed.deviation) != 3)
    throw std::runtime_error("NumPy cannot be run");
  return timed;
}

int run(const std::string& script, bool smoke) {
  const std::size_t draws = smoke ? 5'000 : 100'000;
  const Plate part = plate();
  const auto adjusted = survey::adjust(part.network);
  if (!adjusted) throw std::runtime_error(base::report(adjusted.error()));
  survey::MonteCarlo ours;
  const double seconds = benchmarks::seconds_of([&] {
    auto made = survey::monte_carlo({&part.network, &*adjusted, part.causes}, draws, 1);
    if (!made) throw std::runtime_error(base::report(made.error()));
    ours = std::move(*made);
  });
  const Timed numpy = time_numpy(script, part, draws);
  const double times = numpy.seconds / seconds;
  fmt::print(
      "monte carlo: {} readings, {} places, {} draws; ours {:.2f} s, batched NumPy {:.2f} s, {:.1f} times\n",
      part.causes.size(), part.network.unknowns.size(), draws, seconds, numpy.seconds, times);
  const survey::Spread& last = ours.sizes.back().spread;
  // Two samples of so many: their means differ by u sqrt(2/M), their deviations by u/sqrt(M); six times that.
  const double apart = 6.0 * last.deviation * std::sqrt(2.0 / static_cast<double>(draws));
  const bool agree =
      std::abs(last.mean - numpy.mean) <= apart && std::abs(last.deviation - numpy.deviation) <= apart;
  if (!agree || ours.unsettled > 0) {
    fmt::print("the two do not agree: {} and {}, u {} and {}; {} unsettled\n", last.mean, numpy.mean,
               last.deviation, numpy.deviation, ours.unsettled);
    return 1;
  }
  if (!smoke && times < kTimesFaster) {
    fmt::print("slower than {} times\n", kTimesFaster);
    return 1;
  }
  return 0;
}

}  // namespace

int main(int argc, char** argv) {
  return sparewright::benchmarks::status_of([&] {
    if (argc < 2) throw std::runtime_error("usage: monte_carlo SCRIPT [--smoke]");
    return run(argv[1], argc > 2 && std::string(argv[2]) == "--smoke");
  });
}
