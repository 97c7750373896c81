#include "core/text/syntax.hpp"

#include <algorithm>
#include <array>
#include <string>

#include <fmt/format.h>

#include "core/text/literal.hpp"

namespace sparewright::text {
namespace {

using base::Code;
using base::Failure;

constexpr std::string_view kValues =
    "a number such as 1.375 or -5, true or false, a text in quotes such as \"1-3/8 in\", a list [ ... ] "
    "or a table { ... }";

// The parts of a text by the names the parser gives them, and what is taken there. TOML 1.0 says what is.
struct Part {
  std::string_view parser_name;
  std::string_view accepted;
};
constexpr std::array kParts{
    Part{"comment", "a comment of printable characters"},
    Part{"string",
         R"(a text that ends with its quote on the same line; \" is a quote inside it, \\ a backslash)"},
    Part{"unicode scalar sequence", R"(\u and four hexadecimal digits)"},
    Part{"literal string", "a text that ends with its quote on the same line"},
    Part{"table header", "[name] for a table, [[name]] for one of several"},
    Part{"key", "a name of letters, digits, - and _, or a name in quotes"},
    Part{"key-value pair", "one 'key = value' a line"},
    Part{"root table", "'key = value', [name], or # and a comment"},
    Part{"array", "a list such as [1, 2, 3]"},
    Part{"inline table", "a table such as { x = 1, y = 2 }, on one line, with no comma before the }"},
};

std::string_view line_up_to(std::string_view text, std::size_t offset) {
  const std::string_view before = text.substr(0, offset);
  const auto line_end = before.rfind('\n');
  return line_end == std::string_view::npos ? before : before.substr(line_end + 1);
}

// The run of characters that was to be a value: from the = or bracket before the offset to the end of the
// line or to what ends an item.
struct Run {
  std::string_view value;
  bool begins_before_offset = false;
};
Run value_at(std::string_view text, std::size_t offset) {
  const std::string_view line = line_up_to(text, offset);
  const auto opener = line.find_last_of("=[{,");
  const std::size_t begin = offset - line.size() + (opener == std::string_view::npos ? 0 : opener + 1);
  const std::string_view rest = text.substr(begin);
  const bool is_item = line.find_first_of("[{,") != std::string_view::npos;
  return {trimmed(rest.substr(0, rest.find_first_of(is_item ? ",]}#\n" : "#\n"))),
          !trimmed(text.substr(begin, offset - begin)).empty()};
}

// The key or header of the statement that the offset is in.
std::string_view statement_key(std::string_view text, std::size_t offset) {
  const std::size_t begin = offset - line_up_to(text, offset).size();
  const std::string_view line = trimmed(text.substr(begin, text.find('\n', begin) - begin));
  return line.starts_with('[') ? line : trimmed(line.substr(0, line.find('=')));
}

// True where the parser stumbled over a value written without the quotes it needs: in a number, a date or
// true and false, where it found no value, or behind what it took for the whole of one (1.375 in).
bool is_about_a_value(std::string_view why, bool known_part, const Run& run) {
  if (!known_part || why.starts_with("expected value, saw")) return true;
  const bool behind =
      why.starts_with("expected a comment or whitespace") || why.starts_with("expected comma or");
  const bool bare =
      !run.value.empty() && std::string_view("\"'[{").find(run.value.front()) == std::string_view::npos;
  return behind && bare && run.begins_before_offset;
}

}  // namespace

Failure syntax_failure(std::string_view text, std::size_t offset, std::string_view complaint) {
  constexpr std::string_view kPrefix = "Error while parsing ";
  offset = std::min(offset, text.size());
  const auto colon = complaint.starts_with(kPrefix) ? complaint.find(": ") : std::string_view::npos;
  const bool in_part = colon != std::string_view::npos;
  const std::string_view part = in_part ? complaint.substr(kPrefix.size(), colon - kPrefix.size()) : "";
  const std::string_view why = in_part ? complaint.substr(colon + 2) : complaint;

  Failure failure;
  failure.code = Code::kTextSyntax;
  failure.subject = part;
  failure.found = why;
  if (why.starts_with("cannot redefine")) {
    failure.code = Code::kNameTwice;
    failure.subject = "key";
    failure.found = statement_key(text, offset);
    failure.accepted = "each key and each [header] once; a key that has a value cannot hold other keys";
    return failure;
  }
  const auto* row =
      std::find_if(kParts.begin(), kParts.end(), [&](const Part& p) { return p.parser_name == part; });
  const bool known_part = row != kParts.end();
  if (known_part) failure.accepted = row->accepted;
  if (why == "encountered end-of-file") failure.found = "it ends too early";
  const bool at_line_end = offset == text.size() || text[offset] == '\n' || text[offset] == '\r';
  if (at_line_end && (part == "string" || part == "literal string")) failure.found = "a quote is not closed";
  if (const Run run = value_at(text, offset); in_part && is_about_a_value(why, known_part, run)) {
    failure.found =
        run.value.empty() ? "no value is written here" : fmt::format("not a value: {}", run.value);
    failure.accepted = kValues;
  }
  return failure;
}

}  // namespace sparewright::text
