// 40 overlapping readings of 15 sizes with their full covariance: ours against Ceres and against SciPy's least_squares with
// whole arrays and a Jacobian, on the same problem from the same start, in one run.   survey SCRIPT [--smoke]
// The sizes and their covariance, all that the peers make, from the names to the numbers; ours starts cold, the peers are given
// its start. What it takes with the rank, the slopes and the tests of every reading, as a job always has them, is printed too.
// Times are printed to be read; only the ratios decide the exit status.
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <memory>
#include <random>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

#include <Eigen/Cholesky>
#include <ceres/ceres.h>
#include <fmt/format.h>
#include <unistd.h>

#include "core/base/messages.hpp"
#include "core/survey/adjust.hpp"
#include "core/survey/solve.hpp"
#include "core/survey/start.hpp"
#include "timing.hpp"

namespace {

using namespace sparewright;
using survey::Network;

constexpr double kTimesCeres = 4.0;
constexpr double kTimesScipy = 5.0;
constexpr double kSameSizes = 1e-9;   // relative
constexpr double kSameDoubts = 1e-6;  // relative, of standard uncertainties
constexpr std::size_t kHoles = 5;
constexpr std::size_t kUnknowns = 3 * kHoles;

// One reading of holes in a plane: a diameter, a hole's near edge from a side of the plate, or two holes, over or between.
struct Row {
  enum class Of { kDiameter, kEdge, kTwo };
  Of of = Of::kDiameter;
  std::size_t one = 0;
  std::size_t other = 0;  // kEdge: 0 for x, 1 for y
  double sign = 1.0;      // kTwo: of the radii
};

std::size_t place_x(std::size_t hole) {
  return 3 * hole;
}
std::size_t place_y(std::size_t hole) {
  return 3 * hole + 1;
}
std::size_t place_d(std::size_t hole) {
  return 3 * hole + 2;
}

std::vector<Row> rows() {
  std::vector<Row> all;
  for (std::size_t hole = 0; hole < kHoles; ++hole) {
    all.push_back({Row::Of::kDiameter, hole});
    all.push_back({Row::Of::kDiameter, hole});
    all.push_back({Row::Of::kEdge, hole, 0});
    all.push_back({Row::Of::kEdge, hole, 1});
    for (std::size_t other = hole + 1; other < kHoles; ++other) {
      all.push_back({Row::Of::kTwo, hole, other, 1.0});
      all.push_back({Row::Of::kTwo, hole, other, -1.0});
    }
  }
  return all;
}

// What a reading should be, and its slopes; slopes are 0 before.
double value_of(const Row& row, const double* x, double* slopes) {
  const auto put = [&](std::size_t place, double slope) {
    if (slopes != nullptr) slopes[place] = slope;
  };
  switch (row.of) {
    case Row::Of::kDiameter:
      put(place_d(row.one), 1.0);
      return x[place_d(row.one)];
    case Row::Of::kEdge:
      put(place_x(row.one) + row.other, 1.0);
      put(place_d(row.one), -0.5);
      return x[place_x(row.one) + row.other] - x[place_d(row.one)] / 2.0;
    case Row::Of::kTwo:
      break;
  }
  const double dx = x[place_x(row.other)] - x[place_x(row.one)];
  const double dy = x[place_y(row.other)] - x[place_y(row.one)];
  const double centres = std::sqrt(dx * dx + dy * dy);
  put(place_x(row.other), dx / centres);
  put(place_y(row.other), dy / centres);
  put(place_x(row.one), -dx / centres);
  put(place_y(row.one), -dy / centres);
  put(place_d(row.one), row.sign / 2.0);
  put(place_d(row.other), row.sign / 2.0);
  return centres + row.sign * (x[place_d(row.one)] + x[place_d(row.other)]) / 2.0;
}

std::string typed(const Row& row) {
  switch (row.of) {
    case Row::Of::kDiameter:
      return fmt::format("d{}", row.one);
    case Row::Of::kEdge:
      return fmt::format("{}{} - d{}/2", row.other == 0 ? "x" : "y", row.one, row.one);
    case Row::Of::kTwo:
      break;
  }
  return fmt::format("sqrt((x{1} - x{0})^2 + (y{1} - y{0})^2) {2} (d{0} + d{1})/2", row.one, row.other,
                     row.sign > 0 ? "+" : "-");
}

formula::Formula formula_of(const std::string& text) {
  const auto expression = formula::Expression::read(text);
  if (!expression) throw std::runtime_error(base::report(expression.error()));
  auto formula = expression->bind([](std::string_view) { return quantity::Kind::kLength; },
                                  quantity::Kind::kLength, quantity::UnitSystem::kMetric);
  if (!formula) throw std::runtime_error(base::report(formula.error()));
  return std::move(*formula);
}

// Readings with errors of fixed seed: own ones, and a zero shared by those of each kind.
Network network() {
  constexpr std::array<double, kUnknowns> kTruth{30.0, 25.0, 12.0, 85.0, 31.0,  9.5,  140.0, 22.0,
                                                 16.0, 62.0, 78.0, 8.0,  118.0, 81.0, 10.0};
  std::mt19937_64 draw(15);
  const auto error = [&](double u) {
    return u * std::sqrt(3.0) * (2.0 * static_cast<double>(draw() >> 11U) * 0x1p-53 - 1.0);
  };
  Network out;
  for (std::size_t hole = 0; hole < kHoles; ++hole) {
    for (const char* axis : {"x", "y", "d"})
      out.unknowns.push_back({fmt::format("{}{}", axis, hole), quantity::Kind::kLength});
  }
  const std::vector<Row> all = rows();
  const std::array own{0.005, 0.015, 0.02};
  const std::array zero{0.003, 0.008, 0.01};
  const std::array zero_error{error(zero[0]), error(zero[1]), error(zero[2])};
  out.covariance = survey::Matrix(all.size(), all.size());
  for (std::size_t a = 0; a < all.size(); ++a) {
    const auto kind = static_cast<std::size_t>(all[a].of);
    out.readings.push_back({fmt::format("r{}", a),
                            value_of(all[a], kTruth.data(), nullptr) + error(own[kind]) + zero_error[kind],
                            formula_of(typed(all[a]))});
    for (std::size_t b = 0; b < all.size(); ++b) {
      if (all[a].of == all[b].of) out.covariance.at(a, b) = zero[kind] * zero[kind];
    }
    out.covariance.at(a, a) += own[kind] * own[kind];
  }
  return out;
}

struct Answer {
  std::vector<double> sizes;
  std::vector<double> u;
};

using RowMajor = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

// All readings as one block, whitened by the covariance's factor.
class Misfits : public ceres::CostFunction {
 public:
  explicit Misfits(const Network& network) : network_(network), rows_(rows()) {
    const auto n = static_cast<Eigen::Index>(network.covariance.rows);
    factor_.compute(Eigen::Map<const RowMajor>(network.covariance.cells.data(), n, n));
    set_num_residuals(static_cast<int>(n));
    mutable_parameter_block_sizes()->push_back(static_cast<int>(kUnknowns));
  }

  bool Evaluate(double const* const* parameters, double* residuals, double** jacobians) const override {
    const auto n = static_cast<Eigen::Index>(rows_.size());
    const bool wants_slopes = jacobians != nullptr && jacobians[0] != nullptr;
    Eigen::Map<Eigen::VectorXd> misfit(residuals, n);
    if (wants_slopes) std::fill_n(jacobians[0], rows_.size() * kUnknowns, 0.0);
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      double* slopes = wants_slopes ? jacobians[0] + i * kUnknowns : nullptr;
      residuals[i] = value_of(rows_[i], parameters[0], slopes) - network_.readings[i].value;
    }
    factor_.matrixL().solveInPlace(misfit);
    if (wants_slopes) {
      Eigen::Map<RowMajor> slopes(jacobians[0], n, static_cast<Eigen::Index>(kUnknowns));
      factor_.matrixL().solveInPlace(slopes);
    }
    return true;
  }

 private:
  const Network& network_;
  std::vector<Row> rows_;
  Eigen::LLT<Eigen::MatrixXd> factor_;
};

Answer by_ceres(const Network& network, const std::vector<double>& start) {
  Answer answer{start, {}};
  ceres::Problem problem;
  problem.AddResidualBlock(new Misfits(network), nullptr, answer.sizes.data());
  ceres::Solver::Options options;
  options.linear_solver_type = ceres::DENSE_QR;
  options.logging_type = ceres::SILENT;
  options.num_threads = 1;
  options.function_tolerance = 1e-16;
  options.parameter_tolerance = 1e-12;
  options.gradient_tolerance = 1e-12;
  ceres::Solver::Summary summary;
  ceres::Solve(options, &problem, &summary);
  ceres::Covariance::Options how;
  how.algorithm_type = ceres::SPARSE_QR;
  how.num_threads = 1;
  ceres::Covariance covariance(how);
  const std::vector<std::pair<const double*, const double*>> wanted{
      {answer.sizes.data(), answer.sizes.data()}};
  if (!covariance.Compute(wanted, &problem)) throw std::runtime_error("Ceres finds no covariance");
  std::array<double, kUnknowns * kUnknowns> cells{};
  covariance.GetCovarianceBlock(answer.sizes.data(), answer.sizes.data(), cells.data());
  for (std::size_t j = 0; j < kUnknowns; ++j)
    answer.u.push_back(std::sqrt(cells[j * kUnknowns + j]));
  return answer;
}

Answer by_us(const Network& network) {
  const auto equations = survey::Equations::of(network);
  const survey::Whitening whitening(network.covariance);
  const auto solution = survey::solve(*equations, whitening);
  if (!solution) throw std::runtime_error(base::report(solution.error()));
  const survey::Point& point = *solution->point;
  const survey::Determination determination = point.weighted.determine(point.all.slopes);
  Answer answer{solution->values, {}};
  for (std::size_t j = 0; j < kUnknowns; ++j)
    answer.u.push_back(std::sqrt(determination.covariance.at(j, j)));
  return answer;
}

Answer by_us_with_tests(const Network& network) {
  const auto adjustment = survey::adjust(network);
  if (!adjustment) throw std::runtime_error(base::report(adjustment.error()));
  Answer answer;
  for (const survey::Found& found : adjustment->unknowns) {
    answer.sizes.push_back(found.value);
    answer.u.push_back(found.u);
  }
  return answer;
}

void check_same(const Answer& ours, const Answer& theirs, const char* whose) {
  for (std::size_t j = 0; j < kUnknowns; ++j) {
    if (std::abs(ours.sizes[j] - theirs.sizes[j]) > kSameSizes * std::abs(theirs.sizes[j]) ||
        std::abs(ours.u[j] - theirs.u[j]) > kSameDoubts * theirs.u[j])
      throw std::runtime_error(
          fmt::format("size {} differs from that of {}: {:.12g} +- {:.9g}, {:.12g} +- {:.9g}", j, whose,
                      ours.sizes[j], ours.u[j], theirs.sizes[j], theirs.u[j]));
  }
}

struct Scipy {
  double seconds = 0.0;  // median of the trials
  Answer answer;
};

Scipy by_scipy(const std::string& script, const Network& network, const std::vector<double>& start,
               int trials) {
  const std::string path =
      (std::filesystem::temp_directory_path() / fmt::format("survey-{}.in", ::getpid())).string();
  std::ofstream file(path);
  file << kHoles << '\n';
  for (const double x : start)
    file << fmt::format("{:.17g} ", x);
  file << '\n';
  for (const survey::Observation& reading : network.readings)
    file << fmt::format("{:.17g} ", reading.value);
  file << '\n';
  for (const Row& row : rows())
    file << fmt::format("{} {} {} {} ", static_cast<int>(row.of), row.one, row.other, row.sign);
  file << '\n';
  for (const double cell : network.covariance.cells)
    file << fmt::format("{:.17g} ", cell);
  file << '\n';
  file.close();
  const std::string command = fmt::format("/usr/bin/python3 '{}' '{}' {}", script, path, trials);
  const auto close = [](std::FILE* pipe) { return ::pclose(pipe); };
  const std::unique_ptr<std::FILE, decltype(close)> pipe(::popen(command.c_str(), "r"), close);
  Scipy out;
  const auto number = [&] {
    double value = 0.0;
    if (!pipe || std::fscanf(pipe.get(), "%lf", &value) != 1) throw std::runtime_error("SciPy cannot be run");
    return value;
  };
  out.seconds = number();
  for (std::size_t j = 0; j < kUnknowns; ++j)
    out.answer.sizes.push_back(number());
  for (std::size_t j = 0; j < kUnknowns; ++j)
    out.answer.u.push_back(number());
  std::remove(path.c_str());
  return out;
}

// As many readings as are taken at the most: that it ends, and how long it takes.
void time_many(std::size_t readings) {
  Network many;
  many.unknowns = {{"x", quantity::Kind::kLength}, {"y", quantity::Kind::kLength}};
  many.covariance = survey::Matrix(readings, readings);
  const std::array formulas{formula_of("x"), formula_of("y"), formula_of("x + y")};
  for (std::size_t i = 0; i < readings; ++i) {
    const double off = 0.001 * static_cast<double>(i % 7);
    many.readings.push_back(
        {fmt::format("r{}", i), std::array{10.0, 20.0, 30.0}.at(i % 3) + off, formulas.at(i % 3)});
    for (std::size_t k = 0; k < readings; ++k)
      many.covariance.at(i, k) = i == k ? 5e-4 : 1e-4;
  }
  const double seconds = benchmarks::seconds_of([&] { (void)survey::adjust(many); });
  fmt::print("survey: {} readings of 2 sizes {:.1f} s\n", readings, seconds);
}

int run(const std::string& script, bool smoke) {
  const Network problem = network();
  const auto equations = survey::Equations::of(problem);
  const std::vector<double> start = survey::cold_start(*equations).values;
  std::vector<double> our_seconds;
  std::vector<double> seconds_with_tests;
  std::vector<double> ceres_seconds;
  Answer ours;
  Answer with_tests;
  Answer ceres;
  for (int i = 0; i < (smoke ? 20 : 2000); ++i) {
    our_seconds.push_back(benchmarks::seconds_of([&] { ours = by_us(problem); }));
    ceres_seconds.push_back(benchmarks::seconds_of([&] { ceres = by_ceres(problem, start); }));
    seconds_with_tests.push_back(benchmarks::seconds_of([&] { with_tests = by_us_with_tests(problem); }));
    ceres_seconds.push_back(benchmarks::seconds_of([&] { ceres = by_ceres(problem, start); }));
  }
  const Scipy scipy = by_scipy(script, problem, start, smoke ? 20 : 1000);
  check_same(ours, ceres, "Ceres");
  check_same(ours, with_tests, "ours with tests");
  check_same(ours, scipy.answer, "SciPy");
  const double us = benchmarks::median(std::move(our_seconds));
  const double by_peer = benchmarks::median(std::move(ceres_seconds));
  const double times_ceres = by_peer / us;
  const double times_scipy = scipy.seconds / us;
  const double us_with_tests = benchmarks::median(std::move(seconds_with_tests));
  fmt::print(
      "survey: {} readings of {} sizes; ours {:.0f} us, Ceres {:.0f} us, {:.1f} times; SciPy {:.0f} us, "
      "{:.1f} times; with its tests of every reading, which neither peer makes, ours {:.0f} us, {:.1f} and "
      "{:.1f} times\n",
      problem.readings.size(), kUnknowns, us * 1e6, by_peer * 1e6, times_ceres, scipy.seconds * 1e6,
      times_scipy, us_with_tests * 1e6, by_peer / us_with_tests, scipy.seconds / us_with_tests);
  time_many(smoke ? 300 : survey::kMostReadings);
  if (smoke || (times_ceres >= kTimesCeres && times_scipy >= kTimesScipy)) return 0;
  fmt::print("less than {} and {} times as fast\n", kTimesCeres, kTimesScipy);
  return 1;
}

}  // namespace

int main(int argc, char** argv) {
  return sparewright::benchmarks::status_of([&] {
    if (argc < 2) throw std::runtime_error("usage: survey SCRIPT [--smoke]");
    return run(argv[1], argc > 2 && std::string(argv[2]) == "--smoke");
  });
}
