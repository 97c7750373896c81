// Orders of work as nobody should write them: tools left out, swapped or taken from anywhere in the shop, features
// made in another setup or with another hole's tools. Whatever it is, sheets come out, with NOT KNOWN where they must.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include <fmt/format.h>
#include <fmt/ranges.h>
#include <gtest/gtest.h>

#include "core/job/job.hpp"
#include "core/route/route.hpp"
#include "core/text/document.hpp"
#include "splitmix.hpp"

namespace sparewright {
namespace {

namespace fs = std::filesystem;
using tests::SplitMix;

constexpr std::uint64_t kSeed = 830;
constexpr int kOrdersOfAJob = 40;

std::string contents(const fs::path& path) {
  std::ostringstream text;
  text << std::ifstream(path, std::ios::binary).rdbuf();
  return text.str();
}

struct Texts {
  std::string name;
  text::Document job;
  job::ShopText shop;
};

std::vector<Texts> all_texts() {
  std::vector<Texts> all;
  for (const char* folder : {"examples", "tests/jobs"}) {
    std::vector<fs::path> files;
    for (const auto& entry : fs::directory_iterator(fs::path(SPAREWRIGHT_SOURCE_DIR) / folder)) {
      if (entry.path().string().ends_with(".job.toml")) files.push_back(entry.path());
    }
    std::sort(files.begin(), files.end());
    for (const fs::path& file : files) {
      auto document = text::Document::parse(contents(file), file.filename().string());
      if (!document) continue;
      const auto name = job::shop_name_of(*document);
      if (!name) continue;
      const auto shop_document = text::Document::parse(contents(file.parent_path() / *name), *name);
      if (!shop_document) continue;
      auto shop = job::read_shop(*shop_document);
      if (!shop) continue;
      all.push_back({file.filename().string(), std::move(*document), std::move(*shop)});
    }
  }
  return all;
}

template <typename Thing>
const Thing& any_of(SplitMix& random, const std::vector<Thing>& things) {
  return things[random.below(things.size())];
}

// A tool stays once in a list, as the text wants it.
void muddle_tools(SplitMix& random, const std::vector<shop::Tool>& shop, std::vector<shop::Tool>& tools) {
  const shop::Tool& other = any_of(random, shop);
  const bool is_there = std::any_of(tools.begin(), tools.end(),
                                    [&](const shop::Tool& tool) { return tool.name == other.name; });
  switch (random.below(4)) {
    case 0:
      if (!tools.empty())
        tools.erase(tools.begin() + static_cast<std::ptrdiff_t>(random.below(tools.size())));
      break;
    case 1:
      if (tools.size() > 1) std::swap(tools[random.below(tools.size())], tools[random.below(tools.size())]);
      break;
    case 2:
      if (!is_there) tools.push_back(other);
      break;
    default:
      if (!is_there && !tools.empty()) tools[random.below(tools.size())] = other;
      break;
  }
}

// A feature keeps being made once, as the text wants it.
void muddle(SplitMix& random, const std::vector<shop::Tool>& shop, route::Plan& plan) {
  std::vector<route::Work*> works;
  for (route::Setup& setup : plan.setups) {
    for (route::Work& work : setup.works) {
      if (!work.joins) works.push_back(&work);
    }
  }
  if (works.empty()) return;
  const std::size_t changes = 1 + random.below(3);
  for (std::size_t i = 0; i < changes; ++i) {
    if (random.one_in(3))
      std::swap(any_of(random, works)->feature, any_of(random, works)->feature);
    else
      muddle_tools(random, shop, any_of(random, works)->tools);
  }
}

std::string told(const route::Plan& plan) {
  std::string words;
  for (const route::Setup& setup : plan.setups) {
    for (const route::Work& work : setup.works) {
      std::vector<std::string> tools;
      for (const shop::Tool& tool : work.tools)
        tools.push_back(tool.name);
      words += fmt::format("op {}: {} with {}\n", setup.op, work.feature, fmt::join(tools, ", "));
    }
  }
  return words;
}

TEST(OrderFuzz, AnyOrderOfWorkComesOutAsSheets) {
  std::size_t orders = 0;
  std::size_t sheets = 0;
  SplitMix random(kSeed);
  for (const Texts& texts : all_texts()) {
    const auto read = job::read_job(texts.job, texts.shop);
    ASSERT_TRUE(read) << texts.name;
    for (int i = 0; i < kOrdersOfAJob; ++i) {
      job::Job muddled = *read;
      muddle(random, texts.shop.shop.tools, muddled.subject.route.plan);
      SCOPED_TRACE(fmt::format("{}, seed {}\n{}", texts.name, kSeed, told(muddled.subject.route.plan)));
      auto stages = job::stages(muddled);
      ASSERT_TRUE(stages);
      ledger::Ledger ledger;
      ledger.declare(std::move(*stages));
      ++orders;
      for (const route::Setup& setup : muddled.subject.route.plan.setups)
        sheets += ledger.value<route::SetupSheet>(route::sheet_path(setup)) != nullptr ? 1U : 0U;
    }
  }
  fmt::print("seed {}: {} orders of work, {} sheets\n", kSeed, orders, sheets);
  EXPECT_GE(orders, 500U);
  EXPECT_GE(sheets, orders);
}

}  // namespace
}  // namespace sparewright
