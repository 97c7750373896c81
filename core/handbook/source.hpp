// Where a number comes from, in words a machinist can look up.
#pragma once

#include <string>
#include <string_view>

namespace sparewright::handbook {

// How a value is known.
enum class Basis {
  kPublished,       // printed in the source named
  kDerived,         // worked out from what the source prints
  kFromMemory,      // held from memory; no page that could be read showed it
  kCommonPractice,  // what the trade does; no source of its own
};

// The texts are compiled in and live as long as the program.
struct Source {
  std::string_view text;     // "ASME B18.3 socket head cap screws, dimension table"
  std::string_view address;  // of the page that was read; empty where it has none of its own
  Basis basis = Basis::kPublished;

  friend bool operator==(const Source&, const Source&) = default;
};

// The text, and behind it "(from memory)", "(common practice)" or "(derived)" where it is not published as it
// stands.
[[nodiscard]] std::string cite(const Source& source);

}  // namespace sparewright::handbook
