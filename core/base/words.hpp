// British or American trade words, chosen by a setting. Product text writes the word in square brackets in
// its American form ("grip it in the [vise]"); what a user typed is never touched.
#pragma once

#include <string>
#include <string_view>

namespace sparewright::base {

enum class Dialect { kAmerican, kBritish };

// Replaces every bracketed trade word by the dialect's word. A bracketed word that is not in the table stays
// as it is, brackets and all. Written with a capital or in capitals it comes out so.
[[nodiscard]] std::string worded(std::string_view text, Dialect dialect);

}  // namespace sparewright::base
