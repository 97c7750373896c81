// What a job text and a shop text may hold: the one declaration behind the check of a text, the published JSON Schemas
// and the list of keys.
#pragma once

#include "core/text/shape.hpp"

namespace sparewright::job {

[[nodiscard]] const text::Shape& job_shape();
[[nodiscard]] const text::Shape& shop_shape();

}  // namespace sparewright::job
