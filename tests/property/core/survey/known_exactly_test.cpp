// What is known exactly, against the same network without the unknown it takes away.
#include <algorithm>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/survey/adjust.hpp"
#include "core/survey/known.hpp"
#include "core/survey/left_aside.hpp"
#include "networks.hpp"

namespace sparewright::survey {
namespace {

constexpr int kNetworks = 60;
constexpr std::uint64_t kFirstSeed = 88100;

// "x1 + x11" with x1 replaced: names are whole, x10 is another.
std::string with_name(const std::string& text, const std::string& from, const std::string& to) {
  std::string out;
  for (std::size_t at = 0; at < text.size();) {
    std::size_t end = at;
    while (end < text.size() && std::isalnum(static_cast<unsigned char>(text[end])) != 0)
      ++end;
    if (end == at) {
      out += text[at++];
      continue;
    }
    const std::string word = text.substr(at, end - at);
    out += word == from ? to : word;
    at = end;
  }
  return out;
}

double finest_of(const Network& network) {
  double finest = network.covariance.at(0, 0);
  for (std::size_t i = 0; i < network.readings.size(); ++i)
    finest = std::min(finest, network.covariance.at(i, i));
  return std::sqrt(finest);
}

// x1 = x0, as an observation known to kExactPart of the finest reading: it shifts sizes by the square of that, against the
// misfit of the readings, which here are some of their doubts out (x0 and x1 are made the same).
TEST(KnownExactly, IsAsTakingOneUnknownAway) {
  int tried = 0;
  for (int number = 0; number < kNetworks; ++number) {
    SCOPED_TRACE(fmt::format("seed {}", kFirstSeed + static_cast<std::uint64_t>(number)));
    const bool bent = number % 2 == 1;
    auto random = tests::random_network(kFirstSeed + static_cast<std::uint64_t>(number), bent);
    Network with = random.network;
    const auto& unknowns = with.unknowns;
    // Readings as they would be with x1 at the size of x0.
    auto truth = random.truth;
    const auto was = Equations::of(with)->at(truth);
    truth[1] = truth[0];
    const auto is = Equations::of(with)->at(truth);
    for (std::size_t i = 0; i < with.readings.size(); ++i)
      with.readings[i].value += is->fitted[i] - was->fitted[i];

    Network without = with;
    without.unknowns.erase(without.unknowns.begin() + 1);
    for (std::size_t i = 0; i < without.readings.size(); ++i) {
      without.readings[i].equation =
          tests::formula_of(with_name(random.equations[i], "x1", "x0"), without.unknowns);
    }
    const std::size_t n = with.readings.size();
    Matrix covariance(n + 1, n + 1);
    for (std::size_t a = 0; a < n; ++a) {
      for (std::size_t b = 0; b < n; ++b)
        covariance.at(a, b) = with.covariance.at(a, b);
    }
    const double u = kExactPart * finest_of(with);
    covariance.at(n, n) = u * u;
    with.readings.push_back({"known", 0.0, tests::formula_of("x0 - x1", unknowns)});
    with.covariance = covariance;

    const auto known = tests::adjusted(with);
    const auto taken = tests::adjusted(without);
    for (const Found& found : taken.unknowns) {
      const auto same = std::find_if(known.unknowns.begin(), known.unknowns.end(),
                                     [&](const Found& one) { return one.name == found.name; });
      EXPECT_NEAR(same->value, found.value, 1e-4 * found.u) << found.name;
      EXPECT_NEAR(same->u / found.u, 1.0, 1e-4) << found.name;
    }
    EXPECT_NEAR(known.chi_square, taken.chi_square, 1e-4 * (1.0 + taken.chi_square));
    EXPECT_EQ(known.degrees_of_freedom, taken.degrees_of_freedom);
    ++tried;
  }
  EXPECT_EQ(tried, kNetworks);
}

// Leaving one reading aside is, in a linear network, taking its error by the others off it.
TEST(LeftAsideProperty, IsTheReadingLessItsError) {
  int left = 0;
  for (int number = 0; number < kNetworks; ++number) {
    SCOPED_TRACE(fmt::format("seed {}", kFirstSeed + static_cast<std::uint64_t>(number)));
    auto random = tests::random_network(kFirstSeed + static_cast<std::uint64_t>(number), false);
    random.network.readings[static_cast<std::size_t>(number) % random.network.readings.size()].value += 2.0;
    const auto measured = measure_up(random.network);
    ASSERT_TRUE(measured.has_value());
    for (const LeftAside& one : left_aside(random.network, *measured)) {
      if (one.readings.size() != 1) continue;
      const std::size_t reading = one.readings[0];  // all are used, so they count alike
      const Adjustment& report = measured->adjustment;
      for (std::size_t j = 0; j < report.unknowns.size(); ++j) {
        if (!one.rest.adjustment.unknowns[j].fixed) continue;
        EXPECT_NEAR(one.rest.adjustment.unknowns[j].value,
                    report.unknowns[j].value - report.slopes.at(j, reading) * *report.readings[reading].error,
                    1e-6 * report.unknowns[j].u);
      }
      ++left;
    }
  }
  EXPECT_GT(left, kNetworks / 2);
}

}  // namespace
}  // namespace sparewright::survey
