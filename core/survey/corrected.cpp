#include "core/survey/corrected.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <utility>

#include <fmt/format.h>

#include "core/survey/at_temperature.hpp"
#include "core/survey/instrument_error.hpp"
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

double counted(const std::vector<Typed>& repeats, Counts counts) {
  if (counts == Counts::kMean) return mean_of(repeats);
  const auto [least, most] = std::minmax_element(
      repeats.begin(), repeats.end(), [](const Typed& a, const Typed& b) { return a.base < b.base; });
  return counts == Counts::kLeast ? least->base : most->base;
}

std::string count_words(std::size_t n, const Instrument& instrument, Counts counts) {
  if (n > 1 && counts == Counts::kMean) return fmt::format("; mean of {}", n);
  if (n > 1) return fmt::format("; the {} of {}", counts == Counts::kLeast ? "least" : "most", n);
  if (instrument.comes_back)
    return fmt::format("; read once, its scatter taken as the instrument's, {}",
                       instrument.comes_back->typed);
  return "; read once, so its scatter is not known";
}

std::string source_of(const Reading& reading, const Instrument& instrument, const ZeroError& zero,
                      const ErrorLimit& limit, Counts counts) {
  std::string words = fmt::format("{}, {}", instrument.name, name_of(jaws_of(reading)));
  if (!limit.source.empty()) words += fmt::format(", taken to be good to {} ({})", limit.typed, limit.source);
  if (!reading.place.empty()) words += ", at: " + reading.place;
  if (reading.condition != Condition::kSound) words += fmt::format(" ({})", name_of(reading.condition));
  if (reading.trial) words += fmt::format("; what was tried: it {}", name_of(*reading.trial));
  if (reading.transfer) words += fmt::format("; set with a gauge good to {}", reading.transfer->typed);
  if (const double by_itself = row_of(reading.way).own_mm; by_itself > 0.0 && !reading.transfer)
    words += fmt::format("; {}, by itself good to {:.4f} in (common practice)", name_of(reading.way),
                         by_itself / 25.4);
  if (zero.found != 0.0) words += "; less " + zero.typed + ", its reading at zero";
  if (instrument.shows == Shows::kHalfOfIt) words += "; it shows half of the size";
  if (instrument.shows == Shows::kTwiceIt) words += "; it shows twice the size";
  return words + count_words(reading.repeats.size(), instrument, counts);
}

// What repeats of one place differ by: as they do, or as the instrument is said to, whichever is more. One that counts alone
// differs by what the instrument does.
std::optional<ledger::Share> scatter_of(const Reading& reading, const Instrument& instrument, double mean,
                                        Counts counts) {
  const std::size_t n = counts == Counts::kMean ? reading.repeats.size() : 1;
  const std::string own = "reading/" + reading.name;
  std::optional<ledger::Share> seen;
  if (n > 1) seen = {own + "/scatter", scatter_of_mean(reading.repeats, mean), static_cast<double>(n - 1)};
  if (!instrument.comes_back) return seen;
  const double said = of_rectangle(instrument.comes_back->base) / std::sqrt(static_cast<double>(n));
  if (seen && seen->amount > said) return seen;
  return ledger::Share{own + "/comes back", said};
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
  zero.within = checked ? instrument.reads.base / 2.0 : error_limit(instrument, jaws, 0.0).half_width;
  zero.why = checked ? "half a step of its resolution, since its zero was checked"
                     : "its whole permissible error, since its zero was not checked";
  return zero;
}

Counts what_counts(const Reading& reading) {
  if (reading.condition != Condition::kWorn || reading.trial) return Counts::kMean;
  const ledger::Bound bound = bound_of(reading);
  if (bound == ledger::Bound::kAtLeast) return Counts::kMost;
  return bound == ledger::Bound::kAtMost ? Counts::kLeast : Counts::kMean;
}

Counts most_worn(const Reading& reading) {
  const Counts least_worn = what_counts(reading);
  if (least_worn == Counts::kMean) return Counts::kMean;
  return least_worn == Counts::kMost ? Counts::kLeast : Counts::kMost;
}

bool has_most_worn(const Reading& reading) {
  return reading.repeats.size() > 1 && most_worn(reading) != Counts::kMean;
}

Corrected corrected(const Reading& reading, const Instrument& instrument) {
  return corrected(reading, instrument, what_counts(reading));
}

Corrected corrected(const Reading& reading, const Instrument& instrument, Counts counts) {
  const bool has_zero = !row_of(reading.way).is_difference;
  const Jaws jaws = jaws_of(reading);
  const ZeroError zero = has_zero ? zero_error_of(instrument, jaws) : ZeroError{};
  const double read = counted(reading.repeats, counts);
  const ErrorLimit limit = error_limit(instrument, jaws, read);
  const std::string own = "reading/" + reading.name;
  ledger::Shares causes{{own + "/good to", of_rectangle(limit.half_width)},
                        {own + "/resolution", of_rectangle(instrument.reads.base / 2.0)}};
  if (has_zero) causes.push_back({zero.cause, of_rectangle(zero.within)});
  if (reading.transfer) causes.push_back({own + "/transfer", of_rectangle(reading.transfer->base)});
  if (const double by_itself = row_of(reading.way).own_mm; by_itself > 0.0 && !reading.transfer)
    causes.push_back({own + "/way", of_rectangle(by_itself)});
  if (const auto scatter = scatter_of(reading, instrument, read, counts)) causes.push_back(*scatter);
  Corrected out;
  const double factor = size_of_shown(instrument.shows);
  out.value = factor * (read - zero.found);
  for (ledger::Share& share : causes)
    share.amount *= factor;
  for (const Typed& repeat : reading.repeats) {
    if (!out.typed.empty()) out.typed += ", ";
    out.typed += repeat.typed;
  }
  out.source = source_of(reading, instrument, zero, limit, counts);
  if (const auto twenty = at_temperature(out.value, reading, instrument)) {
    out.value = twenty->value;
    causes.insert(causes.end(), twenty->shares.begin(), twenty->shares.end());
    out.source += twenty->words;
  }
  out.shares = ledger::in_order(std::move(causes));
  return out;
}

}  // namespace sparewright::survey
