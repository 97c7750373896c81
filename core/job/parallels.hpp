// Small readings that job and shop texts share.
#pragma once

#include <optional>

#include "core/shop/shop.hpp"
#include "core/text/reading.hpp"

namespace sparewright::job {

// "1-1/4 x 1/8": height x thickness of a pair of parallels. Fails with the failures of lengths, located.
[[nodiscard]] base::Result<shop::Parallel> read_parallel(const text::Node& node, text::System system);

// The size a drill designation stands for, kept as typed. Its failure is gathered with the place of the key.
[[nodiscard]] std::optional<quantity::Typed> drill_size(const text::TableReader& in, std::string_view key,
                                                        const quantity::Designation& designation);

}  // namespace sparewright::job
