// Gathers the sizes of series near to a measured one. Used inside this room only.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/intent/series.hpp"

namespace sparewright::intent {

inline constexpr double kSame_mm = 1e-6;

// One size of a table.
struct Row {
  std::string name;
  std::string series;
  double size_mm = 0.0;
  Made made;  // empty: as such a size is usually made
  std::string source;
};

// The rows of one table by size, and how far apart its sizes lie at each; rows of one size share that.
class Table {
 public:
  explicit Table(std::vector<Row> rows);

  [[nodiscard]] const std::vector<Row>& rows() const { return rows_; }
  [[nodiscard]] double apart_mm(std::size_t row) const { return apart_mm_[row]; }
  // Whether a size lies past the ends by more than a fifth; so does every size of a table of one.
  [[nodiscard]] bool is_past(double size_mm) const;

 private:
  std::vector<Row> rows_;
  std::vector<double> apart_mm_;
};

// Sizes at equal steps; of several grids that of the widest step has a size.
struct Grid {
  double step_mm = 0.0;
  double apart_mm = 0.0;  // from one size that no wider grid has to the next, on average
  std::string_view series;
  Common common;
};

class Collector {
 public:
  explicit Collector(const MeasuredUp& measured);

  [[nodiscard]] const MeasuredUp& measured() const { return measured_; }
  [[nodiscard]] double size_mm() const { return measured_.size_mm; }

  void add_grids(std::span<const Grid> grids, std::string (*name)(double), const char* source);
  // Nothing where what was measured lies past the ends of the table.
  void add_table(const Table& table, Common common);

  // Commonness made to add up to 1 over the series that there are at this size.
  [[nodiscard]] Nominals take(Common none) &&;

 private:
  void count(Common common);

  MeasuredUp measured_;
  double low_mm_ = 0.0;
  double high_mm_ = 0.0;
  Common all_;
  Nominals found_;
};

[[nodiscard]] std::string fraction_name(double mm);
[[nodiscard]] std::string decimal_name(double mm);
[[nodiscard]] std::string metric_name(double mm);

void collect_grids(Collector& found);
void collect_tables(Collector& found);
void collect_threads(Collector& found);
void collect_pitches(Collector& found);
void collect_modules(Collector& found);

}  // namespace sparewright::intent
