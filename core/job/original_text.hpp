// Reading the original sizes that were accepted. Used inside this room only.
#pragma once

#include "core/intent/intent.hpp"
#include "core/text/reading.hpp"

namespace sparewright::job {

// [original] of the job text, put to what was measured. A dimension that no reading is of, a size of nothing or less, an
// entry that says neither size nor mate, and mates of which it is not known which is the hole are told.
[[nodiscard]] intent::Originals read_originals(const text::TableReader& job, const survey::Survey& survey);

}  // namespace sparewright::job
