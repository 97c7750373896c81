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

std::optional<double> size_made_to_mm(Pen& pen, const Original& original) {
  if (original.accepted) return original.accepted->size.base;
  const auto measured = measured_up(pen, original);
  if (!measured) return std::nullopt;
  const auto all = candidates(*measured);
  if (all.empty()) return std::nullopt;
  return all.front().size_mm;
}

void write_original(Pen& pen, const Originals& originals, const Original& original) {
  const Figure& measured = pen.ask(measured_path(original.name));
  Proposals proposals;
  if (const auto up = measured_up(pen, original)) {
    const Original* mate = find_original(originals, original.mate);
    proposals.measured = *up;
    proposals.candidates = candidates(*up, mate == nullptr ? std::nullopt : size_made_to_mm(pen, *mate));
    write_proposals(pen, original, proposals.candidates, measured);
  }
  if (original.accepted) {
    const Figure& size = write_size(pen, original, measured);
    write_left_over(pen, "leaves over", measured, size);
    write_limits(pen, original, size);
  }
  const base::Fingerprint print = base::Hasher()
                                      .add(fingerprint(proposals.candidates))
                                      .add(proposals.measured.size_mm)
                                      .add(proposals.measured.unknown_mm)
                                      .add(static_cast<int>(proposals.measured.bound))
                                      .done();
  pen.publish("proposals", std::move(proposals), print);
}

}  // namespace sparewright::intent
