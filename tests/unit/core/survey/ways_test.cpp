#include "core/survey/ways.hpp"

#include <cmath>
#include <set>

#include <gtest/gtest.h>

#include "core/survey/check.hpp"
#include "core/survey/corrected.hpp"
#include "core/survey/equation.hpp"
#include "surveys.hpp"

namespace sparewright::survey {
namespace {

using base::Code;
using ledger::Bound;
using quantity::Kind;

// Dimensions a, b, c, d of the kinds a way usually has.
std::vector<Dimension> usual(const WayRow& row) {
  std::vector<Dimension> dimensions;
  for (std::size_t i = 0; i < row.names; ++i)
    dimensions.push_back({std::string(1, static_cast<char>('a' + i)), row.kinds.at(i)});
  return dimensions;
}

Reading usual_reading(const WayRow& row) {
  Reading reading = tests::reading("r", row.way, {}, "caliper", {"1"});
  for (const Dimension& dimension : usual(row))
    reading.of.push_back(dimension.name);
  if (row.counted) reading.count = 10;
  if (row.spans) reading.spanned = 2;
  reading.repeats = {tests::typed(row.repeats == Kind::kAngle ? "10 deg" : "1", row.repeats)};
  return reading;
}

TEST(Ways, HaveNamesOfTheirOwnAndAnEquationThatBinds) {
  std::set<std::string_view> names;
  std::set<std::string_view> keys;
  for (const WayRow& row : kWayRows) {
    EXPECT_TRUE(names.insert(row.name).second) << row.name;
    EXPECT_TRUE(keys.insert(row.key).second) << row.key;
    if (row.way == Way::kExpression) continue;
    const auto equation = equation_of(usual_reading(row), usual(row), quantity::UnitSystem::kInch);
    ASSERT_TRUE(equation.has_value()) << row.name << ": " << base::report(equation.error());
    EXPECT_EQ(equation->names().size(), row.names) << row.name;
  }
}

TEST(Ways, WantACountOnlyWhereThereIsOne) {
  Reading pitch = tests::reading("r", Way::kPitch, {"p"}, "caliper", {"1"});
  const std::vector<Dimension> dimensions{{"p", Kind::kLength}};
  EXPECT_EQ(equation_text(pitch, dimensions).error().subject, "count");
  pitch.count = 0;
  EXPECT_EQ(equation_text(pitch, dimensions).error().code, Code::kValueNotAccepted);
  pitch.count = 16;
  EXPECT_EQ(*equation_text(pitch, dimensions), "16*p");
  Reading size = tests::reading("r", Way::kOutside, {"p"}, "caliper", {"1"});
  size.count = 2;
  EXPECT_EQ(equation_text(size, dimensions).error().subject, "count");
}

TEST(Ways, WantTheTeethSpannedOnlyOfASpan) {
  Reading span = tests::reading("r", Way::kSpan20, {"m"}, "caliper", {"1"});
  const std::vector<Dimension> dimensions{{"m", Kind::kLength}};
  span.count = 20;
  EXPECT_EQ(equation_text(span, dimensions).error().subject, "spanned");
  span.spanned = 21;  // more than there are
  EXPECT_EQ(equation_text(span, dimensions).error().code, Code::kValueNotAccepted);
  span.spanned = 3;
  EXPECT_TRUE(equation_text(span, dimensions).has_value());
  Reading size = tests::reading("r", Way::kOutside, {"m"}, "caliper", {"1"});
  size.spanned = 2;
  EXPECT_EQ(equation_text(size, dimensions).error().subject, "spanned");
}

TEST(Ways, HumbleOnesAddADoubtOfTheirOwnUnlessOneIsStated) {
  const Instrument rule = tests::instrument("rule", "0.010", "0.010");
  Reading rubbing = tests::reading("r", Way::kRubbing, {"d"}, "rule", {"3.5"});
  const auto amount = [&](const Reading& reading, std::string_view ending) {
    for (const ledger::Share& share : corrected(reading, rule).shares) {
      if (share.cause.text().ends_with(ending)) return share.amount;
    }
    return 0.0;
  };
  EXPECT_NEAR(amount(rubbing, "/way"), 25.4 / 64.0 / std::sqrt(3.0), 1e-12);
  rubbing.transfer = tests::typed("0.005");
  EXPECT_EQ(amount(rubbing, "/way"), 0.0);
  EXPECT_NEAR(amount(rubbing, "/transfer"), 0.005 * 25.4 / std::sqrt(3.0), 1e-12);
  EXPECT_EQ(amount(tests::reading("r", Way::kOutside, {"d"}, "rule", {"3.5"}), "/way"), 0.0);
}

TEST(Ways, TakeAnAngleOnlyWhereOneIsMeant) {
  const std::vector<Dimension> dimensions{
      {"w", Kind::kLength}, {"pin", Kind::kDiameter}, {"t", Kind::kAngle}};
  const auto of = [&](std::vector<std::string> names) {
    return equation_text(tests::reading("r", Way::kDovetailOver, std::move(names), "caliper", {"1"}),
                         dimensions);
  };
  EXPECT_EQ(*of({"w", "pin", "t"}), "w + pin*(1 + 1/tan(t/2))");
  EXPECT_EQ(of({"w", "t", "pin"}).error().code, Code::kKindsDoNotMix);
}

TEST(Trials, BoundFromTheSideTheyTell) {
  const auto bound = [](Way way, Trial trial) {
    Reading reading = tests::reading("r", way, {"d"}, "micrometer", {"0.25"});
    reading.trial = trial;
    return bound_of(reading);
  };
  EXPECT_EQ(bound(Way::kInside, Trial::kGoes), Bound::kAtLeast);
  EXPECT_EQ(bound(Way::kInside, Trial::kWillNotGo), Bound::kAtMost);
  EXPECT_EQ(bound(Way::kOutside, Trial::kGoes), Bound::kAtMost);
  EXPECT_EQ(bound(Way::kOutside, Trial::kWillNotGo), Bound::kAtLeast);
  EXPECT_EQ(bound(Way::kInside, Trial::kGoesWithAPush), Bound::kExact);
  Reading plug = tests::reading("r", Way::kInside, {"d"}, "micrometer", {"0.25"});
  plug.trial = Trial::kGoes;
  EXPECT_EQ(jaws_of(plug), Jaws::kOutside) << "the plug was measured, not the hole";
}

TEST(Corrections, ADifferenceHasNoZeroAndATransferAddsItsOwn) {
  const Instrument dial = tests::instrument("dial", "0.0005", "0.0005");
  const auto swing = corrected(tests::reading("r", Way::kRunOut, {"e"}, "dial", {"0.002"}), dial);
  for (const ledger::Share& share : swing.shares)
    EXPECT_EQ(share.cause.text().find("zero"), std::string::npos);
  Reading gauged = tests::reading("r", Way::kInside, {"d"}, "dial", {"0.75"});
  const auto variance = [&] {
    double sum = 0.0;
    for (const ledger::Share& share : corrected(gauged, dial).shares)
      sum += share.amount * share.amount;
    return sum;
  };
  const double without = variance();
  gauged.transfer = tests::typed("0.001");
  // A half-width of 0.001 in is a standard uncertainty of 0.001/sqrt(3) in, JCGM 100:2008, 4.3.7.
  EXPECT_NEAR(variance() - without, 0.0254 * 0.0254 / 3.0, 1e-12);
}

}  // namespace
}  // namespace sparewright::survey
