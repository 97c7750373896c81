#include "core/ledger/output.hpp"

#include <cassert>

namespace sparewright::ledger {

const WrittenFigure* WrittenFigures::find(base::Name name) const {
  const auto found = by_name_.find(name);
  return found != by_name_.end() && found->second.place() < count_ ? &found->second : nullptr;
}

Figure& WrittenFigures::write(base::Name name) {
  if (WrittenFigure* again = next(); again != nullptr && again->figure().name == name) {
    ++count_;
    return again->written_over();
  }
  return write_new(name);
}

Figure* WrittenFigures::write_again(std::size_t path_letters, std::string_view local) {
  WrittenFigure* again = next();
  if (again == nullptr || std::string_view(again->figure().name).substr(path_letters) != local)
    return nullptr;
  ++count_;
  return &again->written_over();
}

// Other figures than the last time, or another order: what lies behind is given up.
Figure& WrittenFigures::write_new(base::Name name) {
  for (; in_order_.size() > count_; in_order_.pop_back()) {
    by_name_.erase(in_order_.back()->figure().name);
    gave_up_ = true;
  }
  const auto [written, is_new] = by_name_.try_emplace(name, name, count_);
  assert(is_new && "a stage writes each of its figures once");
  in_order_.push_back(&written->second);
  ++count_;
  return written->second.being_written();
}

void Memo::begin_again() {
  output.figures.begin_again();
  output.values.clear();
  output.verdicts.clear();
  output.queries.clear();
  output.missing.clear();
  output.circle.clear();
  questions.clear();
}

}  // namespace sparewright::ledger
