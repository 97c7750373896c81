#include "core/base/place.hpp"

#include <gtest/gtest.h>

namespace sparewright::base {
namespace {

constexpr std::string_view kText = "[job]\nlänge = \"3/8\"\n\nx";

TEST(PlaceOf, CountsLinesAndCharactersFromOne) {
  EXPECT_EQ(place_of("pad.job.toml", kText, 0), (Place{"pad.job.toml", 1, 1}));
  EXPECT_EQ(place_of("pad.job.toml", kText, 4), (Place{"pad.job.toml", 1, 5}));
  EXPECT_EQ(place_of("pad.job.toml", kText, 6), (Place{"pad.job.toml", 2, 1}));
}

TEST(PlaceOf, CountsAnUmlautOnce) {
  const auto quote = kText.find('"');
  EXPECT_EQ(place_of("f", kText, quote), (Place{"f", 2, 9}));
}

TEST(PlaceOf, TakesTheEndForAnOffsetPastIt) {
  EXPECT_EQ(place_of("f", kText, kText.size()), (Place{"f", 4, 2}));
  EXPECT_EQ(place_of("f", kText, 999), (Place{"f", 4, 2}));
  EXPECT_EQ(place_of("f", "", 0), (Place{"f", 1, 1}));
}

TEST(OffsetOf, FindsAPlaceAgain) {
  EXPECT_EQ(offset_of(kText, 1, 1), 0U);
  EXPECT_EQ(offset_of(kText, 2, 9), kText.find('"'));
  EXPECT_EQ(offset_of(kText, 4, 1), kText.size() - 1);
}

TEST(OffsetOf, TakesTheEndOfTheLineOrText) {
  EXPECT_EQ(offset_of(kText, 1, 99), 5U);
  EXPECT_EQ(offset_of(kText, 3, 5), kText.size() - 2);
  EXPECT_EQ(offset_of(kText, 99, 1), kText.size());
}

TEST(PlaceText, NamesFileLineAndColumn) {
  EXPECT_EQ(to_string(Place{"pad.job.toml", 12, 8}), "pad.job.toml:12:8");
  EXPECT_EQ(to_string(Place{"pad.job.toml", 0, 0}), "pad.job.toml");
}

TEST(SpanOfBytes, EndsAfterItsLength) {
  EXPECT_EQ((Span{3, 4}).end(), 7U);
}

}  // namespace
}  // namespace sparewright::base
