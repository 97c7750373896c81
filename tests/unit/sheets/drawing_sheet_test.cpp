// What stands below the views of a drawing.
#include "sheets/drawing_sheet.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "fixed_ruler.hpp"

namespace sparewright::sheets {
namespace {

// The sheet says that bold fits or locates: so it has to be below the views as well.
TEST(NotesBelow, AreBoldWhereTheyFitOrLocate) {
  const tests::FixedRuler ruler;
  drawing::PartDrawing sheet;
  sheet.below.resize(2);
  sheet.below[0].lines = {"seat: turned", "diameter 19.987-20.000"};
  sheet.below[0].strong = true;
  sheet.below[1].lines = {"grip: knurl"};
  const std::vector<Block> lines = notes_below({ruler, kTypes.front()}, sheet, 180.0);
  ASSERT_EQ(lines.size(), 2U);
  const auto words = [&](std::size_t i) { return std::get<drawing::Text>(lines[i].list.front()); };
  EXPECT_EQ(words(0).says, "seat: turned; diameter 19.987-20.000");
  EXPECT_EQ(words(0).style.face, drawing::Face::kBold);
  EXPECT_EQ(words(1).style.face, drawing::Face::kRegular);
}

}  // namespace
}  // namespace sparewright::sheets
