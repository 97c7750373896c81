// Whole job and shop texts broken at random, from the example: no crash, no hang; what is wrong is said with a place,
// and what can still be read can be worked out.
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "judged_job.hpp"
#include "splitmix.hpp"

namespace sparewright {
namespace {

constexpr std::uint64_t kSeed = 1871;
constexpr int kMutants = 1500;

std::string example(const char* name) {
  std::ifstream file(std::filesystem::path(SPAREWRIGHT_SOURCE_DIR) / "examples" / name, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  std::size_t begin = 0;
  while (begin < text.size()) {
    const std::size_t end = std::min(text.find('\n', begin), text.size());
    lines.push_back(text.substr(begin, end - begin));
    begin = end + 1;
  }
  return lines;
}

// The quoted texts of a line, as (start, length) of what stands between the quotes.
std::vector<std::pair<std::size_t, std::size_t>> quoted_in(const std::string& line) {
  std::vector<std::pair<std::size_t, std::size_t>> found;
  for (std::size_t open = line.find('"'); open != std::string::npos;) {
    const std::size_t shut = line.find('"', open + 1);
    if (shut == std::string::npos) break;
    found.emplace_back(open + 1, shut - open - 1);
    open = line.find('"', shut + 1);
  }
  return found;
}

class Mutator {
 public:
  explicit Mutator(std::uint64_t seed) : random_(seed) {}

  std::string operator()(const std::string& text) {
    std::vector<std::string> lines = lines_of(text);
    for (std::size_t edits = 1 + below(2); edits > 0; --edits)
      edit(lines);
    std::string out;
    for (const std::string& line : lines)
      out += line + "\n";
    return out;
  }

 private:
  std::size_t below(std::size_t n) { return random_.below(n); }

  void edit(std::vector<std::string>& lines) {
    std::string& line = lines[below(lines.size())];
    switch (below(5)) {
      case 0:
        line.clear();
        return;
      case 1:
        line = lines[below(lines.size())];
        return;
      case 2:
        line += "\n" + lines[below(lines.size())];
        return;
      case 3:
        if (!line.empty()) line.erase(below(line.size()), 1 + below(4));
        return;
      default:
        put_value(line);
        return;
    }
  }

  // Another value in quotes: what people mistype, and sizes far out of the ordinary.
  void put_value(std::string& line) {
    static constexpr const char* kValues[] = {"0",
                                              "-1",
                                              "1e300",
                                              "1e-300",
                                              "0.0001",
                                              "1,5",
                                              "",
                                              "back",
                                              "top",
                                              "3/0",
                                              "1/3 mm",
                                              "9999999",
                                              "+0.001",
                                              "±5",
                                              "x",
                                              "nan",
                                              "inf",
                                              "0.500 +0.001/-0.002",
                                              "1-1/2",
                                              "-0.5",
                                              "3 psi",
                                              "relief",
                                              "left end",
                                              "pivot bore",
                                              "idler_pin / 0",
                                              "idler_pin"};
    const auto places = quoted_in(line);
    if (places.empty()) return;
    const auto [start, length] = places[below(places.size())];
    line.replace(start, length, kValues[below(std::size(kValues))]);
  }

  tests::SplitMix random_;
};

// Reads, and where that can be done works everything out. Returns whether it could be read.
bool work_out(const std::string& job_text, const std::string& shop_text) {
  tests::Judged job;
  if (!tests::read_into(job, job_text, shop_text).empty()) return false;
  for (const ledger::Figure& figure : job.ledger.figures()) {
    EXPECT_TRUE(figure.known() || !figure.missing.empty())
        << figure.name << " is not known and says not why\n"
        << job_text;
    if (figure.known()) {
      EXPECT_TRUE(std::isfinite(figure.value)) << figure.name << "\n" << job_text;
    }
  }
  for (const ledger::Verdict& verdict : job.ledger.verdicts())
    EXPECT_FALSE(verdict.reason.empty()) << verdict.check;
  return true;
}

TEST(JobFuzz, BrokenJobs) {
  const std::string job = example("bracket.job.toml");
  const std::string shop = example("farm.shop.toml");
  ASSERT_TRUE(work_out(job, shop));
  Mutator mutate(kSeed);
  int read = 0;
  for (int i = 0; i < kMutants && !testing::Test::HasFailure(); ++i) {
    SCOPED_TRACE(i);
    read += work_out(mutate(job), shop) ? 1 : 0;
  }
  // Both kinds are met often enough to mean something.
  EXPECT_GT(read, kMutants / 10);
  EXPECT_LT(read, kMutants * 9 / 10);
}

TEST(JobFuzz, BrokenShops) {
  const std::string job = example("bracket.job.toml");
  const std::string shop = example("farm.shop.toml");
  Mutator mutate(kSeed + 1);
  int read = 0;
  for (int i = 0; i < kMutants / 2 && !testing::Test::HasFailure(); ++i) {
    SCOPED_TRACE(i);
    read += work_out(job, mutate(shop)) ? 1 : 0;
  }
  EXPECT_GT(read, kMutants / 50);
}

}  // namespace
}  // namespace sparewright
