// A keyseat against the handbook's key for its shaft: width by the fits printed, depth from the crest.
#include <algorithm>

#include <fmt/format.h>

#include "core/handbook/parallel_keys.hpp"
#include "core/judge/seat_checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Pen;

void judge_width(Pen& pen, const Subject& subject, const Seat& seat,
                 const handbook::ParallelKeyseat& keyseat) {
  const std::string path = part::feature_path(seat.on) + "/width";
  const double least = pen.need(path + "/least").value;
  const double most = pen.need(path + "/most").value;
  constexpr double kRounding_mm = 1e-6;
  const double width = keyseat.key.width.base();
  const handbook::KeyWidthFit* within = nullptr;
  for (const handbook::KeyWidthFit& fit : keyseat.width_fits) {
    if (least >= width + fit.shaft_width.lower.base() - kRounding_mm &&
        most <= width + fit.shaft_width.upper.base() + kRounding_mm)
      within = &fit;
  }
  if (keyseat.width_fits.empty()) return;
  const handbook::KeyWidthFit& shown = within != nullptr ? *within : keyseat.width_fits.front();
  judge_limits(pen, subject, seat,
               {.check = "keyseat has the width",
                .figure = path,
                .low_mm = width + shown.shaft_width.lower.base(),
                .high_mm = width + shown.shaft_width.upper.base(),
                .source = handbook::cite(shown.source),
                .why = fmt::format("{} {} for a key {}", shown.name, shown.shaft, keyseat.key.name)});
}

// The crest is that of the shaft as it measures.
void judge_depth(Pen& pen, const Subject& subject, const Seat& seat,
                 const handbook::ParallelKeyseat& keyseat) {
  const double crest = keyseat.crest_depth.base();
  judge_limits(pen, subject, seat,
               {.check = "keyseat has the depth",
                .figure = part::feature_path(seat.on) + "/depth",
                .low_mm = crest - keyseat.over_back.upper.base(),
                .high_mm = crest - keyseat.over_back.lower.base(),
                .source = handbook::cite(keyseat.over_back.tolerance_source),
                .why = fmt::format("from the crest, for a key {}", keyseat.key.name)});
}

}  // namespace

void judge_key_seat(Pen& pen, const Subject& subject, const Seat& seat) {
  const Figure& shaft = pen.need(diameter_path(seat.shaft));
  const auto system = subject.route.system == quantity::UnitSystem::kInch ? handbook::KeySystem::kInch
                                                                          : handbook::KeySystem::kMetric;
  const auto diameter = quantity::Diameter::from_base(shaft.value);
  const auto key = handbook::parallel_key(diameter, system);
  const auto keyseat = key ? handbook::parallel_keyseat(*key, diameter) : tl::unexpected(key.error());
  if (!keyseat) {
    return pen.state({.check = "keyseat has the width",
                      .subject = seat.name,
                      .state = ledger::State::kNotKnown,
                      .reason = "no key is tabled for this shaft",
                      .source = "parallel keys as tabled",
                      .todo = keyseat.error().accepted,
                      .missing = {"a key for the shaft"}});
  }
  judge_width(pen, subject, seat, *keyseat);
  judge_depth(pen, subject, seat, *keyseat);
}

}  // namespace sparewright::judge
