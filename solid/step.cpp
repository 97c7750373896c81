#include "solid/step.hpp"

#include <locale>
#include <mutex>
#include <sstream>
#include <utility>

#include <APIHeaderSection_MakeHeader.hxx>
#include <IFSelect_ReturnStatus.hxx>
#include <Interface_EntityIterator.hxx>
#include <STEPControl_Reader.hxx>
#include <STEPControl_Writer.hxx>
#include <StepBasic_Product.hxx>
#include <StepData_Protocol.hxx>
#include <StepData_StepModel.hxx>
#include <StepData_StepWriter.hxx>
#include <TCollection_HAsciiString.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS_Shape.hxx>
#include <fmt/format.h>

#include "solid/kernel_guard.hpp"
#include "solid/kernel_shape.hpp"

namespace sparewright::solid {
namespace {

using base::Code;
using base::fail;
using base::Result;

// The kernel's translators keep their settings and counters in process-wide tables.
std::mutex& translators() {
  static std::mutex mutex;
  return mutex;
}

Handle(TCollection_HAsciiString) text(const char* words) {
  return new TCollection_HAsciiString(words);
}

constexpr char32_t kReplacement = 0xFFFD;

// The next character of a UTF-8 text, taken off its front. What is not UTF-8 becomes the replacement character.
char32_t take_character(std::string_view& text) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned char first = byte(0);
  const std::size_t length = first < 0x80U          ? 1
                             : first >> 5U == 0x6U  ? 2
                             : first >> 4U == 0xEU  ? 3
                             : first >> 3U == 0x1EU ? 4
                                                    : 0;
  if (length == 0 || length > text.size()) {
    text.remove_prefix(1);
    return kReplacement;
  }
  char32_t character = length == 1 ? first : first & (0xFFU >> (length + 1));
  for (std::size_t i = 1; i < length; ++i)
    character = character << 6U | (byte(i) & 0x3FU);
  text.remove_prefix(length);
  return character;
}

// ISO 10303-21, 6.4.3: printable ASCII as it is, apostrophe and backslash doubled, everything else as \X4\ followed by
// eight hexadecimal digits and \X0\.
std::string step_text(std::string_view utf8) {
  std::string out;
  while (!utf8.empty()) {
    const char32_t c = take_character(utf8);
    if (c == U'\\' || c == U'\'') {
      out.append(2, static_cast<char>(c));
    } else if (c >= 0x20 && c < 0x7F) {
      out += static_cast<char>(c);
    } else {
      out += fmt::format("\\X4\\{:08X}\\X0\\", static_cast<std::uint32_t>(c));
    }
  }
  return out;
}

// Stands for the product's name while the kernel writes: it would double the backslashes of the escapes.
constexpr std::string_view kPlaceholder = "SPAREWRIGHT-PRODUCT-NAME";

std::string with_product(std::string bytes, std::string_view product) {
  for (auto at = bytes.find(kPlaceholder); at != std::string::npos; at = bytes.find(kPlaceholder, at)) {
    bytes.replace(at, kPlaceholder.size(), product);
    at += product.size();
  }
  return bytes;
}

void write_header(const Handle(StepData_StepModel) & model) {
  APIHeaderSection_MakeHeader header(model);
  header.SetName(text(kPlaceholder.data()));
  header.SetTimeStamp(text("1970-01-01T00:00:00"));
  header.SetAuthorValue(1, text(""));
  header.SetOrganizationValue(1, text(""));
  header.SetPreprocessorVersion(text("Open CASCADE Technology"));
  header.SetOriginatingSystem(text("Sparewright"));
  header.SetAuthorisation(text(""));
  header.Apply(model);
}

// The kernel numbers products over the life of the process; ours have the caller's name.
void name_products(const Handle(StepData_StepModel) & model) {
  for (int i = 1; i <= model->NbEntities(); ++i) {
    const Handle(StepBasic_Product) found = Handle(StepBasic_Product)::DownCast(model->Value(i));
    if (found.IsNull()) continue;
    found->SetId(text(kPlaceholder.data()));
    found->SetName(text(kPlaceholder.data()));
  }
}

std::string as_step(const TopoDS_Shape& shape) {
  STEPControl_Writer writer;
  if (writer.Transfer(shape, STEPControl_AsIs) != IFSelect_RetDone) return {};
  const Handle(StepData_StepModel) model = writer.Model();
  write_header(model);
  name_products(model);
  StepData_StepWriter out(model);
  out.SendModel(Handle(StepData_Protocol)::DownCast(model->Protocol()));
  std::ostringstream bytes;
  bytes.imbue(std::locale::classic());
  return out.Print(bytes) ? bytes.str() : std::string();
}

}  // namespace

Result<std::string> write_step(const Solid& solid, std::string_view product) {
  const std::scoped_lock lock(translators());
  auto bytes = guarded(product, [&] { return as_step(to_kernel(solid)); });
  if (bytes && bytes->empty()) return fail(Code::kKernel, "the STEP file cannot be written", {}, product);
  if (!bytes) return bytes;
  return with_product(std::move(*bytes), step_text(product));
}

Result<Solid> read_step(std::string_view bytes) {
  constexpr std::string_view kSubject = "the STEP file";
  const std::scoped_lock lock(translators());
  auto shape = guarded(kSubject, [&] {
    std::istringstream in{std::string(bytes)};
    STEPControl_Reader reader;
    if (reader.ReadStream("part.step", in) != IFSelect_RetDone) return TopoDS_Shape();
    reader.TransferRoots();
    return reader.OneShape();
  });
  if (!shape) return tl::unexpected(shape.error());
  if (shape->IsNull() || !TopExp_Explorer(*shape, TopAbs_SOLID).More()) {
    return fail(Code::kKernel, "it holds no solid", "a STEP file with one solid or more", kSubject);
  }
  return from_kernel(*shape);
}

}  // namespace sparewright::solid
