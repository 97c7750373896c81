// Numbers as bytes of a file, lowest byte first on every machine.
#pragma once

#include <bit>
#include <cstdint>
#include <string>

namespace sparewright::solid {

inline void put_u16(std::string& bytes, std::uint16_t number) {
  bytes += static_cast<char>(number & 0xFFU);
  bytes += static_cast<char>(number >> 8U);
}

inline void put_u32(std::string& bytes, std::uint32_t number) {
  for (int i = 0; i < 4; ++i, number >>= 8U)
    bytes += static_cast<char>(number & 0xFFU);
}

// IEEE 754 single precision.
inline void put_float(std::string& bytes, float number) {
  put_u32(bytes, std::bit_cast<std::uint32_t>(number));
}

}  // namespace sparewright::solid
