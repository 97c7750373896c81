#include "core/survey/network.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <optional>

#include "core/base/nearest.hpp"

namespace sparewright::survey {

using base::Code;
using base::fail;
using base::Result;

namespace {

auto not_known(const std::string& name, const Network& network) {
  std::vector<std::string> known;
  for (const Dimension& unknown : network.unknowns)
    known.push_back(unknown.name);
  return fail(Code::kNameUnknown, name, base::known_words(name, known), "dimension");
}

// Which unknown a name is. Sorted by their beginnings as numbers, since most names tell themselves apart there.
class Index {
 public:
  explicit Index(const std::vector<Dimension>& unknowns) {
    entries_.reserve(unknowns.size());
    for (std::size_t j = 0; j < unknowns.size(); ++j)
      entries_.push_back({beginning_of(unknowns[j].name), unknowns[j].name, j});
    std::stable_sort(entries_.begin(), entries_.end(), [](const Entry& a, const Entry& b) {
      return a.beginning != b.beginning ? a.beginning < b.beginning : a.name < b.name;
    });
  }

  // The first of that name.
  [[nodiscard]] std::optional<std::size_t> find(std::string_view name) const {
    const std::uint64_t beginning = beginning_of(name);
    auto at = std::lower_bound(entries_.begin(), entries_.end(), beginning,
                               [](const Entry& entry, std::uint64_t b) { return entry.beginning < b; });
    for (; at != entries_.end() && at->beginning == beginning; ++at) {
      if (at->name == name) return at->unknown;
    }
    return std::nullopt;
  }

 private:
  struct Entry {
    std::uint64_t beginning = 0;
    std::string_view name;
    std::size_t unknown = 0;
  };
  static std::uint64_t beginning_of(std::string_view name) {
    std::uint64_t number = 0;
    for (std::size_t i = 0; i < 8 && i < name.size(); ++i)
      number = number << 8U | static_cast<unsigned char>(name[i]);
    return number;
  }
  std::vector<Entry> entries_;
};

}  // namespace

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
  const Index index(network.unknowns);
  Equations equations(network);
  equations.unknowns_of_.reserve(network.readings.size());
  for (const Observation& reading : network.readings) {
    auto& unknowns = equations.unknowns_of_.emplace_back();
    unknowns.reserve(reading.equation.names().size());
    for (const std::string& name : reading.equation.names()) {
      const auto found = index.find(name);
      if (!found) return not_known(name, network);
      unknowns.push_back(*found);
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
  std::vector<double> own;
  std::vector<double> slopes;
  for (std::size_t i = 0; i < n; ++i) {
    own.clear();
    for (const std::size_t unknown : unknowns_of_[i])
      own.push_back(values[unknown]);
    slopes.resize(own.size());
    const auto fitted = network_->readings[i].equation.at(own, slopes);
    if (!fitted) return fail(fitted.error());
    all.fitted[i] = *fitted;
    double steepest = 0.0;
    for (const double slope : slopes)
      steepest = std::fmax(steepest, std::abs(slope));
    for (std::size_t k = 0; k < slopes.size(); ++k) {
      if (std::abs(slopes[k]) > kSlopeNoise * steepest) all.slopes.at(i, unknowns_of_[i][k]) = slopes[k];
    }
  }
  return all;
}

}  // namespace sparewright::survey
