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
  for (const shop::Stock& piece : route.on_hand)
    h.add(shop::fingerprint(piece));
  return h.done();
}

}  // namespace

std::vector<Bush> bushes_of(const part::Part& part) {
  std::vector<Bush> bushes;
  for (const part::Feature& feature : part.features) {
    const auto* formed = std::get_if<part::Formed>(&feature.shape);
    if (formed != nullptr && formed->form == part::Form::kBush) bushes.push_back({feature, *formed});
  }
  return bushes;
}

std::vector<Screws> screws_of(const part::Part& part) {
  std::vector<Screws> all;
  for (const part::Feature& feature : part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    if (hole == nullptr || !hole->screw) continue;
    const std::string& designation = hole->screw->designation;
    auto same = std::find_if(all.begin(), all.end(),
                             [&](const Screws& screws) { return screws.designation == designation; });
    if (same == all.end()) same = all.insert(all.end(), {designation, {}});
    same->holes.push_back(feature.name);
  }
  return all;
}

std::string listed(const std::vector<std::string>& names) {
  std::string words;
  for (const std::string& name : names)
    words += (words.empty() ? "" : ", ") + name;
  return words;
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
