// NIST Statistical Reference Datasets, linear regression (itl.nist.gov/div898/strd), and JCGM 100:2008, H.3:
// lines through points, as readings of equal weight. NoInt1 and NoInt2 are from memory.
#include <cmath>
#include <ostream>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/survey/adjust.hpp"
#include "networks.hpp"

namespace sparewright::survey {
namespace {

using quantity::Kind;
using tests::adjusted;
using tests::lengths;
using tests::network_of;
using tests::Row;

constexpr double kCertifiedDigits = 1e-10;  // relative; the certified values have 15 digits

// y = B0 + B1 x, or y = B1 x, with readings of unit weight.
Adjustment line(const std::vector<std::pair<double, double>>& points, bool through_zero) {
  std::vector<Row> rows;
  rows.reserve(points.size());
  for (const auto& [x, y] : points) {
    rows.push_back({fmt::format("{}{:.10g}*B1", through_zero ? "" : "B0 + ", x), y, 1.0});
  }
  std::vector<std::string> names{"B1"};
  if (!through_zero) names.emplace_back("B0");
  return adjusted(network_of(lengths(names, Kind::kNumber), rows, Kind::kNumber));
}

struct Certified {
  const char* name;
  std::vector<std::pair<double, double>> points;
  bool through_zero;
  double b1;
  double b1_sd;
  double b0;
  double b0_sd;
  double residual_sd;
};
std::ostream& operator<<(std::ostream& out, const Certified& certified) {
  return out << certified.name;
}

std::vector<std::pair<double, double>> no_intercept_1() {
  std::vector<std::pair<double, double>> points;
  for (int i = 0; i <= 10; ++i)
    points.emplace_back(60 + i, 130 + i);
  return points;
}

void expect_certified(const Certified& certified) {
  const auto report = line(certified.points, certified.through_zero);
  const double residual_sd = std::sqrt(report.chi_square / report.degrees_of_freedom);
  EXPECT_NEAR(report.unknowns[0].value / certified.b1, 1.0, kCertifiedDigits);
  EXPECT_NEAR(report.unknowns[0].u * residual_sd / certified.b1_sd, 1.0, kCertifiedDigits);
  EXPECT_NEAR(residual_sd / certified.residual_sd, 1.0, kCertifiedDigits);
  if (certified.through_zero) return;
  EXPECT_NEAR(report.unknowns[1].value / certified.b0, 1.0, kCertifiedDigits);
  EXPECT_NEAR(report.unknowns[1].u * residual_sd / certified.b0_sd, 1.0, kCertifiedDigits);
}
class OutsideStrd : public testing::TestWithParam<Certified> {};
TEST_P(OutsideStrd, GivesTheCertifiedValues) {
  expect_certified(GetParam());
}
INSTANTIATE_TEST_SUITE_P(
    Nist, OutsideStrd,
    testing::Values(Certified{
        "Norris",
        {{0.2, 0.1},     {337.4, 338.8}, {118.2, 118.1}, {884.6, 888.0}, {10.1, 9.2},    {226.5, 228.1},
         {666.3, 668.5}, {996.3, 998.5}, {448.6, 449.1}, {777.0, 778.9}, {558.2, 559.2}, {0.4, 0.3},
         {0.6, 0.1},     {775.5, 778.1}, {666.9, 668.8}, {338.0, 339.3}, {447.5, 448.9}, {11.6, 10.8},
         {556.0, 557.7}, {228.1, 228.3}, {995.8, 998.0}, {887.6, 888.8}, {120.2, 119.6}, {0.3, 0.3},
         {0.3, 0.6},     {556.8, 557.6}, {339.1, 339.3}, {887.2, 888.0}, {999.0, 998.5}, {779.0, 778.9},
         {11.1, 10.2},   {118.3, 117.6}, {229.2, 228.9}, {669.1, 668.4}, {448.9, 449.2}, {0.5, 0.2}},
        false,
        1.00211681802045,
        0.429796848199937e-3,
        -0.262323073774029,
        0.232818234301152,
        0.884796396144373}));

class RememberedStrd : public testing::TestWithParam<Certified> {};
TEST_P(RememberedStrd, GivesTheCertifiedValues) {
  expect_certified(GetParam());
}
INSTANTIATE_TEST_SUITE_P(Nist, RememberedStrd,
                         testing::Values(Certified{"NoInt1", no_intercept_1(), true, 2.07438016528926,
                                                   0.0165289256198347, 0, 0, 3.56753034006338},
                                         Certified{"NoInt2",
                                                   {{4, 3}, {5, 4}, {6, 4}},
                                                   true,
                                                   0.727272727272727,
                                                   0.0420827318078432,
                                                   0,
                                                   0,
                                                   0.369274472937998}));

// JCGM 100:2008, H.3: corrections of a thermometer, b = y1 + y2 (t - 20 degC).
TEST(OutsideGum, TheThermometerLineOfH3) {
  const double t[] = {21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511};
  const double b[] = {-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160};
  std::vector<std::pair<double, double>> points;
  for (std::size_t i = 0; i < std::size(t); ++i)
    points.emplace_back(t[i] - 20.0, b[i]);
  const auto report = line(points, false);
  const double s = std::sqrt(report.chi_square / report.degrees_of_freedom);
  const double u1 = report.unknowns[1].u * s;
  const double u2 = report.unknowns[0].u * s;
  const double covariance = report.covariance.at(0, 1) * s * s;
  EXPECT_EQ(report.degrees_of_freedom, 9);
  EXPECT_NEAR(s, 0.0035, 0.00005);
  EXPECT_NEAR(report.unknowns[1].value, -0.1712, 0.00005);
  EXPECT_NEAR(u1, 0.0029, 0.00005);
  EXPECT_NEAR(report.unknowns[0].value, 0.00218, 0.000005);
  EXPECT_NEAR(u2, 0.00067, 0.000005);
  EXPECT_NEAR(covariance / (u1 * u2), -0.930, 0.0005);
  EXPECT_NEAR(report.unknowns[1].value + 10.0 * report.unknowns[0].value, -0.1494, 0.00005);  // at 30 degC
  EXPECT_NEAR(std::sqrt(u1 * u1 + 100.0 * u2 * u2 + 20.0 * covariance), 0.0041, 0.00005);
}

}  // namespace
}  // namespace sparewright::survey
