#include "core/answers/question.hpp"

#include <charconv>

#include <fmt/format.h>

namespace sparewright::answers {
namespace {

using quantity::Kind;
using quantity::Typed;

std::string option(std::string_view name) {
  return fmt::format("--{}", name);
}

// The failure with the entry it is about in front of what was found.
base::Failure about(base::Failure failure, std::string_view name) {
  failure.subject = failure.subject.empty() ? option(name) : option(name) + ": " + failure.subject;
  return failure;
}

}  // namespace

const std::string* find_entry(const Question& question, std::string_view name) {
  const auto found = question.entries.find(std::string(name));
  return found == question.entries.end() ? nullptr : &found->second;
}

base::Result<std::string> text_entry(const Question& question, std::string_view name) {
  const std::string* text = find_entry(question, name);
  if (text == nullptr || text->empty())
    return base::fail(base::Code::kEmptyValue, "", "give " + option(name), option(name));
  return *text;
}

base::Result<Typed> number_entry(const Question& question, std::string_view name, Kind kind) {
  const auto text = text_entry(question, name);
  if (!text) return tl::unexpected(text.error());
  const auto read = quantity::read_number(*text, kind, std::nullopt);
  if (!read) return tl::unexpected(about(read.error(), name));
  return *read;
}

base::Result<Typed> size_entry(const Question& question, std::string_view name) {
  auto read = number_entry(question, name, Kind::kLength);
  if (read && !(read->base > 0.0))
    return base::fail(base::Code::kSizeNotPositive, read->typed, "a size more than zero", option(name));
  return read;
}

base::Result<int> count_entry(const Question& question, std::string_view name, int least, int most) {
  const auto text = text_entry(question, name);
  if (!text) return tl::unexpected(text.error());
  int count = 0;
  const char* const end = text->data() + text->size();
  const auto [stopped, error] = std::from_chars(text->data(), end, count);
  if (error != std::errc{} || stopped != end || count < least || count > most)
    return base::fail(base::Code::kValueNotAccepted, *text,
                      fmt::format("a whole number from {} to {}", least, most), option(name));
  return count;
}

base::Result<int> count_or(const Question& question, std::string_view name, int least, int most,
                           int otherwise) {
  if (find_entry(question, name) == nullptr) return otherwise;
  return count_entry(question, name, least, most);
}

base::Result<handbook::TypedPitch> pitch_entry(const Question& question, std::string_view name) {
  const auto text = text_entry(question, name);
  if (!text) return tl::unexpected(text.error());
  const auto pitch = handbook::read_pitch(*text);
  if (!pitch) return tl::unexpected(about(pitch.error(), name));
  return *pitch;
}

Maybe<Typed> maybe_size(const Question& question, std::string_view name) {
  if (find_entry(question, name) == nullptr) return std::optional<Typed>();
  auto size = size_entry(question, name);
  if (!size) return tl::unexpected(size.error());
  return std::optional<Typed>(std::move(*size));
}

Maybe<Typed> maybe_number(const Question& question, std::string_view name, Kind kind) {
  if (find_entry(question, name) == nullptr) return std::optional<Typed>();
  auto number = number_entry(question, name, kind);
  if (!number) return tl::unexpected(number.error());
  return std::optional<Typed>(std::move(*number));
}

base::Result<const shop::Machine*> machine_entry(const Question& question) {
  return on_entry(question, &shop::Shop::machines, "machine");
}

}  // namespace sparewright::answers
