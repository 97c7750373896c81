// Files of solids are the same bytes in every process, though addresses are laid out anew in each.
#include <array>
#include <cstdio>

#include <gtest/gtest.h>
#include <unistd.h>

#include "core/base/hash.hpp"
#include "solid/gltf.hpp"
#include "solid/step.hpp"
#include "solid/stl.hpp"
#include "solid_samples.hpp"

namespace sparewright::solid {
namespace {

constexpr const char* kPrinted = "fingerprint of the bytes: ";

TEST(FilesInAProcess, PrintTheirFingerprint) {
  const Solid solid = tests::solid_of(tests::bracket());
  const auto mesh = mesh_of(solid);
  ASSERT_TRUE(mesh);
  base::Hasher hasher;
  hasher.add(*write_step(solid, "bracket")).add(*write_stl(*mesh)).add(*write_glb(*mesh, "bracket"));
  std::printf("%s%s\n", kPrinted, to_hex(hasher.done()).c_str());
}

std::string in_another_process() {
  std::array<char, 4096> path{};
  const ssize_t length = readlink("/proc/self/exe", path.data(), path.size() - 1);
  EXPECT_GT(length, 0);
  const std::string command = "'" + std::string(path.data()) + "' --gtest_filter=FilesInAProcess.*";
  std::FILE* pipe =
      popen(command.c_str(), "r");  // NOLINT(cert-env33-c): this very program, addresses laid out anew
  EXPECT_NE(pipe, nullptr);
  std::string out;
  std::array<char, 256> line{};
  while (std::fgets(line.data(), static_cast<int>(line.size()), pipe) != nullptr) {
    const std::string text = line.data();
    if (text.starts_with(kPrinted)) out = text;
  }
  EXPECT_EQ(pclose(pipe), 0);
  return out;
}

TEST(Files, RepeatByteForByteInOtherProcesses) {
  const std::string first = in_another_process();
  ASSERT_FALSE(first.empty());
  for (int i = 0; i < 3; ++i)
    EXPECT_EQ(in_another_process(), first);
}

}  // namespace
}  // namespace sparewright::solid
