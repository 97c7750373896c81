#include "core/intent/original.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/handbook/iso286.hpp"
#include "core/intent/series.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::intent {
namespace {

constexpr double kSame_mm = 1e-6;

// Below this no reading of a shop goes; it keeps a size that is dead on from being striking without end.
constexpr double kNearest_mm = 0.0005;

// More often than every second size says nothing.
constexpr double kLeastStriking = 2.0;

// How far off a size that is not worn was made at the worst: tolerance grade 11 of ISO 286. A choice made here, without a
// source. Nothing where the grade is not tabled.
double made_within_mm(double size_mm) {
  constexpr int kGrade = 11;
  const auto width = handbook::iso286_tolerance(kGrade, quantity::Diameter::from_base(size_mm));
  return width ? width->width.base() : std::numeric_limits<double>::infinity();
}

// Wear takes metal off: a worn shaft was at least what is left of it, a worn hole at most.
bool can_have_been(const MeasuredUp& measured, double size_mm) {
  const double off = measured.size_mm - size_mm;
  const double most = made_within_mm(measured.size_mm) + measured.unknown_mm;
  switch (measured.bound) {
    case ledger::Bound::kExact:
      return std::abs(off) <= most;
    case ledger::Bound::kAtLeast:
      return off <= measured.unknown_mm;
    case ledger::Bound::kAtMost:
      return -off <= measured.unknown_mm;
    case ledger::Bound::kNeither:
      break;
  }
  return false;
}

Candidate candidate_of(const Nearest& near, const MeasuredUp& measured) {
  Candidate c;
  c.name = near.name;
  c.size_mm = near.size_mm;
  c.off_mm = measured.size_mm - near.size_mm;
  const double within = std::max({std::abs(c.off_mm), measured.unknown_mm, kNearest_mm});
  c.once_in = std::max(1.0, near.spacing_mm / (2.0 * within));
  c.may_be_it = std::abs(c.off_mm) <= measured.unknown_mm + kSame_mm;
  c.series = {near.series};
  c.source = near.source;
  return c;
}

// One size of several series is one candidate, as striking as the most striking of them.
void join(std::vector<Candidate>& all, Candidate one) {
  const auto same = std::find_if(all.begin(), all.end(), [&](const Candidate& other) {
    return std::abs(other.size_mm - one.size_mm) < kSame_mm;
  });
  if (same == all.end()) return all.push_back(std::move(one));
  if (one.once_in > same->once_in) std::swap(*same, one);
  for (std::string& series : one.series)
    same->series.push_back(std::move(series));
}

void put_mates_first(std::vector<Candidate>& all, double mates_mm) {
  const auto same = std::find_if(
      all.begin(), all.end(), [&](const Candidate& c) { return std::abs(c.size_mm - mates_mm) < kSame_mm; });
  if (same == all.end()) return;
  same->as_mate = true;
  std::rotate(all.begin(), same, same + 1);
}

}  // namespace

std::vector<Candidate> candidates(const MeasuredUp& measured, std::optional<double> mates_size_mm) {
  std::vector<Candidate> all;
  for (const Nearest& near : nearest_of_each_series(measured.size_mm, measured.kind, measured.role)) {
    // A loose pair has one nominal size all the same, so the mate's is not held to a grade.
    const bool is_mates = mates_size_mm && std::abs(near.size_mm - *mates_size_mm) < kSame_mm &&
                          measured.bound == ledger::Bound::kExact;
    if (!is_mates && !can_have_been(measured, near.size_mm)) continue;
    Candidate one = candidate_of(near, measured);
    if (one.once_in >= kLeastStriking) join(all, std::move(one));
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const Candidate& a, const Candidate& b) { return a.once_in > b.once_in; });
  if (mates_size_mm) put_mates_first(all, *mates_size_mm);
  if (all.size() > kMostCandidates) all.resize(kMostCandidates);
  return all;
}

base::Fingerprint fingerprint(const std::vector<Candidate>& candidates) {
  base::Hasher h;
  for (const Candidate& c : candidates) {
    h.add(c.name).add(c.size_mm).add(c.off_mm).add(c.once_in).add(c.may_be_it).add(c.as_mate).add(c.source);
    for (const std::string& series : c.series)
      h.add(series);
  }
  return h.done();
}

std::string reason_of(const Candidate& c, const MeasuredUp& measured, quantity::UnitSystem system) {
  const quantity::Unit unit = quantity::display_unit(quantity::Kind::kLength, system);
  const int places = quantity::usual_places(quantity::Kind::kLength, system);
  std::string words = fmt::format("{}; so near once in {:.0f}", fmt::join(c.series, ", "), c.once_in);
  if (c.as_mate) words = "its mate's size; " + words;
  const std::string off = quantity::fixed(unit.from_base(std::abs(c.off_mm)), places);
  const char* way = c.off_mm < 0.0 ? "under" : "over";
  if (c.may_be_it) return words + fmt::format("; {} {}: within what the readings leave open", off, way);
  words += fmt::format("; {} {}", off, way);
  if (measured.bound != ledger::Bound::kExact) return words + ", by wear";
  if (measured.unknown_mm > 0.0)
    words +=
        fmt::format(": {:.1f} times what the readings leave open", std::abs(c.off_mm) / measured.unknown_mm);
  return words;
}

}  // namespace sparewright::intent
