#include "core/base/hash.hpp"

#include <bit>
#include <cmath>
#include <cstring>
#include <limits>

#include <fmt/format.h>

namespace sparewright::base {
namespace {

std::uint64_t final_mix(std::uint64_t k) {
  k ^= k >> 33U;
  k *= 0xFF51AFD7ED558CCDU;
  k ^= k >> 33U;
  k *= 0xC4CEB9FE1A85EC53U;
  k ^= k >> 33U;
  return k;
}

}  // namespace

double canonical(double value) {
  if (std::isnan(value)) return std::numeric_limits<double>::quiet_NaN();
  return value == 0.0 ? 0.0 : value;
}

std::string to_hex(const Fingerprint& fingerprint) {
  return fmt::format("{:016x}{:016x}", fingerprint.high, fingerprint.low);
}

Hasher& Hasher::add(std::uint64_t word) {
  constexpr std::uint64_t kFirst = 0x87C37B91114253D5U;
  constexpr std::uint64_t kSecond = 0x4CF5AD432745937FU;
  high_ ^= std::rotl(word * kFirst, 31) * kSecond;
  high_ = (std::rotl(high_, 27) + low_) * 5U + 0x52DCE729U;
  low_ ^= std::rotl(word * kSecond, 33) * kFirst;
  low_ = (std::rotl(low_, 31) + high_) * 5U + 0x38495AB5U;
  ++words_;
  return *this;
}

Hasher& Hasher::add(double value) {
  return add(std::bit_cast<std::uint64_t>(canonical(value)));
}

Hasher& Hasher::add(std::string_view text) {
  add(static_cast<std::uint64_t>(text.size()));
  constexpr std::size_t kWord = sizeof(std::uint64_t);
  if constexpr (std::endian::native == std::endian::little) {
    for (; text.size() >= kWord; text.remove_prefix(kWord)) {
      std::uint64_t word = 0;
      std::memcpy(&word, text.data(), kWord);
      add(word);
    }
  }
  while (!text.empty()) {
    const std::string_view piece = text.substr(0, kWord);
    std::uint64_t word = 0;  // least significant byte first, on every machine
    for (std::size_t i = 0; i < piece.size(); ++i) {
      word |= std::uint64_t{static_cast<unsigned char>(piece[i])} << (8 * i);
    }
    add(word);
    text.remove_prefix(piece.size());
  }
  return *this;
}

Fingerprint Hasher::done() const {
  std::uint64_t h1 = high_ ^ words_;
  std::uint64_t h2 = low_ ^ words_;
  h1 += h2;
  h2 += h1;
  h1 = final_mix(h1);
  h2 = final_mix(h2);
  h1 += h2;
  h2 += h1;
  return Fingerprint{h1, h2};
}

}  // namespace sparewright::base
