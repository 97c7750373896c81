#include "core/job/overrule_text.hpp"

#include <utility>

namespace sparewright::job {

using base::Code;
using text::TableReader;

std::map<std::string, std::string> read_overruled(const TableReader& job) {
  std::map<std::string, std::string> overruled;
  for (const TableReader& in : job.tables("overrule")) {
    const auto query = in.text("query");
    const auto because = in.text("because");
    if (!query || !because) continue;  // told when the text was checked
    for (const auto& [key, words] : {std::pair{"query", *query}, std::pair{"because", *because}}) {
      if (words.find_first_not_of(" \t") == std::string::npos)
        in.problems().add(text::failure_at(*in.node().find(key), Code::kValueNotAccepted, words,
                                           "a query's name and the reason, in words"));
    }
    if (overruled.emplace(*query, *because).second) continue;
    auto failure =
        text::failure_at(*in.node().find("query"), Code::kNameTwice, *query, "one reason for each");
    failure.subject = "overruled query";
    in.problems().add(std::move(failure));
  }
  return overruled;
}

}  // namespace sparewright::job
