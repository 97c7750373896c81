#include "core/job/original_text.hpp"

#include <algorithm>
#include <utility>

#include "core/job/place_text.hpp"
#include "core/job/vocabulary.hpp"

namespace sparewright::job {
namespace {

using base::Code;
using intent::Original;
using intent::Originals;
using intent::Role;
using text::Node;
using text::TableReader;

Original* find(Originals& originals, std::string_view name) {
  const auto found = std::find_if(originals.all.begin(), originals.all.end(),
                                  [&](const Original& one) { return one.name == name; });
  return found == originals.all.end() ? nullptr : &*found;
}

void tell_unknown(const TableReader& in, const Node& node, std::string_view name,
                  const Originals& originals) {
  std::vector<std::string> known;
  for (const Original& one : originals.all)
    known.push_back(one.name);
  auto failure = text::failure_at(node, Code::kNotInTheJob, name, base::known_words(name, known));
  failure.subject = "measured length or diameter";
  in.problems().add(std::move(failure));
}

// A fit that the handbook does not have for this size is told now, at its place.
void check_fit(const TableReader& in, const Node& node, const intent::Accepted& accepted) {
  const auto* fit = std::get_if<quantity::FitClass>(&accepted.tolerance.form);
  if (fit == nullptr) return;
  const auto tabled = part::fit_deviations(fit->name, accepted.size.diameter(), part::CutMakesIt::kLarger);
  if (!tabled) in.problems().add(text::located(tabled.error(), node));
}

// The size at a node, and its tolerance where that is written with it.
std::optional<intent::Accepted> read_size(const TableReader& in, const Node& node, quantity::Kind kind) {
  auto sized = in.problems().keep(text::read_sized(node, kind, in.system()));
  if (!sized) return std::nullopt;
  if (!(sized->nominal.base > 0.0)) {
    in.problems().add(text::failure_at(node, Code::kSizeNotPositive, sized->nominal.typed, "more than 0"));
    return std::nullopt;
  }
  intent::Accepted accepted;
  accepted.size = std::move(sized->nominal);
  accepted.tolerance = std::move(sized->tolerance);
  accepted.typed = std::move(sized->typed);
  return accepted;
}

void read_tolerance(const TableReader& in, intent::Accepted& accepted, quantity::Kind kind) {
  const auto node = in.node().find("tol");
  if (!node) return;
  if (!std::holds_alternative<quantity::GeneralTolerance>(accepted.tolerance.form)) {
    auto failure =
        text::failure_at(*node, Code::kNameTwice, node->typed(), "one tolerance, in size or in tol");
    failure.subject = "tolerance";
    in.problems().add(std::move(failure));
  }
  accepted.tolerance = in.tolerance("tol", kind).value_or(quantity::Tolerance{});
}

void read_table(const TableReader& in, Original& original, const Originals& originals) {
  const auto size = in.node().find("size");
  original.mate = in.text("mate").value_or("");
  if (!size && original.mate.empty()) return need_key(in, "size");
  if (!original.mate.empty()) {
    const bool there = intent::find_original(originals, original.mate) != nullptr;
    if (!there || original.mate == original.name) {
      tell_unknown(in, *in.node().find("mate"), original.mate, originals);
      original.mate.clear();
    }
  }
  if (!size) {
    for (const char* key : {"tol", "duty"}) {
      if (in.node().find(key)) return need_key(in, "size");
    }
    return;
  }
  original.accepted = read_size(in, *size, original.kind);
  if (!original.accepted) return;
  read_tolerance(in, *original.accepted, original.kind);
  original.accepted->duty = in.word("duty", kDuties);
  check_fit(in, *size, *original.accepted);
}

// One of a pair has to be a hole, or the other a shaft.
void tell_unclear_pair(const TableReader& in, const Original& original, const Originals& originals) {
  if (original.mate.empty()) return;
  const Original& mate = *intent::find_original(originals, original.mate);
  if (original.role != mate.role) return;
  const auto table = in.table(original.name);
  in.problems().add(text::failure_at(
      table ? *table->node().find("mate") : in.node(), Code::kValueNotAccepted, original.mate,
      original.role == Role::kHole    ? "a shaft: both are measured between metal"
      : original.role == Role::kShaft ? "a hole: both are measured over metal"
                                      : "a pair of which one is read 'inside' and the other 'outside'"));
}

// A year of four figures, in which machines were made.
intent::Machine read_machine(const TableReader& in) {
  constexpr std::int64_t kFirst = 1750;
  constexpr std::int64_t kLast = 2100;
  intent::Machine machine;
  machine.made_in = in.word("made_in", kCountries);
  const auto year = in.whole("made_about");
  if (year && (*year < kFirst || *year > kLast)) {
    in.problems().add(text::failure_at(*in.node().find("made_about"), Code::kValueNotAccepted,
                                       std::to_string(*year), "a year, 1750 to 2100"));
  } else if (year) {
    machine.made_about = static_cast<int>(*year);
  }
  return machine;
}

}  // namespace

Originals read_originals(const TableReader& job, const survey::Survey& survey) {
  Originals originals = intent::originals_of(survey);
  originals.machine = read_machine(*job.table("job"));
  const auto in = job.table("original");
  if (!in) return originals;
  for (const Node& node : in->node()) {
    const std::string name(node.key());
    Original* original = find(originals, name);
    if (original == nullptr) {
      tell_unknown(*in, node, name, originals);
    } else if (const auto table = in->table(name)) {
      read_table(*table, *original, originals);
    } else {
      original->accepted = read_size(*in, node, original->kind);
      if (original->accepted) check_fit(*in, node, *original->accepted);
    }
  }
  for (const Original& original : originals.all)
    tell_unclear_pair(*in, original, originals);
  return originals;
}

}  // namespace sparewright::job
