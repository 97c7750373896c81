// The rough faces and cored holes of a casting. Used inside this room only.
#pragma once

#include "core/job/dimension_text.hpp"
#include "core/part/blank.hpp"

namespace sparewright::job {

// Tells rough faces and cored holes of a blank that is no casting, sizes that cannot be, and holes that are not in the job.
void read_casting(const text::TableReader& blank, const Names& names, part::Blank& into);

}  // namespace sparewright::job
