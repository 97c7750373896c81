#include "core/survey/hole_places.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>
#include <utility>

#include "core/survey/hole_pattern.hpp"

namespace sparewright::survey {
namespace {

constexpr double kTurn = 2.0 * std::numbers::pi;

// Whether no two holes are at one place.
bool all_apart(const std::vector<int>& place) {
  return std::set<int>(place.begin(), place.end()).size() == place.size();
}

double log_of_misfits(double squares, double spread, std::size_t n) {
  return -0.5 * squares / (spread * spread) -
         static_cast<double>(n) * (0.5 * std::log(kTurn) + std::log(spread));
}

// Holes at these angles, counted from the first; spread: of one angle.
std::optional<Places> circle_places(const std::vector<double>& angles, int count, double spread) {
  Places out;
  out.count = count;
  out.step = kTurn / count;
  double sum = 0.0;
  std::vector<double> rest;
  for (const double angle : angles) {
    const double from_first = angle - angles.front();
    const double steps = std::round(from_first / out.step);
    out.place.push_back((static_cast<int>(steps) % count + count) % count);
    rest.push_back(from_first - steps * out.step);
    sum += rest.back();
  }
  if (!all_apart(out.place)) return std::nullopt;
  const auto n = static_cast<double>(angles.size());
  out.start = angles.front() + sum / n;
  double squares = 0.0;
  for (const double one : rest)
    squares += (one - sum / n) * (one - sum / n);
  // The first hole is at any place of the count, the start anywhere in a step.
  double ways = 0.0;
  for (std::size_t i = 0; i < angles.size(); ++i)
    ways += std::log(static_cast<double>(count) - static_cast<double>(i));
  out.log_odds = std::log(how_often_met(HoleLayout::kCircle, count)) - ways +
                 log_of_misfits(squares, spread, angles.size()) + std::log(count / kTurn) +
                 0.5 * std::log(kTurn) + std::log(spread / std::sqrt(n));
  return out;
}

// Holes at these distances along a row, the first at 0; the widest apart are `steps` places.
std::optional<Places> row_places(const std::vector<double>& along, int steps, double spread) {
  const auto [least, most] = std::minmax_element(along.begin(), along.end());
  const auto n = static_cast<double>(along.size());
  double step = (*most - *least) / steps;
  Places out;
  out.count = steps + 1;
  for (const double at : along)
    out.place.push_back(static_cast<int>(std::round((at - *least) / step)));
  if (!all_apart(out.place)) return std::nullopt;
  double mean_place = 0.0;
  double mean_along = 0.0;
  for (std::size_t i = 0; i < along.size(); ++i) {
    mean_place += out.place[i] / n;
    mean_along += along[i] / n;
  }
  double products = 0.0;
  double squares = 0.0;
  for (std::size_t i = 0; i < along.size(); ++i) {
    products += (out.place[i] - mean_place) * (along[i] - mean_along);
    squares += (out.place[i] - mean_place) * (out.place[i] - mean_place);
  }
  step = products / squares;
  out.step = step;
  out.start = mean_along - step * mean_place;
  double misfit = 0.0;
  for (std::size_t i = 0; i < along.size(); ++i) {
    const double off = along[i] - out.start - step * out.place[i];
    misfit += off * off;
  }
  double ways = 0.0;
  for (std::size_t i = 0; i < along.size(); ++i)
    ways += std::log(out.count - static_cast<double>(i));
  const double length = *most - *least;
  out.log_odds = std::log(how_often_met(HoleLayout::kRow, out.count)) - ways +
                 log_of_misfits(misfit, spread, along.size()) - std::log(length) -
                 std::log(step * std::numbers::ln10) + std::log(kTurn) + std::log(spread / std::sqrt(n)) +
                 std::log(spread / std::sqrt(squares));
  return out;
}

// Holes at any angle, or anywhere along the row.
double log_of_none(HoleLayout layout, const std::vector<double>& along) {
  const double n = static_cast<double>(along.size());
  if (layout == HoleLayout::kCircle) return std::log(kNoPattern) - n * std::log(kTurn);
  const auto [least, most] = std::minmax_element(along.begin(), along.end());
  return std::log(kNoPattern) - n * std::log(*most - *least) - std::log(std::numbers::ln10);
}

}  // namespace

std::optional<ChosenPlaces> chosen_places(HoleLayout layout, const std::vector<double>& along,
                                          double spread) {
  std::vector<Places> all;
  for (int count = static_cast<int>(along.size()); count <= kMostPatternHoles; ++count) {
    auto places = layout == HoleLayout::kCircle ? circle_places(along, count, spread)
                                                : row_places(along, count - 1, spread);
    if (places) all.push_back(std::move(*places));
  }
  if (all.empty()) return std::nullopt;
  std::stable_sort(all.begin(), all.end(),
                   [](const Places& a, const Places& b) { return a.log_odds > b.log_odds; });
  const double none = log_of_none(layout, along);
  const double most = std::max(none, all.front().log_odds);
  double total = std::exp(none - most);
  for (const Places& one : all)
    total += std::exp(one.log_odds - most);
  ChosenPlaces out;
  out.odds = std::exp(all.front().log_odds - most) / total;
  out.no_pattern_odds = std::exp(none - most) / total;
  if (all.size() > 1) {
    out.next_count = all[1].count;
    out.next_odds = std::exp(all[1].log_odds - most) / total;
  }
  out.places = std::move(all.front());
  return out;
}

}  // namespace sparewright::survey
