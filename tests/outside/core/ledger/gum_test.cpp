// Worked examples of JCGM 100:2008 (GUM), through the ledger: readings as roots, their causes as shares.
#include <array>
#include <cmath>
#include <numeric>
#include <string>
#include <vector>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/ledger/ledger.hpp"
#include "core/ledger/student_t.hpp"
#include "stages.hpp"

namespace sparewright::ledger {
namespace {

using quantity::Kind;
using tests::job;
using tests::number;

const double kRectangular = 1.0 / std::sqrt(3.0);  // standard uncertainty of a half-width of 1

// --- JCGM 100:2008 (GUM), 4.4.3: twenty readings of a temperature ------------------------------------------
TEST(OutsideGum443, MeanOfTwentyReadings) {
  const std::vector<double> readings{96.90,  98.18,  98.25,  98.61,  99.03,  99.49,  99.56,
                                     99.74,  99.89,  100.07, 100.33, 100.42, 100.68, 100.95,
                                     101.11, 101.20, 101.57, 101.84, 102.36, 102.72};
  const auto n = static_cast<double>(readings.size());
  const double mean = std::accumulate(readings.begin(), readings.end(), 0.0) / n;
  double squares = 0.0;
  for (const double reading : readings)
    squares += (reading - mean) * (reading - mean);
  Ledger ledger = job([&](Pen& pen) {
    pen.root("mean", number(mean, {{"scatter", std::sqrt(squares / (n - 1.0) / n), n - 1.0}}));
  });
  const Figure t = ledger.get("x/mean");
  EXPECT_NEAR(t.value, 100.145, 0.0005);
  EXPECT_NEAR(t.u(), 0.333, 0.0005);
  EXPECT_NEAR(t.expanded(), 2.09 * 0.333, 0.002);  // t95 of 19 degrees of freedom from table G.2
}

// --- JCGM 100:2008, G.4.1: the product of three inputs -----------------------------------------------------
TEST(OutsideGumG41, EffectiveDegreesOfFreedomOfAProduct) {
  Ledger ledger = job([](Pen& pen) {
    const Figure& a = pen.root("a", number(2.0, {{"a", 0.0025 * 2.0, 9}}));
    const Figure& b = pen.root("b", number(3.0, {{"b", 0.0057 * 3.0, 4}}));
    const Figure& c = pen.root("c", number(5.0, {{"c", 0.0082 * 5.0, 14}}));
    pen.work(
        "y", Kind::kNumber, "", [](auto p, auto q, auto r) { return 7.0 * p * q * r; }, a, b, c);
  });
  const Figure y = ledger.get("x/y");
  EXPECT_NEAR(y.u() / y.value, 0.0103, 0.00005);
  EXPECT_NEAR(effective_degrees_of_freedom(y.shares), 19.0, 0.05);
  EXPECT_NEAR(y.expanded() / y.value, 0.022, 0.0005);
}
// Unrounded it is 18.9987 and is cut down to 18, whose t95 in table G.2 is 2.10.
TEST(OutsideGumG41, CoverageFactorOfTheNextLowerWholeNumber) {
  const Shares shares{{"a", 0.25, 9}, {"b", 0.57, 4}, {"c", 0.82, 14}};
  EXPECT_NEAR(effective_degrees_of_freedom(shares), 18.9987, 0.00005);
  EXPECT_NEAR(coverage_factor(shares), 2.10, 0.005);
}

// --- JCGM 100:2008, H.1: calibration of an end gauge; lengths in nanometres --------------------------------
// The comparator: scatter 5.8 nm (24 degrees of freedom), random error 3.9 nm (5), systematic 6.7 nm (8).
class OutsideGumH1 : public testing::Test {
 protected:
  Ledger ledger = job([](Pen& pen) {
    const Figure& standard = pen.root("standard", number(50.000623e6, {{"certificate", 75.0 / 3.0, 18}}));
    const Figure& difference = pen.root(
        "difference",
        number(215.0, {{"repeats", 13.0 / std::sqrt(5.0), 24}, {"random", 3.9, 5}, {"systematic", 6.7, 8}}));
    const Figure& expansion = pen.root("expansion", number(11.5e-6, {{"expansion", 2e-6 * kRectangular}}));
    const Figure& deviation = pen.root("deviation", number(-0.1, {{"deviation", 0.41}}));
    const Figure& expansions = pen.root("expansions", number(0.0, {{"expansions", 1e-6 * kRectangular, 50}}));
    const Figure& temperatures =
        pen.root("temperatures", number(0.0, {{"temperatures", 0.05 * kRectangular, 2}}));
    pen.work(
        "length", Kind::kNumber, "",
        [](auto ls, auto d, auto as, auto theta, auto da, auto dt) {
          return ls + d - ls * (da * theta + as * dt);
        },
        standard, difference, expansion, deviation, expansions, temperatures);
  });
  Figure length = ledger.get("x/length");
  double nu = effective_degrees_of_freedom(length.shares);
};

TEST_F(OutsideGumH1, Difference) {
  const Figure d = ledger.get("x/difference");
  EXPECT_NEAR(d.u(), 9.7, 0.05);
  EXPECT_NEAR(effective_degrees_of_freedom(d.shares), 25.6, 0.2);  // 25.6 from rounded shares
}
TEST_F(OutsideGumH1, Length) {
  EXPECT_NEAR(length.value, 50.000838e6, 0.5);
}
TEST_F(OutsideGumH1, CombinedUncertainty) {
  EXPECT_NEAR(length.u(), 32.0, 0.5);
}
TEST_F(OutsideGumH1, CombinedVariance) {
  EXPECT_NEAR(length.u() * length.u(), 1002.0, 2.0);
}  // of rounded shares
TEST_F(OutsideGumH1, EffectiveDegreesOfFreedom) {
  EXPECT_EQ(std::floor(nu), 16.0);
  EXPECT_NEAR(nu, 16.7, 0.1);
}
TEST_F(OutsideGumH1, ExpandedAt99Percent) {
  // The GUM multiplies the rounded 32 nm: 2.92 * 32 = 93; the unrounded 31.7 nm give 92.4.
  const double t = student_t_two_sided(0.99, std::floor(nu));
  EXPECT_NEAR(t, 2.92, 0.005);
  EXPECT_NEAR(t * std::round(length.u()), 93.0, 0.5);
}
TEST_F(OutsideGumH1, ExpandedAt95Percent) {
  // t95 of 16 in table G.2 is 2.12; times the rounded 32 nm: 68.
  EXPECT_NEAR(length.k(), 2.12, 0.005);
  EXPECT_NEAR(length.k() * std::round(length.u()), 68.0, 0.5);
  EXPECT_DOUBLE_EQ(length.expanded(), length.k() * length.u());
}
TEST_F(OutsideGumH1, WhatEachInputContributes) {
  const auto moved = [&](const std::string& root) {
    for (const Moved& m : ledger.moved_by("x/" + root)) {
      if (m.name == "x/length") return m.amount;
    }
    return -1.0;
  };
  EXPECT_NEAR(moved("standard"), 25.0, 0.05);
  EXPECT_NEAR(moved("difference"), 9.7, 0.05);
  EXPECT_NEAR(moved("expansions"), 2.9, 0.05);
  EXPECT_NEAR(moved("temperatures"), 16.6, 0.05);
  EXPECT_EQ(moved("expansion"), 0.0);
  EXPECT_EQ(moved("deviation"), 0.0);
}

// --- JCGM 100:2008, H.2: resistance and reactance from five simultaneous sets ------------------------------
// What one set contributes to the three means is one cause, so their correlations come of themselves.
class OutsideGumH2 : public testing::Test {
 protected:
  static const Figure& mean_of(Pen& pen, const std::string& name, const std::array<double, 5>& readings) {
    const double mean = std::accumulate(readings.begin(), readings.end(), 0.0) / 5.0;
    Shares shares;
    for (std::size_t i = 0; i < readings.size(); ++i) {
      shares.push_back({fmt::format("set {}", i), (readings.at(i) - mean) / std::sqrt(5.0 * 4.0)});
    }
    return pen.root(name, number(mean, shares));
  }
  Ledger ledger = job([](Pen& pen) {
    const Figure& v = mean_of(pen, "V", {5.007, 4.994, 5.005, 4.990, 4.999});
    const Figure& i = mean_of(pen, "I", {19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3});
    const Figure& phi = mean_of(pen, "phi", {1.0456, 1.0438, 1.0468, 1.0428, 1.0433});
    using std::cos, std::sin;
    pen.work(
        "R", Kind::kNumber, "", [](auto a, auto b, auto c) { return a / b * cos(c); }, v, i, phi);
    pen.work(
        "X", Kind::kNumber, "", [](auto a, auto b, auto c) { return a / b * sin(c); }, v, i, phi);
    pen.work(
        "Z", Kind::kNumber, "", [](auto a, auto b) { return a / b; }, v, i);
  });
  double correlation(const std::string& a, const std::string& b) {
    const Figure x = ledger.get("x/" + a);
    const Figure y = ledger.get("x/" + b);
    return covariance(x.shares, y.shares) / (x.u() * y.u());
  }
};

TEST_F(OutsideGumH2, Means) {
  EXPECT_NEAR(ledger.get("x/V").value, 4.9990, 0.00005);
  EXPECT_NEAR(ledger.get("x/I").value, 19.6610e-3, 0.00005e-3);
  EXPECT_NEAR(ledger.get("x/phi").value, 1.04446, 0.000005);
  EXPECT_NEAR(ledger.get("x/V").u(), 0.0032, 0.00005);
  EXPECT_NEAR(ledger.get("x/I").u(), 0.0095e-3, 0.00005e-3);
  EXPECT_NEAR(ledger.get("x/phi").u(), 0.00075, 0.000005);
}
TEST_F(OutsideGumH2, CorrelationsOfTheMeans) {
  EXPECT_NEAR(correlation("V", "I"), -0.36, 0.005);
  EXPECT_NEAR(correlation("V", "phi"), 0.86, 0.005);
  EXPECT_NEAR(correlation("I", "phi"), -0.65, 0.005);
}
TEST_F(OutsideGumH2, Resistance) {
  EXPECT_NEAR(ledger.get("x/R").value, 127.732, 0.0005);
  EXPECT_NEAR(ledger.get("x/R").u(), 0.071, 0.0005);
}
TEST_F(OutsideGumH2, Reactance) {
  EXPECT_NEAR(ledger.get("x/X").value, 219.847, 0.0005);
  EXPECT_NEAR(ledger.get("x/X").u(), 0.295, 0.001);  // 0.2956 unrounded
}
TEST_F(OutsideGumH2, Impedance) {
  EXPECT_NEAR(ledger.get("x/Z").value, 254.260, 0.0005);
  EXPECT_NEAR(ledger.get("x/Z").u(), 0.236, 0.0005);
}
TEST_F(OutsideGumH2, CorrelationsOfTheResults) {
  EXPECT_NEAR(correlation("R", "X"), -0.588, 0.0005);
  EXPECT_NEAR(correlation("R", "Z"), -0.485, 0.0005);
  EXPECT_NEAR(correlation("X", "Z"), 0.993, 0.0005);
}
TEST_F(OutsideGumH2, WithoutTheCorrelationsAsInTableH5) {
  Ledger apart = job([this](Pen& pen) {
    const auto alone = [&](const std::string& name) -> const Figure& {
      return pen.root(name, number(ledger.get("x/" + name).value, {{name, ledger.get("x/" + name).u()}}));
    };
    const Figure& v = alone("V");
    const Figure& i = alone("I");
    const Figure& phi = alone("phi");
    using std::cos, std::sin;
    pen.work(
        "R", Kind::kNumber, "", [](auto a, auto b, auto c) { return a / b * cos(c); }, v, i, phi);
    pen.work(
        "X", Kind::kNumber, "", [](auto a, auto b, auto c) { return a / b * sin(c); }, v, i, phi);
    pen.work(
        "Z", Kind::kNumber, "", [](auto a, auto b) { return a / b; }, v, i);
  });
  EXPECT_NEAR(apart.get("x/R").u(), 0.195, 0.0005);
  EXPECT_NEAR(apart.get("x/X").u(), 0.201, 0.0005);
  EXPECT_NEAR(apart.get("x/Z").u(), 0.204, 0.0005);
}

// --- JCGM 100:2008, H.3: a straight line through eleven corrections of a thermometer -----------------------
// Least squares hands in values and slopes: y2 = sum (theta - mean) b / D, y1 = mean b - y2 mean theta.
class OutsideGumH3 : public testing::Test {
 protected:
  Ledger ledger = job([](Pen& pen) {
    const std::array<double, 11> t{21.521, 22.012, 22.512, 23.003, 23.507, 23.999,
                                   24.513, 25.002, 25.503, 26.010, 26.511};
    const std::array<double, 11> b{-0.171, -0.169, -0.166, -0.159, -0.164, -0.165,
                                   -0.156, -0.157, -0.159, -0.161, -0.160};
    const double mean_t = std::accumulate(t.begin(), t.end(), 0.0) / 11.0 - 20.0;
    const double mean_b = std::accumulate(b.begin(), b.end(), 0.0) / 11.0;
    double d = 0.0;
    double slope = 0.0;
    for (std::size_t k = 0; k < t.size(); ++k) {
      d += (t.at(k) - 20.0 - mean_t) * (t.at(k) - 20.0 - mean_t);
      slope += (t.at(k) - 20.0 - mean_t) * b.at(k);
    }
    slope /= d;
    const double start = mean_b - slope * mean_t;
    double squares = 0.0;
    for (std::size_t k = 0; k < t.size(); ++k)
      squares += std::pow(b.at(k) - start - slope * (t.at(k) - 20.0), 2.0);
    const double s = std::sqrt(squares / 9.0);
    pen.root("s", number(s, {}));
    std::vector<Term> to_start;
    std::vector<Term> to_slope;
    for (std::size_t k = 0; k < t.size(); ++k) {
      const Figure& reading = pen.root(fmt::format("b{}", k), number(b.at(k), {{fmt::format("b{}", k), s}}));
      const double weight = (t.at(k) - 20.0 - mean_t) / d;
      to_slope.push_back({&reading, weight});
      to_start.push_back({&reading, 1.0 / 11.0 - weight * mean_t});
    }
    const Figure& y1 = pen.linear("y1", Kind::kNumber, "", start, to_start);
    const Figure& y2 = pen.linear("y2", Kind::kNumber, "", slope, to_slope);
    pen.work(
        "b30", Kind::kNumber, "", [](auto p, auto q) { return p + q * 10.0; }, y1, y2);
  });
};

TEST_F(OutsideGumH3, ScatterAboutTheLine) {
  EXPECT_NEAR(ledger.get("x/s").value, 0.0035, 0.00005);
}
TEST_F(OutsideGumH3, Intercept) {
  EXPECT_NEAR(ledger.get("x/y1").value, -0.1712, 0.00005);
  EXPECT_NEAR(ledger.get("x/y1").u(), 0.0029, 0.00005);
}
TEST_F(OutsideGumH3, Slope) {
  EXPECT_NEAR(ledger.get("x/y2").value, 0.00218, 0.000005);
  EXPECT_NEAR(ledger.get("x/y2").u(), 0.00067, 0.000005);
}
TEST_F(OutsideGumH3, Correlation) {
  const Figure a = ledger.get("x/y1");
  const Figure b = ledger.get("x/y2");
  EXPECT_NEAR(covariance(a.shares, b.shares) / (a.u() * b.u()), -0.930, 0.0005);
}
TEST_F(OutsideGumH3, CorrectionAtThirtyDegrees) {
  EXPECT_NEAR(ledger.get("x/b30").value, -0.1494, 0.00005);
  EXPECT_NEAR(ledger.get("x/b30").u(), 0.0041, 0.00005);
}

}  // namespace
}  // namespace sparewright::ledger
