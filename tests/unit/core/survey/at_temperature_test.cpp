// Readings away from 20 degC: what is corrected, and which doubts are one and the same.
#include "core/survey/at_temperature.hpp"

#include <cmath>

#include <gtest/gtest.h>

#include "core/survey/corrected.hpp"
#include "surveys.hpp"

namespace sparewright::survey {
namespace {

using quantity::Kind;
using tests::instrument;
using tests::reading;
using tests::typed;

const double kRoot3 = std::sqrt(3.0);

Warmth warmth(std::string_view at, std::string_view within) {
  return {typed(at, Kind::kTemperature), typed(within, Kind::kTemperatureDifference)};
}
const Expansion kSteel{"steel", 11.5e-6, 1e-6, "a test"};
const Expansion kAluminium{"aluminium", 23.0e-6, 1e-6, "a test"};

Instrument mic_at(std::string_view at, std::string_view within) {
  Instrument mic = instrument("mic", "0.004 mm", "0.001 mm");
  mic.zero_found = typed("0.000 mm");
  mic.at = warmth(at, within);
  mic.expands = kSteel;
  return mic;
}
Reading of(std::string name, std::string_view size, const Expansion& work) {
  Reading out = reading(std::move(name), Way::kOutside, {"d"}, "mic", {size});
  out.work = work;
  return out;
}
double u_of_difference(const Corrected& a, const Corrected& b, std::string_view group) {
  ledger::Shares of_group;
  for (const auto& [from, sign] : {std::pair{&a, 1.0}, std::pair{&b, -1.0}}) {
    ledger::Shares some;
    for (const ledger::Share& share : from->shares) {
      if (share.cause.text().starts_with(group)) some.push_back(share);
    }
    ledger::add_scaled(of_group, some, sign);
  }
  return ledger::standard_uncertainty(of_group);
}

TEST(AtTemperature, NothingSaidNothingCorrected) {
  Instrument mic = instrument("mic", "0.004 mm", "0.001 mm");
  EXPECT_EQ(corrected(of("pin", "100 mm", kAluminium), mic).value, 100.0);  // no temperature
  mic.at = warmth("30 degC", "1 degC");
  const Reading bare = reading("pin", Way::kOutside, {"d"}, "mic", {"100 mm"});
  EXPECT_EQ(corrected(bare, mic).value, 100.0);  // no material
}

TEST(AtTemperature, LikeMetalsInOneShopAreAsTheyAre) {
  const Corrected as_it_counts = corrected(of("pin", "100 mm", kSteel), mic_at("30 degC", "1 degC"));
  EXPECT_NEAR(as_it_counts.value, 100.0, 1e-12);
  // What is not known of the temperature is behind both, and cancels.
  EXPECT_LT(u_of_difference(as_it_counts, Corrected{}, "temperature/"), 1e-9);
}

TEST(AtTemperature, AluminiumUnderASteelMicrometer) {
  // 100 mm at 30 degC: (1 + 11.5e-6 * 10)/(1 + 23e-6 * 10) = 0.99988503: 99.988503 mm.
  const Corrected as_it_counts = corrected(of("pin", "100 mm", kAluminium), mic_at("30 degC", "1 degC"));
  EXPECT_NEAR(as_it_counts.value, 99.9885026, 1e-7);
  // Of the temperature: 100 * (11.5e-6 - 23e-6) * 1/sqrt 3; of each expansion: 100 * 10 * 1e-6/sqrt 3.
  EXPECT_NEAR(u_of_difference(as_it_counts, Corrected{}, "temperature/"), 1.15e-3 / kRoot3, 1e-6);
  EXPECT_NEAR(u_of_difference(as_it_counts, Corrected{}, "expansion/aluminium"), 1e-3 / kRoot3, 1e-6);
  EXPECT_NEAR(u_of_difference(as_it_counts, Corrected{}, "expansion/scale of steel"), 1e-3 / kRoot3, 1e-6);
  EXPECT_NE(as_it_counts.source.find("; reduced to 20 degC from 30 degC, aluminium"), std::string::npos);
}

TEST(AtTemperature, WarmFromTheCut) {
  Reading warm = of("pin", "50 mm", kSteel);
  warm.work_at = warmth("45 degC", "5 degC");
  // 50 mm shrink by 11.5e-6 * 25 * 50 = 0.0144 mm.
  const Corrected as_it_counts = corrected(warm, mic_at("20 degC", "0 degC"));
  EXPECT_NEAR(as_it_counts.value, 50.0 - 0.014371, 1e-6);
  EXPECT_NEAR(u_of_difference(as_it_counts, Corrected{}, "temperature/"), 50 * 11.5e-6 * 5 / kRoot3, 1e-6);
}

TEST(AtTemperature, OneErrorOfTheThermometerCancelsInAClearanceOfLikeMetals) {
  const Instrument mic = mic_at("32 degC", "3 degC");
  const Corrected shaft = corrected(of("shaft", "19.95 mm", kAluminium), mic);
  const Corrected bore = corrected(of("bore", "20.00 mm", kAluminium), mic);
  const Corrected cast = corrected(of("iron bore", "20.00 mm", kSteel), mic);
  const double alone = u_of_difference(bore, Corrected{}, "temperature/");
  EXPECT_GT(alone, 0.3e-3);
  EXPECT_LT(u_of_difference(bore, shaft, "temperature/"), alone / 300.0);
  EXPECT_LT(u_of_difference(bore, shaft, "expansion/"), 1e-5);
  EXPECT_GT(u_of_difference(cast, shaft, "temperature/"), alone / 2.0);  // unlike metals: it stays
}

TEST(AtTemperature, TwoReadingsWarmFromOneCutShareIt) {
  Reading a = of("a", "50 mm", kSteel);
  a.work_at = warmth("45 degC", "5 degC");
  Reading b = of("b", "50 mm", kSteel);
  b.work_at = warmth("40 degC", "5 degC");
  Reading c = of("c", "50 mm", kSteel);
  c.work_at = a.work_at;
  const Instrument mic = mic_at("20 degC", "0 degC");
  EXPECT_LT(u_of_difference(corrected(a, mic), corrected(c, mic), "temperature/"), 1e-12);
  EXPECT_GT(u_of_difference(corrected(a, mic), corrected(b, mic), "temperature/"), 2e-3);
}

}  // namespace
}  // namespace sparewright::survey
