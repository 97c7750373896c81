#include "core/handbook/socket_head_screws.hpp"

#include "core/handbook/lookup.hpp"
#include "core/handbook/screw_size.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr SocketHeadScrew kSocketHeadScrews[] = {
#include "generated/core/handbook/socket_head_screws.inc"
};

}  // namespace

std::span<const SocketHeadScrew> socket_head_screws() {
  return kSocketHeadScrews;
}

base::Result<SocketHeadScrew> socket_head_screw(std::string_view size) {
  const auto wanted = read_screw_size(size);
  if (!wanted) return tl::unexpected(wanted.error());
  for (const SocketHeadScrew& screw : kSocketHeadScrews) {
    if (screw.size == wanted->name) return screw;
  }
  return not_tabled_among(
      "the socket head cap screw", wanted->name,
      names_of(kSocketHeadScrews, [](const SocketHeadScrew& screw) { return screw.size; }));
}

}  // namespace sparewright::handbook
