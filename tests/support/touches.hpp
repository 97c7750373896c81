// Touches of tests: on circles, lines and planes, with errors of a fixed seed.
#pragma once

#include <cmath>
#include <cstdint>
#include <numbers>
#include <string>
#include <vector>

#include "core/survey/circle_fit.hpp"
#include "core/survey/reading.hpp"
#include "splitmix.hpp"
#include "surveys.hpp"

namespace sparewright::tests {

struct RandomArc {
  double x = 0.0;
  double y = 0.0;
  double radius = 0.0;
  std::vector<survey::Point2> touches;
};

// 4 to 11 touches over 60 to 360 degrees, each out by up to a thousandth of the radius.
inline RandomArc random_arc(std::uint64_t seed) {
  SplitMix random(seed);
  RandomArc arc;
  arc.x = random.between(-200.0, 200.0);
  arc.y = random.between(-200.0, 200.0);
  arc.radius = random.between(2.0, 100.0);
  const std::size_t n = 4 + random.below(8);
  const double start = random.between(0.0, 2.0 * std::numbers::pi);
  const double over = random.between(std::numbers::pi / 3.0, 2.0 * std::numbers::pi);
  for (std::size_t i = 0; i < n; ++i) {
    const double angle = start + over * static_cast<double>(i) / static_cast<double>(n);
    const double from = arc.radius * (1.0 + random.between(-0.001, 0.001));
    arc.touches.push_back({arc.x + from * std::cos(angle), arc.y + from * std::sin(angle)});
  }
  return arc;
}

// Touches of a face nearly square to the last axis: 2 coordinates a touch (a line) or 3 (a plane).
inline std::vector<std::vector<double>> random_face(std::uint64_t seed, std::size_t axes) {
  SplitMix random(seed);
  std::vector<double> rises;
  for (std::size_t k = 0; k + 1 < axes; ++k)
    rises.push_back(random.between(-0.5, 0.5));
  const double at = random.between(-100.0, 100.0);
  std::vector<std::vector<double>> touches;
  const std::size_t n = axes + 1 + random.below(8);
  for (std::size_t i = 0; i < n; ++i) {
    std::vector<double> touch;
    double along = at + random.between(-0.01, 0.01);
    for (const double rise : rises) {
      touch.push_back(random.between(-80.0, 80.0));
      along += rise * touch.back();
    }
    touch.push_back(along);
    touches.push_back(std::move(touch));
  }
  return touches;
}

// A circle touched at these places, in inches, with a readout and a tip of 0.2 in.
inline survey::Touched touched_circle(std::string name, const std::vector<std::vector<std::string>>& touches,
                                      survey::TipSide side = survey::TipSide::kInside) {
  survey::Touched out;
  out.name = std::move(name);
  out.instrument = "readout";
  out.tip = {"edge finder", typed("0.200", quantity::Kind::kDiameter), typed("0.0002"), {}};
  out.side = side;
  for (const auto& touch : touches) {
    auto& at = out.touches.emplace_back();
    for (const std::string& number : touch)
      at.push_back(typed(number));
  }
  return out;
}

// Touched at four places round a middle, the tip's middle 0.4 in from it.
inline survey::Touched round_four(std::string name, double x_in, double y_in) {
  const auto in = [](double inches) { return std::to_string(inches); };
  return touched_circle(std::move(name), {{in(x_in + 0.4), in(y_in)},
                                          {in(x_in), in(y_in + 0.4)},
                                          {in(x_in - 0.4), in(y_in)},
                                          {in(x_in), in(y_in - 0.4)}});
}

// A readout good to 0.0005 in that reads 0.0002 in, its zero not checked; nothing touched yet.
inline survey::Survey readout_survey() {
  survey::Survey survey;
  survey.instruments = {instrument("readout", "0.0005", "0.0002"), instrument("caliper", "0.001", "0.001")};
  return survey;
}

}  // namespace sparewright::tests
