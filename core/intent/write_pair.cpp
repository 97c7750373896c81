#include <utility>

#include <fmt/format.h>

#include "core/intent/writing.hpp"

namespace sparewright::intent {
namespace {

using ledger::Figure;
using ledger::Pen;
using quantity::Kind;

constexpr auto kLess = [](auto hole, auto shaft) { return hole - shaft; };

// What either of the two was made to, else the hole as it is: only the tables' ranges go by it.
double nominal_mm(Pen& pen, const Originals& originals, const Pair& pair, double hole_mm) {
  for (const std::string& name : {pair.shaft, pair.hole}) {
    const Original* original = find_original(originals, name);
    if (original == nullptr) continue;
    if (const auto size = size_made_to_mm(pen, *original)) return *size;
  }
  return hole_mm;
}

const Figure& write_end(Pen& pen, std::string_view local, const Figure& clearance, double way) {
  ledger::Decision end;
  end.kind = Kind::kLength;
  end.value = clearance.value + way * clearance.expanded();
  end.words = fmt::format("the clearance {} what the readings leave open, 19 times in 20",
                          way < 0.0 ? "less" : "and");
  end.inputs = {&clearance};
  end.source = "JCGM 100:2008, 6.2";
  return pen.decide(local, end);
}

void publish(Pen& pen, FitOfPair fit) {
  const base::Fingerprint print = fingerprint(fit);
  pen.publish("fits", std::move(fit), print);
}

void write_measured(Pen& pen, const Originals& originals, const Pair& pair) {
  const Figure& hole = pen.need(measured_path(pair.hole));
  const Figure& shaft = pen.need(measured_path(pair.shaft));
  const Figure& clearance =
      pen.work("clearance", Kind::kLength, "the hole less the shaft, both as measured", kLess, hole, shaft);
  if (clearance.bound != ledger::Bound::kExact) return;  // worn: what it was made with cannot be told
  const Figure& least = write_end(pen, "least", clearance, -1.0);
  const Figure& most = write_end(pen, "most", clearance, 1.0);
  FitOfPair fit;
  fit.nominal_mm = nominal_mm(pen, originals, pair, hole.value);
  fit.near = near_fits(fit.nominal_mm, {least.value, most.value});
  fit.made_to = may_be_made_to(hole.value, hole.expanded(), shaft.value, shaft.expanded());
  publish(pen, std::move(fit));
}

void write_as_made(Pen& pen, const Originals& originals, const Pair& pair) {
  const std::string diameter = part::feature_path(pair.hole) + "/diameter";
  const Figure& shaft = pen.need(measured_path(pair.shaft));
  const Figure& least = pen.work("least", Kind::kLength, "the smallest hole less the mate as measured", kLess,
                                 pen.need(diameter + "/least"), shaft);
  const Figure& most = pen.work("most", Kind::kLength, "the largest hole less the mate as measured", kLess,
                                pen.need(diameter + "/most"), shaft);
  if (least.bound != ledger::Bound::kExact) return;
  FitOfPair fit;
  fit.is_measured = false;
  fit.nominal_mm = nominal_mm(pen, originals, pair, pen.need(diameter).value);
  fit.near = near_fits(fit.nominal_mm, {least.value, most.value});
  publish(pen, std::move(fit));
}

}  // namespace

void write_pair(Pen& pen, const Originals& originals, const Pair& pair) {
  if (pair.is_measured) {
    write_worn_pair(pen, pair);
    write_measured(pen, originals, pair);
  } else {
    write_as_made(pen, originals, pair);
  }
}

}  // namespace sparewright::intent
