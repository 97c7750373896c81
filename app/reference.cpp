#include "app/reference.hpp"

#include <fmt/format.h>

#include "core/job/shapes.hpp"
#include "core/text/json_schema.hpp"
#include "core/text/known_keys.hpp"

namespace sparewright::app {
namespace {

std::string row_of(const text::KnownKey& key) {
  std::string notes = key.says;
  const auto add = [&](const std::string& note) { notes += (notes.empty() ? "" : "; ") + note; };
  if (key.is_required) add("must be there");
  if (!key.only_with.empty()) add("only with " + key.only_with);
  return fmt::format("- `{}`: {}{}\n", key.path, key.accepted, notes.empty() ? "" : " (" + notes + ")");
}

}  // namespace

std::string json_schema(TextKind kind) {
  if (kind == TextKind::kJob) {
    return text::json_schema(job::job_shape(), "Sparewright job",
                             "One replacement part: measured, made, checked");
  }
  return text::json_schema(job::shop_shape(), "Sparewright shop",
                           "Machines, holding devices, instruments and tools");
}

std::string key_list(TextKind kind) {
  const bool is_job = kind == TextKind::kJob;
  std::string out = fmt::format(
      "# Every key of a {0} text\n\n"
      "Written by `sparewright keys {0}`. `[]` stands for an entry of a list, `<...>` for a name of your "
      "own.\n"
      "A TOML table in braces must stand on one line.\n\n",
      is_job ? "job" : "shop");
  for (const text::KnownKey& key : text::known_keys(is_job ? job::job_shape() : job::shop_shape()))
    out += row_of(key);
  return out;
}

}  // namespace sparewright::app
