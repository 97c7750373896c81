#include "core/survey/instrument_error.hpp"

#include <cmath>

#include <fmt/format.h>

namespace sparewright::survey {

ErrorLimit error_limit(const Instrument& instrument, Jaws jaws, double size) {
  const AllowedError* found = nullptr;
  for (const AllowedError& row : instrument.allowed) {
    if (row.jaws && *row.jaws != jaws) continue;
    found = &row;
    if (!row.up_to || std::abs(size) <= *row.up_to) break;
  }
  if (found == nullptr) return {instrument.good_to.base, instrument.good_to.typed, ""};
  return {found->error.base, found->error.typed, found->source};
}

double size_of_shown(Shows shows) {
  switch (shows) {
    case Shows::kTheSize:
      return 1.0;
    case Shows::kHalfOfIt:
      return 2.0;
    case Shows::kTwiceIt:
      return 0.5;
  }
  return 1.0;
}

bool in_range(const Instrument& instrument, double shown) {
  constexpr double kPast = 0.005;
  const double from = instrument.from ? instrument.from->base : 0.0;
  const double past = instrument.to ? kPast * (instrument.to->base - from) : kPast * from;
  if (instrument.from && shown < from - past) return false;
  return !instrument.to || shown <= instrument.to->base + past;
}

namespace {

std::string with_unit(const quantity::Typed& size) {
  return size.unit_given ? size.typed : fmt::format("{} {}", size.typed, size.unit.symbol);
}

}  // namespace

std::string range_words(const Instrument& instrument) {
  if (instrument.from && instrument.to)
    return fmt::format("{} to {}", with_unit(*instrument.from), with_unit(*instrument.to));
  if (instrument.from) return "from " + with_unit(*instrument.from);
  return instrument.to ? "up to " + with_unit(*instrument.to) : std::string();
}

}  // namespace sparewright::survey
