// Networks of readings for tests: written by hand, or random with a fixed seed.
#pragma once

#include <cmath>
#include <cstdint>
#include <random>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/messages.hpp"
#include "core/survey/adjust.hpp"
#include "core/survey/network.hpp"

namespace sparewright::tests {

inline formula::Formula formula_of(std::string_view text, const std::vector<survey::Dimension>& unknowns,
                                   quantity::Kind kind = quantity::Kind::kLength) {
  const auto read = formula::Expression::read(text);
  if (!read) throw std::runtime_error(base::report(read.error()));
  const auto kind_of = [&](std::string_view name) -> std::optional<quantity::Kind> {
    for (const survey::Dimension& unknown : unknowns) {
      if (unknown.name == name) return unknown.kind;
    }
    return std::nullopt;
  };
  auto bound = read->bind(kind_of, kind, quantity::UnitSystem::kMetric);
  if (!bound) throw std::runtime_error(base::report(bound.error()));
  return std::move(*bound);
}

// A reading by its equation, value and own standard uncertainty.
struct Row {
  std::string equation;
  double value = 0.0;
  double u = 1.0;
};

// Readings named r0, r1, ...; independent.
inline survey::Network network_of(const std::vector<survey::Dimension>& unknowns,
                                  const std::vector<Row>& rows,
                                  quantity::Kind kind = quantity::Kind::kLength) {
  survey::Network network;
  network.unknowns = unknowns;
  network.covariance = survey::Matrix(rows.size(), rows.size());
  for (std::size_t i = 0; i < rows.size(); ++i) {
    network.readings.push_back(
        {"r" + std::to_string(i), rows[i].value, formula_of(rows[i].equation, unknowns, kind)});
    network.covariance.at(i, i) = rows[i].u * rows[i].u;
  }
  return network;
}

// A common cause of that standard uncertainty behind the readings named.
inline void share(survey::Network& network, const std::vector<std::size_t>& readings, double u) {
  for (const std::size_t a : readings) {
    for (const std::size_t b : readings)
      network.covariance.at(a, b) += u * u;
  }
}

inline std::vector<survey::Dimension> lengths(const std::vector<std::string>& names,
                                              quantity::Kind kind = quantity::Kind::kLength) {
  std::vector<survey::Dimension> out;
  for (const std::string& name : names)
    out.push_back({name, kind});
  return out;
}

inline survey::Adjustment adjusted(const survey::Network& network) {
  auto adjustment = survey::adjust(network);
  if (!adjustment) throw std::runtime_error(base::report(adjustment.error()));
  return std::move(*adjustment);
}

// --- random networks
// ----------------------------------------------------------------------------------------------

struct RandomNetwork {
  survey::Network network;
  std::vector<double> truth;           // of the unknowns
  std::vector<std::string> equations;  // of the readings, as typed
};

// Places on a line (the first at 0), read by differences, sums and sizes; some through a square root. Every
// unknown is fixed; readings share one or two causes, as those of one instrument do. Errors are drawn from
// the covariance, times `noise`. bent: with equations that are not linear.
inline RandomNetwork random_network(std::uint64_t seed, bool bent, double noise = 1.0) {
  std::mt19937_64 draw(seed);
  const auto uniform = [&](double low, double high) {
    return low + (high - low) * (static_cast<double>(draw() >> 11U) * 0x1p-53);
  };
  const auto index = [&](std::size_t below) { return static_cast<std::size_t>(draw() % below); };
  const auto normal = [&] {  // Box and Muller, so that no library's own way of drawing matters
    return std::sqrt(-2.0 * std::log(1.0 - uniform(0.0, 1.0))) *
           std::cos(6.283185307179586 * uniform(0.0, 1.0));
  };
  RandomNetwork out;
  const std::size_t unknowns = 2 + index(7);
  std::vector<std::string> names;
  for (std::size_t j = 0; j < unknowns; ++j) {
    names.push_back("x" + std::to_string(j));
    out.truth.push_back(uniform(5.0, 120.0));
  }
  const auto dimensions = lengths(names);
  const auto equation = [&](std::size_t a) -> std::string {
    const std::size_t b = (a + 1 + index(unknowns - 1)) % unknowns;
    switch (index(bent ? 6 : 4)) {
      case 0:
        return names[a];
      case 1:
        return names[a] + " + " + names[b] + "/2";
      case 2:
        return names[a] + " - " + names[b];
      case 3:
        return "2*" + names[a] + " + " + names[b] + " - 3 mm";
      case 4:
        return "sqrt(" + names[a] + "^2 + " + names[b] + "^2)";
      default:
        return "(" + names[a] + "^2 + 4*" + names[b] + "^2)/(8*" + names[b] + ")";  // chord and height
    }
  };
  std::vector<Row> rows;
  const auto add = [&](const std::string& text) {
    out.equations.push_back(text);
    rows.push_back({text, 0.0, uniform(0.003, 0.05)});
  };
  for (const std::string& name : names)
    add(name);
  const std::size_t more = 3 + index(3 * unknowns);
  for (std::size_t i = 0; i < more; ++i)
    add(equation(index(unknowns)));

  out.network = network_of(dimensions, rows);
  std::vector<double> errors;
  for (const Row& row : rows)
    errors.push_back(row.u * normal());
  for (std::size_t cause = 1 + index(2); cause > 0; --cause) {
    std::vector<std::size_t> sharing;
    for (std::size_t i = 0; i < rows.size(); ++i) {
      if (index(2) == 0) sharing.push_back(i);
    }
    const double u = uniform(0.005, 0.03);
    share(out.network, sharing, u);
    const double error = u * normal();
    for (const std::size_t i : sharing)
      errors[i] += error;
  }
  const auto equations = survey::Equations::of(out.network);
  const auto exact = equations->at(out.truth);
  for (std::size_t i = 0; i < rows.size(); ++i) {
    out.network.readings[i].value = exact->fitted[i] + noise * errors[i];
  }
  return out;
}

}  // namespace sparewright::tests
