// An independent judge: a Python script run by /usr/bin/python3 from a test.
#pragma once

#include <algorithm>
#include <array>
#include <cstdio>
#include <fstream>
#include <memory>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include <gtest/gtest.h>
#include <unistd.h>

namespace sparewright::tests {

// What the script prints, line by line. It finds the input in the file named by sys.argv[1]. Throws where
// Python cannot be run or the script fails.
inline std::vector<std::string> judged(std::string_view script, std::string_view input) {
  const std::string stem = testing::TempDir() + "judge-" + std::to_string(getpid());
  std::ofstream(stem + ".py") << script;
  std::ofstream(stem + ".in", std::ios::binary) << input;
  const std::string command = "/usr/bin/python3 " + stem + ".py " + stem + ".in 2>&1";
  std::string output;
  const auto close = [](std::FILE* pipe) { return pclose(pipe); };
  std::unique_ptr<std::FILE, decltype(close)> pipe(popen(command.c_str(), "r"), close);
  if (!pipe) throw std::runtime_error("python3 cannot be started");
  std::array<char, 4096> buffer{};
  for (std::size_t got = 1; got > 0;) {
    got = std::fread(buffer.data(), 1, buffer.size(), pipe.get());
    output.append(buffer.data(), got);
  }
  const int status = pclose(pipe.release());
  std::remove((stem + ".py").c_str());
  std::remove((stem + ".in").c_str());
  if (status != 0) throw std::runtime_error("python3 says: " + output);
  std::vector<std::string> lines;
  for (std::size_t at = 0; at < output.size();) {
    const std::size_t end = std::min(output.find('\n', at), output.size());
    lines.push_back(output.substr(at, end - at));
    at = end + 1;
  }
  return lines;
}

}  // namespace sparewright::tests
