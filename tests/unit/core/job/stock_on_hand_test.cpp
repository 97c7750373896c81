// The blank against the stock that the shop's text lists.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/route/list_sheet.hpp"
#include "judged_job.hpp"
#include "part_text.hpp"

namespace sparewright {
namespace {

using ledger::State;
using testing::HasSubstr;
using testing::IsEmpty;
using tests::judged;
using tests::plain_shop;

std::string piece(const std::string& name, const std::string& shape, const std::string& size,
                  const std::string& material = "1018 cold drawn") {
  return "[[stock]]\nname = \"" + name + "\"\nshape = \"" + shape + "\"\nmaterial = \"" + material +
         "\"\nsize = { " + size + " }\n";
}

State state_of(const std::string& job, const std::string& stock) {
  auto made = judged(job, plain_shop() + stock);
  return made.state("stock on hand", "blank");
}

std::string from_stock(const std::string& job, const std::string& stock) {
  auto made = judged(job, plain_shop() + stock);
  const auto sheet = made.ledger.value<route::ListSheet>("lay out/sheet");
  std::string says;
  if (sheet) {
    for (const std::string& one : sheet->sections.at(0).says)
      says += one + "\n";
  }
  return says;
}

// A flat bar 20 x 60, 100 long, in a shop in inches.
std::string flat() {
  return tests::blank("flat bar", "length = \"100\", width = \"60\", thickness = \"20\"");
}

TEST(StockOnHand, IsNotAskedWhereNoneIsListedOrThePieceIsMeasured) {
  auto none = judged(flat());
  auto measured =
      judged(flat() + "found = { length = \"101\" }\nfound_with = \"caliper\"\n",
             plain_shop() + piece("brass", "round bar", "length = \"9\", diameter = \"1\"", "C360"));
  for (auto* job : {&none, &measured}) {
    for (const ledger::Verdict& v : job->ledger.verdicts())
      EXPECT_NE(v.check, "stock on hand");
  }
}

TEST(StockOnHand, IsOfTheMaterialShapeAndSection) {
  const std::string right = "length = \"120 mm\", width = \"60 mm\", thickness = \"20 mm\"";
  EXPECT_EQ(state_of(flat(), piece("right", "flat bar", right)), State::kOk);
  EXPECT_EQ(state_of(flat(), piece("written otherwise", "flat bar", right, "CD 1018 steel")), State::kOk);
  EXPECT_EQ(state_of(flat(), piece("on edge", "flat bar",
                                   "length = \"120 mm\", width = \"20 mm\", thickness = \"60 mm\"")),
            State::kOk);
  EXPECT_EQ(state_of(flat(), piece("other metal", "flat bar", right, "6061-T6")), State::kNo);
  EXPECT_EQ(state_of(flat(), piece("a block", "block", right)), State::kNo);
  EXPECT_EQ(state_of(flat(), piece("thicker", "flat bar",
                                   "length = \"120 mm\", width = \"60 mm\", thickness = \"25 mm\"")),
            State::kNo);
}

// A plate is cut out of a larger one of its thickness, either way round; a block out of any that is larger all ways.
TEST(StockOnHand, APlateAndABlockAreCutOutOfLargerOnes) {
  const std::string plate = tests::plate();  // 100 x 60 x 20
  EXPECT_EQ(state_of(plate, piece("sheet", "plate",
                                  "length = \"70 mm\", width = \"500 mm\", thickness = \"20 mm\"")),
            State::kOk);
  EXPECT_EQ(state_of(plate, piece("strip", "plate",
                                  "length = \"59 mm\", width = \"500 mm\", thickness = \"20 mm\"")),
            State::kNo);
  const std::string block = tests::blank("block", "length = \"100\", width = \"60\", thickness = \"20\"");
  EXPECT_EQ(state_of(block,
                     piece("lump", "block", "length = \"65 mm\", width = \"25 mm\", thickness = \"101 mm\"")),
            State::kOk);
}

TEST(StockOnHand, TakesTheShortestThatIsLongEnough) {
  const std::string section = "\", width = \"60 mm\", thickness = \"20 mm\"";
  const std::string bars = piece("long", "flat bar", "length = \"900 mm" + section) +
                           piece("end", "flat bar", "length = \"130 mm" + section) +
                           piece("stub", "flat bar", "length = \"90 mm" + section);
  EXPECT_THAT(from_stock(flat(), bars), HasSubstr("From stock: end."));
  auto made = judged(flat(), plain_shop() + bars);
  EXPECT_THAT(made.verdict("stock on hand", "blank").reason, HasSubstr("end has 30.00 to spare"));
  EXPECT_THAT(from_stock(flat(), piece("stub", "flat bar", "length = \"90 mm" + section)),
              HasSubstr("From stock: stub, which is too short."));
}

TEST(StockOnHand, RefusesWhatIsNoPiece) {
  const auto troubles = [](const std::string& stock) {
    return tests::troubles_of(flat(), plain_shop() + stock);
  };
  EXPECT_THAT(troubles(piece("rod", "round bar", "length = \"9\"")), HasSubstr("'diameter'"));
  EXPECT_THAT(troubles(piece("rod", "round bar", "length = \"0\", diameter = \"1\"")),
              HasSubstr("more than zero"));
  const std::string rod = piece("rod", "round bar", "length = \"9\", diameter = \"1\"");
  EXPECT_THAT(troubles(rod + rod), HasSubstr("'rod' is there twice"));
  EXPECT_THAT(troubles(rod), IsEmpty());
}

}  // namespace
}  // namespace sparewright
