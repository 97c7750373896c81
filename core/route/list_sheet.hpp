// What a sheet of lists says: what to lay out, to mark out, to measure, to fit, to write down. Sizes are printed already,
// in the job's unit; trade words that differ between British and American stand in square brackets (base/words.hpp).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/hash.hpp"

namespace sparewright::route {

struct ListTable {
  std::vector<std::string> headings;           // a short word or two; empty where a column needs none
  std::vector<std::vector<std::string>> rows;  // a cell for each heading
  std::optional<std::size_t> figures;          // the column with the sizes to work to, set large
  bool to_fill = false;                        // a blank behind each row, headed FOUND
  bool ticks = false;                          // a box to tick behind each row
};

// One part of the sheet, in this order; what it does not have takes no room.
struct ListSection {
  std::string heading;
  std::vector<std::string> says;  // sentences
  ListTable table;
  std::vector<std::string> ticks;   // things to tick, short
  std::vector<std::string> blanks;  // what is to be written down, each with a line to write on
};

struct ListSheet {
  std::string tab;   // "LAY OUT"
  std::string name;  // beside it
  std::vector<std::string> cautions;
  std::vector<ListSection> sections;
  bool is_signed = false;  // at its foot: by, date, overruled and why
};

[[nodiscard]] base::Fingerprint fingerprint(const ListSheet& sheet);

}  // namespace sparewright::route
