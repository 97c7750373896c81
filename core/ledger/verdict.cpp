#include "core/ledger/verdict.hpp"

#include <cstdint>

namespace sparewright::ledger {

std::string_view name_of(State state) {
  switch (state) {
    case State::kOk:
      return "OK";
    case State::kClose:
      return "CLOSE";
    case State::kNo:
      return "NO";
    case State::kNotKnown:
      return "NOT KNOWN";
  }
  return "";
}

base::Fingerprint fingerprint(const Verdict& v) {
  base::Hasher h;
  h.add(v.check).add(v.subject).add(static_cast<int>(v.state)).add(v.figure);
  h.add(v.low.has_value()).add(v.low.value_or("")).add(v.high.has_value()).add(v.high.value_or(""));
  h.add(v.margin).add(v.reason).add(v.source).add(v.todo);
  h.add(static_cast<std::uint64_t>(v.missing.size()));
  for (const std::string& root : v.missing)
    h.add(root);
  return h.done();
}

base::Fingerprint fingerprint(const Query& q) {
  return base::Hasher()
      .add(q.id)
      .add(q.about)
      .add(q.says)
      .add(q.happens)
      .add(q.todo)
      .add(q.serious)
      .add(static_cast<int>(q.state))
      .add(q.reason)
      .done();
}

}  // namespace sparewright::ledger
