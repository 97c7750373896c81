#include "sheets/typeset.hpp"

#include <charconv>
#include <optional>

namespace sparewright::sheets {
namespace {

constexpr std::string_view kThinSpace = "\u2009";
constexpr std::string_view kFractionSlash = "\u2044";
constexpr std::string_view kEnDash = "\u2013";
constexpr std::string_view kTimes = "\u00D7";
constexpr std::string_view kNoBreakSpace = "\u00A0";
constexpr std::string_view kMinus = "\u2212";
constexpr std::string_view kPlusMinus = "\u00B1";

bool is_figure(char c) {
  return c >= '0' && c <= '9';
}

// Part of a word: letters, figures, and every byte of a character beyond ASCII.
bool is_letter(char c) {
  return is_figure(c) || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_' ||
         static_cast<unsigned char>(c) >= 0x80U;
}

// Reads one text from left to right.
class Reading {
 public:
  explicit Reading(std::string_view text) : text_(text) {}

  std::string typeset() {
    while (at_ < text_.size()) {
      if (!(fraction() || range() || times() || plus_minus() || reading() || minus())) out_ += text_[at_++];
    }
    return std::move(out_);
  }

 private:
  [[nodiscard]] char ahead(std::size_t by) const { return at_ + by < text_.size() ? text_[at_ + by] : '\0'; }
  [[nodiscard]] char before() const { return at_ > 0 ? text_[at_ - 1] : '\0'; }
  [[nodiscard]] std::size_t figures(std::size_t from) const {
    std::size_t count = 0;
    while (is_figure(ahead(from + count)))
      ++count;
    return count;
  }
  [[nodiscard]] bool starts_number() const {
    const char c = before();
    const bool is_signed = c == '-' || c == '.' || c == '/' || c == ',';
    const bool is_plus_minus =
        at_ >= kPlusMinus.size() && text_.substr(at_ - kPlusMinus.size(), kPlusMinus.size()) == kPlusMinus;
    return !is_signed && (!is_letter(c) || is_plus_minus);
  }
  [[nodiscard]] int value(std::size_t from, std::size_t count) const {
    int number = 0;
    const char* start = text_.data() + at_ + from;
    const auto read = std::from_chars(start, start + count, number);
    return read.ec == std::errc() ? number : -1;
  }

  // Whether a number may end there: no letter, and no further sign unless words follow it.
  [[nodiscard]] bool ends_number(std::size_t at) const {
    const char c = ahead(at);
    if (is_letter(c) || c == '/') return false;
    return !((c == '.' || c == ',') && is_figure(ahead(at + 1)));
  }

  // "3/8" at `from`: the bytes it takes.
  [[nodiscard]] std::optional<std::size_t> proper(std::size_t from) const {
    const std::size_t upper = figures(from);
    if (upper == 0 || upper > 2 || ahead(from + upper) != '/') return std::nullopt;
    const std::size_t lower = figures(from + upper + 1);
    if (lower == 0 || lower > 2) return std::nullopt;
    const int numerator = value(from, upper);
    const int denominator = value(from + upper + 1, lower);
    const bool is_binary = denominator >= 2 && denominator <= 64 && (denominator & (denominator - 1)) == 0;
    const std::size_t taken = upper + 1 + lower;
    if (!is_binary || numerator % 2 == 0 || numerator > denominator || !ends_number(from + taken))
      return std::nullopt;
    return taken;
  }

  bool fraction() {
    if (!is_figure(ahead(0)) || !starts_number()) return false;
    const std::size_t whole = figures(0);
    const bool has_whole = ahead(whole) == '-' && proper(whole + 1);
    const std::size_t from = has_whole ? whole + 1 : 0;
    const auto taken = proper(from);
    if (!taken) return false;
    const std::string_view written = text_.substr(at_ + from, *taken);
    const std::size_t slash = written.find('/');
    if (has_whole) out_.append(text_.substr(at_, whole)).append(kThinSpace);
    out_.append(written.substr(0, slash)).append(kFractionSlash).append(written.substr(slash + 1));
    at_ += from + *taken;
    return true;
  }

  // "0.625": the bytes it takes.
  [[nodiscard]] std::optional<std::size_t> decimal(std::size_t from) const {
    const std::size_t whole = figures(from);
    if (ahead(from + whole) != '.') return std::nullopt;
    const std::size_t places = figures(from + whole + 1);
    if (places == 0) return std::nullopt;
    return whole + 1 + places;
  }

  bool range() {
    if (!starts_number()) return false;
    const auto least = decimal(0);
    if (!least || ahead(*least) != '-') return false;
    const auto most = decimal(*least + 1);
    if (!most || !ends_number(*least + 1 + *most) || ahead(*least + 1 + *most) == '-') return false;
    out_.append(text_.substr(at_, *least)).append(kEnDash).append(text_.substr(at_ + *least + 1, *most));
    at_ += *least + 1 + *most;
    return true;
  }

  bool times() {
    if (ahead(0) != 'x' || before() != ' ' || ahead(1) != ' ') return false;
    const bool after_figure = at_ >= 2 && is_figure(text_[at_ - 2]);
    if (!after_figure || !(is_figure(ahead(2)) || (ahead(2) == '.' && is_figure(ahead(3))))) return false;
    out_ += kTimes;
    ++at_;
    return true;
  }

  bool plus_minus() {
    if (ahead(0) != ' ' || !is_figure(before()) || text_.substr(at_ + 1, kPlusMinus.size()) != kPlusMinus)
      return false;
    out_.append(kNoBreakSpace).append(kPlusMinus);
    at_ += 1 + kPlusMinus.size();
    return true;
  }

  // "5t + 62": what a collar shows is read at one glance, and stays on one line.
  bool reading() {
    if (ahead(0) != 't' || !is_figure(before()) || ahead(1) != ' ' || ahead(3) != ' ' || !is_figure(ahead(4)))
      return false;
    const char sign = ahead(2);
    if (sign != '+' && sign != '-') return false;
    out_ += 't';
    out_.append(kNoBreakSpace);
    if (sign == '-')
      out_.append(kMinus);
    else
      out_ += sign;
    out_.append(kNoBreakSpace);
    at_ += 4;
    return true;
  }

  bool minus() {
    if (ahead(0) != '-') return false;
    const bool is_sign =
        (at_ == 0 || before() == ' ' || before() == '(') && (is_figure(ahead(1)) || ahead(1) == '.');
    if (!is_sign) return false;
    out_ += kMinus;
    ++at_;
    return true;
  }

  std::string_view text_;
  std::size_t at_ = 0;
  std::string out_;
};

}  // namespace

std::string typeset(std::string_view text) {
  return Reading(text).typeset();
}

}  // namespace sparewright::sheets
