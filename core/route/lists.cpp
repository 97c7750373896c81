#include "core/route/lists.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/route/desk.hpp"

namespace sparewright::route {
namespace {

using Write = void (*)(Desk& desk);

struct List {
  std::string_view stage;
  Write write;
};

constexpr std::array kLists{List{"lay out", write_lay_out}, List{"mark out", write_mark_out},
                            List{"inspect", write_inspect}, List{"fit", write_fit},
                            List{"record", write_record}};

void write_list(ledger::Pen& pen, const Route& route, Write write) {
  Desk desk{pen, route, Printing(route.system), {}};
  write(desk);
  const base::Fingerprint print = fingerprint(desk.sheet);
  pen.publish("sheet", std::move(desk.sheet), print);
}

base::Fingerprint definition(const Route& route, std::string_view list) {
  base::Hasher h;
  h.add(list).add(part::fingerprint(route.part)).add(static_cast<int>(route.system));
  for (const Setup& setup : route.plan.setups)
    h.add(fingerprint(setup));
  return h.done();
}

}  // namespace

void Once::add(std::string entry) {
  if (std::find(entries_.begin(), entries_.end(), entry) == entries_.end())
    entries_.push_back(std::move(entry));
}

std::vector<ledger::Stage> list_stages(const Route& route) {
  std::vector<ledger::Stage> all;
  for (const List& list : kLists) {
    all.push_back({std::string(list.stage), definition(route, list.stage),
                   [route, write = list.write](ledger::Pen& pen) { write_list(pen, route, write); }});
  }
  return all;
}

std::string list_path(std::string_view list) {
  return fmt::format("{}/sheet", list);
}

}  // namespace sparewright::route
