#include "core/answers/quick.hpp"

#include <charconv>

#include <fmt/format.h>

#include "core/shop/collar.hpp"

namespace sparewright::answers {

using quantity::Length;
using quantity::UnitSystem;

base::Result<Length> place_entry(const Question& question, std::string_view name) {
  const auto given = maybe_number(question, name, quantity::Kind::kLength);
  if (!given) return tl::unexpected(given.error());
  return *given ? (*given)->length() : Length();
}

base::Result<std::vector<int>> read_counts(std::string_view text, std::string_view entry, int least,
                                           int most) {
  std::vector<int> counts;
  const char* at = text.data();
  const char* const end = at + text.size();
  const auto is_between = [](char c) { return c == ' ' || c == ','; };
  while (at != end) {
    if (is_between(*at)) {
      ++at;
      continue;
    }
    int count = 0;
    const auto [stopped, error] = std::from_chars(at, end, count);
    const bool ends = stopped == end || is_between(*stopped);
    if (error != std::errc{} || !ends || count < least || count > most) break;
    counts.push_back(count);
    at = stopped;
  }
  if (at != end || counts.empty())
    return base::fail(base::Code::kValueNotAccepted, text,
                      fmt::format("whole numbers from {} to {}, such as 20,24,28", least, most),
                      fmt::format("--{}", entry));
  return counts;
}

base::Result<Dialled> dial(const shop::Machine& machine, std::string_view axis, Length travel, double step) {
  const auto found = machine.collars.find(std::string(axis));
  if (found == machine.collars.end())
    return base::fail(base::Code::kNotInTheShop, axis, "a machine with that collar",
                      fmt::format("{}'s collar", machine.name));
  const shop::Collar& collar = found->second;
  const double reads = collar.reads == shop::CollarReads::kDiameter ? 2.0 : 1.0;
  const shop::Turning finish = axis == "z" ? shop::deepens(collar) : shop::increases_coordinate(collar);
  const shop::CollarReading reading = shop::collar_reading(collar, travel * reads, finish, step);
  return Dialled{shop::said(reading), std::string(name_of(finish)), reading.rounding / reads};
}

base::Result<Table> depth_on(const shop::Machine& machine, Length depth, UnitSystem system) {
  const auto down = dial(machine, "z", depth);
  if (!down) return tl::unexpected(down.error());
  TableWriter writer(fmt::format("on the {}", machine.name), system);
  writer.words("z, from touching", down->says, kCollar,
               fmt::format("{}; lands {}", down->finish, off_words(down->off, "too deep", "short", system)));
  return writer.take();
}

std::string off_words(Length off, std::string_view more, std::string_view less, UnitSystem system) {
  if (magnitude(off) < Length::of(1e-6, quantity::unit::millimetre)) return "exactly";
  return fmt::format("{} {}", both_ways(magnitude(off), system), off > Length() ? more : less);
}

}  // namespace sparewright::answers
