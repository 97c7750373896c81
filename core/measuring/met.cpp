// After measuring: whether each fit is proven, and which doubt to make smaller where it is not.
#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/measuring/remedy.hpp"
#include "core/measuring/room.hpp"

namespace sparewright::measuring {
namespace {

using ledger::Figure;
using ledger::Pen;
using ledger::State;

std::string shown(const Subject& subject, double mm) {
  const route::Printing print(subject.survey.system);
  return fmt::format("{} {}", print.fine(mm), print.unit_name());
}

// The first doubt that can be made small enough by itself; else what takes most.
std::string what_to_do(const MetRow& row, const Subject& subject) {
  for (const Remedy& remedy : row.remedies) {
    if (!remedy.todo.empty())
      return fmt::format("{} puts {} of {} into it: {}", remedy.of, shown(subject, 2.0 * remedy.doubt.now),
                         shown(subject, row.unknown_mm), remedy.todo);
  }
  if (row.remedies.empty()) return "nothing is left to measure better";
  return fmt::format("no one reading would do: {} takes most of it", row.remedies.front().of);
}

void say(MetRow& row, const Subject& subject) {
  const std::string clearance =
      fmt::format("{}, good to {}, against {} to {}", shown(subject, row.clearance_mm),
                  shown(subject, row.unknown_mm), shown(subject, row.least_mm), shown(subject, row.most_mm));
  switch (row.state) {
    case State::kOk:
      row.says = fmt::format("proven 19 times in 20: {}", clearance);
      return;
    case State::kNo:
      row.says = fmt::format("outside: {}; measuring it better does not bring it in", clearance);
      return;
    case State::kClose:
      row.says = fmt::format("not proven: {}; {}", clearance, what_to_do(row, subject));
      return;
    case State::kNotKnown:
      row.says = fmt::format("NOT KNOWN: {} is missing", fmt::join(row.missing, ", "));
      return;
  }
}

MetRow met(Pen& pen, const Subject& subject, const part::Feature& feature) {
  const auto& hole = std::get<part::Hole>(feature.shape);
  MetRow row;
  row.feature = feature.name;
  row.mate = part::mate_of(hole);
  const Asked asked = asked_of(feature, hole);
  const Figure& made = pen.ask(fmt::format("check/fit/{}/clearance as made", feature.name));
  const Figure& least = pen.ask(asked.least);
  const Figure& most = pen.ask(asked.most);
  for (const Figure* figure : {&made, &least, &most}) {
    for (const std::string& name : figure->missing) {
      if (std::find(row.missing.begin(), row.missing.end(), name) == row.missing.end())
        row.missing.push_back(name);
    }
  }
  if (!row.missing.empty()) {
    say(row, subject);
    return row;
  }
  row.clearance_mm = made.value;
  row.unknown_mm = made.expanded();
  row.least_mm = least.value;
  row.most_mm = most.value;
  const double margin = std::min(made.value - least.value, most.value - made.value);
  row.state = margin < 0.0 ? State::kNo : margin < row.unknown_mm ? State::kClose : State::kOk;
  if (made.bound != ledger::Bound::kExact) {
    row.state = State::kNotKnown;
    row.missing = {fmt::format("'{}' where it is not worn", row.mate)};
  } else if (margin > 0.0) {
    for (const survey::Doubt& doubt : survey::doubts(made.shares, margin))
      row.remedies.push_back(remedy_for(doubt, subject));
  }
  say(row, subject);
  return row;
}

}  // namespace

void write_met(Pen& pen, const Subject& subject) {
  Met all;
  for (const part::Feature& feature : subject.judged.route.part.features) {
    if (has_fit(feature)) all.rows.push_back(met(pen, subject, feature));
  }
  const base::Fingerprint print = fingerprint(all);
  pen.publish("rows", std::move(all), print);
}

base::Fingerprint fingerprint(const Met& met) {
  base::Hasher h;
  for (const MetRow& row : met.rows) {
    h.add(row.feature).add(row.mate).add(static_cast<int>(row.state)).add(row.says);
    for (const double size : {row.clearance_mm, row.unknown_mm, row.least_mm, row.most_mm})
      h.add(size);
    for (const Remedy& remedy : row.remedies)
      h.add(remedy.of).add(remedy.todo).add(remedy.doubt.now).add(remedy.doubt.keep.value_or(-1.0));
  }
  return h.done();
}

}  // namespace sparewright::measuring
