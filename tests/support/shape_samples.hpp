// Sizes in millimetres and a plate of 100 x 60 x 20 mm, for tests of shapes and solids.
#pragma once

#include <vector>

#include <gtest/gtest.h>

#include "core/shape/cutters.hpp"

namespace sparewright::tests {

inline const shape::Vector kDown{0.0, 0.0, -1.0};

inline quantity::Diameter dia(double mm) {
  return quantity::Diameter::of(mm, quantity::unit::millimetre);
}
inline quantity::Length mm(double count) {
  return quantity::Length::of(count, quantity::unit::millimetre);
}

inline shape::Recipe plate(const std::vector<shape::Cutter>& cutters) {
  const auto made = shape::Recipe::make({"plate", shape::Box{{}, {100.0, 60.0, 20.0}}}, cutters);
  EXPECT_TRUE(made);
  return made.value();
}

}  // namespace sparewright::tests
