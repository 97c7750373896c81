// The published JSON Schema before an independent judge: python3-jsonschema, the texts being read by tomllib.
#include "core/text/json_schema.hpp"

#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/text/validate.hpp"
#include "judge.hpp"
#include "text_samples.hpp"
#include "toml_values.hpp"

namespace sparewright::text {
namespace {

// First line of the judgement: of the schema itself; then one of each text.
std::vector<std::string> judgement_of(const Shape& shape, const std::vector<std::string>& texts) {
  std::string input = tests::hex(json_schema(shape, "Keeper", "A latch keeper")) + '\n';
  for (const std::string& text : texts)
    input += tests::hex(text) + '\n';
  return tests::judged(R"py(
import json, jsonschema, sys, tomllib
lines = [bytes.fromhex(line.strip()).decode() for line in open(sys.argv[1])]
schema = json.loads(lines[0])
try:
    jsonschema.Draft7Validator.check_schema(schema)
    print("valid")
except jsonschema.SchemaError as e:
    print(e.message)
judge = jsonschema.Draft7Validator(schema)
for text in lines[1:]:
    print("taken" if judge.is_valid(tomllib.loads(text)) else "refused")
)py",
                       input);
}

std::string verdict(const std::string& text, const Shape& shape) {
  return validate(samples::parsed(text), shape).empty() ? "taken" : "refused";
}

// A change of the sample job, and what is to be said of it.
struct Sample {
  std::string from;  // a piece of the sample job
  std::string to;    // put in its place
  std::string verdict;
};

const std::vector<Sample> kSamples{
    {"", "", "taken"},
    {"revision = 3", "", "taken"},
    {"revision = 3", "scale = 2.5", "taken"},
    {"0.498,", "1, ", "taken"},
    {"bolt = \"1/2\"", "bolt = 0.5", "taken"},
    {"bolt = \"1/2\"", "bolt = { size = 0.5 }", "taken"},
    {"leaves = 0.3125", "leaves = \"5/16\"", "taken"},
    {"name = \"back face\"", "name = \"back face\"\nnote = []", "taken"},
    {", y = 0 }", "}", "taken"},
    {"at   = {", "at   = { z = 1,", "refused"},
    {"revision = 3", "revison = 3", "refused"},
    {"revision = 3", "revision = \"3\"", "refused"},
    {"revision = 3", "revision = 3.5", "refused"},
    {"title = \"Latch keeper\"", "", "refused"},
    {"title = \"Latch keeper\"", "title = 1", "refused"},
    {"units = \"in\"", "units = \"inch\"", "refused"},
    {"turn_over = false", "turn_over = \"no\"", "refused"},
    {"revision = 3", "scale = \"2.5\"", "refused"},
    {"0.498,", "true,", "refused"},
    {"\"0.4985\", 0.498, \"0.4990\"", "", "refused"},
    {"\"0.4985\", 0.498, \"0.4990\"", "1, 2, 3, 4, 5, 6", "refused"},
    {"bolt = \"1/2\"", "bolt = true", "refused"},
    {"bolt = \"1/2\"", "bolt = { size = 0.5, fti = \"H7\" }", "refused"},
    {"bolt = \"1/2\"", "bolt = { fit = \"H7\" }", "refused"},
    {"bolt = \"1/2\"", "bolt = [1]", "refused"},
    {"bolt = \"1/2\"", "bolt = 1979-05-27", "refused"},
    {"kind = \"flat\"", "kind = \"hole\"", "refused"},
    {"kind = \"flat\"", "kind = \"flt\"", "refused"},
    {"kind = \"flat\"", "kind = 1", "refused"},
    {"kind = \"flat\"", "", "refused"},
    {"leaves = 0.3125", "leaves = 0.3125\ndiameter = 1", "refused"},
    {"leaves = 0.3125", "", "refused"},
    {"says = \"\"\"", "sais = \"\"\"", "refused"},
    {"size.width = 1.5", "size.width = []", "refused"},
    {"divisions = 200", "divisions = \"200\"", "refused"},
    {"divisions = 200", "slack = 1", "refused"},
    {"[blank]", "[blnk]", "refused"},
    {"[machine.mill]", "[machine.mill]\nquill = 1", "refused"},
};

std::string text_of(const Sample& sample) {
  std::string text(samples::kJob);
  if (const auto at = text.find(sample.from); !sample.from.empty())
    text.replace(at, sample.from.size(), sample.to);
  return text;
}

class OutsideJsonSchema : public testing::TestWithParam<std::size_t> {
 public:
  static void SetUpTestSuite() {
    std::vector<std::string> texts;
    texts.reserve(kSamples.size());
    for (const Sample& sample : kSamples)
      texts.push_back(text_of(sample));
    judgement = judgement_of(samples::job_shape(), texts);
  }
  static std::vector<std::string> judgement;
};
std::vector<std::string> OutsideJsonSchema::judgement;

TEST_F(OutsideJsonSchema, IsAValidSchema) {
  EXPECT_EQ(judgement.at(0), "valid");
}

TEST_P(OutsideJsonSchema, TakesAndRefusesWhatTheValidatorDoes) {
  const Sample& sample = kSamples[GetParam()];
  EXPECT_EQ(judgement.at(GetParam() + 1), sample.verdict) << sample.from << " -> " << sample.to;
  EXPECT_EQ(verdict(text_of(sample), samples::job_shape()), sample.verdict)
      << sample.from << " -> " << sample.to;
}
INSTANTIATE_TEST_SUITE_P(OutsideKeeper, OutsideJsonSchema, testing::Range<std::size_t>(0, kSamples.size()));

}  // namespace
}  // namespace sparewright::text
