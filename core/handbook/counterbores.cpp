#include "core/handbook/counterbores.hpp"

#include <array>

#include "core/handbook/lookup.hpp"
#include "core/handbook/screw_size.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr Counterbore kCounterbores[] = {
#include "generated/core/handbook/counterbores.inc"
};

}  // namespace

std::string_view name_of(CounterboreSet set) {
  constexpr std::array<std::string_view, 5> kNames{"ASME B18.3 appendix", "web chart, tight",
                                                   "in-house chart, close", "in-house chart, free",
                                                   "metric, DIN 974 type"};
  return kNames.at(static_cast<std::size_t>(set));
}

base::Result<std::vector<Counterbore>> counterbores(std::string_view size) {
  const auto wanted = read_screw_size(size);
  if (!wanted) return tl::unexpected(wanted.error());
  std::vector<Counterbore> out;
  for (const Counterbore& row : kCounterbores) {
    if (row.size == wanted->name) out.push_back(row);
  }
  if (!out.empty()) return out;
  return not_tabled_among("the counterbore", wanted->name,
                          names_of(kCounterbores, [](const Counterbore& row) { return row.size; }));
}

base::Result<Counterbore> counterbore(std::string_view size) {
  const auto every = counterbores(size);
  if (!every) return tl::unexpected(every.error());
  return every->front();  // the table has the appendix first; a metric size is in one set only
}

base::Result<Counterbore> counterbore(std::string_view size, CounterboreSet set) {
  const auto every = counterbores(size);
  if (!every) return tl::unexpected(every.error());
  std::vector<std::string> sets;
  for (const Counterbore& row : *every) {
    if (row.set == set) return row;
    sets.emplace_back(name_of(row.set));
  }
  return not_tabled_among("the counterbore of the " + std::string(name_of(set)), size, sets);
}

}  // namespace sparewright::handbook
