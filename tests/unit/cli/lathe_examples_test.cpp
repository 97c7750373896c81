// The examples that are turned: what is right of each, its key numbers, and that a sound job is left in peace.
#include <cstdlib>

#include <gmock/gmock.h>

#include "golden.hpp"
#include "program.hpp"

namespace sparewright {
namespace {

using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;
using tests::ProgramTest;
using tests::Ran;

class LatheExamples : public ProgramTest {
 protected:
  std::string sheets(const std::string& job) {
    const Ran ran = run("sheets " + job + " -o turned.pdf");
    EXPECT_LE(ran.status, 1) << ran.err;
    EXPECT_THAT(read("turned.pdf"), StartsWith("%PDF-"));
    const std::string command = "cd '" + at(".").string() + "' && pdftotext -layout turned.pdf turned.txt";
    EXPECT_EQ(std::system(command.c_str()), 0);
    return read("turned.txt");
  }
  static int count(const std::string& text, const std::string& what) {
    int found = 0;
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + 1))
      ++found;
    return found;
  }
};

// --- a spacer with nothing wrong ------------------------------------------------------------------------------------
// Shaft 0.7495: bore 0.7510-0.7530 for a running clearance of 0.0015-0.0035. Gap 1.6250: 1.620-1.622 leaves 0.003-0.005.
TEST_F(LatheExamples, ASoundSpacerIsLeftInPeace) {
  const Ran ran = run("check spacer.job.toml");
  EXPECT_EQ(ran.status, 0) << ran.err << ran.out;
  EXPECT_THAT(ran.out, HasSubstr("0 NO, 0 NOT KNOWN, "));
  EXPECT_THAT(ran.out, HasSubstr("Queries: 0."));
  EXPECT_LE(count(read("spacer.job.toml"), "\n["), 15);  // entries
}

TEST_F(LatheExamples, TheSpacerIsBoredPartedOffAndFacedOnAMandrel) {
  const Ran ran = run("order spacer.job.toml");
  EXPECT_EQ(ran.status, 0) << ran.err;
  EXPECT_TRUE(tests::golden("cli/spacer.order.txt", ran.out));
  for (const char* line : {"drill 47/64", "0.7510-0.7529",
                           "part off into bore, 1.631 long, 0.010 of it to face", "1.6200-1.6220"})
    EXPECT_THAT(ran.out, HasSubstr(line));
  const std::string printed = sheets("spacer.job.toml");
  EXPECT_THAT(printed, HasSubstr("stub: part off into"));
  EXPECT_THAT(printed, HasSubstr("bore, 1.631 long"));
}

// --- a shaft between chuck and centre -------------------------------------------------------------------------------
TEST_F(LatheExamples, TheShaftsSeatsAreFinishedByTheCompound) {
  const Ran ran = run("order shaft.job.toml");
  EXPECT_TRUE(tests::golden("cli/shaft.order.txt", ran.out));
  const Ran numbers = run("numbers shaft.job.toml");
  // 25.100 after two like cuts; 0.089 to the aim 25.011, 0.0040 a division: 23.
  EXPECT_THAT(numbers.out, HasSubstr("op 30/right seat/compound divisions"));
  EXPECT_THAT(ran.out, HasSubstr("in 23 divisions, makes 25.008"));
  EXPECT_THAT(sheets("shaft.job.toml"), HasSubstr("in 23 divisions"));
}

TEST_F(LatheExamples, TheShaftsOnlyDoubtsAreItsKeyseatAndTheMicrometer) {
  const Ran ran = run("check shaft.job.toml");
  EXPECT_THAT(ran.out, HasSubstr("0 NO, "));
  EXPECT_THAT(ran.out, Not(HasSubstr("NOT KNOWN  how it is cut: right seat")));
}

// --- a flange ------------------------------------------------------------------------------------------------------
TEST_F(LatheExamples, TheFlangesSpigotIsF7AndItsBoreGoesThrough) {  // 70 f7 is 69.940-69.970, ISO 286-2
  const Ran ran = run("order flange.job.toml");
  EXPECT_THAT(ran.out, HasSubstr("69.940-69.970"));
  EXPECT_THAT(ran.out, HasSubstr("bore to AIM 25.0"));
  const Ran check = run("check flange.job.toml");
  EXPECT_THAT(check.out, HasSubstr("0 NO, "));
}

}  // namespace
}  // namespace sparewright
