#include "core/survey/corrected.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <utility>

#include <fmt/format.h>

#include "core/survey/ways.hpp"

namespace sparewright::survey {
namespace {

using quantity::Typed;

// JCGM 100:2008, 4.3.7: a rectangular distribution of half-width a has the standard deviation a/sqrt(3).
double of_rectangle(double half_width) {
  return half_width * std::numbers::inv_sqrt3;
}

// The mean is taken about the first repeat, so that equal repeats give their own value to the last bit.
double mean_of(const std::vector<Typed>& repeats) {
  const double first = repeats.front().base;
  double sum = 0.0;
  for (const Typed& repeat : repeats)
    sum += repeat.base - first;
  return first + sum / static_cast<double>(repeats.size());
}

// Experimental standard deviation of the mean, JCGM 100:2008, 4.2.2 and 4.2.3. At least two repeats.
double scatter_of_mean(const std::vector<Typed>& repeats, double mean) {
  double squares = 0.0;
  for (const Typed& repeat : repeats)
    squares += (repeat.base - mean) * (repeat.base - mean);
  const auto n = static_cast<double>(repeats.size());
  return std::sqrt(squares / (n - 1.0) / n);
}

std::string source_of(const Reading& reading, const Instrument& instrument, const ZeroError& zero) {
  std::string words = fmt::format("{}, {}", instrument.name, name_of(jaws_of(reading)));
  if (!reading.place.empty()) words += ", at: " + reading.place;
  if (reading.condition != Condition::kSound) words += fmt::format(" ({})", name_of(reading.condition));
  if (reading.trial) words += fmt::format("; what was tried: it {}", name_of(*reading.trial));
  if (reading.transfer) words += fmt::format("; set with a gauge good to {}", reading.transfer->typed);
  if (const double by_itself = row_of(reading.way).own_mm; by_itself > 0.0 && !reading.transfer)
    words += fmt::format("; {}, by itself good to {:.4f} in (common practice)", name_of(reading.way),
                         by_itself / 25.4);
  if (zero.found != 0.0) words += "; less " + zero.typed + ", its reading at zero";
  const std::size_t n = reading.repeats.size();
  words += n == 1 ? "; read once, so its scatter is not known" : fmt::format("; mean of {}", n);
  return words;
}

}  // namespace

ZeroError zero_error_of(const Instrument& instrument, Jaws jaws) {
  const auto pair = std::find_if(instrument.jaw_pairs.begin(), instrument.jaw_pairs.end(),
                                 [&](const JawPair& candidate) { return candidate.jaws == jaws; });
  const bool has_pair = pair != instrument.jaw_pairs.end();
  const std::optional<Typed>& found = has_pair && pair->zero_found ? pair->zero_found : instrument.zero_found;
  const std::optional<Typed>& within =
      has_pair && pair->zero_within ? pair->zero_within : instrument.zero_within;
  ZeroError zero;
  zero.cause = fmt::format("instrument/{}/{}/zero", instrument.name, name_of(jaws));
  if (found) {
    zero.found = found->base;
    zero.typed = found->typed;
  }
  if (within) {
    zero.within = within->base;
    zero.why = "as stated in the shop text";
    return zero;
  }
  zero.is_default = true;
  const bool checked = found.has_value() || instrument.zero_checked;
  zero.within = checked ? instrument.reads.base / 2.0 : instrument.good_to.base;
  zero.why = checked ? "half a step of its resolution, since its zero was checked"
                     : "its whole permissible error, since its zero was not checked";
  return zero;
}

Corrected corrected(const Reading& reading, const Instrument& instrument) {
  const bool has_zero = !row_of(reading.way).is_difference;
  const ZeroError zero = has_zero ? zero_error_of(instrument, jaws_of(reading)) : ZeroError{};
  const double mean = mean_of(reading.repeats);
  Corrected out;
  out.value = mean - zero.found;
  const std::string own = "reading/" + reading.name;
  ledger::Shares causes{{own + "/good to", of_rectangle(instrument.good_to.base)},
                        {own + "/resolution", of_rectangle(instrument.reads.base / 2.0)}};
  if (has_zero) causes.push_back({zero.cause, of_rectangle(zero.within)});
  if (reading.transfer) causes.push_back({own + "/transfer", of_rectangle(reading.transfer->base)});
  if (const double by_itself = row_of(reading.way).own_mm; by_itself > 0.0 && !reading.transfer)
    causes.push_back({own + "/way", of_rectangle(by_itself)});
  if (const std::size_t n = reading.repeats.size(); n > 1) {
    causes.push_back({own + "/scatter", scatter_of_mean(reading.repeats, mean), static_cast<double>(n - 1)});
  }
  out.shares = ledger::in_order(std::move(causes));
  for (const Typed& repeat : reading.repeats) {
    if (!out.typed.empty()) out.typed += ", ";
    out.typed += repeat.typed;
  }
  out.source = source_of(reading, instrument, zero);
  return out;
}

}  // namespace sparewright::survey
