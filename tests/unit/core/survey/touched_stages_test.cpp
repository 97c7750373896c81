#include "core/survey/touched_stages.hpp"

#include <cmath>
#include <set>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/survey/check.hpp"
#include "core/survey/measure_up.hpp"
#include "core/survey/stage.hpp"
#include "touches.hpp"

namespace sparewright::survey {
namespace {

using base::Code;
using ledger::Figure;
using ledger::Ledger;
using quantity::Kind;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::UnorderedElementsAre;
using tests::readout_survey;
using tests::round_four;
using tests::touched_circle;
using tests::typed;

constexpr double kInch = 25.4;
constexpr double kHand = 1e-9;
// One coordinate: good to 0.0005 and half a step 0.0001, both rectangular.
const double kOwn = std::sqrt((0.0005 * 0.0005 + 0.0001 * 0.0001) / 3.0) * kInch;
const double kZero = 0.0005 / std::sqrt(3.0) * kInch;  // not checked: the whole permissible error
const double kTip = 0.0002 / std::sqrt(3.0) * kInch;

void declare(Ledger& ledger, const Survey& survey) {
  auto stages = survey_stages(survey);
  ASSERT_TRUE(stages.has_value());
  ledger.declare(std::move(*stages));
}

Survey two_holes() {
  Survey survey = readout_survey();
  survey.touched = {round_four("left hole", 1.0, 2.0), round_four("right hole", 4.0, 6.0)};
  survey.between = {{"centres", "left hole", "right hole", {}}};
  return survey;
}

bool has_query(Ledger& ledger, const std::string& id) {
  for (const ledger::Query& query : ledger.queries()) {
    if (query.id == id) return true;
  }
  return false;
}

TEST(TouchedStages, AHoleIsItsTouchesWithTheTipPutOn) {
  Ledger ledger;
  declare(ledger, two_holes());
  EXPECT_NEAR(ledger.get("touched/left hole/x").value, 1.0 * kInch, kHand);
  EXPECT_NEAR(ledger.get("touched/left hole/y").value, 2.0 * kInch, kHand);
  const Figure diameter = ledger.get("touched/left hole/diameter");
  EXPECT_NEAR(diameter.value, 1.0 * kInch, kHand);  // 0.8 round, 0.2 of the tip
  EXPECT_EQ(diameter.kind, Kind::kDiameter);
  // The four touches lie on the circle, so they scatter by nothing; the radius is their mean: u = own/2, doubled.
  EXPECT_NEAR(diameter.u(), std::sqrt(kOwn * kOwn + kTip * kTip), 1e-9);
  // x follows two opposite touches by half each, and the zero of its axis whole.
  EXPECT_NEAR(ledger.get("touched/left hole/x").u(), std::sqrt(kOwn * kOwn / 2.0 + kZero * kZero), 1e-9);
  EXPECT_THAT(diameter.inputs, Contains(base::Name("touch/left hole/1 x")));
  EXPECT_THAT(diameter.inputs, Contains(base::Name("tip/edge finder")));
  EXPECT_NEAR(ledger.get("touched/left hole/form error").value, 0.0, kHand);
  EXPECT_NEAR(ledger.get("touched/left hole/arc").value, 1.5 * 3.14159265358979, 1e-6);
}

TEST(TouchedStages, TheDistanceOfTwoHolesKnowsNoZeroAndNoTip) {
  Ledger ledger;
  declare(ledger, two_holes());
  const Figure distance = ledger.get("between/centres/distance");
  EXPECT_NEAR(distance.value, 5.0 * kInch, kHand);  // 3, 4, 5
  // The middles' own doubts alone, own/sqrt(2) each in any direction.
  EXPECT_NEAR(distance.u(), kOwn, 1e-9);
  EXPECT_NEAR(ledger.get("between/centres/angle").value, std::atan2(4.0, 3.0), 1e-12);
  // The tip is one cause behind both diameters.
  const Figure left = ledger.get("touched/left hole/diameter");
  const Figure right = ledger.get("touched/right hole/diameter");
  EXPECT_NEAR(ledger::covariance(left.shares, right.shares), kTip * kTip, 1e-12);
  // The zero of x is one cause behind both x.
  EXPECT_NEAR(
      ledger::covariance(ledger.get("touched/left hole/x").shares, ledger.get("touched/right hole/x").shares),
      kZero * kZero, 1e-12);
  EXPECT_EQ(ledger.get("instrument/readout/x axis/zero").origin, ledger::Origin::kDefault);
}

TEST(TouchedStages, TheTrailGoesDownToEachTouch) {
  Ledger ledger;
  declare(ledger, two_holes());
  std::set<std::string> roots;
  const auto visit = [&](const auto& self, const ledger::Trail& trail) -> void {
    if (trail.inputs.empty() && !trail.shown_before) roots.insert(std::string(trail.figure.name.text()));
    for (const ledger::Trail& input : trail.inputs)
      self(self, input);
  };
  visit(visit, ledger.why("between/centres/distance"));
  EXPECT_EQ(roots.size(), 16U);
  EXPECT_THAT(roots, Contains("touch/right hole/4 y"));
  EXPECT_EQ(ledger.get("touch/left hole/1 x").typed, "1.400000");
}

TEST(TouchedStages, CountAsCorrelatedReadingsOfDimensions) {
  Survey survey = two_holes();
  survey.touched[0].gives = {{Told::kX, "left_x"}, {Told::kDiameter, "left_bore"}};
  survey.touched[1].gives = {{Told::kX, "right_x"}, {Told::kDiameter, "right_bore"}};
  survey.between[0].gives = {{Told::kDistance, "centres"}};
  survey.dimensions = {{"left_x", Kind::kLength},
                       {"right_x", Kind::kLength},
                       {"left_bore", Kind::kDiameter},
                       {"right_bore", Kind::kDiameter},
                       {"centres", Kind::kLength}};
  survey.readings = {
      tests::reading("over", Way::kOverHoles, {"centres", "left_bore", "right_bore"}, "caliper", {"6.0010"})};
  Ledger ledger;
  declare(ledger, survey);
  const Figure centres = ledger.get("survey/centres");
  ASSERT_TRUE(centres.known());
  // Worked by hand: over = c + (l + r)/2 is one reading more. Its misfit is 0.001; u^2 of the caliper: good to, half a step
  // and an unchecked zero; of the sum: c own^2, and (l + r)/2 half of own^2 and the tip whole.
  const double caliper = (0.001 * 0.001 * 2.0 + 0.0005 * 0.0005) / 3.0 * kInch * kInch;
  const double sum = kOwn * kOwn + kOwn * kOwn / 2.0 + kTip * kTip;
  const double part = kOwn * kOwn / (sum + caliper);
  EXPECT_NEAR(centres.value, (5.0 + 0.001 * part) * kInch, 1e-9);
  EXPECT_NEAR(centres.u(), std::sqrt(kOwn * kOwn * (1.0 - part)), 1e-8);
  EXPECT_EQ(ledger.get("survey/agreement/spare readings").value, 1.0);
  EXPECT_THAT(centres.inputs, Contains(base::Name("between/centres/distance")));
}

// x, y of both and the distance are five told of four: one of them would have nothing of its own, and no reading beside them
// could be told to be out.
TEST(TouchedStages, MiddlesAndTheirDistanceTogetherAreRefused) {
  Survey survey = two_holes();
  survey.touched[0].gives = {{Told::kX, "lx"}, {Told::kY, "ly"}};
  survey.touched[1].gives = {{Told::kX, "rx"}, {Told::kY, "ry"}};
  survey.between[0].gives = {{Told::kDistance, "centres"}};
  survey.dimensions.resize(5);
  survey.dimensions[0].name = "lx";
  survey.dimensions[1].name = "ly";
  survey.dimensions[2].name = "rx";
  survey.dimensions[3].name = "ry";
  survey.dimensions[4].name = "centres";
  const auto refused = survey_stages(survey);
  ASSERT_FALSE(refused.has_value());
  EXPECT_EQ(refused.error().front().code, base::Code::kValueNotAccepted);
  EXPECT_EQ(refused.error().front().found, "centres");
  // Of one alone they go together.
  survey.touched[1].gives.clear();
  survey.dimensions = {survey.dimensions[0], survey.dimensions[1], survey.dimensions[4]};
  EXPECT_TRUE(survey_stages(survey).has_value());
}

TEST(TouchedStages, ScatterOfTheTouchesCountsAndHasItsDegreesOfFreedom) {
  Survey survey = readout_survey();
  // Two opposite touches 0.0001 in out, the others in: the radius keeps, each lies 0.0001 off.
  survey.touched = {
      touched_circle("hole", {{"1.4001", "0"}, {"1", "0.3999"}, {"0.5999", "0"}, {"1", "-0.3999"}})};
  Ledger ledger;
  declare(ledger, survey);
  EXPECT_NEAR(ledger.get("touched/hole/form error").value, 0.0002 * kInch, 1e-7);
  // s^2 = 4 x 0.0001^2 / 1; the radius has s/2 of it, the diameter s.
  const double s = 0.0002 * kInch;
  const Figure diameter = ledger.get("touched/hole/diameter");
  EXPECT_NEAR(diameter.u(), std::sqrt(kOwn * kOwn + kTip * kTip + s * s), 1e-7);
  const Figure scatter = ledger.get("touched/hole/scatter in diameter");
  EXPECT_NEAR(ledger::effective_degrees_of_freedom(scatter.shares), 1.0, 1e-9);
  EXPECT_EQ(ledger.queries().size(), 0U);
}

TEST(TouchedStages, ATouchThatIsOutIsNamedWhereTheOthersCanTell) {
  Survey survey = readout_survey();
  survey.touched = {touched_circle("hole", {{"1.4", "0"},
                                            {"1", "0.4"},
                                            {"0.6", "0"},
                                            {"1", "-0.4"},
                                            {"1.28284", "0.28284"},
                                            {"0.71716", "0.27716"}})};  // should be 0.28284: 0.004 in inwards
  Ledger ledger;
  declare(ledger, survey);
  ASSERT_TRUE(has_query(ledger, "misread touch/hole"));
  for (const ledger::Query& query : ledger.queries()) {
    if (query.id == "misread touch/hole") {
      EXPECT_THAT(query.says, HasSubstr("touch 6 of 'hole'"));
    }
  }
  // With four touches none can be told from the others.
  survey.touched = {touched_circle("hole", {{"1.405", "0"}, {"1", "0.4"}, {"0.6", "0"}, {"1", "-0.4"}})};
  declare(ledger, survey);
  EXPECT_FALSE(has_query(ledger, "misread touch/hole"));
  EXPECT_TRUE(has_query(ledger, "touches scatter/hole"));
}

TEST(TouchedStages, ThreeTouchesKnowNoFormError) {
  Survey survey = readout_survey();
  survey.touched = {touched_circle("hole", {{"1.4", "0"}, {"1", "0.4"}, {"0.6", "0"}})};
  Ledger ledger;
  declare(ledger, survey);
  EXPECT_TRUE(ledger.get("touched/hole/diameter").known());
  EXPECT_THAT(ledger.get("touched/hole/diameter").formula, HasSubstr("none is checked by another"));
  const Figure form = ledger.get("touched/hole/form error");
  EXPECT_FALSE(form.known());
  EXPECT_THAT(form.missing, ElementsAre("touched/hole/wanted/one touch more"));
}

TEST(TouchedStages, AShortArcIsSaidAndAStraightOneIsNotKnown) {
  Survey survey = readout_survey();
  const auto arc = [](double over_deg, double radius_in) {
    std::vector<std::vector<std::string>> touches;
    for (const double part : {-1.0, -0.5, 0.0, 0.5, 1.0}) {
      const double angle = part * over_deg / 2.0 * 3.14159265358979 / 180.0;
      touches.push_back(
          {std::to_string(radius_in * std::sin(angle)), std::to_string(radius_in * std::cos(angle))});
    }
    return touches;
  };
  survey.touched = {touched_circle("end", arc(40.0, 1.0))};
  survey.touched[0].gives = {{Told::kRadius, "end_radius"}};
  survey.dimensions = {{"end_radius", Kind::kRadius}};
  Ledger ledger;
  declare(ledger, survey);
  EXPECT_TRUE(has_query(ledger, "short arc/end"));
  EXPECT_NEAR(ledger.get("survey/end_radius").value, 1.1 * kInch, 0.01);
  // 3 deg of arc of 1 in is 0.00034 in high: less than the readout can tell.
  survey.touched[0].touches = touched_circle("end", arc(3.0, 1.0)).touches;
  declare(ledger, survey);
  const Figure radius = ledger.get("touched/end/radius");
  EXPECT_FALSE(radius.known());
  EXPECT_THAT(radius.missing, ElementsAre("touched/end/wanted/touches further round"));
  EXPECT_FALSE(ledger.get("survey/end_radius").known());
  EXPECT_TRUE(has_query(ledger, "touches fix nothing/end"));
  // Touches in a line.
  survey.touched[0].touches = touched_circle("end", {{"0", "0"}, {"1", "1"}, {"2", "2"}}).touches;
  declare(ledger, survey);
  EXPECT_FALSE(ledger.get("touched/end/x").known());
}

Touched face(std::string name, TipSide side, const std::vector<std::vector<std::string>>& touches) {
  Touched out = touched_circle(std::move(name), touches, side);
  out.form = touches.front().size() == 3 ? TouchedForm::kPlane : TouchedForm::kLine;
  return out;
}

TEST(Between, AHoleStandsSquareFromAFace) {
  Survey survey = readout_survey();
  survey.touched = {round_four("hole", 2.0, 3.0),
                    face("left end", TipSide::kLeft, {{"-0.1", "1"}, {"-0.1", "5"}}),
                    face("front", TipSide::kFront, {{"1", "0.9"}, {"5", "0.9"}})};
  survey.between = {{"hole from end", "left end", "hole", {}},
                    {"hole from front", "hole", "front", {}},
                    {"corner", "left end", "front", {}}};
  Ledger ledger;
  declare(ledger, survey);
  const Figure distance = ledger.get("between/hole from end/distance");
  EXPECT_NEAR(distance.value, 2.0 * kInch, kHand);
  // own/sqrt(2) of the hole; the line at its middle own/sqrt(2); half the tip; the zero cancels.
  EXPECT_NEAR(distance.u(), std::sqrt(kOwn * kOwn + kTip * kTip / 4.0), 1e-9);
  EXPECT_NEAR(ledger.get("between/hole from front/distance").value, 2.0 * kInch, kHand);
  EXPECT_NEAR(ledger.get("between/corner/angle").value, std::acos(0.0), 1e-12);
}

TEST(Between, FacesLeanAgainstEachOther) {
  Survey survey = readout_survey();
  // The left face leans: x grows by 0.04 over 4 of y; the right one stands at 3.
  survey.touched = {
      face("left", TipSide::kLeft, {{"-0.1", "0"}, {"-0.06", "4"}}),
      face("right", TipSide::kRight, {{"3.1", "0"}, {"3.1", "4"}}),
      face("top", TipSide::kAbove, {{"0", "0", "1.1"}, {"4", "0", "1.1"}, {"0", "4", "1.12"}}),
      face("under", TipSide::kBelow, {{"0", "0", "-0.1"}, {"4", "0", "-0.1"}, {"0", "4", "-0.1"}}),
      face("end", TipSide::kLeft, {{"-0.1", "0", "0"}, {"-0.1", "4", "0"}, {"-0.14", "0", "4"}})};
  survey.between = {
      {"width", "right", "left", {}}, {"height", "under", "top", {}}, {"square", "top", "end", {}}};
  Ledger ledger;
  declare(ledger, survey);
  EXPECT_NEAR(ledger.get("between/width/angle").value, std::atan(0.01), 1e-12);
  // In the middle the left face stands at -0.08 + 0.1 over cos of the lean.
  const double left = -0.08 + 0.1 * std::sqrt(1.0 + 0.0001);
  EXPECT_NEAR(ledger.get("between/width/distance").value, (3.0 - left) * kInch, kHand);
  // The top's middle is the mean of its touches, 1.1 + 0.02/3, less half the tip.
  const double top = 1.1 + 0.02 / 3.0 - 0.1 * std::sqrt(1.0 + 0.005 * 0.005);
  EXPECT_NEAR(ledger.get("between/height/distance").value, top * kInch, kHand);
  // The top rises 0.005 along y; the end goes back 0.01 along z, so it leans over the top: x = -0.01 z.
  EXPECT_NEAR(ledger.get("between/square/angle").value,
              std::acos(-0.01 / std::hypot(1.0, 0.01) / std::hypot(1.0, 0.005)), 1e-12);
}

TEST(TouchedTroubles, AreTold) {
  const auto codes = [](const Survey& survey) {
    std::vector<std::pair<std::string, Code>> all;
    for (const Trouble& trouble : troubles(survey))
      all.emplace_back(trouble.field, trouble.failure.code);
    return all;
  };
  EXPECT_TRUE(codes(two_holes()).empty());
  Survey survey = two_holes();
  survey.touched[0].instrument = "laser";
  survey.touched[1].side = TipSide::kLeft;
  EXPECT_THAT(codes(survey), UnorderedElementsAre(std::pair(std::string("instrument"), Code::kNotInTheShop),
                                                  std::pair(std::string("side"), Code::kValueNotAccepted)));
  survey = two_holes();
  survey.touched[0].touches.resize(2);
  survey.touched[1].touches[0].push_back(typed("1"));
  EXPECT_THAT(codes(survey),
              UnorderedElementsAre(std::pair(std::string("touches"), Code::kReadingsTooFew),
                                   std::pair(std::string("touches"), Code::kValueNotAccepted)));
  survey = two_holes();
  survey.touched[1].tip.diameter = typed("0.250", Kind::kDiameter);
  EXPECT_THAT(codes(survey), ElementsAre(std::pair(std::string("tip"), Code::kValueNotAccepted)));
  survey = two_holes();
  survey.between[0].second = "middle hole";
  EXPECT_THAT(codes(survey), ElementsAre(std::pair(std::string("of"), Code::kNotInTheJob)));
  survey = two_holes();
  survey.touched[0].gives = {{Told::kLean, "lean"}};
  survey.dimensions = {{"lean", Kind::kAngle}};
  EXPECT_THAT(codes(survey), ElementsAre(std::pair(std::string("lean"), Code::kValueNotAccepted)));
  survey.touched[0].gives = {{Told::kDiameter, "lean"}};
  EXPECT_THAT(codes(survey), ElementsAre(std::pair(std::string("diameter"), Code::kKindsDoNotMix)));
  survey = two_holes();
  survey.touched[1].name = "left hole";
  EXPECT_THAT(codes(survey), Contains(std::pair(std::string("name"), Code::kNameTwice)));
  survey = two_holes();
  survey.patterns = {{"bolts", HoleLayout::kCircle, {"left hole", "right hole"}, {}}};
  EXPECT_THAT(codes(survey), ElementsAre(std::pair(std::string("of"), Code::kReadingsTooFew)));
}

// Wear opens a hole and takes off a boss or a face; which way a worn hole's middle went nobody knows.
TEST(TouchedStages, AWornPlaceBoundsWhatWasThere) {
  Survey survey = two_holes();
  survey.touched[0].condition = Condition::kWorn;
  survey.touched[1].condition = Condition::kBent;
  Ledger ledger;
  declare(ledger, survey);
  const Figure diameter = ledger.get("touched/left hole/diameter");
  EXPECT_EQ(diameter.bound, ledger::Bound::kAtMost);
  EXPECT_NEAR(diameter.value, 1.0 * kInch, kHand);
  EXPECT_NEAR(diameter.u(), std::sqrt(kOwn * kOwn + kTip * kTip), 1e-9);
  EXPECT_EQ(ledger.get("touched/left hole/radius").bound, ledger::Bound::kAtMost);
  EXPECT_EQ(ledger.get("touched/left hole/x").bound, ledger::Bound::kNeither);
  EXPECT_EQ(ledger.get("touched/right hole/diameter").bound, ledger::Bound::kNeither);
  EXPECT_EQ(ledger.get("between/centres/distance").bound, ledger::Bound::kNeither);
  survey.touched[0] = touched_circle("left hole", {{"0.5", "0"}, {"-0.5", "0"}, {"0", "0.5"}, {"0", "-0.5"}},
                                     TipSide::kOutside);
  survey.touched[0].condition = Condition::kWorn;
  declare(ledger, survey);
  EXPECT_EQ(ledger.get("touched/left hole/diameter").bound, ledger::Bound::kAtLeast);
}

// What a worn place tells is not drawn together with what sound ones tell: it bounds a size, or says nothing of it.
TEST(TouchedStages, AWornPlaceFixesNoSize) {
  Survey survey = two_holes();
  survey.dimensions = {{"left_x", Kind::kLength}, {"right_x", Kind::kLength}};
  survey.touched[0].gives = {{Told::kX, "left_x"}};
  survey.touched[1].gives = {{Told::kX, "right_x"}};
  survey.touched[0].condition = Condition::kWorn;
  Ledger ledger;
  declare(ledger, survey);
  EXPECT_NEAR(ledger.get("survey/right_x").value, 4.0 * kInch, kHand);
  EXPECT_EQ(ledger.get("survey/right_x").bound, ledger::Bound::kExact);
  EXPECT_NE(ledger.get("survey/left_x").bound, ledger::Bound::kExact);
}

}  // namespace
}  // namespace sparewright::survey
