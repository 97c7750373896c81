// What every thread has, whatever its system: what wires, tools, taps and the search by measurement ask for.
#pragma once

#include <string>

#include "core/handbook/source.hpp"
#include "core/handbook/thread_forms.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

struct ThreadShape {
  std::string name;  // "3/8-16 UNC"
  ThreadForm form = ThreadForm::kUnified;
  quantity::Diameter major;           // basic; of a tapered thread where its pitch diameter is taken
  quantity::Diameter pitch_diameter;  // basic
  quantity::Diameter minor;           // of the hole, basic
  quantity::Length pitch;             // from one crest to the next
  int starts = 1;
  bool left_hand = false;
  bool tapered = false;
  Source source;  // of the diameters

  [[nodiscard]] quantity::Length lead() const { return static_cast<double>(starts) * pitch; }
};

}  // namespace sparewright::handbook
