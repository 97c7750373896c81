// Troubles in the making. Used inside this room only.
#pragma once

#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/survey/check.hpp"

namespace sparewright::survey {

[[nodiscard]] inline base::Failure failure_of(base::Code code, std::string_view found,
                                              std::string_view accepted, std::string_view subject) {
  base::Failure failure;
  failure.code = code;
  failure.found = found;
  failure.accepted = accepted;
  failure.subject = subject;
  return failure;
}

// Names with '/' in them, empty ones, and those that are there twice. what: what bears them, for messages.
template <typename Named>
void add_name_troubles(std::vector<Trouble>& troubles, const std::vector<Named>& list, Trouble::In in,
                       std::string_view what) {
  std::set<std::string_view> seen;
  for (std::size_t i = 0; i < list.size(); ++i) {
    const std::string& name = list[i].name;
    if (name.empty() || name.find('/') != std::string::npos) {
      troubles.push_back(
          {in, i, "name", failure_of(base::Code::kValueNotAccepted, name, "a name without '/'", "name")});
    } else if (!seen.insert(name).second) {
      troubles.push_back({in, i, "name", failure_of(base::Code::kNameTwice, name, "another name", what)});
    }
  }
}

}  // namespace sparewright::survey
