// Formed features in a job text: their keys and how they are read, both by the table of forms. Used inside this room only.
#pragma once

#include <vector>

#include "core/job/dimension_text.hpp"
#include "core/part/blank.hpp"
#include "core/part/feature.hpp"
#include "core/text/shape.hpp"

namespace sparewright::job {

// One choice of `kind` for each form. dimension, position, bush_bore: the shapes of these.
[[nodiscard]] std::vector<text::Choice> form_choices(const text::Shape& dimension,
                                                     const text::Shape& position,
                                                     const text::Shape& bush_bore);

// Nothing where `kind` names no form.
[[nodiscard]] std::optional<part::Formed> read_form(const text::TableReader& in, part::BlankShape blank,
                                                    const Names& names);

// Notes which turned features are cut while a chucking piece is left on at their end.
void find_chucking_pieces(std::vector<part::Feature>& features);

// Tells the holes that features name by `in` and that are none, and notes which side the others start on.
void find_holes(const std::vector<text::TableReader>& tables, std::vector<part::Feature>& features);

}  // namespace sparewright::job
