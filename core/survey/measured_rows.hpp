// What measuring up has found, one row for each dimension, as a table shows it. It only reads the ledger.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/ledger/ledger.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::survey {

// What one reading, enclosed trial or known thing has in the variance of a dimension.
struct ReadingsPart {
  std::string name;  // as the network calls it
  double part =
      0.0;  // of the variance; they sum to 1. Negative where what it shares with the others takes some away
};

struct CausesPart {
  std::string cause;  // "instrument/caliper 8/outside jaws/zero"
  double part = 0.0;  // of the variance, 0 to 1
};

struct WithOther {
  std::string dimension;
  double correlation = 0.0;  // -1 to 1
};

struct MeasuredRow {
  ledger::Figure size;  // survey/<dimension>: value, u(), expanded(), k(), bound; or what is missing
  double degrees_of_freedom =
      0.0;               // of u (Welch and Satterthwaite); infinite where every cause is well known
  bool checked = false;  // a reading that is out would show in another
  std::vector<ReadingsPart> by_reading;  // the largest first; 0 left out
  std::vector<CausesPart> by_cause;      // the largest first
  std::vector<WithOther> with_others;    // in the order of the dimensions; uncorrelated ones left out
  std::vector<ledger::Figure> without;   // survey/without/<readings>/<dimension>
  std::vector<ledger::Figure> hangs_on;  // survey/hangs on/<readings>/<dimension>, in the same order
  std::optional<ledger::Figure> now;     // worn/<dimension>/now
  std::optional<ledger::Figure> wear;    // worn/<dimension>/wear
};

// In the order of survey.dimensions. Of a dimension that is not known only `size` says something. The ledger has the stages of
// the survey (survey_stages()).
//
// The part of a reading y_i with the slope s_i in a size x is s_i cov(y_i, x)/u^2(x): JCGM 100:2008, 5.2.2, equation (13),
// its terms gathered by reading.
[[nodiscard]] std::vector<MeasuredRow> measured_rows(ledger::Ledger& ledger, const Survey& survey);

}  // namespace sparewright::survey
