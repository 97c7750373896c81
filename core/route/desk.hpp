// What the writers of the sheets of lists share. Used inside this room only.
#pragma once

#include <string>
#include <utility>
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

// A list without repeats, in the order of first mention.
class Once {
 public:
  void add(std::string entry);
  [[nodiscard]] std::vector<std::string> take() { return std::move(entries_); }

 private:
  std::vector<std::string> entries_;
};

}  // namespace sparewright::route
