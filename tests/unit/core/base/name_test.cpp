#include "core/base/name.hpp"

#include <set>
#include <string>
#include <thread>
#include <unordered_set>
#include <vector>

#include <gtest/gtest.h>

namespace sparewright::base {
namespace {

TEST(Name, IsOneObjectForEqualTexts) {
  const std::string typed = "feature/pivot bore/diameter";
  const Name a(typed);
  const Name b = std::string("feature/") + "pivot bore/diameter";
  EXPECT_EQ(a, b);
  EXPECT_EQ(&a.text(), &b.text());
  EXPECT_EQ(a.text(), typed);
  EXPECT_NE(a, Name("feature/pivot bore"));
  EXPECT_EQ(Name(), Name(""));
  EXPECT_TRUE(Name().empty());
}

TEST(Name, IsOrderedByItsText) {
  const std::set<Name> names{"b", "a/c", "a", "", "a b", "B"};
  std::vector<std::string> order;
  for (const Name name : names)
    order.push_back(name.text());
  EXPECT_EQ(order, (std::vector<std::string>{"", "B", "a", "a b", "a/c", "b"}));
}

TEST(Name, KeepsBytesOfAnyKind) {
  const std::string zero("a\0b", 3);
  EXPECT_EQ(Name(zero).text(), zero);
  EXPECT_NE(Name(zero), Name("a"));
}

// More names than a thread has at hand, from several threads: each text stays one object.
TEST(Name, IsTheSameFromEveryThread) {
  constexpr int kNames = 5000;
  constexpr int kThreads = 4;
  std::vector<std::vector<const std::string*>> seen(kThreads);
  std::vector<std::thread> threads;
  for (int t = 0; t < kThreads; ++t) {
    threads.emplace_back([&seen, t] {
      for (int round = 0; round < 2; ++round) {
        for (int i = 0; i < kNames; ++i)
          seen[static_cast<std::size_t>(t)].push_back(&Name("from a thread/" + std::to_string(i)).text());
      }
    });
  }
  for (std::thread& thread : threads)
    thread.join();
  for (const auto& of_one : seen)
    EXPECT_EQ(of_one, seen.front());
  EXPECT_EQ(std::unordered_set<const std::string*>(seen.front().begin(), seen.front().end()).size(),
            std::size_t{kNames});
}

}  // namespace
}  // namespace sparewright::base
