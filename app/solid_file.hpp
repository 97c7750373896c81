// A solid as the bytes of its file. Used inside this room only.
#pragma once

#include <string>
#include <string_view>

#include "app/session.hpp"
#include "core/base/result.hpp"
#include "solid/solid.hpp"

namespace sparewright::app {

// name  what the reader's program shows. Meshes are of the usual fineness (solid/mesh.hpp).
[[nodiscard]] base::Result<std::string> solid_bytes(const solid::Solid& solid, std::string_view name,
                                                    SolidFile kind);

// One piece of what has come apart, in a frame of its own: 1 is the largest. Fails with kNotInTheJob where there are fewer.
[[nodiscard]] base::Result<std::string> piece_bytes(const solid::Solid& solid, std::string_view name,
                                                    SolidFile kind, std::size_t piece);

}  // namespace sparewright::app
