// Lengths along the bed: from the free end to what the carriage, the compound or a spacer at the stop shows.
#include <cmath>

#include <fmt/format.h>

#include "core/route/lathe_bench.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;
using quantity::Length;

std::string collar_reads(LatheBench& bench, const std::string& name, const Figure& wanted,
                         std::string_view wheel) {
  const shop::Collar& collar = *lathe_collar(bench, wheel);
  const double reads = collar.reads == shop::CollarReads::kDiameter ? 2.0 : 1.0;
  const auto reading =
      shop::collar_reading(collar, Length::from_base(reads * wanted.value), shop::feeds_in(collar));
  bench.choice(name + " turns", Kind::kNumber, static_cast<double>(reading.turns),
               "whole turns from the zero", {&wanted});
  bench.choice(name + " division", Kind::kNumber, reading.division,
               fmt::format("nearest division of the {}", wheel), {&wanted});
  bench.choice(name + " rounding", Kind::kLength, reading.rounding.base() / reads,
               "what the nearest division costs", {&wanted});
  return shop::printed(reading);
}

}  // namespace

const Figure& along_wanted(LatheBench& bench, const std::string& name, const std::string& feature,
                           const std::vector<const Figure*>& from_start, double less_mm) {
  const Figure& start = bench.feature_figure(feature, "starts at");
  std::vector<ledger::Term> terms{{&start, bench.way()}, {bench.end, -bench.way()}};
  double value = bench.way() * (start.value - bench.end->value) - less_mm;
  for (const Figure* length : from_start) {
    terms.push_back({length, 1.0});
    value += length->value;
  }
  return bench.pen.linear(name + " wanted", Kind::kLength, "from the free end into the work", value, terms);
}

std::string along_reads(LatheBench& bench, const std::string& name, const Figure& wanted) {
  if (!wanted.known()) return "NOT KNOWN";
  if (bench.along_by == AlongBy::kCarriage) return collar_reads(bench, name, wanted, kCarriage);
  if (bench.along_by == AlongBy::kCompound) return collar_reads(bench, name, wanted, kCompound);
  const Figure& spacer =
      bench.choice(name + " spacer", Kind::kLength, bench.farthest_mm - wanted.value,
                   "the longest length of this setup less this one: between carriage and stop", {&wanted});
  constexpr double kNothing_mm = 0.005;
  return spacer.value < kNothing_mm ? "at the stop" : "spacer " + bench.print.plain(spacer.value);
}

}  // namespace sparewright::route
