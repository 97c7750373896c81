// The work of the part's stages. Used by part.cpp only.
#pragma once

#include "core/ledger/pen.hpp"
#include "core/part/part.hpp"

namespace sparewright::part {

void write_blank(ledger::Pen& pen, const Blank& blank);
void write_feature(ledger::Pen& pen, const Part& part, std::size_t index);
void write_geometry(ledger::Pen& pen, const Part& part);
void write_least_wall(ledger::Pen& pen, const Part& part);

// "blank/top": the side of the blank before anything is cut.
[[nodiscard]] std::string blank_side_path(Face face);

}  // namespace sparewright::part
