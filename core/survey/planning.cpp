#include "core/survey/planning.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include <fmt/format.h>

#include "core/survey/corrected.hpp"
#include "core/survey/instrument_error.hpp"

namespace sparewright::survey {
namespace {

// What one reading of that size does not know, 19 times in 20.
double unknown_of(const Instrument& instrument, Jaws jaws, double size) {
  Reading reading;
  reading.name = "one";
  reading.jaws = jaws;
  quantity::Typed shown = instrument.reads;
  shown.base = size / size_of_shown(instrument.shows);
  reading.repeats = {shown};
  return ledger::expanded_uncertainty(corrected(reading, instrument).shares);
}

Reaches graded(double unknown, const std::optional<double>& tolerance) {
  if (!tolerance || 4.0 * unknown <= *tolerance) return Reaches::kYes;
  return 2.0 * unknown <= *tolerance ? Reaches::kBarely : Reaches::kTooCoarse;
}

Reach reach_of(const Instrument& instrument, const Wanted& wanted) {
  const std::vector<Jaws> faces = faces_of(instrument);
  Reach out;
  out.instrument = instrument.name;
  out.jaws = wanted.jaws.value_or(faces.front());
  const double size = wanted.size.value_or(0.0);
  out.unknown = unknown_of(instrument, out.jaws, size);
  if (std::find(faces.begin(), faces.end(), out.jaws) == faces.end()) {
    out.why = fmt::format("has no {}", name_of(out.jaws));
    return out;
  }
  out.range_known = wanted.size.has_value() && instrument.to.has_value();
  if (wanted.size && !in_range(instrument, size / size_of_shown(instrument.shows))) {
    out.why = "measures " + range_words(instrument);
    return out;
  }
  out.reaches = graded(out.unknown, wanted.tolerance);
  return out;
}

// What a cause belongs to.
std::string group_of(const std::string& cause) {
  constexpr std::string_view kReading = "reading/";
  if (!cause.starts_with(kReading)) return cause;
  return cause.substr(0, cause.find('/', kReading.size()));
}

// All that is not known, where one group's shares are `keep` of what they are.
double expanded_with(const ledger::Shares& shares, const std::string& group, double keep) {
  ledger::Shares some;
  for (const ledger::Share& share : shares) {
    const double factor = group_of(share.cause.text()) == group ? keep : 1.0;
    if (factor * share.amount != 0.0)
      some.push_back({share.cause, factor * share.amount, share.degrees_of_freedom});
  }
  return ledger::expanded_uncertainty(some);
}

std::optional<double> keep_of(const ledger::Shares& shares, const std::string& group, double wanted) {
  if (expanded_with(shares, group, 1.0) <= wanted) return 1.0;
  if (expanded_with(shares, group, 0.0) > wanted) return std::nullopt;
  double low = 0.0;
  double high = 1.0;
  for (int halvings = 0; halvings < 50; ++halvings) {
    const double middle = (low + high) / 2.0;
    (expanded_with(shares, group, middle) <= wanted ? low : high) = middle;
  }
  return low;
}

}  // namespace

std::vector<Reach> reaches(const std::vector<Instrument>& instruments, const Wanted& wanted) {
  std::vector<Reach> all;
  for (const Instrument& instrument : instruments) {
    if (quantity::dimension_of(instrument.reads.kind) == quantity::dimension_of(wanted.kind))
      all.push_back(reach_of(instrument, wanted));
  }
  std::stable_sort(all.begin(), all.end(), [](const Reach& a, const Reach& b) {
    return std::tuple(a.reaches, a.unknown) < std::tuple(b.reaches, b.unknown);
  });
  return all;
}

std::vector<Doubt> doubts(const ledger::Shares& shares, double wanted) {
  std::map<std::string, ledger::Shares> groups;
  for (const ledger::Share& share : shares)
    groups[group_of(share.cause.text())].push_back(share);
  const double total = ledger::standard_uncertainty(shares);
  std::vector<Doubt> all;
  for (const auto& [group, own] : groups) {
    Doubt doubt;
    doubt.of = group;
    const auto largest = std::max_element(own.begin(), own.end(), [](const auto& a, const auto& b) {
      return std::abs(a.amount) < std::abs(b.amount);
    });
    doubt.largest = largest->cause.text();
    doubt.largest_now = std::abs(largest->amount);
    doubt.now = ledger::standard_uncertainty(own);
    doubt.part = doubt.now * doubt.now / (total * total);
    doubt.keep = keep_of(shares, group, wanted);
    all.push_back(std::move(doubt));
  }
  std::stable_sort(all.begin(), all.end(), [](const Doubt& a, const Doubt& b) { return a.now > b.now; });
  return all;
}

}  // namespace sparewright::survey
