// An accepted original size that moves a size past its own tolerance.
#include <cmath>
#include <limits>
#include <optional>
#include <string>
#include <utility>

#include <fmt/format.h>

#include "core/judge/queries.hpp"

namespace sparewright::judge {
namespace {

using ledger::Bound;
using ledger::Figure;
using ledger::Pen;
using quantity::Kind;

// Sizes that are equal on paper come out of different sums a few last bits apart.
constexpr double kSame_mm = 1e-9;

// How far a size read lies outside its limits; nothing where it lies within, or where wear may have led there.
std::optional<double> outside_mm(const Figure& read, const Figure& least, const Figure& most) {
  if (!read.known() || !least.known() || !most.known() || read.bound == Bound::kNeither) return std::nullopt;
  const double over = read.value - most.value;
  const double under = least.value - read.value;
  if (over > kSame_mm && read.bound != Bound::kAtMost) return over;
  if (under > kSame_mm && read.bound != Bound::kAtLeast) return under;
  return std::nullopt;
}

// --- a dimension of the part whose formula names accepted sizes ------------------------------------------------------

const formula::Formula* formula_with_accepted(const Subject& subject, const part::Dimension& dimension) {
  const auto* formula = std::get_if<formula::Formula>(&dimension.size);
  if (formula == nullptr || !quantity::is_length_like(dimension.kind)) return nullptr;
  for (const std::string& name : formula->names()) {
    const auto* original = intent::find_original(subject.originals, name);
    if (original != nullptr && original->accepted) return formula;
  }
  return nullptr;
}

// The size as it would be by what was measured, and the accepted dimension that moves it most.
struct AsRead {
  const Figure* size = nullptr;
  const intent::Original* moved_by = nullptr;
};

std::optional<AsRead> as_read(Pen& pen, const Subject& subject, const part::NamedDimension& named,
                              const formula::Formula& formula) {
  std::vector<const Figure*> figures;
  std::vector<double> values;
  for (const std::string& name : formula.names()) {
    figures.push_back(&pen.ask(intent::measured_path(name)));
    if (!figures.back()->known()) return std::nullopt;
    values.push_back(figures.back()->value);
  }
  const auto y = formula.at(values);
  if (!y) return std::nullopt;
  AsRead read;
  double farthest = -1.0;
  std::vector<ledger::Term> terms;
  for (std::size_t i = 0; i < figures.size(); ++i) {
    const double slope = named.dimension->times * y->slopes[i];
    terms.push_back({figures[i], slope});
    const auto* original = intent::find_original(subject.originals, formula.names()[i]);
    if (original == nullptr || !original->accepted) continue;
    const double moved = std::abs(slope * (values[i] - original->accepted->size.base));
    if (moved > farthest) read.moved_by = original;
    farthest = std::max(farthest, moved);
  }
  read.size =
      &pen.linear(named.local + " as measured", named.dimension->kind, formula.typed() + ", all as measured",
                  named.dimension->times * y->value + named.dimension->and_more, terms);
  return read;
}

bool has_its_own_tolerance(const part::Dimension& dimension, const intent::Original& original) {
  const auto duty = original.accepted->duty;
  return !std::holds_alternative<quantity::GeneralTolerance>(dimension.tolerance.form) ||
         part::has_aim(dimension) || duty == part::Duty::kFits || duty == part::Duty::kLocates;
}

void ask_of_dimension(Pen& pen, const Subject& subject, const part::Feature& feature,
                      const part::NamedDimension& named, const formula::Formula& formula) {
  const route::Printing print(subject.route.system);
  const std::string path = fmt::format("{}/{}", part::feature_path(feature.name), named.local);
  const auto read = as_read(pen, subject, named, formula);
  if (!read || read->moved_by == nullptr) return;
  const Figure& nominal = pen.need(path);
  if (!outside_mm(*read->size, pen.need(path + "/least"), pen.need(path + "/most"))) return;
  const Figure& moved = pen.work(
      named.local + " moved", Kind::kLength, "as measured less as accepted",
      [](auto m, auto a) { return m - a; }, *read->size, nominal);
  const double allowed = moved.value > 0.0 ? pen.need(path + "/most").value - nominal.value
                                           : nominal.value - pen.need(path + "/least").value;
  const Figure& measured = pen.need(intent::measured_path(read->moved_by->name));
  ledger::Query query;
  query.id = fmt::format("moved/{} {}", feature.name, named.local);
  query.about = moved.name;
  query.says = fmt::format("{} read {}, accepted {}: {} {} moves {}, {} allowed", read->moved_by->name,
                           print.fine(measured.value), print.fine(read->moved_by->accepted->size.base),
                           feature.name, named.local, print.fine(std::abs(moved.value)), print.fine(allowed));
  query.happens = "It is cut that far off.";
  query.todo = fmt::format("Accept {}, or measure again.", print.fine(measured.value));
  query.serious = has_its_own_tolerance(*named.dimension, *read->moved_by);
  pen.query(std::move(query));
}

// --- an original size accepted with a tolerance -----------------------------------------------------------------------

void ask_of_original(Pen& pen, const Subject& subject, const intent::Original& original) {
  const route::Printing print(subject.route.system);
  const std::string path = intent::original_path(original.name);
  const Figure& measured = pen.ask(intent::measured_path(original.name));
  const auto outside = outside_mm(measured, pen.ask(path + "/least"), pen.ask(path + "/most"));
  if (!outside) return;
  ledger::Query query;
  query.id = fmt::format("moved/original {}", original.name);
  query.about = path + "/leaves over";
  query.says = fmt::format(
      "{} read {}: {} outside {}", original.name, print.fine(measured.value), print.fine(*outside),
      print.limits(pen.need(path + "/least").value, pen.need(path + "/most").value, true));
  query.happens = "What is made to it does not fit.";
  query.todo = "Accept another size, or measure again.";
  query.serious = true;
  pen.query(std::move(query));
}

}  // namespace

void add_moved_queries(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    for (const part::NamedDimension& named : part::dimensions_of(feature)) {
      const formula::Formula* formula = formula_with_accepted(*subject, *named.dimension);
      if (formula == nullptr) continue;
      stages.push_back(query_stage(subject, "moved " + named.local, feature.name,
                                   [subject, &feature, named, formula](Pen& pen) {
                                     ask_of_dimension(pen, *subject, feature, named, *formula);
                                   }));
    }
  }
  for (const intent::Original& original : subject->originals.all) {
    if (!original.accepted ||
        std::holds_alternative<quantity::GeneralTolerance>(original.accepted->tolerance.form))
      continue;
    stages.push_back(query_stage(subject, "moved original", original.name, [subject, &original](Pen& pen) {
      ask_of_original(pen, *subject, original);
    }));
  }
}

}  // namespace sparewright::judge
