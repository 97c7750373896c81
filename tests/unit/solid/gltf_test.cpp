// The rules of the glTF 2.0 specification, checked by hand on what is written. Clauses are named by their headings, from
// memory: "GLB File Format Specification", "Binary Buffer", "Accessors", "Meshes", "Indices and Names", "Asset".
#include "solid/gltf.hpp"

#include <array>
#include <limits>
#include <set>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "bytes.hpp"
#include "solid_samples.hpp"

namespace sparewright::solid {
namespace {

using nlohmann::json;
using tests::Bytes;

struct Glb {
  json document;
  std::string binary;
  std::string json_text;
};

// "GLB File Format Specification": a header of 12 bytes, then chunks of length, type and content, JSON first.
Glb parse(const std::string& file) {
  const Bytes bytes(file);
  EXPECT_EQ(bytes.text(0, 4), "glTF");
  EXPECT_EQ(bytes.u32(4), 2U) << "container version";
  EXPECT_EQ(bytes.u32(8), file.size()) << "length of the whole file, header and chunks";
  const std::size_t json_length = bytes.u32(12);
  EXPECT_EQ(bytes.text(16, 4), "JSON");
  EXPECT_EQ(json_length % 4, 0U) << "the start and the end of each chunk is aligned to 4 bytes";
  const std::size_t binary_head = 20 + json_length;
  const std::size_t binary_length = bytes.u32(binary_head);
  EXPECT_EQ(bytes.text(binary_head + 4, 4), std::string_view("BIN\0", 4));
  EXPECT_EQ(binary_length % 4, 0U);
  EXPECT_EQ(binary_head + 8 + binary_length, file.size()) << "nothing follows";
  Glb glb;
  glb.json_text = bytes.text(20, json_length);
  glb.document = json::parse(glb.json_text);
  glb.binary = bytes.text(binary_head + 8, binary_length);
  return glb;
}

Glb written(const Mesh& mesh, std::string_view name = "bracket") {
  const auto file = write_glb(mesh, name);
  EXPECT_TRUE(file);
  return parse(file.value());
}

using Triples = std::vector<std::array<float, 3>>;

std::size_t offset_of(const Glb& glb, const json& accessor) {
  return glb.document["bufferViews"][accessor["bufferView"].get<std::size_t>()]["byteOffset"]
      .get<std::size_t>();
}

Triples triples(const Glb& glb, std::size_t accessor) {
  const json& about = glb.document["accessors"][accessor];
  EXPECT_EQ(about["componentType"], 5126);  // FLOAT
  EXPECT_EQ(about["type"], "VEC3");
  const Bytes bytes(glb.binary);
  Triples all(about["count"].get<std::size_t>());
  std::size_t at = offset_of(glb, about);
  for (auto& triple : all) {
    for (float& value : triple)
      value = bytes.f32(std::exchange(at, at + 4));
  }
  return all;
}

std::vector<std::uint32_t> indices(const Glb& glb, std::size_t accessor) {
  const json& about = glb.document["accessors"][accessor];
  EXPECT_EQ(about["componentType"], 5125);  // UNSIGNED_INT
  EXPECT_EQ(about["type"], "SCALAR");
  const Bytes bytes(glb.binary);
  std::vector<std::uint32_t> all(about["count"].get<std::size_t>());
  std::size_t at = offset_of(glb, about);
  for (std::uint32_t& index : all)
    index = bytes.u32(std::exchange(at, at + 4));
  return all;
}

TEST(Gltf, SaysWhoMadeItAndHasOnePrimitiveWithNames) {
  const json document = written(tests::mesh_of(tests::bracket()), "idler bracket").document;
  EXPECT_EQ(document["asset"]["version"], "2.0");
  EXPECT_EQ(document["asset"]["generator"], "Sparewright");
  ASSERT_EQ(document["meshes"].size(), 1U);
  ASSERT_EQ(document["meshes"][0]["primitives"].size(), 1U);
  const json& primitive = document["meshes"][0]["primitives"][0];
  EXPECT_EQ(primitive["mode"], 4);  // TRIANGLES
  EXPECT_EQ(primitive["attributes"], (json{{"POSITION", 0}, {"NORMAL", 1}}));
  EXPECT_EQ(primitive["indices"], 2);
  EXPECT_EQ(document["meshes"][0]["name"], "idler bracket");
  EXPECT_EQ(document["nodes"][0]["name"], "idler bracket");
  EXPECT_EQ(document["scenes"][document["scene"].get<std::size_t>()]["nodes"], json::array({0}));
  EXPECT_FALSE(document["nodes"][0].contains("rotation"));
  EXPECT_FALSE(document.contains("extensionsRequired"));
}

// "Buffers and Buffer Views", "Accessors: Data Alignment": views lie within the buffer, offsets are multiples of the
// component's size, accessors fit into their views, the buffer is no longer than its chunk and at most 3 bytes shorter.
TEST(Gltf, ViewsAndAccessorsLieWithinTheBuffer) {
  const Glb glb = written(tests::mesh_of(tests::bracket()));
  const json& document = glb.document;
  ASSERT_EQ(document["buffers"].size(), 1U);
  EXPECT_FALSE(document["buffers"][0].contains("uri")) << "the buffer of the BIN chunk has none";
  const auto length = document["buffers"][0]["byteLength"].get<std::size_t>();
  EXPECT_LE(length, glb.binary.size());
  EXPECT_LE(glb.binary.size() - length, 3U);
  std::size_t end = 0;
  for (const json& view : document["bufferViews"]) {
    EXPECT_EQ(view["buffer"], 0);
    EXPECT_EQ(view["byteOffset"], end);
    EXPECT_EQ(view["byteOffset"].get<std::size_t>() % 4, 0U);
    end += view["byteLength"].get<std::size_t>();
  }
  EXPECT_EQ(end, length);
  for (std::size_t i = 0; i < 3; ++i) {
    const json& accessor = document["accessors"][i];
    const json& view = document["bufferViews"][accessor["bufferView"].get<std::size_t>()];
    const std::size_t size = accessor["type"] == "VEC3" ? 12 : 4;
    EXPECT_EQ(view["byteLength"], size * accessor["count"].get<std::size_t>());
    EXPECT_EQ(view["target"], i < 2 ? 34962 : 34963);  // ARRAY_BUFFER, ELEMENT_ARRAY_BUFFER
  }
}

// "Accessors Bounds": the accessor of POSITION must state them, and they are those of the single-precision numbers.
TEST(Gltf, BoundsOfThePositionsAreExact) {
  const Glb glb = written(tests::mesh_of(tests::bracket()));
  constexpr float kFar = std::numeric_limits<float>::max();
  std::array<float, 3> low{kFar, kFar, kFar};
  std::array<float, 3> high{-kFar, -kFar, -kFar};
  for (const auto& at : triples(glb, 0)) {
    for (std::size_t k = 0; k < 3; ++k) {
      low[k] = std::min(low[k], at[k]);
      high[k] = std::max(high[k], at[k]);
    }
  }
  const json& accessor = glb.document["accessors"][0];
  for (std::size_t k = 0; k < 3; ++k) {
    EXPECT_EQ(accessor["min"][k].get<double>(), static_cast<double>(low[k]));
    EXPECT_EQ(accessor["max"][k].get<double>(), static_cast<double>(high[k]));
  }
}

// "Coordinate System and Units": metres, +Y up. The plate is 100 long, 60 wide, 20 high.
TEST(Gltf, IsInMetresWithYUp) {
  const json accessor = written(tests::mesh_of(tests::plate({}))).document["accessors"][0];
  const std::array<double, 3> low{0.0, 0.0, -0.060};
  const std::array<double, 3> high{0.100, 0.020, 0.0};
  for (std::size_t k = 0; k < 3; ++k) {
    EXPECT_NEAR(accessor["min"][k].get<double>(), low[k], 1e-8);
    EXPECT_NEAR(accessor["max"][k].get<double>(), high[k], 1e-8);
  }
}

// "Meshes": front faces run counterclockwise; normals have length 1. "Index": each names a vertex that is there, none
// the value that ends a strip; three to a triangle.
TEST(Gltf, TrianglesRunCounterclockwiseSeenFromOutside) {
  const Mesh mesh = tests::mesh_of(tests::bracket());
  const Glb glb = written(mesh);
  const Triples at = triples(glb, 0);
  const Triples normals = triples(glb, 1);
  const std::vector<std::uint32_t> index = indices(glb, 2);
  ASSERT_EQ(at.size(), normals.size());
  ASSERT_EQ(index.size(), 3 * mesh.triangles.size());
  for (const auto& n : normals)
    EXPECT_NEAR(std::sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]), 1.0F, 1e-6F);
  const auto vector = [&](std::uint32_t i) { return shape::Vector{at[i][0], at[i][1], at[i][2]}; };
  double six = 0.0;
  for (std::size_t i = 0; i < index.size(); i += 3) {
    for (std::size_t k = i; k < i + 3; ++k)
      ASSERT_LT(index[k], at.size());
    six += dot(vector(index[i]), cross(vector(index[i + 1]), vector(index[i + 2])));
  }
  EXPECT_NEAR(six / 6.0 * 1e9, volume_mm3(mesh), 1e-5 * volume_mm3(mesh));  // m3 to mm3; single precision
}

TEST(Gltf, EveryVertexIsUsed) {
  const Glb glb = written(tests::mesh_of(tests::bracket()));
  const std::vector<std::uint32_t> index = indices(glb, 2);
  EXPECT_EQ(std::set<std::uint32_t>(index.begin(), index.end()).size(), triples(glb, 0).size());
}

TEST(Gltf, RepeatsByteForByteWithKeysInTheirOrder) {
  const std::string first = *write_glb(tests::mesh_of(tests::bracket()), "bracket");
  EXPECT_EQ(*write_glb(tests::mesh_of(tests::bracket()), "bracket"), first);
  EXPECT_THAT(parse(first).json_text,
              ::testing::StartsWith(R"({"asset":{"version":"2.0","generator":"Sparewright"},"scene":0,)"));
}

TEST(Gltf, NamesAreAnyText) {
  const Mesh mesh = tests::mesh_of(tests::plate({}));
  EXPECT_EQ(written(mesh, "O'Brien's \"lever\" \\ \xC3\xA9").document["nodes"][0]["name"],
            "O'Brien's \"lever\" \\ \xC3\xA9");
  EXPECT_EQ(written(mesh, "bad \xFF").document["nodes"][0]["name"], "bad \xEF\xBF\xBD");
}

TEST(Gltf, WhatIsTooLargeIsRefused) {
  EXPECT_EQ(glb_binary_bytes(24, 12).value(), 24U * 24 + 12 * 12);
  for (const auto& [corners, triangles] : {std::pair<std::size_t, std::size_t>{0xFFFFFFFFU, 1},
                                           {0x1000'0000U, 0x2000'0000U},
                                           {3, 0x2000'0000U}}) {
    const auto length = glb_binary_bytes(corners, triangles);
    ASSERT_FALSE(length);
    EXPECT_EQ(length.error().code, base::Code::kTooMany);
  }
  EXPECT_FALSE(write_glb(Mesh{}, "nothing"));
}

}  // namespace
}  // namespace sparewright::solid
