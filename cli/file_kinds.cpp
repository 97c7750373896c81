#include "cli/file_kinds.hpp"

#include <filesystem>

#include <fmt/format.h>

namespace sparewright::cli {
namespace {

std::string ending_of(const std::string& path) {
  std::string ending = std::filesystem::path(path).extension().string();
  for (char& c : ending)
    c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  return ending;
}

}  // namespace

std::optional<app::SolidFile> solid_kind(const std::string& path) {
  if (path == "-") return app::SolidFile::kStep;
  const std::string ending = ending_of(path);
  if (ending == ".step" || ending == ".stp") return app::SolidFile::kStep;
  if (ending == ".glb") return app::SolidFile::kGlb;
  if (ending == ".stl") return app::SolidFile::kStl;
  return std::nullopt;
}

std::optional<app::DrawingFile> drawing_kind(const std::string& path) {
  if (path == "-") return app::DrawingFile::kSvg;
  const std::string ending = ending_of(path);
  if (ending == ".svg") return app::DrawingFile::kSvg;
  if (ending == ".png") return app::DrawingFile::kPng;
  if (ending == ".json") return app::DrawingFile::kJson;
  return std::nullopt;
}

bool is_pdf(const std::string& path) {
  return path == "-" || ending_of(path) == ".pdf";
}

app::Trouble no_file_kind(const std::string& path, std::string_view what, std::string_view endings) {
  app::Trouble trouble;
  trouble.code = "value-not-accepted";
  trouble.says = fmt::format("'{}' is no kind of {} file that is written here", path, what);
  trouble.accepted = fmt::format("a name that ends in {}", endings);
  return trouble;
}

}  // namespace sparewright::cli
