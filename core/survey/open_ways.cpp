#include "core/survey/open_ways.hpp"

#include <algorithm>
#include <cmath>

namespace sparewright::survey {
namespace {

constexpr double kFeels = 1e-8;
constexpr double kMovesAlong = 1e-6;

double size_of(const std::vector<double>& way) {
  double size = 0.0;
  for (const double part : way)
    size = std::max(size, std::abs(part));
  return size;
}

}  // namespace

OpenWays::OpenWays(const Matrix& directions) {
  for (std::size_t k = 0; k < directions.columns; ++k) {
    auto& way = ways_.emplace_back();
    for (std::size_t j = 0; j < directions.rows; ++j)
      way.push_back(directions.at(j, k));
  }
}

bool OpenWays::close(std::span<const double> slopes) {
  std::vector<double> felt;
  double slope_size = 0.0;
  for (const double slope : slopes)
    slope_size = std::max(slope_size, std::abs(slope));
  for (const auto& way : ways_)
    felt.push_back(dot(slopes, way) / size_of(way));
  const auto most = std::max_element(felt.begin(), felt.end(),
                                     [](double a, double b) { return std::abs(a) < std::abs(b); });
  if (most == felt.end() || std::abs(*most) <= kFeels * slope_size) return false;
  const auto closed = static_cast<std::size_t>(most - felt.begin());
  const std::vector<double> through = ways_[closed];
  const double per_length = dot(slopes, through);
  for (auto& way : ways_) {
    const double part = dot(slopes, way) / per_length;
    for (std::size_t j = 0; j < way.size(); ++j)
      way[j] -= part * through[j];
  }
  ways_.erase(ways_.begin() + static_cast<std::ptrdiff_t>(closed));
  return true;
}

bool OpenWays::moves(std::size_t unknown) const {
  return std::any_of(ways_.begin(), ways_.end(), [&](const std::vector<double>& way) {
    return std::abs(way[unknown]) > kMovesAlong * size_of(way);
  });
}

}  // namespace sparewright::survey
