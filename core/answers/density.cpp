// What something is made of, by its weight and the water it displaces.
#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include "core/answers/entry_reader.hpp"
#include "core/answers/quick.hpp"
#include "core/handbook/materials.hpp"

namespace sparewright::answers {
namespace {

using quantity::Kind;
using quantity::Typed;
namespace unit = quantity::unit;

// Water at 20 degC, 0.9982 g/cm3 (from memory); between 15 and 25 degC it is within 0.001 of that.
const double kWater = unit::gram_per_cubic_centimetre.to_base(0.9982);
const double kWaterWithin = unit::gram_per_cubic_centimetre.to_base(0.001);
// What a piece may differ from the typical figure of its material: 1 per cent, standard deviation. A choice made here,
// without a source: alloys of one name vary by about that, castings with their pores by more.
constexpr double kMaterialVaries = 0.01;
constexpr std::size_t kMostShown = 8;
constexpr double kLeastOdds = 0.01;
// From these odds on one material is named as the one (a choice made here).
constexpr double kTold = 0.5;

constexpr handbook::Source kArchimedes{"weight over the volume of the water displaced (Archimedes)", "",
                                       handbook::Basis::kDerived};
constexpr handbook::Source kOdds{
    "the handbook's densities, each within 1 per cent (a choice made here); all alike likely "
    "before it was weighed",
    "", handbook::Basis::kDerived};

// A number and the half-width of its error: as given, else half of its last figure.
struct Weighed {
  double value = 0.0;
  double within = 0.0;
  [[nodiscard]] double u() const { return within * std::numbers::inv_sqrt3; }  // JCGM 100:2008, 4.3.7
};

base::Result<Weighed> weighed(const Question& question, std::string_view name, Kind kind,
                              std::string_view good_to) {
  const auto read = number_entry(question, name, kind);
  if (!read) return tl::unexpected(read.error());
  if (!(read->base > 0.0))
    return base::fail(base::Code::kSizeNotPositive, read->typed, "more than zero", fmt::format("--{}", name));
  Weighed out{read->base, 0.0};
  if (find_entry(question, good_to) != nullptr) {
    const auto within = number_entry(question, good_to, kind);
    if (!within) return tl::unexpected(within.error());
    if (!(within->base > 0.0))
      return base::fail(base::Code::kSizeNotPositive, within->typed, "more than zero",
                        fmt::format("--{}", good_to));
    out.within = within->base;
    return out;
  }
  const int places = read->places == Typed::kFraction ? 2 : read->places;
  out.within = read->unit.to_base(0.5 * std::pow(10.0, -places));
  return out;
}

struct Found {
  double density = 0.0;
  double u = 0.0;
  std::string how;
};

Found by_volume(const Weighed& weight, const Weighed& volume) {
  const double density = weight.value / volume.value;
  const double part = std::hypot(weight.u() / weight.value, volume.u() / volume.value);
  return {density, density * part, "by the volume it displaces"};
}

// Hung in water it weighs less by the water it displaces.
base::Result<Found> by_hanging(const Weighed& weight, const Weighed& hung) {
  const double lost = weight.value - hung.value;
  if (!(lost > 0.0))
    return base::fail(base::Code::kValueNotAccepted, "as much as in air or more", "less than --weight",
                      "--in-water");
  const double density = kWater * weight.value / lost;
  // By weight: -density (hung / (weight lost)); by hung: density / lost.
  const double by_weight = density * hung.value / (weight.value * lost);
  const double by_hung = density / lost;
  const double water = density * kWaterWithin * std::numbers::inv_sqrt3 / kWater;
  return Found{density, std::hypot(by_weight * weight.u(), by_hung * hung.u(), water),
               "by what it loses when it hangs in water"};
}

base::Result<Found> found_of(const Question& question) {
  const auto weight = weighed(question, "weight", Kind::kMass, "weight-good-to");
  if (!weight) return tl::unexpected(weight.error());
  const bool hung = find_entry(question, "in-water") != nullptr;
  const bool volume = find_entry(question, "volume") != nullptr;
  if (hung == volume)
    return base::fail(base::Code::kValueNotAccepted, hung ? "both" : "nothing", "--volume or --in-water",
                      "--volume");
  if (volume) {
    const auto displaced = weighed(question, "volume", Kind::kVolume, "volume-good-to");
    if (!displaced) return tl::unexpected(displaced.error());
    return by_volume(*weight, *displaced);
  }
  const auto in_water = weighed(question, "in-water", Kind::kMass, "weight-good-to");
  if (!in_water) return tl::unexpected(in_water.error());
  return by_hanging(*weight, *in_water);
}

struct Likely {
  std::string name;
  double density = 0.0;
  double odds = 0.0;
  handbook::Source source;
};

// One row a name, the likeliest first; odds over all names.
std::vector<Likely> likely(const Found& found) {
  std::vector<Likely> all;
  double total = 0.0;
  for (const handbook::Material& material : handbook::materials()) {
    const double density = material.density.base();
    const bool known =
        std::any_of(all.begin(), all.end(), [&](const Likely& one) { return one.name == material.name; });
    if (known) continue;
    const double spread = std::hypot(found.u, kMaterialVaries * density);
    const double off = (found.density - density) / spread;
    Likely one{std::string(material.name), density, std::exp(-0.5 * off * off) / spread,
               handbook::source_of(material, handbook::MaterialProperty::kDensity)};
    total += one.odds;
    all.push_back(std::move(one));
  }
  for (Likely& one : all)
    one.odds = total > 0.0 ? one.odds / total : 0.0;
  std::stable_sort(all.begin(), all.end(), [](const Likely& a, const Likely& b) { return a.odds > b.odds; });
  return all;
}

// Further from every material than a piece of it ever is.
bool is_none(const Found& found, const std::vector<Likely>& all) {
  return std::all_of(all.begin(), all.end(), [&](const Likely& one) {
    return std::abs(found.density - one.density) > 3.5 * std::hypot(found.u, kMaterialVaries * one.density);
  });
}

std::string density_words(double base) {
  return fmt::format("{:.2f} g/cm3 ({:.4f} lb/in3)", unit::gram_per_cubic_centimetre.from_base(base),
                     unit::pound_per_cubic_inch.from_base(base));
}

}  // namespace

base::Result<Answer> density(const Question& question) {
  const auto found = found_of(question);
  if (!found) return tl::unexpected(found.error());
  const std::vector<Likely> all = likely(*found);
  Answer answer;
  answer.asked = "what it is made of, " + found->how;
  TableWriter writer("density", question.system);
  writer.words("density", density_words(found->density), kArchimedes,
               fmt::format("known to {:.2f} g/cm3, 19 times in 20",
                           unit::gram_per_cubic_centimetre.from_base(2.0 * found->u)));
  answer.tables.push_back(writer.take());
  if (is_none(*found, all)) {
    answer.says = density_words(found->density) + ": no material of the handbook";
    answer.cautions.emplace_back("Look for trapped air, a hollow, a plating or an insert of something else.");
    return answer;
  }
  const bool is_told = all.front().odds >= kTold;
  answer.says = fmt::format("{}: {}{} comes nearest", density_words(found->density),
                            is_told ? "" : "which material is NOT KNOWN, several are about as likely; ",
                            all.front().name);
  TableWriter odds("likely materials", question.system);
  for (std::size_t i = 0; i < all.size() && i < kMostShown && all[i].odds >= kLeastOdds; ++i) {
    odds.words(all[i].name, fmt::format("{:.0f} in 100", 100.0 * all[i].odds), kOdds,
               fmt::format("{:.2f} g/cm3", unit::gram_per_cubic_centimetre.from_base(all[i].density)));
  }
  answer.tables.push_back(odds.take());
  answer.assumed.emplace_back("water at 15 to 25 degC, no air trapped, the piece all of one material");
  if (all.front().odds < 0.9)
    answer.cautions.emplace_back(
        "Materials of nearly one density are not told apart by weight: go on with a magnet, a file, a spark "
        "or a drop of "
        "acid.");
  return answer;
}

}  // namespace sparewright::answers
