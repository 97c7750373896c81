// Extruded aluminium (EN 755, mastar-metal.com/blog/tolerance-standard) and hot-rolled bar (ASTM A29-04,
// Table A2.1, www.lucefin.com/de/siderurgia/area-tecnica/astm-a-29): the printed tolerance, at both ends of
// its range.
#include <gtest/gtest.h>

#include "core/handbook/bar_stock.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Length;
namespace unit = quantity::unit;

struct PrintedTolerance {
  BarStandard standard;
  BarForm form;
  double from_mm;
  double up_to_mm;
  double plus_minus_mm;
};
class OutsideMillTolerance : public testing::TestWithParam<PrintedTolerance> {};
TEST_P(OutsideMillTolerance, IsThePrintedOne) {
  const PrintedTolerance& printed = GetParam();
  for (const double size : {printed.from_mm, printed.up_to_mm}) {
    const auto bar = bar_tolerance(printed.standard, printed.form, Length::of(size, unit::millimetre));
    ASSERT_TRUE(bar);
    EXPECT_NEAR(bar->plus.in(unit::millimetre), printed.plus_minus_mm, 1e-9);
    EXPECT_NEAR(bar->minus.in(unit::millimetre), printed.plus_minus_mm, 1e-9);
  }
}
constexpr auto k1 = BarStandard::kEn755Group1;
constexpr auto k2 = BarStandard::kEn755Group2;
constexpr auto kHot = BarStandard::kA29HotRolled;
constexpr auto kRound = BarForm::kRound;
constexpr auto kWidth = BarForm::kFlatWidth;
INSTANTIATE_TEST_SUITE_P(
    OutsideRounds, OutsideMillTolerance,
    testing::Values(PrintedTolerance{k1, kRound, 10, 18, 0.22}, PrintedTolerance{k1, kRound, 19, 25, 0.25},
                    PrintedTolerance{k1, kRound, 26, 40, 0.30}, PrintedTolerance{k1, kRound, 41, 50, 0.35},
                    PrintedTolerance{k1, kRound, 51, 65, 0.40}, PrintedTolerance{k1, kRound, 66, 80, 0.45},
                    PrintedTolerance{k1, kRound, 81, 100, 0.55}, PrintedTolerance{k2, kRound, 10, 18, 0.30},
                    PrintedTolerance{k2, kRound, 19, 25, 0.35}, PrintedTolerance{k2, kRound, 26, 40, 0.40},
                    PrintedTolerance{k2, kRound, 41, 50, 0.45}, PrintedTolerance{k2, kRound, 51, 65, 0.50},
                    PrintedTolerance{k2, kRound, 66, 80, 0.70}, PrintedTolerance{k2, kRound, 81, 100, 0.90}));
INSTANTIATE_TEST_SUITE_P(
    OutsideWidths, OutsideMillTolerance,
    testing::Values(PrintedTolerance{k1, kWidth, 10, 18, 0.25}, PrintedTolerance{k1, kWidth, 19, 30, 0.30},
                    PrintedTolerance{k1, kWidth, 31, 50, 0.40}, PrintedTolerance{k1, kWidth, 51, 80, 0.60},
                    PrintedTolerance{k1, kWidth, 81, 120, 0.80}, PrintedTolerance{k2, kWidth, 10, 18, 0.35},
                    PrintedTolerance{k2, kWidth, 19, 30, 0.40}, PrintedTolerance{k2, kWidth, 31, 50, 0.50},
                    PrintedTolerance{k2, kWidth, 51, 80, 0.70}, PrintedTolerance{k2, kWidth, 81, 120, 1.00}));
INSTANTIATE_TEST_SUITE_P(OutsideHotRolled, OutsideMillTolerance,
                         testing::Values(PrintedTolerance{kHot, kRound, 5, 7, 0.13},
                                         PrintedTolerance{kHot, kRound, 7.5, 11, 0.15},
                                         PrintedTolerance{kHot, BarForm::kSquare, 12, 15, 0.18},
                                         PrintedTolerance{kHot, BarForm::kSquare, 16, 19, 0.20}));

// Over 19 mm it is 1 % of the size.
TEST(OutsideMillTolerances, HotRolledBarOver19Millimetres) {
  for (const double size : {20.0, 50.0, 250.0}) {
    const auto bar = bar_tolerance(kHot, kRound, Length::of(size, unit::millimetre));
    EXPECT_NEAR(bar->plus.in(unit::millimetre), 0.01 * size, 1e-9);
  }
  EXPECT_FALSE(bar_tolerance(kHot, kRound, Length::of(251, unit::millimetre)));
  EXPECT_FALSE(bar_tolerance(kHot, BarForm::kHexagon, Length::of(20, unit::millimetre)));
  EXPECT_FALSE(bar_tolerance(kHot, kRound, Length()));
}

}  // namespace
}  // namespace sparewright::handbook
