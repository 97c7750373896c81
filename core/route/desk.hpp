// What the writers of the sheets of lists share. Used inside this room only.
#pragma once

#include <string>
#include <vector>

#include "core/ledger/pen.hpp"
#include "core/part/part.hpp"
#include "core/route/list_sheet.hpp"
#include "core/route/printing.hpp"
#include "core/route/route.hpp"

namespace sparewright::route {

struct Desk {
  ledger::Pen& pen;
  const Route& route;
  Printing print;
  ListSheet sheet;
};

void write_lay_out(Desk& desk);
void write_mark_out(Desk& desk);
void write_inspect(Desk& desk);
void write_fit(Desk& desk);
void write_record(Desk& desk);

// The bushes of the part, in its order.
struct Bush {
  const part::Feature& feature;
  const part::Formed& formed;
};
[[nodiscard]] std::vector<Bush> bushes_of(const part::Part& part);

// The screws the part takes, each kind once, with the holes they go in.
struct Screws {
  std::string designation;
  std::vector<std::string> holes;
};
[[nodiscard]] std::vector<Screws> screws_of(const part::Part& part);

// "a, b, c"
[[nodiscard]] std::string listed(const std::vector<std::string>& names);

}  // namespace sparewright::route
