// What the readers of inch threads share: a size, the threads per inch behind it, and the words around.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/handbook/inch_size.hpp"

namespace sparewright::handbook {

// "20", "4.5", "4-1/2" at the start of text; taken is 0 where there is none. Up to 4 a half may be written as
// a fraction behind a dash.
struct PerInch {
  double value = 0.0;
  std::size_t taken = 0;
};
[[nodiscard]] PerInch threads_per_inch_at(std::string_view text);

// "1/2-14 NPT", "G1/2 A", "1-5 ACME-2G-LH", "BSW 1/4": words in small letters, in their order, whether they
// stand before the size or after it. threads_per_inch is 0 where none is written. tpi and in are passed over.
struct InchThreadText {
  std::vector<std::string> words;
  InchSize size;
  double threads_per_inch = 0.0;

  // Takes a word out; false where it is not there.
  bool take(std::string_view word);
};
[[nodiscard]] std::optional<InchThreadText> read_inch_thread_text(std::string_view text);

// 0.5 for "0.5p", for words such as 0.2P and 0.4L; none where the word is not a number and that letter.
[[nodiscard]] std::optional<double> number_before(std::string_view word, char letter);

}  // namespace sparewright::handbook
