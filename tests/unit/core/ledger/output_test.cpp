// Figures written over those of the run before.
#include "core/ledger/output.hpp"

#include <initializer_list>

#include <gtest/gtest.h>

namespace sparewright::ledger {
namespace {

void write_all(WrittenFigures& figures, std::initializer_list<const char*> names) {
  for (const char* name : names)
    figures.write(name).formula = name;
}

TEST(WrittenFigures, OfTheSameRunAgainLieWhereTheyLay) {
  WrittenFigures figures;
  write_all(figures, {"op/a", "op/b"});
  const Figure* b = &figures.find("op/b")->figure();
  ASSERT_TRUE(figures.is_as_before());
  figures.begin_again();
  EXPECT_EQ(figures.find("op/b"), nullptr);  // not yet written
  EXPECT_EQ(figures.write_again(3, "b"), nullptr);
  EXPECT_NE(figures.write_again(3, "a"), nullptr);
  EXPECT_EQ(figures.write_again(3, "b"), b);
  EXPECT_EQ(b->formula, "");
  EXPECT_TRUE(figures.is_as_before());
}

TEST(WrittenFigures, PrintsAreOfWhatIsWrittenNow) {
  WrittenFigures figures;
  write_all(figures, {"op/a"});
  const auto before = figures.find("op/a")->print();
  figures.begin_again();
  figures.write("op/a").formula = "another";
  EXPECT_NE(figures.find("op/a")->print(), before);
}

// Else the room of what is given up would grow with each run.
TEST(WrittenFigures, OfAnotherOrderOrFewerAreNotWrittenOverAgain) {
  WrittenFigures figures;
  write_all(figures, {"op/a", "op/b"});
  figures.begin_again();
  write_all(figures, {"op/b", "op/a"});
  EXPECT_EQ(figures.all().size(), 2U);
  EXPECT_EQ(figures.find("op/a")->figure().formula, "op/a");
  EXPECT_FALSE(figures.is_as_before());

  WrittenFigures fewer;
  write_all(fewer, {"op/a", "op/b"});
  fewer.begin_again();
  write_all(fewer, {"op/a"});
  EXPECT_EQ(fewer.all().size(), 1U);
  EXPECT_EQ(fewer.find("op/b"), nullptr);
  EXPECT_FALSE(fewer.is_as_before());

  WrittenFigures more;
  write_all(more, {"op/a"});
  more.begin_again();
  write_all(more, {"op/a", "op/b"});
  EXPECT_TRUE(more.is_as_before());
}

}  // namespace
}  // namespace sparewright::ledger
