#include "sheets/block.hpp"

#include <algorithm>
#include <utility>

namespace sparewright::sheets {
namespace {

class Dividing {
 public:
  Dividing(const Flow& flow, double room_mm) : flow_(flow), room_mm_(room_mm) {}

  void start_page() {
    if (pages_.empty() || !is_empty()) pages_.emplace_back();
    used_mm_ = 0.0;
  }

  // The block with those it keeps, on this page or the next; how many blocks that were. 0 where the first is too high.
  std::size_t place(std::size_t first) {
    const std::size_t end = kept_until(first);
    if (!fits(first, end) && !is_empty()) start_page();
    if (fits(first, end)) {
      for (std::size_t i = first; i < end; ++i)
        put(flow_.blocks[i]);
      return end - first;
    }
    if (!fits(first, first + 1)) return 0;
    put(flow_.blocks[first]);
    return 1;
  }

  std::vector<drawing::DisplayList> finish() { return std::move(pages_); }

 private:
  [[nodiscard]] bool is_empty() const { return used_mm_ == 0.0; }

  [[nodiscard]] std::size_t kept_until(std::size_t first) const {
    std::size_t end = first + 1;
    while (end < flow_.blocks.size() && flow_.blocks[end - 1].keeps_next)
      ++end;
    return end;
  }

  // The head a row needs above it here.
  [[nodiscard]] const Block* head_for(const Block& block) const {
    return is_empty() && block.table ? &flow_.heads[*block.table] : nullptr;
  }

  [[nodiscard]] bool fits(std::size_t first, std::size_t end) const {
    double needed = used_mm_;
    if (const Block* head = head_for(flow_.blocks[first])) needed += head->height_mm;
    for (std::size_t i = first; i < end; ++i)
      needed += flow_.blocks[i].height_mm;
    return needed <= room_mm_;
  }

  void put(const Block& block) {
    if (is_empty() && block.list.empty()) return;  // room between blocks, not at the top of a page
    if (const Block* head = head_for(block)) lay(*head);
    if (block.sinks) used_mm_ = room_mm_ - block.height_mm;
    lay(block);
  }

  void lay(const Block& block) {
    drawing::append(pages_.back(), block.list, {0.0, used_mm_});
    used_mm_ += block.height_mm;
  }

  const Flow& flow_;
  double room_mm_;
  double used_mm_ = 0.0;
  std::vector<drawing::DisplayList> pages_;
};

}  // namespace

Block space(double height_mm) {
  Block block;
  block.height_mm = height_mm;
  return block;
}

void stack(Block& block, const Block& below, double gap_mm, double indent_mm) {
  drawing::append(block.list, below.list, {indent_mm, block.height_mm + gap_mm});
  block.height_mm += gap_mm + below.height_mm;
}

Block stacked(const std::vector<Block>& blocks, double gap_mm) {
  Block whole;
  for (const Block& block : blocks)
    stack(whole, block, whole.height_mm > 0.0 ? gap_mm : 0.0);
  return whole;
}

void Flow::add(std::vector<Block> more) {
  for (Block& block : more)
    blocks.push_back(std::move(block));
}

std::size_t Flow::add_head(Block head) {
  head.keeps_next = true;
  heads.push_back(head);
  blocks.push_back(std::move(head));
  return heads.size() - 1;
}

Flow joined(const std::vector<Flow>& flows) {
  Flow whole;
  for (const Flow& flow : flows) {
    for (Block block : flow.blocks) {
      if (block.table) *block.table += whole.heads.size();  // heads so far
      whole.blocks.push_back(std::move(block));
    }
    whole.heads.insert(whole.heads.end(), flow.heads.begin(), flow.heads.end());
  }
  return whole;
}

std::optional<std::vector<drawing::DisplayList>> divided(const Flow& flow, double room_mm) {
  Dividing dividing(flow, room_mm);
  dividing.start_page();
  for (std::size_t i = 0; i < flow.blocks.size();) {
    const std::size_t placed = dividing.place(i);
    if (placed == 0) return std::nullopt;
    i += placed;
  }
  return dividing.finish();
}

}  // namespace sparewright::sheets
