// Readings of a plate with holes as they are taken in a shop, with their errors; seeded. For judging how misreadings are
// found.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <map>
#include <random>
#include <string>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include "core/survey/slips.hpp"
#include "networks.hpp"

namespace sparewright::tests {

// What readings are taken with: standard uncertainties in mm of each reading and of the zero all of them share, finest step
// in inches and in millimetres.
struct ShopInstrument {
  std::string name;
  std::string kind;
  double own_mm = 0.0;
  double zero_mm = 0.0;  // 0: it cancels
  int inch_places = 3;
  int metric_places = 2;
};

struct ShopSet {
  survey::Network network;           // with errors
  std::vector<double> truth;         // of the unknowns
  std::vector<double> exact;         // of the readings
  std::vector<survey::AsRead> read;  // how each was read; typed as it counts
  survey::Equations::All slopes;     // at the truth
};

// One set of a seed. A plate of a length and a height with two to four holes, half of them in a row; every size read once, and
// of the other ways to read it a share that is drawn for the set.
class ShopSets {
 public:
  explicit ShopSets(std::uint64_t seed) : draw_(seed) {}

  // rounded: to the steps of the instruments, as read; else the errors alone, as drawn.
  ShopSet next(bool rounded) {
    start();
    for (std::size_t hole = 0; hole < holes_; ++hole) {
      must({{1, fmt::format("d{}", hole)}, {3, fmt::format("d{}", hole)}});
      across("x", "length", hole);
      if (in_plane_) across("y", "height", hole);
    }
    must({{0, "length"}, {2, "length"}});
    if (in_plane_) must({{0, "height"}, {2, "height"}});
    for (std::size_t one = 0; one < holes_; ++one) {
      for (std::size_t other = one + 1; other < holes_; ++other)
        between(one, other);
    }
    return made(rounded);
  }

  double uniform(double low, double high) {
    return low + (high - low) * (static_cast<double>(draw_() >> 11U) * 0x1p-53);
  }
  double normal() {  // Box and Muller, so that no library's own way of drawing matters
    return std::sqrt(-2.0 * std::log(1.0 - uniform(0.0, 1.0))) *
           std::cos(6.283185307179586 * uniform(0.0, 1.0));
  }
  std::size_t index(std::size_t below) { return static_cast<std::size_t>(draw_() % below); }

 private:
  using Choice = std::pair<std::size_t, std::string>;  // instrument, equation

  void start() {
    in_plane_ = index(2) == 0;
    is_metric_ = index(2) == 0;
    holes_ = 2 + index(3);
    share_ = uniform(0.25, 0.9);
    names_.clear();
    truth_.clear();
    rows_.clear();
    with_.clear();
    unknown("length", 40.0 * static_cast<double>(holes_ + 1));
    if (in_plane_) unknown("height", 90.0);
    for (std::size_t hole = 0; hole < holes_; ++hole) {
      unknown(fmt::format("d{}", hole), uniform(6.0, 20.0));
      unknown(fmt::format("x{}", hole), 40.0 * static_cast<double>(hole + 1) + uniform(-8.0, 8.0));
      if (in_plane_) unknown(fmt::format("y{}", hole), uniform(25.0, 65.0));
    }
  }

  void unknown(std::string name, double size) {
    names_.push_back(std::move(name));
    truth_.push_back(size);
  }

  void take(const Choice& choice) {
    with_.push_back(choice.first);
    rows_.push_back({choice.second, 0.0, instruments()[choice.first].own_mm});
  }
  void must(const std::vector<Choice>& choices) {
    const std::size_t taken = index(choices.size());
    take(choices[taken]);
    for (std::size_t i = 0; i < choices.size(); ++i)
      may(choices[i], i == taken ? 0.3 : 1.0);
  }
  void may(const Choice& choice, double times) {
    if (uniform(0.0, 1.0) < share_ * times) take(choice);
  }

  // A hole's place from both edges.
  void across(const std::string& place, const std::string& whole, std::size_t hole) {
    const std::string x = fmt::format("{}{}", place, hole);
    const std::string half = fmt::format("d{}/2", hole);
    must({{2, x + " - " + half}, {0, x + " - " + half}, {4, x + " + " + half}, {5, x}});
    may({2, fmt::format("{} - {} - {}", whole, x, half)}, 1.0);
    may({0, fmt::format("{} - {} - {}", whole, x, half)}, 0.5);
    if (hole > 0) may({5, fmt::format("{} - {}{}", x, place, hole - 1)}, 1.0);
  }

  void between(std::size_t one, std::size_t other) {
    const std::string centres = in_plane_ ? fmt::format("sqrt((x{1} - x{0})^2 + (y{1} - y{0})^2)", one, other)
                                          : fmt::format("x{1} - x{0}", one, other);
    const std::string halves = fmt::format("(d{} + d{})/2", one, other);
    may({2, centres + " - " + halves}, 1.0);
    may({0, centres + " - " + halves}, 0.5);
    may({3, centres + " + " + halves}, 1.0);
  }

  ShopSet made(bool rounded) {
    ShopSet set;
    set.network = network_of(lengths(names_), rows_);
    set.truth = truth_;
    std::vector<double> errors;
    std::map<std::size_t, std::vector<std::size_t>> by_instrument;
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      const double rounding = rounded ? step_of(i) / std::sqrt(12.0) : 0.0;  // is a part of u
      errors.push_back(std::sqrt(rows_[i].u * rows_[i].u - rounding * rounding) * normal());
      by_instrument[with_[i]].push_back(i);
    }
    for (const auto& [instrument, readings] : by_instrument) {
      const double u = instruments()[instrument].zero_mm;
      share(set.network, readings, u);
      const double error = u * normal();
      for (const std::size_t i : readings)
        errors[i] += error;
    }
    const auto equations = survey::Equations::of(set.network);
    set.slopes = *equations->at(truth_);
    set.exact = set.slopes.fitted;
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      set.read.push_back(as_read(i, set.exact[i] + errors[i]));
      const double as_typed = std::strtod(set.read[i].typed.c_str(), nullptr) * (is_metric_ ? 1.0 : 25.4);
      set.network.readings[i].value = rounded ? as_typed : set.exact[i] + errors[i];
      set.read[i].reading = set.network.readings[i].value;
    }
    return set;
  }

  [[nodiscard]] double step_of(std::size_t i) const {
    const ShopInstrument& instrument = instruments()[with_[i]];
    return is_metric_ ? std::pow(10.0, -instrument.metric_places)
                      : 25.4 * std::pow(10.0, -instrument.inch_places);
  }

  [[nodiscard]] survey::AsRead as_read(std::size_t i, double value) const {
    const ShopInstrument& instrument = instruments()[with_[i]];
    survey::AsRead read;
    read.name = "r" + std::to_string(i);
    read.is_metric = is_metric_;
    read.instrument_kind = instrument.kind;
    read.typed = is_metric_ ? fmt::format("{:.{}f}", value, instrument.metric_places)
                            : fmt::format("{:.{}f}", value / 25.4, instrument.inch_places);
    if (instrument.zero_mm > 0.0) read.zero = instrument.name;
    if (instrument.kind.find("collar") != std::string::npos) read.turn = is_metric_ ? 2.5 : 0.2 * 25.4;
    return read;
  }

  // Uncertainties as of DIN 862 and DIN 863 instruments in fair order; a guess of the trade.
  static const std::vector<ShopInstrument>& instruments() {
    static const std::vector<ShopInstrument> kAll{
        {"micrometer", "outside micrometer", 0.003, 0.0015, 4, 3},
        {"bore micrometer", "inside micrometer", 0.005, 0.003, 4, 3},
        {"caliper, outside jaws", "dial caliper", 0.015, 0.007, 3, 2},
        {"caliper, inside jaws", "dial caliper", 0.020, 0.010, 3, 2},
        {"depth micrometer", "depth micrometer", 0.006, 0.003, 4, 3},
        {"table", "collar of the mill", 0.020, 0.0, 3, 2},
    };
    return kAll;
  }

  std::mt19937_64 draw_;
  bool in_plane_ = false;
  bool is_metric_ = false;
  std::size_t holes_ = 0;
  double share_ = 0.0;
  std::vector<std::string> names_;
  std::vector<double> truth_;
  std::vector<Row> rows_;
  std::vector<std::size_t> with_;
};

// How many to do: a number in the environment, else the one given.
inline int count_from(const char* name, int usual) {
  const char* set = std::getenv(name);
  return set == nullptr ? usual : std::atoi(set);
}

}  // namespace sparewright::tests
