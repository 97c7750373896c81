// Readings, their covariance and their equations: what an adjustment starts from.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/hash.hpp"
#include "core/base/result.hpp"
#include "core/formula/expression.hpp"
#include "core/ledger/figure.hpp"
#include "core/survey/matrix.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::survey {

struct Observation {
  std::string name;
  double value = 0.0;                           // base unit of the equation's kind
  formula::Formula equation;                    // what it would read; its names are names of unknowns
  ledger::Bound bound = ledger::Bound::kExact;  // what it says of the original size; adjust() heeds none
  bool is_exact = false;                        // said to be so without a doubt; see kExactPart in known.hpp
};

struct Network {
  std::vector<Dimension> unknowns;
  std::vector<Observation> readings;
  Matrix covariance;  // of the readings, in their order; symmetric, positive semi-definite
};

// Equal where the networks are, bit for bit.
[[nodiscard]] base::Fingerprint fingerprint(const Network& network);

// The network of some of its readings, in the order given.
[[nodiscard]] Network part_of(const Network& network, std::span<const std::size_t> readings);

// The network with its names looked up, ready to be evaluated. It keeps a reference to the network.
class Equations {
 public:
  // Fails with kNameUnknown where an equation has a name that is no unknown.
  static base::Result<Equations> of(const Network& network);

  // What one reading should read at these values of the unknowns, and its slopes by its own unknowns
  // (in the order of unknowns_of). Fails with kDividesByZero or kOutsideDomain, span into the equation.
  [[nodiscard]] base::Result<formula::Formula::Value> at(std::size_t reading,
                                                         std::span<const double> values) const;

  // All readings at once: fitted values, and the slopes as n x m. A slope below kSlopeNoise of the steepest
  // of its reading is what rounding leaves of a zero, and is zero.
  struct All {
    std::vector<double> fitted;
    Matrix slopes;
  };
  [[nodiscard]] base::Result<All> at(std::span<const double> values) const;

  [[nodiscard]] std::span<const std::size_t> unknowns_of(std::size_t reading) const {
    return unknowns_of_[reading];
  }
  [[nodiscard]] const Network& network() const { return *network_; }

 private:
  explicit Equations(const Network& network) : network_(&network) {}
  const Network* network_;
  std::vector<std::vector<std::size_t>> unknowns_of_;
};

inline constexpr double kSlopeNoise = 1e-12;

}  // namespace sparewright::survey
