// Job texts of one plain blank and one feature, in mm, and the metal that is left of it.
#pragma once

#include <string>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/part/part.hpp"
#include "core/shape/volume.hpp"
#include "judged_job.hpp"

namespace sparewright::tests {

inline std::string blank(const std::string& shape, const std::string& size) {
  return fmt::format(
      "[job]\ntitle = \"Test\"\nunits = \"mm\"\n[blank]\nshape = \"{}\"\nmaterial = \"1018 cold drawn\"\n"
      "size = {{ {} }}\n",
      shape, size);
}
inline std::string plate() {
  return blank("plate", "length = \"100\", width = \"60\", thickness = \"20\"");
}
inline std::string bar() {
  return blank("round bar", "length = \"100\", diameter = \"40\"");
}
inline std::string form(const std::string& kind, const std::string& rest) {
  return fmt::format("[[feature]]\nname = \"it\"\nkind = \"{}\"\n{}\n", kind, rest);
}
inline std::string bore() {  // 20 through the plate, its middle 30 from the left end and 30 from the front
  return "[[feature]]\nname = \"bore\"\nkind = \"hole\"\nhow = \"bored\"\nat.x = \"30\"\nat.y = "
         "\"30\"\ndiameter = \"20\"\n";
}

// The metal of the part by rays, and what it should be, in mm3.
inline void expect_volume(const std::string& text, double wanted) {
  auto job = judged(text);
  const auto recipe = job.ledger.value<shape::Recipe>(part::kRecipe);
  ASSERT_TRUE(recipe) << text;
  const shape::RayVolume left = shape::metal_volume(recipe->work(), shape::Effort::kCareful);
  EXPECT_NEAR(left.volume_mm3, wanted, left.error_mm3) << text;
  EXPECT_LT(left.error_mm3, 2e-3 * wanted) << text;
}

// The exact volume of a feature's only cutter.
inline double cutter_mm3(const std::string& text) {
  auto job = judged(text);
  const auto recipe = job.ledger.value<shape::Recipe>(part::kRecipe);
  if (!recipe) {
    ADD_FAILURE() << text;
    return 0.0;
  }
  double sum = 0.0;
  for (const shape::Cut& cut : recipe->cuts())
    if (cut.feature == "it") sum += shape::volume_mm3(cut.nominal);
  return sum;
}

}  // namespace sparewright::tests
