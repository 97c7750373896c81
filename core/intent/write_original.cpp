#include <algorithm>
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

}  // namespace

std::optional<MeasuredUp> measured_up(Pen& pen, const Original& original) {
  const Figure& figure = pen.ask(measured_path(original.name));
  if (!figure.known() || !(figure.value > 0.0)) return std::nullopt;
  return MeasuredUp{figure.value, figure.expanded(), figure.bound, original.kind, original.role};
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
  std::vector<ToPropose> sizes;
  std::vector<const Original*> of;
  for (const Original& original : originals.all) {
    const auto measured = measured_up(pen, original);
    if (!measured) continue;
    std::optional<double> accepted;
    if (original.accepted) accepted = original.accepted->size.base;
    sizes.push_back({*measured, accepted, std::nullopt});
    of.push_back(&original);
  }
  const auto place_of = [&](std::string_view name) -> std::optional<std::size_t> {
    const auto found =
        std::find_if(of.begin(), of.end(), [&](const Original* one) { return one->name == name; });
    if (found == of.end()) return std::nullopt;
    return static_cast<std::size_t>(found - of.begin());
  };
  for (std::size_t i = 0; i < of.size(); ++i) {
    const auto mate = place_of(of[i]->mate);
    if (!mate || *mate == i) continue;
    sizes[i].mate = mate;
    if (!sizes[*mate].mate) sizes[*mate].mate = i;  // of which it is one of a pair too
  }
  AllProposals all;
  base::Hasher h;
  std::vector<Proposals> found = proposals(sizes, chance_of_inch(originals.machine, originals.system));
  for (std::size_t i = 0; i < of.size(); ++i) {
    h.add(of[i]->name).add(fingerprint(found[i]));
    all.of.emplace(of[i]->name, std::move(found[i]));
  }
  pen.publish("together", std::move(all), h.done());
}

void write_original(Pen& pen, const Original& original) {
  const Figure& measured = pen.ask(measured_path(original.name));
  const Proposals* found = proposals_for(pen, original);
  Proposals proposals = found == nullptr ? Proposals{} : *found;
  write_proposals(pen, original, proposals.candidates, measured);
  if (original.accepted) {
    const Figure& size = write_size(pen, original, measured);
    write_left_over(pen, "leaves over", measured, size);
    write_limits(pen, original, size);
  }
  const base::Fingerprint print = fingerprint(proposals);
  pen.publish("proposals", std::move(proposals), print);
}

}  // namespace sparewright::intent
