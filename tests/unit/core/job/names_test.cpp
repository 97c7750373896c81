// Names as people give them: sizes in fractions among them, though a figure's name is a path with '/' in it.
#include <gtest/gtest.h>

#include "judged_job.hpp"

namespace sparewright {
namespace {

std::string renamed(std::string text, const std::string& name, const std::string& to) {
  const std::string quoted = "\"" + name + "\"";
  for (std::size_t at = text.find(quoted); at != std::string::npos; at = text.find(quoted, at + to.size())) {
    text.replace(at, quoted.size(), "\"" + to + "\"");
  }
  return text;
}

std::string fitted_bore() {
  return tests::job_with(
      "[[feature]]\nname = \"bore\"\nkind = \"hole\"\nhow = \"bored\"\nat.x = \"2\"\nat.y = \"1.5\"\n"
      "diameter = { on = \"pin\", clearance = \"+0.0010 to +0.0020\", with = \"fine\" }\n");
}

TEST(Names, AnInstrumentMayBeCalledByAFraction) {
  auto plain = tests::judged(fitted_bore());
  auto with_fraction = tests::judged(renamed(fitted_bore(), "fine", "bore gauge 1/2-1"),
                                     renamed(tests::plain_shop(), "fine", "bore gauge 1/2-1"));
  EXPECT_EQ(plain.state("fit as it can be measured", "bore"), ledger::State::kOk);
  EXPECT_EQ(with_fraction.state("fit as it can be measured", "bore"), ledger::State::kOk);
  EXPECT_GT(plain.inches("feature/bore/diameter/aim"), 0.501);
  EXPECT_EQ(with_fraction.inches("feature/bore/diameter/aim"), plain.inches("feature/bore/diameter/aim"));
}

TEST(Names, AReadingMayBeCalledByAFraction) {
  auto job = tests::judged(fitted_bore());
  auto with_fraction = tests::judged([] {
    std::string text = fitted_bore();
    const std::string name = "name = \"pin\"";
    text.replace(text.find(name), name.size(), "name = \"over the 1/2 pin\"");
    return text;
  }());
  EXPECT_EQ(with_fraction.inches("survey/pin"), job.inches("survey/pin"));
  EXPECT_NEAR(with_fraction.inches("reading/over the 1/2 pin"), 0.5, 1e-12);
}

}  // namespace
}  // namespace sparewright
