#include "core/survey/sketch.hpp"

#include <map>

#include <gtest/gtest.h>

#include "core/survey/ways.hpp"
#include "surveys.hpp"

namespace sparewright {
namespace {

using quantity::Kind;
using survey::Sketch;
using survey::Way;
using tests::reading;

// Millimetres: centres 100, edge to the hole 40, a hole of 20, a pin of 10 diameter and one given by its radius 3.
survey::Survey places() {
  survey::Survey survey;
  survey.instruments = {tests::instrument("caliper", "0.001", "0.001")};
  survey.dimensions = {{"centres", Kind::kLength}, {"edge", Kind::kLength}, {"hole", Kind::kDiameter},
                       {"pin", Kind::kDiameter},   {"nose", Kind::kRadius}, {"slot", Kind::kLength}};
  return survey;
}

const std::map<std::string, double> kFound{{"centres", 100.0}, {"edge", 40.0}, {"hole", 20.0},
                                           {"pin", 10.0},      {"nose", 3.0},  {"slot", 8.0}};

std::optional<double> found(const std::string& name) {
  const auto value = kFound.find(name);
  return value == kFound.end() ? std::nullopt : std::optional(value->second);
}

struct Case {
  Way way;
  std::vector<std::string> of;
  double from;
  double to;
};

class ReadingsOnASketch : public testing::TestWithParam<Case> {};

TEST_P(ReadingsOnASketch, LieBetweenWhatTheirFacesTouch) {
  survey::Survey survey = places();
  survey.readings = {reading("it", GetParam().way, GetParam().of, "caliper", {"1"})};
  const auto sketches = survey::sketches_of(survey, found);
  ASSERT_EQ(sketches.size(), 1U);
  ASSERT_EQ(sketches[0].spans.size(), 1U);
  EXPECT_EQ(sketches[0].dimension, GetParam().of.front());
  EXPECT_DOUBLE_EQ(sketches[0].spans[0].from_mm, GetParam().from);
  EXPECT_DOUBLE_EQ(sketches[0].spans[0].to_mm, GetParam().to);
}

INSTANTIATE_TEST_SUITE_P(All, ReadingsOnASketch,
                         testing::Values(Case{Way::kOverHoles, {"centres", "hole", "pin"}, -10.0, 105.0},
                                         Case{Way::kBetweenHoles, {"centres", "hole", "pin"}, 10.0, 95.0},
                                         Case{Way::kSameSides, {"centres", "hole", "pin"}, -10.0, 95.0},
                                         Case{Way::kOverPins, {"centres", "pin", "nose"}, -5.0, 103.0},
                                         Case{Way::kBetweenPins, {"centres", "pin", "nose"}, 5.0, 97.0},
                                         Case{Way::kEdgeToHoleNear, {"edge", "hole"}, 0.0, 30.0},
                                         Case{Way::kEdgeToHoleFar, {"edge", "hole"}, 0.0, 50.0},
                                         Case{Way::kFaceToPinNear, {"edge", "pin"}, 0.0, 35.0},
                                         Case{Way::kFaceOverPin, {"edge", "pin"}, 0.0, 45.0},
                                         Case{Way::kCentres, {"centres"}, 0.0, 100.0},
                                         Case{Way::kOutside, {"nose"}, 0.0, 6.0},
                                         Case{Way::kInside, {"slot"}, 0.0, 8.0},
                                         Case{Way::kStep, {"slot"}, 0.0, 8.0}));

TEST(Sketches, DrawAHoleOnceHoweverManyReadingsTouchIt) {
  survey::Survey survey = places();
  survey.readings = {reading("centre to centre", Way::kCentres, {"centres"}, "caliper", {"1"}),
                     reading("over", Way::kOverHoles, {"centres", "hole", "pin"}, "caliper", {"1"}),
                     reading("between", Way::kBetweenHoles, {"centres", "hole", "pin"}, "caliper", {"1"})};
  const auto sketches = survey::sketches_of(survey, found);
  ASSERT_EQ(sketches.size(), 1U);
  ASSERT_EQ(sketches[0].rounds.size(), 2U);
  EXPECT_EQ(sketches[0].rounds[0].name, "hole");
  EXPECT_EQ(sketches[0].rounds[1].name, "pin");
  EXPECT_EQ(sketches[0].spans.size(), 3U);
}

TEST(Sketches, LeaveOutWhatIsNotKnownAndWhatLiesAlongNoLine) {
  survey::Survey survey = places();
  survey.dimensions.push_back({"lost", Kind::kLength});
  survey.readings = {reading("lost", Way::kOutside, {"lost"}, "caliper", {"1"}),
                     reading("gauge", Way::kRadiusGauge, {"nose"}, "caliper", {"1"}),
                     tests::expression("sum", "centres + edge", "caliper", {"1"})};
  EXPECT_TRUE(survey::sketches_of(survey, found).empty());
}

}  // namespace
}  // namespace sparewright
