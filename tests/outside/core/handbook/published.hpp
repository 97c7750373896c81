// Published rows beside these tests (*.csv here): each file names its sources in its head.
//
// One published row is one test case, but at most twenty of one source and formula are counted; the others
// are checked together in one more test.
#pragma once

#include <cstddef>
#include <fstream>
#include <map>
#include <ostream>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include <gtest/gtest.h>

namespace sparewright::handbook::published {

struct Row {
  int line = 0;
  std::map<std::string, std::string> cells;

  const std::string& operator[](const std::string& column) const { return cells.at(column); }
  [[nodiscard]] double number(const std::string& column) const { return std::stod(cells.at(column)); }
  [[nodiscard]] bool has(const std::string& column) const { return !cells.at(column).empty(); }
};

inline std::ostream& operator<<(std::ostream& out, const Row& row) {
  out << "line " << row.line << ":";
  for (const auto& [name, cell] : row.cells) {
    if (!cell.empty()) out << " " << name << "=" << cell;
  }
  return out;
}

// Cells of a line; a cell in quotes may hold commas.
inline std::vector<std::string> cells_of(const std::string& line) {
  std::vector<std::string> out(1);
  bool quoted = false;
  for (const char c : line) {
    if (c == '"') {
      quoted = !quoted;
    } else if (c == ',' && !quoted) {
      out.emplace_back();
    } else {
      out.back() += c;
    }
  }
  return out;
}

inline std::vector<Row> rows(const std::string& file) {
  std::ifstream in(std::string(SPAREWRIGHT_SOURCE_DIR) + "/tests/outside/core/handbook/" + file);
  if (!in) throw std::runtime_error(file + " is missing");
  std::vector<std::string> columns;
  std::vector<Row> out;
  std::string line;
  for (int number = 1; std::getline(in, line); ++number) {
    if (line.starts_with("# ")) continue;
    const std::vector<std::string> cells = cells_of(line);
    if (columns.empty()) {
      columns = cells;
      continue;
    }
    if (cells.size() != columns.size()) throw std::runtime_error(file + ": line " + std::to_string(number));
    Row row{number, {}};
    for (std::size_t i = 0; i < cells.size(); ++i)
      row.cells[columns[i]] = cells[i];
    out.push_back(std::move(row));
  }
  return out;
}

inline std::vector<Row> rows_of(const std::string& file, std::string_view source) {
  std::vector<Row> out;
  for (const Row& row : rows(file)) {
    if (row["source"] == source) out.push_back(row);
  }
  return out;
}

// Twenty rows spread evenly over all, or all where there are no more.
inline constexpr std::size_t kMostCounted = 20;
inline bool is_counted(std::size_t index, std::size_t size) {
  return size <= kMostCounted || (index * kMostCounted) / size != ((index + 1) * kMostCounted) / size;
}

inline std::vector<Row> counted(const std::vector<Row>& all) {
  std::vector<Row> out;
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (is_counted(i, all.size())) out.push_back(all[i]);
  }
  return out;
}

inline std::vector<Row> others(const std::vector<Row>& all) {
  std::vector<Row> out;
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (!is_counted(i, all.size())) out.push_back(all[i]);
  }
  return out;
}

// How many decimals a number was printed with.
inline int places(const std::string& printed) {
  const std::size_t point = printed.find('.');
  return point == std::string::npos ? 0 : static_cast<int>(printed.size() - point - 1);
}

}  // namespace sparewright::handbook::published
