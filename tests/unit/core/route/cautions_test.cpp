#include "core/route/cautions.hpp"

#include <gtest/gtest.h>

namespace sparewright::route {
namespace {

using handbook::WorkGroup;

TEST(Cautions, NameTheMetalThatBurnsPoisonsOrDusts) {
  EXPECT_NE(material_cautions(WorkGroup::kMagnesium, "magnesium AZ31B").at(0).find("burn"),
            std::string::npos);
  EXPECT_NE(material_cautions(WorkGroup::kGreyIron, "grey iron class 30").at(0).find("dust"),
            std::string::npos);
  EXPECT_NE(material_cautions(WorkGroup::kPlastic, "PTFE").at(0).find("fumes"), std::string::npos);
  for (const char* leaded : {"steel 12L14", "brass C360", "bronze C932"})
    EXPECT_NE(material_cautions(WorkGroup::kBronze, leaded).at(0).find("lead"), std::string::npos) << leaded;
}

TEST(Cautions, SayNothingOfAMetalThatIsNoDanger) {
  EXPECT_TRUE(material_cautions(WorkGroup::kLowCarbonSteel, "steel 1018").empty());
  EXPECT_TRUE(material_cautions(WorkGroup::kPlastic, "acetal copolymer").empty());
}

}  // namespace
}  // namespace sparewright::route
