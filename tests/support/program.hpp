// Runs the built program as a user does, in a folder of its own that holds copies of the examples.
#pragma once

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

namespace sparewright::tests {

inline std::string contents(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

struct Ran {
  int status = -1;
  std::string out;
  std::string err;
};

class ProgramTest : public testing::Test {
 protected:
  void SetUp() override {
    std::string name = (std::filesystem::temp_directory_path() / "sparewright-XXXXXX").string();
    ASSERT_NE(::mkdtemp(name.data()), nullptr);
    folder_ = name;
    for (const auto& entry :
         std::filesystem::directory_iterator(std::filesystem::path(SPAREWRIGHT_SOURCE_DIR) / "examples")) {
      if (entry.is_regular_file()) std::filesystem::copy(entry.path(), folder_);
    }
  }
  void TearDown() override { std::filesystem::remove_all(folder_); }

  // Runs `sparewright <arguments>` in the folder; `before` are shell words in front, as a limit.
  Ran run(const std::string& arguments, const std::string& before = {}) {
    const std::string command = "cd '" + folder_.string() + "' && " + before + " '" + SPAREWRIGHT_PROGRAM +
                                "' " + arguments + " 2> .err";
    Ran ran;
    FILE* pipe = ::popen(command.c_str(), "r");
    if (pipe == nullptr) return ran;
    char chunk[4096];
    while (const std::size_t n = std::fread(chunk, 1, sizeof chunk, pipe))
      ran.out.append(chunk, n);
    const int ended = ::pclose(pipe);
    ran.status = WIFEXITED(ended) ? WEXITSTATUS(ended) : -1;
    ran.err = contents(folder_ / ".err");
    return ran;
  }

  void write(const std::string& name, const std::string& text) {
    std::ofstream(folder_ / name, std::ios::binary) << text;
  }
  [[nodiscard]] std::string read(const std::string& name) const { return contents(folder_ / name); }
  [[nodiscard]] std::filesystem::path at(const std::string& name) const { return folder_ / name; }

  // A copy of a file with one piece of text put in place of another, every time it stands there.
  void change(const std::string& from, const std::string& to, const std::string& old_text,
              const std::string& new_text) {
    std::string text = read(from);
    std::size_t count = 0;
    for (std::size_t i = text.find(old_text); i != std::string::npos;
         i = text.find(old_text, i + new_text.size())) {
      text.replace(i, old_text.size(), new_text);
      ++count;
    }
    ASSERT_GT(count, 0U) << "'" << old_text << "' is not in " << from;
    write(to, text);
  }
  // Files in the folder that no test of this kind makes: what an interrupted write left.
  [[nodiscard]] std::size_t leftovers() const {
    std::size_t count = 0;
    for (const auto& entry : std::filesystem::directory_iterator(folder_)) {
      count += entry.path().filename().string().find(".new-") != std::string::npos ? 1U : 0U;
    }
    return count;
  }

 private:
  std::filesystem::path folder_;
};

}  // namespace sparewright::tests
