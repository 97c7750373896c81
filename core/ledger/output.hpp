// What one run of a stage wrote and asked. Never changed after the run.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <typeindex>
#include <vector>

#include "core/ledger/figure.hpp"
#include "core/ledger/verdict.hpp"

namespace sparewright::ledger {

struct PublishedValue {
  std::shared_ptr<const void> value;
  std::type_index type{typeid(void)};
  base::Fingerprint print;
};

struct Output {
  std::map<std::string, Figure, std::less<>> figures;
  std::map<std::string, base::Fingerprint, std::less<>> prints;  // of the figures
  std::map<std::string, PublishedValue, std::less<>> values;
  std::vector<Verdict> verdicts;
  std::vector<Query> queries;
  std::vector<std::string> missing;  // why the stage ended early; empty where it did not
};

// What a stage asked, and the fingerprint of the answer it got.
struct Question {
  enum class Of { kFigure, kValue, kNames, kReplacement };
  Of of = Of::kFigure;
  std::string name;
  base::Fingerprint answer;
};

// One run: what was written and what was asked on the way.
struct Memo {
  Output output;
  std::vector<Question> questions;
};

}  // namespace sparewright::ledger
