// Where something stands in a text.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace sparewright::base {

// A run of bytes in a text.
struct Span {
  std::size_t offset = 0;
  std::size_t length = 0;

  [[nodiscard]] std::size_t end() const { return offset + length; }
  friend bool operator==(const Span&, const Span&) = default;
};

// A place a person can find again: line and column count from 1, columns in characters (Unicode code points),
// as editors show them. line 0 means the whole file.
struct Place {
  std::string file;
  int line = 0;
  int column = 0;

  friend bool operator==(const Place&, const Place&) = default;
};

// "pad.job.toml:12:8", or the file alone where there is no line.
[[nodiscard]] std::string to_string(const Place& place);

// The place of a byte offset. An offset past the end is the end.
[[nodiscard]] Place place_of(std::string_view file, std::string_view text, std::size_t offset);

// The byte offset of a line and column (both from 1, columns in code points). Past the end of the line is its
// end.
[[nodiscard]] std::size_t offset_of(std::string_view text, int line, int column);

}  // namespace sparewright::base
