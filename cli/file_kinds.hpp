// Which kind of file a name asks for, by its ending, in capitals or not.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "app/session.hpp"

namespace sparewright::cli {

inline constexpr std::string_view kSolidEndings = ".step, .stp, .glb or .stl";
inline constexpr std::string_view kDrawingEndings = ".svg, .png or .json";

// STEP for standard output.
[[nodiscard]] std::optional<app::SolidFile> solid_kind(const std::string& path);
// SVG for standard output.
[[nodiscard]] std::optional<app::DrawingFile> drawing_kind(const std::string& path);

// True for standard output.
[[nodiscard]] bool is_pdf(const std::string& path);

[[nodiscard]] app::Trouble no_file_kind(const std::string& path, std::string_view what,
                                        std::string_view endings);

}  // namespace sparewright::cli
