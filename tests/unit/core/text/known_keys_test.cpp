#include "core/text/known_keys.hpp"

#include <string>
#include <vector>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "text_samples.hpp"

namespace sparewright::text {
namespace {

TEST(KnownKeys, ListsEveryKeyWithWhatItComesWith) {
  std::vector<std::string> lines;
  for (const KnownKey& key : known_keys(samples::job_shape())) {
    if (key.path.starts_with("job") || key.path.starts_with("reading")) continue;
    lines.push_back(fmt::format("{}{}|{}|{}", key.path, key.is_required ? "!" : "", key.only_with, key.says));
  }
  EXPECT_THAT(
      lines,
      testing::ElementsAre(
          "original||", "original.<dimension>||", "original.<dimension>.size!||as on the drawing",
          "original.<dimension>.fit||H7, g6, RC4", "blank||", "blank.shape||", "blank.size||",
          "blank.size.<side>||", "feature||in any order", "feature[].kind!||what it is",
          "feature[].name!||what other lines call it", "feature[].note||", "feature[].note[].says!||",
          "feature[].at!|kind \"hole\"|where its middle is", "feature[].at.x|kind \"hole\"|",
          "feature[].at.y|kind \"hole\"|", "feature[].diameter!|kind \"hole\"|",
          "feature[].diameter.size!|kind \"hole\"|as on the drawing",
          "feature[].diameter.fit|kind \"hole\"|H7, g6, RC4", "feature[].leaves!|kind \"flat\"|", "machine||",
          "machine.<machine>||", "machine.<machine>.collar||", "machine.<machine>.collar.<axis>||",
          "machine.<machine>.collar.<axis>.turn!||", "machine.<machine>.collar.<axis>.divisions!||"));
}

}  // namespace
}  // namespace sparewright::text
