// One row a check: a job text with a gap in it, and what stands in the gap just inside the limit and just outside, with the
// number worked by hand. check_pairs_test.cpp judges every row; a check without a row fails it.
#pragma once

#include <numbers>
#include <optional>
#include <ostream>
#include <string>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include "judged_job.hpp"

namespace sparewright::tests {

// Units of the margins below: figures are kept in mm and rad.
inline constexpr double kThou = 0.0254;
inline constexpr double kDegree = std::numbers::pi / 180.0;

// No verdict of the check on the subject is given at all.
inline constexpr std::optional<ledger::State> kSilent;

struct CheckPair {
  std::string check;    // as the verdict has it
  std::string subject;  // likewise
  std::string about;    // what tells the row from others of the same check; may be empty
  std::string job;      // the text; every '@' in it, and in the shop's, is the gap
  std::string inside;   // fills the gap
  std::string outside;
  // How far from the limit both are, in the unit of what is judged; 0: the check is yes or no by nature.
  double by = 0.0;
  std::optional<ledger::State> inside_is = ledger::State::kOk;
  std::optional<ledger::State> outside_is = ledger::State::kNo;
  // The margin of the verdict where it is not `by` inside and less than nothing by as much outside: one that counts
  // against another limit.
  std::optional<double> inside_margin = std::nullopt;
  std::optional<double> outside_margin = std::nullopt;
  std::string shop = plain_shop();
};

inline std::string filled(std::string text, const std::string& gap) {
  for (auto at = text.find('@'); at != std::string::npos; at = text.find('@', at + gap.size()))
    text.replace(at, 1, gap);
  return text;
}

// "screw_head_seats_on_a_plain_face"
inline std::string name_of(const CheckPair& pair) {
  std::string name;
  for (const char c : pair.about.empty() ? pair.check : pair.check + " " + pair.about) {
    const bool is_word = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
    if (is_word) {
      name += c;
    } else if (!name.empty() && name.back() != '_') {
      name += '_';
    }
  }
  return name;
}

inline void PrintTo(const CheckPair& pair, std::ostream* out) {
  *out << pair.check << " on " << pair.subject << ": " << pair.inside << " | " << pair.outside;
}

// All rows of all files of this program. A file adds its own by a constant:
//   const CheckPairs kHeads{{ {.check = ..., ...}, ... }};
inline std::vector<CheckPair>& all_check_pairs() {
  static std::vector<CheckPair> all;
  return all;
}
struct CheckPairs {
  explicit CheckPairs(std::vector<CheckPair> rows) {
    for (CheckPair& row : rows)
      all_check_pairs().push_back(std::move(row));
  }
};

// --- pieces of texts ----------------------------------------------------------------------------------------------

inline std::string feature_text(const std::string& name, const std::string& kind, const std::string& rest) {
  return fmt::format("[[feature]]\nname = \"{}\"\nkind = \"{}\"\n{}\n", name, kind, rest);
}
inline std::string hole_text(const std::string& name, const std::string& x, const std::string& y,
                             const std::string& rest) {
  return feature_text(name, "hole", fmt::format("at.x = \"{}\"\nat.y = \"{}\"\n{}", x, y, rest));
}
inline std::string tool_text(const std::string& name, const std::string& kind, const std::string& rest) {
  return fmt::format("[[tool]]\nname = \"{}\"\nkind = \"{}\"\n{}\n", name, kind, rest);
}
// One setup that makes one feature: tools as `"spot", "drill 1/2"`.
inline std::string made_with(const std::string& feature, const std::string& tools,
                             const std::string& parallels = "1-1/2 x 1/8") {
  return setup_with(fmt::format("[[setup.do]]\nmake = \"{}\"\nwith = [{}]\n", feature, tools), parallels);
}
inline std::string replaced(std::string text, const std::string& from, const std::string& to) {
  const auto at = text.find(from);
  if (at == std::string::npos) {
    ADD_FAILURE() << "'" << from << "' is not in the text";
    return text;
  }
  return text.replace(at, from.size(), to);
}
// A line more under [job].
inline std::string with_job_line(const std::string& text, const std::string& line) {
  return replaced(text, "title = \"Test job\"\n", "title = \"Test job\"\n" + line + "\n");
}
// A bar 4 long and 2 in diameter in place of the block; of a material with no mill limits, so that it is as large as it
// says.
inline std::string round_bar_with(const std::string& sections) {
  return replaced(replaced(job_with(sections, R"({ length = "4", diameter = "2" })"), "shape = \"block\"",
                           "shape = \"round bar\""),
                  "1018 cold drawn", "not known");
}

}  // namespace sparewright::tests
