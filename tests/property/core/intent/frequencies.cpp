#include "frequencies.hpp"

#include <cmath>

namespace sparewright::tests {

using intent::Role;

namespace {
long key_of(double nominal_mm) {
  return std::lround(nominal_mm * 1e4);
}
}  // namespace

Frequencies::Frequencies(std::uint64_t seed, int parts) {
  SplitMix random(seed);
  for (int i = 0; i < parts; ++i) {
    const GeneratedPart part = generate_part(random);
    for (const PartSize& size : part.sizes) {
      Counts& counts = counts_[{part.is_inch, size.measured.role}];
      ++counts.all;
      if (size.meant == Meant::kToSuit) {
        ++counts.none;
      } else {
        ++counts.of[key_of(size.nominal_mm)];
      }
    }
  }
}

double Frequencies::of(bool is_inch, Role role, double nominal_mm) const {
  const Counts& counts = counts_.at({is_inch, role});
  const auto found = counts.of.find(key_of(nominal_mm));
  return found == counts.of.end() ? 0.0 : static_cast<double>(found->second) / counts.all;
}

double Frequencies::none(bool is_inch, Role role) const {
  const Counts& counts = counts_.at({is_inch, role});
  return static_cast<double>(counts.none) / counts.all;
}

}  // namespace sparewright::tests
