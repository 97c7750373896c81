// Golden files: what people read, as text, under tests/golden. A test that differs writes what it found to
// build/golden/<same path> and fails; tools/approve_golden.sh takes the found ones over after they were looked at.
#pragma once

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

#include <gtest/gtest.h>

namespace sparewright::tests {

// Whether `found` is what the golden file says; the first line that differs is printed.
inline testing::AssertionResult golden(const std::string& path, const std::string& found) {
  const std::filesystem::path root = SPAREWRIGHT_SOURCE_DIR;
  std::ostringstream wanted;
  wanted << std::ifstream(root / "tests/golden" / path, std::ios::binary).rdbuf();
  if (wanted.str() == found) return testing::AssertionSuccess();
  const std::filesystem::path written = root / "build/golden" / path;
  std::filesystem::create_directories(written.parent_path());
  std::ofstream(written, std::ios::binary) << found;
  std::istringstream a(wanted.str());
  std::istringstream b(found);
  std::string golden_line;
  std::string found_line;
  int number = 0;
  do {
    ++number;
    if (!std::getline(a, golden_line)) golden_line = "(end)";
    if (!std::getline(b, found_line)) found_line = "(end)";
  } while (golden_line == found_line && golden_line != "(end)");
  return testing::AssertionFailure() << path << ":" << number << "\n  golden: " << golden_line
                                     << "\n  found:  " << found_line << "\n  written to " << written;
}

}  // namespace sparewright::tests
