// Small stages for tests of the ledger.
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <utility>
#include <vector>

#include "core/base/hash.hpp"
#include "core/ledger/ledger.hpp"

namespace sparewright::tests {

// A stage whose definition is its name and a number: give another number where the work is another.
inline ledger::Stage stage(const std::string& name, std::function<void(ledger::Pen&)> work,
                           std::uint64_t edition = 1) {
  return {name, base::Hasher().add(name).add(edition).done(), std::move(work)};
}

inline ledger::Root length(double mm, ledger::Shares shares = {}) {
  ledger::Root root;
  root.kind = quantity::Kind::kLength;
  root.value = mm;
  root.shares = std::move(shares);
  return root;
}

inline ledger::Root number(double value, ledger::Shares shares) {
  ledger::Root root;
  root.value = value;
  root.shares = std::move(shares);
  return root;
}

// A job of one stage, "x".
inline ledger::Ledger job(std::function<void(ledger::Pen&)> work) {
  ledger::Ledger ledger;
  ledger.declare({stage("x", std::move(work))});
  return ledger;
}

// A stage that writes one root of its own, "<name>/size".
inline ledger::Stage size_stage(const std::string& name, const ledger::Root& root) {
  base::Hasher h;
  h.add(name).add(root.value.has_value()).add(root.value.value_or(0.0)).add(static_cast<int>(root.bound));
  for (const ledger::Share& share : root.shares)
    h.add(share.cause.text()).add(share.amount).add(share.degrees_of_freedom);
  return {name, h.done(), [root](ledger::Pen& pen) { pen.root("size", root); }};
}

// Writes "<stage>/<local>" as the sum of other figures.
inline const ledger::Figure& sum(ledger::Pen& pen, const std::string& local,
                                 const std::vector<std::string>& of) {
  std::vector<ledger::Term> terms;
  double value = 0.0;
  for (const std::string& name : of) {
    terms.push_back({&pen.ask(name), 1.0});
    value += terms.back().figure->value;
  }
  return pen.linear(local, quantity::Kind::kLength, "sum", value, terms);
}

// Everything that can be seen of a ledger, as fingerprints with names.
inline std::vector<std::pair<std::string, base::Fingerprint>> seen(ledger::Ledger& of) {
  std::vector<std::pair<std::string, base::Fingerprint>> all;
  for (const ledger::Figure& figure : of.figures())
    all.emplace_back(figure.name, fingerprint(figure));
  for (const ledger::Verdict& verdict : of.verdicts())
    all.emplace_back(verdict.check, fingerprint(verdict));
  for (const ledger::Query& query : of.queries())
    all.emplace_back(query.id, fingerprint(query));
  return all;
}

}  // namespace sparewright::tests
