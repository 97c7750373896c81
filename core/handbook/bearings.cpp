#include "core/handbook/bearings.hpp"

#include <array>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr Bearing kBearings[] = {
#include "generated/core/handbook/bearings.inc"
};

struct RingRow {
  FitSide side;
  Diameter over;
  Diameter up_to;
  Length lower;
  Source source;
};
constexpr RingRow kRings[] = {
#include "generated/core/handbook/bearing_tolerances.inc"
};

// Whether what follows a number can be a suffix: nothing, or -2RS, ZZ, 2RS, C3, with no further digits of a
// number.
bool is_suffix(std::string_view rest) {
  if (rest.empty()) return true;
  const std::size_t start = rest.find_first_not_of(" -");
  if (start == std::string_view::npos) return false;
  rest.remove_prefix(start);
  return !quantity::is_digit(rest.front()) || rest.starts_with("2rs") || rest.starts_with("2z");
}

}  // namespace

std::span<const Bearing> bearings() {
  return kBearings;
}

base::Result<FoundBearing> find_bearing(std::string_view text) {
  const std::string typed = folded(text);
  for (const Bearing& bearing : kBearings) {
    if (!typed.starts_with(bearing.number)) continue;
    std::string_view rest = std::string_view(typed).substr(bearing.number.size());
    if (!is_suffix(rest)) continue;
    if (rest.empty()) return FoundBearing{bearing, {}};
    const std::string_view shown =
        quantity::trimmed(text).substr(quantity::trimmed(text).size() - rest.size());
    return FoundBearing{bearing,
                        fmt::format("'{}' behind the number changes no fit", quantity::trimmed(shown))};
  }
  return unknown(text, "bearing", names_of(kBearings, [](const Bearing& one) { return one.number; }));
}

base::Result<RingLimits> bearing_ring_limits(FitSide side, Diameter size) {
  for (const RingRow& row : kRings) {
    if (row.side != side || !in_range(size, {row.over}, {row.up_to})) continue;
    return RingLimits{{quantity::as_diameter(row.lower + size), size}, row.source};
  }
  const bool bore = side == FitSide::kHole;
  return not_tabled(bore ? "the tolerance of a bearing's bore" : "the tolerance of a bearing's outside",
                    fmt::format("{} mm", size.in(unit::millimetre)),
                    bore ? "bores over 2.5 up to 180 mm" : "outsides over 2.5 up to 250 mm");
}

base::Result<Diameter> bore_of_code(int code) {
  constexpr std::array kFirst{10, 12, 15, 17};
  constexpr int kLast = 96;
  if (code >= 0 && code < static_cast<int>(kFirst.size())) {
    return Diameter::of(kFirst.at(static_cast<std::size_t>(code)), unit::millimetre);
  }
  if (code > 0 && code <= kLast) return Diameter::of(5 * code, unit::millimetre);
  return base::fail(base::Code::kOutsideDomain, std::to_string(code), "00 to 96", "a bearing's bore code");
}

}  // namespace sparewright::handbook
