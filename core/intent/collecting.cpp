#include "core/intent/collecting.hpp"

#include <algorithm>
#include <cmath>

namespace sparewright::intent {
namespace {

constexpr double kMostWear_mm = 1.75;  // seven times the mean of the larger wear in made.hpp: once in 2000
constexpr double kErrors = 4.0;

}  // namespace

Table::Table(std::vector<Row> rows) : rows_(std::move(rows)) {
  std::stable_sort(rows_.begin(), rows_.end(),
                   [](const Row& a, const Row& b) { return a.size_mm < b.size_mm; });
  const auto same = [](const Row& a, const Row& b) { return std::abs(a.size_mm - b.size_mm) < kSame_mm; };
  apart_mm_.resize(rows_.size(), 0.0);
  for (std::size_t first = 0; first < rows_.size();) {
    std::size_t past = first + 1;
    while (past < rows_.size() && same(rows_[first], rows_[past]))
      ++past;
    const double below = first == 0 ? rows_[first].size_mm : rows_[first - 1].size_mm;
    const double above = past == rows_.size() ? rows_[first].size_mm : rows_[past].size_mm;
    const double sides = (first == 0 ? 0.0 : 1.0) + (past == rows_.size() ? 0.0 : 1.0);
    for (std::size_t i = first; i < past; ++i)
      apart_mm_[i] = sides == 0.0 ? 0.0 : (above - below) / sides / static_cast<double>(past - first);
    first = past;
  }
}

bool Table::is_past(double size_mm) const {
  constexpr double kPastTheEnd = 1.2;
  return rows_.size() < 2 || size_mm > rows_.back().size_mm * kPastTheEnd ||
         size_mm < rows_.front().size_mm / kPastTheEnd;
}

Collector::Collector(const MeasuredUp& measured) : measured_(measured) {
  using ledger::Bound;
  if (measured.bound == Bound::kNeither) return;  // low and high 0: nothing
  constexpr double kShare = 0.02;
  constexpr double kAtLeast_mm = 0.15;
  const double open = std::max(grade_mm(13, measured.size_mm), kShare * measured.size_mm + kAtLeast_mm) +
                      kErrors * standard_uncertainty_mm(measured);
  low_mm_ = measured.size_mm - open - (measured.bound == Bound::kAtMost ? kMostWear_mm : 0.0);
  high_mm_ = measured.size_mm + open + (measured.bound == Bound::kAtLeast ? kMostWear_mm : 0.0);
  low_mm_ = std::max(low_mm_, kSame_mm);
}

void Collector::count(Common common) {
  all_.inch += common.inch;
  all_.metric += common.metric;
}

void Collector::add_grids(std::span<const Grid> grids, std::string (*name)(double), const char* source) {
  for (const Grid& grid : grids)
    count(grid.common);
  if (high_mm_ <= 0.0) return;
  for (std::size_t i = 0; i < grids.size(); ++i) {
    const Grid& grid = grids[i];
    for (double n = std::max(1.0, std::ceil(low_mm_ / grid.step_mm)); n * grid.step_mm <= high_mm_; ++n) {
      const double size = n * grid.step_mm;
      const bool is_wider =
          std::any_of(grids.begin(), grids.begin() + static_cast<long>(i), [&](const Grid& g) {
            return std::abs(size - std::round(size / g.step_mm) * g.step_mm) < kSame_mm;
          });
      if (is_wider) continue;
      found_.all.push_back({name(size),
                            std::string(grid.series),
                            size,
                            {grid.common.inch * grid.apart_mm, grid.common.metric * grid.apart_mm},
                            usually_made(size, measured_),
                            source});
    }
  }
}

void Collector::add_table(const Table& table, Common common) {
  if (table.is_past(size_mm())) return;
  count(common);
  const std::vector<Row>& rows = table.rows();
  const auto first = std::lower_bound(rows.begin(), rows.end(), low_mm_,
                                      [](const Row& row, double low) { return row.size_mm < low; });
  for (auto row = first; row != rows.end() && row->size_mm <= high_mm_; ++row) {
    const double apart = table.apart_mm(static_cast<std::size_t>(row - rows.begin()));
    found_.all.push_back({row->name,
                          row->series,
                          row->size_mm,
                          {common.inch * apart, common.metric * apart},
                          row->made.empty() ? usually_made(row->size_mm, measured_) : row->made,
                          row->source});
  }
}

Nominals Collector::take(Common none) && {
  count(none);
  for (Nominal& one : found_.all) {
    one.common.inch /= all_.inch;
    one.common.metric /= all_.metric;
  }
  found_.none = {none.inch / all_.inch, none.metric / all_.metric};
  return std::move(found_);
}

}  // namespace sparewright::intent
