#include "drawing/wrap.hpp"

#include <algorithm>

namespace sparewright::drawing {
namespace {

bool continues(unsigned char byte) {
  return (byte & 0xC0U) == 0x80U;
}

// U+0300 to U+036F are the bytes CC 80 to CD AF.
bool combines(std::string_view text) {
  if (text.size() < 2) return false;
  const auto lead = static_cast<unsigned char>(text[0]);
  const auto next = static_cast<unsigned char>(text[1]);
  return lead == 0xCCU || (lead == 0xCDU && next <= 0xAFU);
}

// Bytes of the first character with the marks that belong to it.
std::size_t first_character(std::string_view text) {
  std::size_t end = 1;
  while (end < text.size() &&
         (continues(static_cast<unsigned char>(text[end])) || combines(text.substr(end))))
    ++end;
  return end;
}

class Wrapping {
 public:
  Wrapping(const Ruler& ruler, const TextStyle& style, double width_mm)
      : ruler_(ruler), style_(style), width_mm_(width_mm) {}

  // `glued`: no space stands between it and what is before.
  void add(std::string_view word, bool glued) {
    std::string longer = line_;
    if (!line_.empty() && !glued) longer += ' ';
    longer += word;
    if (fits(longer)) {
      line_ = longer;
      return;
    }
    finish_line();
    for (std::size_t taken = fitting(word); taken < word.size(); taken = fitting(word)) {
      lines_.emplace_back(word.substr(0, taken));
      word.remove_prefix(taken);
    }
    line_ = word;
  }

  std::vector<std::string> finish() {
    finish_line();
    return std::move(lines_);
  }

 private:
  [[nodiscard]] bool fits(std::string_view text) const {
    return ruler_.measure(text, style_).width_mm <= width_mm_;
  }

  // Bytes of as many characters as fit, at least one.
  [[nodiscard]] std::size_t fitting(std::string_view word) const {
    std::size_t taken = first_character(word);
    while (taken < word.size()) {
      const std::size_t more = taken + first_character(word.substr(taken));
      if (!fits(word.substr(0, more))) break;
      taken = more;
    }
    return taken;
  }

  void finish_line() {
    if (!line_.empty()) lines_.push_back(std::move(line_));
    line_.clear();
  }

  const Ruler& ruler_;
  TextStyle style_;
  double width_mm_;
  std::string line_;
  std::vector<std::string> lines_;
};

struct Word {
  std::string_view text;
  bool glued = false;
};

bool is_letter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

// Bytes up to where a word may be broken first: after an en dash, or after a hyphen between letters.
std::size_t first_piece(std::string_view word) {
  constexpr std::string_view kEnDash = "\u2013";
  for (std::size_t i = 0; i < word.size(); ++i) {
    if (word.substr(i, kEnDash.size()) == kEnDash) return i + kEnDash.size();
    if (word[i] == '-' && i > 0 && i + 1 < word.size() && is_letter(word[i - 1]) && is_letter(word[i + 1]))
      return i + 1;
  }
  return word.size();
}

std::vector<Word> words_of(std::string_view text) {
  std::vector<Word> words;
  while (!text.empty()) {
    const std::size_t space = std::min(text.find(' '), text.size());
    for (std::string_view word = text.substr(0, space); !word.empty();) {
      const std::size_t end = first_piece(word);
      words.push_back({word.substr(0, end), word.data() != text.data()});
      word.remove_prefix(end);
    }
    text.remove_prefix(std::min(space + 1, text.size()));
  }
  return words;
}

}  // namespace

std::vector<std::string> wrap(const Ruler& ruler, std::string_view text, const TextStyle& style,
                              double width_mm) {
  Wrapping wrapping(ruler, style, width_mm);
  for (const Word& word : words_of(text))
    wrapping.add(word.text, word.glued);
  return wrapping.finish();
}

double longest_word(const Ruler& ruler, std::string_view text, const TextStyle& style) {
  double longest = 0.0;
  for (const Word& word : words_of(text))
    longest = std::max(longest, ruler.measure(word.text, style).width_mm);
  return longest;
}

std::vector<std::string> wrap_even(const Ruler& ruler, std::string_view text, const TextStyle& style,
                                   double width_mm) {
  constexpr int kHalvings = 7;  // to less than a hundredth of the width
  std::vector<std::string> best = wrap(ruler, text, style, width_mm);
  if (best.size() < 2) return best;
  double too_narrow = std::min(longest_word(ruler, text, style), width_mm);
  double enough = width_mm;
  for (int i = 0; i < kHalvings; ++i) {
    const double middle = (too_narrow + enough) / 2.0;
    std::vector<std::string> lines = wrap(ruler, text, style, middle);
    if (lines.size() == best.size()) {
      best = std::move(lines);
      enough = middle;
    } else {
      too_narrow = middle;
    }
  }
  return best;
}

double widest(const Ruler& ruler, const std::vector<std::string>& lines, const TextStyle& style) {
  double width = 0.0;
  for (const std::string& line : lines)
    width = std::max(width, ruler.measure(line, style).width_mm);
  return width;
}

}  // namespace sparewright::drawing
