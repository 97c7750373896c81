#include "app/solid_file.hpp"

#include "solid/gltf.hpp"
#include "solid/make_solid.hpp"
#include "solid/mesh.hpp"
#include "solid/step.hpp"
#include "solid/stl.hpp"

namespace sparewright::app {

base::Result<std::string> solid_bytes(const shape::Recipe& recipe, std::string_view name, SolidFile kind) {
  const auto made = solid::make_solid(recipe);
  if (!made) return tl::unexpected(made.error());
  if (kind == SolidFile::kStep) return solid::write_step(made->solid, name);
  const auto mesh = solid::mesh_of(made->solid);
  if (!mesh) return tl::unexpected(mesh.error());
  return kind == SolidFile::kGlb ? solid::write_glb(*mesh, name) : solid::write_stl(*mesh);
}

}  // namespace sparewright::app
