#include <algorithm>
#include <map>
#include <set>
#include <utility>

#include <fmt/format.h>

#include "core/handbook/source.hpp"
#include "core/intent/writing.hpp"

namespace sparewright::intent {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using quantity::Kind;

const Figure& stated(Pen& pen, std::string_view local, Kind kind, double mm, Origin origin, std::string typed,
                     std::string source) {
  ledger::Root root;
  root.kind = kind;
  root.value = mm;
  root.origin = origin;
  root.typed = std::move(typed);
  root.source = std::move(source);
  return pen.root(local, root);
}

const Figure& write_left_over(Pen& pen, std::string_view local, const Figure& measured, const Figure& size) {
  return pen.work(
      local, Kind::kLength, "as measured less that size", [](auto m, auto s) { return m - s; }, measured,
      size);
}

void write_proposals(Pen& pen, const Original& original, const std::vector<Candidate>& all,
                     const Figure& measured) {
  for (std::size_t i = 0; i < all.size(); ++i) {
    const std::string local = fmt::format("proposed {}", i + 1);
    const Figure& size =
        stated(pen, local, original.kind, all[i].size_mm, Origin::kStandard, all[i].name, all[i].source);
    write_left_over(pen, local + " leaves over", measured, size);
  }
}

// What the size was made to if readings at odds are left aside: the likeliest alone.
void write_without(Pen& pen, const Original& original) {
  const auto& all = pen.need_value<AllProposals>("original sizes/together").without;
  for (const auto& [readings, of] : all) {
    const auto found = of.find(original.name);
    if (found == of.end() || found->second.candidates.empty()) continue;
    const Candidate& best = found->second.candidates.front();
    const std::string local = fmt::format("without/{}/proposed 1", readings);
    const Figure& size =
        stated(pen, local, original.kind, best.size_mm, Origin::kStandard, best.name, best.source);
    write_left_over(pen, local + " leaves over", pen.ask(measured_without_path(readings, original.name)),
                    size);
  }
}

// The size accepted, with the measured one to be seen behind it. It has no doubt of its own: it is a number on paper.
const Figure& write_size(Pen& pen, const Original& original, const Figure& measured) {
  const Accepted& accepted = *original.accepted;
  if (!measured.known())
    return stated(pen, "size", original.kind, accepted.size.base, Origin::kChoice, accepted.typed,
                  "accepted as its original size, not measured");
  ledger::Decision decision;
  decision.kind = original.kind;
  decision.value = accepted.size.base;
  decision.words = fmt::format("accepted as its original size: {}", accepted.typed);
  decision.inputs = {&measured};
  decision.source = "the job";
  return pen.decide("size", decision);
}

struct Deviations {
  double lower_mm = 0.0;
  double upper_mm = 0.0;
  Origin origin = Origin::kChoice;
  std::string source;
};

std::optional<Deviations> deviations_of(const Original& original) {
  const Accepted& accepted = *original.accepted;
  const auto& form = accepted.tolerance.form;
  if (const auto* written = std::get_if<quantity::Deviations>(&form))
    return Deviations{written->lower.base, written->upper.base, Origin::kChoice, "the job"};
  if (const auto* limits = std::get_if<quantity::WrittenLimits>(&form))
    return Deviations{limits->low.base - accepted.size.base, limits->high.base - accepted.size.base,
                      Origin::kChoice, "the job"};
  const auto* fit = std::get_if<quantity::FitClass>(&form);
  if (fit == nullptr) return std::nullopt;
  const auto way = original.role == Role::kHole ? part::CutMakesIt::kLarger : part::CutMakesIt::kSmaller;
  const auto tabled = part::fit_deviations(fit->name, accepted.size.diameter(), way);
  if (!tabled) return std::nullopt;  // refused when the text was read
  return Deviations{tabled->lower.base(), tabled->upper.base(), Origin::kStandard,
                    handbook::cite(tabled->source)};
}

void write_limits(Pen& pen, const Original& original, const Figure& size) {
  const auto deviations = deviations_of(original);
  if (!deviations) return;
  const auto plus = [](auto s, auto d) { return s + d; };
  const std::string& typed = original.accepted->tolerance.typed;
  pen.work("least", original.kind, "size and lower deviation", plus, size,
           stated(pen, "lower deviation", Kind::kLength, deviations->lower_mm, deviations->origin, typed,
                  deviations->source));
  pen.work("most", original.kind, "size and upper deviation", plus, size,
           stated(pen, "upper deviation", Kind::kLength, deviations->upper_mm, deviations->origin, typed,
                  deviations->source));
}

std::optional<MeasuredUp> measured_as(const Figure& figure, const Original& original) {
  if (!figure.known() || !(figure.value > 0.0)) return std::nullopt;
  return MeasuredUp{figure.value, figure.expanded(), figure.bound, original.kind, original.role};
}

// The sizes to weigh together, and whose each is.
struct Weighed {
  std::vector<ToPropose> sizes;
  std::vector<const Original*> of;
};

// measure: of an original what was measured; none where nothing was.
template <typename Measure>
Weighed weighed(const Originals& originals, const Measure& measure) {
  Weighed out;
  for (const Original& original : originals.all) {
    const std::optional<MeasuredUp> measured = measure(original);
    if (!measured) continue;
    std::optional<double> accepted;
    if (original.accepted) accepted = original.accepted->size.base;
    out.sizes.push_back({*measured, accepted, std::nullopt});
    out.of.push_back(&original);
  }
  const auto place_of = [&](std::string_view name) -> std::optional<std::size_t> {
    const auto found =
        std::find_if(out.of.begin(), out.of.end(), [&](const Original* one) { return one->name == name; });
    if (found == out.of.end()) return std::nullopt;
    return static_cast<std::size_t>(found - out.of.begin());
  };
  for (std::size_t i = 0; i < out.of.size(); ++i) {
    const auto mate = place_of(out.of[i]->mate);
    if (!mate || *mate == i) continue;
    out.sizes[i].mate = mate;
    if (!out.sizes[*mate].mate) out.sizes[*mate].mate = i;  // of which it is one of a pair too
  }
  return out;
}

ProposalsByName proposals_by_name(const Originals& originals, const Weighed& weighed) {
  ProposalsByName all;
  std::vector<Proposals> found =
      proposals(weighed.sizes, chance_of_inch(originals.machine, originals.system));
  for (std::size_t i = 0; i < weighed.of.size(); ++i)
    all.emplace(weighed.of[i]->name, std::move(found[i]));
  return all;
}

// What measuring up has left aside in turn, with the dimensions that hang on it: of each survey/without/<readings>/<dimension>.
std::map<std::string, std::set<std::string>> left_aside(Pen& pen) {
  constexpr std::string_view kWithout = "survey/without/";
  std::map<std::string, std::set<std::string>> all;
  for (const std::string& name : pen.names("survey")) {
    if (!name.starts_with(kWithout)) continue;
    const std::size_t last = name.rfind('/');
    all[name.substr(kWithout.size(), last - kWithout.size())].insert(name.substr(last + 1));
  }
  return all;
}

}  // namespace

std::optional<MeasuredUp> measured_up(Pen& pen, const Original& original) {
  return measured_as(pen.ask(measured_path(original.name)), original);
}

const Proposals* proposals_for(Pen& pen, const Original& original) {
  const auto& all = pen.need_value<AllProposals>("original sizes/together").of;
  const auto found = all.find(original.name);
  return found == all.end() ? nullptr : &found->second;
}

std::optional<double> size_made_to_mm(Pen& pen, const Original& original) {
  if (original.accepted) return original.accepted->size.base;
  const Proposals* proposals = proposals_for(pen, original);
  if (proposals == nullptr || proposals->candidates.empty()) return std::nullopt;
  return proposals->candidates.front().size_mm;
}

void write_together(Pen& pen, const Originals& originals) {
  AllProposals all;
  all.of = proposals_by_name(originals,
                             weighed(originals, [&](const Original& one) { return measured_up(pen, one); }));
  for (const auto& [readings, hang] : left_aside(pen)) {
    const auto without = [&, &names = readings, &dimensions = hang](const Original& one) {
      if (dimensions.count(one.name) == 0) return measured_up(pen, one);
      return measured_as(pen.ask(measured_without_path(names, one.name)), one);
    };
    ProposalsByName found = proposals_by_name(originals, weighed(originals, without));
    for (const std::string& name : hang) {
      if (const auto one = found.find(name); one != found.end())
        all.without[readings].emplace(name, std::move(one->second));
    }
  }
  base::Hasher h;
  const auto add = [&](const ProposalsByName& of) {
    for (const auto& [name, each] : of)
      h.add(name).add(fingerprint(each));
  };
  add(all.of);
  for (const auto& [readings, of] : all.without) {
    h.add(readings);
    add(of);
  }
  pen.publish("together", std::move(all), h.done());
}

void write_original(Pen& pen, const Original& original) {
  const Figure& measured = pen.ask(measured_path(original.name));
  const Proposals* found = proposals_for(pen, original);
  Proposals proposals = found == nullptr ? Proposals{} : *found;
  write_proposals(pen, original, proposals.candidates, measured);
  if (found != nullptr) write_without(pen, original);
  if (original.accepted) {
    const Figure& size = write_size(pen, original, measured);
    write_left_over(pen, "leaves over", measured, size);
    write_limits(pen, original, size);
  }
  const base::Fingerprint print = fingerprint(proposals);
  pen.publish("proposals", std::move(proposals), print);
}

}  // namespace sparewright::intent
