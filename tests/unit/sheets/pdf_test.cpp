// The PDF as other programs see it: qpdf, pdffonts, pdfinfo and pdftotext.
#include "sheets/pdf.hpp"

#include <array>
#include <clocale>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <memory>
#include <sstream>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <unistd.h>

#include "core/base/messages.hpp"
#include "invented_packet.hpp"
#include "printed.hpp"

namespace sparewright::sheets {
namespace {

using testing::HasSubstr;
using testing::Not;

std::string rendered(const Packet& packet, const PaperOptions& options = {}) {
  const auto pdf = render_pdf(packet, options);
  EXPECT_TRUE(pdf.has_value()) << base::report(pdf.error());
  return pdf ? *pdf : "";
}

// A PDF in a file of its own, and what a program says of it.
class PdfFile {
 public:
  explicit PdfFile(const std::string& bytes) { std::ofstream(path_, std::ios::binary) << bytes; }
  PdfFile(const PdfFile&) = delete;
  PdfFile& operator=(const PdfFile&) = delete;
  ~PdfFile() { std::remove(path_.c_str()); }

  [[nodiscard]] std::string told_by(const std::string& program, const std::string& after = "") const {
    const std::string command = program + " " + path_ + " " + after + " 2>&1";
    const auto close = [](std::FILE* pipe) { return pclose(pipe); };
    std::unique_ptr<std::FILE, decltype(close)> pipe(popen(command.c_str(), "r"), close);
    std::string output;
    std::array<char, 4096> buffer{};
    for (std::size_t got = 1; pipe && got > 0;) {
      got = std::fread(buffer.data(), 1, buffer.size(), pipe.get());
      output.append(buffer.data(), got);
    }
    EXPECT_TRUE(pipe && pclose(pipe.release()) == 0) << command << ": " << output;
    return output;
  }

 private:
  std::string path_ = testing::TempDir() + "sheets-" + std::to_string(getpid()) + ".pdf";
};

TEST(Pdf, IsSound) {
  EXPECT_THAT(PdfFile(rendered(tests::invented_packet())).told_by("qpdf --check"), HasSubstr("No syntax"));
}

TEST(Pdf, EmbedsItsFonts) {
  std::istringstream lines(PdfFile(rendered(tests::invented_packet())).told_by("pdffonts"));
  std::string line;
  std::getline(lines, line);
  std::getline(lines, line);
  int fonts = 0;
  while (std::getline(lines, line)) {
    ++fonts;
    EXPECT_THAT(line, HasSubstr("+DejaVuSansCondensed"));
    EXPECT_THAT(line, HasSubstr(" yes yes yes "));  // embedded, a subset, with its letters' meaning
  }
  EXPECT_GE(fonts, 2);
}

TEST(Pdf, HoldsEveryText) {
  const Packet packet = tests::invented_packet();
  const std::string told = tests::levelled(PdfFile(rendered(packet)).told_by("pdftotext -raw", "-"));
  for (const std::string& text : tests::texts_of(packet)) {
    EXPECT_THAT(told, HasSubstr(tests::levelled(base::worded(text, base::Dialect::kAmerican))));
  }
}

TEST(Pdf, HasThePaperAndTheTitle) {
  const Packet packet = tests::invented_packet();
  const std::string a4 = PdfFile(rendered(packet)).told_by("pdfinfo");
  EXPECT_THAT(a4, HasSubstr("(A4)"));
  EXPECT_THAT(a4, HasSubstr("Cider press, idler bracket"));
  const std::string letter =
      PdfFile(rendered(packet, {Paper::kLetter, base::Dialect::kAmerican})).told_by("pdfinfo");
  EXPECT_THAT(letter, HasSubstr("(letter)"));
}

TEST(Pdf, IsTheSameWhateverTheTimeAndPlace) {
  const Packet packet = tests::invented_packet();
  const std::string first = rendered(packet);
  setenv("TZ", "Asia/Kathmandu", 1);
  setenv("LANG", "tr_TR.UTF-8", 1);
  setenv("PANGO_LANGUAGE", "tr", 1);
  std::setlocale(LC_ALL, "C.UTF-8");
  const std::string second = rendered(packet);
  std::setlocale(LC_ALL, "C");
  unsetenv("PANGO_LANGUAGE");
  unsetenv("LANG");
  unsetenv("TZ");
  EXPECT_TRUE(first == second);
  for (const char* dated : {"CreationDate", "ModDate", "/ID"})
    EXPECT_THAT(first, Not(HasSubstr(dated)));
}

TEST(Pdf, FailsAsThePagesDo) {
  Packet packet = tests::invented_packet();
  packet.first.queries.resize(4);
  const auto pdf = render_pdf(packet);
  ASSERT_FALSE(pdf.has_value());
  EXPECT_EQ(pdf.error().code, base::Code::kTooMany);
}

}  // namespace
}  // namespace sparewright::sheets
