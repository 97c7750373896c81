#include "core/text/limits.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "core/text/literal.hpp"

namespace sparewright::text {
namespace {

using base::Code;
using base::Failure;

// The length of the well-formed UTF-8 sequence that text begins with, 0 where it is none.
// Source, from memory: The Unicode Standard 15.0, table 3-7.
std::size_t utf8_sequence(std::string_view text) {
  const auto byte = [&](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U; };
  const auto within = [&](std::size_t i, unsigned low, unsigned high) {
    return byte(i) >= low && byte(i) <= high;
  };
  const auto tail = [&](std::size_t i) { return within(i, 0x80, 0xBF); };
  const unsigned lead = byte(0);
  if (lead < 0x80) return 1;
  if (within(0, 0xC2, 0xDF)) return tail(1) ? 2 : 0;
  if (within(0, 0xE0, 0xEF)) {
    return within(1, lead == 0xE0 ? 0xA0 : 0x80, lead == 0xED ? 0x9F : 0xBF) && tail(2) ? 3 : 0;
  }
  if (within(0, 0xF0, 0xF4)) {
    return within(1, lead == 0xF0 ? 0x90 : 0x80, lead == 0xF4 ? 0x8F : 0xBF) && tail(2) && tail(3) ? 4 : 0;
  }
  return 0;
}

// The first byte that is 0 or does not belong to UTF-8.
std::optional<std::size_t> first_bad_byte(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t length = text[at] == '\0' ? 0 : utf8_sequence(text.substr(at));
    if (length == 0) return at;
    at += length;
  }
  return std::nullopt;
}

// Walks the tokens of a text and keeps count. At the first fault of the text it may lose the thread, but so
// far the parser that comes after it goes as well.
class Scan {
 public:
  explicit Scan(std::string_view text) : text_(text) {}

  struct Excess {
    std::size_t offset = 0;
    bool deep = false;  // else too many
  };

  std::optional<Excess> run() {
    while (at_ < text_.size()) {
      step();
      if (level_ + dots_ > kDeepest) return Excess{at_, true};
      if (values_ > kMostValues) return Excess{at_, false};
      ++at_;
    }
    return std::nullopt;
  }

 private:
  void step() {
    const char c = text_[at_];
    if (c == '#') {
      at_ = std::min(text_.find('\n', at_), text_.size()) - 1;
    } else if (c == '"' || c == '\'') {
      skip_string(c);
    } else if (c == '\n') {
      end_line();
      return;
    } else if (c == '[' || c == '{') {
      open(c);
    } else if (c == ']' || c == '}') {
      close();
    } else if (c == '.') {
      ++dots_;
    } else if (c == ',') {
      dots_ = 0;
      ++values_;
    } else if (c == '=') {
      values_ += dots_ + 1;
    }
    if (c != ' ' && c != '\t') line_begun_ = true;
  }

  void open(char bracket) {
    if (bracket == '[' && opened_.empty() && (in_header_ || !line_begun_)) {
      in_header_ = true;
      level_ = 0;
      return;
    }
    ++values_;
    opened_.push_back(dots_ + 1);
    level_ += dots_ + 1;
    dots_ = 0;
  }

  void close() {
    dots_ = in_header_ ? dots_ : 0;
    if (opened_.empty()) return;
    level_ -= opened_.back();
    opened_.pop_back();
  }

  void end_line() {
    if (in_header_) {
      level_ = dots_ + 1;  // what stands below it is inside it
      values_ += level_;
    }
    in_header_ = false;
    line_begun_ = false;
    dots_ = 0;
  }

  // Leaves at_ on the last byte of the string. One that does not end on its line ends with it: the parser
  // says so.
  void skip_string(char quote) {
    const std::string_view rest = text_.substr(at_);
    const std::string three(3, quote);
    const bool multi_line = rest.starts_with(three);
    std::size_t i = multi_line ? 3 : 1;
    while (i < rest.size() && !(multi_line ? rest.substr(i).starts_with(three) : rest[i] == quote)) {
      if (!multi_line && rest[i] == '\n') {
        --i;
        break;
      }
      const bool escape = quote == '"' && rest[i] == '\\' && i + 1 < rest.size() && rest[i + 1] != '\n';
      i += escape ? 2U : 1U;
    }
    if (multi_line) {
      i += 2;
      while (i + 1 < rest.size() && rest[i + 1] == quote)
        ++i;  // """a""""" ends with quotes of its own
    }
    at_ = std::min(at_ + i, text_.size() - 1);
  }

  std::string_view text_;
  std::size_t at_ = 0;
  std::size_t level_ = 0;
  std::size_t dots_ = 0;  // in the key being read
  std::size_t values_ = 0;
  std::vector<std::size_t> opened_;  // the levels each open bracket added
  bool in_header_ = false;
  bool line_begun_ = false;
};

Failure failure(Code code, std::string_view subject, std::string found, std::string accepted,
                base::Place place) {
  Failure out;
  out.code = code;
  out.subject = subject;
  out.found = std::move(found);
  out.accepted = std::move(accepted);
  out.place = std::move(place);
  return out;
}

bool looks_like_utf16(std::string_view text) {
  return text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF");
}

}  // namespace

std::optional<Failure> check_limits(std::string_view text, std::string_view name) {
  if (text.size() > kLargestText) {
    return failure(Code::kFileTooLarge, name, fmt::format("{} bytes long", text.size()),
                   fmt::format("at most {} bytes (4 MiB)", kLargestText), {std::string(name), 0, 0});
  }
  if (text.starts_with(kByteOrderMark)) text.remove_prefix(kByteOrderMark.size());
  if (const auto bad = first_bad_byte(text)) {
    const std::string found = looks_like_utf16(text) ? "it begins like UTF-16"
                                                     : fmt::format("it holds the byte {:02X} (hexadecimal)",
                                                                   static_cast<unsigned char>(text[*bad]));
    return failure(Code::kNotText, name, found, "plain text, saved as UTF-8",
                   base::place_of(name, text, *bad));
  }
  if (const auto excess = Scan(text).run()) {
    const base::Place place = base::place_of(name, text, excess->offset);
    if (excess->deep) {
      return failure(Code::kTooMany, name,
                     fmt::format("more than {} tables and lists inside each other", kDeepest),
                     fmt::format("at most {} levels", kDeepest), place);
    }
    return failure(Code::kTooMany, name, fmt::format("more than {} values", kMostValues),
                   fmt::format("at most {} values", kMostValues), place);
  }
  return std::nullopt;
}

}  // namespace sparewright::text
