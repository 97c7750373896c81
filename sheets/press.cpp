#include "sheets/press.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <stdexcept>
#include <utility>

#include <cairo-pdf.h>
#include <cairo-svg.h>
#include <pango/pangocairo.h>

namespace sparewright::sheets {
namespace {

using drawing::Face;
using drawing::TextSize;
using drawing::TextStyle;

constexpr const char* kFamily = "DejaVu Sans";
constexpr PangoStretch kStretch =
    PANGO_STRETCH_SEMI_CONDENSED;  // what fontconfig makes of its Condensed faces
constexpr double kPointsPerMm = 72.0 / 25.4;

// Shares of the em of DejaVu Sans: "H" is 1493 of its 2048 units high, "d" 1556; "g" reaches 425 below the line (read
// from its outlines). A little is added for room.
constexpr double kCapShare = 1493.0 / 2048.0;
constexpr double kAboveShare = 0.80;
constexpr double kBelowShare = 0.24;

// Figures of a fraction: size and rise, shares of the em. Our own choice, by eye.
constexpr double kSmallFigure = 0.72;
constexpr double kNumeratorRise = 0.27;
constexpr std::string_view kFractionSlash = "\u2044";

template <auto release>
struct Release {
  template <typename Thing>
  void operator()(Thing* thing) const {
    release(thing);
  }
};
template <typename Thing, auto release>
using Owned = std::unique_ptr<Thing, Release<release>>;

using FontMap = Owned<PangoFontMap, g_object_unref>;
using Context = Owned<PangoContext, g_object_unref>;
using Layout = Owned<PangoLayout, g_object_unref>;
using Font = Owned<PangoFont, g_object_unref>;
using Description = Owned<PangoFontDescription, pango_font_description_free>;
using Options = Owned<cairo_font_options_t, cairo_font_options_destroy>;
using Attributes = Owned<PangoAttrList, pango_attr_list_unref>;
using Surface = Owned<cairo_surface_t, cairo_surface_destroy>;
using Pen = Owned<cairo_t, cairo_destroy>;

double em_points(const TextStyle& style) {
  return style.cap_mm / kCapShare * kPointsPerMm;
}

constexpr double kMeasuredCap_mm = 10.0;  // large, so that the whole units of the measure count for nothing

Description described(const TextStyle& style) {
  Description description(pango_font_description_new());
  pango_font_description_set_family_static(description.get(), kFamily);
  pango_font_description_set_stretch(description.get(), kStretch);
  pango_font_description_set_weight(description.get(),
                                    style.face == Face::kBold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
  pango_font_description_set_absolute_size(description.get(), em_points(style) * PANGO_SCALE);
  return description;
}

// Whether it is that face itself, not what stands in for it.
bool is_wanted(PangoFont* font, Face face) {
  PangoFontFace* found = pango_font_get_face(font);
  return std::string_view(pango_font_family_get_name(pango_font_face_get_family(found))) == kFamily &&
         std::string_view(pango_font_face_get_face_name(found)) ==
             (face == Face::kBold ? "Condensed Bold" : "Condensed");
}

bool is_figure(char c) {
  return c >= '0' && c <= '9';
}

void add(PangoAttrList* list, PangoAttribute* attribute, std::size_t from, std::size_t to) {
  attribute->start_index = static_cast<guint>(from);
  attribute->end_index = static_cast<guint>(to);
  pango_attr_list_insert(list, attribute);
}

Attributes attributes(std::string_view says, const TextStyle& style) {
  Attributes list(pango_attr_list_new());
  pango_attr_list_insert(list.get(), pango_attr_fallback_new(FALSE));
  const int rise = static_cast<int>(kNumeratorRise * em_points(style) * PANGO_SCALE);
  for (std::size_t slash = says.find(kFractionSlash); slash != std::string_view::npos;
       slash = says.find(kFractionSlash, slash + 1)) {
    std::size_t from = slash;
    while (from > 0 && is_figure(says[from - 1]))
      --from;
    const std::size_t after = slash + kFractionSlash.size();
    std::size_t to = after;
    while (to < says.size() && is_figure(says[to]))
      ++to;
    add(list.get(), pango_attr_scale_new(kSmallFigure), from, slash);
    add(list.get(), pango_attr_rise_new(rise), from, slash);
    add(list.get(), pango_attr_scale_new(kSmallFigure), after, to);
  }
  return list;
}

void set_colour(cairo_t* pen, drawing::Ink ink) {
  const double level = ink == drawing::Ink::kBlack ? 0.0 : 1.0;
  cairo_set_source_rgb(pen, level, level, level);
}

void set_stroke(cairo_t* pen, drawing::Weight weight) {
  const drawing::Stroke stroke = drawing::stroke_of(weight);
  set_colour(pen, drawing::Ink::kBlack);
  cairo_set_line_width(pen, stroke.width_mm);
  cairo_set_line_cap(
      pen, stroke.dashes_mm.empty() ? CAIRO_LINE_CAP_SQUARE : CAIRO_LINE_CAP_BUTT);  // corners close
  cairo_set_dash(pen, stroke.dashes_mm.data(), static_cast<int>(stroke.dashes_mm.size()), 0.0);
}

cairo_status_t take(void* bytes, const unsigned char* data, unsigned length) {
  auto& out = *static_cast<std::string*>(bytes);
  std::transform(data, data + length, std::back_inserter(out),
                 [](unsigned char c) { return static_cast<char>(c); });
  return CAIRO_STATUS_SUCCESS;
}

}  // namespace

struct Press::Works {
  FontMap font_map;
  Context context;
  Layout layout;
  std::array<Font, 2> faces;
  std::array<std::map<std::string, TextSize, std::less<>>, 2> measured;  // at kMeasuredCap_mm, by face

  // The line of text as it is measured and printed.
  [[nodiscard]] PangoLayoutLine* line(std::string_view says, const TextStyle& style) const {
    pango_layout_set_font_description(layout.get(), described(style).get());
    pango_layout_set_text(layout.get(), says.data(), static_cast<int>(says.size()));
    pango_layout_set_attributes(layout.get(), attributes(says, style).get());
    return pango_layout_get_line_readonly(layout.get(), 0);
  }

  [[nodiscard]] TextSize measured_size(std::string_view says, const TextStyle& style) const {
    PangoRectangle ink{};
    PangoRectangle logical{};
    pango_layout_line_get_extents(line(says, style), &ink, &logical);
    const auto mm = [](int units) { return static_cast<double>(units) / PANGO_SCALE / kPointsPerMm; };
    const double em_mm = style.cap_mm / kCapShare;
    return {says.empty() ? 0.0 : mm(logical.width), std::max(kAboveShare * em_mm, mm(-ink.y)),
            std::max(kBelowShare * em_mm, mm(ink.y + ink.height))};
  }

  void paint(cairo_t* pen, const drawing::Line& l) const {
    set_stroke(pen, l.weight);
    cairo_new_path(pen);
    cairo_move_to(pen, l.from.x_mm, l.from.y_mm);
    cairo_line_to(pen, l.to.x_mm, l.to.y_mm);
    cairo_stroke(pen);
  }

  void paint(cairo_t* pen, const drawing::Circle& c) const {
    set_stroke(pen, c.weight);
    cairo_new_path(pen);
    cairo_arc(pen, c.centre.x_mm, c.centre.y_mm, c.radius_mm, 0.0, 2.0 * std::acos(-1.0));
    cairo_close_path(pen);
    cairo_stroke(pen);
  }

  void paint(cairo_t* pen, const drawing::Arc& a) const {
    set_stroke(pen, a.weight);
    cairo_new_path(pen);
    cairo_arc(pen, a.centre.x_mm, a.centre.y_mm, a.radius_mm, a.from_rad, a.to_rad);
    cairo_stroke(pen);
  }

  void paint(cairo_t* pen, const drawing::Filled& f) const {
    set_colour(pen, f.ink);
    cairo_new_path(pen);
    for (const drawing::Point& corner : f.corners)
      cairo_line_to(pen, corner.x_mm, corner.y_mm);
    cairo_close_path(pen);
    cairo_fill(pen);
  }

  void paint(cairo_t* pen, const drawing::Text& t) const {
    set_colour(pen, t.ink);
    cairo_save(pen);
    cairo_scale(pen, 1.0 / kPointsPerMm, 1.0 / kPointsPerMm);  // type is set in points
    cairo_move_to(pen, t.box.left_mm * kPointsPerMm, t.at.y_mm * kPointsPerMm);
    pango_cairo_show_layout_line(pen, line(t.says, t.style));
    cairo_restore(pen);
  }
};

Press::Press(std::unique_ptr<Works> works) : works_(std::move(works)) {}
Press::~Press() = default;

base::Result<std::unique_ptr<Press>> Press::open() {
  auto works = std::make_unique<Works>();
  works->font_map.reset(pango_cairo_font_map_new());
  works->context.reset(pango_font_map_create_context(works->font_map.get()));
  PangoContext* context = works->context.get();
  const Options options(cairo_font_options_create());
  cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
  cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
  pango_cairo_context_set_font_options(context, options.get());
  pango_context_set_round_glyph_positions(context, FALSE);
  pango_context_set_language(context,
                             pango_language_from_string("en"));  // not the user's: same bytes everywhere
  works->layout.reset(pango_layout_new(context));
  pango_layout_set_single_paragraph_mode(works->layout.get(), TRUE);
  for (const Face face : {Face::kRegular, Face::kBold}) {
    Font& font = works->faces.at(face == Face::kBold ? 1 : 0);
    font.reset(pango_context_load_font(context, described({1.0, face}).get()));
    if (!font || !is_wanted(font.get(), face)) {
      return base::fail(base::Code::kFileUnreadable, "it is not installed",
                        "Debian package fonts-dejavu-extra", "the font DejaVu Sans Condensed");
    }
  }
  return std::unique_ptr<Press>(new Press(std::move(works)));
}

// Nothing is hinted or rounded to dots, so a text grows evenly with its size and is measured once.
TextSize Press::measure(std::string_view says, const TextStyle& style) const {
  auto& measured = works_->measured.at(style.face == Face::kBold ? 1 : 0);
  auto known = measured.find(says);
  if (known == measured.end())
    known = measured.emplace(says, works_->measured_size(says, {kMeasuredCap_mm, style.face})).first;
  const double grown = style.cap_mm / kMeasuredCap_mm;
  const TextSize& size = known->second;
  return {size.width_mm * grown, size.above_mm * grown, size.below_mm * grown};
}

bool Press::has(char32_t letter) const {
  switch (g_unichar_type(letter)) {
    case G_UNICODE_CONTROL:
    case G_UNICODE_FORMAT:
    case G_UNICODE_UNASSIGNED:
    case G_UNICODE_PRIVATE_USE:
    case G_UNICODE_SURROGATE:
    case G_UNICODE_LINE_SEPARATOR:
    case G_UNICODE_PARAGRAPH_SEPARATOR:
      return false;
    default:
      return std::all_of(works_->faces.begin(), works_->faces.end(),
                         [&](const Font& font) { return pango_font_has_char(font.get(), letter) != FALSE; });
  }
}

namespace {

void check(cairo_surface_t* surface) {
  if (cairo_surface_status(surface) != CAIRO_STATUS_SUCCESS)
    throw std::runtime_error(cairo_status_to_string(cairo_surface_status(surface)));
}

}  // namespace

void Press::paint(cairo_surface_t* surface, const Page& page, double units_per_mm) const {
  const Pen pen(cairo_create(surface));
  cairo_scale(pen.get(), units_per_mm, units_per_mm);
  for (const drawing::Element& element : page.list) {
    std::visit([&](const auto& e) { works_->paint(pen.get(), e); }, element);
  }
  cairo_show_page(pen.get());
}

std::string Press::print_svg(const Page& page) const {
  std::string bytes;
  const Surface surface(cairo_svg_surface_create_for_stream(take, &bytes, page.width_mm * kPointsPerMm,
                                                            page.height_mm * kPointsPerMm));
  paint(surface.get(), page, kPointsPerMm);
  cairo_surface_finish(surface.get());
  check(surface.get());
  return bytes;
}

std::string Press::print_png(const Page& page, double dots_per_inch) const {
  const double dots_per_mm = dots_per_inch / 25.4;
  const Surface surface(
      cairo_image_surface_create(CAIRO_FORMAT_RGB24, static_cast<int>(std::ceil(page.width_mm * dots_per_mm)),
                                 static_cast<int>(std::ceil(page.height_mm * dots_per_mm))));
  const Pen white(cairo_create(surface.get()));
  cairo_set_source_rgb(white.get(), 1.0, 1.0, 1.0);
  cairo_paint(white.get());
  paint(surface.get(), page, dots_per_mm);
  check(surface.get());
  std::string bytes;
  cairo_surface_write_to_png_stream(surface.get(), take, &bytes);
  return bytes;
}

std::string Press::print(const std::vector<Page>& pages, const std::string& title) const {
  std::string bytes;
  const Surface surface(cairo_pdf_surface_create_for_stream(take, &bytes, 1.0, 1.0));
  cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_CREATE_DATE,
                                 "");  // else cairo writes the clock's
  cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_TITLE, title.c_str());
  for (const Page& page : pages) {
    cairo_pdf_surface_set_size(surface.get(), page.width_mm * kPointsPerMm, page.height_mm * kPointsPerMm);
    paint(surface.get(), page, kPointsPerMm);
  }
  cairo_surface_finish(surface.get());
  check(surface.get());
  return bytes;
}

}  // namespace sparewright::sheets
