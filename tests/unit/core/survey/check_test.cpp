#include "core/survey/check.hpp"

#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/survey/adjust.hpp"
#include "surveys.hpp"

namespace sparewright::survey {
namespace {

using base::Code;
using In = Trouble::In;
using tests::lever;

// The one trouble of a survey.
Trouble only(const Survey& survey) {
  const auto found = troubles(survey);
  EXPECT_EQ(found.size(), 1U);
  return found.empty() ? Trouble{} : found.front();
}

void expect(const Trouble& trouble, In in, std::size_t index, std::string_view field, Code code) {
  EXPECT_EQ(trouble.in, in);
  EXPECT_EQ(trouble.index, index);
  EXPECT_EQ(trouble.field, field);
  EXPECT_EQ(base::code_name(trouble.failure.code), base::code_name(code));
}

TEST(Troubles, AreNoneInASoundSurvey) {
  EXPECT_TRUE(troubles(lever()).empty());
}

TEST(Troubles, NoReading) {
  Survey survey = lever();
  survey.readings.clear();
  const auto found = troubles(survey);
  ASSERT_EQ(found.size(), 4U);  // the survey, and each of its three dimensions
  expect(found[0], In::kSurvey, 0, "reading", Code::kReadingsTooFew);
}

TEST(Troubles, AnInstrumentTheShopHasNot) {
  Survey survey = lever();
  survey.readings[1].instrument = "calliper 8";
  const auto trouble = only(survey);
  expect(trouble, In::kReading, 1, "instrument", Code::kNotInTheShop);
  EXPECT_NE(trouble.failure.accepted.find("caliper 8"), std::string::npos);
}

TEST(Troubles, ADimensionNoReadingIsOf) {
  Survey survey = lever();
  survey.dimensions.push_back({"length", quantity::Kind::kLength});
  expect(only(survey), In::kDimension, 3, "name", Code::kReadingsTooFew);
}

TEST(Troubles, AnExpressionIsPointedInto) {
  Survey survey = lever();
  survey.readings.push_back(tests::expression("chord", "centres + pivotpin/2", "caliper 8", {"6"}));
  const auto trouble = only(survey);
  expect(trouble, In::kReading, 4, "is", Code::kNameUnknown);
  EXPECT_EQ(trouble.failure.span, (base::Span{10, 8}));
}

TEST(Troubles, NoRepeats) {
  Survey survey = lever();
  survey.readings[0].repeats.clear();
  expect(only(survey), In::kReading, 0, "repeats", Code::kReadingsTooFew);
}

TEST(Troubles, ASizeOfNothing) {
  Survey survey = lever();
  survey.readings[1].repeats = tests::typed_all({"0.000"});
  expect(only(survey), In::kReading, 1, "repeats", Code::kSizeNotPositive);
}

TEST(Troubles, AnExpressionMayReadNothingOrLess) {
  Survey survey = lever();
  survey.readings.push_back(
      tests::expression("step", "pivot_pin - 0.75", "caliper 8", {"-0.0005", "0.0000"}));
  EXPECT_TRUE(troubles(survey).empty());
}

TEST(Troubles, InstrumentsWithoutAnError) {
  Survey survey = lever();
  survey.instruments[0].good_to = tests::typed("0");
  survey.instruments[1].reads = tests::typed("0");
  const auto found = troubles(survey);
  ASSERT_EQ(found.size(), 2U);
  expect(found[0], In::kInstrument, 0, "good_to", Code::kSizeNotPositive);
  expect(found[1], In::kInstrument, 1, "reads", Code::kSizeNotPositive);
}

TEST(Troubles, AZeroWithinOfNothingIsTakenALessOneNot) {
  Survey survey = lever();
  survey.instruments[1].zero_within = tests::typed("0");
  EXPECT_TRUE(troubles(survey).empty());
  survey.instruments[1].jaw_pairs = {{Jaws::kOutside, {}, tests::typed("-0.001")}, {Jaws::kInside, {}, {}}};
  expect(only(survey), In::kInstrument, 1, "zero_within", Code::kValueNotAccepted);
}

TEST(Troubles, AnExpressionOfNoDimension) {
  Survey survey = lever();
  survey.readings.push_back(tests::expression("block", "1.000 in", "caliper 8", {"1.001"}));
  expect(only(survey), In::kReading, 4, "is", Code::kValueNotAccepted);
}

TEST(Troubles, NamesTwiceOrNotUsable) {
  Survey survey = lever();
  survey.readings[1].name = "pivot pin";
  expect(only(survey), In::kReading, 1, "name", Code::kNameTwice);
  survey = lever();
  survey.readings[1].name = "stud/end";
  expect(only(survey), In::kReading, 1, "name", Code::kValueNotAccepted);
  survey = lever();
  survey.dimensions.push_back({"long side", quantity::Kind::kLength});
  const auto found = troubles(survey);
  ASSERT_EQ(found.size(), 2U);
  expect(found[0], In::kDimension, 3, "name", Code::kValueNotAccepted);
}

TEST(Troubles, JawsTheInstrumentHasNot) {
  Survey survey = lever();
  survey.instruments[0].jaw_pairs = {{Jaws::kOutside, {}, {}}};
  EXPECT_TRUE(troubles(survey).empty());
  survey.readings[0].way = Way::kInside;
  const auto trouble = only(survey);
  expect(trouble, In::kReading, 0, "jaws", Code::kValueNotAccepted);
  EXPECT_EQ(trouble.failure.accepted, "outside jaws");
}

// What no jaws are said of touches with those of its kind.
TEST(Troubles, JawsTheKindOfInstrumentHasNot) {
  Survey survey = lever();
  survey.readings[0].way = Way::kInside;
  survey.instruments[0].kind = "dial caliper";
  EXPECT_TRUE(troubles(survey).empty());
  survey.instruments[0].kind = "outside micrometer";
  const auto trouble = only(survey);
  expect(trouble, In::kReading, 0, "jaws", Code::kValueNotAccepted);
  EXPECT_EQ(trouble.failure.accepted, "outside jaws");
}

TEST(FacesOf, AnInstrumentAreThoseSaidOrThoseOfItsKind) {
  const auto of_kind = [](const std::string& kind) {
    Instrument instrument;
    instrument.kind = kind;
    return faces_of(instrument);
  };
  const std::vector<Jaws> outside{Jaws::kOutside};
  const std::vector<Jaws> inside{Jaws::kInside};
  const std::vector<Jaws> depth{Jaws::kDepth};
  const std::vector<Jaws> all{Jaws::kOutside, Jaws::kInside, Jaws::kDepth};
  for (const char* kind : {"outside micrometer", "Micrometer 25-50", "snap gauge", "outside caliper"})
    EXPECT_EQ(of_kind(kind), outside) << kind;
  for (const char* kind : {"inside micrometer", "dial bore gauge, set in a ring", "telescoping gage",
                           "small hole gauge", "inside caliper"})
    EXPECT_EQ(of_kind(kind), inside) << kind;
  for (const char* kind : {"depth micrometer", "depth gauge"})
    EXPECT_EQ(of_kind(kind), depth) << kind;
  for (const char* kind : {"dial caliper", "caliper with inside jaws and depth rod", "comparator", ""})
    EXPECT_EQ(of_kind(kind), all) << kind;
  Instrument said;
  said.kind = "outside micrometer";
  said.jaw_pairs = {{Jaws::kInside, {}, {}}};
  EXPECT_EQ(faces_of(said), inside);
}

TEST(Troubles, AnAngleOffACaliper) {
  Survey survey = lever();
  survey.dimensions.push_back({"tilt", quantity::Kind::kAngle});
  survey.readings.push_back(tests::expression("tilt", "tilt", "caliper 8", {}));
  survey.readings.back().repeats = {tests::typed("30 deg", quantity::Kind::kAngle)};
  expect(only(survey), In::kReading, 4, "instrument", Code::kUnitOfAnotherKind);
}

TEST(Troubles, RepeatsOfTwoKinds) {
  Survey survey = lever();
  survey.readings[0].repeats.push_back(tests::typed("30 deg", quantity::Kind::kAngle));
  expect(only(survey), In::kReading, 0, "repeats", Code::kUnitOfAnotherKind);
}

TEST(Troubles, TooManyReadings) {
  Survey survey = lever();
  for (std::size_t i = 0; i < kMostReadings; ++i) {
    survey.readings.push_back(survey.readings[1]);
    survey.readings.back().name = std::to_string(i);
  }
  expect(only(survey), In::kSurvey, 0, "reading", Code::kTooMany);
}

}  // namespace
}  // namespace sparewright::survey
