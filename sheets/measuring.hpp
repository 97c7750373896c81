// The sheets of measuring up: what to see and to measure before the old part is taken apart, and what came of it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/route/list_sheet.hpp"
#include "core/survey/sketch.hpp"
#include "sheets/pages.hpp"

namespace sparewright::sheets {

// A measured dimension.
struct MeasuredSize {
  std::string name;                      // as typed
  std::string value;                     // "0.6247 in", "NOT KNOWN"
  std::string good_to;                   // may be empty
  std::vector<std::string> says;         // how it was come by, a sentence each
  std::optional<survey::Sketch> sketch;  // where it lies along a line
  std::vector<std::string> on_sketch;    // what stands at each of its spans
};

struct MeasuringPacket {
  std::string title;  // as typed
  std::string revision;
  std::vector<route::ListSheet> lists;
  std::vector<MeasuredSize> sizes;     // the sheet AS MEASURED; none of it where there are none
  std::vector<std::string> agreement;  // how the readings fit one another
};

// The pages, as pages() lays out a job's: every text is there, whole, and none overlaps another. Fails as pages() does.
[[nodiscard]] base::Result<std::vector<Page>> measuring_pages(const MeasuringPacket& packet,
                                                              const PaperOptions& options = {});

// The bytes of a PDF without a date: same packet, same bytes.
[[nodiscard]] base::Result<std::string> render_measuring(const MeasuringPacket& packet,
                                                         const PaperOptions& options = {});

}  // namespace sparewright::sheets
