// Wrong input through the program: each ends in status 2 with a message that says where, what was found and what is
// accepted; nothing is left half written.
#include <gmock/gmock.h>

#include "program.hpp"

namespace sparewright {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using tests::ProgramTest;
using tests::Ran;

class WrongInput : public ProgramTest {
 protected:
  Ran check_changed(const std::string& old_text, const std::string& new_text) {
    change("bracket.job.toml", "wrong.job.toml", old_text, new_text);
    return run("check wrong.job.toml");
  }
};

TEST_F(WrongInput, NoUnits) {
  const Ran ran = check_changed("units     = \"in\"\n", "");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, AllOf(HasSubstr("wrong.job.toml:4:1:"), HasSubstr("needs the key 'units'"),
                             HasSubstr("in, mm")));
  EXPECT_EQ(ran.out, "");
}

TEST_F(WrongInput, AUnitThatIsNoneOfALength) {
  const Ran ran = check_changed("size = \"1.062\"", "size = \"1.062 psi\"");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, AllOf(HasSubstr("wrong.job.toml:92:"), HasSubstr("psi"), HasSubstr("in, mm")));
}

TEST_F(WrongInput, DecimalComma) {
  const Ran ran = check_changed("size = \"1.062\"", "size = \"1,062\"");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, AllOf(HasSubstr("wrong.job.toml:92:22:"), HasSubstr("comma"), HasSubstr("1.062")));
}

TEST_F(WrongInput, UnknownKeyNamesTheNearest) {
  const Ran ran = check_changed("material   =", "materail   =");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, AllOf(HasSubstr("wrong.job.toml:76:1:"), HasSubstr("no key 'materail'"),
                             HasSubstr("did you mean 'material'?")));
}

TEST_F(WrongInput, DuplicateName) {
  const Ran ran = check_changed("\"screw hole 2\"", "\"screw hole 1\"");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, AllOf(HasSubstr("'screw hole 1' is there twice"), HasSubstr("wrong.job.toml:106:")));
}

TEST_F(WrongInput, ACycleIsWrittenOut) {
  const Ran ran =
      check_changed("tol = \"±0.004\", from = \"back\"", "tol = \"±0.004\", from = \"screw hole 2\"");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, HasSubstr("pivot bore -> screw hole 2 -> "));
}

TEST_F(WrongInput, ToolNotInTheShop) {
  const Ran ran = check_changed("\"drill 9/16\"", "\"drill 5/8\"");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, AllOf(HasSubstr("wrong.job.toml:130:40:"), HasSubstr("no tool 'drill 5/8'"),
                             HasSubstr("drill 9/16")));
}

TEST_F(WrongInput, AnInstrumentsNameThatCannotServeIsToldInTheShopText) {
  change("farm.shop.toml", "farm.shop.toml", "\"caliper 6\"", "\"caliper 1/2\"");
  const Ran ran = run("check bracket.job.toml");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, AllOf(HasSubstr("farm.shop.toml:45:"), HasSubstr("a name without '/'")));
}

TEST_F(WrongInput, AnInstrumentGoodToNothingIsToldInTheShopText) {
  change("farm.shop.toml", "farm.shop.toml", "good_to = \"0.001\"", "good_to = \"0\"");
  const Ran ran = run("check bracket.job.toml");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, AllOf(HasSubstr("farm.shop.toml:48:"), HasSubstr("must be more than zero")));
}

TEST_F(WrongInput, FileThatIsNotThere) {
  const Ran ran = run("check none.job.toml");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, HasSubstr("none.job.toml cannot be read: No such file"));
}

TEST_F(WrongInput, FileThatMayNotBeRead) {
  if (::geteuid() == 0) {
    const Ran ran = run("check .");  // root may read every file, and no folder
    EXPECT_EQ(ran.status, 2);
    EXPECT_THAT(ran.err, HasSubstr("it is a folder"));
    return;
  }
  std::filesystem::permissions(at("bracket.job.toml"), std::filesystem::perms::none);
  const Ran ran = run("check bracket.job.toml");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, HasSubstr("Permission denied"));
}

TEST_F(WrongInput, ShopThatIsNotThere) {
  const Ran ran = check_changed("farm.shop.toml", "none.shop.toml");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, HasSubstr("none.shop.toml cannot be read"));
}

TEST_F(WrongInput, FileOfAHundredMegabytes) {
  write("big.job.toml", "");
  std::filesystem::resize_file(at("big.job.toml"), 100'000'000);
  const Ran ran = run("check big.job.toml");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, AllOf(HasSubstr("big.job.toml is larger"), HasSubstr("4 MiB")));
}

TEST_F(WrongInput, NotText) {
  write("noise.job.toml", std::string("title = \"\x9f\x00\xff\"", 13));
  const Ran ran = run("check noise.job.toml");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, AllOf(HasSubstr("noise.job.toml:1:"), HasSubstr("not a text in UTF-8")));
}

TEST_F(WrongInput, OutputWhereNoneCanBeWritten) {
  const Ran ran = run("sheets bracket.job.toml -o none/sheet.pdf");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, HasSubstr("none/sheet.pdf cannot be written: No such file or directory"));
}

TEST_F(WrongInput, SolidFileOfNoKnownKind) {
  const Ran ran = run("solid bracket.job.toml -o part.xyz");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, AllOf(HasSubstr("part.xyz"), HasSubstr(".step")));
}

// A limit on the size of files stands for a full disk: the write fails half way.
TEST_F(WrongInput, DiskFullKeepsTheOldFile) {
  write("sheet.pdf", "the old sheet");
  const Ran ran = run("sheets bracket.job.toml -o sheet.pdf", "trap '' XFSZ; ulimit -f 8;");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, HasSubstr("sheet.pdf cannot be written: File too large"));
  EXPECT_EQ(read("sheet.pdf"), "the old sheet");
  EXPECT_EQ(leftovers(), 0U);
}

TEST_F(WrongInput, FullStandardOutput) {
  for (const char* arguments : {"check bracket.job.toml", "sheets bracket.job.toml -o -"}) {
    const Ran ran = run(std::string(arguments) + " > /dev/full");
    EXPECT_EQ(ran.status, 2) << arguments;
    EXPECT_THAT(ran.err, HasSubstr("standard output cannot be written")) << arguments;
  }
}

TEST_F(WrongInput, NumberThatIsNotThereNamesTheNearest) {
  const Ran ran = run("why bracket.job.toml 'feature/pivot bore/diameter/aims'");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, HasSubstr("did you mean 'feature/pivot bore/diameter/aim'?"));
}

TEST_F(WrongInput, UnknownCommandAndOption) {
  EXPECT_EQ(run("").status, 2);
  EXPECT_EQ(run("chekc bracket.job.toml").status, 2);
  EXPECT_EQ(run("check bracket.job.toml --loud").status, 2);
  EXPECT_EQ(run("sheets bracket.job.toml --paper A3").status, 2);
}

TEST_F(WrongInput, IsAlsoSaidInJson) {
  change("bracket.job.toml", "wrong.job.toml", "size = \"1.062\"", "size = \"1,062\"");
  const Ran ran = run("check wrong.job.toml --json");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.out,
              AllOf(HasSubstr("\"troubles\""), HasSubstr("\"line\": 92"), HasSubstr("\"column\": 22")));
}

}  // namespace
}  // namespace sparewright
