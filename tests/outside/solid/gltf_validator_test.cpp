// Our glTF files before the validator of those who publish the format (tests/outside/solid/gltf_validator).
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <memory>
#include <sstream>
#include <stdexcept>

#include <gtest/gtest.h>
#include <unistd.h>

#include "closed_form_bars.hpp"
#include "solid/gltf.hpp"
#include "solid_samples.hpp"

namespace sparewright::solid {
namespace {

struct Judgement {
  int errors = -1;
  int warnings = -1;
  int infos = -1;
  int hints = -1;
  std::string first;
};

Judgement judged(const std::string& glb) {
  const std::filesystem::path file =
      std::filesystem::path(::testing::TempDir()) / ("judged-" + std::to_string(::getpid()) + ".glb");
  std::ofstream(file, std::ios::binary) << glb;
  const std::string command = "node '" SPAREWRIGHT_SOURCE_DIR
                              "/tests/outside/solid/gltf_validator/judge.cjs' '" +
                              file.string() + "' 2>&1";
  std::string output;
  const auto close = [](std::FILE* pipe) { return ::pclose(pipe); };
  std::unique_ptr<std::FILE, decltype(close)> pipe(::popen(command.c_str(), "r"), close);
  if (!pipe) throw std::runtime_error("node cannot be started");
  std::array<char, 4096> buffer{};
  while (const std::size_t got = std::fread(buffer.data(), 1, buffer.size(), pipe.get()))
    output.append(buffer.data(), got);
  const int status = ::pclose(pipe.release());
  std::filesystem::remove(file);
  if (status != 0) throw std::runtime_error("node says: " + output);
  Judgement judgement;
  std::istringstream words(output);
  words >> judgement.errors >> judgement.warnings >> judgement.infos >> judgement.hints;
  std::getline(words, judgement.first);
  return judgement;
}

std::string glb_of(const shape::Recipe& recipe, std::string_view name) {
  const auto glb = write_glb(tests::mesh_of(recipe), name);
  EXPECT_TRUE(glb);
  return glb.value();
}

void expect_nothing_to_say(const std::string& glb) {
  const Judgement judgement = judged(glb);
  EXPECT_EQ(judgement.errors, 0) << judgement.first;
  EXPECT_EQ(judgement.warnings, 0) << judgement.first;
  EXPECT_EQ(judgement.infos, 0) << judgement.first;
  EXPECT_EQ(judgement.hints, 0) << judgement.first;
}

std::vector<tests::ClosedForm> parts() {
  std::vector<tests::ClosedForm> all;
  for (auto* some : {&tests::contoured_plates, &tests::turned_bars, &tests::other_blanks}) {
    for (tests::ClosedForm& part : some())
      all.push_back(std::move(part));
  }
  return all;
}

class OutsideGltfValidator : public ::testing::TestWithParam<tests::ClosedForm> {};

TEST_P(OutsideGltfValidator, HasNothingToSay) {
  const auto recipe = shape::Recipe::make({"blank", GetParam().blank}, GetParam().cutters);
  ASSERT_TRUE(recipe);
  expect_nothing_to_say(glb_of(*recipe, GetParam().name));
}
INSTANTIATE_TEST_SUITE_P(Parts, OutsideGltfValidator, ::testing::ValuesIn(parts()),
                         [](const auto& part) { return std::to_string(part.index); });

TEST(OutsideGltfValidatorOnBracket, HasNothingToSayWhateverTheName) {
  expect_nothing_to_say(glb_of(tests::bracket(), "bracket"));
  expect_nothing_to_say(glb_of(tests::bracket(), "St\xC3\xBCtze \"3\"\n\xFF"));
}

TEST(OutsideGltfValidatorOnBracket, HasNothingToSayOfTwoLumps) {
  expect_nothing_to_say(glb_of(tests::plate({tests::saw_cut(40.0, 42.0)}), "halves"));
}

// The judge can say no: what is changed is said to be wrong.
TEST(OutsideGltfValidatorOnBracket, SaysWhatIsWrong) {
  const std::string glb = glb_of(tests::bracket(), "bracket");
  const auto changed = [&](std::string_view from, std::string_view to) {
    std::string other = glb;
    const std::size_t at = other.find(from);
    EXPECT_NE(at, std::string::npos) << from;
    other.replace(at, from.size(), to);
    return other;
  };
  EXPECT_GT(judged(changed(R"("SCALAR")", R"("VECTOR")")).errors, 0);
  EXPECT_GT(judged(changed(R"("componentType":5125)", R"("componentType":5126)")).errors, 0);
  EXPECT_GT(judged(changed(R"("version":"2.0")", R"("version":"9.0")")).errors, 0);
  std::string one_index_off = glb;
  one_index_off.replace(one_index_off.size() - 1, 1, "\x7F");  // the last index's highest byte
  EXPECT_GT(judged(one_index_off).errors, 0);
  EXPECT_GT(judged(glb.substr(0, glb.size() - 4)).errors, 0);
}

}  // namespace
}  // namespace sparewright::solid
