#include "core/shop/stock.hpp"

namespace sparewright::shop {

base::Fingerprint fingerprint(const Stock& stock) {
  base::Hasher h;
  h.add(stock.name).add(stock.shape).add(stock.material).add(static_cast<std::uint64_t>(stock.sizes.size()));
  for (const auto& [key, size] : stock.sizes)
    h.add(key).add(size.base).add(size.typed);
  return h.done();
}

}  // namespace sparewright::shop
