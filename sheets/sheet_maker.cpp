#include "sheets/sheet_maker.hpp"

#include <array>
#include <optional>
#include <utility>

#include <fmt/format.h>

namespace sparewright::sheets {
namespace {

// Pages of a part of a sheet, without head and foot.
struct Bodies {
  Type type;
  std::vector<drawing::DisplayList> pages;
};

class SheetMaker {
 public:
  SheetMaker(const drawing::Ruler& ruler, PaperSize paper, const SheetHead& head)
      : ruler_(ruler), paper_(paper), head_(head), width_mm_(paper.width_mm - kLeft_mm - kRight_mm) {}

  // Nothing where a block does not fit on a page.
  [[nodiscard]] std::optional<std::vector<Page>> make(const std::vector<MakeFlow>& make_parts) const {
    std::array<std::vector<Flow>, kTypes.size()>
        made;  // the parts in each type, made when they are first wanted
    const auto parts_in = [&](std::size_t type) -> const std::vector<Flow>& {
      if (made.at(type).empty()) {
        for (const MakeFlow& make : make_parts)
          made.at(type).push_back(make({ruler_, kTypes.at(type)}, width_mm_));
      }
      return made.at(type);
    };
    const auto whole = fewest([&](std::size_t type) { return joined(parts_in(type)); });
    if (!whole) return std::nullopt;
    if (whole->pages.size() == 1) return with_heads({*whole});
    std::vector<Bodies> apart;
    std::size_t count = 0;
    for (std::size_t part = 0; part < make_parts.size(); ++part) {
      auto bodies = fewest([&](std::size_t type) { return parts_in(type)[part]; });
      if (!bodies) return std::nullopt;
      count += bodies->pages.size();
      apart.push_back(std::move(*bodies));
    }
    return with_heads(count <= whole->pages.size() ? apart : std::vector<Bodies>{*whole});
  }

 private:
  // As few pages as any type allows, with the largest that does.
  [[nodiscard]] std::optional<Bodies> fewest(const std::function<Flow(std::size_t type)>& flow_in) const {
    std::optional<Bodies> best;
    for (std::size_t i = 0; i < kTypes.size(); ++i) {
      auto pages = divided(flow_in(i), room_mm({ruler_, kTypes.at(i)}));
      if (pages && (!best || pages->size() < best->pages.size()))
        best = Bodies{kTypes.at(i), std::move(*pages)};
      if (best && best->pages.size() == 1) break;
    }
    return best;
  }

  // Between head and foot.
  [[nodiscard]] double room_mm(const Setting& setting) const {
    return paper_.height_mm - kTop_mm - kBottom_mm - head_block(setting, head_, 1, 1, width_mm_).height_mm -
           foot_block(setting, head_, width_mm_).height_mm;
  }

  [[nodiscard]] std::vector<Page> with_heads(const std::vector<Bodies>& parts) const {
    std::size_t of = 0;
    for (const Bodies& part : parts)
      of += part.pages.size();
    std::vector<Page> pages;
    for (const Bodies& part : parts) {
      for (const drawing::DisplayList& body : part.pages) {
        pages.push_back(
            page({ruler_, part.type}, body, static_cast<int>(pages.size()) + 1, static_cast<int>(of)));
      }
    }
    return pages;
  }

  [[nodiscard]] Page page(const Setting& setting, const drawing::DisplayList& body, int number,
                          int of) const {
    const Block head = head_block(setting, head_, number, of, width_mm_);
    const Block foot = foot_block(setting, head_, width_mm_);
    Page page{paper_.width_mm, paper_.height_mm, {}};
    drawing::append(page.list, head.list, {kLeft_mm, kTop_mm});
    drawing::append(page.list, body, {kLeft_mm, kTop_mm + head.height_mm});
    drawing::append(page.list, foot.list, {kLeft_mm, paper_.height_mm - kBottom_mm - foot.height_mm});
    return page;
  }

  const drawing::Ruler& ruler_;
  PaperSize paper_;
  SheetHead head_;
  double width_mm_;
};

}  // namespace

base::Result<std::vector<Page>> make_sheet(const drawing::Ruler& ruler, PaperSize paper,
                                           const SheetHead& head, const std::vector<MakeFlow>& parts) {
  auto made = SheetMaker(ruler, paper, head).make(parts);
  if (!made) {
    return base::fail(base::Code::kTooMany, "one text is higher than a page", "a shorter text",
                      fmt::format("sheet {}", head.sheet));
  }
  return std::move(*made);
}

}  // namespace sparewright::sheets
