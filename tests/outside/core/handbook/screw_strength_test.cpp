// Strength of screws against printed rows: stress areas, proof and tensile loads (screw_loads.csv), shear
// areas and engagements (stripping.csv), and a published worked example.
#include <cmath>

#include <gtest/gtest.h>

#include "core/handbook/chuck_grip.hpp"
#include "core/handbook/friction.hpp"
#include "core/handbook/screw_grades.hpp"
#include "core/handbook/stripping_formulas.hpp"
#include "core/handbook/thread_engagement.hpp"
#include "core/handbook/tightening.hpp"
#include "core/quantity/display.hpp"
#include "published.hpp"

namespace sparewright::handbook {
namespace {

using published::Row;
using quantity::Area;
using quantity::Length;
using quantity::Pressure;
namespace unit = quantity::unit;

// One unit of the last figure of a number given to `figures` figures.
double last_figure(double value, int figures) {
  return std::pow(10.0, std::floor(std::log10(value)) - figures + 1);
}
double to_figures(double value, int figures) {
  const double last = last_figure(value, figures);
  return std::round(value / last) * last;
}

// --- stress areas: equal to the printed figures but for 4-40, 8-36 and 1/2-20, which are within one and a
// half of the last figure
double stress_area(const Row& row) {
  const ScrewThread thread = read_screw_thread(row["size"]).value();
  return row["unit"] == "in2" ? thread.stress_area.in(unit::square_inch)
                              : thread.stress_area.in(unit::square_millimetre);
}
// Metric areas are printed to three figures, inch ones to as many decimals as stand there.
bool is_printed_area(const Row& row) {
  const double last = row["unit"] == "in2" ? std::pow(10.0, -published::places(row["value"]))
                                           : last_figure(row.number("value"), 3);
  return std::abs(stress_area(row) - row.number("value")) <= 0.5000001 * last;
}
std::vector<Row> loads(const std::string& source, const std::string& kind) {
  std::vector<Row> out;
  for (const Row& row : published::rows_of("screw_loads.csv", source)) {
    if (row["kind"] == kind) out.push_back(row);
  }
  return out;
}
class OutsideStressArea : public testing::TestWithParam<Row> {};
TEST_P(OutsideStressArea, IsThePrintedOne) {
  const Row& row = GetParam();
  if (row["size"] == "4-40" || row["size"] == "8-36") {  // one more in the last figure than the formula gives
    EXPECT_NEAR(stress_area(row), row.number("value"), 0.000015);
  } else {
    EXPECT_TRUE(is_printed_area(row)) << stress_area(row);
  }
}
INSTANTIATE_TEST_SUITE_P(OutsideSheet, OutsideStressArea, testing::ValuesIn(loads("sheet", "area")));
INSTANTIATE_TEST_SUITE_P(OutsideHandbook, OutsideStressArea, testing::ValuesIn(loads("handbook", "area")));
INSTANTIATE_TEST_SUITE_P(OutsideIso898, OutsideStressArea, testing::ValuesIn(loads("iso 898", "area")));
TEST(OutsideStressAreas, HowManyAreEqualToTheDigit) {
  int equal = 0;
  std::string others;
  for (const Row& row : published::rows("screw_loads.csv")) {
    if (row["kind"] != "area") continue;
    if (is_printed_area(row)) {
      ++equal;
    } else {
      others += row["size"] + " ";
    }
  }
  EXPECT_EQ(equal, 41);
  EXPECT_EQ(others, "4-40 8-36 1/2-20 ");
}

// --- proof and tensile loads of ISO 898-1: stress area, rounded to three figures as the standard has it,
// times the strength; the table rounds to three figures, up or down as its makers chose.
double load_n(const Row& row) {
  const ScrewThread thread = read_screw_thread(row["size"]).value();
  const ScrewGrade grade = screw_grade(row["grade"], thread).value();
  const double area_mm2 = to_figures(thread.stress_area.in(unit::square_millimetre), 3);
  return area_mm2 * (row["kind"] == "proof" ? grade.proof : grade.tensile).in(unit::megapascal);
}
class OutsideScrewLoad : public testing::TestWithParam<Row> {};
TEST_P(OutsideScrewLoad, IsThePrintedOneWithinAFigure) {
  const Row& row = GetParam();
  EXPECT_NEAR(load_n(row), row.number("value"), last_figure(row.number("value"), 3)) << row;
}
INSTANTIATE_TEST_SUITE_P(OutsideProof, OutsideScrewLoad,
                         testing::ValuesIn(published::counted(loads("iso 898", "proof"))));
INSTANTIATE_TEST_SUITE_P(OutsideTensile, OutsideScrewLoad,
                         testing::ValuesIn(published::counted(loads("iso 898", "tensile"))));
TEST(OutsideScrewLoads, AllAreRecomputed) {
  int rows = 0;
  int equal = 0;
  std::string others;
  for (const Row& row : published::rows("screw_loads.csv")) {
    if (row["kind"] == "area") continue;
    ++rows;
    EXPECT_NEAR(load_n(row), row.number("value"), last_figure(row.number("value"), 3)) << row;
    if (std::abs(to_figures(load_n(row), 3) - row.number("value")) < 1e-6 * row.number("value")) {
      ++equal;
    } else {
      others += row["size"] + " " + row["grade"].substr(6) + (row["kind"] == "proof" ? " proof; " : "; ");
    }
    const ScrewThread thread = read_screw_thread(row["size"]).value();
    const ScrewLoads exact = screw_loads(thread, screw_grade(row["grade"], thread).value());
    const double newton = (row["kind"] == "proof" ? exact.proof : exact.tensile).in(unit::newton);
    EXPECT_NEAR(newton, row.number("value"), 0.0065 * row.number("value")) << row;
  }
  EXPECT_EQ(rows, 58);
  EXPECT_EQ(equal, 48);
  EXPECT_EQ(
      others,
      "M3 10.9 proof; M4 8.8 proof; M5 8.8; M5 8.8 proof; M6 8.8 proof; M8 8.8; M8 12.9; M10 8.8 proof; "
      "M16 8.8; M16 8.8 proof; ");
}

// --- stripping: FED-STD-H28/2 with the printed limits of 2A and 2B
struct Shear {
  ScrewThread thread;
  ShearAreas inch;  // for an inch of engagement
};
Shear shear(const Row& row) {
  const ScrewThread thread = read_screw_thread(row["thread"]).value();
  return {thread, shear_areas(thread, Length::of(1, unit::inch)).value()};
}
class OutsideStripping : public testing::TestWithParam<Row> {};
TEST_P(OutsideStripping, IsTheComputedCase) {
  const Row& row = GetParam();
  const Shear one = shear(row);
  const Pressure steel = Pressure::of(150000, unit::psi);
  const Pressure aluminium = Pressure::of(45000, unit::psi);
  double value = 0.0;
  if (row["kind"] == "external area") value = one.inch.screw.in(unit::square_inch);
  if (row["kind"] == "internal area") value = one.inch.hole.in(unit::square_inch);
  if (row["kind"] == "equal") value = least_engagement(one.thread, steel, steel)->least.in(unit::inch);
  if (row["kind"] == "aluminium")
    value = least_engagement(one.thread, steel, aluminium)->least.in(unit::inch);
  EXPECT_NEAR(value, row.number("value"), 0.0002);
}
INSTANTIATE_TEST_SUITE_P(OutsideH28, OutsideStripping, testing::ValuesIn(published::rows("stripping.csv")));

// CRC Press handbook (taylorfrancis.com 10.1201/9781482273786-99): an M10x1.5 bolt in 310 aluminium, 69,600 N
// at a shear strength of 130 MPa, needs 21.6 mm. It takes 9.968 for the least major diameter of the screw,
// which is the greatest of 6g.
TEST(OutsideEngagement, M10InAluminiumWithTheDiameterOfTheSource) {
  const double area_per_mm = hole_shear_area_mm2(1.0, 1.5, 9.968, 9.206);
  EXPECT_NEAR(69600 / 130.0 / area_per_mm, 21.6, 0.1);
}
TEST(OutsideEngagement, M10InAluminiumWithTheLeastDiameter) {
  const ScrewThread thread = read_screw_thread("M10x1.5").value();
  const ShearAreas one = shear_areas(thread, Length::of(1, unit::millimetre)).value();
  EXPECT_NEAR(one.limits.screw_major_min.in(unit::millimetre), 9.732, 1e-9);
  EXPECT_NEAR(69600 / 130.0 / one.hole.in(unit::square_millimetre), 24.9, 0.05);
  // The same by tensile strengths: 1200 MPa on 58 mm2 is the load, 260 MPa tensile is 130 in shear.
  const auto least =
      least_engagement(thread, Pressure::of(1200, unit::megapascal), Pressure::of(260, unit::megapascal));
  EXPECT_NEAR(least->least.in(unit::millimetre), 24.9, 0.05);
}

// Rules of thumb (Bolts, Screws and Thread Calculations, chapter 9): 1/2 in stud.
TEST(OutsideEngagement, TheRulesOfThumb) {
  std::vector<double> inches;
  for (const EngagementRule& rule : engagement_rules())
    inches.push_back(rule.of(quantity::Diameter::of(0.5, unit::inch)).in(unit::inch));
  ASSERT_EQ(inches.size(), 4U);
  EXPECT_NEAR(inches[0], 0.75, 1e-9);
  EXPECT_NEAR(inches[1], 0.5, 1e-9);
  EXPECT_NEAR(inches[2], 0.812, 1e-9);
  EXPECT_NEAR(inches[3], 1.062, 1e-9);
}

// Engineering Mechanics: Statics (textbook), problem 8-76: a couple of 35 N on 250 mm gives 2.85 kN.
TEST(OutsideClampScrew, TheViseOfTheTextbook) {
  EXPECT_NEAR(clamp_screw_force_n(35.0 * 250.0, 6.0, 8.0, 0.27) / 1000, 2.85, 0.005);
}
// 0.4 kN for each N m at lead 5 mm, mean diameter 22 mm, mu 0.15.
TEST(OutsideClampScrew, ForEachNewtonMetre) {
  EXPECT_NEAR(clamp_screw_force_n(1000.0, 11.0, 5.0, 0.15), 400.0, 10.0);
}

// Clamping coefficients of the reference norm of a chuck maker, p. 45, table 4.
struct PrintedGrip {
  JawFace face;
  GrippedSurface surface;
  double coefficient;
};
class OutsideJawFriction : public testing::TestWithParam<PrintedGrip> {};
TEST_P(OutsideJawFriction, IsThePrintedOne) {
  const auto steel = jaw_friction(GetParam().face, GetParam().surface, WorkGroup::kMediumCarbonSteel);
  EXPECT_DOUBLE_EQ(steel->low, GetParam().coefficient);
  EXPECT_DOUBLE_EQ(steel->high, GetParam().coefficient);
  EXPECT_DOUBLE_EQ(jaw_friction(GetParam().face, GetParam().surface, WorkGroup::kGreyIron)->high,
                   0.8 * GetParam().coefficient);
}
INSTANTIATE_TEST_SUITE_P(
    OutsideChuckNorm, OutsideJawFriction,
    testing::Values(PrintedGrip{JawFace::kSmoothJaw, GrippedSurface::kSmooth, 0.07},
                    PrintedGrip{JawFace::kDiamondSerratedJaw, GrippedSurface::kSmooth, 0.12},
                    PrintedGrip{JawFace::kSerratedJaw, GrippedSurface::kSmooth, 0.20},
                    PrintedGrip{JawFace::kSmoothJaw, GrippedSurface::kMachined, 0.10},
                    PrintedGrip{JawFace::kDiamondSerratedJaw, GrippedSurface::kMachined, 0.20},
                    PrintedGrip{JawFace::kSerratedJaw, GrippedSurface::kMachined, 0.35},
                    PrintedGrip{JawFace::kSmoothJaw, GrippedSurface::kRough, 0.15},
                    PrintedGrip{JawFace::kDiamondSerratedJaw, GrippedSurface::kRough, 0.30},
                    PrintedGrip{JawFace::kSerratedJaw, GrippedSurface::kRough, 0.45}));

// Lathe chuck manual, p. 25: 17,723 N still, 3000 N asked, 2.668 kg m, both margins 1.5. The speed printed,
// 1495 rpm, is not what the manual's formula gives; at 500 rpm the still grip comes out as printed.
TEST(OutsideChuckGrip, TheManualsExample) {
  const double lost_n = 17723.0 - grip_at_speed_n(17723.0, 2.668, 500.0);
  EXPECT_NEAR(still_grip_needed_n(3000.0, lost_n, 1.5, 1.5), 17723.0, 2.0);
  EXPECT_NEAR(speed_of_grip_rpm(17723.0, 3000.0, 2.668, 1.5, 1.5), 500.0, 0.5);
}

// Strength by grade and size as printed: SAE J429 and ASTM A574 in psi, ISO 898-1 in MPa.
struct PrintedStrength {
  const char* thread;
  const char* grade;
  double proof;
  double yield;
  double tensile;
};
class OutsideGrade : public testing::TestWithParam<PrintedStrength> {};
TEST_P(OutsideGrade, HasThePrintedStrengths) {
  const PrintedStrength& printed = GetParam();
  const ScrewThread thread = read_screw_thread(printed.thread).value();
  const auto grade = screw_grade(printed.grade, thread);
  ASSERT_TRUE(grade);
  const auto shown = [&](Pressure pressure) {
    return thread.is_metric() ? pressure.in(unit::megapascal) : pressure.in(unit::psi);
  };
  EXPECT_NEAR(shown(grade->proof), printed.proof, 1e-6);
  EXPECT_NEAR(shown(grade->yield), printed.yield, 1e-6);
  EXPECT_NEAR(shown(grade->tensile), printed.tensile, 1e-6);
}
INSTANTIATE_TEST_SUITE_P(OutsideJ429, OutsideGrade,
                         testing::Values(PrintedStrength{"3/4-10", "grade 2", 55000, 57000, 74000},
                                         PrintedStrength{"7/8-9", "grade 2", 33000, 36000, 60000},
                                         PrintedStrength{"1-8", "grade 5", 85000, 92000, 120000},
                                         PrintedStrength{"1-1/8-7", "grade 5", 74000, 81000, 105000},
                                         PrintedStrength{"1/4-20", "grade 8", 120000, 130000, 150000},
                                         PrintedStrength{"1/2-13", "A574", 140000, 153000, 180000}));
INSTANTIATE_TEST_SUITE_P(OutsideIso898, OutsideGrade,
                         testing::Values(PrintedStrength{"M16", "8.8", 580, 640, 800},
                                         PrintedStrength{"M18", "8.8", 600, 660, 830},
                                         PrintedStrength{"M10", "10.9", 830, 940, 1040},
                                         PrintedStrength{"M10", "12.9", 970, 1100, 1220}));

}  // namespace
}  // namespace sparewright::handbook
