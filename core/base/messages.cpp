#include "core/base/messages.hpp"

#include <fmt/format.h>

#include <array>
#include <cstddef>

namespace sparewright::base {
namespace {

struct Row {
  Code code;
  std::string_view name;
  std::string_view sentence;  // {subject}, {found}
};

constexpr std::array kRows{
    Row{Code::kEmptyValue, "empty-value", "nothing is written where {subject} is wanted"},
    Row{Code::kNotANumber, "not-a-number", "'{found}' is not {subject}"},
    Row{Code::kDecimalComma, "decimal-comma", "'{found}' has a comma in the number; write a decimal point"},
    Row{Code::kUnitMissing, "unit-missing", "'{found}' has no unit, and none is set here"},
    Row{Code::kUnitUnknown, "unit-unknown", "'{found}' is not a unit of {subject}"},
    Row{Code::kUnitOfAnotherKind, "unit-of-another-kind", "'{found}' does not measure {subject}"},
    Row{Code::kThreadWhereLength, "thread-where-length",
        "'{found}' reads like a thread (diameter-threads per inch), and {subject} is wanted"},
    Row{Code::kBadFraction, "bad-fraction", "'{found}' is not a fraction of an inch"},
    Row{Code::kDesignationWhereLength, "designation-where-length",
        "'{found}' is a drill or fit designation, and {subject} is wanted"},
    Row{Code::kNumberTooLarge, "number-too-large", "'{found}' is larger than anything made here"},
    Row{Code::kTrailingText, "trailing-text", "'{found}' is left over after {subject}"},
    Row{Code::kBadTolerance, "bad-tolerance", "'{found}' is not a tolerance"},
    Row{Code::kToleranceOrder, "tolerance-order", "'{found}' has its lower limit above its upper limit"},
    Row{Code::kFormulaSyntax, "formula-syntax", "the formula cannot be read at '{found}'"},
    Row{Code::kNameUnknown, "name-unknown", "'{found}' is not a known {subject}"},
    Row{Code::kKindsDoNotMix, "kinds-do-not-mix", "{subject}: {found}"},
    Row{Code::kDividesByZero, "divides-by-zero", "'{found}' divides by zero"},
    Row{Code::kOutsideDomain, "outside-domain", "{subject} cannot be taken of {found}"},
    Row{Code::kTextSyntax, "text-syntax", "the text cannot be read: {found}"},
    Row{Code::kNotText, "not-text", "{subject} is not a text in UTF-8: {found}"},
    Row{Code::kKeyUnknown, "key-unknown", "{subject} has no key '{found}'"},
    Row{Code::kKeyMissing, "key-missing", "{subject} needs the key '{found}'"},
    Row{Code::kValueOfAnotherType, "value-of-another-type", "'{subject}' is {found}"},
    Row{Code::kValueNotAccepted, "value-not-accepted", "'{subject}' cannot be '{found}'"},
    Row{Code::kNameTwice, "name-twice", "the {subject} '{found}' is there twice"},
    Row{Code::kNameCircle, "name-circle", "{subject} depends on itself: {found}"},
    Row{Code::kEditRefused, "edit-refused", "the edit of {subject} is refused: {found}"},
    Row{Code::kFileUnreadable, "file-unreadable", "{subject} cannot be read: {found}"},
    Row{Code::kFileTooLarge, "file-too-large", "{subject} is {found}"},
    Row{Code::kOutputNotWritable, "output-not-writable", "{subject} cannot be written: {found}"},
    Row{Code::kNotInTheShop, "not-in-the-shop", "the shop has no {subject} '{found}'"},
    Row{Code::kNotInTheJob, "not-in-the-job", "the job has no {subject} '{found}'"},
    Row{Code::kSizeNotPositive, "size-not-positive", "{subject} is {found}; it must be more than zero"},
    Row{Code::kNotTabled, "not-tabled", "{subject} is not tabled here for {found}"},
    Row{Code::kNotSupported, "not-supported", "{subject}: {found} is not done here yet"},
    Row{Code::kTooMany, "too-many", "{subject}: {found}"},
    Row{Code::kReadingsTooFew, "readings-too-few", "the readings do not fix {subject}"},
    Row{Code::kKernel, "kernel", "the solid of {subject} could not be made: {found}"},
};
static_assert(kRows.size() == static_cast<std::size_t>(Code::kLast), "every code has its row");

constexpr bool rows_stand_in_order() {
  for (std::size_t i = 0; i < kRows.size(); ++i) {
    if (kRows[i].code != static_cast<Code>(i)) return false;
  }
  return true;
}
static_assert(rows_stand_in_order(), "rows stand in the order of the codes");

const Row& row(Code code) { return kRows.at(static_cast<std::size_t>(code)); }

// What a user typed may be long or hold control characters; it is shown short and on one line.
std::string shown(std::string_view typed) {
  constexpr std::size_t kLongest = 80;
  std::string out;
  for (const char c : typed.substr(0, kLongest)) {
    if (static_cast<unsigned char>(c) < 0x20U) {
      out += c == '\n' ? "\\n" : c == '\t' ? "\\t" : "?";
    } else {
      out += c;
    }
  }
  if (typed.size() > kLongest) {
    while (!out.empty() && (static_cast<unsigned char>(out.back()) & 0xC0U) == 0x80U) out.pop_back();
    if (!out.empty() && static_cast<unsigned char>(out.back()) >= 0xC0U) out.pop_back();
    out += "...";
  }
  return out;
}

}  // namespace

std::string_view code_name(Code code) { return row(code).name; }

std::string sentence(const Failure& failure) {
  return fmt::format(fmt::runtime(row(failure.code).sentence), fmt::arg("subject", failure.subject),
                     fmt::arg("found", shown(failure.found)));
}

std::string report(const Failure& failure) {
  std::string out;
  if (failure.place) out += to_string(*failure.place) + ": ";
  out += sentence(failure);
  if (!failure.accepted.empty()) out += "\n    accepted: " + failure.accepted;
  return out;
}

}  // namespace sparewright::base
