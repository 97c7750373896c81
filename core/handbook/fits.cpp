#include "core/handbook/fits.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/handbook/inch_fits.hpp"
#include "core/handbook/lookup.hpp"
#include "core/quantity/display.hpp"
#include "core/quantity/spelling.hpp"
#include "core/quantity/typed.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
using quantity::UnitSystem;
namespace unit = quantity::unit;

constexpr std::string_view kFitExamples = "a fit such as H7/g6, H7/p6, RC4, LC2, LT1, LN2 or FN2";

void add(std::vector<Source>& sources, const Source& source) {
  if (std::find(sources.begin(), sources.end(), source) == sources.end()) sources.push_back(source);
}

SizeLimits limits_at(Diameter nominal, Length lower, Length upper) {
  return {quantity::as_diameter(lower + nominal), quantity::as_diameter(upper + nominal)};
}

base::Result<Fit> iso_fit(std::string_view hole_text, std::string_view shaft_text, Diameter nominal) {
  const auto hole = read_iso286_zone(hole_text);
  if (!hole) return tl::unexpected(hole.error());
  const auto shaft = read_iso286_zone(shaft_text);
  if (!shaft) return tl::unexpected(shaft.error());
  if (hole->side != FitSide::kHole || shaft->side != FitSide::kShaft) {
    return unknown(std::string(hole_text) + "/" + std::string(shaft_text), "fit", {},
                   "the hole's zone first, in capitals, then the shaft's: H7/g6");
  }
  const auto of_hole = iso286_deviations(*hole, nominal);
  if (!of_hole) return tl::unexpected(of_hole.error());
  const auto of_shaft = iso286_deviations(*shaft, nominal);
  if (!of_shaft) return tl::unexpected(of_shaft.error());
  Fit fit{.standard = FitStandard::kIso286,
          .name = to_string(*hole) + "/" + to_string(*shaft),
          .nominal = nominal,
          .hole = limits_at(nominal, of_hole->lower, of_hole->upper),
          .shaft = limits_at(nominal, of_shaft->lower, of_shaft->upper),
          .sources = {},
          .assumed = {}};
  for (const FitDeviations* one : {&*of_hole, &*of_shaft}) {
    add(fit.sources, one->source);
    add(fit.sources, one->grade_source);
  }
  return fit;
}

base::Result<Fit> ansi_fit(std::string_view name, Diameter nominal) {
  const auto row = inch_fit(name, nominal);
  if (!row) return tl::unexpected(row.error());
  return Fit{.standard = FitStandard::kAnsiB41,
             .name = std::string(row->fit),
             .nominal = nominal,
             .hole = limits_at(nominal, row->hole_lower, row->hole_upper),
             .shaft = limits_at(nominal, row->shaft_lower, row->shaft_upper),
             .sources = {row->source},
             .assumed = {}};
}

// Where the stroke between hole and shaft stands; npos where there is none.
std::size_t stroke_in(std::string_view name) {
  return name.find_first_of("/-");
}

// A fit of ANSI B4.1 as the table names it: "rc 4" -> "RC4"; empty where the text is no such name.
std::string ansi_name(std::string_view text) {
  std::string out;
  for (const char c : folded(text)) {
    if (c != ' ') out += quantity::is_lower(c) ? static_cast<char>(c - 'a' + 'A') : c;
  }
  const bool is_one = out.size() >= 3 && quantity::is_upper(out[0]) && quantity::is_upper(out[1]) &&
                      std::all_of(out.begin() + 2, out.end(), quantity::is_digit);
  return is_one ? out : std::string();
}

struct SizeAndName {
  Diameter nominal;
  std::string_view name;
  std::string assumed;
};

std::string_view without_diameter_sign(std::string_view text) {
  text = quantity::trimmed(text);
  for (const std::string_view sign : {"\u00D8", "\u00F8", "\u2300"}) {
    if (text.starts_with(sign)) return text.substr(sign.size());
  }
  return text;
}

// The size at the start of text and what follows it; a number without a unit is in that system.
base::Result<SizeAndName> size_and_name(std::string_view text, UnitSystem system, std::string_view standard) {
  const auto prefix = quantity::read_number_prefix(text, quantity::Kind::kDiameter, system);
  if (!prefix) return tl::unexpected(prefix.error());
  SizeAndName out{prefix->number.diameter(), quantity::trimmed(text.substr(prefix->taken)), {}};
  if (!prefix->number.unit_given) {
    out.assumed = fmt::format("no unit written: {} taken as {}, as before a fit of {}", prefix->number.typed,
                              prefix->number.unit == unit::inch ? "inches" : "millimetres", standard);
  }
  return out;
}

base::Result<SizeAndName> read_size_and_name(std::string_view text) {
  text = without_diameter_sign(text);
  auto metric = size_and_name(text, UnitSystem::kMetric, name_of(FitStandard::kIso286));
  if (!metric || ansi_name(metric->name).empty()) return metric;
  return size_and_name(text, UnitSystem::kInch, name_of(FitStandard::kAnsiB41));
}

base::Result<Diameter> positive(Diameter nominal) {
  if (nominal > Diameter()) return nominal;
  return base::fail(base::Code::kSizeNotPositive, quantity::fixed(nominal.in(unit::millimetre), 3) + " mm",
                    "a size over zero", "the nominal size");
}

}  // namespace

std::string_view name_of(FitStandard standard) {
  return standard == FitStandard::kIso286 ? "ISO 286" : "ANSI B4.1";
}

std::string_view name_of(FitKind kind) {
  switch (kind) {
    case FitKind::kClearance:
      return "clearance";
    case FitKind::kTransition:
      return "transition";
    case FitKind::kInterference:
      break;
  }
  return "interference";
}

FitKind Fit::kind() const {
  if (least_clearance().base() >= -kSizeSlackMm) return FitKind::kClearance;
  return most_clearance().base() <= kSizeSlackMm ? FitKind::kInterference : FitKind::kTransition;
}

base::Result<Fit> fit_at(std::string_view name, Diameter nominal) {
  if (const auto size = positive(nominal); !size) return tl::unexpected(size.error());
  name = quantity::trimmed(name);
  if (const std::string ansi = ansi_name(name); !ansi.empty()) return ansi_fit(ansi, nominal);
  const std::size_t stroke = stroke_in(name);
  if (stroke == std::string_view::npos) return unknown(name, "fit", {}, kFitExamples);
  return iso_fit(name.substr(0, stroke), name.substr(stroke + 1), nominal);
}

base::Result<Fit> read_fit(std::string_view text) {
  auto read = read_size_and_name(text);
  if (!read) return tl::unexpected(read.error());
  auto fit = fit_at(read->name, read->nominal);
  if (fit) fit->assumed = std::move(read->assumed);
  return fit;
}

base::Result<ZoneAtSize> read_zone_at_size(std::string_view text) {
  auto read = read_size_and_name(text);
  if (!read) return tl::unexpected(read.error());
  if (const auto size = positive(read->nominal); !size) return tl::unexpected(size.error());
  const auto zone = read_iso286_zone(read->name);
  if (!zone) return tl::unexpected(zone.error());
  const auto deviations = iso286_deviations(*zone, read->nominal);
  if (!deviations) return tl::unexpected(deviations.error());
  ZoneAtSize out{*zone,
                 read->nominal,
                 limits_at(read->nominal, deviations->lower, deviations->upper),
                 {deviations->source},
                 std::move(read->assumed)};
  add(out.sources, deviations->grade_source);
  return out;
}

}  // namespace sparewright::handbook
