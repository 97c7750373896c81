// Reading the graph: where a figure comes from, and what a root moves. Neither recurses, so that no chain is
// too long.
#include <algorithm>
#include <cmath>
#include <set>

#include "core/ledger/ledger.hpp"

namespace sparewright::ledger {

Trail Ledger::why(std::string_view name) {
  Trail top;
  top.figure.name = name;
  std::set<std::string> shown;
  std::vector<Trail*> open{&top};  // to be filled in, the next one last; only the name is set
  while (!open.empty()) {
    Trail& trail = *open.back();
    open.pop_back();
    trail.figure = get(trail.figure.name);
    const std::vector<base::Name>& inputs = trail.figure.inputs;
    trail.shown_before = !inputs.empty() && !shown.insert(trail.figure.name).second;
    if (trail.shown_before) continue;
    trail.inputs.resize(inputs.size());
    for (std::size_t i = inputs.size(); i-- > 0;) {
      trail.inputs[i].figure.name = inputs[i];
      open.push_back(&trail.inputs[i]);
    }
  }
  return top;
}

namespace {

// The names of the figures whose trail reaches the root, the root among them.
std::set<std::string_view> reached_from(std::string_view root, const std::vector<const Figure*>& figures) {
  std::map<std::string_view, std::vector<std::string_view>> users;
  for (const Figure* figure : figures) {
    for (const base::Name input : figure->inputs)
      users[input].push_back(figure->name);
  }
  std::set<std::string_view> reached{root};
  std::vector<std::string_view> open{root};
  while (!open.empty()) {
    const auto used_by = users.find(open.back());
    open.pop_back();
    if (used_by == users.end()) continue;
    for (const std::string_view user : used_by->second) {
      if (reached.insert(user).second) open.push_back(user);
    }
  }
  return reached;
}

// The sum of squares of the shares whose cause is one of the root's.
double squares_of_common_causes(const Shares& shares, const Shares& of_root) {
  double squares = 0.0;
  auto root = of_root.begin();
  for (const Share& share : shares) {
    while (root != of_root.end() && root->cause < share.cause)
      ++root;
    if (root == of_root.end()) break;
    if (root->cause == share.cause) squares += share.amount * share.amount;
  }
  return squares;
}

}  // namespace

std::vector<Moved> Ledger::moved_by(std::string_view root) {
  const Snapshot snapshot = keep();
  const Figure* source = snapshot.find(root);
  std::vector<Moved> moved;
  if (source == nullptr) return moved;
  const std::vector<const Figure*> figures = snapshot.figures();
  const std::set<std::string_view> reached = reached_from(source->name, figures);
  for (const Figure* figure : figures) {
    if (figure == source || !reached.contains(figure->name)) continue;
    const double squares = squares_of_common_causes(figure->shares, source->shares);
    const double all_squares = squares_of_common_causes(figure->shares, figure->shares);
    moved.push_back({figure->name, std::sqrt(squares), all_squares > 0.0 ? squares / all_squares : 0.0});
  }
  return moved;
}

}  // namespace sparewright::ledger
