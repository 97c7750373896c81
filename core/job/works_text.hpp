// Reading what is done in a setup: what is made, joined or freed of burrs, with which tools. Used inside this room only.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/job/route_text.hpp"
#include "core/text/reading.hpp"

namespace sparewright::job {

// A name that is not among those known: adds a failure at the node.
void refuse(const text::TableReader& in, const text::Node& node, base::Code code, std::string_view subject,
            const std::vector<std::string>& known);

// A name that is there a second time.
void refuse_twice(const text::TableReader& in, const text::Node& node, std::string_view subject,
                  std::string_view accepted);

template <typename Thing>
std::vector<std::string> names_of(const std::vector<Thing>& things) {
  std::vector<std::string> names;
  for (const Thing& thing : things)
    names.push_back(thing.name);
  return names;
}

// What a line of the order of work makes: one feature, or all holes of a row.
[[nodiscard]] std::vector<std::string> features_made(const std::string& written, const Names& names);

[[nodiscard]] bool makes(const route::Setup& setup, const std::string& feature);

// Puts the steps under "do" into the setup.
void read_works(const text::TableReader& in, const shop::Shop& shop, const Names& names, route::Setup& setup);

}  // namespace sparewright::job
