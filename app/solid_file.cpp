#include "app/solid_file.hpp"

#include <vector>

#include <fmt/format.h>

#include "solid/gltf.hpp"
#include "solid/make_solid.hpp"
#include "solid/mesh.hpp"
#include "solid/pieces.hpp"
#include "solid/step.hpp"
#include "solid/stl.hpp"

namespace sparewright::app {

namespace {

base::Result<std::string> bytes_of(const solid::Solid& solid, std::string_view name, SolidFile kind) {
  if (kind == SolidFile::kStep) return solid::write_step(solid, name);
  const auto mesh = solid::mesh_of(solid);
  if (!mesh) return tl::unexpected(mesh.error());
  return kind == SolidFile::kGlb ? solid::write_glb(*mesh, name) : solid::write_stl(*mesh);
}

}  // namespace

base::Result<std::string> solid_bytes(const shape::Recipe& recipe, std::string_view name, SolidFile kind) {
  const auto made = solid::make_solid(recipe);
  if (!made) return tl::unexpected(made.error());
  return bytes_of(made->solid, name, kind);
}

base::Result<std::string> piece_bytes(const shape::Recipe& recipe, std::string_view name, SolidFile kind,
                                      std::size_t piece) {
  const auto made = solid::make_solid(recipe);
  if (!made) return tl::unexpected(made.error());
  const std::vector<solid::Solid> pieces = solid::pieces_of(made->solid);
  if (piece == 0 || piece > pieces.size()) {
    const std::string known =
        pieces.size() == 1 ? "1: it is all one piece" : fmt::format("1 to {}", pieces.size());
    return base::fail(base::Code::kNotInTheJob, fmt::format("{}", piece), known, "piece");
  }
  return bytes_of(solid::in_its_own_frame(pieces[piece - 1]), fmt::format("{}, piece {}", name, piece), kind);
}

}  // namespace sparewright::app
