// A fingerprint of values: equal bytes give an equal fingerprint on every machine and in every run.
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

namespace sparewright::base {

// 128 bits, so that two different answers meet by chance less than once in 10^20 jobs of 10^6 figures.
struct Fingerprint {
  std::uint64_t high = 0;
  std::uint64_t low = 0;

  // NOLINTNEXTLINE(modernize-use-nullptr): a false alarm of clang-tidy 14 on <=>
  friend auto operator<=>(const Fingerprint&, const Fingerprint&) = default;
};

[[nodiscard]] std::string to_hex(const Fingerprint& fingerprint);

// -0 becomes +0 and every NaN the same NaN, so that equal numbers are equal bit for bit.
[[nodiscard]] double canonical(double value);

// Takes values one by one; order matters. A text is taken with its length, so ("ab","c") differs from
// ("a","bc").
//
//   Fingerprint f = Hasher().add("bore").add(22.225).done();
//
// Source, from memory: the mixing steps are those of MurmurHash3 x64 128 (A. Appleby, public domain), fed word by word.
class Hasher {
 public:
  Hasher& add(std::uint64_t word);
  Hasher& add(std::int64_t number) { return add(static_cast<std::uint64_t>(number)); }
  Hasher& add(int number) { return add(static_cast<std::int64_t>(number)); }
  Hasher& add(bool flag) { return add(std::uint64_t{flag ? 1U : 0U}); }
  Hasher& add(double value);
  Hasher& add(std::string_view text);
  Hasher& add(const char* text) { return add(std::string_view(text)); }
  Hasher& add(const std::string& text) { return add(std::string_view(text)); }
  Hasher& add(const Fingerprint& fingerprint) { return add(fingerprint.high).add(fingerprint.low); }

  [[nodiscard]] Fingerprint done() const;

 private:
  std::uint64_t high_ = 0x243F6A8885A308D3U;  // the first hexadecimal digits of pi
  std::uint64_t low_ = 0x13198A2E03707344U;
  std::uint64_t words_ = 0;
};

}  // namespace sparewright::base
