#include "core/base/place.hpp"

#include <algorithm>

#include <fmt/format.h>

namespace sparewright::base {
namespace {

bool starts_code_point(char c) {
  return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
}

}  // namespace

std::string to_string(const Place& place) {
  if (place.line == 0) return place.file;
  return fmt::format("{}:{}:{}", place.file, place.line, place.column);
}

Place place_of(std::string_view file, std::string_view text, std::size_t offset) {
  offset = std::min(offset, text.size());
  const std::string_view before = text.substr(0, offset);
  const auto line_start = before.rfind('\n');
  const std::string_view in_line =
      line_start == std::string_view::npos ? before : before.substr(line_start + 1);
  return Place{std::string(file), 1 + static_cast<int>(std::count(before.begin(), before.end(), '\n')),
               1 + static_cast<int>(std::count_if(in_line.begin(), in_line.end(), starts_code_point))};
}

std::size_t offset_of(std::string_view text, int line, int column) {
  std::size_t at = 0;
  for (int l = 1; l < line; ++l) {
    const auto next = text.find('\n', at);
    if (next == std::string_view::npos) return text.size();
    at = next + 1;
  }
  for (int c = 1; c < column && at < text.size() && text[at] != '\n'; ++c) {
    ++at;
    while (at < text.size() && !starts_code_point(text[at]))
      ++at;
  }
  return at;
}

}  // namespace sparewright::base
