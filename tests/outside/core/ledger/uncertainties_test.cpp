// Random networks of figures, worked out once more by python3-uncertainties: readings that share causes, then
// sums, products, quotients, roots and sines of what came before.
#include <cmath>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/ledger/ledger.hpp"
#include "judge.hpp"
#include "splitmix.hpp"
#include "stages.hpp"

namespace sparewright::ledger {
namespace {

using quantity::Kind;
using tests::SplitMix;
using tests::stage;

constexpr std::uint64_t kFirstSeed = 19970;
constexpr unsigned kNetworks = 12;
constexpr std::size_t kReadings = 8;
constexpr std::size_t kWorked = 40;
constexpr double kValueError = 1e-12;  // relative
constexpr double kUError = 1e-9;       // relative: a difference of like shares keeps fewer digits

constexpr std::string_view kScript = R"(
import sys
from uncertainties import ufloat, covariance_matrix
from uncertainties.umath import sqrt, sin
def reading(words, causes):
    x = ufloat(float(words[0]), 0.0)
    for share in words[1:]:
        cause, amount = share.split("=")
        x = x + float(amount) * causes.setdefault(cause, ufloat(0.0, 1.0))
    return x
for network in open(sys.argv[1]).read().strip().split("\n\n"):
    causes, v = {}, []
    for line in network.split("\n"):
        kind, rest = line.split(" ", 1)
        v.append(reading(rest.split(), causes) if kind == "reading" else eval(rest))
    for x in v:
        c = covariance_matrix([x, v[-1]])[0][1]
        print(repr(float(x.nominal_value)), repr(float(x.std_dev)), repr(float(c)))
)";

// The operations: how Python writes one, and how the pen works it out.
struct Step {
  char operation;
  std::size_t first;
  std::size_t second;
};

class Network {
 public:
  explicit Network(std::uint64_t seed) : random_(seed) {
    for (std::size_t i = 0; i < kReadings; ++i)
      add_reading(i);
    while (steps_.size() < kWorked)
      add_step();
  }

  [[nodiscard]] std::string python() const { return python_; }

  [[nodiscard]] Ledger ledger() const {
    Ledger made;
    made.declare({stage("x", [this](Pen& pen) {
      std::vector<const Figure*> figures;
      for (std::size_t i = 0; i < kReadings; ++i) {
        Root root;
        root.value = values_[i];
        root.shares = shares_[i];
        figures.push_back(&pen.root(fmt::format("{:03}", i), root));
      }
      for (const Step& step : steps_) {
        figures.push_back(&write(pen, fmt::format("{:03}", figures.size()), step, figures));
      }
    })});
    return made;
  }

 private:
  void add_reading(std::size_t i) {
    Shares shares{{fmt::format("scatter{}", i), random_.between(0.001, 0.02)}};
    for (int cause = 0; cause < 3; ++cause) {
      if (random_.one_in(2)) shares.push_back({fmt::format("common{}", cause), random_.between(-0.02, 0.02)});
    }
    values_.push_back(random_.between(0.5, 3.0));
    shares_.push_back(shares);
    python_ += fmt::format("reading {:.17g}", values_.back());
    for (const Share& share : shares)
      python_ += fmt::format(" {}={:.17g}", share.cause, share.amount);
    python_ += '\n';
  }

  // Values are kept between 1e-3 and 1e3, so that no difference cancels to nothing and no quotient runs away.
  void add_step() {
    constexpr std::string_view kOperations = "+-*/qs";
    const Step step{kOperations[random_.below(kOperations.size())], random_.below(values_.size()),
                    random_.below(values_.size())};
    const double value = worked(step);
    if (!(std::abs(value) > 1e-3 && std::abs(value) < 1e3)) return;
    values_.push_back(value);
    steps_.push_back(step);
    if (step.operation == 'q' || step.operation == 's') {
      python_ += fmt::format("worked {}(v[{}])\n", step.operation == 'q' ? "sqrt" : "sin", step.first);
    } else {
      python_ += fmt::format("worked v[{}] {} v[{}]\n", step.first, step.operation, step.second);
    }
  }

  [[nodiscard]] double worked(const Step& step) const {
    const double a = values_[step.first];
    const double b = values_[step.second];
    switch (step.operation) {
      case '+':
        return a + b;
      case '-':
        return a - b;
      case '*':
        return a * b;
      case '/':
        return a / b;
      case 'q':
        return std::sqrt(a);
      default:
        return std::sin(a);
    }
  }

  static const Figure& write(Pen& pen, const std::string& local, const Step& step,
                             const std::vector<const Figure*>& figures) {
    using std::sin, std::sqrt;
    const Figure& a = *figures[step.first];
    const Figure& b = *figures[step.second];
    switch (step.operation) {
      case '+':
        return pen.work(
            local, Kind::kNumber, "", [](auto x, auto y) { return x + y; }, a, b);
      case '-':
        return pen.work(
            local, Kind::kNumber, "", [](auto x, auto y) { return x - y; }, a, b);
      case '*':
        return pen.work(
            local, Kind::kNumber, "", [](auto x, auto y) { return x * y; }, a, b);
      case '/':
        return pen.work(
            local, Kind::kNumber, "", [](auto x, auto y) { return x / y; }, a, b);
      case 'q':
        return pen.work(
            local, Kind::kNumber, "", [](auto x) { return sqrt(x); }, a);
      default:
        return pen.work(
            local, Kind::kNumber, "", [](auto x) { return sin(x); }, a);
    }
  }

  SplitMix random_;
  std::vector<double> values_;
  std::vector<Shares> shares_;
  std::vector<Step> steps_;
  std::string python_;
};

TEST(OutsideUncertaintiesNetwork, AgreesOnValuesUncertaintiesAndCovariances) {
  std::string input;
  for (unsigned n = 0; n < kNetworks; ++n)
    input += Network(kFirstSeed + n).python() + "\n";
  const std::vector<std::string> lines = tests::judged(kScript, input);
  ASSERT_EQ(lines.size(), kNetworks * (kReadings + kWorked));
  auto line = lines.begin();
  unsigned uncertain = 0;
  for (unsigned n = 0; n < kNetworks; ++n) {
    SCOPED_TRACE("seed " + std::to_string(kFirstSeed + n));
    const Network network(kFirstSeed + n);
    Ledger ledger = network.ledger();
    const std::vector<Figure> figures = ledger.figures();
    ASSERT_EQ(figures.size(), kReadings + kWorked);
    for (const Figure& figure : figures) {
      double value = 0.0;
      double u = 0.0;
      double with_last = 0.0;
      std::istringstream(*line++) >> value >> u >> with_last;
      EXPECT_NEAR(figure.value, value, kValueError * std::abs(value)) << figure.name;
      EXPECT_NEAR(figure.u(), u, kUError * u) << figure.name;
      EXPECT_NEAR(covariance(figure.shares, figures.back().shares), with_last,
                  kUError * u * figures.back().u())
          << figure.name;
      uncertain += u > 0.0 ? 1U : 0U;
    }
  }
  EXPECT_GT(uncertain, kNetworks * 40);  // nearly all: x/x has none
}

}  // namespace
}  // namespace sparewright::ledger
