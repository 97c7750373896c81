#include "core/intent/original.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/intent/collecting.hpp"
#include "core/intent/together.hpp"

namespace sparewright::intent {
namespace {

// The part of one series in a size, with the machine as likely inch as it is.
double part_of(const Nominal& one, const MeasuredUp& measured, double chance_of_inch) {
  const double common = chance_of_inch * one.common.inch + (1.0 - chance_of_inch) * one.common.metric;
  return common * likelihood(one.made, one.size_mm, measured);
}

// A series and its part in a size: several threads of one diameter count together.
struct Part {
  double part = 0.0;
  double best = 0.0;
  const Nominal* of = nullptr;  // what has most of it
};

std::vector<Part> parts_of(const Option& option, const MeasuredUp& measured, double chance_of_inch) {
  std::vector<Part> parts;
  for (const Nominal& one : *option.of) {
    const double part = part_of(one, measured, chance_of_inch);
    auto same =
        std::find_if(parts.begin(), parts.end(), [&](const Part& p) { return p.of->series == one.series; });
    if (same == parts.end()) same = parts.insert(parts.end(), Part{0.0, -1.0, &one});
    same->part += part;
    if (part > same->best) {
      same->best = part;
      same->of = &one;
    }
  }
  std::stable_sort(parts.begin(), parts.end(), [](const Part& a, const Part& b) { return a.part > b.part; });
  return parts;
}

Candidate candidate_of(const Chance& chance, const MeasuredUp& measured, double chance_of_inch) {
  constexpr double kWorthSaying = 0.01;
  constexpr std::size_t kMostSeries = 3;
  const std::vector<Part> parts = parts_of(chance.option, measured, chance_of_inch);
  const Nominal& best = *parts.front().of;
  Candidate c;
  c.name = best.name;
  c.size_mm = best.size_mm;
  c.off_mm = measured.size_mm - best.size_mm;
  c.chance = chance.chance;
  c.may_be_it = std::abs(c.off_mm) <= measured.unknown_mm + kSame_mm;
  for (const Part& one : parts) {
    const bool counts = c.series.empty() || one.part >= kWorthSaying * parts.front().part;
    if (counts && c.series.size() < kMostSeries) c.series.push_back(one.of->series);
  }
  c.made = std::string(likeliest_zone(best.made, best.size_mm, measured).words);
  c.source = best.source;
  return c;
}

bool settles(const Chances& chances) {
  return !chances.all.empty() && chances.all.front().chance >= kSettled;
}

// Where a finer reading would show it if the likeliest size is the right one: in the middle of how such a size is made, as far
// as what was read allows.
double expected_mm(const Chances& chances, const MeasuredUp& measured) {
  const Option& option = chances.all.front().option;
  const Zone& zone = likeliest_zone(option.of->front().made, option.size_mm, measured);
  const double middle = option.size_mm + (zone.low_mm + zone.high_mm) / 2.0;
  return std::clamp(middle, measured.size_mm - measured.unknown_mm, measured.size_mm + measured.unknown_mm);
}

// How good a reading would settle it, whether it shows the same or what is expected; none where not even a tenth would.
std::optional<double> settled_by_mm(const Together& together, std::size_t size, const MeasuredUp& measured) {
  const Chances now = together.chances(size);
  if (now.all.empty()) return std::nullopt;
  for (const double finer : {0.5, 0.2, 0.1}) {
    for (const double at_mm : {measured.size_mm, expected_mm(now, measured)}) {
      MeasuredUp again = measured;
      again.unknown_mm *= finer;
      again.size_mm = at_mm;
      if (settles(together.chances_if_measured(size, again))) return again.unknown_mm;
    }
  }
  return std::nullopt;
}

// Tried in the order of how little each costs.
void find_decider(Proposals& found, const Together& together, std::size_t size, bool has_mate) {
  using ledger::Bound;
  const bool could_have_mate = found.measured.role == Role::kHole || found.measured.role == Role::kShaft;
  if (found.measured.bound == Bound::kNeither) {
    found.decider = Decider::kOtherPlace;
  } else if (found.measured.bound != Bound::kExact) {
    found.decider = Decider::kUnwornPlace;
  } else if (settles(together.chances_if(size, true)) && settles(together.chances_if(size, false))) {
    found.decider = Decider::kInchOrMetric;
  } else if (const auto good_to = settled_by_mm(together, size, found.measured)) {
    found.decider = Decider::kFinerReading;
    found.good_to_mm = *good_to;
  } else if (!has_mate && could_have_mate) {
    found.decider = Decider::kMate;
  }
}

// Sizes that go together, through several mates too, have the number of the first of them.
std::vector<std::size_t> groups_of(const std::vector<ToPropose>& sizes) {
  std::vector<std::size_t> group(sizes.size());
  for (std::size_t i = 0; i < sizes.size(); ++i)
    group[i] = i;
  const auto can_share = [&](std::size_t i) {
    const Role role = sizes[i].measured.role;
    return role != Role::kPitch && role != Role::kModule &&
           sizes[i].measured.bound != ledger::Bound::kNeither;
  };
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    if (!sizes[i].mate || !can_share(i) || !can_share(*sizes[i].mate)) continue;
    const std::size_t low = std::min(group[i], group[*sizes[i].mate]);
    const std::size_t high = std::max(group[i], group[*sizes[i].mate]);
    std::replace(group.begin(), group.end(), high, low);
  }
  return group;
}

Proposals proposals_of(const Together& together, const ToPropose& one, std::size_t size) {
  Proposals found;
  found.measured = one.measured;
  found.chance_of_inch = together.chance_of_inch();
  if (one.measured.bound != ledger::Bound::kNeither) {
    const Chances chances = together.chances(size);
    found.none = chances.none;
    for (const Chance& chance : chances.all) {
      if (found.candidates.size() == kMostCandidates || chance.chance < kWorthNaming) break;
      found.candidates.push_back(candidate_of(chance, one.measured, found.chance_of_inch));
    }
    found.is_settled = settles(chances);
  }
  if (!found.is_settled) find_decider(found, together, size, one.mate.has_value());
  return found;
}

}  // namespace

std::vector<Proposals> proposals(const std::vector<ToPropose>& sizes, double chance_of_inch) {
  const std::vector<std::size_t> groups = groups_of(sizes);
  std::vector<Sized> all;
  for (std::size_t i = 0; i < sizes.size(); ++i)
    all.push_back({sizes[i].measured, sizes[i].accepted_mm, groups[i]});
  const Together together(all, chance_of_inch);
  std::vector<Proposals> found;
  for (std::size_t i = 0; i < sizes.size(); ++i)
    found.push_back(proposals_of(together, sizes[i], i));
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    if (!sizes[i].mate || found[*sizes[i].mate].candidates.empty()) continue;
    const Candidate& mates = found[*sizes[i].mate].candidates.front();
    for (Candidate& c : found[i].candidates)
      c.as_mate = std::abs(c.size_mm - mates.size_mm) < kSame_mm;
  }
  return found;
}

base::Fingerprint fingerprint(const Proposals& proposals) {
  base::Hasher h;
  h.add(proposals.measured.size_mm).add(proposals.measured.unknown_mm);
  h.add(static_cast<int>(proposals.measured.bound)).add(static_cast<int>(proposals.measured.role));
  h.add(proposals.none).add(proposals.chance_of_inch).add(proposals.is_settled);
  h.add(static_cast<int>(proposals.decider)).add(proposals.good_to_mm);
  for (const Candidate& c : proposals.candidates) {
    h.add(c.name).add(c.size_mm).add(c.off_mm).add(c.chance).add(c.may_be_it).add(c.as_mate);
    h.add(c.made).add(c.source);
    for (const std::string& series : c.series)
      h.add(series);
  }
  return h.done();
}

}  // namespace sparewright::intent
