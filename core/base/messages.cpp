#include "core/base/messages.hpp"

#include <array>
#include <cstddef>

#include <fmt/format.h>

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
    Row{Code::kUnitMissing, "unit-missing", "'{found}' has no unit, and {subject} needs one here"},
    Row{Code::kUnitUnknown, "unit-unknown", "'{found}' is not a unit of {subject}"},
    Row{Code::kUnitOfAnotherKind, "unit-of-another-kind", "'{found}' does not measure {subject}"},
    Row{Code::kThreadWhereLength, "thread-where-length",
        "'{found}' reads like a thread, and {subject} is wanted"},
    Row{Code::kBadFraction, "bad-fraction", "'{found}' is not a fraction"},
    Row{Code::kDesignationWhereLength, "designation-where-length",
        "'{found}' is a drill or fit designation, and {subject} is wanted"},
    Row{Code::kNumberTooLarge, "number-too-large", "'{found}' is larger than anything made here"},
    Row{Code::kTrailingText, "trailing-text", "'{found}' is left over after {subject}"},
    Row{Code::kTwoReadings, "two-readings", "'{found}' can be read in two ways"},
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
    Row{Code::kReadingsDisagree, "readings-disagree",
        "the readings disagree too far to find {subject}: {found}"},
    Row{Code::kKernel, "kernel", "the solid of {subject} could not be made: {found}"},
    Row{Code::kStopped, "stopped", "the work on {subject} was stopped before it was done"},
};
static_assert(kRows.size() == static_cast<std::size_t>(Code::kLast), "every code has its row");

constexpr bool rows_stand_in_order() {
  for (std::size_t i = 0; i < kRows.size(); ++i) {
    if (kRows[i].code != static_cast<Code>(i)) return false;
  }
  return true;
}
static_assert(rows_stand_in_order(), "rows stand in the order of the codes");

const Row& row(Code code) {
  return kRows.at(static_cast<std::size_t>(code));
}

constexpr int kLongestFound = 80;  // characters
constexpr int kLongestAccepted = 400;

// How many bytes the UTF-8 character at the start of text takes; 0 where there is no valid one (RFC 3629,
// section 4).
std::size_t character_at(std::string_view text) {
  const auto byte = [&](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U; };
  const auto follows = [&](std::size_t i) { return (byte(i) & 0xC0U) == 0x80U; };
  const unsigned lead = byte(0);
  if (lead < 0x80U) return 1;
  if (lead >= 0xC2U && lead <= 0xDFU) return follows(1) ? 2 : 0;
  const bool overlong = (lead == 0xE0U && byte(1) < 0xA0U) || (lead == 0xF0U && byte(1) < 0x90U);
  const bool beyond = (lead == 0xEDU && byte(1) > 0x9FU) || (lead == 0xF4U && byte(1) > 0x8FU);
  if (overlong || beyond) return 0;
  if (lead >= 0xE0U && lead <= 0xEFU) return follows(1) && follows(2) ? 3 : 0;
  if (lead >= 0xF0U && lead <= 0xF4U) return follows(1) && follows(2) && follows(3) ? 4 : 0;
  return 0;
}

// What a user typed may be long, hold control characters or be no text at all; it is shown short, on one line
// and in valid UTF-8.
std::string shown(std::string_view typed, int longest) {
  std::string out;
  for (int characters = 0; !typed.empty(); ++characters) {
    if (characters == longest) return out + "...";
    const std::size_t size = character_at(typed);
    const std::string_view one = typed.substr(0, size == 0 ? 1 : size);
    const auto first = static_cast<unsigned char>(one.front());
    const bool control = size == 0 || (size == 1 && (first < 0x20U || first == 0x7FU)) ||
                         (first == 0xC2U && static_cast<unsigned char>(one[1]) < 0xA0U);
    if (!control) {
      out += one;
    } else {
      out += first == '\n' ? "\\n" : first == '\t' ? "\\t" : "?";
    }
    typed.remove_prefix(one.size());
  }
  return out;
}

}  // namespace

std::string_view code_name(Code code) {
  return row(code).name;
}

std::string sentence(const Failure& failure) {
  return fmt::format(fmt::runtime(row(failure.code).sentence),
                     fmt::arg("subject", shown(failure.subject, kLongestFound)),
                     fmt::arg("found", shown(failure.found, kLongestFound)));
}

std::string report(const Failure& failure) {
  std::string out;
  if (failure.place) out += to_string(*failure.place) + ": ";
  out += sentence(failure);
  if (!failure.accepted.empty()) out += "\n    accepted: " + shown(failure.accepted, kLongestAccepted);
  return out;
}

}  // namespace sparewright::base
