// Every number that is printed on the sheets is a number of the ledger.
#include "printed_numbers.hpp"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "golden.hpp"
#include "program.hpp"

namespace sparewright {
namespace {

using testing::IsEmpty;
using tests::PrintedNumbers;

class NumbersOnSheets : public tests::ProgramTest, public testing::WithParamInterface<const char*> {
 protected:
  void SetUp() override {
    ProgramTest::SetUp();
    const std::filesystem::path jobs = std::filesystem::path(SPAREWRIGHT_SOURCE_DIR) / "tests" / "jobs";
    for (const auto& entry : std::filesystem::directory_iterator(jobs))
      std::filesystem::copy(entry.path(), at(""));
  }

  std::string sheets(const std::string& job) {
    EXPECT_LE(run("sheets " + job + " -o sheets.pdf").status, 1);  // a NO is a verdict, no failure
    EXPECT_EQ(std::system(("pdftotext -raw '" + at("sheets.pdf").string() + "'").c_str()), 0);
    return read("sheets.txt");
  }

  // How a reading is read is shown by one that is nobody's.
  static std::string without_example(std::string printed) {
    const std::string example = "5t + 62 on a line";
    for (std::size_t at = printed.find(example); at != std::string::npos; at = printed.find(example))
      printed.erase(at, example.size());
    return printed;
  }

  // What the numbers are good to stands in the list for people, not in the one for machines, which has its parts.
  static std::string all_good_to(const std::string& listed) {
    const std::string good_to = "good to ";
    std::string all;
    for (std::size_t at = listed.find(good_to); at != std::string::npos; at = listed.find(good_to, at + 1)) {
      const std::size_t from = at + good_to.size();
      all += listed.substr(from, listed.find(' ', from) - from) + " ";
    }
    return all;
  }

  PrintedNumbers numbers(const std::string& job) {
    const auto listed = nlohmann::json::parse(run("numbers " + job + " --json").out);
    const std::string usual_general = " 0.13 0.25 ";  // a tolerance as typed, where the job types none
    std::string typed = read(job) + usual_general;
    for (const char* shop : {"forms", "farm", "hand", "boatyard", "smithy", "mill", "town", "small_lathe"})
      typed += read(std::string(shop) + ".shop.toml");
    return {listed, typed + all_good_to(run("numbers " + job).out)};
  }
};

TEST_P(NumbersOnSheets, AreListed) {
  const std::string job = std::string(GetParam()) + ".job.toml";
  const std::string printed = sheets(job);
  EXPECT_THAT(numbers(job).strange_in(without_example(printed)), IsEmpty());
  EXPECT_TRUE(tests::golden("cli/" + std::string(GetParam()) + ".all-sheets.txt", printed));
}

// A number that slipped would be seen.
TEST_F(NumbersOnSheets, WouldBeMissed) {
  const PrintedNumbers listed = numbers("bracket.job.toml");
  EXPECT_THAT(listed.strange_in("1.0620 5t + 62"), IsEmpty());
  EXPECT_THAT(listed.strange_in("1.0650 5t + 63 0.6261 0.6291"),
              testing::ElementsAre("1.0650", "0.6291", "5t + 63"));
}

INSTANTIATE_TEST_SUITE_P(Jobs, NumbersOnSheets,
                         testing::Values("bracket", "pump_body", "shift_lever", "guard_bracket",
                                         "line_bearing", "shift_arm", "keyed_shaft", "lever_plate",
                                         "clamp_hub", "ring_flange", "bearing_seat"),
                         [](const auto& job) { return std::string(job.param); });

}  // namespace
}  // namespace sparewright
