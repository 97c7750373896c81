#include <array>

#include <fmt/format.h>

#include "core/answers/fasteners.hpp"
#include "core/base/nearest.hpp"
#include "core/handbook/lookup.hpp"
#include "core/handbook/pins.hpp"
#include "core/handbook/tapers.hpp"

namespace sparewright::answers {
namespace {

using quantity::UnitSystem;

constexpr handbook::Source kPinTaper{"taper of 1/4 in per foot from the large end", "",
                                     handbook::Basis::kDerived};

enum class PinKind { kTaper, kDowel, kSpring };
struct PinWords {
  std::string_view written;
  PinKind kind;
};
// Longer ones first.
constexpr std::array kPinWords{
    PinWords{"slotted spring pin", PinKind::kSpring},
    PinWords{"spring pin", PinKind::kSpring},
    PinWords{"roll pin", PinKind::kSpring},
    PinWords{"dowel pin", PinKind::kDowel},
    PinWords{"dowel", PinKind::kDowel},
    PinWords{"taper pin", PinKind::kTaper},
};

struct Asked {
  PinKind kind = PinKind::kTaper;
  std::string size;
};

// The kind in front of the size or behind it.
base::Result<Asked> read(const std::string& words) {
  const std::string text = handbook::folded(words);
  for (const PinWords& one : kPinWords) {
    if (text.starts_with(fmt::format("{} ", one.written)))
      return Asked{one.kind, text.substr(one.written.size() + 1)};
    if (text.ends_with(fmt::format(" {}", one.written)))
      return Asked{one.kind, text.substr(0, text.size() - one.written.size() - 1)};
  }
  return base::fail(base::Code::kNameUnknown, words,
                    "taper pin, dowel or spring pin with a size, such as 'taper pin 4', 'dowel 1/4 in', "
                    "'spring pin 6 mm'",
                    "pin");
}

base::Result<Answer> taper_pin(const Question& question, const std::string& number) {
  const auto pin = handbook::find_taper_pin(number);
  if (!pin) return tl::unexpected(pin.error());
  const auto length = maybe_size(question, "length");
  if (!length) return tl::unexpected(length.error());
  TableWriter writer("taper pin", UnitSystem::kInch);
  writer.length("large end", pin->large_end, pin->source);
  writer.words("taper", "1/4 in per foot (1 in 48) on the diameter", pin->source);
  Answer answer;
  answer.asked = fmt::format("taper pin {}", pin->number);
  answer.says = fmt::format("large end {}", both_ways(across(pin->large_end), UnitSystem::kInch));
  if (*length) {
    const quantity::Diameter small = pin->small_end((*length)->length());
    if (!(small.base() > 0.0))
      return base::fail(base::Code::kValueNotAccepted, (*length)->typed,
                        fmt::format("a length under {}, where the pin comes to a point",
                                    both_ways(across(pin->large_end) * 48.0, UnitSystem::kInch)),
                        "--length");
    writer.length("small end", small, kPinTaper, fmt::format("{} long", (*length)->typed));
    writer.length("drill no larger than", small, kPinTaper, "before the taper reamer");
    answer.says = fmt::format("small end {}", both_ways(across(small), UnitSystem::kInch));
  }
  answer.tables.push_back(writer.take());
  return answer;
}

base::Result<Answer> dowel(const std::string& size) {
  const auto pin = handbook::dowel_pin(size);
  if (!pin) return tl::unexpected(pin.error());
  const UnitSystem system = pin->name.ends_with("mm") ? UnitSystem::kMetric : UnitSystem::kInch;
  TableWriter writer("dowel pin", system);
  writer.range("pin", pin->pin.low, pin->pin.high, pin->limits_source);
  writer.limits("hole it is pressed into", pin->pressed_hole.low, pin->pressed_hole.high, pin->limits_source);
  if (pin->oversize.base() > 0.0)
    writer.length("oversize pins are larger by", pin->oversize, pin->source, "for a worn or mended hole");
  Answer answer;
  answer.asked = fmt::format("dowel pin {}", pin->name);
  answer.says = fmt::format("press into {}", both_ways(across(pin->pressed_hole.low), system));
  answer.tables.push_back(writer.take());
  answer.cautions.emplace_back("a hardened pin may shatter under a hammer: press it, with eye protection");
  return answer;
}

base::Result<Answer> spring_pin(const std::string& size) {
  const auto pin = handbook::spring_pin(size);
  if (!pin) return tl::unexpected(pin.error());
  const UnitSystem system = pin->name.ends_with("mm") ? UnitSystem::kMetric : UnitSystem::kInch;
  TableWriter writer("slotted spring pin", system);
  writer.length("nominal", pin->nominal, pin->source);
  writer.limits("hole", pin->hole.low, pin->hole.high, pin->source);
  Answer answer;
  answer.asked = fmt::format("slotted spring pin {}", pin->name);
  answer.says = fmt::format("hole {}", both_ways(across(pin->hole.low), system));
  answer.tables.push_back(writer.take());
  return answer;
}

}  // namespace

base::Result<Answer> pin(const Question& question) {
  const auto asked = read(question.words);
  if (!asked) return tl::unexpected(asked.error());
  switch (asked->kind) {
    case PinKind::kTaper:
      return taper_pin(question, asked->size);
    case PinKind::kDowel:
      return dowel(asked->size);
    case PinKind::kSpring:
      return spring_pin(asked->size);
  }
  return base::fail(base::Code::kNameUnknown, question.words, {}, "pin");
}

}  // namespace sparewright::answers
