// What can be asked, and how entries are read.
#include <set>

#include <gtest/gtest.h>

#include "core/answers/question.hpp"
#include "core/answers/subjects.hpp"
#include "core/base/messages.hpp"

namespace sparewright::answers {
namespace {

Question with(std::map<std::string, std::string> entries) {
  return {"", std::move(entries), nullptr, quantity::UnitSystem::kInch};
}

TEST(Question, EntriesNeedAUnitAndASizeMoreThanZero) {
  EXPECT_DOUBLE_EQ(size_entry(with({{"size", "1/2 in"}}), "size")->base, 12.7);
  EXPECT_DOUBLE_EQ(size_entry(with({{"size", "1/2"}}), "size")->base, 12.7);
  EXPECT_EQ(size_entry(with({{"size", "12"}}), "size").error().code, base::Code::kUnitMissing);
  EXPECT_EQ(size_entry(with({{"size", "-1 mm"}}), "size").error().code, base::Code::kSizeNotPositive);
  EXPECT_EQ(size_entry(with({}), "size").error().code, base::Code::kEmptyValue);
}

TEST(Question, FailuresNameTheEntry) {
  const auto size = size_entry(with({{"circle", "three"}}), "circle");
  ASSERT_FALSE(size);
  EXPECT_NE(base::report(size.error()).find("--circle"), std::string::npos) << base::report(size.error());
}

TEST(Question, CountsAreWholeAndInRange) {
  EXPECT_EQ(*count_entry(with({{"holes", "6"}}), "holes", 2, 360), 6);
  for (const char* wrong : {"1", "361", "six", "6.5", "-6", ""})
    EXPECT_FALSE(count_entry(with({{"holes", wrong}}), "holes", 2, 360)) << wrong;
}

TEST(Question, AMachineNeedsAShop) {
  EXPECT_EQ(machine_entry(with({{"on", "lathe"}})).error().code, base::Code::kEmptyValue);
  shop::Shop shop;
  shop.machines.push_back({});
  shop.machines.back().name = "knee mill";
  Question question = with({{"on", "kneemill"}});
  question.shop = &shop;
  const auto unknown = machine_entry(question);
  ASSERT_FALSE(unknown);
  EXPECT_NE(unknown.error().accepted.find("knee mill"), std::string::npos);
}

// Eight entries are what a question of the bench may ask for.
TEST(Subjects, HaveDistinctNamesAFewEntriesAndAnExample) {
  for (const auto subjects : {handbook_subjects(), quick_subjects()}) {
    std::set<std::string_view> names;
    for (const Subject& subject : subjects) {
      EXPECT_TRUE(names.insert(subject.name).second) << subject.name;
      EXPECT_LE(subject.entries.size(), 8U) << subject.name;
      EXPECT_FALSE(subject.example.empty()) << subject.name;
      EXPECT_TRUE(subject.answer) << subject.name;
    }
  }
}

}  // namespace
}  // namespace sparewright::answers
