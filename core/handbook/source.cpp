#include "core/handbook/source.hpp"

namespace sparewright::handbook {

std::string cite(const Source& source) {
  std::string out(source.text);
  switch (source.basis) {
    case Basis::kPublished:
      break;
    case Basis::kDerived:
      out += " (derived)";
      break;
    case Basis::kFromMemory:
      out += " (from memory)";
      break;
    case Basis::kCommonPractice:
      out += " (common practice)";
      break;
  }
  return out;
}

}  // namespace sparewright::handbook
