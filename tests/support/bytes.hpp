// Reads numbers out of a file's bytes, lowest byte first. Written for tests alone, so that a writer's slip is not shared.
#pragma once

#include <cstddef>
#include <cstdint>
#include <cstring>
#include <string_view>

#include <gtest/gtest.h>

namespace sparewright::tests {

class Bytes {
 public:
  explicit Bytes(std::string_view all) : all_(all) {}

  [[nodiscard]] std::size_t size() const { return all_.size(); }
  [[nodiscard]] std::uint32_t u8(std::size_t at) const {
    if (at < all_.size()) return static_cast<unsigned char>(all_[at]);
    ADD_FAILURE() << "the file ends before byte " << at;
    return 0;
  }
  [[nodiscard]] std::uint32_t u16(std::size_t at) const { return u8(at) + 256U * u8(at + 1); }
  [[nodiscard]] std::uint32_t u32(std::size_t at) const { return u16(at) + 65536U * u16(at + 2); }
  [[nodiscard]] float f32(std::size_t at) const {
    const std::uint32_t bits = u32(at);
    float value = 0.0F;
    std::memcpy(&value, &bits, sizeof value);
    return value;
  }
  [[nodiscard]] std::string_view text(std::size_t at, std::size_t length) const {
    return at <= all_.size() ? all_.substr(at, length) : std::string_view();
  }

 private:
  std::string_view all_;
};

}  // namespace sparewright::tests
