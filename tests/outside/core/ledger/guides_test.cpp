// Worked examples of other guides, through the ledger: first-order values and uncertainties.
#include <cmath>

#include <gtest/gtest.h>

#include "core/ledger/ledger.hpp"
#include "stages.hpp"

namespace sparewright::ledger {
namespace {

using quantity::Kind;
using tests::job;
using tests::number;

const double kRectangular = 1.0 / std::sqrt(3.0);  // standard uncertainty of a half-width of 1

// --- EA-4/02 M:2022, S2: calibration of a 10 kg weight, in milligrams over 10 kg ---------------------------
TEST(OutsideEa402, TenKilogramWeight) {
  Ledger ledger = job([](Pen& pen) {
    const Figure& standard = pen.root("standard", number(5.0, {{"certificate", 45.0 / 2.0}}));
    const Figure& drift = pen.root("drift", number(0.0, {{"drift", 15.0 * kRectangular}}));
    const Figure& difference = pen.root("difference", number(20.0, {{"scatter", 25.0 / std::sqrt(3.0)}}));
    const Figure& centring = pen.root("centring", number(0.0, {{"centring", 10.0 * kRectangular}}));
    const Figure& buoyancy = pen.root("buoyancy", number(0.0, {{"buoyancy", 10.0 * kRectangular}}));
    pen.work(
        "weight", Kind::kNumber, "", [](auto a, auto b, auto c, auto d, auto e) { return a + b + c + d + e; },
        standard, drift, difference, centring, buoyancy);
  });
  EXPECT_NEAR(ledger.get("x/weight").value, 25.0, 0.5);
  EXPECT_NEAR(ledger.get("x/weight").u(), 29.2, 0.1);  // the printed sum of rounded rows; 29.26 unrounded
}

// --- EA-4/02, S4: calibration of a 50 mm gauge block, in nanometres (inputs and answer from memory) --------
TEST(RememberedEa402, GaugeBlock) {
  const double warm = 50.0e6 * 11.5e-6 * 0.05;  // 0.05 K of 50 mm
  Ledger ledger = job([warm](Pen& pen) {
    Root sum = number(20.0 - 94.0, {{"standard", 15.0},
                                    {"drift", 30.0 * kRectangular},
                                    {"scatter", 12.0 / std::sqrt(5.0)},
                                    {"comparator", 32.0 * kRectangular},
                                    {"temperatures", warm * kRectangular},
                                    {"expansion", 50.0e6 * (2e-6 / std::sqrt(6.0)) * (0.5 * kRectangular)},
                                    {"variation", 6.7 * kRectangular}});
    pen.root("block", sum);
  });
  EXPECT_NEAR(ledger.get("x/block").value, -74.0, 0.5);  // 49.999926 mm
  EXPECT_NEAR(ledger.get("x/block").u(), 36.4, 0.05);
}

// --- NIST Technical Note 1900 (2015), example E13: coefficient of thermal expansion ------------------------
TEST(OutsideNistTn1900, ThermalExpansion) {
  Ledger ledger = job([](Pen& pen) {
    const Figure& l0 = pen.root("L0", number(1.4999, {{"L0", 0.0001, 3}}));
    const Figure& l1 = pen.root("L1", number(1.5021, {{"L1", 0.0002, 3}}));
    const Figure& t0 = pen.root("T0", number(288.15, {{"T0", 0.02, 3}}));
    const Figure& t1 = pen.root("T1", number(373.10, {{"T1", 0.05, 3}}));
    pen.work(
        "a", Kind::kNumber, "", [](auto a, auto b, auto c, auto d) { return (b - a) / (a * (d - c)); }, l0,
        l1, t0, t1);
  });
  EXPECT_NEAR(ledger.get("x/a").value, 1.7266e-5, 0.00005e-5);
  EXPECT_NEAR(ledger.get("x/a").u(), 1.76e-6, 0.005e-6);
}

// --- NIST Technical Note 1900 (2015), example E3: viscosity by a falling ball, first-order value -----------
TEST(OutsideNistTn1900, Viscosity) {
  Ledger ledger = job([](Pen& pen) {
    const Figure& mc = pen.root("muc", number(4.63, {{"muc", 0.0463}}));
    const Figure& tm = pen.root("tm", number(61.0, {{"tm", 6.1}}));
    const Figure& tc = pen.root("tc", number(36.6, {{"tc", 5.49}}));
    const Figure& rb = pen.root("rb", number(2217.0, {{"rb", 0.5}}));
    const Figure& rm = pen.root("rm", number(1180.0, {{"rm", 0.5}}));
    const Figure& rc = pen.root("rc", number(810.0, {{"rc", 0.5}}));
    pen.work(
        "mu", Kind::kNumber, "",
        [](auto c, auto t, auto u, auto b, auto m, auto k) { return c * t * (b - m) / (u * (b - k)); }, mc,
        tm, tc, rb, rm, rc);
  });
  EXPECT_NEAR(ledger.get("x/mu").value, 5.69, 0.005);
}

// --- JCGM 101:2008, 9.3: calibration of a weight, first-order answer (printed answer from memory) ----------
TEST(RememberedJcgm101, MassCalibration) {
  Ledger ledger = job([](Pen& pen) {
    const Figure& reference = pen.root("mRc", number(100000.000, {{"mRc", 0.050}}));
    const Figure& added = pen.root("dmRc", number(1.234, {{"dmRc", 0.020}}));
    const Figure& air = pen.root("ra", number(1.20, {{"ra", 0.10 * kRectangular}}));
    const Figure& weight = pen.root("rW", number(8000.0, {{"rW", 1000.0 * kRectangular}}));
    const Figure& block = pen.root("rR", number(8000.0, {{"rR", 50.0 * kRectangular}}));
    pen.work(
        "dm", Kind::kNumber, "",
        [](auto m, auto d, auto a, auto w, auto r) {
          return (m + d) * (1.0 + (a - 1.2) * (1.0 / w - 1.0 / r)) - 100000.0;
        },
        reference, added, air, weight, block);
  });
  EXPECT_NEAR(ledger.get("x/dm").value, 1.2340, 0.00005);
  EXPECT_NEAR(ledger.get("x/dm").u(), 0.0539, 0.00005);
}

// --- JCGM 101:2008, 9.2.2 and 9.2.4: sums of four; 9.4.3: squares of small quantities ----------------------
TEST(OutsideJcgm101, SumOfFour) {
  const auto sum = [](double last) {
    Ledger ledger = job([last](Pen& pen) {
      const Figure& a = pen.root("a", number(0.0, {{"a", 1.0}}));
      const Figure& b = pen.root("b", number(0.0, {{"b", 1.0}}));
      const Figure& c = pen.root("c", number(0.0, {{"c", 1.0}}));
      const Figure& d = pen.root("d", number(0.0, {{"d", last}}));
      pen.work(
          "y", Kind::kNumber, "", [](auto p, auto q, auto r, auto s) { return p + q + r + s; }, a, b, c, d);
    });
    return ledger.get("x/y");
  };
  EXPECT_NEAR(sum(1.0).u(), 2.00, 0.005);
  EXPECT_NEAR(sum(1.0).expanded(), 3.92, 0.005);
  EXPECT_NEAR(sum(10.0).u(), 10.1, 0.05);  // 10.149 unrounded
}

TEST(OutsideJcgm101, SquaresOfSmallQuantities) {
  const auto squares = [](double x1) {
    Ledger ledger = job([x1](Pen& pen) {
      const Figure& a = pen.root("a", number(x1, {{"a", 0.005}}));
      const Figure& b = pen.root("b", number(0.0, {{"b", 0.005}}));
      pen.work(
          "y", Kind::kNumber, "", [](auto p, auto q) { return p * p + q * q; }, a, b);
    });
    return ledger.get("x/y").u() * 1e6;
  };
  EXPECT_NEAR(squares(0.0), 0.0, 1e-9);  // where the first-order law says nothing
  EXPECT_NEAR(squares(0.010), 100.0, 0.5);
  EXPECT_NEAR(squares(0.050), 500.0, 0.5);
}

}  // namespace
}  // namespace sparewright::ledger
