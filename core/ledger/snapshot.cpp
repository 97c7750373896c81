#include <algorithm>

#include "core/ledger/ledger.hpp"

namespace sparewright::ledger {

const Figure* Snapshot::find(std::string_view name) const {
  for (std::string_view prefix = name;;) {
    if (const auto stage = stages_.find(prefix); stage != stages_.end()) {
      const WrittenFigure* found = stage->second.memo->output.figures.find(name);
      return found == nullptr ? nullptr : &found->figure();
    }
    const auto slash = prefix.rfind('/');
    if (slash == std::string_view::npos) return nullptr;
    prefix = prefix.substr(0, slash);
  }
}

std::vector<const Figure*> Snapshot::figures() const {
  std::vector<const Figure*> all;
  for (const auto& [name, held] : stages_) {
    for (const WrittenFigure* written : held.memo->output.figures.all())
      all.push_back(&written->figure());
  }
  std::sort(all.begin(), all.end(), [](const Figure* a, const Figure* b) { return a->name < b->name; });
  return all;
}

std::vector<Verdict> Snapshot::verdicts() const {
  std::vector<Verdict> all;
  for (const auto& [name, held] : stages_) {
    const auto& verdicts = held.memo->output.verdicts;
    all.insert(all.end(), verdicts.begin(), verdicts.end());
  }
  return all;
}

std::vector<Query> Snapshot::queries() const {
  std::vector<Query> all;
  for (const auto& [name, held] : stages_) {
    const auto& queries = held.memo->output.queries;
    all.insert(all.end(), queries.begin(), queries.end());
  }
  return all;
}

std::vector<Change> between(const Snapshot& before, const Snapshot& after) {
  const auto old_figures = before.figures();
  const auto new_figures = after.figures();
  std::vector<Change> changes;
  auto a = old_figures.begin();
  auto b = new_figures.begin();
  while (a != old_figures.end() || b != new_figures.end()) {
    const int order = a == old_figures.end()   ? 1
                      : b == new_figures.end() ? -1
                                               : (*a)->name.text().compare((*b)->name.text());
    if (order < 0) {
      changes.push_back({(*a)->name, **a, std::nullopt});
    } else if (order > 0) {
      changes.push_back({(*b)->name, std::nullopt, **b});
    } else if (*a != *b && fingerprint(**a) != fingerprint(**b)) {
      changes.push_back({(*a)->name, **a, **b});
    }
    if (order <= 0) ++a;
    if (order >= 0) ++b;
  }
  return changes;
}

}  // namespace sparewright::ledger
