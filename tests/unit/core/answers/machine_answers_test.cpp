// Bearings, tapers and threads over wires.
#include <gtest/gtest.h>

#include "bench_questions.hpp"

namespace sparewright::answers {
namespace {

using tests::handbook;
using tests::refusal;
using tests::row;

constexpr double kLastInchPlace = 0.00011;
constexpr double kLastMetricPlace = 0.0011;

// 20 x 47 x 14; k5 at 20 mm is +0.002/+0.011 (ISO 286).
TEST(HandbookBearing, HasSizeRingsAndSeats) {
  const auto answer = handbook("bearing", "6204-2RS", {}, nullptr, quantity::UnitSystem::kMetric);
  ASSERT_TRUE(answer);
  EXPECT_NEAR(row(*answer, "outside").numbers.at(0), 47.0, kLastMetricPlace);
  EXPECT_NEAR(row(*answer, "limits of the bore").numbers.at(0), 19.99, kLastMetricPlace);
  const Row& seat = row(*answer, "k5, printed first", "seat on the shaft");
  EXPECT_NEAR(seat.numbers.at(0), 20.002, kLastMetricPlace);
  EXPECT_NEAR(seat.numbers.at(1), 20.011, kLastMetricPlace);
  EXPECT_NE(seat.note.find("interference"), std::string::npos) << seat.note;
}

// Two sources differ by a step at light load: both stand there.
TEST(HandbookBearing, KeepsSourcesThatDisagree) {
  const auto answer = handbook("bearing", "6204", {{"turning", "inner"}, {"load", "light"}});
  ASSERT_TRUE(answer);
  EXPECT_NE(row(*answer, "js6, printed first").source, row(*answer, "h6, printed first").source);
  EXPECT_TRUE(answer->says.starts_with("shaft js6 or h6, housing ")) << answer->says;
}

TEST(HandbookBearing, NamesTheNearestEntry) {
  EXPECT_NE(refusal(handbook("bearing", "6204", {{"turning", "iner"}})).find("'inner'"), std::string::npos);
  EXPECT_NE(refusal(handbook("bearing", "6204", {{"load", "huge"}})).find("--load"), std::string::npos);
  EXPECT_FALSE(refusal(handbook("bearing", "6294")).empty());
  EXPECT_FALSE(refusal(handbook("bearing", "6204", {{"turning", "inner"}, {"load", "heavy"}})).empty());
}

// atan(0.59941/24) = 1.4307 degrees; blocks of 1 in spread the rollers by 0.59941/12 in.
TEST(HandbookTaper, HasAngleEndsAndRollers) {
  const auto answer = handbook("taper", "MT2", {{"roller", "1/4 in"}, {"blocks", "1 in"}});
  ASSERT_TRUE(answer);
  EXPECT_NEAR(row(*answer, "half angle").numbers.at(0), 1.4307, kLastInchPlace);
  EXPECT_NEAR(row(*answer, "taper per foot").numbers.at(0), 0.59941, 0.00001);
  EXPECT_NEAR(row(*answer, "large end").numbers.at(0), 0.7, kLastInchPlace);
  EXPECT_NEAR(row(*answer, "difference").numbers.at(0), 0.59941 / 12.0, kLastInchPlace);
}

// 12/0.59941 = 20.020.
TEST(HandbookTaper, MetricReadersGetTheRatio) {
  const auto answer = handbook("taper", "MT2", {}, nullptr, quantity::UnitSystem::kMetric);
  ASSERT_TRUE(answer);
  EXPECT_NEAR(row(*answer, "taper, 1 in").numbers.at(0), 20.020, 0.0011);
  EXPECT_EQ(row(*answer, "large end").unit, "mm");
}

TEST(HandbookTaper, RollersWantBlocks) {
  EXPECT_NE(refusal(handbook("taper", "MT2", {{"roller", "1/4 in"}})).find("--blocks"), std::string::npos);
  EXPECT_NE(refusal(handbook("taper", "MT2", {{"blocks", "1 in"}})).find("--roller"), std::string::npos);
  EXPECT_FALSE(refusal(handbook("taper", "R8", {{"roller", "1/4 in"}, {"blocks", "1 in"}})).empty());
  EXPECT_FALSE(refusal(handbook("taper", "MT9")).empty());
  EXPECT_TRUE(handbook("taper", "R8"));
}

// E 0.4500, M = E - 0.86603/13 + 3 x 0.045 = 0.5184, and the lead angle (tan 0.0544) adds 0.0001 in.
TEST(HandbookWires, OverWiresAndBack) {
  const auto answer = handbook("wires", "1/2-13 UNC-2A", {{"wire", "0.045 in"}, {"measured", "0.5185 in"}});
  ASSERT_TRUE(answer);
  EXPECT_NEAR(row(*answer, "of the basic pitch diameter").numbers.at(0), 0.5185, kLastInchPlace);
  EXPECT_NEAR(row(*answer, "pitch diameter", "as measured").numbers.at(0), 0.45, 0.0002);
  EXPECT_NE(answer->says.find("over class 2A"), std::string::npos) << answer->says;
  EXPECT_LT(row(*answer, "class 2A").numbers.at(1), 0.5185);
}

TEST(HandbookWires, ChoosesAWireAndSaysSo) {
  const auto answer = handbook("wires", "1/2-13 UNC-2A");
  ASSERT_TRUE(answer);
  EXPECT_NEAR(row(*answer, "best").numbers.at(0), 0.57735 / 13.0, kLastInchPlace);
  EXPECT_FALSE(answer->assumed.empty());
}

// M = E + (P/2) cot 30 - 3 W; E of 1-8 is 0.9188 in.
TEST(HandbookWires, AHoleIsMeasuredBetweenBalls) {
  const auto answer = handbook("wires", "1-8 UNC-2B", {{"wire", "0.072 in"}});
  ASSERT_TRUE(answer);
  EXPECT_NEAR(row(*answer, "of the basic pitch diameter", "between two balls").numbers.at(0),
              0.9188 + 0.86603 / 8.0 - 3.0 * 0.072, 0.0002);
}

TEST(HandbookWires, NamesTheWiresThatDo) {
  EXPECT_NE(refusal(handbook("wires", "1/2-13", {{"wire", "0.2 in"}})).find("best"), std::string::npos);
  EXPECT_FALSE(refusal(handbook("wires", "1/2 NPT")).empty());
  EXPECT_FALSE(refusal(handbook("wires", "1/2-13", {{"measured", "3 in"}})).empty());
  EXPECT_TRUE(handbook("wires", "1/4 BSW"));
  EXPECT_TRUE(handbook("wires", "Tr 20x4"));
  EXPECT_TRUE(handbook("wires", "M8x1-6H"));
}

}  // namespace
}  // namespace sparewright::answers
