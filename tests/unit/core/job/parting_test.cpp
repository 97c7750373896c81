// Parting off, and what a setup on a lathe starts from.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "hand_work.hpp"
#include "lathe_job.hpp"

namespace sparewright {
namespace {

using testing::HasSubstr;
using tests::judged;
using tests::lathe_job;
using tests::lathe_shop;
using tests::lathe_work;
using tests::line_with;
using tests::sheet_of;

const std::string kHole =
    "[[feature]]\nname = \"hole\"\nkind = \"hole\"\ninto = \"right end\"\nhow = \"drilled\"\ndiameter = "
    "\"12\"\n";
const std::string kStub =
    "[[feature]]\nname = \"stub\"\nkind = \"chucking piece\"\nside = \"left end\"\nlength = \"45\"\n";
const std::string kDrill = lathe_work("hole", "\"centre drill\", \"drill 12\"");
const std::string kPart = lathe_work("stub", "\"parter\"");

std::string parted(const std::string& features, const std::string& works) {
  auto job = judged(lathe_job(features + kStub, works), lathe_shop());
  return line_with(sheet_of(job, 20), "part off").says;
}

// 35 long: a hole through, or one of 34 that ends in the part, or one that is drilled after.
TEST(PartingOff, EndsInTheBoreThatIsThere) {
  EXPECT_THAT(parted(kHole, kDrill + kPart), HasSubstr("part off into hole, 35.00 long"));
  EXPECT_THAT(parted(kHole + "depth = \"36\"\n", kDrill + kPart), HasSubstr("part off into hole"));
  EXPECT_THAT(parted(kHole + "depth = \"34\"\n", kDrill + kPart), HasSubstr("part off to the middle"));
  EXPECT_THAT(parted(kHole, kPart + kDrill), HasSubstr("part off to the middle"));
  EXPECT_THAT(parted("", kPart), HasSubstr("part off to the middle"));
}

// What is made in op 10 is part of what op 20 starts from: the order of work changed, its sheet changes with it.
TEST(LatheSetup, IsWorkedOutAnewWhereTheSetupBeforeChanges) {
  const std::string before =
      "[[setup]]\nop = 10\nname = \"first\"\nmachine = \"lathe\"\nhold = { in = \"chuck\", free_end = "
      "\"right end\", "
      "gripped = \"30\" }\n";
  const std::string face =
      "[[feature]]\nname = \"face\"\nkind = \"flat\"\nside = \"right end\"\nleaves = \"79\"\n";
  const auto with_op_10 = [&](const std::string& works) {
    std::string text = lathe_job(face + kHole + kStub, kPart);
    return text.insert(text.find("[[setup]]"), before + works);
  };
  tests::Judged kept;
  ASSERT_EQ(tests::read_into(kept, with_op_10(lathe_work("face", "\"R0.8\"")), lathe_shop()), "");
  EXPECT_THAT(line_with(sheet_of(kept, 20), "part off").says, HasSubstr("to the middle"));
  ASSERT_EQ(tests::read_into(kept, with_op_10(kDrill), lathe_shop()), "");
  EXPECT_THAT(line_with(sheet_of(kept, 20), "part off").says, HasSubstr("into hole"));
}

}  // namespace
}  // namespace sparewright
