#include "core/handbook/inch_fits.hpp"

#include <algorithm>
#include <string>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr InchFit kInchFits[] = {
#include "generated/core/handbook/inch_fits.inc"
};

}  // namespace

base::Result<InchFit> inch_fit(std::string_view fit, Diameter nominal) {
  std::string name = folded(fit);
  std::transform(name.begin(), name.end(), name.begin(),
                 [](char c) { return quantity::is_lower(c) ? static_cast<char>(c - 'a' + 'A') : c; });
  const InchFit* first = nullptr;
  const InchFit* last = nullptr;
  for (const InchFit& row : kInchFits) {
    if (row.fit != name) continue;
    if (first == nullptr) first = &row;
    last = &row;
    if (in_range(nominal, {row.over}, {row.up_to})) return row;
  }
  if (first == nullptr) {
    return unknown(fit, "inch fit", names_of(kInchFits, [](const InchFit& row) { return row.fit; }));
  }
  return not_tabled("the fit " + name, fmt::format("{:.4f} in", nominal.in(unit::inch)),
                    fmt::format("nominal sizes over {:.2f} up to {:.2f} in", first->over.in(unit::inch),
                                last->up_to.in(unit::inch)));
}

}  // namespace sparewright::handbook
