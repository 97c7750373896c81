// The jobs and shops under tests/jobs, judged, and the lines of a setup's sheet.
#pragma once

#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "core/route/sheet.hpp"
#include "judged_job.hpp"

namespace sparewright::tests {

inline std::string text_of_job(const std::string& file) {
  std::ostringstream text;
  text
      << std::ifstream(std::string(SPAREWRIGHT_SOURCE_DIR) + "/tests/jobs/" + file, std::ios::binary).rdbuf();
  EXPECT_FALSE(text.str().empty()) << file;
  return text.str();
}

// `from` by `to`, which has to be there.
inline std::string with(std::string text, const std::string& from, const std::string& to) {
  const auto at = text.find(from);
  EXPECT_NE(at, std::string::npos) << from;
  if (at != std::string::npos) text.replace(at, from.size(), to);
  return text;
}

inline route::SetupSheet sheet_of(Judged& job, int op) {
  const auto sheet = job.ledger.value<route::SetupSheet>("op " + std::to_string(op) + "/sheet");
  if (!sheet) {
    ADD_FAILURE() << "no sheet of op " << op;
    return {};
  }
  return *sheet;
}

inline std::vector<route::Line> lines_of(Judged& job, int op) {
  std::vector<route::Line> lines;
  for (const route::Item& item : sheet_of(job, op).items) {
    if (const auto* line = std::get_if<route::Line>(&item)) lines.push_back(*line);
  }
  return lines;
}

// All that stands between the lines and at the STOPs, one a line.
inline std::string notes_of(Judged& job, int op) {
  std::string all;
  for (const route::Item& item : sheet_of(job, op).items) {
    if (const auto* note = std::get_if<route::Note>(&item)) all += note->says + "\n";
    if (const auto* stop = std::get_if<route::Stop>(&item)) {
      all += stop->says + "\n";
      for (const route::ProofReading& reading : stop->readings)
        all += reading.what + " " + reading.expect + "\n";
      all += stop->rule + "\n";
    }
  }
  return all;
}

inline double mm(Judged& job, const std::string& figure) {
  const auto got = job.ledger.get(figure);
  EXPECT_TRUE(got.known()) << figure;
  return got.value;
}

}  // namespace sparewright::tests
