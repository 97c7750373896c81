#include "core/intent/together.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/intent/collecting.hpp"

namespace sparewright::intent {
namespace {

using System = double Common::*;
constexpr std::array kSystems{&Common::inch, &Common::metric};

Option* find(std::vector<Option>& options, double size_mm) {
  const auto at = std::lower_bound(options.begin(), options.end(), size_mm - kSame_mm,
                                   [](const Option& option, double size) { return option.size_mm < size; });
  return at == options.end() || at->size_mm > size_mm + kSame_mm ? nullptr : &*at;
}

void sort(std::vector<Option>& options) {
  std::stable_sort(options.begin(), options.end(),
                   [](const Option& a, const Option& b) { return a.size_mm < b.size_mm; });
}

// The size accepted alone, which says by how common it is whether the machine is inch or metric; one of no series says
// nothing.
Spread accepted_alone(Spread spread, double accepted_mm) {
  const Option* found = find(spread.options, accepted_mm);
  Option alone = found == nullptr ? Option{accepted_mm, {1.0, 1.0}, {}, {}} : *found;
  alone.like = {1.0, 1.0};
  spread.options.assign(1, std::move(alone));
  spread.none = {};
  spread.is_accepted = true;
  return spread;
}

// What one of a group may have been made to, the others may have too.
void share_options(std::vector<Spread>& members) {
  std::vector<Option> all;
  for (const Spread& member : members)
    all.insert(all.end(), member.options.begin(), member.options.end());
  for (Spread& member : members) {
    std::vector<Option> missing;
    for (const Option& option : all) {
      if (find(member.options, option.size_mm) != nullptr || find(missing, option.size_mm) != nullptr)
        continue;
      const double like = member.is_accepted ? 0.0
                                             : likelihood(usually_made(option.size_mm, member.measured),
                                                          option.size_mm, member.measured);
      missing.push_back({option.size_mm, {}, {like, like}, option.of});
      sort(missing);
    }
    member.options.insert(member.options.end(), missing.begin(), missing.end());
    sort(member.options);
  }
}

double apart(const Spread& member, System system) {
  double sum = member.none.*system;
  for (const Option& option : member.options)
    sum += option.common.*system * (option.like.*system);
  return sum;
}

// For each option, of which all members have the same: how likely it is the nominal size of all.
std::vector<double> shared(const std::vector<Spread>& members, System system) {
  std::vector<double> terms;
  for (std::size_t i = 0; i < members.front().options.size(); ++i) {
    double common = 0.0;
    double like = 1.0;
    for (const Spread& member : members) {
      common += member.options[i].common.*system;
      like *= member.options[i].like.*system;
    }
    const double size = members.front().options[i].size_mm;
    const auto others = static_cast<double>(members.size() - 1);
    terms.push_back(common / static_cast<double>(members.size()) * like *
                    std::pow(kNominalsWithin * size, others));
  }
  return terms;
}

// What a group says under one system: of each option of one member, of none, and of all together.
struct Evidence {
  std::vector<double> options;
  double none = 0.0;
  double all = 0.0;
};

Evidence evidence_of(const std::vector<Spread>& members, std::size_t of, System system) {
  const bool is_pair = members.size() > 1;
  double others = is_pair ? 1.0 - kShareNominal : 1.0;
  for (std::size_t i = 0; i < members.size(); ++i)
    others *= i == of ? 1.0 : apart(members[i], system);
  Evidence evidence;
  const std::vector<double> one = is_pair ? shared(members, system) : std::vector<double>{};
  for (std::size_t i = 0; i < members[of].options.size(); ++i) {
    const Option& option = members[of].options[i];
    double term = others * option.common.*system * (option.like.*system);
    if (is_pair) term += kShareNominal * one[i];
    evidence.options.push_back(term);
    evidence.all += term;
  }
  evidence.none = others * members[of].none.*system;
  evidence.all += evidence.none;
  return evidence;
}

// What cannot be at all counts as all but impossible: the logarithm stays a number.
double log_of(double evidence) {
  constexpr double kLeast = 1e-300;
  return std::log(std::max(evidence, kLeast));
}

// From the logarithms of what speaks for either.
double inch_share(double prior_inch, const Common& log_evidence) {
  if (prior_inch <= 0.0 || prior_inch >= 1.0) return prior_inch;
  const double odds = std::log(prior_inch / (1.0 - prior_inch)) + log_evidence.inch - log_evidence.metric;
  return 1.0 / (1.0 + std::exp(-odds));
}

}  // namespace

Spread spread_of(const MeasuredUp& measured) {
  Nominals near = nominals_near(measured);
  std::stable_sort(near.all.begin(), near.all.end(),
                   [](const Nominal& a, const Nominal& b) { return a.size_mm < b.size_mm; });
  Spread spread{measured, {}, near.none};
  if (measured.bound == ledger::Bound::kNeither)
    spread.none = {1.0, 1.0};  // says nothing of the machine either
  for (std::size_t first = 0; first < near.all.size();) {
    Option option{near.all[first].size_mm, {}, {}, {}};
    std::vector<Nominal> of;
    for (; first < near.all.size() && near.all[first].size_mm - option.size_mm <= kSame_mm; ++first) {
      Nominal& one = near.all[first];
      const double like = likelihood(one.made, one.size_mm, measured);
      for (const System system : kSystems) {
        option.common.*system += one.common.*system;
        option.like.*system += one.common.*system * like;
      }
      of.push_back(std::move(one));
    }
    for (const System system : kSystems)
      option.like.*system /= option.common.*system;
    option.of = std::make_shared<const std::vector<Nominal>>(std::move(of));
    spread.options.push_back(std::move(option));
  }
  return spread;
}

Together::Together(const std::vector<Sized>& sizes, double chance_of_inch)
    : sizes_(sizes), prior_inch_(chance_of_inch) {
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    spreads_.push_back(spread_of(sizes[i].measured));
    std::size_t group = 0;
    while (group < groups_.size() && sizes[groups_[group].sizes.front()].goes_with != sizes[i].goes_with)
      ++group;
    if (group == groups_.size()) groups_.emplace_back();
    groups_[group].sizes.push_back(i);
    group_of_.push_back(group);
  }
  for (Group& group : groups_) {
    const auto all = members(group, std::nullopt, nullptr);
    for (const System system : kSystems)
      group.log_evidence.*system = log_of(evidence_of(all, 0, system).all);
  }
}

std::vector<Spread> Together::members(const Group& group, std::optional<std::size_t> lifted,
                                      const Spread* instead) const {
  std::vector<Spread> all;
  for (const std::size_t i : group.sizes) {
    if (i == lifted) {
      all.push_back(*instead);
    } else {
      all.push_back(sizes_[i].accepted_mm ? accepted_alone(spreads_[i], *sizes_[i].accepted_mm)
                                          : spreads_[i]);
    }
  }
  if (all.size() > 1) share_options(all);
  return all;
}

double Together::chance_of_inch() const {
  Common sum;
  for (const Group& group : groups_) {
    sum.inch += group.log_evidence.inch;
    sum.metric += group.log_evidence.metric;
  }
  return inch_share(prior_inch_, sum);
}

Chances Together::weigh(std::size_t size, const Spread& spread, double prior_inch) const {
  const std::size_t own = group_of_[size];
  const auto all = members(groups_[own], size, &spread);
  const auto& sizes = groups_[own].sizes;
  const auto at = static_cast<std::size_t>(std::find(sizes.begin(), sizes.end(), size) - sizes.begin());
  Common sum;
  for (std::size_t g = 0; g < groups_.size(); ++g) {
    if (g == own) continue;
    sum.inch += groups_[g].log_evidence.inch;
    sum.metric += groups_[g].log_evidence.metric;
  }
  const std::array evidence{evidence_of(all, at, &Common::inch), evidence_of(all, at, &Common::metric)};
  sum.inch += log_of(evidence[0].all);
  sum.metric += log_of(evidence[1].all);
  const double inch = inch_share(prior_inch, sum);
  const std::array share{evidence[0].all > 0.0 ? inch / evidence[0].all : 0.0,
                         evidence[1].all > 0.0 ? (1.0 - inch) / evidence[1].all : 0.0};
  Chances chances;
  chances.none = share[0] * evidence[0].none + share[1] * evidence[1].none;
  for (std::size_t i = 0; i < all[at].options.size(); ++i) {
    const double chance = share[0] * evidence[0].options[i] + share[1] * evidence[1].options[i];
    if (chance > 0.0) chances.all.push_back({all[at].options[i], chance});
  }
  std::stable_sort(chances.all.begin(), chances.all.end(),
                   [](const Chance& a, const Chance& b) { return a.chance > b.chance; });
  return chances;
}

Chances Together::chances(std::size_t size) const {
  return weigh(size, spreads_[size], prior_inch_);
}

Chances Together::chances_if_measured(std::size_t size, const MeasuredUp& measured) const {
  return weigh(size, spread_of(measured), prior_inch_);
}

Chances Together::chances_if(std::size_t size, bool is_inch) const {
  return weigh(size, spreads_[size], is_inch ? 1.0 : 0.0);
}

}  // namespace sparewright::intent
