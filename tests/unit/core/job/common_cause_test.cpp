// One micrometer behind both mates: its zero cancels in their clearance, and not in a size bought elsewhere.
// The numbers of the trade: shaft 0.7494, bore 0.7509, the micrometer shows 0.0004 at zero. The clearance is 0.0015 whether or
// not the zero was looked at; a reamer bought at 0.7510 because the bore read 0.7509 makes it 0.0020.
#include <cmath>

#include <gtest/gtest.h>

#include "judged_job.hpp"

namespace sparewright {
namespace {

using tests::judged;
using tests::plain_shop;

constexpr double kClearance = 0.0015;
constexpr double kWithTheReamer = 0.0020;

// zero: lines of the micrometer, as `zero = "0.0004"`.
std::string shop_with(const std::string& zero) {
  return plain_shop() +
         "[[instrument]]\nname = \"micrometer\"\nkind = \"outside micrometer\"\nreads = \"0.0001\"\n"
         "good_to = \"0.0001\"\n" +
         zero +
         "[[tool]]\nname = \"reamer 0.7510\"\nkind = \"reamer\"\ndiameter = \"3/4\"\nmeasured = \"0.7510\"\n";
}

// The bore with a telescoping gauge, the shaft over it: both read off the micrometer. A new hub is reamed for the shaft.
std::string hub_job() {
  return R"(
[job]
title = "Hub"
units = "in"
hand = "not handed"
[[reading]]
name = "bore"
what = "inside"
of = "bore"
jaws = "outside"
with = "micrometer"
got = ["0.7509"]
[[reading]]
name = "shaft"
what = "outside"
of = "shaft"
with = "micrometer"
got = ["0.7494"]
[original.bore]
mate = "shaft"
[blank]
shape = "block"
material = "1018 cold drawn"
size = { length = "4", width = "3", thickness = "1" }
[[feature]]
name = "new bore"
kind = "hole"
how = "reamed"
at.x = "2"
at.y = "1.5"
diameter = { size = "0.7510", tol = "+0.0005/-0.0005", mate = "shaft", clearance = "+0.0010 to +0.0018", duty = "fits", with = "fine" }
)" + tests::setup_with(R"(
[[setup.do]]
make = "new bore"
with = ["spot", "drill 1/2", "reamer 0.7510"]
)");
}

const std::string kZeroFound = "zero = \"0.0004\"\n";

TEST(CommonCause, TheClearanceOfTwoReadingsIsTheSameWhateverTheZero) {
  for (const std::string& zero : {kZeroFound, std::string("zero = \"0.0000\"\n"), std::string()}) {
    auto job = judged(hub_job(), shop_with(zero));
    EXPECT_NEAR(job.inches("fit of bore and shaft/clearance"), kClearance, 1e-12) << zero;
  }
}

TEST(CommonCause, TheSizesHaveTheZeroTakenOff) {
  auto job = judged(hub_job(), shop_with(kZeroFound));
  EXPECT_NEAR(job.inches("survey/shaft"), 0.7490, 1e-12);
  EXPECT_NEAR(job.inches("survey/bore"), 0.7505, 1e-12);
}

TEST(CommonCause, ABoughtReamerInsteadOfTheMeasuredBoreDoesNotShareIt) {
  auto job = judged(hub_job(), shop_with(kZeroFound));
  EXPECT_NEAR(job.inches("check/fit/new bore/clearance as made"), kWithTheReamer, 1e-12);
  EXPECT_EQ(job.state("fit as it can be measured", "new bore"), ledger::State::kNo);  // 0.0018 at most
  // A zero that nobody looked at would have let it pass.
  auto unseen = judged(hub_job(), shop_with("zero = \"0.0000\"\n"));
  EXPECT_NEAR(unseen.inches("check/fit/new bore/clearance as made"), 0.0016, 1e-12);
}

TEST(CommonCause, WhatIsLeftOfTheZeroIsInTheOneAndNotInTheOther) {
  // 0.0004 either way is left: rectangular, 0.000231.
  auto wide = judged(hub_job(), shop_with("zero_within = \"0.0004\"\n"));
  auto none = judged(hub_job(), shop_with("zero_within = \"0\"\n"));
  const auto u = [](tests::Judged& job, const char* figure) { return job.ledger.get(figure).u() / 25.4; };
  const char* pair = "fit of bore and shaft/clearance";
  const char* reamed = "check/fit/new bore/clearance as made";
  EXPECT_NEAR(u(wide, pair), u(none, pair), 1e-12);
  EXPECT_NEAR(std::sqrt(std::pow(u(wide, reamed), 2) - std::pow(u(none, reamed), 2)), 0.0004 / std::sqrt(3.0),
              1e-12);
}

}  // namespace
}  // namespace sparewright
