#include "app/solid_file.hpp"

#include <vector>

#include <fmt/format.h>

#include "solid/gltf.hpp"
#include "solid/mesh.hpp"
#include "solid/pieces.hpp"
#include "solid/step.hpp"
#include "solid/stl.hpp"

namespace sparewright::app {

base::Result<std::string> solid_bytes(const solid::Solid& solid, std::string_view name, SolidFile kind) {
  if (kind == SolidFile::kStep) return solid::write_step(solid, name);
  const auto mesh = solid::mesh_of(solid);
  if (!mesh) return tl::unexpected(mesh.error());
  return kind == SolidFile::kGlb ? solid::write_glb(*mesh, name) : solid::write_stl(*mesh);
}

base::Result<std::string> piece_bytes(const solid::Solid& solid, std::string_view name, SolidFile kind,
                                      std::size_t piece) {
  const std::vector<solid::Solid> pieces = solid::pieces_of(solid);
  if (piece == 0 || piece > pieces.size()) {
    const std::string known =
        pieces.size() == 1 ? "1: it is all one piece" : fmt::format("1 to {}", pieces.size());
    return base::fail(base::Code::kNotInTheJob, fmt::format("{}", piece), known, "piece");
  }
  return solid_bytes(solid::in_its_own_frame(pieces[piece - 1]), fmt::format("{}, piece {}", name, piece),
                     kind);
}

}  // namespace sparewright::app
