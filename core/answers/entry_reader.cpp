#include "core/answers/entry_reader.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/quantity/typed_system.hpp"

namespace sparewright::answers {
namespace {

using quantity::Kind;
using quantity::Length;

constexpr double kSteepestTaper = 0.5;

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && text.front() == ' ')
    text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ')
    text.remove_suffix(1);
  return text;
}

// "1, 2, 3" at its commas.
std::vector<std::string_view> parts_of(std::string_view text) {
  std::vector<std::string_view> parts;
  while (true) {
    const std::size_t comma = text.find(',');
    parts.push_back(trimmed(text.substr(0, comma)));
    if (comma == std::string_view::npos) return parts;
    text.remove_prefix(comma + 1);
  }
}

// The letters and marks at its end: "mm" of "6 +- 0.001 mm".
std::string_view unit_behind(std::string_view text) {
  const std::size_t last_digit = text.find_last_of("0123456789.");
  return last_digit == std::string_view::npos ? text : trimmed(text.substr(last_digit + 1));
}

// Where one of the marks stands, and how long it is.
struct Mark {
  std::size_t at = std::string_view::npos;
  std::size_t length = 0;
};
Mark find_mark(std::string_view text, std::initializer_list<std::string_view> marks) {
  for (const std::string_view mark : marks) {
    if (const std::size_t at = text.find(mark); at != std::string_view::npos) return {at, mark.size()};
  }
  return {};
}

}  // namespace

base::Result<double> taper_entry(const Question& question, std::string_view name) {
  const auto text = text_entry(question, name);
  if (!text) return tl::unexpected(text.error());
  const auto refused = [&] {
    return base::fail(base::Code::kValueNotAccepted, *text, "a taper such as 1:20 or 0.6 in/ft, up to 1:2",
                      fmt::format("--{}", name));
  };
  double taper = 0.0;
  if (const std::size_t colon = text->find(':'); colon != std::string::npos) {
    const auto top = quantity::read_number(text->substr(0, colon), Kind::kNumber, std::nullopt);
    const auto bottom = quantity::read_number(text->substr(colon + 1), Kind::kNumber, std::nullopt);
    if (!top || !bottom || !(bottom->base > 0.0)) return refused();
    taper = top->base / bottom->base;
  } else if (const std::size_t foot = text->find("/ft");
             foot != std::string::npos && foot + 3 == text->size()) {
    const auto per_foot = quantity::read_number(text->substr(0, foot), Kind::kLength, std::nullopt);
    if (!per_foot) return refused();
    taper = per_foot->length() / Length::of(1.0, quantity::unit::foot);
  } else {
    return refused();
  }
  if (!(taper > 0.0 && taper <= kSteepestTaper)) return refused();
  return taper;
}

Length EntryReader::length_of(const quantity::Typed& typed) {
  if (!system_) system_ = system_of(typed);
  return typed.length();
}

Length EntryReader::size(std::string_view name) {
  if (failed()) return {};
  const auto read = size_entry(question_, name);
  if (read) return length_of(*read);
  keep(read.error());
  return {};
}

std::optional<Length> EntryReader::maybe_size(std::string_view name) {
  if (!has(name)) return std::nullopt;
  return size(name);
}

Length EntryReader::place(std::string_view name) {
  if (failed()) return {};
  const auto read = number_entry(question_, name, Kind::kLength);
  if (read) return length_of(*read);
  keep(read.error());
  return {};
}

Length EntryReader::place_or_zero(std::string_view name) {
  return has(name) ? place(name) : Length();
}

int EntryReader::count(std::string_view name, int least, int most) {
  if (failed()) return least;
  const auto read = count_entry(question_, name, least, most);
  if (read) return *read;
  keep(read.error());
  return least;
}

int EntryReader::count_or(std::string_view name, int least, int most, int otherwise) {
  return has(name) ? count(name, least, most) : otherwise;
}

double EntryReader::number(std::string_view name, Kind kind) {
  if (failed()) return 0.0;
  const auto read = number_entry(question_, name, kind);
  if (read) return read->base;
  keep(read.error());
  return 0.0;
}

std::optional<double> EntryReader::maybe_number(std::string_view name, Kind kind) {
  if (!has(name)) return std::nullopt;
  return number(name, kind);
}

double EntryReader::positive(std::string_view name, Kind kind) {
  const double value = number(name, kind);
  if (!failed() && !(value > 0.0)) refuse(name, "more than zero");
  return value;
}

std::optional<double> EntryReader::maybe_positive(std::string_view name, Kind kind) {
  if (!has(name)) return std::nullopt;
  return positive(name, kind);
}

Length EntryReader::part(std::string_view name, std::string_view text, std::string_view unit) {
  if (failed()) return {};
  Question alone{{}, {{std::string(name), std::string(text)}}, nullptr, question_.system};
  auto read = number_entry(alone, name, Kind::kLength);
  if (!read && read.error().code == base::Code::kUnitMissing && !unit.empty()) {
    alone.entries[std::string(name)] = fmt::format("{} {}", text, unit);
    read = number_entry(alone, name, Kind::kLength);
  }
  if (read) return length_of(*read);
  keep(read.error());
  return {};
}

Band EntryReader::band_part(std::string_view name, std::string_view text, std::string_view unit) {
  if (const Mark to = find_mark(text, {" to "}); to.length > 0) {
    const Band band{part(name, text.substr(0, to.at), unit),
                    part(name, text.substr(to.at + to.length), unit)};
    refuse_unless(failed() || band.low <= band.high, name, "the smaller size first");
    return band;
  }
  if (const Mark plus = find_mark(text, {"+/-", "+-", "±"}); plus.length > 0) {
    const Length middle = part(name, text.substr(0, plus.at), unit);
    const Length off = part(name, text.substr(plus.at + plus.length), unit);
    refuse_unless(failed() || off >= Length(), name, "a tolerance that is not less than zero");
    return {middle - off, middle + off};
  }
  const Length one = part(name, text, unit);
  return {one, one};
}

Band EntryReader::band(std::string_view name) {
  const std::vector<Band> one = bands(name, 1, 1);
  if (failed() || one.empty()) return {};
  refuse_unless(one.front().low > Length(), name, "a size more than zero");
  return one.front();
}

std::vector<Length> EntryReader::lengths(std::string_view name, std::size_t least, std::size_t most) {
  std::vector<Length> out;
  for (const Band& one : bands(name, least, most)) {
    refuse_unless(one.low == one.high, name, "plain lengths, without tolerances");
    out.push_back(one.low);
  }
  return out;
}

std::vector<Band> EntryReader::bands(std::string_view name, std::size_t least, std::size_t most) {
  if (failed()) return {};
  const auto text = text_entry(question_, name);
  if (!text) {
    keep(text.error());
    return {};
  }
  const std::vector<std::string_view> parts = parts_of(*text);
  const std::string_view unit = unit_behind(*text);
  if (parts.size() < least || parts.size() > most) {
    refuse(name, least == most ? fmt::format("{} of them", least)
                               : fmt::format("from {} to {} of them, parted by commas", least, most));
    return {};
  }
  std::vector<Band> out;
  for (const std::string_view one : parts)
    out.push_back(band_part(name, one, unit));
  return out;
}

std::string EntryReader::word(std::string_view name, const std::vector<std::string>& accepted) {
  const std::string* given = find_entry(question_, name);
  if (given == nullptr) return accepted.front();
  if (std::find(accepted.begin(), accepted.end(), *given) == accepted.end()) {
    std::string words;
    for (const std::string& one : accepted)
      words += (words.empty() ? "" : one == accepted.back() ? " or " : ", ") + one;
    refuse(name, words);
  }
  return *given;
}

double EntryReader::taper(std::string_view name) {
  if (failed()) return kSteepestTaper;
  const auto read = taper_entry(question_, name);
  if (read) return *read;
  keep(read.error());
  return kSteepestTaper;
}

handbook::FoundMaterial EntryReader::material(std::string_view name, std::string_view otherwise) {
  const std::string* given = find_entry(question_, name);
  auto found = handbook::find_material(given == nullptr ? otherwise : std::string_view(*given));
  if (found) return std::move(*found);
  keep(found.error());
  return {};
}

void EntryReader::refuse(std::string_view name, std::string accepted) {
  const std::string* given = find_entry(question_, name);
  base::Failure failure;
  failure.code = base::Code::kValueNotAccepted;
  failure.subject = fmt::format("--{}", name);
  failure.found = given == nullptr ? "" : *given;
  failure.accepted = std::move(accepted);
  keep(failure);
}

}  // namespace sparewright::answers
