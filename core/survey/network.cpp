#include "core/survey/network.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/base/nearest.hpp"

namespace sparewright::survey {

using base::Code;
using base::fail;
using base::Result;

base::Fingerprint fingerprint(const Network& network) {
  base::Hasher h;
  h.add(static_cast<std::uint64_t>(network.unknowns.size()));
  for (const Dimension& unknown : network.unknowns)
    h.add(unknown.name).add(static_cast<int>(unknown.kind));
  for (const Observation& reading : network.readings) {
    h.add(reading.name).add(reading.value).add(reading.equation.fingerprint());
    h.add(static_cast<int>(reading.bound));
  }
  for (const double cell : network.covariance.cells)
    h.add(cell);
  return h.done();
}

Network part_of(const Network& network, std::span<const std::size_t> readings) {
  Network part;
  part.unknowns = network.unknowns;
  part.covariance = Matrix(readings.size(), readings.size());
  for (std::size_t a = 0; a < readings.size(); ++a) {
    part.readings.push_back(network.readings[readings[a]]);
    for (std::size_t b = 0; b < readings.size(); ++b)
      part.covariance.at(a, b) = network.covariance.at(readings[a], readings[b]);
  }
  return part;
}

Result<Equations> Equations::of(const Network& network) {
  std::map<std::string_view, std::size_t> index;
  std::vector<std::string> known;
  for (const Dimension& unknown : network.unknowns) {
    index.emplace(unknown.name, known.size());
    known.push_back(unknown.name);
  }
  Equations equations(network);
  for (const Observation& reading : network.readings) {
    auto& unknowns = equations.unknowns_of_.emplace_back();
    for (const std::string& name : reading.equation.names()) {
      const auto found = index.find(name);
      if (found == index.end())
        return fail(Code::kNameUnknown, name, base::known_words(name, known), "dimension");
      unknowns.push_back(found->second);
    }
  }
  return equations;
}

Result<formula::Formula::Value> Equations::at(std::size_t reading, std::span<const double> values) const {
  std::vector<double> own;
  for (const std::size_t unknown : unknowns_of_[reading])
    own.push_back(values[unknown]);
  return network_->readings[reading].equation.at(own);
}

Result<Equations::All> Equations::at(std::span<const double> values) const {
  const std::size_t n = network_->readings.size();
  All all{std::vector<double>(n), Matrix(n, network_->unknowns.size())};
  for (std::size_t i = 0; i < n; ++i) {
    const auto one = at(i, values);
    if (!one) return fail(one.error());
    all.fitted[i] = one->value;
    double steepest = 0.0;
    for (const double slope : one->slopes)
      steepest = std::fmax(steepest, std::abs(slope));
    for (std::size_t k = 0; k < one->slopes.size(); ++k) {
      const double slope = one->slopes[k];
      if (std::abs(slope) > kSlopeNoise * steepest) all.slopes.at(i, unknowns_of_[i][k]) = slope;
    }
  }
  return all;
}

}  // namespace sparewright::survey
