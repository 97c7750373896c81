// Finding the row of a table of fasteners by the size of the screw.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/lookup.hpp"
#include "core/handbook/screw_size.hpp"

namespace sparewright::handbook {

// The first row whose `size` is that of the text and that `suits`; rows have a member `size` as
// ScrewSize::name writes it. Fails as read_screw_size does, or with kNotTabled, naming the sizes there are of
// those that suit.
template <class Row, std::size_t kRows, class Suits>
[[nodiscard]] base::Result<Row> row_of_size(const Row (&rows)[kRows], std::string_view size,
                                            std::string_view subject, Suits suits) {
  const auto wanted = read_screw_size(size);
  if (!wanted) return tl::unexpected(wanted.error());
  std::vector<std::string> known;
  for (const Row& row : rows) {
    if (!suits(row)) continue;
    if (row.size == wanted->name) return row;
    known.emplace_back(row.size);
  }
  return not_tabled_among(subject, wanted->name, known);
}

template <class Row, std::size_t kRows>
[[nodiscard]] base::Result<Row> row_of_size(const Row (&rows)[kRows], std::string_view size,
                                            std::string_view subject) {
  return row_of_size(rows, size, subject, [](const Row&) { return true; });
}

}  // namespace sparewright::handbook
