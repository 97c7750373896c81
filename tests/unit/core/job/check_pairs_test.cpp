// Every check bites: for each a job just inside its limit and one just outside, both worked by hand from the source. The
// rows are in check_pairs_*.cpp; docs/contributing.md says how to add one, tools/turn_checks_round.py proves that they hold
// the checks.
#include "check_pairs.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <sstream>

#include <gmock/gmock.h>

namespace sparewright {
namespace {

using tests::CheckPair;

// --- the rows -----------------------------------------------------------------------------------------------------

std::vector<ledger::Verdict> verdicts_of(tests::Judged& job, const CheckPair& pair) {
  std::vector<ledger::Verdict> found;
  for (const ledger::Verdict& v : job.ledger.verdicts()) {
    if (v.check == pair.check && v.subject == pair.subject) found.push_back(v);
  }
  return found;
}

std::string text_of(std::optional<ledger::State> state) {
  return state ? std::string(ledger::name_of(*state)) : "silent";
}

class CheckPairTest : public testing::TestWithParam<CheckPair> {
 protected:
  void expect_side(const CheckPair& pair, const std::string& gap, std::optional<ledger::State> wanted,
                   double margin) {
    auto job = tests::judged(tests::filled(pair.job, gap), tests::filled(pair.shop, gap));
    const auto said = verdicts_of(job, pair);
    ASSERT_LE(said.size(), 1U) << "said twice, with " << gap;
    const auto state = said.empty() ? std::nullopt : std::optional(said.front().state);
    ASSERT_EQ(text_of(state), text_of(wanted))
        << "with " << gap << (said.empty() ? "" : ": " + said.front().reason);
    if (said.empty()) return;
    EXPECT_FALSE(said.front().reason.empty());
    EXPECT_FALSE(said.front().source.empty());
    if (pair.by == 0.0 || said.front().margin.empty()) return;
    ++margins_;
    constexpr double kWorkedTo = 0.01;  // of the margin: what a number worked by hand leaves out
    EXPECT_NEAR(job.ledger.get(said.front().margin).value, margin, kWorkedTo * pair.by)
        << "with " << gap << ": " << said.front().reason;
  }

  int margins_ = 0;  // verdicts that come of a margin
};

TEST_P(CheckPairTest, JustInsideAndJustOutside) {
  const CheckPair& pair = GetParam();
  ASSERT_NE(text_of(pair.inside_is), text_of(pair.outside_is)) << "both sides are to say the same";
  {
    SCOPED_TRACE("just inside");
    expect_side(pair, pair.inside, pair.inside_is, pair.inside_margin.value_or(pair.by));
  }
  {
    SCOPED_TRACE("just outside");
    expect_side(pair, pair.outside, pair.outside_is, pair.outside_margin.value_or(-pair.by));
  }
  // For tools/turn_checks_round.py: whether the margin of Pen::judge is what decides.
  const bool by_margin = margins_ == 2 && !pair.inside_margin && !pair.outside_margin;
  RecordProperty("check", pair.check);
  RecordProperty("by", fmt::format("{:.12g}", pair.by));
  RecordProperty("judged", by_margin ? "yes" : "no");
}

INSTANTIATE_TEST_SUITE_P(Checks, CheckPairTest, testing::ValuesIn(tests::all_check_pairs()),
                         [](const auto& row) { return tests::name_of(row.param); });

// --- every check that the source has ------------------------------------------------------------------------------

struct Place {
  std::string check;  // "{}" stands for what is filled in
  std::string where;  // "core/judge/fit.cpp:78"
};

// From a place in the source to the comma or semicolon that ends the expression there.
std::string expression_at(const std::string& source, std::size_t from) {
  int depth = 0;
  bool in_text = false;
  for (std::size_t at = from; at < source.size(); ++at) {
    const char c = source[at];
    if (in_text) {
      if (c == '\\') ++at;
      in_text = c != '"';
      continue;
    }
    in_text = c == '"';
    if (c == '(' || c == '{' || c == '[') ++depth;
    if (c == ')' || c == '}' || c == ']') --depth;
    if (depth < 0 || (depth == 0 && (c == ',' || c == ';'))) return source.substr(from, at - from);
  }
  return source.substr(from);
}

std::vector<std::string> texts_in(const std::string& expression) {
  std::vector<std::string> texts;
  for (auto open = expression.find('"'); open != std::string::npos;) {
    const auto close = expression.find('"', open + 1);
    if (close == std::string::npos) break;
    texts.push_back(expression.substr(open + 1, close - open - 1));
    open = expression.find('"', close + 1);
  }
  return texts;
}

// Where `.check = ` names a check. One that is handed on (`j.check`) is named elsewhere.
void add_places(const std::string& source, const std::string& path, std::vector<Place>& places) {
  constexpr std::string_view kNamed = ".check = ";
  for (auto at = source.find(kNamed); at != std::string::npos; at = source.find(kNamed, at + 1)) {
    const auto line = 1 + std::count(source.begin(), source.begin() + static_cast<std::ptrdiff_t>(at), '\n');
    const std::string where = fmt::format("{}:{}", path, line);
    const std::string expression = expression_at(source, at + kNamed.size());
    const auto texts = texts_in(expression);
    for (const std::string& text : texts)
      places.push_back({text, where});
    EXPECT_TRUE(!texts.empty() || expression.find(".check") != std::string::npos)
        << where << ": the name of a check is written where it is judged, or handed on as '.check'; found "
        << expression;
  }
}

std::vector<Place> places_in_the_source() {
  const std::filesystem::path root(SPAREWRIGHT_SOURCE_DIR);
  std::vector<Place> places;
  std::set<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::recursive_directory_iterator(root / "core")) {
    if (entry.path().extension() == ".cpp") files.insert(entry.path());
  }
  for (const auto& file : files) {
    std::ostringstream source;
    source << std::ifstream(file, std::ios::binary).rdbuf();
    add_places(source.str(), std::filesystem::relative(file, root).string(), places);
  }
  return places;
}

bool is_of(const std::string& check, const std::string& named) {
  const auto gap = named.find("{}");
  if (gap == std::string::npos) return check == named;
  const std::string before = named.substr(0, gap);
  const std::string after = named.substr(gap + 2);
  return check.size() >= before.size() + after.size() && check.starts_with(before) && check.ends_with(after);
}

std::size_t rows_of(const std::string& named) {
  const auto& all = tests::all_check_pairs();
  return static_cast<std::size_t>(
      std::count_if(all.begin(), all.end(), [&](const CheckPair& pair) { return is_of(pair.check, named); }));
}

// How often the tests of this room name a check in quotes: one that has no row has a job on either side of its limit there.
std::size_t named_in_tests(const std::string& check) {
  const std::string opening = '"' + check.substr(0, check.find("{}"));
  const std::string whole = check.find("{}") == std::string::npos ? opening + '"' : opening;
  std::size_t count = 0;
  const std::filesystem::path tests(std::filesystem::path(SPAREWRIGHT_SOURCE_DIR) / "tests/unit/core/job");
  for (const auto& entry : std::filesystem::directory_iterator(tests)) {
    if (!entry.path().string().ends_with("_test.cpp")) continue;
    std::ostringstream source;
    source << std::ifstream(entry.path(), std::ios::binary).rdbuf();
    const std::string text = source.str();
    for (auto at = text.find(whole); at != std::string::npos; at = text.find(whole, at + 1))
      ++count;
  }
  return count;
}

// Where a check is judged in several places there are at least as many rows; or it has tests of its own.
TEST(CheckPairsOfTheSource, NoCheckIsWithoutAPair) {
  std::map<std::string, std::vector<std::string>> places;
  for (const Place& place : places_in_the_source())
    places[place.check].push_back(place.where);
  EXPECT_GE(places.size(), 40U);
  for (const auto& [check, where] : places)
    EXPECT_TRUE(rows_of(check) >= where.size() || named_in_tests(check) >= 2)
        << "'" << check << "' in " << testing::PrintToString(where);
}

TEST(CheckPairsOfTheSource, NoPairIsWithoutACheck) {
  const auto places = places_in_the_source();
  for (const CheckPair& pair : tests::all_check_pairs()) {
    EXPECT_TRUE(std::any_of(places.begin(), places.end(), [&](const Place& p) {
      return is_of(pair.check, p.check);
    })) << pair.check;
  }
}

// A number lies behind every other one. These fire or are silent.
TEST(CheckPairsOfTheSource, OnlyTheseAreYesOrNoByNature) {
  std::set<std::string> yes_or_no;
  for (const CheckPair& pair : tests::all_check_pairs()) {
    if (pair.by == 0.0) yes_or_no.insert(tests::name_of(pair));
  }
  EXPECT_THAT(
      yes_or_no,
      testing::UnorderedElementsAre(
          "a_centre_finds_its_hole_at_the_headstock", "a_centre_finds_its_hole_at_the_tail_between_centres",
          "a_centre_finds_its_hole_drilled_before_the_tail_comes_up", "a_tool_makes_it", "between_centres",
          "drill_starts_square_where_it_leans", "drill_starts_square_with_a_dimple_on_a_bar", "geometry",
          "goes_between_the_centres_only_with_something_at_the_tail", "how_it_is_cut",
          "instrument_touches_diameter", "it_is_gripped_on_what_is_there_a_mandrel_in_a_bore",
          "it_is_gripped_on_what_is_there_made_in_a_setup_before", "it_is_made_in_a_setup",
          "no_press_in_a_slit_boss", "ring_s_groove", "spindle_reaches_it", "stock_on_hand_of_that_section",
          "the_saw_reaches_it", "the_tap_has_the_thread",
          "the_tool_goes_into_the_groove_where_its_width_is_said",
          "what_pressing_does_where_the_boss_s_metal_is_known",
          "what_pressing_does_where_the_bush_s_metal_is_said"));
}

}  // namespace
}  // namespace sparewright
