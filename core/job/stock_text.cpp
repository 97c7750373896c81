#include "core/job/stock_text.hpp"

#include <array>

#include <fmt/format.h>

#include "core/job/vocabulary.hpp"

namespace sparewright::job {
namespace {

using quantity::Kind;
using text::field;
using text::measure;
using text::TableReader;

constexpr std::array kSizes{"length", "width", "thickness", "diameter", "across", "bore"};

// The sizes a shape is told by, its length first.
std::vector<const char*> sizes_of(part::BlankShape shape) {
  switch (shape) {
    case part::BlankShape::kRoundBar:
      return {"length", "diameter"};
    case part::BlankShape::kTube:
      return {"length", "diameter", "bore"};
    case part::BlankShape::kSquareBar:
    case part::BlankShape::kHexBar:
      return {"length", "across"};
    default:
      return {"length", "width", "thickness"};
  }
}

void read_sizes(const TableReader& in, part::BlankShape shape, shop::Stock& stock) {
  for (const char* key : sizes_of(shape)) {
    const auto size = in.number(key, Kind::kLength);
    if (!size) {
      if (!in.node().find(key))
        in.problems().add(text::failure_at(in.node(), base::Code::kKeyMissing, key,
                                           fmt::format("a {} has it", part::name_of(shape))));
      continue;
    }
    if (size->base <= 0.0)
      in.problems().add(text::failure_at(*in.node().find(key), base::Code::kSizeNotPositive, size->typed));
    stock.sizes[key] = *size;
  }
}

}  // namespace

text::Shape stock_shape() {
  const text::Shape length = measure(Kind::kLength);
  std::vector<text::Field> sizes;
  for (const char* key : kSizes)
    sizes.push_back(field(key, length));
  return text::table({
      field("name", text::free_text()).required().says("what it is called, or where it lies"),
      field("shape", text::word_of(kBlanks)).required().says("as a job's blank says it"),
      field("material", text::free_text("a material")).required().says("likewise"),
      field("size", text::table(std::move(sizes)))
          .required()
          .says("its section, and the length that is left"),
  });
}

std::vector<shop::Stock> read_stock(const TableReader& shop) {
  std::vector<shop::Stock> all;
  for (const TableReader& in : shop.tables("stock")) {
    shop::Stock stock;
    stock.name = in.text("name").value_or("");
    stock.material = in.text("material").value_or("");
    const auto shape = in.word("shape", kBlanks);
    if (shape) stock.shape = part::name_of(*shape);
    const auto sizes = in.table("size");
    if (shape && sizes) read_sizes(*sizes, *shape, stock);
    all.push_back(std::move(stock));
  }
  return all;
}

}  // namespace sparewright::job
