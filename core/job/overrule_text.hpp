// Reading what the job overrules. Used inside this room only.
#pragma once

#include <map>
#include <string>

#include "core/text/reading.hpp"

namespace sparewright::job {

// [[overrule]] of the job text: a query by its name, and the reason. Empty ones and a query overruled twice are told.
[[nodiscard]] std::map<std::string, std::string> read_overruled(const text::TableReader& job);

}  // namespace sparewright::job
