// Which sizes hang on readings that are asked about. Used inside this room only.
#pragma once

#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/job/job.hpp"
#include "core/ledger/ledger.hpp"
#include "core/survey/measure_up.hpp"

namespace sparewright::app {

// The queries about readings and touches, as job::queries() has them.
[[nodiscard]] std::vector<ledger::Query> queries_of_readings(const job::Job& job, ledger::Ledger& ledger);

// A size hangs on a reading that is of it, or of which a tenth or more of an error goes into it: a choice made here, so that a
// zero shared with a doubtful reading does not put every size in question.
inline constexpr double kHangs = 0.1;

class Questioned {
 public:
  Questioned(const job::Job& job, ledger::Ledger& ledger);

  // The names of the open serious queries about the readings and touches it hangs on: repeats apart, a touch misread, a unit in
  // doubt. Not those of readings that contradict each other: of these the size comes out without (survey/without).
  [[nodiscard]] std::vector<std::string> about(std::string_view dimension) const;

 private:
  // What a query asks about: a reading or what touches told; or the dimension itself.
  struct Asked {
    std::vector<std::string> readings;
    std::string dimension;
    std::string query;
  };
  void add_touches_of(const std::string& form, std::vector<std::string>& readings) const;
  [[nodiscard]] bool hangs_on(std::string_view dimension, const std::string& reading) const;

  const job::Job& job_;
  std::shared_ptr<const survey::MeasuredUp> report_;
  std::vector<Asked> asked_;
};

}  // namespace sparewright::app
