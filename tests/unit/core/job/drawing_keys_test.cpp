// What a job says of its drawing alone: surfaces asked for, and sizes in both systems.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "judged_job.hpp"
#include "part_text.hpp"

namespace sparewright {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using tests::plate;
using tests::troubles_of;

std::string with_surface(const std::string& roughness) {
  return plate() + tests::bore() + "surface = " + roughness + "\n";
}

std::string surface_of_the_bore(const std::string& text) {
  return tests::judged(text).job.subject.route.part.features.back().surface;
}

TEST(DrawingKeys, TheSurfaceIsKeptAsWritten) {
  EXPECT_EQ(surface_of_the_bore(with_surface("\"1.6 um\"")), "1.6 um");
  EXPECT_EQ(surface_of_the_bore(with_surface("\"63 uin\"")), "63 uin");
  EXPECT_THAT(surface_of_the_bore(plate() + tests::bore()), IsEmpty());
}

// A bare 1.6 is 1.6 of the job's unit, which no surface is.
TEST(DrawingKeys, ASurfaceThatCannotBeIsRefused) {
  for (const char* roughness : {"\"1.6\"", "1.6", "\"0\"", "\"51 um\"", "\"0.009 um\"", "\"-1.6 um\""}) {
    EXPECT_THAT(troubles_of(with_surface(roughness)),
                HasSubstr("a roughness Ra of 0.01 to 50 um, such as \"1.6 um\" or \"63 uin\""))
        << roughness;
  }
  EXPECT_THAT(troubles_of(with_surface("\"50 um\"")), IsEmpty());
  EXPECT_THAT(troubles_of(with_surface("\"0.01 um\"")), IsEmpty());
  EXPECT_THAT(troubles_of(with_surface("\"smooth\"")), HasSubstr("smooth"));
}

TEST(DrawingKeys, BothSystemsAreAskedFor) {
  std::string text = plate();
  EXPECT_FALSE(tests::judged(text).job.both_units);
  const std::string units = "units = \"mm\"\n";
  ASSERT_NE(text.find(units), std::string::npos);
  text.insert(text.find(units) + units.size(), "both_units = true\n");
  EXPECT_TRUE(tests::judged(text).job.both_units);
}

}  // namespace
}  // namespace sparewright
