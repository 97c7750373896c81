// Fits to touches against published circles and against SciPy (Debian python3-scipy): scipy.optimize.least_squares on the
// distances square to the form, slopes by complex steps, covariance by inverting the normal matrix.
#include <cmath>
#include <sstream>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/survey/circle_fit.hpp"
#include "core/survey/flat_fit.hpp"
#include "judge.hpp"
#include "touches.hpp"

namespace sparewright::survey {
namespace {

// W. Gander, G. H. Golub, R. Strebel, Least-squares fitting of circles and ellipses, BIT 34 (1994) 558-578: the geometric
// fit of six points has its middle at (4.7398, 2.9835), radius 4.7142.
TEST(OutsideCircleFits, GanderGolubStrebel) {
  const std::vector<Point2> points{{1, 7}, {2, 6}, {5, 8}, {7, 7}, {9, 5}, {3, 7}};
  const auto fit = fit_circle(points);
  ASSERT_TRUE(fit.has_value());
  EXPECT_NEAR(fit->x, 4.7398, 5e-5);
  EXPECT_NEAR(fit->y, 2.9835, 5e-5);
  EXPECT_NEAR(fit->radius, 4.7142, 5e-5);
  EXPECT_NEAR(dot(fit->off, fit->off), 1.22760, 5e-6);  // recomputed with the reference data
}

// Sixteen points round a full circle, tutorial "Level network adjustment and data snooping" (Budapest University of
// Technology, Department of Geodesy; repository OSGeoLabBp/tutorials); the geometric answer was recomputed from them by an
// independent script: (477.6483, 589.8911), 29.6211, residual standard deviation 0.588 with 13 degrees of freedom.
TEST(OutsideCircleFits, SixteenPointsOfATutorial) {
  const std::vector<Point2> points{
      {479.390, 619.630}, {489.810, 616.200}, {498.750, 610.025}, {505.080, 601.470},
      {507.319, 590.356}, {504.929, 578.789}, {497.890, 568.570}, {489.140, 561.830},
      {478.040, 559.480}, {465.190, 563.560}, {457.330, 569.652}, {450.090, 579.221},
      {447.447, 590.365}, {451.110, 601.940}, {457.580, 611.740}, {466.920, 618.530}};
  const auto fit = fit_circle(points);
  ASSERT_TRUE(fit.has_value());
  EXPECT_NEAR(fit->x, 477.6483, 5e-5);
  EXPECT_NEAR(fit->y, 589.8911, 5e-5);
  EXPECT_NEAR(fit->radius, 29.6211, 5e-5);
  EXPECT_NEAR(std::sqrt(dot(fit->off, fit->off) / fit->spare()), 0.588, 5e-4);
}

constexpr double kValues = 1e-9;       // relative to the extent
constexpr double kCovariances = 1e-6;  // relative to the standard uncertainties
constexpr std::uint64_t kFirstSeed = 4200;
constexpr int kCircles = 40;
constexpr int kLines = 20;
constexpr int kPlanes = 20;

constexpr std::string_view kScript = R"(
import sys, json
import numpy as np
from scipy.optimize import least_squares
for line in open(sys.argv[1]):
    p = np.array(json.loads(line))
    if p.shape[1] == 3 and p[0, 2] == -1e9:
        p = p[:, :2]
        start = np.array([p[:, 0].mean(), p[:, 1].mean(), 0.0])
        A = np.column_stack([p[:, 0], p[:, 1], np.ones(len(p))])
        a = np.linalg.lstsq(A, (p ** 2).sum(axis=1), rcond=None)[0]
        start = np.array([a[0] / 2, a[1] / 2, np.sqrt(a[2] + a[0] ** 2 / 4 + a[1] ** 2 / 4)])
        off = lambda v: np.sqrt((p[:, 0] - v[0]) ** 2 + (p[:, 1] - v[1]) ** 2) - v[2]
    else:
        middle = p[:, :-1].mean(axis=0)
        q = p[:, :-1] - middle
        start = np.linalg.lstsq(np.column_stack([np.ones(len(p)), q]), p[:, -1], rcond=None)[0]
        off = lambda v: (p[:, -1] - v[0] - q @ v[1:]) / np.sqrt(1 + (v[1:] ** 2).sum())
    def slopes(v):
        J = np.empty((len(p), len(v)))
        for j in range(len(v)):
            z = v.astype(complex)
            z[j] += 1e-30j
            J[:, j] = off(z).imag / 1e-30
        return J
    best = least_squares(off, start, jac=slopes, method="lm", xtol=1e-15, ftol=1e-15, gtol=1e-15, x_scale="jac")
    J = slopes(best.x)
    C = np.linalg.inv(J.T @ J)
    print(" ".join(repr(float(x)) for x in list(best.x) + list(C.ravel())))
)";

std::string row(const std::vector<std::vector<double>>& touches) {
  std::string rows;
  for (const auto& touch : touches)
    rows += fmt::format("{}[{:.17g}]", rows.empty() ? "" : ", ", fmt::join(touch, ", "));
  return "[" + rows + "]\n";
}

std::vector<std::vector<double>> touches_number(int number) {
  const std::uint64_t seed = kFirstSeed + static_cast<std::uint64_t>(number);
  if (number >= kCircles) return tests::random_face(seed, number >= kCircles + kLines ? 3 : 2);
  std::vector<std::vector<double>> touches;
  for (const Point2& p : tests::random_arc(seed).touches)
    touches.push_back({p.x, p.y, -1e9});  // the mark of a circle in the judge's input
  return touches;
}

const std::vector<std::string>& verdicts() {
  static const std::vector<std::string> kVerdicts = [] {
    std::string input;
    for (int i = 0; i < kCircles + kLines + kPlanes; ++i)
      input += row(touches_number(i));
    return tests::judged(kScript, input);
  }();
  return kVerdicts;
}

std::vector<double> numbers(const std::string& line) {
  std::istringstream in(line);
  std::vector<double> out;
  for (double number = 0.0; in >> number;)
    out.push_back(number);
  return out;
}

void expect_alike(const std::vector<double>& judged, const std::vector<double>& values,
                  const Matrix& covariance, double extent) {
  const std::size_t n = values.size();
  ASSERT_EQ(judged.size(), n + n * n);
  for (std::size_t a = 0; a < n; ++a) {
    EXPECT_NEAR(values[a], judged[a], kValues * extent);
    for (std::size_t b = 0; b < n; ++b)
      EXPECT_NEAR(covariance.at(a, b), judged[n + a * n + b],
                  kCovariances * std::sqrt(covariance.at(a, a) * covariance.at(b, b)));
  }
}

class OutsideSciPyFits : public testing::TestWithParam<int> {};
TEST_P(OutsideSciPyFits, AreTheSame) {
  const auto touches = touches_number(GetParam());
  const auto judged = numbers(verdicts().at(static_cast<std::size_t>(GetParam())));
  if (GetParam() < kCircles) {
    std::vector<Point2> points;
    for (const auto& touch : touches)
      points.push_back({touch[0], touch[1]});
    const auto fit = fit_circle(points);
    ASSERT_TRUE(fit.has_value());
    expect_alike(judged, {fit->x, fit->y, fit->radius}, fit->covariance(), fit->radius);
    return;
  }
  const auto fit = fit_flat(touches, touches.front().size() - 1);
  ASSERT_TRUE(fit.has_value());
  std::vector<double> values{fit->at};
  values.insert(values.end(), fit->rises.begin(), fit->rises.end());
  expect_alike(judged, values, fit->covariance(), 100.0);
}
INSTANTIATE_TEST_SUITE_P(RandomTouches, OutsideSciPyFits, testing::Range(0, kCircles + kLines + kPlanes));

}  // namespace
}  // namespace sparewright::survey
