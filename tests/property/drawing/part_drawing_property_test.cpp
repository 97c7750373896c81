// Drawings of 200 random parts: no words overlap or lie on a line, nothing lies outside, and every length and note is there
// once, on one of the sheets.
#include <algorithm>
#include <map>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "drawing/part_drawing.hpp"
#include "drawing_faults.hpp"
#include "fixed_ruler.hpp"
#include "random_drawings.hpp"
#include "splitmix.hpp"

namespace sparewright::drawing {
namespace {

using tests::random_drawing;
using tests::SplitMix;

TEST(PartDrawing, OfRandomPartsReadsWell) {
  constexpr int kParts = 200;
  const DrawingRoom room{187.0, 220.0};
  const tests::FixedRuler ruler;
  int notes = 0;
  int below = 0;
  for (int i = 0; i < kParts; ++i) {
    SplitMix random(static_cast<std::uint64_t>(i) + 1);
    const PartContent content = random_drawing(random);
    std::map<std::string, int> printed;
    for (const PartDrawing& sheet : draw_part(content, room, ruler)) {
      ASSERT_FALSE(sheet.scale.empty()) << i;
      EXPECT_LE(sheet.height_mm, room.height_mm);
      EXPECT_THAT(tests::drawing_faults(sheet.list, {0.0, 0.0, room.width_mm, sheet.height_mm}),
                  testing::IsEmpty())
          << "part " << i << " at " << sheet.scale;
      for (const Element& element : sheet.list) {
        if (const auto* text = std::get_if<Text>(&element)) ++printed[text->says];
      }
      for (const NoteMark& note : sheet.below) {
        for (const std::string& line : note.lines)
          ++printed[line];
      }
      below += static_cast<int>(sheet.below.size());
    }
    notes += static_cast<int>(content.marks.notes.size());
    std::map<std::string, int> wanted;
    for (const LengthMark& mark : content.marks.lengths) {
      for (const std::string& line : mark.says)
        ++wanted[line];
    }
    for (const NoteMark& note : content.marks.notes) {
      for (const std::string& line : note.lines)
        ++wanted[line];
    }
    EXPECT_EQ(printed, wanted) << "part " << i;
  }
  fmt::print("{} parts, {} notes, {} of them listed below the views\n", kParts, notes, below);
  EXPECT_LT(below, notes / 5);
}

TEST(PartDrawing, OfEqualPartsIsEqual) {
  const tests::FixedRuler ruler;
  const auto drawn = [&] {
    SplitMix random(7);
    return draw_part(random_drawing(random), {187.0, 220.0}, ruler);
  };
  const auto one = drawn();
  const auto other = drawn();
  ASSERT_EQ(one.size(), other.size());
  for (std::size_t i = 0; i < one.size(); ++i)
    EXPECT_EQ(one[i].list, other[i].list);
}

}  // namespace
}  // namespace sparewright::drawing
