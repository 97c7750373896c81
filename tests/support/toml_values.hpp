// All values of a TOML text on one line, by us and by Python's tomllib, to be compared.
#pragma once

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdint>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "core/text/document.hpp"
#include "judge.hpp"

namespace sparewright::tests {

inline std::string hex(std::string_view bytes) {
  std::string out;
  for (const char c : bytes)
    out += fmt::format("{:02x}", static_cast<unsigned char>(c));
  return out;
}

inline void list_values(const text::Node& node, const std::string& path, std::vector<std::string>& out) {
  using text::Type;
  const auto line = [&](std::string_view value) { out.push_back(path + "=" + std::string(value)); };
  switch (node.type()) {
    case Type::kText:
      line("s" + hex(node.typed()));
      break;
    case Type::kWhole:
      line(fmt::format("i{}", *node.whole()));
      break;
    case Type::kDecimal:
      line(std::isnan(*node.decimal())
               ? "f nan"
               : fmt::format("f{:016x}", std::bit_cast<std::uint64_t>(*node.decimal())));
      break;
    case Type::kBoolean:
      line(*node.truth() ? "true" : "false");
      break;
    case Type::kDate:
      line("date");
      break;
    case Type::kList:
      line(fmt::format("[{}]", node.size()));
      for (const text::Node item : node)
        list_values(item, fmt::format("{}/{}", path, item.position()), out);
      break;
    case Type::kTable:
      line(fmt::format("{{{}}}", node.size()));
      for (const text::Node child : node)
        list_values(child, path + "/k" + hex(child.key()), out);
      break;
  }
}

// "refused" where the text cannot be read.
inline std::string values_of(const std::string& text) {
  const auto document = text::Document::parse(text, "judged");
  if (!document) return "refused";
  std::vector<std::string> lines;
  list_values(document->root(), "", lines);
  std::sort(lines.begin(), lines.end());
  return fmt::format("{}", fmt::join(lines, " "));
}

inline std::vector<std::string> values_by_tomllib(const std::vector<std::string>& texts) {
  std::string input;
  for (const std::string& text : texts)
    input += hex(text) + '\n';
  return judged(R"py(
import math, struct, sys, tomllib
def values(v, path, out):
    hexed = lambda s: s.encode().hex()
    line = lambda s: out.append(path + "=" + s)
    if isinstance(v, bool): line("true" if v else "false")
    elif isinstance(v, str): line("s" + hexed(v))
    elif isinstance(v, int): line("i%d" % v)
    elif isinstance(v, float): line("f nan" if math.isnan(v) else "f" + struct.pack(">d", v).hex())
    elif isinstance(v, list):
        line("[%d]" % len(v))
        for i, item in enumerate(v): values(item, "%s/%d" % (path, i), out)
    elif isinstance(v, dict):
        line("{%d}" % len(v))
        for k, item in v.items(): values(item, path + "/k" + hexed(k), out)
    else: line("date")
for text in open(sys.argv[1]):
    try:
        out = []
        values(tomllib.loads(bytes.fromhex(text.strip()).decode().removeprefix("\ufeff")), "", out)
        print(" ".join(sorted(out)))
    except (tomllib.TOMLDecodeError, UnicodeDecodeError, RecursionError):
        print("refused")
)py",
                input);
}

}  // namespace sparewright::tests
