// The one table of what is said to the user about a failure.
#pragma once

#include <string>
#include <string_view>

#include "core/base/result.hpp"

namespace sparewright::base {

// "key-unknown": the stable name printed in --json.
[[nodiscard]] std::string_view code_name(Code code);

// One sentence without the place: what was found.
[[nodiscard]] std::string sentence(const Failure& failure);

// Place, sentence, and on a second line what is accepted:
//   pad.job.toml:12:1: [[feature]] has no key 'diametr'
//       accepted: diameter
[[nodiscard]] std::string report(const Failure& failure);

}  // namespace sparewright::base
