#include "core/survey/equation.hpp"

#include <gtest/gtest.h>

#include "surveys.hpp"

namespace sparewright::survey {
namespace {

using base::Code;
using ledger::Bound;
using quantity::Kind;
using quantity::UnitSystem;

const std::vector<Dimension> kDimensions{{"bore", Kind::kDiameter}, {"pin", Kind::kDiameter},
                                         {"r", Kind::kRadius},      {"edge", Kind::kLength},
                                         {"tilt", Kind::kAngle},    {"x", Kind::kCoordinate}};

std::string text_of(Way way, std::vector<std::string> of) {
  const auto text = equation_text(tests::reading("a", way, std::move(of), "caliper", {"1"}), kDimensions);
  return text ? *text : std::string(base::code_name(text.error().code));
}

TEST(EquationText, SaysWhatEachWayOfMeasuringReads) {
  EXPECT_EQ(text_of(Way::kOutside, {"pin"}), "pin");
  EXPECT_EQ(text_of(Way::kInside, {"bore"}), "bore");
  EXPECT_EQ(text_of(Way::kDepth, {"edge"}), "edge");
  EXPECT_EQ(text_of(Way::kEdgeToHoleNear, {"edge", "bore"}), "edge - bore/2");
  EXPECT_EQ(text_of(Way::kEdgeToHoleFar, {"edge", "bore"}), "edge + bore/2");
  EXPECT_EQ(text_of(Way::kOverPins, {"edge", "pin", "bore"}), "edge + pin/2 + bore/2");
  EXPECT_EQ(text_of(Way::kBetweenPins, {"edge", "pin", "bore"}), "edge - pin/2 - bore/2");
}

TEST(EquationText, TakesARadiusWholeAndDoublesItAcross) {
  EXPECT_EQ(text_of(Way::kEdgeToHoleNear, {"edge", "r"}), "edge - r");
  EXPECT_EQ(text_of(Way::kOutside, {"r"}), "2*r");
  EXPECT_EQ(text_of(Way::kDepth, {"x"}), "x");
}

TEST(EquationText, RefusesWhatDoesNotFit) {
  EXPECT_EQ(text_of(Way::kOutside, {"pim"}), "name-unknown");
  EXPECT_EQ(text_of(Way::kOutside, {"tilt"}), "kinds-do-not-mix");
  EXPECT_EQ(text_of(Way::kOverPins, {"edge", "pin"}), "value-not-accepted");
  EXPECT_EQ(text_of(Way::kOverPins, {"edge", "pin", "edge"}),
            "kinds-do-not-mix");  // an edge has no half to stand on
  const auto misspelt = equation_text(tests::reading("a", Way::kOutside, {"pim"}, "c", {"1"}), kDimensions);
  EXPECT_NE(misspelt.error().accepted.find("pin"), std::string::npos);
}

TEST(EquationOf, GivesValueAndSlopes) {
  const auto reading = tests::reading("a", Way::kOverPins, {"edge", "pin", "r"}, "caliper", {"1"});
  const auto equation = equation_of(reading, kDimensions, UnitSystem::kInch);
  ASSERT_TRUE(equation.has_value());
  EXPECT_EQ(equation->names(), (std::vector<std::string>{"edge", "pin", "r"}));
  const auto y = equation->at(std::vector{100.0, 20.0, 5.0});
  EXPECT_EQ(y->value, 115.0);
  EXPECT_EQ(y->slopes, (std::vector{1.0, 0.5, 1.0}));
}

TEST(EquationOf, PointsIntoAnExpression) {
  const auto unknown =
      equation_of(tests::expression("a", "edge + bolt/2", "c", {"1"}), kDimensions, UnitSystem::kInch);
  ASSERT_FALSE(unknown.has_value());
  EXPECT_EQ(unknown.error().code, Code::kNameUnknown);
  EXPECT_EQ(unknown.error().span, (base::Span{7, 4}));
  const auto syntax =
      equation_of(tests::expression("a", "edge + ", "c", {"1"}), kDimensions, UnitSystem::kInch);
  EXPECT_EQ(syntax.error().code, Code::kFormulaSyntax);
  const auto kinds =
      equation_of(tests::expression("a", "edge + tilt", "c", {"1"}), kDimensions, UnitSystem::kInch);
  EXPECT_EQ(kinds.error().code, Code::kKindsDoNotMix);
}

TEST(Jaws, FollowTheWayOfMeasuring) {
  const auto jaws = [](Way way) { return jaws_of(tests::reading("a", way, {}, "c", {"1"})); };
  EXPECT_EQ(jaws(Way::kOutside), Jaws::kOutside);
  EXPECT_EQ(jaws(Way::kOverPins), Jaws::kOutside);
  EXPECT_EQ(jaws(Way::kEdgeToHoleNear), Jaws::kOutside);
  EXPECT_EQ(jaws(Way::kInside), Jaws::kInside);
  EXPECT_EQ(jaws(Way::kBetweenPins), Jaws::kInside);
  EXPECT_EQ(jaws(Way::kDepth), Jaws::kDepth);
  EXPECT_EQ(jaws(Way::kEdgeToHoleFar), Jaws::kDepth);
  auto reading = tests::reading("a", Way::kOutside, {}, "c", {"1"});
  reading.jaws = Jaws::kDepth;
  EXPECT_EQ(jaws_of(reading), Jaws::kDepth);
}

TEST(Bounds, WearTakesMetalOff) {
  const auto bound = [](Way way, Condition condition) {
    return bound_of(tests::in_condition(tests::reading("a", way, {}, "c", {"1"}), condition));
  };
  EXPECT_EQ(bound(Way::kOutside, Condition::kSound), Bound::kExact);
  EXPECT_EQ(bound(Way::kOutside, Condition::kWorn), Bound::kAtLeast);
  EXPECT_EQ(bound(Way::kOverPins, Condition::kWorn), Bound::kAtLeast);
  EXPECT_EQ(bound(Way::kInside, Condition::kWorn), Bound::kAtMost);
  EXPECT_EQ(bound(Way::kBetweenPins, Condition::kWorn), Bound::kAtMost);
  EXPECT_EQ(bound(Way::kDepth, Condition::kWorn), Bound::kNeither);
  EXPECT_EQ(bound(Way::kOutside, Condition::kBent), Bound::kNeither);
  EXPECT_EQ(bound(Way::kOutside, Condition::kAcrossABreak), Bound::kNeither);
  EXPECT_EQ(bound(Way::kExpression, Condition::kWorn), Bound::kNeither);
  auto expression = tests::in_condition(tests::expression("a", "edge", "c", {"1"}), Condition::kWorn);
  expression.jaws = Jaws::kInside;
  EXPECT_EQ(bound_of(expression), Bound::kAtMost);
  auto over_gauge = tests::in_condition(tests::reading("a", Way::kInside, {}, "c", {"1"}), Condition::kWorn);
  over_gauge.jaws = Jaws::kOutside;  // a telescoping gauge set in the bore, read over
  EXPECT_EQ(bound_of(over_gauge), Bound::kAtMost);
}

TEST(Names, AreTheTradesWords) {
  EXPECT_EQ(name_of(Way::kOverPins), "over pins");
  EXPECT_EQ(name_of(Way::kEdgeToHoleFar), "edge to hole edge, far");
  EXPECT_EQ(name_of(Jaws::kDepth), "depth rod");
  EXPECT_EQ(name_of(Condition::kAcrossABreak), "across a break");
}

}  // namespace
}  // namespace sparewright::survey
