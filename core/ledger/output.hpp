// What one run of a stage wrote and asked. Never changed after the run.
#pragma once

#include <map>
#include <memory>
#include <string>
#include <typeindex>
#include <vector>

#include "core/base/hash.hpp"
#include "core/ledger/figure.hpp"
#include "core/ledger/verdict.hpp"

namespace sparewright::ledger {

struct Replacement;

struct WrittenFigure {
  Figure figure;
  base::Fingerprint print;
};

struct PublishedValue {
  std::shared_ptr<const void> value;
  std::type_index type{typeid(void)};
  base::Fingerprint print;
};

struct Output {
  std::map<std::string, WrittenFigure, std::less<>> figures;
  std::map<std::string, PublishedValue, std::less<>> values;
  std::vector<Verdict> verdicts;
  std::vector<Query> queries;
  std::vector<std::string> missing;  // why the stage ended early; empty where it did not
  std::vector<std::string> circle;  // the stages that wait for one another, this one among them; mostly empty
};

// What a stage asked, and the fingerprint of the answer it got.
struct Question {
  enum class Of { kFigure, kValue, kNames, kReplacement };
  Of of = Of::kFigure;
  std::string name;
  base::Fingerprint answer;
};

// The answer to a question; one of the first four, or none of them and what is missing.
struct Answer {
  const Figure* figure = nullptr;
  const PublishedValue* value = nullptr;
  const Replacement* replacement = nullptr;
  std::vector<std::string> names;
  std::vector<std::string> missing;
  std::vector<std::string> circle;  // where the stage that asks would wait for itself: it ends there
  base::Fingerprint print;
};

// One run: what was written and what was asked on the way.
struct Memo {
  Output output;
  std::vector<Question> questions;
};

}  // namespace sparewright::ledger
