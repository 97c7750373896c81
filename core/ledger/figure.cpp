#include "core/ledger/figure.hpp"

namespace sparewright::ledger {

std::string_view name_of(Origin origin) {
  switch (origin) {
    case Origin::kReading:
      return "reading";
    case Origin::kStandard:
      return "standard";
    case Origin::kChoice:
      return "choice";
    case Origin::kDefault:
      return "default";
    case Origin::kWorked:
      return "worked out";
  }
  return "";
}

std::string_view name_of(Bound bound) {
  switch (bound) {
    case Bound::kExact:
      return "";
    case Bound::kAtLeast:
      return "at least";
    case Bound::kAtMost:
      return "at most";
    case Bound::kNeither:
      return "not bounded";
  }
  return "";
}

Bound scaled(Bound bound, double slope) {
  if (bound == Bound::kExact || slope > 0.0) return bound;
  if (slope == 0.0) return Bound::kNeither;
  if (bound == Bound::kAtLeast) return Bound::kAtMost;
  if (bound == Bound::kAtMost) return Bound::kAtLeast;
  return bound;
}

Bound joined(Bound a, Bound b) {
  if (a == Bound::kExact || a == b) return b;
  if (b == Bound::kExact) return a;
  return Bound::kNeither;
}

void make_empty(Figure& figure) {
  figure.kind = quantity::Kind::kNumber;
  figure.value = 0.0;
  figure.shares.clear();
  figure.bound = Bound::kExact;
  figure.origin = Origin::kWorked;
  figure.formula.clear();
  figure.inputs.clear();
  figure.source.clear();
  figure.typed.clear();
  figure.missing.clear();
  figure.flips_after.reset();
}

base::Fingerprint fingerprint(const Figure& figure) {
  base::Hasher h;
  h.add(figure.name.print()).add(static_cast<int>(figure.kind)).add(figure.value);
  h.add(static_cast<std::uint64_t>(figure.shares.size()));
  for (const Share& share : figure.shares)
    h.add(share.cause.print()).add(share.amount).add(share.degrees_of_freedom);
  h.add(static_cast<int>(figure.bound)).add(static_cast<int>(figure.origin)).add(figure.formula);
  h.add(static_cast<std::uint64_t>(figure.inputs.size()));
  for (const base::Name input : figure.inputs)
    h.add(input.print());
  h.add(figure.source).add(figure.typed);
  h.add(static_cast<std::uint64_t>(figure.missing.size()));
  for (const std::string& root : figure.missing)
    h.add(root);
  h.add(figure.flips_after.has_value()).add(figure.flips_after.value_or(0.0));
  return h.done();
}

}  // namespace sparewright::ledger
