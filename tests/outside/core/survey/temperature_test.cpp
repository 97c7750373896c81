// Published examples of expansion, through the ledger with the model readings are reduced by.
#include <cmath>

#include <gtest/gtest.h>

#include "core/ledger/ledger.hpp"
#include "core/survey/warmth.hpp"

namespace sparewright::survey {
namespace {

using ledger::Figure;
using ledger::Ledger;
using ledger::Pen;
using quantity::Kind;

const Figure& root(Pen& pen, std::string_view name, double value, double u, double dof = INFINITY) {
  ledger::Root root;
  root.kind = Kind::kNumber;
  root.value = value;
  root.shares = {{std::string(name), u, dof}};
  return pen.root(name, root);
}

// JCGM 100:2008, H.1: an end gauge of 50 mm compared with a standard, in nm. The comparator shows the standard and the
// difference d; the standard expands by as, the gauge by as + da; the gauge is theta off 20 degC, the standard theta - dt.
// Half-widths over the square roots of H.1.3: as +-2e-6, da +-1e-6 rectangular; theta -0.1, u 0.41; dt +-0.05 rectangular.
TEST(OutsideEndGauge, OfTheGumH1) {
  Ledger book;
  book.stage({"h1", {}, [](Pen& pen) {
                const auto& ls = root(pen, "ls", 50'000'623.0, 25.0, 18);
                const auto& d = root(pen, "d", 215.0, 9.7, 25.6);
                const auto& as = root(pen, "as", 11.5e-6, 1.2e-6);
                const auto& da = root(pen, "da", 0.0, 0.58e-6, 50);
                const auto& theta = root(pen, "theta", -0.1, 0.41);
                const auto& dt = root(pen, "dt", 0.0, 0.029, 2);
                pen.work(
                    "l", Kind::kNumber, "the gauge at 20 degC",
                    [](auto ls_, auto d_, auto as_, auto da_, auto theta_, auto dt_) {
                      // d is what the comparator shows over the standard as warm as it is.
                      const auto shown_standard = ls_ * (1.0 + as_ * (theta_ - dt_));
                      const auto zero = theta_ * 0.0;
                      return at_twenty(shown_standard + d_, zero, zero, as_ + da_, theta_);
                    },
                    ls, d, as, da, theta, dt);
              }});
  const Figure l = book.get("h1/l");
  EXPECT_NEAR(l.value, 50'000'838.0, 0.5);
  EXPECT_NEAR(l.u(), 31.7, 0.05);  // printed 32
  EXPECT_EQ(std::lround(l.u()), 32);
  EXPECT_EQ(std::floor(ledger::effective_degrees_of_freedom(l.shares)), 16.0);
}

// NIST Technical Note 1900 (2015), example E13: a bar of 1.4999 m at 288.15 K is 1.5021 m at 373.10 K. Its expansion from the
// two lengths, and back: reduced by that expansion both are one length.
TEST(OutsideExpansion, OfNistE13) {
  Ledger book;
  book.stage({"e13", {}, [](Pen& pen) {
                const auto& l0 = root(pen, "l0", 1.4999, 0.0001, 3);
                const auto& l1 = root(pen, "l1", 1.5021, 0.0002, 3);
                const auto& t0 = root(pen, "t0", 288.15, 0.02, 3);
                const auto& t1 = root(pen, "t1", 373.10, 0.05, 3);
                const auto& a = pen.work(
                    "a", Kind::kNumber, "growth over length and warming",
                    [](auto l0_, auto l1_, auto t0_, auto t1_) { return (l1_ - l0_) / (l0_ * (t1_ - t0_)); },
                    l0, l1, t0, t1);
                pen.work(
                    "cold", Kind::kNumber, "the warm length as it is at the lower temperature",
                    [](auto l1_, auto t0_, auto t1_, auto a_) {
                      const auto zero = a_ * 0.0;
                      return at_twenty(l1_, zero, zero, a_, t1_ - t0_);
                    },
                    l1, t0, t1, a);
              }});
  const Figure a = book.get("e13/a");
  EXPECT_NEAR(a.value, 1.7266e-5, 5e-10);
  EXPECT_NEAR(a.u(), 1.76e-6, 5e-9);
  const Figure cold = book.get("e13/cold");
  EXPECT_NEAR(cold.value, 1.4999, 1e-12);
  EXPECT_NEAR(cold.u(), 0.0001,
              1e-8);  // the doubts of the expansion cancel: what is left is that of the cold length
}

}  // namespace
}  // namespace sparewright::survey
