// The finished sheets of 200 invented drawings, in the type they are printed in: no words overlap or lie on a line, nothing
// lies outside the paper, and every length and every note is on them.
#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "drawing_faults.hpp"
#include "printed.hpp"
#include "random_drawings.hpp"
#include "sheets/layout.hpp"

namespace sparewright::sheets {
namespace {

TEST(DrawingSheets, OfInventedDrawingsReadWell) {
  constexpr int kDrawings = 200;
  const auto press = Press::open();
  ASSERT_TRUE(press);
  std::size_t pages = 0;
  std::size_t texts = 0;
  std::size_t lines = 0;
  std::size_t notes = 0;
  for (int i = 0; i < kDrawings; ++i) {
    tests::SplitMix random(static_cast<std::uint64_t>(i) + 1);
    Packet packet{"Idler bracket", "B", {}, tests::random_drawing(random), "", {}};
    packet.first.sizes_in = "mm";
    const PaperOptions options{i % 2 == 0 ? Paper::kA4 : Paper::kLetter, base::Dialect::kAmerican};
    const auto all = laid_out(packet, options, **press);
    ASSERT_TRUE(all) << i << ": " << base::report(all.error());
    for (const Page& page : *all) {
      ++pages;
      EXPECT_THAT(tests::drawing_faults(page.list, {0.0, 0.0, page.width_mm, page.height_mm}),
                  testing::IsEmpty())
          << "drawing " << i;
      for (const drawing::Element& element : page.list)
        ++(std::holds_alternative<drawing::Text>(element) ? texts : lines);
    }
    const std::string said = tests::said(*all);
    for (const drawing::NoteMark& note : packet.drawing->marks.notes) {
      ++notes;
      for (const std::string& line : note.lines)
        EXPECT_THAT(said, testing::HasSubstr(tests::levelled(line))) << "drawing " << i;
    }
    for (const drawing::LengthMark& mark : packet.drawing->marks.lengths) {
      for (const std::string& line : mark.says)
        EXPECT_THAT(said, testing::HasSubstr(tests::levelled(line))) << "drawing " << i;
    }
  }
  fmt::print("{} drawings on {} pages: {} texts among {} lines, {} notes\n", kDrawings, pages, texts, lines,
             notes);
  EXPECT_GT(texts, 5000U);
  EXPECT_GT(notes, 500U);
}

}  // namespace
}  // namespace sparewright::sheets
