// Jobs out of the ordinary: tiny, endless, of many holes, with titles nobody expects. Each gives sheets that hold
// together, or says why not.
#include <gmock/gmock.h>

#include "program.hpp"

namespace sparewright {
namespace {

using testing::HasSubstr;
using testing::StartsWith;
using tests::ProgramTest;
using tests::Ran;

std::string job(const std::string& title, const std::string& size, const std::string& features) {
  return "[job]\ntitle = \"" + title +
         "\"\nhand = \"not handed\"\nunits = \"mm\"\nshop = \"farm.shop.toml\"\n\n[blank]\n" +
         "shape = \"plate\"\nmaterial = \"1018 cold drawn\"\nsize = " + size + "\n\n" + features;
}

std::string hole(const std::string& name, const std::string& x, const std::string& y, const std::string& d) {
  return "[[feature]]\nname = \"" + name + "\"\nkind = \"hole\"\nhow = \"drilled\"\nat.x = \"" + x +
         "\"\nat.y = \"" + y + "\"\ndiameter = \"" + d + "\"\n\n";
}

const std::string kPlate = R"({ length = "100", width = "40", thickness = "12" })";

class OddJobs : public ProgramTest {
 protected:
  // The text of the sheets, or what is wrong.
  std::string sheets(const std::string& text) {
    write("odd.job.toml", text);
    const Ran ran = run("sheets odd.job.toml -o odd.pdf");
    EXPECT_LE(ran.status, 1) << ran.err;
    EXPECT_THAT(read("odd.pdf"), StartsWith("%PDF-"));
    const std::string command = "cd '" + at(".").string() +
                                "' && pdftotext -layout odd.pdf odd.txt && qpdf --check odd.pdf > /dev/null";
    EXPECT_EQ(std::system(command.c_str()), 0);
    return read("odd.txt");
  }
};

TEST_F(OddJobs, ThreeMillimetresAreDrawnLarge) {
  const std::string text = sheets(
      job("Tiny pawl", R"({ length = "3", width = "2", thickness = "1" })", hole("pin", "1", "1", "0.5")));
  EXPECT_THAT(text, HasSubstr("scale 10:1"));
  EXPECT_THAT(text, HasSubstr("dia 0.50 through"));
}

TEST_F(OddJobs, ThreeMetresAreDrawnBroken) {
  const std::string text = sheets(job("Rail", R"({ length = "3000", width = "60", thickness = "12" })",
                                      hole("first", "20", "30", "9") + hole("last", "2980", "30", "9")));
  EXPECT_THAT(text, HasSubstr("bar drawn broken: lengths are true"));
  EXPECT_THAT(text, HasSubstr("2980.00"));
}

TEST_F(OddJobs, TwoHundredHolesTakeMoreSheets) {
  std::string holes;
  for (int i = 0; i < 20; ++i) {
    for (int j = 0; j < 10; ++j)
      holes += hole("hole " + std::to_string(10 * i + j), std::to_string(12 + 11 * i),
                    std::to_string(10 + 11 * j), "4");
  }
  const std::string text =
      sheets(job("Sieve plate", R"({ length = "240", width = "120", thickness = "6" })", holes));
  EXPECT_THAT(text, HasSubstr("the finished part, 2 of"));
  EXPECT_THAT(text, HasSubstr("200 x dia 4.00 through"));
}

TEST_F(OddJobs, ATitleOfThreeHundredLettersIsPrintedWhole) {
  const std::string text = sheets(job(std::string(300, 'X'), kPlate, hole("a", "20", "20", "8")));
  EXPECT_GE(std::count(text.begin(), text.end(), 'X'), 300);
}

TEST_F(OddJobs, LettersTheTypeDoesNotHaveArePrintedByTheirCode) {
  const std::string text = sheets(job("Plate \xE6\x9D\xBF", kPlate, hole("a", "20", "20", "8")));
  EXPECT_THAT(text, HasSubstr("U+677F"));
}

TEST_F(OddJobs, APartWithoutFeaturesOrSetupsHasItsSheets) {
  const std::string text = sheets(job("Bare plate", kPlate, ""));
  EXPECT_THAT(text, HasSubstr("100 stock"));
}

}  // namespace
}  // namespace sparewright
