#include "core/quantity/designation.hpp"

#include <algorithm>
#include <array>
#include <string>

#include <tao/pegtl.hpp>

#include "core/quantity/spelling.hpp"

namespace sparewright::quantity {
namespace {

// The rules are named like the words of a grammar, in the manner of the library.
// NOLINTBEGIN(readability-identifier-naming)
namespace name_grammar {

using namespace tao::pegtl;  // NOLINT(google-build-using-namespace): the grammar reads as one

struct gap : star<utf8::one<' ', '\t', '\r', '\n', 0xA0, 0x2009, 0x202F>> {};
struct digits : plus<digit> {};
struct dash : utf8::one<'-', 0x2010, 0x2011, 0x2012, 0x2013, 0x2212> {};
struct fraction : seq<digits, one<'/'>, digits> {};
struct mixed : seq<digits, sor<dash, plus<blank>>, fraction> {};
struct decimal : seq<digits, opt<one<'.'>, digits>> {};

struct unified : seq<opt<one<'#'>>, sor<mixed, fraction, digits>, dash, digits, not_at<one<'/', '.'>>> {};
struct pitch : seq<gap, utf8::one<'x', 'X', 0xD7>, gap, decimal> {};
struct metric : seq<one<'M'>, decimal, opt<pitch>> {};
struct thread : seq<gap, sor<unified, metric>> {};

struct number_drill : seq<one<'#'>, gap, digits> {};
struct letter_drill : seq<istring<'l', 'e', 't', 't', 'e', 'r'>, plus<blank>, upper> {};
struct drill : seq<gap, sor<number_drill, letter_drill>, gap, eof> {};

template <typename Rule>
std::size_t taken(std::string_view text) {
  memory_input in(text.data(), text.data() + text.size(), "");
  return parse<Rule>(in) ? in.byte() : 0;
}

}  // namespace name_grammar
// NOLINTEND(readability-identifier-naming)

constexpr std::array<std::string_view, 28> kDeviations{"A", "B", "C",  "CD", "D", "E",  "EF", "F", "FG", "G",
                                                       "H", "J", "JS", "K",  "M", "N",  "P",  "R", "S",  "T",
                                                       "U", "V", "X",  "Y",  "Z", "ZA", "ZB", "ZC"};
constexpr int kCoarsestGrade = 18;

struct InchFit {
  std::string_view letters;
  int last_class;
};
constexpr std::array<InchFit, 5> kInchFits{{{"RC", 9}, {"LC", 11}, {"LT", 6}, {"LN", 3}, {"FN", 5}}};

// 1 to 99 written without a leading zero, else 0.
int small_number(std::string_view digits) {
  if (digits.empty() || digits.size() > 2 || digits.front() == '0') return 0;
  int n = 0;
  for (const char c : digits) {
    if (!is_digit(c)) return 0;
    n = 10 * n + (c - '0');
  }
  return n;
}

bool is_iso_grade(std::string_view digits) {
  if (digits == "0" || digits == "01") return true;
  const int n = small_number(digits);
  return n >= 1 && n <= kCoarsestGrade;
}

}  // namespace

bool is_drill(std::string_view text) {
  return name_grammar::taken<name_grammar::drill>(text) > 0;
}

std::size_t thread_at(std::string_view text) {
  return name_grammar::taken<name_grammar::thread>(text);
}

bool is_fit_class(std::string_view text) {
  const auto letters =
      static_cast<std::size_t>(std::find_if_not(text.begin(), text.end(), is_letter) - text.begin());
  std::string head(text.substr(0, letters));
  const std::string_view tail = text.substr(letters);
  for (const InchFit& fit : kInchFits) {
    const int n = small_number(tail);
    if (head == fit.letters) return n >= 1 && n <= fit.last_class;
  }
  if (std::all_of(head.begin(), head.end(), is_lower)) {
    for (char& c : head)
      c = static_cast<char>(c - 'a' + 'A');
  }
  return std::find(kDeviations.begin(), kDeviations.end(), head) != kDeviations.end() && is_iso_grade(tail);
}

}  // namespace sparewright::quantity
