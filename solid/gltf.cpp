#include "solid/gltf.hpp"

#include <algorithm>
#include <array>
#include <limits>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "solid/little_endian.hpp"

namespace sparewright::solid {
namespace {

using Json = nlohmann::ordered_json;
using Triple = std::array<float, 3>;

// Numbers the specification gives to kinds of things; section "Accessor Data Types" and the schema of bufferView.
constexpr int kFloat = 5126;
constexpr int kUnsignedInt = 5125;
constexpr int kVertices = 34962;
constexpr int kIndices = 34963;
constexpr int kTriangles = 4;

// Section "GLB File Format Specification": the header, and the head of each chunk.
constexpr std::uint32_t kMagic = 0x46546C67;  // "glTF"
constexpr std::uint32_t kVersion = 2;
constexpr std::uint32_t kJsonChunk = 0x4E4F534A;    // "JSON"
constexpr std::uint32_t kBinaryChunk = 0x004E4942;  // "BIN"
constexpr std::size_t kHeader_bytes = 12;
constexpr std::size_t kChunkHead_bytes = 8;
constexpr std::size_t kAlignment_bytes = 4;

constexpr std::size_t kTriple_bytes = 12;  // three floats, or three indices

// The part lies Z up, in mm, or is a direction of length 1.
Triple turned(double x, double y, double z, double scale) {
  const auto single = [&](double value) { return static_cast<float>(value * scale) + 0.0F; };  // -0 becomes 0
  return {single(x), single(z), single(-y)};
}

std::vector<Triple> positions(const Mesh& mesh) {
  constexpr double kMetre_per_mm = 1e-3;
  std::vector<Triple> all;
  all.reserve(mesh.corners.size());
  for (const Corner& corner : mesh.corners) {
    const shape::Point& p = mesh.points[corner.point];
    all.push_back(turned(p.x, p.y, p.z, kMetre_per_mm));
  }
  return all;
}

void put(std::string& bytes, const Triple& triple) {
  for (const float value : triple)
    put_float(bytes, value);
}

std::string binary(const Mesh& mesh, const std::vector<Triple>& at, std::uint32_t length) {
  std::string bytes;
  bytes.reserve(length);
  for (const Triple& position : at)
    put(bytes, position);
  for (const Corner& corner : mesh.corners)
    put(bytes, turned(corner.normal.x, corner.normal.y, corner.normal.z, 1.0));
  for (const auto& triangle : mesh.triangles) {
    for (const std::uint32_t corner : triangle)
      put_u32(bytes, corner);
  }
  return bytes;
}

// The least and greatest of each coordinate, as the accessor of positions must state them.
std::pair<Triple, Triple> range(const std::vector<Triple>& at) {
  std::pair<Triple, Triple> range{at.front(), at.front()};
  for (const Triple& position : at) {
    for (std::size_t k = 0; k < 3; ++k) {
      range.first[k] = std::min(range.first[k], position[k]);
      range.second[k] = std::max(range.second[k], position[k]);
    }
  }
  return range;
}

Json view(std::size_t offset, std::size_t length, int target) {
  return Json{{"buffer", 0}, {"byteOffset", offset}, {"byteLength", length}, {"target", target}};
}

Json accessor(int view, int component, std::size_t count, const char* type) {
  return Json{{"bufferView", view}, {"componentType", component}, {"count", count}, {"type", type}};
}

// Bare metal, dull enough to be seen without surroundings to mirror.
Json material() {
  const Json look{
      {"baseColorFactor", {0.70, 0.72, 0.75, 1.0}}, {"metallicFactor", 0.2}, {"roughnessFactor", 0.6}};
  return Json{{"name", "metal"}, {"pbrMetallicRoughness", look}};
}

Json document(const Mesh& mesh, const std::vector<Triple>& at, std::string_view name, std::uint32_t length) {
  const std::size_t vertices = kTriple_bytes * mesh.corners.size();
  const std::size_t indices = kTriple_bytes * mesh.triangles.size();
  const auto [least, greatest] = range(at);
  Json position = accessor(0, kFloat, mesh.corners.size(), "VEC3");
  position["min"] = least;
  position["max"] = greatest;
  const Json primitive{{"attributes", {{"POSITION", 0}, {"NORMAL", 1}}},
                       {"indices", 2},
                       {"material", 0},
                       {"mode", kTriangles}};
  return Json{{"asset", {{"version", "2.0"}, {"generator", "Sparewright"}}},
              {"scene", 0},
              {"scenes", Json::array({Json{{"nodes", {0}}}})},
              {"nodes", Json::array({Json{{"name", name}, {"mesh", 0}}})},
              {"meshes", Json::array({Json{{"name", name}, {"primitives", Json::array({primitive})}}})},
              {"materials", Json::array({material()})},
              {"accessors", Json::array({position, accessor(1, kFloat, mesh.corners.size(), "VEC3"),
                                         accessor(2, kUnsignedInt, 3 * mesh.triangles.size(), "SCALAR")})},
              {"bufferViews", Json::array({view(0, vertices, kVertices), view(vertices, vertices, kVertices),
                                           view(2 * vertices, indices, kIndices)})},
              {"buffers", Json::array({Json{{"byteLength", length}}})}};
}

base::Result<std::uint32_t> in_32_bits(std::size_t count, std::string_view what) {
  constexpr std::size_t kMost = std::numeric_limits<std::uint32_t>::max();
  if (count <= kMost) return static_cast<std::uint32_t>(count);
  return base::fail(base::Code::kTooMany, fmt::format("{} {}", count, what),
                    fmt::format("at most {}; a coarser mesh", kMost), "the glTF file");
}

void put_chunk(std::string& bytes, std::uint32_t kind, const std::string& content) {
  put_u32(bytes, static_cast<std::uint32_t>(content.size()));
  put_u32(bytes, kind);
  bytes += content;
}

}  // namespace

base::Result<std::uint32_t> glb_binary_bytes(std::size_t corners, std::size_t triangles) {
  // The greatest index is kept free: it is the one that ends a strip.
  if (auto indices = in_32_bits(corners + 1, "indices"); !indices) return indices;
  return in_32_bits(kTriple_bytes * (2 * corners + triangles), "bytes");
}

base::Result<std::string> write_glb(const Mesh& mesh, std::string_view name) {
  if (mesh.triangles.empty()) {
    return base::fail(base::Code::kValueNotAccepted, "empty", "a mesh with triangles", "the glTF file");
  }
  const auto length = glb_binary_bytes(mesh.corners.size(), mesh.triangles.size());
  if (!length) return tl::unexpected(length.error());
  const std::vector<Triple> at = positions(mesh);
  std::string json = document(mesh, at, name, *length).dump(-1, ' ', false, Json::error_handler_t::replace);
  json.resize((json.size() + kAlignment_bytes - 1) / kAlignment_bytes * kAlignment_bytes, ' ');
  const auto whole = in_32_bits(kHeader_bytes + 2 * kChunkHead_bytes + json.size() + *length, "bytes");
  if (!whole) return tl::unexpected(whole.error());
  std::string bytes;
  bytes.reserve(*whole);
  put_u32(bytes, kMagic);
  put_u32(bytes, kVersion);
  put_u32(bytes, *whole);
  put_chunk(bytes, kJsonChunk, json);
  put_chunk(bytes, kBinaryChunk, binary(mesh, at, *length));
  return bytes;
}

}  // namespace sparewright::solid
