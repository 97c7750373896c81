// The generator of the tables accounts for every row: what it cannot place, it refuses, with file and line.
#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <unistd.h>

namespace sparewright::handbook {
namespace {

using testing::HasSubstr;

struct Outcome {
  int status = 0;
  std::string output;
};

Outcome run(const std::string& arguments) {
  const std::string command = "/usr/bin/python3 " + std::string(SPAREWRIGHT_SOURCE_DIR) +
                              "/tools/handbook_tables.py " + arguments + " 2>&1";
  Outcome result;
  std::FILE* pipe = popen(command.c_str(), "r");
  if (pipe == nullptr) return {-1, "python3 cannot be started"};
  std::array<char, 4096> buffer{};
  for (std::size_t got = 1; got > 0;) {
    got = std::fread(buffer.data(), 1, buffer.size(), pipe);
    result.output.append(buffer.data(), got);
  }
  result.status = pclose(pipe);
  return result;
}

class Tables : public testing::Test {
 protected:
  Tables() : folder_(testing::TempDir() + "tables-" + std::to_string(getpid())) {
    std::filesystem::create_directories(folder_);
    write("sources", "#! rows 1\nkey:text,text:text,address:text?\nbook,The Book of Sizes,\n");
  }
  ~Tables() override { std::filesystem::remove_all(folder_); }
  Tables(const Tables&) = delete;
  Tables& operator=(const Tables&) = delete;

  void write(const std::string& name, const std::string& text) {
    std::ofstream(folder_ + "/" + name + ".csv") << text;
  }
  // The output for one table of that head and body.
  Outcome check(const std::string& text) {
    write("sizes", text);
    return run("--check " + folder_);
  }
  [[nodiscard]] const std::string& folder() const { return folder_; }

 private:
  std::string folder_;
};

constexpr const char* kHead = "name:text,size:Length inch,source:source,basis:basis\n";

TEST_F(Tables, AGoodTableIsCountedAndCompiled) {
  write("sizes", std::string("# a remark\n#! rows 2\n#! unique name\n") + kHead +
                     "#4,0.112,book,published\n\"a \"\"b\"\", c\",0.250,book,from memory\n");
  const Outcome good = run(folder() + " " + folder() + "/out");
  EXPECT_EQ(good.status, 0) << good.output;
  EXPECT_THAT(good.output, HasSubstr("sizes.csv: 2 rows read, 2 compiled in\n2 rows, 1 sources"));
  std::ifstream in(folder() + "/out/sizes.inc");
  std::ostringstream text;
  text << in.rdbuf();
  EXPECT_EQ(text.str(),
            "// Made by tools/handbook_tables.py from sizes.csv: 2 rows.\n"
            "{.name = \"#4\", .size = Length::of(0.112, unit::inch), .source = {\"The Book of Sizes\", \"\", "
            "Basis::kPublished}},\n"
            "{.name = \"a \\\"b\\\", c\", .size = Length::of(0.250, unit::inch), .source = {\"The Book of "
            "Sizes\", \"\", "
            "Basis::kFromMemory}},\n");
}

TEST_F(Tables, WhatCannotBePlacedIsRefused) {
  struct Case {
    std::string text;
    std::string says;
  };
  const std::string head(kHead);
  const std::vector<Case> cases{
      {"#! rows 2\n" + head + "a,1,book,published\n", "sizes.csv:1: 2 rows are promised and 1 are there"},
      {head + "a,1,book,published\n", "'#! rows N' is missing"},
      {"#! rows 1\n" + head + "a,1,book\n", "sizes.csv:3: 3 cells where there are 4 columns"},
      {"#! rows 1\n" + head + "a,1/4,book,published\n", "sizes.csv:3: '1/4' is not a number"},
      {"#! rows 1\n" + head + "a,,book,published\n", "sizes.csv:3: 'size' is empty"},
      {"#! rows 1\n" + head + ",1,book,published\n", "sizes.csv:3: 'name' is empty"},
      {"#! rows 1\n" + head + "a,1,page,published\n", "sizes.csv:3: 'page' is not in sources.csv"},
      {"#! rows 1\n" + head + "a,1,book,perhaps\n", "sizes.csv:3: 'perhaps' is not one of published"},
      {"#! rows 2\n#! unique name\n" + head + "a,1,book,published\na,2,book,published\n",
       "sizes.csv:5: a is already in line 4"},
      {"#! rows 2\n#! ascending size\n" + head + "a,2,book,published\nb,2,book,published\n",
       "sizes.csv:5: size 2 does not grow"},
      {"#! rows two\n" + head + "a,1,book,published\n", "sizes.csv:1: 'rows two' is not a directive"},
      {"#! rows 1\n#!\n" + head + "a,1,book,published\n", "sizes.csv:2: '' is not a directive"},
      {"#! rows 1\n#! ascending name\n" + head + "a,1,book,published\n", "sizes.csv:4: 'a' is not a number"},
      {"#! rows 1\n#! unique nick\n" + head + "a,1,book,published\n",
       "sizes.csv:2: there is no column 'nick'"},
      {"#! rows 1\n#! sorted name\n" + head + "a,1,book,published\n",
       "sizes.csv:2: 'sorted name' is not a directive"},
      {"#! rows 1\nname:text,size:Length ell,source:source,basis:basis\na,1,book,published\n",
       "sizes.csv:2: 'ell' is not a unit known here"},
      {"#! rows 1\nname,source:source,basis:basis\na,book,published\n",
       "sizes.csv:2: 'name' is not a column head"},
      {"#! rows 1\nkind:Kind,source:source,basis:basis\nB-c,book,published\n",
       "sizes.csv:3: 'B-c' is not a name in small"},
      {"#! rows 1\nn:int,source:source,basis:basis\n1.5,book,published\n",
       "sizes.csv:3: '1.5' is not an int"},
  };
  for (const Case& one : cases) {
    const Outcome refused = check(one.text);
    EXPECT_NE(refused.status, 0) << one.says;
    EXPECT_THAT(refused.output, HasSubstr(one.says));
  }
}

TEST_F(Tables, RangesMustJoin) {
  const std::string head = "over:Length? inch,up_to:Length? inch,source:source,basis:basis\n";
  EXPECT_EQ(
      check("#! rows 2\n#! intervals over up_to\n" + head + ",1,book,published\n1,,book,published\n").status,
      0);
  const Outcome gap =
      check("#! rows 2\n#! intervals over up_to\n" + head + ",1,book,published\n1.5,2,book,published\n");
  EXPECT_THAT(gap.output, HasSubstr("sizes.csv:5: the range starts at 1.5, the one before ends at 1.0"));
  EXPECT_EQ(check("#! rows 2\n#! disjoint over up_to\n" + head + ",1,book,published\n1.5,2,book,published\n")
                .status,
            0);
  EXPECT_NE(check("#! rows 2\n#! disjoint over up_to\n" + head + ",1,book,published\n0.5,2,book,published\n")
                .status,
            0);
  EXPECT_NE(check("#! rows 1\n#! intervals over up_to\n" + head + "2,1,book,published\n").status, 0);
}

TEST_F(Tables, AListedSourceMustBeUsed) {
  write("sources", "#! rows 2\nkey:text,text:text,address:text?\nbook,The Book of Sizes,\nleaf,A Leaflet,\n");
  const Outcome refused = check(std::string("#! rows 1\n") + kHead + "a,1,book,published\n");
  EXPECT_NE(refused.status, 0);
  EXPECT_THAT(refused.output, HasSubstr("no row uses leaf"));
}

TEST(TablesOfTheHandbook, AreInOrder) {
  const Outcome checked = run("--check " + std::string(SPAREWRIGHT_SOURCE_DIR) + "/core/handbook/data");
  EXPECT_EQ(checked.status, 0) << checked.output;
}

}  // namespace
}  // namespace sparewright::handbook
