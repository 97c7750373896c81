#include "core/route/list_sheet.hpp"

namespace sparewright::route {
namespace {

void add(base::Hasher& h, const std::vector<std::string>& texts) {
  h.add(texts.size());
  for (const std::string& text : texts)
    h.add(text);
}

void add(base::Hasher& h, const ListTable& table) {
  add(h, table.headings);
  h.add(table.rows.size());
  for (const auto& row : table.rows)
    add(h, row);
  h.add(table.figures.has_value()).add(table.figures.value_or(0)).add(table.to_fill).add(table.ticks);
}

}  // namespace

base::Fingerprint fingerprint(const ListSheet& sheet) {
  base::Hasher h;
  h.add(sheet.tab).add(sheet.name).add(sheet.is_signed);
  add(h, sheet.cautions);
  h.add(sheet.sections.size());
  for (const ListSection& section : sheet.sections) {
    h.add(section.heading);
    add(h, section.says);
    add(h, section.table);
    add(h, section.ticks);
    add(h, section.blanks);
  }
  return h.done();
}

}  // namespace sparewright::route
