#include "core/survey/left_aside.hpp"

#include <algorithm>
#include <optional>
#include <utility>

namespace sparewright::survey {
namespace {

bool is_in_doubt(const Adjustment& report) {
  return report.at_odds && (report.at_odds->suspect || !report.agree());
}

Network without(const Network& network, const std::vector<std::size_t>& readings,
                std::vector<std::size_t>& kept) {
  for (std::size_t i = 0; i < network.readings.size(); ++i) {
    if (std::find(readings.begin(), readings.end(), i) == readings.end()) kept.push_back(i);
  }
  Network rest;
  rest.unknowns = network.unknowns;
  rest.covariance = Matrix(kept.size(), kept.size());
  for (std::size_t a = 0; a < kept.size(); ++a) {
    rest.readings.push_back(network.readings[kept[a]]);
    for (std::size_t b = 0; b < kept.size(); ++b)
      rest.covariance.at(a, b) = network.covariance.at(kept[a], kept[b]);
  }
  return rest;
}

std::optional<LeftAside> leave(const Network& network, std::vector<std::size_t> readings) {
  std::vector<std::size_t> kept;
  auto rest = measure_up(without(network, readings, kept));
  if (!rest) return std::nullopt;
  for (std::size_t& used : rest->used)
    used = kept[used];
  for (SetAside& aside : rest->set_aside)
    aside.reading = kept[aside.reading];
  return LeftAside{std::move(readings), std::move(*rest)};
}

// One after the other until the rest agrees.
std::optional<LeftAside> one_by_one(const Network& network, std::size_t first) {
  auto best = leave(network, {first});
  while (best && best->readings.size() < kMostLeftAside && is_in_doubt(best->rest.adjustment)) {
    const AtOdds& next = *best->rest.adjustment.at_odds;
    if (!next.alike.empty()) break;
    std::vector<std::size_t> readings = best->readings;
    readings.push_back(best->rest.used[next.reading]);
    auto more = leave(network, std::move(readings));
    if (!more) break;
    best = std::move(more);
  }
  return best;
}

}  // namespace

std::vector<LeftAside> left_aside(const Network& network, const MeasuredUp& measured) {
  std::vector<LeftAside> all;
  if (!is_in_doubt(measured.adjustment)) return all;
  const AtOdds& at_odds = *measured.adjustment.at_odds;
  if (at_odds.alike.empty()) {
    if (auto one = one_by_one(network, measured.used[at_odds.reading])) all.push_back(std::move(*one));
    return all;
  }
  std::vector<std::size_t> suspects{at_odds.reading};
  suspects.insert(suspects.end(), at_odds.alike.begin(), at_odds.alike.end());
  suspects.resize(std::min(suspects.size(), kMostLeftAside));
  for (const std::size_t suspect : suspects) {
    if (auto one = leave(network, {measured.used[suspect]})) all.push_back(std::move(*one));
  }
  return all;
}

}  // namespace sparewright::survey
