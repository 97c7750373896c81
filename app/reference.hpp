// What a job text and a shop text may hold, for people and for editors.
#pragma once

#include <string>

namespace sparewright::app {

enum class TextKind { kJob, kShop };

// JSON Schema, draft 7.
[[nodiscard]] std::string json_schema(TextKind kind);

// Every key with what it takes, as Markdown.
[[nodiscard]] std::string key_list(TextKind kind);

}  // namespace sparewright::app
