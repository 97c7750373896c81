// Files, whole or not at all.
#pragma once

#include <string>

#include <tl/expected.hpp>

#include "app/rows.hpp"

namespace sparewright::cli {

// The bytes of a file of at most `most` bytes. Fails with file-unreadable, file-too-large.
[[nodiscard]] tl::expected<std::string, app::Trouble> read_file(const std::string& path, std::size_t most);

// Writes a file beside the old one, brings it to disk and renames it over the old one: there is the old file or the new
// one, never half of either. Fails with output-not-writable, the old file untouched.
[[nodiscard]] tl::expected<void, app::Trouble> write_file(const std::string& path, const std::string& bytes);

}  // namespace sparewright::cli
