#include "core/quantity/cut.hpp"

#include "core/quantity/spelling.hpp"

namespace sparewright::quantity {

bool is_zero(std::string_view part) {
  return part.find('0') != std::string_view::npos && part.find_first_not_of("+-0.") == std::string_view::npos;
}

std::optional<Cut> cut_at_to(std::string_view text) {
  for (auto at = text.find("to"); at != std::string_view::npos; at = text.find("to", at + 1)) {
    const std::string_view before = text.substr(0, at);
    const std::string_view after = text.substr(at + 2);
    if (trimmed(before).size() < before.size() && blanks_at(after) > 0)
      return Cut{trimmed(before), trimmed(after)};
  }
  return std::nullopt;
}

std::optional<Cut> cut_at_sign(std::string_view text) {
  for (std::size_t i = 1; i < text.size(); ++i) {
    if (sign_at(text.substr(i)) == 0) continue;
    std::string_view before = trimmed(text.substr(0, i));
    const bool slash = before.ends_with('/');
    if (slash) before = trimmed(before.substr(0, before.size() - 1));
    if (before.empty() || sign_at(before) == before.size()) continue;
    if (slash || before.size() < i) return Cut{before, text.substr(i)};
  }
  const auto slash = text.rfind('/');
  if (slash == std::string_view::npos || sign_at(text) == 0) return std::nullopt;
  const std::string_view after = trimmed(text.substr(slash + 1));
  return is_zero(after) ? std::optional(Cut{trimmed(text.substr(0, slash)), after}) : std::nullopt;
}

std::optional<Cut> cut_at_dash(std::string_view text) {
  for (std::size_t i = 1; i < text.size(); ++i) {
    const std::size_t dash = minus_at(text.substr(i));
    if (dash == 0) continue;
    const std::string_view before = text.substr(0, i);
    const std::string_view after = text.substr(i + dash);
    const Cut cut{trimmed(before), trimmed(after)};
    const bool even = (cut.first.size() < before.size()) == (blanks_at(after) > 0);
    if (cut.first.ends_with('/')) return std::nullopt;
    const bool points =
        cut.first.find('.') != std::string_view::npos && cut.second.find('.') != std::string_view::npos;
    return even && points ? std::optional(cut) : std::nullopt;
  }
  return std::nullopt;
}

}  // namespace sparewright::quantity
