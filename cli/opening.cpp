#include "cli/opening.hpp"

#include <algorithm>
#include <filesystem>
#include <string>
#include <utility>

#include "cli/output.hpp"

namespace sparewright::cli {
namespace {

// The check of a job that only measures.
constexpr const char* kNoNewPart = "new part";

// The shop text asked for, else the one the job names, which lies beside the job.
app::Outcome<std::string> shop_path(const Asked& asked, const app::Text& job) {
  if (!asked.shop.empty()) return asked.shop;
  const auto named = app::shop_named_in(job);
  if (!named) return tl::unexpected(named.error());
  if (named->empty()) {
    app::Trouble trouble;
    trouble.code = "key-missing";
    trouble.says = "the job names no shop, or this is no job text";
    trouble.accepted = "shop = \"....shop.toml\" under [job], or --shop FILE";
    trouble.file = job.name;
    return tl::unexpected(app::Troubles{std::move(trouble)});
  }
  return (std::filesystem::path(asked.job).parent_path() / *named).string();
}

}  // namespace

app::Outcome<app::Session> open(const Asked& asked) {
  auto job = read_text(asked.job);
  if (!job) return tl::unexpected(job.error());
  const auto path = shop_path(asked, *job);
  if (!path) return tl::unexpected(path.error());
  auto shop = read_text(*path);
  if (!shop) return tl::unexpected(shop.error());
  return app::Session::open(std::move(*job), std::move(*shop));
}

int status_of(app::Session& session, Judged judged) {
  const auto verdicts = session.verdicts();
  const bool bad = std::any_of(verdicts.begin(), verdicts.end(), [&](const app::VerdictRow& v) {
    if (judged == Judged::kWhatThereIs && v.check == kNoNewPart) return false;
    return v.verdict == "NO" || v.verdict == "NOT KNOWN";
  });
  const auto queries = session.queries();
  const bool serious = std::any_of(queries.begin(), queries.end(),
                                   [](const app::QueryRow& q) { return q.serious && q.state == "open"; });
  return bad || serious ? kNotWell : kAllWell;
}

}  // namespace sparewright::cli
