// What is to be measured, with what, and whether it was measured well enough: the measuring of a job as stages.
//
//   "measuring/plan"           value measuring/plan/rows, Plan: what the part needs and which instrument of the shop reaches its tolerance
//   "measuring/met"            value measuring/met/rows, Met: each fit as it can be measured, and which doubt to make smaller where it is not proven
//   "plug gauge/<hole>"        of a fit finer than the shop's instruments: the steps of a plug gauge (plug_gauge.hpp)
//   "as found"                 value as found/sheet, a route::ListSheet: what to write down before the old part comes apart
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/hash.hpp"
#include "core/judge/judge.hpp"
#include "core/ledger/ledger.hpp"
#include "core/survey/planning.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::measuring {

// What the stages are made of.
struct Subject {
  judge::Subject judged;
  survey::Survey survey;
  bool has_lathe = false;  // one that can be used: a plug gauge can be turned
};

// One size that has to be measured.
struct PlanRow {
  std::string what;               // "idler_pin"; "pivot bore, diameter"
  bool of_new_part = false;       // to be measured on the finished part; else on the old part or a mate
  std::string needed_for;         // "pivot bore, diameter": the first that hangs on it; empty of the new part
  std::optional<double> size_mm;  // where it is known already; of an angle in radians
  std::optional<double> tolerance_mm;  // from limit to limit, the narrowest of those that hang on it
  quantity::Kind kind = quantity::Kind::kLength;
  std::vector<survey::Reach> with;  // the instruments of the shop, the best first
  // OK: one reaches it. CLOSE: one barely does. NOT KNOWN: none does, or its tolerance is not known.
  ledger::State state = ledger::State::kNotKnown;
  std::string says;  // one sentence
};

struct Plan {
  std::vector<PlanRow>
      rows;  // old part and mates by their names, then the new part in the order of its features
};

// A doubt behind a fit, and what to do about it.
struct Remedy {
  survey::Doubt doubt;
  std::string of;    // "the reading 'idler pin'", "the zero of caliper 6, inside jaws"
  std::string todo;  // "read it 8 times", "an instrument good to 0.0002"; empty where it need not be smaller
};

// A fit, held against what is asked at 95 %.
struct MetRow {
  std::string feature;
  std::string mate;
  ledger::State state = ledger::State::kNotKnown;
  double clearance_mm =
      0.0;  // as made and measured with the instruments named; these mean nothing where it is NOT KNOWN
  double unknown_mm = 0.0;  // 19 times in 20
  double least_mm = 0.0;    // asked
  double most_mm = 0.0;
  std::vector<Remedy> remedies;      // what it hangs on, the largest first
  std::vector<std::string> missing;  // for NOT KNOWN
  std::string says;                  // one sentence
};

struct Met {
  std::vector<MetRow> rows;
};

inline constexpr const char* kPlan = "measuring/plan/rows";
inline constexpr const char* kMet = "measuring/met/rows";

[[nodiscard]] base::Fingerprint fingerprint(const Plan& plan);
[[nodiscard]] base::Fingerprint fingerprint(const Met& met);

[[nodiscard]] std::vector<ledger::Stage> stages(const Subject& subject);

}  // namespace sparewright::measuring
