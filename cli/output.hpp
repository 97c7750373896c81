// What every command does with texts, troubles and bytes.
#pragma once

#include <string>

#include "app/session.hpp"
#include "cli/commands.hpp"

namespace sparewright::cli {

// Prints them to standard error, and as JSON to standard output where that is asked for. Gives kWrongInput.
int tell(const Asked& asked, const app::Troubles& troubles);

[[nodiscard]] app::Outcome<app::Text> read_text(const std::string& path);

// Writes a file, or to standard output where the path is -. Gives `status`, or kWrongInput where it cannot be written.
int put(const Asked& asked, const std::string& path, const std::string& bytes, int status);

void print_query(const app::QueryRow& row);

[[nodiscard]] app::Paper paper_of(const Asked& asked);

}  // namespace sparewright::cli
