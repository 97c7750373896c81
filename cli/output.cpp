#include "cli/output.hpp"

#include <cstdio>
#include <utility>

#include <fmt/format.h>

#include "cli/files.hpp"
#include "cli/json.hpp"

namespace sparewright::cli {

int tell(const Asked& asked, const app::Troubles& troubles) {
  if (asked.json) {
    fmt::print(stdout, "{}", as_json(troubles));
  }
  for (const app::Trouble& trouble : troubles)
    fmt::print(stderr, "{}\n", app::report(trouble));
  return kWrongInput;
}

app::Outcome<app::Text> read_text(const std::string& path) {
  auto bytes = read_file(path, app::longest_text());
  if (!bytes) return tl::unexpected(app::Troubles{bytes.error()});
  return app::Text{std::move(*bytes), path};
}

int put(const Asked& asked, const std::string& path, const std::string& bytes, int status) {
  if (path == "-") {
    const bool done =
        std::fwrite(bytes.data(), 1, bytes.size(), stdout) == bytes.size() && std::fflush(stdout) == 0;
    if (done) return status;
    fmt::print(stderr, "standard output cannot be written\n");
    return kWrongInput;
  }
  if (const auto written = write_file(path, bytes); !written) return tell(asked, {written.error()});
  fmt::print(stderr, "wrote {} ({} bytes)\n", path, bytes.size());
  return status;
}

app::Paper paper_of(const Asked& asked) {
  return asked.paper == "Letter" ? app::Paper::kLetter : app::Paper::kA4;
}

void print_query(const app::QueryRow& row) {
  if (row.state == "overruled") {
    fmt::print("QUERY      overruled: {}\n           because: {}\n", row.says, row.reason);
    return;
  }
  fmt::print("QUERY      {}{}\n           {}\n           do: {}\n           its name: {}\n",
             row.serious ? "serious: " : "", row.says, row.happens, row.todo, row.id);
}

}  // namespace sparewright::cli
